import { addDays } from '$lib/planning/model/calendar.ts';
import { shelfRow, SOON_DAYS } from '$lib/shelf-view.ts';
import type { PageServerLoad } from './$types';

const MOST_SHOWN = 8;

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const today = app.today();
  const [lots, trips] = await Promise.all([app.shelf.listLots(), app.trips.listTrips()]);
  const coming = trips
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
  const rows = lots.filter(({ pouches }) => pouches > 0).map((lot) => shelfRow(lot, today));
  const soon = rows.filter(({ state }) => state === 'soon');
  return {
    isNew: lots.length === 0 && trips.length === 0,
    coming: coming.slice(0, MOST_SHOWN),
    comingCount: coming.length,
    soon: soon.slice(0, MOST_SHOWN),
    soonCount: soon.length,
    soonDays: SOON_DAYS,
    pastCount: rows.filter(({ state }) => state === 'past').length,
    lotCount: rows.length,
    pouches: rows.reduce((sum, row) => sum + row.pouches, 0),
    servings: rows.reduce((sum, row) => sum + row.servings, 0),
  };
};
