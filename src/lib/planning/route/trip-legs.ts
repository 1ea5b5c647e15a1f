import {
  NOTHING_LEARNED,
  paceOf,
  type KnownDay,
  type LearnedDefaults,
  type ResolvedTrip,
} from '../model/resolve-trip.ts';
import { meaningOf } from '../model/day-kinds.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { LegSummary } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { dayLegs, type DayLeg } from './day-legs.ts';
import { legByHand } from './leg-by-hand.ts';
import { altitudeTimeFactor, terrainTimeFactor } from './terrain.ts';
import { DIN } from './walking-time.ts';
import { TRIP_DEFAULTS } from '../model/trip-defaults.ts';
import { say, sayNumber } from '../../texts/say.ts';

/** A leg as it is planned with: times as the user set them, and the sources that are counted on, `atM` along the route. */
export type PlannedLeg = DayLeg & { readonly basis: LegSummary['basis'] };

/** A source this near to a camp is the camp's source, m (common practice: a short walk with a bag). */
export const CAMP_SOURCE_WITHIN_M = 250;

/** The legs that the route, or a length entered by hand, give; undefined for days of which only the hours are known. */
export function knownLegs(trip: Trip, learned: LearnedDefaults = NOTHING_LEARNED): (DayLeg | undefined)[] {
  const pace = paceOf(trip, learned);
  const days = Array.from({ length: trip.dayCount }, (_, index) => trip.days[index] ?? {});
  const legs = trip.route
    ? dayLegs(
        trip.route,
        trip.dayCount,
        days.map((day) => day.endsAt),
        pace,
        days.map((day) => meaningOf(day.kind).walkingShare),
      )
    : days.map(({ distanceM, climbM, descentM }, index) =>
        distanceM === undefined
          ? undefined
          : legByHand({ distanceM, climbM: climbM ?? 0, descentM: descentM ?? 0 }, index + 1, pace),
      );
  return legs.map((leg, index) => leg && slowed(leg, groundAndHeight(trip, index, leg)));
}

/** How much longer a day's walk takes for its ground and its altitude than the method says. */
function groundAndHeight(trip: Trip, index: number, leg: DayLeg | undefined): number {
  const { terrain } = trip.days[index] ?? {};
  const altitudeM = walkedAtM(trip, index, leg);
  return (
    terrainTimeFactor(terrain ?? TRIP_DEFAULTS.terrain.value) *
    (altitudeM === undefined ? 1 : altitudeTimeFactor(altitudeM))
  );
}

/** Mean altitude of a day's walk: by the route, else between the camps as far as they are entered. */
function walkedAtM(trip: Trip, index: number, leg: DayLeg | undefined): number | undefined {
  if (trip.route?.altitudeKnown && leg && leg.distanceM > 0)
    return leg.grades.reduce((sum, { lengthM, altitudeM }) => sum + lengthM * altitudeM, 0) / leg.distanceM;
  const camps = [trip.days[index - 1]?.campAltitudeM, trip.days[index]?.campAltitudeM].filter(
    (altitudeM) => altitudeM !== undefined,
  );
  return camps.length === 0 ? undefined : camps.reduce((sum, altitudeM) => sum + altitudeM, 0) / camps.length;
}

/** A leg that takes so many times as long. */
const slowed = (leg: DayLeg, factor: number): DayLeg => ({
  ...leg,
  movingH: leg.movingH * factor,
  walkingH: leg.walkingH * factor,
  sources: leg.sources.map((source) => ({ ...source, atH: source.atH * factor })),
});

/** What the known legs say of each day, for the defaults of the trip. */
export function knownDays(trip: Trip, known: readonly (DayLeg | undefined)[]): (KnownDay | undefined)[] {
  const water = trip.route?.waypoints.filter((waypoint) => waypoint.water) ?? [];
  return known.map((leg, index) => {
    if (!leg) return undefined;
    const hasSource = water.some(
      (source) => !source.struck && Math.abs(source.distanceM - leg.toM) <= CAMP_SOURCE_WITHIN_M,
    );
    const isLastDay = index === known.length - 1;
    return {
      walkingH: leg.walkingH,
      campAltitudeM: trip.route?.altitudeKnown ? leg.campAltitudeM : undefined,
      campWater: water.length === 0 || isLastDay ? undefined : hasSource ? 'source' : 'dry',
    };
  });
}

/**
 * The legs of all days. Hours entered by the user stand over those of the method; a day of which only the hours are known is level ground.
 * Where the route has no source at all, sources come every so many hours of walking, as the day says.
 */
export function plannedLegs(
  trip: Trip,
  resolved: ResolvedTrip,
  known: readonly (DayLeg | undefined)[],
): PlannedLeg[] {
  const hasSources = trip.route?.waypoints.some((waypoint) => waypoint.water) ?? false;
  let soFarM = 0;
  return resolved.days.map((day, index): PlannedLeg => {
    const given =
      known[index] ??
      levelLeg(
        day.day,
        day.walkingH / groundAndHeight(trip, index, undefined),
        paceOf(trip, NOTHING_LEARNED).restShare,
      );
    const leg = trip.route ? given : { ...given, fromM: soFarM, toM: soFarM + given.distanceM };
    soFarM = leg.toM;
    const scale = leg.walkingH > 0 ? day.walkingH / leg.walkingH : 1;
    const movingH = leg.walkingH > 0 ? leg.movingH * scale : day.walkingH;
    const sources = hasSources
      ? leg.sources
          .filter((source) => !source.struck)
          .map((source) => ({ ...source, atH: source.atH * scale, atM: leg.fromM + source.atM }))
      : sourcesEvery(day.waterEveryH, day.walkingH, leg);
    return {
      ...leg,
      basis: trip.route ? 'route' : known[index] ? 'by hand' : 'hours only',
      movingH,
      walkingH: day.walkingH,
      sources,
    };
  });
}

/** What has to be said about the route. */
export function routeNotices(trip: Trip): Notice[] {
  if (!trip.route || trip.route.altitudeKnown) return [];
  return [notice('route-without-elevation', {})];
}

export function legSummary(leg: PlannedLeg): LegSummary {
  const { day, basis, fromM, distanceM, climbM, descentM, highestM, walkingH, movingH, endsAt, sources } =
    leg;
  return {
    day,
    basis,
    fromM,
    distanceM,
    climbM,
    descentM,
    highestM,
    walkingH,
    movingH,
    ...(endsAt === undefined ? {} : { endsAt }),
    sources: sources.map(({ name, atH, atM }) => ({ name, atH, atM })),
  };
}

/** Level ground for so many hours at the speed of DIN 33466. */
function levelLeg(day: number, walkingH: number, restShare: number): DayLeg {
  const distanceM = (walkingH / (1 + restShare)) * DIN.flatMPerH;
  const pace = { method: 'din-33466', partyFactor: 1, restShare } as const;
  return legByHand({ distanceM, climbM: 0, descentM: 0 }, day, pace);
}

function sourcesEvery(everyH: number, walkingH: number, leg: DayLeg): DayLeg['sources'] {
  const sources: DayLeg['sources'][number][] = [];
  for (let atH = everyH; atH < walkingH - 1e-9; atH += everyH)
    sources.push({
      name: say('source after {hours} h', { hours: sayNumber(atH, { maximumFractionDigits: 2 }) }),
      atH,
      atM: leg.fromM + (leg.distanceM * atH) / walkingH,
      struck: false,
    });
  return sources;
}
