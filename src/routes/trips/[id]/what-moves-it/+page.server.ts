import { sensitivityOf } from '$lib/planning/sensitivity/sensitivity-of.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { moversOf } from '$lib/trip-views/what-moves-it.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { stored, stock, settings } = await plannedForPage(locals, params.id);
  const sensitivity = sensitivityOf(stored.trip, stock, settings);
  return { base: sensitivity.base, ...moversOf(sensitivity) };
};
