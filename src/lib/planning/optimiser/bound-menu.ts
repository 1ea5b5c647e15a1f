import type { MenuModel, OpenedAt } from './menu-model.ts';
import { menuProgram, openedBy, tightened, type MenuProgram } from './menu-program.ts';

/** A solver of linear and integer programs, handed in: the core itself loads none. */
export type ProgramSolver = {
  /**
   * Solves the relaxation in which pouches may be cut.
   *
   * @returns the price of each row, what one more on its right side would cost; and the value of each column
   */
  relax(program: MenuProgram): { prices: ArrayLike<number>; values: ArrayLike<number> };
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

/** A bound by the relaxation of the tightened program: no menu costs less. And a menu near the relaxation, to search on from. */
export function boundMenu(model: MenuModel, solver: ProgramSolver): Required<MenuBound> {
  const program = tightened(menuProgram(model), model);
  const { prices, values } = solver.relax(program);
  return { points: boundFromPrices(program, prices), opened: rounded(model, program, values) };
}

/** The relaxation in whole pouches: the largest parts first, as far as pouches and recipes go. */
function rounded(model: MenuModel, program: MenuProgram, values: ArrayLike<number>): OpenedAt[] {
  const kcal = ({ column, lot }: MenuProgram['opened'][number]) =>
    (values[column] ?? 0) * (model.lots[lot]?.kcal ?? 0);
  const free = model.lots.map(({ stock }) => stock);
  const recipesAt = model.slots.map(() => new Set<number>());
  return [...program.opened]
    .sort((a, b) => kcal(b) - kcal(a) || a.column - b.column)
    .flatMap(({ column, slot, lot }): OpenedAt[] => {
      const pouches = Math.min(Math.round(values[column] ?? 0), free[lot] ?? 0);
      const [recipes, recipe] = [recipesAt[slot], model.lots[lot]?.recipe];
      if (pouches <= 0 || !recipes || recipe === undefined) return [];
      if (!recipes.has(recipe) && recipes.size >= model.settings.maxRecipesPerMeal) return [];
      recipes.add(recipe);
      free[lot] = (free[lot] ?? 0) - pouches;
      return [{ slot, lot, pouches }];
    });
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
