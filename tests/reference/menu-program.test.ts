/*
 * The menu model against a solver that knows nothing of it: HiGHS (Huangfu & Hall 2018, Mathematical Programming Computation 10:119-142; npm `highs`), reading the exported
 * file in CPLEX LP format; and small instances against all menus that the rules allow, by enumeration.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildMenuModel, type MenuModel } from '../../src/lib/planning/menu/menu-model.ts';
import type { MenuProblem } from '../../src/lib/planning/menu/menu-problem.ts';
import { openExtras, type ModelMenu } from '../../src/lib/planning/menu/menu-state.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/menu/score-menu.ts';
import type { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { Settings } from '../../src/lib/planning/model/settings.ts';
import type { TripInput } from '../../src/lib/planning/model/trip.ts';
import { menuOf, menuProgram, type MenuProgram } from '../../src/lib/planning/optimiser/menu-program.ts';
import { buildMenuProblem } from '../../src/lib/planning/plan-trip.ts';
import { exampleLot, exampleTrip } from '../support/examples.ts';
import { menuModels, searched, solved } from '../support/menu-cases.ts';
import { everyMenu, openPieces, randomMenu } from '../support/menu-rules.ts';

const RUNS = { numRuns: 60, seed: 20_270_705, endOnFailure: true };

/** A program in which the pouches, portions and extras of a menu are settled; what they come to is not. */
function settled(program: MenuProgram, menu: ModelMenu): MenuProgram {
  const rows = [...program.rows];
  const settle = (terms: MenuProgram['rows'][number]['terms'], value: number) =>
    rows.push({ name: `settled_${rows.length}`, terms, lower: value, upper: value });
  let found = 0;
  for (const { slot, dish, style, fillings, portions } of program.dishes) {
    const laying = menu.layings.find((other) => other.slot === slot);
    const isAlone = fillings.length === 1 && portions.length === 1;
    const places = portions.map(({ place }) => place);
    const laid = laying?.dishes.find(
      (other) =>
        other.dish === dish &&
        other.style === style &&
        (isAlone ? other.portions.length === 1 : other.portions.length > 1) &&
        other.portions.every(({ place }) => places.includes(place)),
    );
    const opened = laid && fillings.find(({ lots, pouches }) => sameFilling({ lots, pouches }, laid));
    const units = (place: number) =>
      (laid?.portions.find((portion) => portion.place === place)?.servings ?? 0) /
      (opened?.unitServings ?? 1);
    const [portion] = portions;
    const coefficient = portion?.units[0]?.[1] ?? 0;
    const isIt = opened && (!isAlone || Math.abs(units(portion?.place ?? -1) - coefficient) < 1e-9);
    if (isIt) found++;
    for (const { column } of fillings) settle([[column, 1]], isIt && column === opened.column ? 1 : 0);
    if (!isAlone) for (const { place, units: terms } of portions) settle(terms, isIt ? units(place) : 0);
  }
  for (const { column, extraDay, lot, place } of program.units) {
    const extra = menu.extras.find(
      (other) => other.extraDay === extraDay && other.lot === lot && other.place === place,
    );
    settle([[column, 1]], extra?.units ?? 0);
  }
  expect(found).toBe(menu.layings.reduce((sum, { dishes }) => sum + dishes.length, 0));
  return { ...program, rows };
}

type Filling = { readonly lots: readonly number[]; readonly pouches: readonly number[] };
function sameFilling(one: Filling, other: Filling): boolean {
  const written = ({ lots, pouches }: Filling) =>
    lots
      .map((lot, at) => `${lot} ${pouches[at]}`)
      .sort()
      .join();
  return written(one) === written(other);
}

describe('the exported program', () => {
  it('has, for any menu that the rules allow, the points of the scoring as its objective', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const menu = randomMenu(model, seed);
        expect(brokenRules(model, menu)).toEqual([]);
        const { isOptimal, points } = solved(settled(menuProgram(model), menu));
        expect(isOptimal).toBe(true);
        expect(points).toBeCloseTo(scoreMenu(model, menu).points, 3);
      }),
      RUNS,
    ));

  it('names each column and each row once', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        for (const named of [menuProgram(model).columns, menuProgram(model).rows])
          expect(new Set(named.map(({ name }) => name)).size).toBe(named.length);
      }),
      RUNS,
    ));
});

describe('pouches of extras', () => {
  it('are opened as if each piece were taken by hand: the oldest first, a new pouch when none is open', () =>
    fc.assert(
      fc.property(
        fc.array(fc.nat(7), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 4 }),
        (unitsByDay, unitsPerPouch, keepsDays) => {
          const { opened, leftUnits } = openExtras(unitsByDay, unitsPerPouch, keepsDays);
          const byDay = unitsByDay.map(() => 0);
          for (const { day, pouches } of opened) byDay[day] = pouches;
          expect({ opened: byDay, leftUnits }).toEqual(openPieces(unitsByDay, unitsPerPouch, keepsDays));
        },
      ),
      { ...RUNS, numRuns: 500 },
    ));
});

const dinner = (changes: Partial<PouchLot>) => exampleLot({ pouches: 2, servingsPerPouch: 1, ...changes });
const snack = (changes: Partial<PouchLot>) =>
  exampleLot({
    mealKinds: ['snack'],
    waterKind: 'none',
    waterMl: 0,
    steepMin: 0,
    servingsPerPouch: 1,
    ...changes,
  });

type Small = {
  readonly name: string;
  readonly trip: Partial<TripInput>;
  readonly lots: readonly PouchLot[];
  readonly settings?: Parameters<typeof Settings.parse>[0];
  readonly change?: (problem: MenuProblem) => MenuProblem;
};
const ONE_DINNER = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' } as const;
const SMALL: readonly Small[] = [
  {
    name: 'a pot of one lot or of two',
    trip: { ...ONE_DINNER, party: [{ name: 'Ada' }, { name: 'Bo', energyKcal: 2600 }] },
    lots: [
      dinner({ code: 'A', recipe: 'stew', servingsPerPouch: 2, energyKcal: 610, proteinG: 20 }),
      dinner({ code: 'B', recipe: 'stew', energyKcal: 480, bestBefore: '2027-08-01' }),
      dinner({ code: 'C', recipe: 'dal', energyKcal: 520 }),
    ],
  },
  {
    name: 'two pots for those whom one dish does not suit',
    trip: {
      ...ONE_DINNER,
      servingStyle: 'shared pot',
      party: [{ name: 'Ada', allergens: ['milk'] }, { name: 'Bo' }, { name: 'Cy', portion: 'child' }],
    },
    lots: [
      dinner({ code: 'A', recipe: 'stew', servingsPerPouch: 2, allergens: ['milk'], pouches: 1 }),
      dinner({ code: 'B', recipe: 'dal', energyKcal: 520 }),
      dinner({ code: 'C', recipe: 'rice', energyKcal: 420, pouches: 1 }),
    ],
  },
  {
    name: 'one dish in two pots, since one lot of it holds milk',
    trip: {
      ...ONE_DINNER,
      servingStyle: 'shared pot',
      party: [{ name: 'Ada', allergens: ['milk'] }, { name: 'Bo' }, { name: 'Cy' }],
    },
    lots: [
      dinner({ code: 'A', recipe: 'stew', servingsPerPouch: 2, allergens: ['milk'] }),
      dinner({ code: 'B', recipe: 'stew', energyKcal: 520, pouches: 1 }),
    ],
  },
  {
    name: 'pouches of one person, the same dish not too often',
    trip: {
      dayCount: 2,
      firstMeal: 'dinner',
      lastMeal: 'dinner',
      servingStyle: 'own pouch',
      party: [{ name: 'Ada', tastes: [{ food: 'dal', taste: 'rather not' }] }],
    },
    lots: [
      dinner({ code: 'A', recipe: 'stew', energyKcal: 450 }),
      dinner({ code: 'B', recipe: 'dal', energyKcal: 690, bestBefore: '2027-07-05' }),
      dinner({ code: 'C', recipe: 'rice', mealKinds: ['dinner', 'lunch'], energyKcal: 380, pouches: 1 }),
      dinner({ code: 'D', recipe: 'rice', mealKinds: ['lunch'], energyKcal: 540, pouches: 1 }),
    ],
    settings: { repeatAfterDays: 2 },
  },
  {
    name: 'a pouch of four servings for three, handed out',
    trip: {
      ...ONE_DINNER,
      servingStyle: 'own pouch',
      party: [{ name: 'Ada' }, { name: 'Bo' }, { name: 'Cy' }],
    },
    lots: [
      dinner({ code: 'A', recipe: 'stew', servingsPerPouch: 4, energyKcal: 560 }),
      dinner({ code: 'B', recipe: 'dal', energyKcal: 820, pouches: 1 }),
    ],
  },
  {
    name: 'too little for two meals of two',
    trip: {
      dayCount: 2,
      firstMeal: 'dinner',
      lastMeal: 'breakfast',
      servingStyle: 'shared pot',
      party: [
        { name: 'Ada', portion: 'small' },
        { name: 'Bo', tastes: [{ food: 'stew', taste: 'gladly' }] },
      ],
    },
    lots: [
      dinner({ code: 'A', recipe: 'stew', mealKinds: ['dinner', 'breakfast'], energyKcal: 640 }),
      dinner({ code: 'B', recipe: 'porridge', mealKinds: ['breakfast'], energyKcal: 350, pouches: 1 }),
    ],
  },
  {
    name: 'protein that is dear',
    trip: { ...ONE_DINNER, party: [{ name: 'Ada' }, { name: 'Bo' }] },
    lots: [
      dinner({ code: 'A', recipe: 'stew', servingsPerPouch: 2, energyKcal: 700, proteinG: 5 }),
      dinner({ code: 'B', recipe: 'stew', energyKcal: 560, proteinG: 30 }),
      dinner({ code: 'C', recipe: 'dal', servingsPerPouch: 1.5, energyKcal: 400, proteinG: 25 }),
    ],
    settings: { proteinFloorG: 35, menuCosts: { proteinG: 4 } },
  },
  {
    name: 'bars that stay open for two days',
    trip: { dayCount: 3, firstMeal: 'lunch', lastMeal: 'dinner', party: [{ name: 'Ada' }] },
    lots: [
      snack({ code: 'A', recipe: 'bar', energyKcal: 690, pieces: 3, pouches: 3, dryWeightG: 160 }),
      snack({ code: 'B', recipe: 'nuts', energyKcal: 420, pieces: 2, pouches: 1, bestBefore: '2027-07-06' }),
    ],
    settings: { dryOpenDays: 2 },
  },
  {
    name: 'bars for two people, and a day that is heavier to carry for',
    trip: {
      dayCount: 3,
      firstMeal: 'lunch',
      lastMeal: 'lunch',
      party: [{ name: 'Ada' }, { name: 'Bo', allergens: ['nuts'] }],
      days: [{ walkingH: 8 }, { walkingH: 9 }, { walkingH: 2 }],
    },
    lots: [snack({ code: 'A', recipe: 'bar', energyKcal: 600, pieces: 4, pouches: 4, dryWeightG: 150 })],
    settings: { dryOpenDays: 2, menuCosts: { carriedKgH: 6, leftOverKcal: 0.1 } },
  },
  {
    name: 'more sorts than a person eats on a day, and two drinks',
    trip: { ...ONE_DINNER, firstMeal: 'lunch', party: [{ name: 'Ada', energyKcal: 3200 }] },
    lots: [
      ...['bar', 'nuts', 'figs', 'cheese'].map((recipe, at) =>
        snack({
          code: `S${at}`,
          recipe,
          energyKcal: 180 + 37 * at,
          pieces: 2,
          pouches: 1,
          dryWeightG: 50 - at,
        }),
      ),
      ...['cocoa', 'broth'].map((recipe, at) =>
        exampleLot({
          code: `D${at}`,
          recipe,
          mealKinds: ['drink'],
          energyKcal: 120,
          servingsPerPouch: 1 + at,
          pouches: 1,
        }),
      ),
    ],
  },
  {
    name: 'lunch of extras',
    trip: {
      dayCount: 1,
      firstMeal: 'lunch',
      lastMeal: 'dinner',
      party: [{ name: 'Ada' }],
      mealRules: [{ meals: ['lunch'], extras: true }],
    },
    lots: [
      snack({ code: 'A', recipe: 'bar', energyKcal: 250, pieces: 2, pouches: 2 }),
      snack({ code: 'B', recipe: 'cheese', energyKcal: 300, pouches: 2 }),
      dinner({ code: 'C', recipe: 'stew', energyKcal: 640 }),
    ],
  },
  {
    name: 'a dish that stands',
    trip: { dayCount: 2, firstMeal: 'dinner', lastMeal: 'dinner', party: [{ name: 'Ada' }] },
    lots: [
      dinner({ code: 'A', recipe: 'stew', energyKcal: 650 }),
      dinner({ code: 'B', recipe: 'dal', energyKcal: 560 }),
    ],
    change: (problem) => {
      const [lot] = problem.stock;
      if (!lot) throw new Error('no lot');
      const dish = { recipe: lot.recipe, role: 'main', style: 'own pouch' } as const;
      const dishes = [
        { ...dish, opened: [{ lot, pouches: 1 }], portions: [{ eater: 'Ada', lot, servings: 1 }] },
      ];
      return {
        ...problem,
        stock: problem.stock.map((other) => (other === lot ? { ...lot, pouches: 1 } : other)),
        kept: [{ day: 1, meal: 'dinner', group: problem.tasks[0]?.group ?? '', dishes, whole: true }],
      };
    },
  },
];

describe('small instances, by enumeration of every menu', () => {
  for (const { name, trip, lots, settings = {}, change = (problem: MenuProblem) => problem } of SMALL)
    it(`${name}: the program and the search find the best, and the bound is under it`, () => {
      const model: MenuModel = buildMenuModel(
        change(buildMenuProblem(exampleTrip(trip), [...lots], Settings.parse(settings))),
      );
      let [best, count] = [Infinity, 0];
      for (const menu of everyMenu(model)) {
        best = Math.min(best, scoreMenu(model, menu).points);
        if (count++ % 97 === 0) expect(brokenRules(model, menu)).toEqual([]);
      }
      if (process.env['SHOW']) console.log(name, count, best);
      expect(count).toBeGreaterThan(10);

      const program = menuProgram(model);
      const { isOptimal, points, values } = solved(program);
      expect(isOptimal).toBe(true);
      expect(points).toBeCloseTo(best, 3);
      const menu = menuOf(model, program, values);
      expect(brokenRules(model, menu)).toEqual([]);
      expect(scoreMenu(model, menu).points).toBeCloseTo(best, 3);

      const search = searched(model);
      expect(search.points).toBeCloseTo(best, 4);
      expect(search.bound).toBeLessThanOrEqual(best + 1e-6);
    });
});
