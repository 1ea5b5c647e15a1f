import { COMMON_FOODS } from '../foods/common-foods.ts';
import { ifctFoods } from '../foods/ifct.ts';
import type { Food } from '../planning/model/composition.ts';
import type { App } from './app.ts';

/**
 * Every food that is known: the user's own first, then the common ones, then those of the Indian Food Composition Tables, so that
 * `findFood` takes the user's own where a name stands in several tables.
 */
export async function allFoods({ kitchen }: Pick<App, 'kitchen'>): Promise<Food[]> {
  const [own, ifct] = await Promise.all([kitchen.foods.list(), ifctFoods()]);
  return [...own.map(({ value }) => value), ...COMMON_FOODS, ...ifct.foods];
}
