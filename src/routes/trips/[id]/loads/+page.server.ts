import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { packAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, url }) => {
  const { plan } = await plannedForPage(locals, params.id);
  const asked = url.searchParams.get('who');
  const names = plan.carry.packs.map(({ eater }) => eater);
  return {
    carry: plan.carry,
    who: names.find((name) => name === asked) ?? names[0] ?? '',
    reasons: { packs: packAssumptions() },
  };
};
