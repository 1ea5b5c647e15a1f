import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstExpired } from '../../src/lib/planning/menu/first-expired.ts';
import { layMeal } from '../../src/lib/planning/menu/lay-meal.ts';
import { asLaying, pricedOf, type Surroundings } from '../../src/lib/planning/menu/laying.ts';
import { buildMenuModel, type ModelSlot } from '../../src/lib/planning/menu/menu-model.ts';
import { mealKey, type MenuProblem } from '../../src/lib/planning/menu/menu-problem.ts';
import { MenuState } from '../../src/lib/planning/menu/menu-state.ts';
import { fromModel, toModel } from '../../src/lib/planning/menu/place-menu.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/menu/score-menu.ts';
import { mayEat } from '../../src/lib/planning/menu/exclusions.ts';
import { PORTION_SIZES, SERVING_STYLES } from '../../src/lib/planning/model/words.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { buildMenuProblem } from '../../src/lib/planning/plan-trip.ts';
import { stocks, trips } from '../support/arbitraries.ts';
import { exampleLot, exampleTrip } from '../support/examples.ts';
import { menuModels, menuProblems, menuSettings, searched } from '../support/menu-cases.ts';
import { everyLaying, randomMenu } from '../support/menu-rules.ts';

const RUNS = { numRuns: 60, seed: 20_270_704, endOnFailure: true };
/** A part of the quick search: the rules hold at any effort. */
const WORK = 20_000;

describe('a menu that was searched for', () => {
  it('breaks no hard rule, costs what the scoring says, and lies above its bound', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const { menu, points, bound } = searched(model, { work: WORK });
        expect(brokenRules(model, menu)).toEqual([]);
        expect(points).toBeCloseTo(scoreMenu(model, menu).points, 4);
        expect(bound).toBeLessThanOrEqual(points + 1e-4);
      }),
      RUNS,
    ));

  it('is never worse than first expired, first out', () =>
    fc.assert(
      fc.property(menuProblems, (problem) => {
        const model = buildMenuModel(problem);
        const first = toModel(model, firstExpired.choose(problem));
        expect(brokenRules(model, first)).toEqual([]);
        expect(searched(model, { work: WORK }).points).toBeLessThanOrEqual(
          scoreMenu(model, first).points + 1e-6,
        );
      }),
      RUNS,
    ));

  it('is never worse than a menu that it began with', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const start = randomMenu(model, seed);
        expect(searched(model, { work: 1000, starts: [start] }).points).toBeLessThanOrEqual(
          scoreMenu(model, start).points + 1e-6,
        );
      }),
      { ...RUNS, numRuns: 20 },
    ));

  it('is the same for the same input, to the byte', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const once = JSON.stringify(searched(model, { work: WORK }));
        expect(JSON.stringify(searched(model, { work: WORK }))).toBe(once);
      }),
      { ...RUNS, numRuns: 20 },
    ));

  it('serves nobody what they exclude, and nothing past its date', () =>
    fc.assert(
      fc.property(trips, stocks, (trip, stock) => {
        const problem = buildMenuProblem(trip, stock, defaultSettings());
        const model = buildMenuModel(problem);
        for (const { day, dishes } of fromModel(model, searched(model, { work: WORK }).menu)) {
          const date = problem.demand.find((other) => other.day === day)?.date ?? '';
          for (const { portions } of dishes)
            for (const { eater, lot } of portions) {
              const person = trip.party.find(({ name }) => name === eater);
              expect(person && mayEat(lot, person)).toBe(true);
              expect(lot.bestBefore >= date).toBe(true);
            }
        }
      }),
      RUNS,
    ));

  it('comes back the same from the meals that it is written as', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const { menu, points } = searched(model, { work: WORK });
        expect(scoreMenu(model, toModel(model, fromModel(model, menu))).points).toBeCloseTo(points, 4);
      }),
      RUNS,
    ));
});

describe('meals that stand', () => {
  it('stand as they are, and the search works around them', () =>
    fc.assert(
      fc.property(menuProblems, fc.nat(), (problem, pick) => {
        const chosen = firstExpired.choose(problem).filter(({ dishes }) => dishes.length > 0);
        fc.pre(chosen.length > 0);
        const kept = chosen[pick % chosen.length];
        if (!kept) return;
        const taken = new Map<string, number>();
        for (const { opened } of kept.dishes)
          for (const { lot, pouches } of opened) taken.set(lot.code, (taken.get(lot.code) ?? 0) + pouches);
        const around: MenuProblem = {
          ...problem,
          kept: [...problem.kept, { ...kept, whole: true }],
          stock: problem.stock.map((lot) => ({ ...lot, pouches: lot.pouches - (taken.get(lot.code) ?? 0) })),
        };
        const model = buildMenuModel(around);
        const { menu, points } = searched(model, { work: WORK });
        expect(brokenRules(model, menu)).toEqual([]);
        expect(points).toBeCloseTo(scoreMenu(model, menu).points, 4);
        const key = mealKey(kept.day, kept.meal, kept.group);
        expect(fromModel(model, menu).some(({ day, meal, group }) => mealKey(day, meal, group) === key)).toBe(
          false,
        );
      }),
      RUNS,
    ));
});

describe('a menu that is changed bit by bit', () => {
  it('costs what the scoring says, and the same again after changes back', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const menu = randomMenu(model, seed);
        const state = MenuState.of(model, menu);
        const { points } = scoreMenu(model, menu);
        expect(state.points()).toBeCloseTo(points, 4);
        const other = randomMenu(model, seed + 1);
        for (const { index } of model.extraDays) state.clearExtras(index);
        for (const { index } of model.slots) state.clear(index);
        for (const laying of other.layings) state.lay(laying);
        for (const { index } of model.slots) state.clear(index);
        for (const laying of menu.layings) state.lay(laying);
        for (const { extraDay, lot, place, units } of menu.extras)
          state.addUnits(extraDay, lot, [place], units);
        expect(state.points()).toBeCloseTo(points, 4);
      }),
      { ...RUNS, numRuns: 150 },
    ));
});

/** One dinner of one to three people, on a shelf of one to four lots. */
const tables = fc
  .record({
    party: fc.array(
      fc.record({
        energyKcal: fc.integer({ min: 1400, max: 3600 }),
        milk: fc.boolean(),
        portion: fc.option(fc.constantFrom(...PORTION_SIZES), { nil: undefined }),
        taste: fc.constantFrom(undefined, 'never', 'rather not', 'gladly'),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    lots: fc.array(
      fc.record({
        recipe: fc.constantFrom('stew', 'dal', 'rice'),
        servingsPerPouch: fc.constantFrom(0.5, 1, 1, 1.25, 1.5, 2, 2.5, 4),
        energyKcal: fc.integer({ min: 250, max: 900 }),
        proteinG: fc.integer({ min: 0, max: 40 }),
        milk: fc.boolean(),
        pouchTakesBoilingWater: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    pouches: fc.constantFrom(1, 2, 3, 20),
    servingStyle: fc.constantFrom(...SERVING_STYLES),
    settings: menuSettings,
  })
  .map(({ party, lots, pouches, servingStyle, settings }) => {
    const trip = exampleTrip({
      dayCount: 1,
      firstMeal: 'dinner',
      lastMeal: 'dinner',
      servingStyle,
      party: party.map(({ energyKcal, milk, portion, taste }, index) => ({
        name: `eater ${index + 1}`,
        energyKcal,
        ...(milk && { allergens: ['milk' as const] }),
        ...(portion && { portion }),
        ...(taste && { tastes: [{ food: 'stew', taste }] }),
      })),
    });
    const stock = lots.map(({ milk, ...lot }, index) =>
      exampleLot({ ...lot, code: `L${index}`, pouches, allergens: milk ? ['milk'] : [] }),
    );
    return buildMenuModel(buildMenuProblem(trip, stock, settings));
  });

/** What may surround a meal: prices of pouches and dishes, and energy and protein that are worth the less the more there is. */
function randomSurroundings(slot: ModelSlot, seed: number): Surroundings {
  const random = randomFrom(seed);
  const kept = new Map<string, number>();
  const drawn = (key: string, of: () => number) => {
    const value = kept.get(key) ?? of();
    kept.set(key, value);
    return value;
  };
  const some = (most: number) => (random() < 0.4 ? 0 : random() * most);
  const plates = slot.people.map((_, place) => {
    const planned = slot.plannedKcal[place] ?? 0;
    const [first = 0, second = 0] = [random(), random()]
      .map((share) => 1.8 * share * planned)
      .sort((a, b) => a - b);
    return {
      first,
      second,
      below: some(2),
      between: some(1),
      above: some(0.6),
      slope: 1.5 * (random() - 0.6),
      lack: some(2),
      fromG: 20 * (random() - 0.5),
    };
  });
  return {
    plate: (place, kcal, lackG) => {
      const of = plates[place];
      if (!of) return 0;
      const energy =
        of.slope * kcal +
        of.below * Math.max(0, of.first - kcal) +
        of.between * Math.max(0, of.second - kcal) +
        of.above * Math.max(0, kcal - of.second);
      return energy + of.lack * Math.max(0, lackG - of.fromG);
    },
    kinks: (place) => [plates[place]?.first ?? 0, plates[place]?.second ?? 0],
    eats: (place, dish) => drawn(`eats ${place} ${dish}`, () => some(30)),
    pouch: (lot) => drawn(`pouch ${lot}`, () => some(120)),
    opens: (dish, servings) =>
      servings > drawn(`above ${dish}`, () => 4 * random()) ? drawn(`opens ${dish}`, () => some(60)) : 0,
  };
}

describe('a table that is laid', () => {
  it('is laid in the cheapest way there is, whatever surrounds it', () =>
    fc.assert(
      fc.property(tables, fc.nat(1000), (model, seed) => {
        for (const slot of model.slots) {
          const around = seed % 4 === 0 ? new MenuState(model).around(slot) : randomSurroundings(slot, seed);
          let best = Infinity;
          for (const parts of everyLaying(model, slot))
            best = Math.min(best, pricedOf(model, slot, asLaying(model, slot, parts), around));
          const laid = layMeal(model, slot, around);
          expect(laid.priced).toBeCloseTo(pricedOf(model, slot, laid.laying, around), 6);
          expect(brokenRules(model, { layings: [laid.laying], extras: [] })).toEqual([]);
          expect(laid.least).toBeLessThanOrEqual(best + 1e-6);
          // where people by themselves want the same last pouches, they are served in every order, which is not all there is
          expect(laid.priced).toBeGreaterThanOrEqual(best - 1e-6);
          if (laid.priced > best + 1e-4) expect(laid.least).toBeLessThan(laid.priced - 1e-6);
        }
      }),
      { ...RUNS, numRuns: 300 },
    ));

  it('costs no less than what is said to be the least, at large tables too', () => {
    const names = Array.from({ length: 9 }, (_, index) => `eater ${index + 1}`);
    for (const servingStyle of SERVING_STYLES)
      for (const eaters of [5, 7, 9]) {
        const trip = exampleTrip({
          dayCount: 1,
          firstMeal: 'dinner',
          lastMeal: 'dinner',
          servingStyle,
          party: names.slice(0, eaters).map((name, index) => ({ name, energyKcal: 1800 + 200 * index })),
          cookGroups: [{ name: 'all', eaters: names.slice(0, eaters) }],
        });
        const stock = ['stew', 'dal', 'rice', 'pasta'].flatMap((recipe, index) =>
          [1, 2, 4].map((servingsPerPouch) =>
            exampleLot({
              recipe,
              code: `${recipe} ${servingsPerPouch}`,
              servingsPerPouch,
              energyKcal: 380 + 70 * index,
              pouches: 2,
            }),
          ),
        );
        const model = buildMenuModel(buildMenuProblem(trip, stock, defaultSettings()));
        for (const slot of model.slots)
          for (let seed = 0; seed < 40; seed++) {
            const around = randomSurroundings(slot, seed);
            const laid = layMeal(model, slot, around);
            expect(laid.least).toBeLessThanOrEqual(laid.priced + 1e-6);
            for (const { laying } of laid.others)
              expect(brokenRules(model, { layings: [laying], extras: [] })).toEqual([]);
            for (const laying of randomMenu(model, seed).layings)
              expect(laid.least).toBeLessThanOrEqual(pricedOf(model, slot, laying, around) + 1e-6);
          }
      }
  });
});
