import type { Pace } from '../model/resolve-trip.ts';
import type { ProfilePoint, Route, RouteWaypoint } from '../model/route.ts';
import { sliceProfile } from './along-profile.ts';
import { type GradePiece, gradePieces } from './grade-pieces.ts';
import { RouteError } from './route-error.ts';
import { settle } from './settle.ts';
import { effortAlong, effortBetween, hoursInto, methodHours, walkingHours } from './walking-time.ts';

/** A water source that a leg comes by. One at a camp, within 100 m of it along the route, is at the end of the leg to it and at the start of the leg from it. */
export type LegSource = {
  readonly name: string;
  /** How far into the leg, m, and how many hours, rests included. */
  readonly atM: number;
  readonly atH: number;
  /** Not counted on. */
  readonly struck: boolean;
};

/** What is walked on one day. A day of rest has a length of 0. */
export type DayLeg = {
  readonly day: number;
  /** How far along the route the leg starts and ends, m. */
  readonly fromM: number;
  readonly toM: number;
  readonly distanceM: number;
  readonly climbM: number;
  readonly descentM: number;
  readonly highestM: number;
  /** Altitude where the leg ends. */
  readonly campAltitudeM: number;
  readonly grades: readonly GradePiece[];
  readonly movingH: number;
  /** With rests. */
  readonly walkingH: number;
  readonly sources: readonly LegSource[];
  /** The waypoint chosen for its end. */
  readonly endsAt: string | undefined;
};

/** A place chosen for the end of the last day may be this far from the end of the route, m. */
const AT_THE_END_M = 200;
/** A source this near along the route to an end of a leg is at the camp there (common practice), m. */
const BY_THE_CAMP_M = 100;

/**
 * Splits a route into days. A day ends at the waypoint chosen for it, the last day at the end of the route; the same place twice is a day of rest.
 * Days without a choice share the way to the next chosen end so that each walks the same hours, or its share of them.
 *
 * Ways up or down of less than 10 m are flattened first, for profiles that were not made by `makeProfile`.
 *
 * @param endsAt name of the waypoint where each day ends; undefined or missing: no choice
 * @param shares by day, its hours beside those of a full day: 0.5 for half, 0 for a rest; missing: 1. A day with a chosen end walks to it
 * @throws RouteError naming the day whose waypoint is unknown or lies behind the day before it
 */
export function dayLegs(
  route: Route,
  dayCount: number,
  endsAt: readonly (string | undefined)[],
  pace: Pace,
  shares: readonly number[] = [],
): DayLeg[] {
  const altitudes = settle(Float64Array.from(route.profile, (point) => point.altitudeM));
  const profile = route.profile.map(({ distanceM }, index) => ({
    distanceM,
    altitudeM: altitudes[index] ?? 0,
  }));
  const ends = endsOfDays(route, profile, dayCount, endsAt, pace, shares);
  return ends.map((toM, index) =>
    legOver(sliceProfile(profile, ends[index - 1] ?? 0, toM), {
      day: index + 1,
      endsAt: endsAt[index],
      waypoints: route.waypoints,
      pace,
    }),
  );
}

/** The leg over a piece of profile, which may be one point. */
export function legOver(
  piece: readonly ProfilePoint[],
  leg: {
    day: number;
    endsAt?: string | undefined;
    waypoints?: readonly RouteWaypoint[];
    pace: Pace;
  },
): DayLeg {
  const { day, endsAt, waypoints = [], pace } = leg;
  const fromM = piece[0]?.distanceM ?? 0;
  const toM = piece.at(-1)?.distanceM ?? fromM;
  const effortTo = effortAlong(piece);
  const effort = effortTo(toM);
  return {
    day,
    fromM,
    toM,
    distanceM: effort.distanceM,
    climbM: effort.climbM,
    descentM: effort.descentM,
    highestM: piece.reduce((highestM, { altitudeM }) => Math.max(highestM, altitudeM), -Infinity),
    campAltitudeM: piece.at(-1)?.altitudeM ?? 0,
    grades: gradePieces(piece),
    ...walkingHours(effort, pace),
    sources: waypoints
      .filter(({ water }) => water)
      .map(({ name, distanceM, struck }) => ({ name, struck, alongM: placeOnLeg(distanceM, fromM, toM) }))
      .filter(({ alongM }) => alongM >= fromM && alongM <= toM)
      .toSorted((a, b) => a.alongM - b.alongM)
      .map(({ name, struck, alongM }) => ({
        name,
        atM: alongM - fromM,
        atH: hoursInto(effortTo(alongM), effort, pace),
        struck,
      })),
    endsAt,
  };
}

/** A source by the camp at an end of the leg counts as being there. */
function placeOnLeg(sourceM: number, fromM: number, toM: number): number {
  if (Math.abs(sourceM - toM) <= BY_THE_CAMP_M) return toM;
  return Math.abs(sourceM - fromM) <= BY_THE_CAMP_M ? fromM : sourceM;
}

/** How far along the route each day ends, m. */
function endsOfDays(
  route: Route,
  profile: readonly ProfilePoint[],
  dayCount: number,
  endsAt: readonly (string | undefined)[],
  pace: Pace,
  shares: readonly number[],
): number[] {
  if (endsAt.length > dayCount)
    throw new RouteError({ code: 'more-ends-than-days', ends: endsAt.length, days: dayCount });
  const effortTo = effortAlong(profile);
  const hours = (fromM: number, toM: number): number =>
    methodHours(effortBetween(effortTo(fromM), effortTo(toM)), pace.method);

  const ends: number[] = [];
  let sharing: number[] = [];
  for (let day = 1; day <= dayCount; day++) {
    const chosenM = chosenEnd(route, day, dayCount, endsAt);
    sharing.push(shares[day - 1] ?? 1);
    if (chosenM === undefined) continue;
    const fromM = ends.at(-1) ?? 0;
    if (chosenM < fromM)
      throw new RouteError(
        { code: 'end-behind-day', name: endsAt[day - 1] ?? '', chosenM, fromM, day: ends.length },
        { day },
      );
    ends.push(...evenEnds(fromM, chosenM, sharing, hours), chosenM);
    sharing = [];
  }
  return ends;
}

function chosenEnd(
  route: Route,
  day: number,
  dayCount: number,
  endsAt: readonly (string | undefined)[],
): number | undefined {
  const endM = route.profile.at(-1)?.distanceM ?? 0;
  const name = endsAt[day - 1];
  if (name === undefined) return day === dayCount ? endM : undefined;
  const waypoint = route.waypoints.find((other) => other.name === name);
  if (!waypoint)
    throw new RouteError(
      { code: 'no-such-waypoint', name, names: route.waypoints.map((other) => other.name) },
      { day },
    );
  if (day < dayCount) return waypoint.distanceM;
  if (endM - waypoint.distanceM > AT_THE_END_M)
    throw new RouteError({ code: 'last-day-ends-early', endM, name, atM: waypoint.distanceM }, { day });
  return endM;
}

/**
 * The ends of all but the last of a number of legs that share a way so that each takes its share of the same hours. There are hours of which each leg but the last takes
 * its share in full and that are enough for the last too; the least such are found by halving. Where all of them rest, the way is walked in even legs all the same.
 */
function evenEnds(
  fromM: number,
  toM: number,
  shares: readonly number[],
  hours: (fromM: number, toM: number) => number,
): number[] {
  const mostShare = Math.max(...shares);
  const sharesOf = mostShare > 0 ? shares : shares.map(() => 1);
  const lastShare = sharesOf.at(-1) ?? 1;
  const endsWith = (dayH: number): number[] => {
    const ends: number[] = [];
    for (const share of sharesOf.slice(0, -1)) {
      const startM = ends.at(-1) ?? fromM;
      ends.push(share === 0 ? startM : least(startM, toM, (m) => hours(startM, m) >= share * dayH));
    }
    return ends;
  };
  const mostH = hours(fromM, toM) / (mostShare || 1);
  const legH = least(0, mostH, (h) => hours(endsWith(h).at(-1) ?? fromM, toM) <= lastShare * h);
  return endsWith(legH).map((m) => Math.min(toM, Math.max(fromM, Math.round(m))));
}

/** The least value from `low` to `high` that is enough, or `high`. */
function least(low: number, high: number, isEnough: (value: number) => boolean): number {
  let [below, above] = [low, high];
  for (let i = 0; i < 50; i++) {
    const middle = (below + above) / 2;
    if (isEnough(middle)) above = middle;
    else below = middle;
  }
  return above;
}
