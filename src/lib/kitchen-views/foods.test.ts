import { expect, it } from 'vitest';
import { Food } from '../planning/model/composition.ts';
import { foodRow } from './foods.ts';

const composition = { waterG: 70.04, proteinG: 2, fatG: 0.25, carbohydrateG: 20, fibreG: 5, alcoholG: 1 };
const food = (more: Partial<Food['composition']> = {}) =>
  Food.parse({ name: 'leek', source: 'a book', composition: { ...composition, ...more } });

it('reads like a row of a printed table', () => {
  expect(foodRow(food({ energyKcal: 107.4, sodiumMg: 310 }))).toEqual({
    name: 'leek',
    parts: ['70', '2', '0.3', '20', '5', '1', '–', '310'],
    energy: '107',
    byFactors: false,
    source: 'a book',
    doubts: [],
  });
});

it('reckons the energy where none is stated', () => {
  // 4 × 2 + 9 × 0.25 + 4 × 20 + 2 × 5 + 7 × 1
  expect(foodRow(food())).toMatchObject({ energy: '107', byFactors: true });
});

it('says what is doubtful, and what can be deleted', () => {
  const odd = food({ waterG: 90, energyKcal: 440 });
  const row = foodRow(odd, { id: 'x', version: 3, updatedAt: '2026-01-01T00:00:00Z', value: odd });
  expect(row.doubts).toHaveLength(2);
  expect(row.own).toEqual({ id: 'x', version: 3 });
});
