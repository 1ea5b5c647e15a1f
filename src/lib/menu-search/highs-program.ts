import loadHighs, { type Highs, type Model } from 'highs';
import type { GrowingProgram, OpenProgram, ProgramColumn } from '../planning/optimiser/linear-program.ts';

let loaded: Promise<Highs> | undefined;

/** Opens programs in the HiGHS solver, loaded once; its calls do not return before they are done, so they belong in a worker. */
export async function highsPrograms(): Promise<OpenProgram> {
  loaded ??= loadHighs();
  const highs = await loaded;
  return () => new HighsProgram(highs);
}

/** Primal simplex: columns are added, so the solution before stays one. */
const PRIMAL = 4;

class HighsProgram implements GrowingProgram {
  readonly #highs: Highs;
  readonly #model: Model & Disposable;
  #rows = 0;
  #columns = 0;

  constructor(highs: Highs) {
    this.#highs = highs;
    this.#model = highs.createModel();
    this.#model.options.set({
      output_flag: false,
      random_seed: 1,
      presolve: 'off',
      simplex_strategy: PRIMAL,
    });
  }

  #side(value: number): number {
    return Number.isFinite(value) ? value : Math.sign(value) * this.#highs.infinity;
  }

  addRows(rows: Parameters<GrowingProgram['addRows']>[0]): void {
    if (rows.length === 0) return;
    this.#model.addRows({
      lower: Float64Array.from(rows, ({ lower }) => this.#side(lower)),
      upper: Float64Array.from(rows, ({ upper }) => this.#side(upper)),
      matrix: { format: 'csr', numRows: rows.length, numCols: this.#columns, ...sparse(rows) },
    });
    this.#rows += rows.length;
  }

  addColumns(columns: readonly ProgramColumn[]): void {
    if (columns.length === 0) return;
    this.#model.addCols({
      cost: Float64Array.from(columns, ({ cost }) => cost),
      lower: new Float64Array(columns.length),
      upper: Float64Array.from(columns, ({ upper }) => this.#side(upper)),
      matrix: { format: 'csc', numRows: this.#rows, numCols: columns.length, ...sparse(columns) },
    });
    this.#columns += columns.length;
  }

  bound(columns: readonly number[], lower: number, upper: number): void {
    for (const column of columns) this.#model.changeColBounds(column, lower, this.#side(upper));
  }

  solve() {
    this.#model.run();
    const { rowDual, colValue } = this.#model.getSolution();
    return {
      points: this.#model.getObjectiveValue(),
      values: colValue ?? new Float64Array(this.#columns),
      prices: rowDual ?? new Float64Array(this.#rows),
    };
  }

  solveWhole(whole: readonly number[], nodes: number) {
    const { integer, continuous } = this.#highs.constants.variableType;
    const model = this.#model;
    for (const column of whole) model.changeColIntegrality(column, integer);
    model.options.set({ presolve: 'on', mip_max_nodes: nodes, mip_rel_gap: 1e-7, mip_abs_gap: 1e-4 });
    model.run();
    const isFound =
      model.info.get('primal_solution_status') === this.#highs.constants.solutionStatus.feasible;
    const values = isFound ? (model.getSolution().colValue ?? undefined) : undefined;
    const bound = Number(model.info.get('mip_dual_bound'));
    for (const column of whole) model.changeColIntegrality(column, continuous);
    model.options.set({ presolve: 'off' });
    return { values, bound };
  }

  close(): void {
    this.#model.dispose();
  }
}

function sparse(lines: readonly { readonly terms: readonly (readonly [number, number])[] }[]) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of lines) {
    for (const [index, value] of terms) {
      indices.push(index);
      values.push(value);
    }
    starts.push(indices.length);
  }
  return {
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}
