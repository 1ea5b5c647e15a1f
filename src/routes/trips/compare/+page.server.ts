import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { compareTrips } from '$lib/trip-views/compare.ts';
import type { PageServerLoad } from './$types';

/** `?a=<trip>&b=<trip>`; left out: the two newest. */
export const load: PageServerLoad = async ({ locals: { app }, url }) => {
  const trips = (await app.trips.listTrips()).map(({ id, trip }) => ({
    value: id,
    label: `${trip.name}, ${trip.startDate}`,
  }));
  const chosen = (name: string, usual: number) => url.searchParams.get(name) ?? trips[usual]?.value;
  const [a, b] = [chosen('a', 0), chosen('b', 1)];
  if (a === undefined || b === undefined || a === b) return { trips, a, b, pair: undefined };
  const [first, second] = await Promise.all([planStoredTrip(app, a), planStoredTrip(app, b)]).catch(
    toHttpError,
  );
  return {
    trips,
    a,
    b,
    pair: {
      a: { id: a, name: first.stored.trip.name },
      b: { id: b, name: second.stored.trip.name },
      comparison: compareTrips(first.plan, second.plan),
    },
  };
};
