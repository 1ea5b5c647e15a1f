import { describe, expect, it } from 'vitest';
import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { Batch } from '$lib/planning/model/batch.ts';
import { defaultKitchen } from '$lib/planning/model/kitchen.ts';
import { Recipe } from '$lib/planning/model/recipe.ts';
import {
  batchFields,
  batchLabel,
  freeBatchCode,
  readCook,
  readFills,
  readLoad,
  readNewBatch,
  readPortions,
  readSeal,
  readWeighing,
  type ReadStep,
} from './batch-form.ts';

const METRIC = { unitSystem: 'metric', currency: 'EUR' } as const;
const KITCHEN = defaultKitchen();
const TODAY = '2026-11-25';
const RECIPE = Recipe.parse({
  name: 'Chicken rice',
  mealKinds: ['dinner'],
  servings: 8,
  ingredients: [
    {
      food: {
        name: 'chicken',
        source: 'made up',
        composition: { waterG: 74, proteinG: 22, fatG: 3, carbohydrateG: 0 },
        allergens: [],
        cookingClass: 'poultry',
      },
      quantity: { amount: 2, unit: 'kg' },
    },
  ],
});
const NEW = Batch.parse({
  code: 'B1',
  recipe: RECIPE,
  cookedOn: '2026-11-24',
  dryer: KITCHEN.dryers[0],
});
const LOADED: Batch = { ...NEW, trays: [1, 2].map(() => ({ tareG: 600, loadedG: 1500 })) };

function step(read: ReadStep, batch: Batch, fields: Entered) {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of values) form.append(name, value);
  const reader = new FormReader(form, 'metric');
  return { batch: read(reader, batch, KITCHEN, TODAY), problems: reader.problems };
}

it('every step reads back the batch that its form was filled with', () => {
  const pouch = KITCHEN.pouches[0]!;
  const batch = Batch.parse({
    ...LOADED,
    timesCooked: 1.5,
    cookedG: 2500,
    checks: [{ id: 'cooked poultry', on: '2026-11-24', readingC: 76 }],
    packedG: 700,
    energyKwh: 18.5,
    cup: { volumeMl: 250, netG: 90 },
    servings: 7,
    fills: [
      { pouch, half: true, servings: 1, pouches: 3, absorber: KITCHEN.absorbers[0], absorbers: 1 },
      { pouch, servings: 4, pouches: 1, absorber: KITCHEN.absorbers[1], absorbers: 2 },
    ],
    allergens: ['celery'],
    bestBefore: '2028-01-01',
    note: 'mild',
    releasedBecause: 'felt dry',
  });
  const fields = { ...batchFields(batch, batch.fills ?? [], METRIC), dryer: [batch.dryer.name] };
  for (const read of [readCook, readLoad, readFills, readSeal])
    expect(step(read, batch, fields)).toEqual({ batch, problems: [] });
  expect(step(readPortions, batch, fields).batch).toEqual({ ...batch, fills: undefined });
});

describe('readLoad', () => {
  const load = { dryer: [NEW.dryer.name] };
  it('wants a tray', () => {
    expect(step(readLoad, NEW, load).problems).toEqual([
      { field: 'trays', message: expect.stringContaining('weigh at least one tray') },
    ]);
  });
  it('passes over trays left empty and puts problems where they were typed', () => {
    const tray = (row: number, tareG: string, loadedG: string): Entered => ({
      [`trays[${row}].tareG`]: [tareG],
      [`trays[${row}].loadedG`]: [loadedG],
    });
    expect(
      step(readLoad, NEW, { ...load, ...tray(1, '', '900'), ...tray(3, '600', '1400') }).batch?.trays,
    ).toEqual([
      { tareG: 0, loadedG: 900 },
      { tareG: 600, loadedG: 1400 },
    ]);
    expect(step(readLoad, NEW, { ...load, ...tray(1, '', '-3'), ...tray(3, '600', '500') }).problems).toEqual(
      [
        { field: 'trays[1].loadedG', message: expect.stringContaining('must') },
        { field: 'trays[3].loadedG', message: 'must be more than the empty tray' },
      ],
    );
    expect(batchLabel('trays[3].loadedG')).toBe('Tray 4, with wet food');
    expect(batchLabel('fills[0].pouches')).toBe('Pouches, line 1, how many');
    expect(batchLabel('reading.cooked poultry')).toBe('Temperature, cooked poultry');
  });
  it('does not drop a tray whose empty weight alone was entered, nor one more than the dryer has', () => {
    const trays = (rows: readonly number[]): Entered =>
      Object.fromEntries(
        rows.flatMap((row) => [
          [`trays[${row}].tareG`, ['600']],
          [`trays[${row}].loadedG`, ['1500']],
        ]),
      );
    expect(step(readLoad, NEW, { ...load, ...trays([0]), 'trays[1].tareG': ['620'] }).problems).toEqual([
      { field: 'trays[1].loadedG', message: expect.stringContaining('weigh it with its food too') },
    ]);
    expect(step(readLoad, NEW, { ...load, ...trays([0, 1, 2, 3, 4]) }).problems).toEqual([
      { field: 'trays', message: expect.stringContaining('has 4') },
    ]);
  });
  it('does not drop a tray that was weighed while drying', () => {
    const weighed: Batch = {
      ...LOADED,
      weighings: [
        { afterH: 20, trays: LOADED.trays.map(() => ({ grossG: 900, feel: 'not felt' as const })) },
      ],
    };
    const { problems } = step(readLoad, weighed, { ...load, 'trays[0].loadedG': ['1500'] });
    expect(problems[0]).toEqual({
      field: 'trays',
      message: expect.stringContaining('Remove those weighings'),
    });
  });
});

describe('readWeighing', () => {
  it('adds a weighing', () => {
    const { batch } = step(readWeighing, LOADED, {
      afterH: ['24'],
      'weighed[0].grossG': ['850'],
      'weighed[0].feel': ['cold spot'],
      'weighed[1].grossG': [''],
      'weighed[1].feel': ['not felt'],
    });
    expect(batch?.weighings).toEqual([
      { afterH: 24, trays: [{ grossG: 850, feel: 'cold spot' }, { feel: 'not felt' }] },
    ]);
  });
  it('refuses food heavier dry than wet, a time that runs backwards, and nothing at all', () => {
    const heavier = step(readWeighing, LOADED, { afterH: ['24'], 'weighed[1].grossG': ['1600'] });
    expect(heavier.problems).toEqual([
      { field: 'weighed[1].grossG', message: expect.stringMatching(/cannot be more than the 1500 g/) },
    ]);
    const first = step(readWeighing, LOADED, { afterH: ['24'], 'weighed[1].grossG': ['900'] }).batch!;
    expect(step(readWeighing, first, { afterH: ['20'], 'weighed[1].grossG': ['890'] }).problems).toEqual([
      { field: 'afterH', message: expect.stringContaining('later than the weighing before') },
    ]);
    expect(step(readWeighing, LOADED, { afterH: ['24'] }).problems).toEqual([
      { field: 'weighed[0].grossG', message: 'weigh at least one tray' },
    ]);
    expect(step(readWeighing, NEW, { afterH: ['24'] }).problems[0]?.message).toMatch(/No trays weighed yet/);
  });
});

describe('readCook', () => {
  const cook = { timesCooked: ['1'], cookedOn: ['2026-11-24'] };
  it('records a check with its temperature and the day', () => {
    const { batch } = step(readCook, NEW, {
      ...cook,
      'check.cooked poultry': ['yes'],
      'reading.cooked poultry': ['77'],
    });
    expect(batch?.checks).toEqual([{ id: 'cooked poultry', on: TODAY, readingC: 77, note: '' }]);
    expect(step(readCook, batch!, cook).batch?.checks).toEqual([]);
  });
  it('takes a temperature that was entered for the tick, and none that food cannot have', () => {
    expect(step(readCook, NEW, { ...cook, 'reading.cooked poultry': ['76'] }).batch?.checks).toEqual([
      { id: 'cooked poultry', on: TODAY, readingC: 76, note: '' },
    ]);
    expect(step(readCook, NEW, { ...cook, 'reading.cooked poultry': ['165'] }).problems).toEqual([
      { field: 'reading.cooked poultry', message: expect.stringContaining('at most 130 °C') },
    ]);
  });
  it('refuses what cannot be', () => {
    expect(step(readCook, NEW, { ...cook, timesCooked: ['0'], cookedG: ['zero'] }).problems).toEqual([
      { field: 'cookedG', message: expect.stringContaining('not a number') },
      { field: 'timesCooked', message: 'must be more than 0' },
    ]);
  });
});

it('a cup needs its volume and its weight', () => {
  expect(step(readPortions, LOADED, { 'cup.volumeMl': ['250'] }).problems).toEqual([
    { field: 'cup.netG', message: expect.stringContaining('both') },
  ]);
});

it('pouches are those of the equipment, and at least one line', () => {
  expect(step(readFills, LOADED, {}).problems).toEqual([
    { field: 'fills', message: expect.stringContaining('at least one line') },
  ]);
  const { problems } = step(readFills, LOADED, {
    'fills[2].container': ['whole paper bag'],
    'fills[2].pouches': ['2'],
    'fills[2].servings': ['0'],
  });
  expect(problems.map(({ field }) => field)).toEqual(['fills[2].container', 'fills[2].servings']);
});

describe('a new batch', () => {
  const form = (fields: Entered) => {
    const data = new FormData();
    for (const [name, values] of Object.entries(fields)) for (const value of values) data.append(name, value);
    return new FormReader(data, 'metric');
  };
  const stored = { id: 'r1', version: 1, updatedAt: '', value: RECIPE };
  const fields = {
    code: ['B2'],
    timesCooked: ['2'],
    cookedOn: ['2026-11-24'],
    dryer: ['dehydrator'],
    preFrozen: ['yes'],
  };
  it('copies recipe and dryer', () => {
    expect(readNewBatch(form(fields), stored, KITCHEN)).toMatchObject({
      recipeId: 'r1',
      recipe: RECIPE,
      dryer: { name: 'dehydrator' },
      preFrozen: true,
      timesCooked: 2,
    });
  });
  it('wants a recipe that is ready', () => {
    const read = form(fields);
    const empty = { ...stored, value: { ...RECIPE, ingredients: [] } };
    expect(readNewBatch(read, empty, KITCHEN)).toBeUndefined();
    expect(read.problems).toEqual([{ field: 'recipe', message: expect.stringContaining('is incomplete') }]);
  });
  it('gets a code that is free', () => {
    expect(freeBatchCode(TODAY, [])).toBe('B261125');
    expect(freeBatchCode(TODAY, ['B261125', 'B261125b'])).toBe('B261125c');
  });
});
