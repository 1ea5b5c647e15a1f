import { planTrip } from '$lib/planning/plan-trip.ts';
import { addDays } from '$lib/planning/model/calendar.ts';
import { verdictOf } from '$lib/trip-views/standing.ts';
import type { PageServerLoad } from './$types';

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
        verdict: isOver ? undefined : verdictOf(planTrip(trip, await app.shelf.stockFor(id), settings)),
      };
    }),
  );
  return { trips };
};
