import type { MealRule } from '$lib/planning/model/trip.ts';
import { say } from '$lib/texts/say.ts';

/** Days of a trip: their numbers, or its rest days. */
export type DaysMeant = NonNullable<MealRule['days']>;

const MOST_DAYS = 90;

/** @returns days as they are typed: "2, 4-6", "rest days", and nothing for every day. */
export function daysInWords(days: DaysMeant | undefined): string {
  if (days === undefined) return '';
  if (days === 'rest days') return say('rest days');
  const sorted = [...new Set(days)].sort((a, b) => a - b);
  const runs: [from: number, to: number][] = [];
  for (const day of sorted) {
    const last = runs.at(-1);
    if (last && day === last[1] + 1) last[1] = day;
    else runs.push([day, day]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(', ');
}

/**
 * Reads days as a person types them.
 *
 * @example readDays('2, 4-6') // [2, 4, 5, 6]
 * @returns the days, or what is wrong with the text
 */
export function readDays(typed: string): DaysMeant | { readonly problem: string } {
  const text = typed.trim().toLowerCase().replaceAll('–', '-').replaceAll(/ ?- ?/g, '-');
  if (text === 'rest days' || text === say('rest days').toLowerCase()) return 'rest days';
  const days = new Set<number>();
  for (const part of text.split(/[,;\s]+/).filter(Boolean)) {
    const [, from, to = from] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(part) ?? [];
    const [first, last] = [Number(from), Number(to)];
    if (from === undefined || first < 1 || last < first || last > MOST_DAYS)
      return {
        problem: say('"{part}" is not a day of the trip; write days such as 2, 4-6, or "{rest}"', {
          part,
          rest: say('rest days'),
        }),
      };
    for (let day = first; day <= last; day += 1) days.add(day);
  }
  return [...days].sort((a, b) => a - b);
}
