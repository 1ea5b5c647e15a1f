import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { dryingAssumptions, missingAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { app } = locals;
  const planned = await plannedForPage(locals, params.id);
  return {
    shortfall: planned.plan.shortfall,
    toDry: await planDryingIfUseful(app, planned),
    reasons: { missing: missingAssumptions(), drying: dryingAssumptions(await app.settings.getKitchen()) },
  };
};
