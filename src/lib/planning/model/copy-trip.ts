import { addDays, daysBetween } from './calendar.ts';
import type { Trip } from './trip.ts';

/** Whole weeks in a year, less a day or two: a copy begins on the same day of the week. */
const YEAR_IN_WEEKS_D = 364;

/** The first day, at or after today, that lies whole years of 52 weeks after the start of a trip; its own start where that is still to come. */
export function nextStart(startDate: string, today: string): string {
  const years = Math.max(0, Math.ceil(daysBetween(startDate, today) / YEAR_IN_WEEKS_D));
  return addDays(startDate, years * YEAR_IN_WEEKS_D);
}

/**
 * A trip to walk once more. Its menu is planned anew. With another start, the dates of boxes move along, and what belonged to that time is left behind: food that was to be
 * bought or dried for it, and fuel that was part-full then. The copy of a template is a trip.
 *
 * @param startDate of the copy
 */
export function copyTrip(trip: Trip, startDate: string): Trip {
  const { template: _template, withdrawn: _withdrawn, planned, ...kept } = trip;
  const days = daysBetween(trip.startDate, startDate);
  if (days === 0) return { ...kept, ...(planned && { planned }), menu: [] };
  return {
    ...kept,
    startDate,
    ...(kept.resupplies && {
      resupplies: kept.resupplies.map((place) => ({
        ...place,
        ...(place.postBy !== undefined && { postBy: addDays(place.postBy, days) }),
      })),
    }),
    stove: { ...kept.stove, started: [] },
    menu: [],
  };
}
