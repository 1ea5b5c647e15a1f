import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, parent }) => ({
  toDry: await planDryingIfUseful(app, await parent()),
});
