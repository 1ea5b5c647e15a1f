import type { Settings } from './model/settings.ts';
import type { Stock } from './model/pouch-lot.ts';
import type { Trip } from './model/trip.ts';
import type { TripPlan } from './model/trip-plan.ts';

/**
 * The spine: from a trip and a stock to everything the party has to know.
 *
 * @param trip a valid trip; its `menu` lists the meals already chosen
 * @param stock the lots with the pouches free for this trip
 */
export function planTrip(trip: Trip, stock: Stock, settings: Settings): TripPlan {
  throw new Error('not built yet');
}
