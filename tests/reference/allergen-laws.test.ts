/** Sources: FALCPA 2004 (Public Law 108-282, title II) and FASTER Act 2021 (Public Law 117-11): nine allergens; Regulation (EU) 1169/2011, Annex II: fourteen. */
import { describe, expect, it } from 'vitest';
import { batchSheet } from '../../src/lib/planning/drying/batch-sheet.ts';
import { ALLERGEN_LIST, avoided } from '../../src/lib/planning/model/allergens.ts';
import { defaultKitchen } from '../../src/lib/planning/model/kitchen.ts';
import { exampleBatch, exampleFood, exampleRecipe } from '../support/kitchen-examples.ts';

const codes = (law: 'us' | 'eu') => ALLERGEN_LIST.filter((entry) => entry[law]).map((entry) => entry.code);

describe('the allergen list', () => {
  it('holds the nine of US law', () => {
    expect(codes('us').sort()).toEqual([
      'crustaceans',
      'egg',
      'fish',
      'milk',
      'nuts',
      'peanut',
      'sesame',
      'soy',
      'wheat',
    ]);
  });

  it('holds the fourteen of EU law', () => {
    expect(codes('eu').sort()).toEqual(
      [
        'celery',
        'crustaceans',
        'egg',
        'fish',
        'gluten',
        'lupin',
        'milk',
        'molluscs',
        'mustard',
        'nuts',
        'peanut',
        'sesame',
        'soy',
        'sulphites',
      ].sort(),
    );
  });

  it('takes wheat and cereals with gluten as one when avoiding, on the safe side', () => {
    expect([...avoided(['wheat'])].sort()).toEqual(['gluten', 'wheat']);
    expect([...avoided(['gluten'])].sort()).toEqual(['gluten', 'wheat']);
    expect([...avoided(['milk'])]).toEqual(['milk']);
  });

  it('goes whole from the ingredients of a recipe to the lots that are sealed', () => {
    const recipeWith = (law: 'us' | 'eu') =>
      exampleRecipe({
        ingredients: codes(law).map((code) => ({
          food: exampleFood({ name: code, allergens: [code] }),
          quantity: { amount: 400, unit: 'g' },
        })),
      });
    for (const law of ['us', 'eu'] as const) {
      const { lots } = batchSheet(
        exampleBatch({ recipe: recipeWith(law), cookedG: 4000, weighings: [] }),
        defaultKitchen(),
        [],
        '2026-09-03',
      );
      expect(lots.length).toBeGreaterThan(0);
      for (const lot of lots) expect([...(lot.allergens ?? [])].sort()).toEqual(codes(law).sort());
    }
  });
});
