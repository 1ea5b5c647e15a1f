import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { guessMapping } from '$lib/shelf-csv/guess-mapping.ts';
import type { JudgedRow } from '$lib/shelf-csv/preview-import.ts';
import { describe, expect, it } from 'vitest';
import { previewRow } from './preview-rows.ts';

const LOT: PouchLot = {
  code: 'A1',
  recipe: 'Bean stew',
  mealKinds: ['lunch', 'dinner'],
  sealedOn: '2026-03-01',
  bestBefore: '2027-09-01',
  pouches: 4,
  servingsPerPouch: 2,
  dryWeightG: 120,
  energyKcal: 470,
  waterMl: 300,
  waterKind: 'boiling',
  steepMin: 15,
  tareG: 14,
  diets: [],
  note: '',
};
const mapping = guessMapping({ header: ['recipe', 'code'], sample: [] });
const base = { row: 7, cells: ['Bean stew', 'A1'], warnings: [] };
const shownIn = (unitSystem: 'metric' | 'us') => ({ unitSystem, currency: 'EUR' });
const lines = (judged: JudgedRow, unitSystem: 'metric' | 'us' = 'metric') =>
  previewRow(judged, mapping, shownIn(unitSystem), { today: '2026-12-01' }).lines;

describe('previewRow', () => {
  it('says what is in a new lot, in the units of the household', () => {
    expect(lines({ ...base, fate: 'new', lot: LOT })).toEqual([
      '4 pouches of 2 servings; lunch or dinner; each 120 g, 470 kcal, 300 ml boiling water; best before 2027-09-01; allergens not declared',
    ]);
    expect(lines({ ...base, fate: 'new', lot: { ...LOT, allergens: [] } }, 'us')[0]).toMatch(
      /each 4\.2 oz, 470 kcal, 10\.1 fl oz boiling water.*declared free of allergens/,
    );
  });

  it('says what changes, from what to what', () => {
    const changed: JudgedRow = {
      ...base,
      fate: 'changed',
      before: LOT,
      lot: {
        ...LOT,
        pouches: 3,
        dryWeightG: 120.4,
        steepMin: 20,
        allergens: ['milk'],
        costMinor: 185,
        note: 'salty',
      },
      changed: ['pouches', 'dryWeightG', 'steepMin', 'allergens', 'costMinor', 'note'],
    };
    expect(lines(changed)).toEqual([
      'Pouches: 4 → 3',
      'Dry weight: 120 g → 120.4 g',
      'Rehydration time: 15 min → 20 min',
      'Allergens: not declared → milk',
      'Cost: not entered → 1.85',
      'Note: nothing → salty',
    ]);
  });

  it('names a refused row by its own cells, with column, value and reason', () => {
    const problems = [{ column: 'Weight', field: 'Dry weight', value: '-5', reason: 'must not be negative' }];
    expect(
      previewRow({ ...base, fate: 'refused', problems }, mapping, shownIn('metric'), { today: '2026-12-01' }),
    ).toEqual({
      row: 7,
      fate: 'refused',
      code: 'A1',
      recipe: 'Bean stew',
      lines: ['Weight "-5": must not be negative'],
      warnings: [],
      repairs: [],
    });
  });
});
