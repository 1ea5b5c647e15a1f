import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { kitchenFoods } from '../lib/foods/kitchen-foods.ts';
import { defaultKitchen } from '../lib/planning/model/kitchen.ts';
import { defaultSettings } from '../lib/planning/model/settings.ts';
import { Trip } from '../lib/planning/model/trip.ts';
import { wordedPlan } from '../lib/presentation/worded-plan.ts';
import { planTrip } from '../lib/planning/plan-trip.ts';
import { exampleBatch, exampleRecipe } from '../../tests/support/kitchen-examples.ts';
import { fileSource, readStock } from './read-inputs.ts';
import { ROOT } from './run.ts';

const fileText = (file: string) => readFileSync(path.join(ROOT, file), 'utf8');
const demoTrip = JSON.parse(fileText('demo-data/trip.json'));
const { stock } = await readStock(
  fileSource(path.join(ROOT, 'demo-data/shelf.csv')),
  'EUR',
  '2026-12-01',
  false,
);

/** Dates also carry a pattern, so the format needs no checker of its own. */
const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true, formats: { date: true } });

/** @returns where the value breaks the published schema, by a validator that knows nothing of ours. */
function faults(name: string, value: unknown): string[] {
  const schema = JSON.parse(fileText(`docs/schema/${name}.json`));
  const validate = ajv.getSchema(`${name}`) ?? ajv.compile({ $id: name, ...schema });
  if (validate(value) === true) return [];
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

test('the demo trip is a trip by the published schema', () => {
  expect(faults('trip', demoTrip)).toEqual([]);
});

test('the rows of the demo shelf are stock rows by the published schema', () => {
  expect(stock.length).toBeGreaterThan(20);
  expect(stock.flatMap((lot) => faults('stock-row', lot))).toEqual([]);
});

test('the usual settings, and none at all, are settings by the published schema', () => {
  expect(faults('settings', defaultSettings())).toEqual([]);
  expect(faults('settings', {})).toEqual([]);
});

test('a kitchen, a recipe with its foods, and a batch are what the published schemas say', () => {
  expect(faults('kitchen', defaultKitchen())).toEqual([]);
  expect(faults('kitchen', {})).toEqual([]);
  expect(kitchenFoods().foods.flatMap((food) => faults('food', food))).toEqual([]);
  expect(faults('recipe', exampleRecipe())).toEqual([]);
  expect(faults('batch', exampleBatch())).toEqual([]);
  expect(faults('batch', { ...exampleBatch(), trays: [{ loadedG: -1 }] })).not.toEqual([]);
});

test('a plan is a trip plan by the published schema', () => {
  const plan = planTrip(Trip.parse(demoTrip), stock, defaultSettings());
  expect(faults('trip-plan', JSON.parse(JSON.stringify(wordedPlan(plan, 'metric'))))).toEqual([]);
});

test.each([
  ['no days', { dayCount: 0 }, '/dayCount'],
  ['nobody', { party: [] }, '/party'],
  ['an unknown allergen', { party: [{ name: 'Ilse', allergens: ['krill'] }] }, '/party/0/allergens/0'],
  ['a date in words', { startDate: 'the fifth of July' }, '/startDate'],
  ['an unknown field', { dayCont: 5 }, ''],
])('the published schema refuses a trip with %s', (_, change, place) => {
  expect(faults('trip', { ...demoTrip, ...change }).map((fault) => fault.split(' ')[0])).toContain(place);
});
