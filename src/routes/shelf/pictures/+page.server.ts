import { costByRecipe, servingsByBestBefore } from '$lib/shelf-pictures.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const lots = await app.shelf.listLots();
  return { spans: servingsByBestBefore(lots, app.today()), costs: costByRecipe(lots) };
};
