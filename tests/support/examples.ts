import { ALLERGENS } from '../../src/lib/planning/model/allergens.ts';
import { DIETS } from '../../src/lib/planning/model/diets.ts';
import { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { Trip, type TripInput } from '../../src/lib/planning/model/trip.ts';
import type { MenuMeal, MenuPlan, MenuPouches } from '../../src/lib/planning/model/trip-plan.ts';

/** A plain dinner lot, changed where a test says so. */
export function exampleLot(changes: Partial<Record<keyof PouchLot, unknown>> = {}): PouchLot {
  return PouchLot.parse({
    code: 'D1',
    recipe: 'bean stew',
    mealKinds: ['dinner'],
    sealedOn: '2026-05-01',
    bestBefore: '2028-05-01',
    pouches: 4,
    servingsPerPouch: 2,
    dryWeightG: 150,
    energyKcal: 600,
    waterMl: 350,
    waterKind: 'boiling',
    steepMin: 10,
    tareG: 12,
    allergens: [],
    ...changes,
  });
}

/** A lot about which there is as much to say as a cook would ever say. */
export const longestLot = exampleLot({
  code: 'STEW-2026-11-25-001',
  recipe:
    'Slow-cooked stew of beans, barley and smoked trout with roasted peppers, mustard, celeriac and a crust of walnut crumbs',
  note: 'Stir well, from the bottom. '.repeat(71).trim(),
  servingsPerPouch: 2.5,
  proteinG: 31.4,
  waterKind: 'hot',
  stirAfterMin: 6.5,
  allergens: [...ALLERGENS],
  diets: [...DIETS],
});

/** Two eaters, two full days, changed where a test says so. */
export function exampleTrip(changes: Partial<TripInput> = {}): Trip {
  return Trip.parse({
    name: 'ridge walk',
    startDate: '2027-07-05',
    dayCount: 2,
    firstMeal: 'breakfast',
    lastMeal: 'dinner',
    energyKcal: 2000,
    party: [{ name: 'Ada' }, { name: 'Bo' }],
    ...changes,
  });
}

/** The cook group of a trip where nobody named one. */
export const ONE_GROUP = '1';

/** A meal of a plan with pouches opened and nothing said of plates, changed where a test says so. */
export function exampleMeal(
  opened: readonly Partial<MenuPouches>[],
  changes: Partial<MenuMeal> = {},
): MenuMeal {
  return {
    day: 1,
    date: '2027-07-05',
    meal: 'dinner',
    group: ONE_GROUP,
    style: 'mixed',
    stop: 'stove',
    eaters: ['Ada', 'Bo'],
    elsewhere: [],
    locked: false,
    lockedPlates: [],
    byHand: false,
    opened: opened.map((row) => ({
      code: 'D1',
      recipe: 'bean stew',
      role: 'main',
      style: 'shared pot',
      pouches: 1,
      servings: 2,
      energyKcal: 1200,
      waterMl: 700,
      waterKind: 'boiling',
      reason: { code: 'oldest' },
      locked: false,
      ...row,
    })),
    fromOpen: [],
    portions: [],
    staysOpen: [],
    leftOver: [],
    targetKcal: 0,
    eatenKcal: 0,
    leftOverServings: 0,
    leftOverKcal: 0,
    ...changes,
  };
}

export const exampleMenu = (...meals: MenuMeal[]): MenuPlan => ({
  planner: 'test',
  groups: [{ name: ONE_GROUP, eaters: ['Ada', 'Bo'] }],
  meals,
  energy: [],
  reserve: [],
});
