import { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { Trip, type TripInput } from '../../src/lib/planning/model/trip.ts';

/* Small trips whose menu any cook would write down without reckoning. */

type LotChanges = Partial<Record<keyof PouchLot, unknown>>;

/** A dinner of 700 kcal in a pouch for one, changed where a case says so. */
const lot = (code: string, recipe: string, changes: LotChanges = {}): PouchLot =>
  PouchLot.parse({
    code,
    recipe,
    mealKinds: ['dinner'],
    sealedOn: '2026-09-01',
    bestBefore: '2028-09-01',
    pouches: 1,
    servingsPerPouch: 1,
    dryWeightG: 150,
    energyKcal: 700,
    proteinG: 28,
    waterMl: 350,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 12,
    allergens: [],
    diets: ['vegan', 'vegetarian'],
    ...changes,
  });
const bar = (code: string, recipe: string, changes: LotChanges = {}): PouchLot =>
  lot(code, recipe, {
    mealKinds: ['snack'],
    dryWeightG: 50,
    energyKcal: 220,
    proteinG: 5,
    waterMl: 0,
    waterKind: 'none',
    steepMin: 0,
    tareG: 5,
    ...changes,
  });

const trip = (changes: Partial<TripInput>): Trip =>
  Trip.parse({
    name: 'A case',
    startDate: '2027-07-05',
    dayCount: 3,
    firstMeal: 'dinner',
    lastMeal: 'dinner',
    energyKcal: 2000,
    party: [{ name: 'Ada' }],
    ...changes,
  });
/** Evenings only: of 2000 kcal a day the dinner is planned with 700. */
const evenings = (dayCount: number, changes: Partial<TripInput>): Trip =>
  trip({
    dayCount,
    mealRules: [
      { meals: ['breakfast', 'lunch', 'snack', 'drink'], elsewhere: 'everyone' },
      ...(changes.mealRules ?? []),
    ],
    ...Object.fromEntries(Object.entries(changes).filter(([name]) => name !== 'mealRules')),
  });
const people = (...names: string[]) => names.map((name) => ({ name }));
const SIX = ['Dal', 'Chilli', 'Risotto', 'Curry', 'Noodles', 'Stew'];

export const CASES = {
  solo: {
    stock: SIX.map((recipe, index) => lot(`D${index}`, recipe)),
    trip: evenings(6, {}),
  },
  pair: {
    stock: SIX.slice(0, 3).map((recipe, index) => lot(`D${index}`, recipe, { servingsPerPouch: 2 })),
    trip: evenings(3, { party: people('Ada', 'Ben') }),
  },
  family: {
    stock: [
      lot('MEAT', 'Stew with beef', { servingsPerPouch: 3, pouches: 2, diets: [] }),
      lot('VEG', 'Dal', { servingsPerPouch: 1, pouches: 2 }),
      lot('ALL', 'Noodles', { servingsPerPouch: 4, pouches: 1 }),
    ],
    trip: evenings(3, {
      party: [
        { name: 'Ada', energyKcal: 2000 },
        { name: 'Ben', energyKcal: 2200 },
        { name: 'Mia', energyKcal: 1600, body: { ageY: 9, massG: 30_000 } },
        { name: 'Veg', energyKcal: 2000, diets: ['vegetarian'] },
      ],
      servingStyle: 'shared pot',
    }),
  },
  eight: {
    stock: SIX.slice(0, 3).map((recipe, index) =>
      lot(`D${index}`, recipe, { servingsPerPouch: 4, pouches: 2 }),
    ),
    trip: evenings(3, {
      party: people('A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'),
      cookGroups: [
        { name: 'North', eaters: ['A', 'B', 'C', 'D'] },
        { name: 'South', eaters: ['E', 'F', 'G', 'H'] },
      ],
    }),
  },
  fours: {
    stock: SIX.slice(0, 2).map((recipe, index) =>
      lot(`D${index}`, recipe, { servingsPerPouch: 4, energyKcal: 550 }),
    ),
    trip: evenings(2, { party: people('Ada', 'Ben', 'Cas') }),
  },
  scarce: {
    stock: [lot('D0', 'Dal', { pouches: 2 })],
    trip: evenings(3, {}),
  },
  split: {
    stock: SIX.slice(0, 3).flatMap((recipe, index) => [
      lot(`G${index}`, `${recipe} with cream`, { servingsPerPouch: 2, allergens: ['milk'] }),
      lot(`N${index}`, `${recipe} with tofu`, { servingsPerPouch: 1, allergens: ['soy'] }),
    ]),
    trip: evenings(3, {
      party: [
        { name: 'Ada', allergens: ['soy'] },
        { name: 'Ben', allergens: ['soy'] },
        { name: 'Cas', allergens: ['milk'] },
      ],
    }),
  },
  hut: {
    stock: SIX.slice(0, 2).map((recipe, index) => lot(`D${index}`, recipe, { servingsPerPouch: 2 })),
    trip: evenings(3, {
      party: people('Ada', 'Ben'),
      mealRules: [{ days: [2], meals: ['dinner'], elsewhere: 'everyone' }],
    }),
  },
  withoutStove: {
    stock: [
      lot('HOT1', 'Dal'),
      lot('HOT2', 'Chilli'),
      lot('COLD', 'Couscous salad', { waterKind: 'cold', steepMin: 30, bestBefore: '2029-01-01' }),
    ],
    trip: evenings(3, { mealRules: [{ days: [2], stop: 'no stove' }] }),
  },
  disliked: {
    stock: [
      lot('OLD', 'Mushroom risotto', { bestBefore: '2027-08-01' }),
      lot('NEW1', 'Dal', { bestBefore: '2028-12-01' }),
      lot('NEW2', 'Chilli', { bestBefore: '2028-12-01' }),
    ],
    trip: evenings(2, { party: [{ name: 'Ada', tastes: [{ food: 'mushroom', taste: 'rather not' }] }] }),
  },
  fixed: {
    stock: [
      ...SIX.slice(0, 4).map((recipe, index) => lot(`D${index}`, recipe)),
      lot('P', 'Pancakes', { bestBefore: '2029-09-01' }),
    ],
    trip: evenings(3, {
      days: [{ walkingH: 6 }, { walkingH: 0 }, { walkingH: 6 }],
      mealRules: [{ days: 'rest days', meals: ['dinner'], dish: 'Pancakes' }],
    }),
  },
  extrasForLunch: {
    stock: [
      bar('BAR', 'Oat bars', { kind: 'extra', pouches: 6, mealKinds: ['lunch', 'snack'] }),
      bar('NUT', 'Nuts', { kind: 'extra', pouches: 4, mealKinds: ['lunch', 'snack'], energyKcal: 300 }),
    ],
    trip: trip({
      dayCount: 2,
      firstMeal: 'lunch',
      lastMeal: 'lunch',
      mealRules: [{ meals: ['breakfast', 'dinner', 'snack', 'drink'], elsewhere: 'everyone' }],
    }),
  },
  foursForOne: {
    stock: [lot('D0', 'Dal', { servingsPerPouch: 4, pouches: 3 })],
    trip: evenings(2, {}),
  },
  childAtLunch: {
    stock: [lot('L0', 'Couscous', { mealKinds: ['lunch'], energyKcal: 600, pouches: 4 })],
    trip: trip({
      dayCount: 1,
      firstMeal: 'lunch',
      lastMeal: 'lunch',
      party: [{ name: 'Mia', energyKcal: 1200, body: { ageY: 8, massG: 25_000 } }],
      mealRules: [{ meals: ['snack'], elsewhere: 'everyone' }],
    }),
  },
  sixSnacks: {
    stock: [
      bar('BAG', 'Date balls', { pieces: 6, servingsPerPouch: 3, energyKcal: 200 }),
      ...SIX.slice(0, 3).map((recipe, index) => lot(`D${index}`, recipe, { energyKcal: 420 })),
    ],
    trip: trip({
      dayCount: 3,
      firstMeal: 'lunch',
      energyKcal: 1200,
      mealRules: [{ meals: ['breakfast', 'lunch', 'drink'], elsewhere: 'everyone' }],
    }),
  },
  raw: {
    stock: [
      lot('RAW', 'Stew of raw-dried beef', { cookAfter: 'cook', diets: [], pouches: 2 }),
      lot('COLD', 'Couscous salad', { waterKind: 'cold', steepMin: 30, bestBefore: '2029-01-01' }),
    ],
    trip: evenings(2, { mealRules: [{ days: [2], stop: 'no stove' }] }),
  },
} as const satisfies Readonly<Record<string, { readonly stock: readonly PouchLot[]; readonly trip: Trip }>>;
