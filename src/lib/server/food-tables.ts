import { kitchenFoods } from '../foods/kitchen-foods.ts';
import { ifctFoods } from '../foods/ifct.ts';
import type { Food } from '../planning/model/composition.ts';
import type { App } from './app.ts';
import type { Stored } from './records.ts';

export type FoodTables = {
  /** The user's own, by name, as they are stored. */
  readonly own: readonly Stored<Food>[];
  /** All: the own ones, which are the very objects of `own`, then those of every kitchen, then the Indian tables. */
  readonly all: readonly Food[];
};

/** The composition tables, the user's own first, so that `findFood` takes it where a name stands in several tables. */
export async function foodTables({ kitchen }: Pick<App, 'kitchen'>): Promise<FoodTables> {
  const [own, ifct] = await Promise.all([kitchen.foods.list(), ifctFoods()]);
  return { own, all: [...own.map(({ value }) => value), ...kitchenFoods().foods, ...ifct.foods] };
}

/** Every food that is known, in the order of `foodTables`. */
export const allFoods = async (app: Pick<App, 'kitchen'>): Promise<readonly Food[]> =>
  (await foodTables(app)).all;
