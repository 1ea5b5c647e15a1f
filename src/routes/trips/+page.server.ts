import { addDays } from '$lib/planning/model/calendar.ts';
import { planKept } from '$lib/server/plan-stored-trip.ts';
import { verdictOf } from '$lib/trip-views/standing.ts';
import { redirect } from '@sveltejs/kit';
import { settleNotes } from '$lib/forms/settle-notes.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const [stored, settings] = await Promise.all([app.trips.listTrips(), app.settings.get()]);
  const trips = await Promise.all(
    stored.map(async ({ id, trip, stage }) => {
      const endDate = addDays(trip.startDate, trip.dayCount - 1);
      const isOver = endDate < app.today() || stage === 'finished';
      return {
        id,
        name: trip.name,
        startDate: trip.startDate,
        endDate,
        dayCount: trip.dayCount,
        eaterCount: trip.party.length,
        stage,
        isOver,
        // What was wrong with a trip that is over can no longer be mended.
        verdict: isOver ? undefined : verdictOf(planKept(trip, await app.shelf.stockFor(id), settings)),
      };
    }),
  );
  return { trips, conflicts: await app.trailNotes.conflictsOfDeleted() };
};

export const actions: Actions = {
  settle: async ({ request, locals: { app }, cookies }) => {
    await settleNotes(app, cookies, await request.formData());
    redirect(303, '/trips');
  },
};
