import { describe, expect, it } from 'vitest';
import { exampleLot } from '../../../../tests/support/examples.ts';
import { exclusionsOf, mayEat, whyNotServed } from './exclusions.ts';

describe('whyNotServed', () => {
  const anybody = { allergens: [], diets: [] };
  it('lets whoever excludes nothing eat everything, stated or not', () => {
    expect(mayEat(exampleLot({ allergens: undefined }), anybody)).toBe(true);
    expect(mayEat(exampleLot({ allergens: ['milk', 'nuts'] }), anybody)).toBe(true);
  });
  it('names what the food contains', () =>
    expect(
      whyNotServed(exampleLot({ allergens: ['milk', 'nuts'] }), { allergens: ['nuts'], diets: [] }),
    ).toEqual({ kind: 'holds', allergens: ['nuts'] }));
  it('takes unstated allergens for a no', () =>
    expect(whyNotServed(exampleLot({ allergens: undefined }), { allergens: ['nuts'], diets: [] })).toEqual({
      kind: 'unstated',
    }));
  it('takes cereals with gluten for possible wheat', () =>
    expect(mayEat(exampleLot({ allergens: ['gluten'] }), { allergens: ['wheat'], diets: [] })).toBe(false));
  it('takes vegan food for vegetarian, not the other way round', () => {
    expect(
      mayEat(exampleLot({ diets: ['vegan'] }), { allergens: [], diets: ['vegetarian', 'no-pork'] }),
    ).toBe(true);
    expect(whyNotServed(exampleLot({ diets: ['vegetarian'] }), { allergens: [], diets: ['vegan'] })).toEqual({
      kind: 'unmet',
      diets: ['vegan'],
    });
  });
  it('lists exclusions alike for alike eaters', () =>
    expect(exclusionsOf({ allergens: ['nuts', 'milk'], diets: ['vegan'] })).toEqual(
      exclusionsOf({ allergens: ['milk', 'nuts'], diets: ['vegan'] }),
    ));
});
