import { addDays } from '$lib/planning/model/calendar.ts';
import { shelfRow, SOON_DAYS } from '$lib/shelf-view.ts';
import type { PageServerLoad } from './$types';

const MOST_SHOWN = 8;

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const today = app.today();
  const [{ soon, isEmpty, ...glance }, trips] = await Promise.all([
    app.shelf.glance(today, MOST_SHOWN),
    app.trips.listTrips(),
  ]);
  const coming = trips
    .filter(({ trip }) => !trip.template)
    .map(({ id, trip, stage }) => ({
      id,
      name: trip.name,
      stage,
      startDate: trip.startDate,
      endDate: addDays(trip.startDate, trip.dayCount - 1),
      dayCount: trip.dayCount,
      eaters: trip.party.length,
    }))
    .filter(({ endDate, stage }) => stage !== 'finished' && (endDate >= today || stage !== 'open'))
    .sort((a, b) => (a.startDate < b.startDate ? -1 : 1));
  return {
    isNew: isEmpty && trips.length === 0,
    coming: coming.slice(0, MOST_SHOWN),
    comingCount: coming.length,
    ...glance,
    soon: soon.map((lot) => shelfRow(lot, today)),
    soonDays: SOON_DAYS,
  };
};
