import fc from 'fast-check';
import loadHighs from 'highs';
import { highsPrograms } from '../../src/lib/menu-search/highs-program.ts';
import { buildMenuModel, type MenuModel } from '../../src/lib/planning/menu/menu-model.ts';
import type { MenuProblem } from '../../src/lib/planning/menu/menu-problem.ts';
import { defaultSettings, Settings } from '../../src/lib/planning/model/settings.ts';
import type { MenuProgram } from '../../src/lib/planning/optimiser/menu-program.ts';
import { searchToEnd, type SearchOptions } from '../../src/lib/planning/optimiser/search-menu.ts';
import { writeLp } from '../../src/lib/planning/optimiser/write-lp.ts';
import { buildMenuProblem } from '../../src/lib/planning/plan-trip.ts';
import { stocks, trips } from './arbitraries.ts';

/** Costs and rules of every kind, free ones among them. */
export const menuSettings: fc.Arbitrary<Settings> = fc
  .record({
    repeatAfterDays: fc.integer({ min: 0, max: 3 }),
    dryOpenDays: fc.integer({ min: 1, max: 4 }),
    proteinFloorG: fc.constantFrom(0, 20, 35),
    leftOverKcal: fc.constantFrom(0, 0.3, 0.6),
    secondDish: fc.constantFrom(0, 40),
    repeat: fc.constantFrom(0, 15),
    proteinG: fc.constantFrom(0, 0.1, 2),
  })
  .map(({ repeatAfterDays, dryOpenDays, proteinFloorG, ...costs }) =>
    Settings.parse({
      repeatAfterDays,
      dryOpenDays,
      proteinFloorG,
      menuCosts: { ...defaultSettings().menuCosts, ...costs },
    }),
  );

/** A counterexample is shown by what it was made of. */
const shownAs = <T extends object>(value: T, from: unknown): T =>
  Object.defineProperty(value, fc.toStringMethod, { value: () => fc.stringify(from) });

export const menuProblems: fc.Arbitrary<MenuProblem> = fc
  .tuple(trips, stocks, menuSettings)
  .map(([trip, stock, settings]) =>
    shownAs(buildMenuProblem(trip, stock, settings), { trip, stock, menuCosts: settings.menuCosts }),
  );

export const menuModels: fc.Arbitrary<MenuModel> = menuProblems.map((problem) =>
  shownAs(buildMenuModel(problem), {
    party: problem.party,
    stock: problem.stock,
    days: problem.demand.length,
  }),
);

const open = await highsPrograms();
const highs = await loadHighs();

/** The outcome of a whole search. */
export const searched = (model: MenuModel, options: Partial<SearchOptions> = {}) =>
  searchToEnd(model, open, { effort: 'quick', ...options });

/** What HiGHS makes of a program, read back from its file. */
export function solved(program: MenuProgram, mostNodes = 1_000_000) {
  const { Status, ObjectiveValue, Columns } = highs.solve(writeLp(program, 'a menu'), {
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    mip_max_nodes: mostNodes,
  });
  const values = program.columns.map(({ name }) => {
    const column = Columns[name];
    return column && 'Primal' in column ? column.Primal : 0;
  });
  return { isOptimal: Status === 'Optimal', points: ObjectiveValue, values };
}
