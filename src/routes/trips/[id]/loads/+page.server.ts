import { packAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent, url }) => {
  const { plan } = await parent();
  const asked = url.searchParams.get('who');
  const names = plan.carry.packs.map(({ eater }) => eater);
  return {
    who: names.find((name) => name === asked) ?? names[0] ?? '',
    reasons: { packs: packAssumptions() },
  };
};
