import { describe, expect, it } from 'vitest';
import { PouchLot } from './planning/model/pouch-lot.ts';
import { costByRecipe, servingsByBestBefore } from './shelf-pictures.ts';

const lot = (fields: Partial<PouchLot>): PouchLot =>
  PouchLot.parse({
    code: 'A1',
    recipe: 'Stew',
    mealKinds: ['dinner'],
    sealedOn: '2026-01-01',
    bestBefore: '2027-01-01',
    pouches: 2,
    servingsPerPouch: 2,
    dryWeightG: 120,
    energyKcal: 500,
    waterMl: 250,
    waterKind: 'boiling',
    steepMin: 9,
    tareG: 10,
    ...fields,
  });

describe('servingsByBestBefore', () => {
  it('puts what is past first and leaves no gap between months', () => {
    const spans = servingsByBestBefore(
      [
        lot({ bestBefore: '2026-05-01' }),
        lot({ bestBefore: '2026-06-20', mealKinds: ['lunch', 'snack'] }),
        lot({ bestBefore: '2026-08-31', pouches: 5 }),
        lot({ bestBefore: '2026-07-01', pouches: 0 }),
      ],
      '2026-06-15',
    );
    expect(spans.map(({ label, total, isPast }) => [label, total, isPast])).toEqual([
      ['past', 4, true],
      ['2026-06', 4, false],
      ['2026-07', 0, false],
      ['2026-08', 10, false],
    ]);
    expect(spans[1]?.servings).toMatchObject({ lunch: 4, dinner: 0 });
  });

  it.each([
    ['2027-11-30', 18, '2026-06'],
    ['2027-12-01', 7, '2026 Q2'],
    ['2030-09-30', 18, '2026 Q2'],
    ['2031-01-01', 6, '2026'],
    ['2060-01-01', 35, '2026'],
  ])('until %s: %d spans, the first %s', (bestBefore, count, first) => {
    const spans = servingsByBestBefore([lot({ bestBefore })], '2026-06-15');
    expect(spans).toHaveLength(count);
    expect(spans[0]?.label).toBe(first);
    expect(spans.reduce((sum, { total }) => sum + total, 0)).toBe(4);
  });

  it('is empty for an empty shelf', () => {
    expect(servingsByBestBefore([], '2026-06-15')).toEqual([]);
  });
});

it('costByRecipe weighs lots by their servings', () => {
  const costs = costByRecipe([
    lot({ costMinor: 100 }),
    lot({ costMinor: 250, pouches: 1 }),
    lot({ recipe: 'Oats', costMinor: 300, energyKcal: 0 }),
    lot({ recipe: 'Unknown' }),
    lot({ recipe: 'Gone', pouches: 0, costMinor: 100 }),
  ]);
  expect(costs).toEqual([
    { recipe: 'Oats', servingMinor: 300, low: 300, high: 300, per1000KcalMinor: undefined, servings: 4 },
    { recipe: 'Stew', servingMinor: 150, low: 100, high: 250, per1000KcalMinor: 300, servings: 6 },
  ]);
});
