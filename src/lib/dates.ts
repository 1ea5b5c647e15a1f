import type { UnitSystem } from './presentation/show.ts';
import { language } from './texts/say.ts';

/** In English, whoever measures in US units reads the month first. */
const LOCALE = { en: { metric: 'en-GB', us: 'en-US' }, de: { metric: 'de-DE', us: 'de-DE' } } as const;

const atNoon = (date: string): Date => new Date(`${date}T12:00:00Z`);

/** A format takes far longer to make than to use, and a list of lots uses it hundreds of times: each is made once. */
function dateFormat(options: Intl.DateTimeFormatOptions): (system: UnitSystem) => Intl.DateTimeFormat {
  const made: { [locale: string]: Intl.DateTimeFormat } = {};
  return (system) => {
    const locale = LOCALE[language()][system];
    return (made[locale] ??= new Intl.DateTimeFormat(locale, options));
  };
}
const withWeekdayAndYear = dateFormat({
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});
const withWeekday = dateFormat({ weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
const withYear = dateFormat({ day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const withClock = dateFormat({
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: 'numeric',
  minute: '2-digit',
});

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
  return withClock(system).format(new Date(at));
}

/** @returns the calendar date of an instant where the program runs, ISO 8601 */
export function localDate(at: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
