import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { drawPacks, packsTitle } from '$lib/trip-views/pack-drawing.ts';
import { packAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

const SMALL = { width: 240, height: 100 };
const LARGE = { width: 720, height: 180 };

export const load: PageServerLoad = async ({ locals, params, url }) => {
  const { plan, settings } = await plannedForPage(locals, params.id);
  const asked = url.searchParams.get('who');
  const names = plan.carry.packs.map(({ eater }) => eater);
  const who = names.find((name) => name === asked) ?? names[0] ?? '';
  const drawn = (size: Parameters<typeof drawPacks>[2]) => drawPacks(plan.carry, settings.unitSystem, size);
  return {
    carry: plan.carry,
    who,
    point: packsTitle(plan.carry, settings.unitSystem),
    drawings: drawn(SMALL),
    open: drawn(LARGE).find(({ eater }) => eater === who),
    reasons: { packs: packAssumptions() },
  };
};
