import { pouchesNeeded } from '$lib/planning/menu/plan-menu.ts';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { setAsideMatches } from '$lib/trip-views/set-aside.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, params }) => {
  const { stored, plan } = await planStoredTrip(locals.app, params.id).catch(toHttpError);
  const { id, version, trip, stage, reserved, eaten, broughtBack } = stored;
  return {
    id,
    version,
    // Bodies are nobody's business but their owners': a page for readers is sent without them.
    trip: locals.readsOnly ? { ...trip, party: trip.party.map(({ body: _, ...eater }) => eater) } : trip,
    stage,
    takesNotes: !locals.readsOnly || locals.link?.mayNote === true,
    reserved,
    plan: locals.readsOnly ? { ...plan, demand: [], notices: [] } : plan,
    matches:
      stage === 'open' ||
      stage === 'finished' ||
      setAsideMatches(pouchesNeeded(plan.menu), [...reserved, ...eaten, ...broughtBack]),
    isOver: stage === 'finished' || plan.endDate < locals.app.today(),
  };
};
