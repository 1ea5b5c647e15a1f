import { packingSheets } from '$lib/trip-views/packing.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent, url }) => {
  const { shown, trip, plan } = await parent();
  return { paper: sheetPaper(url, shown.unitSystem), sheets: packingSheets(trip, plan) };
};
