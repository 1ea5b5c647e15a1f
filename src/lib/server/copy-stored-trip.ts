import { copyTrip } from '../planning/model/copy-trip.ts';
import { say } from '../texts/say.ts';
import type { App } from './app.ts';
import { UserError } from './errors.ts';
import { createPlannedTrip } from './plan-meals.ts';

/**
 * Stores a trip, or a trip from a template, once more and plans its menu from what is free on the shelf. On the same day it is told apart by its name.
 *
 * @throws UserError `NotFound`
 */
export async function copyStoredTrip(app: App, id: string, startDate: string) {
  const stored = await app.trips.getTrip(id);
  if (!stored)
    throw new UserError('NotFound', say('Trip not found. It may have been deleted; see the list of trips.'));
  const { trip } = stored;
  const isTwin = startDate === trip.startDate && !trip.template;
  const name = isTwin ? say('{name} (copy)', { name: trip.name.slice(0, 110) }) : trip.name;
  return createPlannedTrip(app, { ...copyTrip(trip, startDate), name });
}
