import fc from 'fast-check';
import type { MenuProblem } from '../../src/lib/planning/menu/menu-problem.ts';
import { defaultSettings, Settings } from '../../src/lib/planning/model/settings.ts';
import {
  buildMenuModel,
  type MenuModel,
  type OpenedAt,
} from '../../src/lib/planning/optimiser/menu-model.ts';
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { searchToEnd } from '../../src/lib/planning/optimiser/search-menu.ts';
import { poseMenuProblem } from '../../src/lib/planning/pose-menu-problem.ts';
import { stocks, trips } from './arbitraries.ts';

/** Costs and rules of every kind, free ones among them. */
export const menuSettings: fc.Arbitrary<Settings> = fc
  .record({
    maxRecipesPerMeal: fc.integer({ min: 1, max: 3 }),
    repeatAfterDays: fc.integer({ min: 0, max: 3 }),
    mealFloorShare: fc.constantFrom(0, 0.5, 0.8),
    eatUpToShare: fc.constantFrom(1, 1.2),
    leftOverKcal: fc.constantFrom(0, 0.3, 0.6),
    aboveCeilingKcal: fc.constantFrom(0.1, 0.3),
    smallMealKcal: fc.constantFrom(0, 1),
  })
  .map(({ leftOverKcal, aboveCeilingKcal, smallMealKcal, ...rules }) =>
    Settings.parse({
      ...rules,
      menuCosts: { ...defaultSettings().menuCosts, leftOverKcal, aboveCeilingKcal, smallMealKcal },
    }),
  );

export const menuProblems: fc.Arbitrary<MenuProblem> = fc
  .tuple(trips, stocks, menuSettings)
  .map(([trip, stock, settings]) => poseMenuProblem(trip, stock, settings));

export const menuModels: fc.Arbitrary<MenuModel> = menuProblems.map(buildMenuModel);

/** A menu that breaks no rule, laid at random: here a pouch, there a pouch. */
export function randomMenu(model: MenuModel, seed: number): OpenedAt[] {
  const random = randomFrom(seed);
  const opened: OpenedAt[] = [];
  const free = model.lots.map(({ stock }) => stock);
  for (const slot of model.slots) {
    const recipes = new Set<number>();
    for (const lot of model.lots) {
      const most = Math.min(lot.most[slot.index] ?? 0, free[lot.index] ?? 0);
      if (most === 0 || random() < 0.5) continue;
      if (!recipes.has(lot.recipe) && recipes.size >= model.settings.maxRecipesPerMeal) continue;
      const pouches = 1 + Math.floor(random() * most);
      recipes.add(lot.recipe);
      free[lot.index] = (free[lot.index] ?? 0) - pouches;
      opened.push({ slot: slot.index, lot: lot.index, pouches });
    }
  }
  return opened;
}

/** The outcome of a whole search. */
export const searched = (model: MenuModel, work: number, start: readonly OpenedAt[] = []) =>
  searchToEnd(model, { seed: 1, work, start });
