import { describe, expect, it } from 'vitest';
import { exampleFood, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import { faultsOf } from '../model/faults.ts';
import { Ingredient, ingredientCost, Recipe, weightOf } from '../model/recipe.ts';
import { fatClassOf, recipeTotals } from './recipe-totals.ts';

const quantity = (amount: number, unit = 'g') => ({ amount, unit });
const ingredient = (food: Record<string, unknown>, amountG: number, more: Record<string, unknown> = {}) =>
  Ingredient.parse({ food: exampleFood(food), quantity: quantity(amountG), ...more });
const totals = (changes: Parameters<typeof exampleRecipe>[0], timesCooked?: number, weighedG?: number) =>
  recipeTotals(exampleRecipe(changes), timesCooked, weighedG);
const OIL = { name: 'oil', composition: { waterG: 0, proteinG: 0, fatG: 100, carbohydrateG: 0 } };
const WATER = { name: 'water', composition: { waterG: 100, proteinG: 0, fatG: 0, carbohydrateG: 0 } };
const WINE = {
  name: 'wine',
  composition: { waterG: 86, proteinG: 0, fatG: 0, carbohydrateG: 3, alcoholG: 11 },
};

describe('a recipe', () => {
  it('comes to the sum of its ingredients, times cooked', () => {
    const once = totals({});
    expect(once).toMatchObject({
      boughtG: 4000,
      trimmedG: 4000,
      cookedG: 4000,
      costMinor: 1000,
      problems: [],
    });
    expect(once.parts).toEqual({
      waterG: 2800,
      proteinG: 360,
      fatG: 160,
      carbohydrateG: 520,
      fibreG: 120,
      ashG: 40,
    });
    expect(once.moisture).toBeCloseTo(0.7, 9);
    expect(once.energyKcal).toBe(5200);
    expect(totals({}, 2.5)).toMatchObject({
      cookedG: 10_000,
      solidsG: 3000,
      energyKcal: 13_000,
      costMinor: 2500,
    });
  });

  it('counts fibre as carbohydrate with the other factors', () => {
    expect(totals({ energyFactors: 'atwater' }).energyKcal).toBe(5200 + 2 * 120);
  });

  it('loses what is trimmed, pays for it, and gains or loses water in the pot', () => {
    const trimmed = totals({
      ingredients: [
        ingredient({}, 1000, { trimmedShare: 0.8, price: { paidMinor: 500, paidFor: quantity(2000) } }),
      ],
    });
    expect(trimmed).toMatchObject({ boughtG: 1000, trimmedG: 800, costMinor: 250 });
    expect(trimmed.solidsG).toBeCloseTo(240, 9);
    expect(totals({ cookingYield: 0.5 }).moisture).toBeCloseTo(0.4, 9);
    expect(totals({ cookingYield: 2 }).moisture).toBeCloseTo(0.85, 9);
    expect(totals({}, 1, 3000)).toMatchObject({ cookedG: 3000, solidsG: 1200 });
  });

  it('loses the fat that is poured off, and its energy', () => {
    const drained = totals({ fatDrainedG: 100 });
    expect(drained).toMatchObject({ cookedG: 3900, energyKcal: 4300, problems: [] });
    expect(drained.parts.fatG).toBe(60);
    expect(totals({ fatDrainedG: 200 }).problems).toEqual([
      { field: 'fatDrainedG', code: 'more-fat-drained-than-there-is', fatG: 160 },
    ]);
  });

  it('takes alcohol as gone with the water', () => {
    const wine = totals({ ingredients: [ingredient(WINE, 1000)] });
    expect(wine.energyKcal).toBeCloseTo(120, 9);
    expect(wine.solidsG).toBeCloseTo(30, 9);
    expect(wine.parts.waterG).toBeCloseTo(970, 9);
  });

  it('has a problem where it cannot be dried', () => {
    expect(totals({ ingredients: [] }).problems).toEqual([{ field: 'ingredients', code: 'no-ingredients' }]);
    expect(totals({ ingredients: [ingredient(WATER, 500)] }).problems[0]?.code).toBe('no-dry-matter');
    expect(totals({}, 1, 1000).problems).toMatchObject([{ field: 'cookedG' }]);
    expect(totals({ cookingYield: 0.2 }).problems[0]).toMatchObject({
      field: 'cookingYield',
      code: 'lighter-than-dry-matter',
      cookedG: 800,
      solidsG: 1200,
    });
  });

  it('of food without water has none', () => {
    const parts = { waterG: 0, proteinG: 12.3, fatG: 7.7, carbohydrateG: 70.1, fibreG: 8.2 };
    for (const amountG of [0.1, 33.3, 1234.567])
      expect(
        totals({ ingredients: [ingredient({ composition: parts }, amountG), ingredient(OIL, amountG / 3)] })
          .problems,
      ).toEqual([]);
  });

  it('knows its allergens, who has not stated any, and the diets that all of it meets', () => {
    const known = totals({
      ingredients: [
        ingredient({ allergens: ['soy', 'gluten'] }, 100),
        ingredient({ name: 'cheese', allergens: ['milk', 'soy'], diets: ['vegetarian'] }, 100),
        ingredient({ name: 'spice', allergens: undefined, diets: ['vegan', 'halal'] }, 5),
        ingredient({ name: 'spice', allergens: undefined, diets: ['vegan', 'halal'] }, 2),
      ],
    });
    expect(known.allergens).toEqual(['milk', 'soy', 'gluten']);
    expect(known.allergensUnstated).toEqual(['spice']);
    expect(known.unpriced).toEqual(['bean mix', 'cheese', 'spice']);
    expect(known.diets).toEqual(['vegetarian', 'no-pork', 'no-beef']);
    expect(totals({ ingredients: [] }).diets).toEqual([]);
  });

  it('passes on what is doubtful in a composition', () => {
    const composition = { waterG: 70, proteinG: 30, fatG: 20, carbohydrateG: 0, energyKcal: 1255 / 4.184 };
    expect(totals({ ingredients: [ingredient({ composition }, 100)] }).doubts).toEqual([
      { food: 'bean mix', doubt: { code: 'parts-over-100', partsG: 120 } },
    ]);
    const kJ = { ...composition, proteinG: 10, energyKcal: 920 };
    expect(totals({ ingredients: [ingredient({ composition: kJ }, 100)] }).doubts[0]?.doubt).toEqual({
      code: 'energy-unlike-parts',
      statedKcal: 920,
      byPartsKcal: 220,
    });
  });
});

describe('an amount', () => {
  it('is a weight by volume or pieces where the food says what they weigh', () => {
    expect(weightOf({ amount: 2, unit: 'cup' }, { gPerMl: 0.5 })).toBeCloseTo(236.588, 3);
    expect(weightOf({ amount: 3, unit: 'piece' }, { gPerPiece: 60 })).toBe(180);
    expect(weightOf({ amount: 1, unit: 'lb' }, {})).toBeCloseTo(453.592, 3);
    expect(weightOf({ amount: 2, unit: 'cup' }, { gPerPiece: 60 })).toBeUndefined();
  });

  it('in pieces of unknown weight is refused, of what is bought as of what is paid', () => {
    const faults = (value: Record<string, unknown>) => {
      const { error } = Ingredient.safeParse({ food: exampleFood(), quantity: quantity(1), ...value });
      return error && faultsOf(error).map(({ field, code }) => `${field} ${code}`);
    };
    expect(faults({ quantity: quantity(2, 'piece') })).toEqual(['quantity.unit piece-without-weight']);
    expect(faults({ price: { paidMinor: 1, paidFor: quantity(1, 'l') } })).toEqual([
      'price.paidFor.unit volume-without-weight',
    ]);
    expect(faults({ quantity: quantity(0) })).toEqual(['quantity.amount not-positive']);
    expect(faults({ quantity: quantity(-5) })).toEqual(['quantity.amount not-positive']);
    expect(faults({ trimmedShare: 0 })).toEqual(['trimmedShare not-positive']);
  });

  it('is paid for in the unit that it was bought in', () => {
    const eggs = Ingredient.parse({
      food: exampleFood({ gPerPiece: 60 }),
      quantity: quantity(120),
      price: { paidMinor: 300, paidFor: quantity(10, 'piece') },
    });
    expect(ingredientCost(eggs)).toBe(60);
    expect(ingredientCost({ ...eggs, price: { paidMinor: 0, paidFor: { amount: 1, unit: 'g' } } })).toBe(0);
    expect(ingredientCost({ ...eggs, price: undefined })).toBeUndefined();
  });

  it('of servings has to be more than none', () => {
    expect(Recipe.safeParse({ ...exampleRecipe(), servings: 0 }).success).toBe(false);
  });
});

describe('the fat class', () => {
  it.each([
    [10, 'lean'],
    [10.1, 'middling'],
    [25, 'middling'],
    [25.1, 'fatty'],
  ])('of %d g of fat in 100 g of dry matter is %s', (fatG, fatClass) => {
    expect(fatClassOf({ fatG }, 100)).toBe(fatClass);
  });

  it('of nothing is lean', () => {
    expect(fatClassOf({ fatG: 0 }, 0)).toBe('lean');
  });
});
