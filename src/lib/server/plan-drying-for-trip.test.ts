import { expect, it } from 'vitest';
import { Batch } from '../planning/model/batch.ts';
import { defaultKitchen } from '../planning/model/kitchen.ts';
import { Recipe } from '../planning/model/recipe.ts';
import { planDryingForTrip } from './plan-drying-for-trip.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import { madeUpTrip, openTestApp } from './test-data.ts';

const STEW = Recipe.parse({
  name: 'Lentil stew',
  mealKinds: ['dinner'],
  servings: 4,
  cookingYield: 3,
  ingredients: [
    {
      food: {
        name: 'lentils',
        source: 'test',
        allergens: [],
        composition: { waterG: 10, proteinG: 24, fatG: 1, carbohydrateG: 50, fibreG: 12 },
      },
      quantity: { amount: 400, unit: 'g' },
    },
  ],
});
const CLOCK = () => new Date('2026-06-01T10:00:00');

async function tripWithoutFood() {
  const app = await openTestApp(undefined, CLOCK);
  const { id } = await app.trips.createTrip(madeUpTrip());
  const dry = async () => {
    const { stored, plan } = await planStoredTrip(app, id);
    return { plan, ...(await planDryingForTrip(app, stored.trip, plan)) };
  };
  const [dryer] = defaultKitchen().dryers;
  const batch = (code: string, fields: object = {}) =>
    app.kitchen.batches.create(
      Batch.parse({ code, recipe: STEW, dryer, cookedOn: '2026-06-01', timesCooked: 0.5, ...fields }),
    );
  return { app, dry, batch };
}

it('has everything bought while there is no recipe', async () => {
  const { dry } = await tripWithoutFood();
  const { drying, recipeCount, plan } = await dry();
  expect(recipeCount).toBe(0);
  expect(drying.runs).toEqual([]);
  expect(drying.toBuy).toHaveLength(plan.shortfall.shopping.length);
});

it('dries what the recipes can bring from today on, two days before the first day of the trip', async () => {
  const { app, dry } = await tripWithoutFood();
  const { id } = await app.kitchen.recipes.create(STEW);
  const { drying, plan } = await dry();
  const dinner = plan.shortfall.shopping.findIndex(({ meal }) => meal === 'dinner');
  expect(drying.readyBy).toBe('2026-07-02');
  expect(drying.runs).toMatchObject([{ cookOn: '2026-06-01', loads: [{ recipeId: id }] }]);
  expect(drying.runs[0]?.loads[0]?.shares.map(({ line }) => line)).toEqual([dinner]);
  expect(drying.toBuy.map(({ line }) => line)).not.toContain(dinner);
});

it('counts on what is under way, which holds its dryer, and shares a run that is not full', async () => {
  const { app, dry, batch } = await tripWithoutFood();
  await app.settings.saveKitchen({ ...defaultKitchen(), dryers: defaultKitchen().dryers.slice(0, 1) });
  await app.kitchen.recipes.create(STEW);
  await batch('B1');
  const shared = (await dry()).drying;
  expect(shared.underWay).toMatchObject([{ code: 'B1', readyOn: '2026-06-03' }]);
  expect(shared.runs).toMatchObject([{ cookOn: '2026-06-01', joins: ['B1'] }]);

  await batch('B2', { cookedOn: '2026-05-31', trays: [{ loadedG: 300 }] });
  const later = (await dry()).drying;
  expect(later.underWay.map(({ code }) => code)).toEqual(['B2', 'B1']);
});

it('passes over a sealed batch, and one of which nothing is known yet', async () => {
  const { dry, batch } = await tripWithoutFood();
  await batch('B1', { recipe: { ...STEW, ingredients: [] } });
  await batch('B2', { trays: [{ loadedG: 600 }], sealed: { on: '2026-06-01', lots: ['B2'] } });
  expect((await dry()).drying.underWay).toEqual([]);
});

it('counts on no more from a batch than was cooked, whatever its trays are said to weigh', async () => {
  const boughtWith = async (loadedG?: number) => {
    const { app, dry, batch } = await tripWithoutFood();
    await app.kitchen.recipes.create({ ...STEW, mealKinds: ['breakfast'] });
    await batch('B1', loadedG === undefined ? {} : { trays: [{ loadedG }] });
    return (await dry()).drying.toBuy;
  };
  expect(await boughtWith(30_000)).toEqual(await boughtWith());
});
