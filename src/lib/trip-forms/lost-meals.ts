import { demandOf } from '$lib/planning/demand/day-demand.ts';
import { resolveTrip } from '$lib/planning/model/trip-defaults.ts';
import type { Settings } from '$lib/planning/model/settings.ts';
import type { ChosenMeal, Trip } from '$lib/planning/model/trip.ts';

/**
 * The meals of a menu that a trip has no place for any more, because its days or its first or last meal have changed.
 *
 * @param trip the trip as changed
 * @param menu the menu as it was
 */
export function lostMeals(trip: Trip, menu: readonly ChosenMeal[], settings: Settings): ChosenMeal[] {
  const days = demandOf(resolveTrip({ ...trip, menu: [] }), settings);
  return menu.filter(({ day, meal }) => !days[day - 1]?.meals.includes(meal));
}
