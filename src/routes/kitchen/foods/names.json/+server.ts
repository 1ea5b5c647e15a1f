import { json } from '@sveltejs/kit';
import { searchFoods } from '$lib/foods/find-food.ts';
import { allFoods } from '$lib/server/food-tables.ts';
import type { RequestHandler } from './$types';

const MOST_NAMES = 12;

/** Names of foods for what was typed so far, the best first. */
export const GET: RequestHandler = async ({ locals: { app }, url }) => {
  const words = (url.searchParams.get('q') ?? '').slice(0, 100);
  const found = searchFoods(await allFoods(app), words, MOST_NAMES);
  return json(found.map(({ name }) => name));
};
