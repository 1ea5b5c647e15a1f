import { sensitivityOf } from '$lib/planning/sensitivity/sensitivity-of.ts';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { moversOf } from '$lib/trip-views/what-moves-it.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, params }) => {
  const { stored, stock, settings } = await planStoredTrip(app, params.id).catch(toHttpError);
  const sensitivity = sensitivityOf(stored.trip, stock, settings);
  return { base: sensitivity.base, ...moversOf(sensitivity) };
};
