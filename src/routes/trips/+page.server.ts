import { addDays } from '$lib/planning/model/calendar.ts';
import { planKept } from '$lib/server/plan-stored-trip.ts';
import { verdictOf } from '$lib/trip-views/standing.ts';
import { redirect } from '@sveltejs/kit';
import { settleNotes } from '$lib/forms/settle-notes.ts';
import type { Actions, PageServerLoad } from './$types';

/** So many of the trips that are ahead are planned for the list, the next ones: each takes as long as a page of it. */
const MOST_PLANNED = 8;

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const [listed, settings] = await Promise.all([app.trips.listTrips(), app.settings.get()]);
  const [templates, own] = [true, false].map((isTemplate) =>
    listed.filter(({ trip }) => (trip.template ?? false) === isTemplate),
  );
  const stored = (own ?? []).map((trip) => {
    const endDate = addDays(trip.trip.startDate, trip.trip.dayCount - 1);
    return { ...trip, endDate, isOver: endDate < app.today() || trip.stage === 'finished' };
  });
  // What was wrong with a trip that is over can no longer be mended.
  const ahead = stored.filter(({ isOver }) => !isOver).sort((a, b) => (a.endDate < b.endDate ? -1 : 1));
  const planned = new Set(ahead.slice(0, MOST_PLANNED).map(({ id }) => id));
  const trips = await Promise.all(
    stored.map(async ({ id, trip, stage, endDate, isOver }) => {
      return {
        id,
        name: trip.name,
        startDate: trip.startDate,
        endDate,
        dayCount: trip.dayCount,
        eaterCount: trip.party.length,
        stage,
        isOver,
        verdict: planned.has(id)
          ? verdictOf(await planKept(app, trip, await app.shelf.stockFor(id), settings), settings.unitSystem)
          : undefined,
      };
    }),
  );
  return {
    trips,
    templates: (templates ?? []).map(({ id, trip }) => ({
      id,
      name: trip.name,
      dayCount: trip.dayCount,
      eaterCount: trip.party.length,
    })),
    conflicts: await app.trailNotes.conflictsOfDeleted(),
  };
};

export const actions: Actions = {
  settle: async ({ request, locals: { app }, cookies }) => {
    await settleNotes(app, cookies, await request.formData());
    redirect(303, '/trips');
  },
};
