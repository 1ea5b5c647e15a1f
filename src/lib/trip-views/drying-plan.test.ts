import { describe, expect, it } from 'vitest';
import type { ShoppingLine } from '../planning/model/trip-plan.ts';
import type { DryingPlan, PlannedLoad, PlannedRun } from '../planning/shortfall/plan-drying.ts';
import {
  amountToBuy,
  batchHref,
  groceriesCost,
  hoursWithRange,
  loadIsFor,
  timesText,
  traysText,
  whyToBuyText,
  workText,
} from './drying-plan.ts';

const load: PlannedLoad = {
  recipeId: 'r1',
  recipe: 'Lentil stew',
  timesCooked: 1.25,
  servings: 5,
  trays: 2,
  trayG: 948.6,
  energyKcal: 2000,
  shares: [
    { line: 0, energyKcal: 1500 },
    { line: 2, energyKcal: 400 },
  ],
};
const run: PlannedRun = {
  dryer: 'cellar & shed',
  cookOn: '2027-06-07',
  unloadOn: '2027-06-09',
  readyOn: '2027-06-09',
  turnaroundH: 0,
  freeOn: '2027-06-09',
  hours: { value: 26.4, low: 8.3, high: 34, terms: [] },
  basis: { energy: { meanPowerW: 900 } },
  trays: 2,
  trayCount: 4,
  loads: [load],
  joins: [],
};
const line = (meal: ShoppingLine['meal'], ...forEaters: string[]): ShoppingLine => ({
  meal,
  forEaters,
  exclusions: { allergens: [], diets: [] },
  missingKcal: 2000,
  plates: 4,
  missingServings: 4,
  suggestions: [],
});
const plan: DryingPlan = {
  readyBy: '2027-06-29',
  runs: [run],
  workDays: ['2027-06-07', '2027-06-09'],
  underWay: [],
  groceries: [
    { food: 'lentils', weightG: 500, costMinor: 149.6 },
    { food: 'salt', weightG: 4 },
  ],
  costMinor: 149.6,
  unpriced: ['salt'],
  toBuy: [],
  notes: [],
};

it('a load says how much, on what, for whom, and where to begin', () => {
  expect(timesText(load.timesCooked)).toBe('1 1/4 times the recipe');
  expect([0.25, 1, 2].map(timesText)).toEqual(['1/4 of the recipe', 'the recipe once', '2 times the recipe']);
  expect(traysText(load, 'metric')).toBe('2 trays of about 949 g');
  const lines = [line('dinner', 'Ada', 'Ben'), line('lunch', 'Ada'), line('dinner', 'Cy')];
  expect(loadIsFor(load, lines, 3)).toBe('dinner for Ada, Ben; dinner for Cy');
  expect(loadIsFor(load, lines, 2)).toBe('dinner for everyone; dinner for Cy');
  const { searchParams, pathname } = new URL(batchHref(run, load), 'http://localhost');
  expect(pathname).toBe('/kitchen/batches/new');
  expect(Object.fromEntries(searchParams)).toEqual({ recipe: 'r1', times: '1.25', dryer: 'cellar & shed' });
});

it('runs say their hours with the range, and on which days there is work', () => {
  expect(hoursWithRange(run.hours)).toBe('26 h (8.5 h to 34 h)');
  expect(workText(plan)).toBe('1 run, work on 2 days (Mon 7 Jun · Wed 9 Jun). All is sealed by Tue 29 Jun.');
});

describe('groceries', () => {
  it('are rounded up, never down, to what a scale can weigh out', () => {
    const metric = (weightG: number) => amountToBuy({ weightG }, 'metric');
    expect([4.2, 99.5, 101, 500, 1001].map(metric)).toEqual(['5 g', '100 g', '110 g', '500 g', '1,050 g']);
    // 1 oz is 28.349523125 g (NIST Handbook 44, app. C)
    const us = (weightG: number) => amountToBuy({ weightG }, 'us');
    expect([28.349523125, 30, 460].map(us)).toEqual(['1.0 oz', '1.5 oz', '17.0 oz']);
  });

  it('are counted where a piece is known', () =>
    expect(amountToBuy({ weightG: 150, pieces: 2.5 }, 'metric')).toBe('150 g, about 3 pieces'));

  it('have a sum that says what it leaves out, or none', () => {
    expect(groceriesCost(plan, 'EUR')).toBe('Together €1.50, without salt, of which no price is known.');
    expect(groceriesCost({ ...plan, unpriced: [] }, 'EUR')).toBe('Together €1.50.');
    expect(groceriesCost({ ...plan, costMinor: 0, unpriced: ['lentils', 'salt'] }, 'EUR')).toBeUndefined();
  });
});

it.each([
  [{ kind: 'no recipe' }, 'No recipe of the kitchen is for lunch.'],
  [{ kind: 'no dryer' }, 'The equipment lists no dryer.'],
  [
    { kind: 'not suited', recipes: [{ recipe: 'Pan', because: { kind: 'holds', allergens: ['milk'] } }] },
    'No recipe for lunch suits: Pan contains milk.',
  ],
  [
    { kind: 'too large', recipes: ['Pot', 'Vat'] },
    'Even a quarter of the recipe does not fit in a dryer: Pot, Vat. Make a smaller recipe of it.',
  ],
  [{ kind: 'no time' }, 'No further run can be sealed by Tue 29 Jun.'],
] as const)('what is to buy says why: $0.kind', (why, text) =>
  expect(whyToBuyText(why, 'lunch', '2027-06-29')).toBe(text),
);
