import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, parent, url }) => {
  const data = await parent();
  const toDry = await planDryingIfUseful(app, data);
  return { paper: sheetPaper(url, data.shown.unitSystem), drying: toDry?.drying };
};
