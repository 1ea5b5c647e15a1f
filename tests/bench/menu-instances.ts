import type { Allergen } from '../../src/lib/planning/model/allergens.ts';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { PouchLot, type Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { pouchEnergyKcal } from '../../src/lib/planning/model/pouch-totals.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { SERVING_STYLES, type MealKind, type ServingStyle } from '../../src/lib/planning/model/words.ts';
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { START, type Instance, type Size } from './instances.ts';

export const SUPPLIES = ['scarce', 'ample', 'mixed'] as const;
export type Supply = (typeof SUPPLIES)[number];
/** A household's shelf of many lots with a few pouches each, or a quarter as many lots as batches make them: of pouches of one to two servings, of one, or of four. */
export const SHELVES = ['household', 'batches', 'one-serving', 'four-serving'] as const;
export type Shelf = (typeof SHELVES)[number];
export type MenuCase = Size & {
  readonly seed: number;
  readonly supply: Supply;
  readonly shelf: Shelf;
  readonly exclusions: boolean;
  readonly dryCamps: boolean;
  /** Cook groups. */
  readonly tables: number;
  readonly style: ServingStyle;
};

/** Energy on the shelf over the energy that the trip needs. */
const SUPPLY: Readonly<Record<Supply, number>> = { scarce: 0.75, ample: 3, mixed: 1.4 };
/** Lots of a shelf that batches make, as a share of those of a household. */
const BATCHES_SHARE = 0.25;

/** What is dried at home, by the meals it suits (invented, in the range of dry meals): share of the recipes, g of a serving, kcal/g, water per g, g protein per 100 kcal. */
const KINDS: readonly {
  readonly meals: readonly MealKind[];
  readonly share: number;
  readonly dryWeightG: number;
  readonly kcalPerG: number;
  readonly water: number;
  readonly protein: number;
}[] = [
  { meals: ['breakfast'], share: 0.2, dryWeightG: 110, kcalPerG: 4.3, water: 2.4, protein: 2.6 },
  { meals: ['lunch'], share: 0.12, dryWeightG: 105, kcalPerG: 4.3, water: 2.5, protein: 3.5 },
  { meals: ['lunch', 'dinner'], share: 0.14, dryWeightG: 125, kcalPerG: 4.2, water: 2.6, protein: 4.5 },
  { meals: ['snack'], share: 0.16, dryWeightG: 60, kcalPerG: 4.7, water: 0, protein: 2 },
  { meals: ['breakfast', 'snack'], share: 0.04, dryWeightG: 70, kcalPerG: 4.5, water: 0.8, protein: 2.2 },
  { meals: ['dinner'], share: 0.26, dryWeightG: 145, kcalPerG: 4.4, water: 2.8, protein: 4.8 },
  { meals: ['drink'], share: 0.08, dryWeightG: 35, kcalPerG: 4.1, water: 6, protein: 1.5 },
];
const ALLERGENS: readonly (readonly [Allergen, number])[] = [
  ['gluten', 0.35],
  ['milk', 0.35],
  ['nuts', 0.2],
  ['soy', 0.15],
  ['egg', 0.12],
];

/** A household's shelf and a trip, invented: recipes dried more than once, lots of one to many pouches, some out of date before the end. */
export function menuInstance(of: MenuCase): Instance {
  const { eaters, days, seed, supply, shelf, exclusions, dryCamps, tables, style } = of;
  const lots = shelf === 'household' ? of.lots : Math.round(of.lots * BATCHES_SHARE);
  const random = randomFrom(seed * 7919 + eaters * 31 + days);
  const between = (low: number, high: number) => low + random() * (high - low);
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));

  const trip = Trip.parse({
    name: caseName(of),
    startDate: START,
    dayCount: days,
    party: Array.from({ length: eaters }, (_, index) => ({
      name: `Eater ${index + 1}`,
      energyKcal: Math.round(between(2200, 3600)),
      allergens: exclusions && index % 4 === 1 ? [ALLERGENS[index % ALLERGENS.length]![0]] : [],
      diets: exclusions && index % 5 === 2 ? ['vegetarian'] : [],
    })),
    days: Array.from({ length: days }, (_, index) => ({
      walkingH: between(3, 8),
      campAltitudeM: between(300, 2600),
      campWater: dryCamps && index % 3 === 1 ? 'dry' : 'source',
    })),
    servingStyle: style,
    cookGroups: Array.from({ length: tables }, (_, table) => ({
      name: `Table ${table + 1}`,
      eaters: Array.from({ length: eaters }, (_, index) => index)
        .filter((index) => Math.floor((index * tables) / eaters) === table)
        .map((index) => `Eater ${index + 1}`),
    })),
  });

  const recipes = Array.from({ length: Math.max(8, Math.round(lots * 0.55)) }, (_, index) => {
    const at = (index * 0.618033988749895 + 0.1) % 1;
    let sum = 0;
    const kind = KINDS.find(({ share }) => (sum += share) > at) ?? KINDS[0]!;
    const isVegetarian = random() < 0.55;
    return {
      name: `Recipe ${index + 1}`,
      kind,
      dryWeightG: Math.round(kind.dryWeightG * between(0.75, 1.25)),
      kcalPerG: kind.kcalPerG * between(0.88, 1.15),
      water: kind.water * between(0.85, 1.15),
      protein: random() < 0.7 ? kind.protein * between(0.6, 1.4) : undefined,
      waterKind:
        kind.water === 0 ? ('none' as const) : random() < 0.25 ? ('cold' as const) : ('boiling' as const),
      steepMin: whole(3, 20),
      allergens: ALLERGENS.filter(([, chance]) => random() < chance).map(([allergen]) => allergen),
      diets: isVegetarian ? ['vegetarian'] : [],
    };
  });
  const needKcal = trip.party.reduce((sum, { energyKcal = 0 }) => sum + energyKcal, 0) * (days - 0.4);
  const drafts = Array.from({ length: lots }, (_, index) => {
    const recipe = index < recipes.length ? recipes[index]! : recipes[whole(0, recipes.length - 1)]!;
    const servings = eaters <= 2 ? 1 : whole(1, 2);
    const servingsPerPouch = shelf === 'one-serving' ? 1 : shelf === 'four-serving' ? 4 : servings;
    const dryWeightG = Math.round(recipe.dryWeightG * between(0.97, 1.03));
    const waterMl = recipe.waterKind === 'none' ? 0 : Math.round(dryWeightG * recipe.water);
    const energyKcal = Math.round(dryWeightG * recipe.kcalPerG);
    return {
      many: supply === 'mixed' ? between(0.1, 1) ** 3 : between(0.4, 1.6),
      lot: {
        code: `L${String(index + 1).padStart(4, '0')}`,
        recipe: recipe.name,
        mealKinds: recipe.kind.meals,
        sealedOn: addDays(START, -whole(30, 400)),
        bestBefore: addDays(START, random() < 0.08 ? whole(-5, days) : whole(days, 900)),
        servingsPerPouch,
        dryWeightG,
        energyKcal,
        ...(recipe.protein === undefined
          ? {}
          : { proteinG: Math.round((energyKcal / 100) * recipe.protein * 10) / 10 }),
        waterMl,
        waterKind: recipe.waterKind,
        steepMin: waterMl === 0 ? 0 : recipe.steepMin,
        tareG: whole(8, 25),
        allergens: recipe.allergens,
        diets: recipe.diets,
      },
    };
  });
  const manyKcal = drafts.reduce((sum, { many, lot }) => sum + many * pouchEnergyKcal(lot), 0);
  const scale = (SUPPLY[supply] * needKcal) / manyKcal;
  let owed = 0;
  const stock: Stock = drafts.map(({ many, lot }) => {
    owed += many * scale;
    const pouches = Math.floor(owed + 0.5);
    owed -= pouches;
    return PouchLot.parse({ ...lot, pouches: Math.max(0, pouches) });
  });
  return { trip, stock };
}

/** Every supply, shelf, style, number of tables, exclusions and dry camps, in turns of their own so that they come together differently. */
const cases = (size: Size, count: number, tables: readonly number[]): MenuCase[] =>
  Array.from({ length: count }, (_, index) => ({
    ...size,
    seed: index + 1,
    supply: (index + Math.floor(index / 4)) % 2 === 0 ? 'scarce' : 'ample',
    shelf: SHELVES[index % SHELVES.length]!,
    exclusions: Math.floor(index / 2) % 2 === 1,
    dryCamps: Math.floor(index / 3) % 2 === 1,
    tables: tables[index % tables.length]!,
    style: SERVING_STYLES[(index + 2) % SERVING_STYLES.length]!,
  }));

/** The 38 instances of the benchmark, four sizes. */
export const MENU_CASES: readonly MenuCase[] = [
  ...cases({ eaters: 2, days: 3, lots: 30 }, 12, [1]),
  ...cases({ eaters: 4, days: 5, lots: 60 }, 12, [1, 1, 2]),
  ...cases({ eaters: 6, days: 10, lots: 200 }, 8, [1, 1, 2]),
  ...cases({ eaters: 12, days: 14, lots: 500 }, 6, [2, 3]),
];

export const sizeName = ({ eaters, days, lots }: Size): string => `${eaters}×${days}×${lots}`;
export const caseName = (of: MenuCase): string =>
  [
    `${sizeName(of)} #${of.seed} ${of.supply}`,
    of.shelf,
    of.style,
    ...(of.tables > 1 ? [`${of.tables} tables`] : []),
    ...(of.exclusions ? ['exclusions'] : []),
    ...(of.dryCamps ? ['dry camps'] : []),
  ].join(', ');
