import { planDryingForTrip } from '$lib/server/plan-drying-for-trip.ts';
import { hasLeft } from '$lib/trip-views/stage.ts';
import type { PageServerLoad } from './$types';

/** Nothing is dried for a trip that lacks nothing, or that is packed or over. */
export const load: PageServerLoad = async ({ locals: { app }, parent }) => {
  const { trip, plan, stage, isOver } = await parent();
  const worthDrying = plan.shortfall.shopping.length > 0 && !hasLeft(stage) && !isOver;
  return { toDry: worthDrying ? await planDryingForTrip(app, trip, plan) : undefined };
};
