import type { UnitSystem } from './planning/units/show.ts';

/** Whoever measures in US units reads the month first. */
const LOCALE: Readonly<Record<UnitSystem, string>> = { metric: 'en-GB', us: 'en-US' };

const atNoon = (date: string): Date => new Date(`${date}T12:00:00Z`);

/** Writes calendar dates. A format takes far longer to make than to use, and a list of lots uses it hundreds of times: each is made once. */
function dateFormat(options: Intl.DateTimeFormatOptions): (system: UnitSystem) => Intl.DateTimeFormat {
  const made: { [system in UnitSystem]?: Intl.DateTimeFormat } = {};
  return (system) =>
    (made[system] ??= new Intl.DateTimeFormat(LOCALE[system], { ...options, timeZone: 'UTC' }));
}
const withWeekdayAndYear = dateFormat({ weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' });
const withWeekday = dateFormat({ weekday: 'short', day: 'numeric', month: 'short' });
const withYear = dateFormat({ day: 'numeric', month: 'short', year: 'numeric' });

/** @returns a calendar date with its weekday: "Sat, 4 Jul 2026" or "Sat, Jul 4, 2026". */
export function showDate(date: string, system: UnitSystem): string {
  return withWeekdayAndYear(system).format(atNoon(date));
}

/** @returns a calendar date within a trip, where the year goes without saying: "Sat, 4 Jul" or "Sat, Jul 4". */
export function showDay(date: string, system: UnitSystem): string {
  return withWeekday(system).format(atNoon(date));
}

/** @returns the first and last day in one: "4–8 Jul 2026" or "Jul 4 – 8, 2026". */
export function showDates(first: string, last: string, system: UnitSystem): string {
  return withYear(system).formatRange(atNoon(first), atNoon(last));
}

/** @returns an instant by the clock of whoever looks: "Sat, 4 Jul, 18:30" or "Sat, Jul 4, 6:30 PM". @param at ISO 8601 */
export function showInstant(at: string, system: UnitSystem): string {
  return new Intl.DateTimeFormat(LOCALE[system], {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: 'numeric',
    minute: '2-digit',
  }).format(new Date(at));
}

/** @returns the calendar date of an instant where the program runs, ISO 8601 */
export function localDate(at: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
