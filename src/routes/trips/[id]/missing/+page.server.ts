import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { dryingAssumptions, missingAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, parent }) => ({
  toDry: await planDryingIfUseful(app, await parent()),
  reasons: { missing: missingAssumptions(), drying: dryingAssumptions(await app.settings.getKitchen()) },
});
