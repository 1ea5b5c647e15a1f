import loadHighs, { type Highs, type Model } from 'highs';
import type { ProgramSolver } from '../planning/optimiser/bound-menu.ts';
import type { MenuProgram } from '../planning/optimiser/menu-program.ts';

let loaded: Promise<Highs> | undefined;

/** The HiGHS solver, loaded once; its calls do not return before they are done, so they belong in a worker. */
export async function highsSolver(): Promise<ProgramSolver> {
  loaded ??= loadHighs();
  const highs = await loaded;
  return {
    relax: (program) =>
      highs.withModel(dataOf(highs, program, false), (model) => {
        run(model, {});
        const { rowDual, colValue } = model.getSolution();
        return { prices: rowDual ?? [], values: colValue ?? [] };
      }),
    solve: (program, nodes) =>
      highs.withModel(dataOf(highs, program, true), (model) => {
        run(model, { mip_max_nodes: nodes, mip_rel_gap: 1e-6, mip_abs_gap: 1e-4 });
        const hasValues =
          model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
        return {
          values: hasValues ? (model.getSolution().colValue ?? undefined) : undefined,
          bound: Number(model.info.get('mip_dual_bound')),
        };
      }),
  };
}

function run(model: Model, options: Record<string, number>): void {
  model.options.set({ output_flag: false, random_seed: 1, ...options });
  model.run();
}

function dataOf(highs: Highs, { columns, rows, constant }: MenuProgram, whole: boolean) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    for (const [column, coefficient] of terms) {
      indices.push(column);
      values.push(coefficient);
    }
    starts.push(indices.length);
  }
  const { integer, continuous } = highs.constants.variableType;
  const side = (value: number) => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
  return {
    numCols: columns.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.minimize,
    offset: constant,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(({ upper }) => side(upper)),
    rowLower: rows.map(({ lower }) => side(lower)),
    rowUpper: rows.map(({ upper }) => side(upper)),
    matrix: {
      format: 'csr' as const,
      numCols: columns.length,
      numRows: rows.length,
      starts,
      indices,
      values,
    },
    ...(whole ? { integrality: columns.map((column) => (column.whole ? integer : continuous)) } : {}),
  };
}
