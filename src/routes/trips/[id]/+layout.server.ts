import { pouchesThere } from '$lib/planning/menu/plan-menu.ts';
import { wordedNotices } from '$lib/presentation/worded-plan.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { setAsideMatches } from '$lib/trip-views/set-aside.ts';
import { shownPlaces } from '$lib/trip-views/places.ts';
import { tripDays } from '$lib/trip-views/trip-days.ts';
import type { LayoutServerLoad } from './$types';

/** What every page of a trip shows; each adds the part of the plan that it shows, since the whole is large. */
export const load: LayoutServerLoad = async ({ locals, params }) => {
  const { stored, plan, settings, isOver } = await plannedForPage(locals, params.id);
  const { id, version, trip, stage, reserved, eaten, broughtBack } = stored;
  return {
    id,
    version,
    trip,
    stage,
    takesNotes: !locals.readsOnly || locals.link?.mayNote === true,
    startDate: plan.startDate,
    endDate: plan.endDate,
    days: tripDays(plan),
    places: shownPlaces(),
    notices: wordedNotices(plan.notices, settings.unitSystem),
    matches:
      stage === 'open' ||
      stage === 'finished' ||
      setAsideMatches(pouchesThere(plan.menu), [...reserved, ...eaten, ...broughtBack]),
    isOver,
  };
};
