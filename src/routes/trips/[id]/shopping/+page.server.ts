import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const planned = await plannedForPage(locals, params.id);
  const toDry = await planDryingIfUseful(locals.app, planned);
  const { tripName, startDate, shortfall, fuel } = planned.plan;
  const { shown } = await parent();
  return {
    plan: { tripName, startDate, shortfall, fuel },
    paper: sheetPaper(url, shown.unitSystem),
    drying: toDry?.drying,
  };
};
