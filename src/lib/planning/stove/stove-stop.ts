import type { ResolvedDay, ResolvedTrip } from '../model/resolve-trip.ts';
import type { MealKind } from '../model/words.ts';

/** The day whose camp a meal is cooked at: breakfast is still at the camp of the night before. */
export function stoveStopOf(trip: ResolvedTrip, day: number, meal: MealKind): ResolvedDay {
  const stop = trip.days[meal === 'breakfast' && day > 1 ? day - 2 : day - 1];
  if (!stop) throw new RangeError(`the trip has no day ${day}`);
  return stop;
}
