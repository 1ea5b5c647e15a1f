import { pouchesNeeded } from '$lib/planning/menu/plan-menu.ts';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { planForReaders, tripForReaders } from '$lib/trip-views/for-readers.ts';
import { setAsideMatches } from '$lib/trip-views/set-aside.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, params }) => {
  const { stored, plan } = await planStoredTrip(locals.app, params.id).catch(toHttpError);
  const { id, version, trip, stage, reserved, eaten, broughtBack } = stored;
  return {
    id,
    version,
    trip: locals.readsOnly ? tripForReaders(trip) : trip,
    stage,
    takesNotes: !locals.readsOnly || locals.link?.mayNote === true,
    reserved,
    plan: locals.readsOnly ? planForReaders(plan) : plan,
    matches:
      stage === 'open' ||
      stage === 'finished' ||
      setAsideMatches(pouchesNeeded(plan.menu), [...reserved, ...eaten, ...broughtBack]),
    isOver: stage === 'finished' || plan.endDate < locals.app.today(),
  };
};
