import shelfCsv from '../../../demo-data/shelf.csv?raw';
import demoTrip from '../../../demo-data/trip.json';
import { Trip } from '$lib/planning/model/trip.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import { createPlannedTrip } from '$lib/server/plan-meals.ts';
import { readShelfCsv } from '$lib/shelf-csv/read-shelf-csv.ts';

/**
 * Puts the invented shelf and trip of `demo-data` into an empty data folder.
 *
 * @returns the trip, and whether its menu had to be planned without a search
 * @throws UserError `Refused` where there are lots already: invented pouches must not mix with real ones
 */
export async function fillDemo(app: App): ReturnType<typeof createPlannedTrip> {
  const trip = Trip.parse(demoTrip);
  const { lots } = await readShelfCsv(new TextEncoder().encode(shelfCsv), { currency: 'EUR' });
  if ((await app.shelf.listLots()).length > 0)
    throw new UserError(
      'Refused',
      'The shelf already holds lots, and the demo fills an empty shelf only, so that its invented pouches do not mix with yours. To look at it, start Ridgelarder with another data folder (RIDGELARDER_DATA).',
    );
  await app.shelf.importLots(lots, 'demo');
  return createPlannedTrip(app, trip);
}
