import { describe, expect, it } from 'vitest';
import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { Food } from '$lib/planning/model/composition.ts';
import { Ingredient, Recipe } from '$lib/planning/model/recipe.ts';
import { ingredientFields, readIngredient, readRecipe, readWaterNote, recipeFields } from './recipe-form.ts';

const METRIC = { unitSystem: 'metric', currency: 'EUR' } as const;
const US = { unitSystem: 'us', currency: 'USD' } as const;
const LENTILS = Food.parse({
  name: 'Lentils, dry',
  source: 'made up',
  composition: { waterG: 10, proteinG: 24, fatG: 1, carbohydrateG: 50, fibreG: 11 },
  allergens: [],
  diets: ['vegan'],
  gPerMl: 0.8,
});
const TABLES = [LENTILS, Food.parse({ ...LENTILS, name: 'Lentils, red' })];
const RECIPE = Recipe.parse({
  name: 'Lentil stew',
  mealKinds: ['lunch', 'dinner'],
  servings: 6,
  cookingYield: 0.9,
  fatDrainedG: 30,
  steepMin: 12,
  stirAfterMin: 5,
  waterShare: 0.85,
  ingredients: [{ food: LENTILS, quantity: { amount: 2, unit: 'cup' } }],
  waterNotes: [{ date: '2026-05-01', finding: 'just right' }],
  note: 'two\nlines',
});

function reader(fields: Entered, system: 'metric' | 'us' = 'metric'): FormReader {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of values) form.append(name, value);
  return new FormReader(form, system);
}

describe('readRecipe', () => {
  it.each([METRIC, US])('reads back the very recipe that the form was filled with, in %j', (shown) => {
    const read = reader(recipeFields(RECIPE, shown), shown.unitSystem);
    expect(readRecipe(read, RECIPE)).toEqual(RECIPE);
  });

  it('names what is wrong and keeps what was typed', () => {
    const read = reader({
      ...recipeFields(RECIPE, METRIC),
      servings: ['0'],
      cookingYield: ['-3'],
      name: [''],
    });
    expect(readRecipe(read, RECIPE)).toBeUndefined();
    expect(read.problems.map(({ field }) => field).sort()).toEqual(['cookingYield', 'name', 'servings']);
    expect(read.refused().entered['servings']).toEqual(['0']);
  });
});

describe('readIngredient', () => {
  const form = (fields: Entered): Entered => ({ ...ingredientFields(undefined, METRIC), ...fields });
  const amount = { 'quantity.amount': ['500'], 'quantity.unit': ['g'] };

  it('needs of a known food its name and amount only', () => {
    const read = reader(form({ 'food.name': ['lentils, DRY'], ...amount }));
    expect(readIngredient(read, METRIC, TABLES)).toEqual(
      Ingredient.parse({ food: LENTILS, quantity: { amount: 500, unit: 'g' } }),
    );
  });

  it('puts what is typed over what is known, and says that it was typed', () => {
    const read = reader(
      form({
        'food.name': ['Lentils, dry'],
        ...amount,
        'food.composition.waterG': ['12.5'],
        'food.allergensStated': ['yes'],
        'food.allergens': ['mustard'],
      }),
    );
    const ingredient = readIngredient(read, METRIC, TABLES);
    expect(ingredient?.food).toMatchObject({
      source: 'as typed in',
      composition: { waterG: 12.5, proteinG: 24 },
      allergens: ['mustard'],
      diets: [],
    });
    // and what was typed is what is known the next time
    const again = reader({ ...ingredientFields(ingredient, METRIC), 'quantity.amount': ['600'] });
    expect(readIngredient(again, METRIC, TABLES, ingredient)?.food).toEqual(ingredient?.food);
    const renamed = reader({ ...ingredientFields(ingredient, METRIC), 'food.name': ['Lentils, red'] });
    expect(readIngredient(renamed, METRIC, TABLES, ingredient)?.food).toEqual(TABLES[1]);
  });

  it('asks about a food that no table has, with those that are like it', () => {
    const read = reader(form({ 'food.name': ['lentil grits'], ...amount }));
    expect(readIngredient(read, METRIC, TABLES)).toBeUndefined();
    expect(read.problems).toEqual([
      { field: 'food.name', message: expect.stringMatching(/no table has "lentil grits".*"Lentils, dry"/) },
    ]);
  });

  it('takes a label, but not one without water, and says what the rest would leave', () => {
    const label = {
      'food.name': ['Grandmother’s paste'],
      ...amount,
      'food.composition.proteinG': ['10'],
      'food.composition.fatG': ['5'],
      'food.composition.carbohydrateG': ['40'],
    };
    const without = reader(form(label));
    expect(readIngredient(without, METRIC, TABLES)).toBeUndefined();
    expect(without.problems).toEqual([
      {
        field: 'food.composition.waterG',
        message: expect.stringMatching(/water content is missing.*leaves 45 g/),
      },
    ]);
    const whole = reader(form({ ...label, 'food.composition.waterG': ['42'] }));
    const ingredient = readIngredient(whole, METRIC, TABLES);
    expect(ingredient?.food).toMatchObject({ source: 'as typed in', composition: { waterG: 42, fibreG: 0 } });
    expect(ingredient?.food.allergens).toBeUndefined();
  });

  it.each([
    ['0', 'g', 'quantity.amount', 'must be more than 0'],
    ['-5', 'g', 'quantity.amount', 'must be more than 0'],
    ['2', 'handful', 'quantity.unit', 'must be one of'],
    ['2', 'piece', 'quantity.unit', 'pieces need the weight of one'],
    ['', 'g', 'quantity.amount', 'please fill this in'],
  ])('refuses %s %s', (typed, unit, field, message) => {
    const read = reader(
      form({ 'food.name': ['Lentils, dry'], 'quantity.amount': [typed], 'quantity.unit': [unit] }),
    );
    expect(readIngredient(read, METRIC, TABLES)).toBeUndefined();
    expect(read.problems).toEqual([{ field, message: expect.stringContaining(message) }]);
  });

  it('reads what was paid for how much, and asks for how much where it is missing', () => {
    const price = {
      'price.paidMinor': ['3,20'],
      'price.paidFor.amount': ['1'],
      'price.paidFor.unit': ['kg'],
    };
    expect(
      readIngredient(reader(form({ 'food.name': ['Lentils, dry'], ...amount, ...price })), METRIC, TABLES)
        ?.price,
    ).toEqual({ paidMinor: 320, paidFor: { amount: 1, unit: 'kg' } });
    const half = reader(
      form({ 'food.name': ['Lentils, dry'], ...amount, ...price, 'price.paidFor.amount': [''] }),
    );
    expect(readIngredient(half, METRIC, TABLES)).toBeUndefined();
    expect(half.problems.map(({ field }) => field)).toEqual(['price.paidFor.amount']);
  });
});

it('a note on the water names its date and finding', () => {
  const read = reader({ date: [''], finding: ['soggy'], waterNote: ['x'] });
  expect(readWaterNote(read)).toBeUndefined();
  expect(read.problems.map(({ field }) => field)).toEqual(['date', 'finding']);
  expect(readWaterNote(reader({ date: ['2026-06-01'], finding: ['too dry'], waterNote: [''] }))).toEqual({
    date: '2026-06-01',
    finding: 'too dry',
    note: '',
  });
});
