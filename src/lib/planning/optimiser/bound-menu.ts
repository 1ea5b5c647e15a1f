import type { MenuModel, OpenedAt } from './menu-model.ts';
import { menuProgram, openedBy, tightened, type MenuProgram } from './menu-program.ts';

/** A solver of linear and integer programs, handed in: the core itself loads none. */
export type ProgramSolver = {
  /** Solves the relaxation in which pouches may be cut. @returns the price of each row: what one more on its right side would cost */
  relax(program: MenuProgram): ArrayLike<number>;
  /**
   * Solves the program itself, up to so many nodes of its tree.
   *
   * @returns the best values found, and a bound that no solution is under
   */
  solve(program: MenuProgram, nodes: number): { values: ArrayLike<number> | undefined; bound: number };
};

/** What no menu can be under, points; and a menu, where one was found on the way. */
export type MenuBound = { readonly points: number; readonly opened?: readonly OpenedAt[] };

/** Programs up to this many columns are also solved as they are, when there is time: their tree is small enough to gain by it (measured). */
export const SMALL_PROGRAM = 2500;

/** A bound by the relaxation of the tightened program: no menu costs less. */
export function boundMenu(model: MenuModel, solver: ProgramSolver): MenuBound {
  const program = tightened(menuProgram(model), model);
  return { points: boundFromPrices(program, solver.relax(program)) };
}

/** A better bound, or the best menu itself, by the integer program; undefined where the program is too large to gain by it. */
export function boundByTree(model: MenuModel, solver: ProgramSolver, nodes: number): MenuBound | undefined {
  const program = tightened(menuProgram(model), model);
  if (program.columns.length > SMALL_PROGRAM) return undefined;
  const { values, bound } = solver.solve(program, nodes);
  return { points: bound, ...(values ? { opened: openedBy(program, values) } : {}) };
}

/**
 * The bound that prices of the rows prove, whoever set them: by weak duality, the prices times the sides of the rows, plus for each column that would still pay, all of it.
 * Prices that are off make the bound weaker, never wrong.
 *
 * @param prices by row, points for one more on its right side; positive for a lower side that binds, negative for an upper
 */
export function boundFromPrices(program: MenuProgram, prices: ArrayLike<number>): number {
  const left = Float64Array.from(program.columns, ({ cost }) => cost);
  let bound = program.constant;
  program.rows.forEach(({ terms, lower, upper }, row) => {
    const price = prices[row] ?? 0;
    const side = price > 0 ? lower : upper;
    if (price === 0 || !Number.isFinite(side)) return; // a price on a side that is not there proves nothing
    bound += price * side;
    for (const [column, coefficient] of terms) left[column] = (left[column] ?? 0) - price * coefficient;
  });
  program.columns.forEach(({ upper }, column) => {
    const pays = left[column] ?? 0;
    if (pays < 0) bound += pays * upper;
  });
  return bound;
}
