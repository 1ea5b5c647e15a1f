import { problemsOf, type Problem } from '$lib/presentation/problems.ts';
import type { Route } from '$lib/planning/model/route.ts';
import { Trip, type DayConditions } from '$lib/planning/model/trip.ts';
import { fieldValue, type UnitSystem } from '$lib/presentation/show.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import type { Entered, FormReader } from '$lib/forms/read-form.ts';
import { problemsOfLegs } from './trip-fields.ts';

/** More rows than any route may have are not read. */
const MAX_ROWS = 450;
const ROW = /^route\.waypoints\[(\d{1,3})\]\.(\w+)$/;
const LABELS: Readonly<Record<string, Text>> = {
  name: text('Waypoint {number}, name'),
  distanceM: text('Waypoint {number}, distance'),
  water: text('Waypoint {number}, water'),
  struck: text('Waypoint {number}, unreliable'),
  endsDays: text('Waypoint {number}, ends day'),
};

const at = (index: number, name: string): string => `route.waypoints[${index}].${name}`;

/** @returns the label of a field of the waypoints: "Waypoint 3, along". */
export function waypointLabel(field: string): string | undefined {
  const [, index, name = ''] = ROW.exec(field) ?? [];
  const label = LABELS[name];
  return label && say(label, { number: Number(index) + 1 });
}

/** @returns how many waypoints a form holds. */
export function waypointCount(entered: Entered): number {
  const indexes = Object.keys(entered).map((name) => Number(ROW.exec(name)?.[1] ?? -1));
  return Math.min(MAX_ROWS, Math.max(-1, ...indexes) + 1);
}

/** @returns what the form of the waypoints is filled with. */
export function waypointFields(trip: Trip, system: UnitSystem): Entered {
  const fields: Record<string, readonly string[]> = {};
  trip.route?.waypoints.forEach(({ name, distanceM, water, struck }, index) => {
    fields[at(index, 'name')] = [name];
    fields[at(index, 'distanceM')] = [fieldValue(distanceM, 'distance', system)];
    fields[at(index, 'water')] = water ? ['yes'] : [];
    fields[at(index, 'struck')] = struck ? ['yes'] : [];
    const days = trip.days.flatMap((day, at) => (day.endsAt === name ? [at + 1] : []));
    fields[at(index, 'endsDays')] = [days.join(', ')];
  });
  return fields;
}

/**
 * Reads the form of the waypoints, with the days that end at them.
 *
 * @param stored the trip as it was when the form was opened, with a route
 * @returns the trip with the waypoints in the order of the way, or `undefined` where `read.problems` says what has to be mended
 */
export function readWaypoints(read: FormReader, stored: Trip): Trip | undefined {
  const { route } = stored;
  if (!route) return undefined;
  // What still says the same is the same to the metre, also where rows have moved up.
  const known = [...route.waypoints, ...route.profile.slice(-1)].map(({ distanceM }) => distanceM);
  const rows = Array.from({ length: waypointCount(read.entered) }, (_, index) => {
    const text = read.text(at(index, 'distanceM'));
    const water = read.text(at(index, 'water')) === 'yes';
    return {
      endsDays: readDays(read, at(index, 'endsDays'), stored.dayCount),
      waypoint: {
        name: read.text(at(index, 'name')) ?? '',
        distanceM:
          known.find((m) => fieldValue(m, 'distance', read.system) === text) ??
          read.number(at(index, 'distanceM'), { quantity: 'distance' }),
        water,
        struck: water && read.text(at(index, 'struck')) === 'yes',
      },
    };
  });

  const days = Array.from({ length: stored.dayCount }, (_, index): DayConditions => {
    const { endsAt, ...rest } = stored.days[index] ?? {};
    return rest;
  });
  const rowOfDay = new Map<number, number>();
  rows.forEach(({ endsDays, waypoint }, index) => {
    for (const day of endsDays) {
      const other = rowOfDay.get(day);
      if (other !== undefined)
        read.add([
          {
            field: at(index, 'endsDays'),
            message: say('day {day} ends at waypoint {number} already; a day has one end', {
              day,
              number: other + 1,
            }),
          },
        ]);
      rowOfDay.set(day, index);
      const conditions = days[day - 1];
      if (conditions && waypoint.name) conditions.endsAt = waypoint.name;
    }
  });

  const result = Trip.safeParse(
    { ...stored, route: { ...route, waypoints: rows.map(({ waypoint }) => waypoint) }, days: filled(days) },
    { reportInput: true },
  );
  const problems = result.success ? problemsOfLegs(result.data) : problemsOf(result.error);
  read.add(problems.map((problem) => atWaypoint(problem, rowOfDay)));
  if (!result.success || read.problems.length > 0) return undefined;
  const ordered = result.data.route?.waypoints.toSorted((a, b) => a.distanceM - b.distanceM) ?? [];
  return { ...result.data, route: { ...route, waypoints: ordered } };
}

/** @returns the days a waypoint is the end of: "2" or, with a rest day, "2, 3". */
function readDays(read: FormReader, field: string, dayCount: number): number[] {
  const words =
    read
      .text(field)
      ?.split(/[\s,;]+/)
      .filter(Boolean) ?? [];
  const days = words.map(Number);
  if (days.every((day) => Number.isInteger(day) && day >= 1 && day <= dayCount)) return days;
  read.add([
    {
      field,
      message: say(
        'must be days of the trip, from 1 to {days}, such as "2", or "2, 3" where day 3 is a rest day',
        { days: dayCount },
      ),
    },
  ]);
  return [];
}

/** What is wrong with the end of a day belongs to the waypoint that was chosen for it. */
function atWaypoint(problem: Problem, rowOfDay: ReadonlyMap<number, number>): Problem {
  const { field, message } = problem;
  const day = Number(/^days\[(\d+)\]\.endsAt$/.exec(field)?.[1] ?? -1) + 1;
  const row = rowOfDay.get(day);
  return row === undefined
    ? problem
    : { field: at(row, 'endsDays'), message: say('day {day}: {message}', { day, message }) };
}

/** @returns the form with one more, empty, waypoint. */
export function withWaypoint(entered: Entered): Entered {
  return { ...entered, [at(waypointCount(entered), 'name')]: [''] };
}

/** @returns the form without one waypoint; those behind move up. */
export function withoutWaypoint(entered: Entered, removed: number): Entered {
  return Object.fromEntries(
    Object.entries(entered).flatMap(([field, values]) => {
      const [, row, name = ''] = ROW.exec(field) ?? [];
      const index = Number(row);
      if (row === undefined || index < removed) return [[field, values]];
      return index === removed ? [] : [[at(index - 1, name), values]];
    }),
  );
}

/**
 * Puts a route in the place of the one a trip has, or takes it away.
 *
 * @returns the trip, and the days whose chosen end is not on the new route in its place any more
 */
export function withRoute(trip: Trip, route: Route | undefined): { trip: Trip; openedDays: number[] } {
  const { route: before, days, ...rest } = trip;
  const openedDays: number[] = [];
  let kept: DayConditions[] = days.map(({ endsAt, ...day }) => day);
  days.forEach(({ endsAt }, index) => {
    if (endsAt === undefined) return;
    const tried = kept.map((day, other) => (other === index ? { ...day, endsAt } : day));
    const parsed = Trip.safeParse({ ...rest, route, days: tried });
    if (parsed.success && problemsOfLegs(parsed.data).length === 0) kept = tried;
    else openedDays.push(index + 1);
  });
  return { trip: { ...rest, ...(route && { route }), days: filled(kept) }, openedDays };
}

/** The days up to the last for which something is entered. */
function filled(days: readonly DayConditions[]): DayConditions[] {
  return days.slice(0, days.findLastIndex((day) => Object.keys(day).length > 0) + 1);
}
