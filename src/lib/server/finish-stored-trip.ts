import { finishTrip } from '../application/finish-trip.ts';
import type { Afterwards } from '../planning/model/afterwards.ts';
import type { App } from './app.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import type { PouchCount, StoredTrip } from './trip-repository.ts';

/**
 * Finishes a stored trip.
 *
 * @param back pouches that came home unopened and are not on the shelf yet
 * @throws UserError `NotFound`, `StaleVersion`, `Refused` where it is not packed or more came back than was packed
 */
export const finishStoredTrip = (
  app: App,
  id: string,
  version: number,
  back: readonly PouchCount[],
  said: Afterwards,
): Promise<StoredTrip> =>
  finishTrip(
    {
      planned: (tripId) => planStoredTrip(app, tripId),
      finish: (learned, notes) => app.afterwards.finish({ id, version }, back, said, learned, notes),
      today: () => app.today(),
    },
    id,
    back,
    said,
  );
