import { SMALL_PROGRAM, type ProgramSolver } from './bound-menu.ts';
import type { MenuModel, OpenedAt } from './menu-model.ts';
import { menuProgram, openedBy, tightened } from './menu-program.ts';

/**
 * The best menu made of what several good menus hold: each lot only at meals where one of them has it, and a pouch more of it at most. So few pouches are left to decide that the
 * integer program can be solved, and good menus agree on much of what is good.
 *
 * @param nodes of the tree to look at
 * @returns undefined where even that program is too large, or nothing was found in so many nodes
 */
export function mergeMenus(
  model: MenuModel,
  menus: readonly (readonly OpenedAt[])[],
  solver: ProgramSolver,
  nodes: number,
): OpenedAt[] | undefined {
  const most = new Map<string, number>();
  for (const menu of menus)
    for (const { slot, lot, pouches } of menu)
      most.set(`${slot} ${lot}`, Math.max(most.get(`${slot} ${lot}`) ?? 0, pouches + 1));
  const merged: MenuModel = {
    ...model,
    lots: model.lots.map((lot) => ({
      ...lot,
      most: lot.most.map((limit, slot) => Math.min(limit, most.get(`${slot} ${lot.index}`) ?? 0)),
    })),
  };
  const program = tightened(menuProgram(merged), merged);
  if (program.columns.length > SMALL_PROGRAM) return undefined;
  const { values } = solver.solve(program, nodes);
  return values && openedBy(program, values);
}
