import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { packingSheets } from '$lib/trip-views/packing.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const { stored, plan } = await plannedForPage(locals, params.id);
  const { shown } = await parent();
  return { paper: sheetPaper(url, shown.unitSystem), sheets: packingSheets(stored.trip, plan) };
};
