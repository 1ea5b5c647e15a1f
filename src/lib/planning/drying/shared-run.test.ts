import { describe, expect, it } from 'vitest';
import { exampleBatch, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import type { Batch } from '../model/batch.ts';
import { defaultKitchen } from '../model/kitchen.ts';
import { batchSheet } from './batch-sheet.ts';
import { batchesBeside, freeTrays } from './shared-run.ts';

const kitchen = defaultKitchen();
/** So many kg of one food on as many trays of 1 kg, of the four that the dryer has. */
const batch = (kg: number, changes: Parameters<typeof exampleBatch>[0] = {}): Batch => {
  const recipe = exampleRecipe();
  const ingredients = recipe.ingredients.map((one) => ({
    ...one,
    quantity: { amount: kg, unit: 'kg' as const },
  }));
  return exampleBatch({
    recipe: { ...recipe, ingredients },
    trays: Array.from({ length: kg }, () => ({ loadedG: 1000 })),
    weighings: [],
    ...changes,
  });
};
const sheet = (of: Batch, beside: Batch[] = []) => batchSheet(of, kitchen, [], '2026-09-03', beside);

describe('two dishes in one run of the dryer', () => {
  const [stew, soup] = [batch(3), batch(1)];

  it('dry as long as one that is as large, and each has its part of electricity and machine by its water', () => {
    const together = sheet(batch(4));
    const [ofStew, ofSoup] = [sheet(stew, [soup]), sheet(soup, [stew])];
    for (const { expected } of [ofStew, ofSoup]) expect(expected.run).toEqual(together.expected.run);
    expect(ofStew.run).toEqual({ share: expect.closeTo(0.75, 9), freeTrays: 3 });
    expect(ofSoup.run).toEqual({ share: expect.closeTo(0.25, 9), freeTrays: 1 });
    const minor = ({ cost }: typeof ofStew, what: string) =>
      cost.lines.find((line) => line.what === what)?.minor ?? NaN;
    for (const what of ['electricity', 'turnaround', 'machine'])
      expect(minor(ofStew, what) + minor(ofSoup, what)).toBeCloseTo(minor(together, what), 9);
  });

  it('share what the meter said of the run, whoever entered it', () => {
    const metered = { ...soup, energyKwh: 8 };
    const electricity = ({ cost }: ReturnType<typeof sheet>) =>
      cost.lines.find(({ what }) => what === 'electricity')?.minor;
    expect(electricity(sheet(metered, [stew]))).toBeCloseTo(2 * kitchen.electricityMinorPerKwh, 9);
    expect(electricity(sheet(stew, [metered]))).toBeCloseTo(6 * kitchen.electricityMinorPerKwh, 9);
  });

  it('have trays, servings and pouches of their own', () => {
    expect(sheet(stew, [soup]).load.trays).toHaveLength(3);
    expect(sheet(soup, [stew]).dry.servings).toBe(sheet(soup).dry.servings);
    // what does not fit beside the other is said
    const unloaded = batch(2, { trays: [] });
    expect(sheet(unloaded, [stew]).notices).toContainEqual(
      expect.objectContaining({ code: 'too-few-trays', params: expect.objectContaining({ count: 1 }) }),
    );
    expect(freeTrays(stew.dryer, [stew, soup])).toBe(0);
  });
});

it('finds the batches of a run, from the first and from those that joined it', () => {
  const all = [
    { id: 'a', value: batch(1) },
    { id: 'b', value: batch(1, { sharesRunOf: 'a' }) },
    { id: 'c', value: batch(1, { sharesRunOf: 'a' }) },
    { id: 'd', value: batch(1) },
  ];
  expect(
    all.map((one) =>
      batchesBeside(one, all)
        .map(({ id }) => id)
        .join(''),
    ),
  ).toEqual(['bc', 'ac', 'ab', '']);
});
