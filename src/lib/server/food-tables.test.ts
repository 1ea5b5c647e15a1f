import { expect, it } from 'vitest';
import { kitchenFoods } from '../foods/kitchen-foods.ts';
import { findFood } from '../foods/find-food.ts';
import { Food } from '../planning/model/composition.ts';
import { allFoods } from './food-tables.ts';
import { openTestApp } from './test-data.ts';

it("puts the user's own foods before those of the tables", async () => {
  const app = await openTestApp();
  const common = kitchenFoods().foods[0]!;
  const own = Food.parse({ ...common, source: 'my own scales' });
  await app.kitchen.foods.putAll([own]);
  const foods = await allFoods(app);
  expect(foods.slice(0, 2)).toEqual([own, common]);
  expect(findFood(foods, common.name)).toEqual(own);
  expect(foods.at(-1)?.source).toContain('Indian Food Composition Tables');
});
