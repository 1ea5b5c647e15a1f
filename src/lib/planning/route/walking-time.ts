import type { Pace } from '../model/resolve-trip.ts';
import type { ProfilePoint, WalkingTimeMethod } from '../model/route.ts';
import { LENGTH_M } from '../units/convert.ts';
import { stepAt } from './along-profile.ts';

/** What a piece of a route asks of a walker; the efforts of pieces add up. */
export type Effort = {
  readonly distanceM: number;
  readonly climbM: number;
  readonly descentM: number;
  /** Hours by Tobler's function, which depends on the grade of each step. */
  readonly toblerH: number;
};

export type WalkingHours = { readonly movingH: number; readonly walkingH: number };

/** Speeds of DIN 33466 (Wegweiser für Wanderwege). */
export const DIN = { flatMPerH: 4000, upMPerH: 300, downMPerH: 500 } as const;
/** Naismith 1892 (Scottish Mountaineering Club Journal 2:136): an hour for every three miles, and one more for every 2000 feet of climb. */
const NAISMITH = { flatMPerH: 3 * LENGTH_M.mi, upMPerH: 2000 * LENGTH_M.ft } as const;

/**
 * Walking speed on a grade, km/h: 6 exp(-3.5 |grade + 0.05|).
 *
 * Source: Tobler 1993, Three presentations on geographical analysis and modeling, NCGIA Technical Report 93-1.
 *
 * @param grade rise over way, as a share: 0.1 for 10 % up, -0.05 for 5 % down
 */
export const toblerKmPerH = (grade: number): number => 6 * Math.exp(-3.5 * Math.abs(grade + 0.05));

/**
 * Effort from the start of a profile to any distance along it.
 *
 * @param profile by strictly rising distance; every rise counts, as small ones are flattened when it is made
 * @returns a function of the distance, which is held to the ends of the profile
 */
export function effortAlong(profile: readonly ProfilePoint[]): (alongM: number) => Effort {
  const sums: Effort[] = [];
  let effort: Effort = { distanceM: 0, climbM: 0, descentM: 0, toblerH: 0 };
  profile.forEach((point, index) => {
    const before = profile[index - 1];
    if (before) {
      const wayM = point.distanceM - before.distanceM;
      const riseM = point.altitudeM - before.altitudeM;
      effort = {
        distanceM: effort.distanceM + wayM,
        climbM: effort.climbM + Math.max(0, riseM),
        descentM: effort.descentM + Math.max(0, -riseM),
        toblerH: effort.toblerH + wayM / 1000 / toblerKmPerH(riseM / wayM),
      };
    }
    sums.push(effort);
  });

  return (alongM) => {
    const { before, share } = stepAt(profile, alongM);
    const start = sums[before] ?? effort;
    return combine(start, sums[before + 1] ?? start, (a, b) => a + share * (b - a));
  };
}

/** @returns the effort between two places, from what each takes from the start. */
export const effortBetween = (from: Effort, to: Effort): Effort => combine(from, to, (a, b) => b - a);

function combine(a: Effort, b: Effort, by: (a: number, b: number) => number): Effort {
  return {
    distanceM: by(a.distanceM, b.distanceM),
    climbM: by(a.climbM, b.climbM),
    descentM: by(a.descentM, b.descentM),
    toblerH: by(a.toblerH, b.toblerH),
  };
}

const dinHours = ({ distanceM, climbM, descentM }: Effort): { levelH: number; steepH: number } => ({
  levelH: distanceM / DIN.flatMPerH,
  steepH: climbM / DIN.upMPerH + descentM / DIN.downMPerH,
});

/**
 * Hours that a leg takes a single walker without rests.
 *
 * - `din-33466`: the larger of the time for the way (4 km/h) and that for the height (300 m/h up, 500 m/h down), plus half the smaller, on the sums of the day's leg.
 * - `tobler`: the speed on the grade of each step, on the way as the map has it.
 * - `naismith`: 3 miles an hour, and an hour for every 2000 feet of climb.
 */
export function methodHours(effort: Effort, method: WalkingTimeMethod): number {
  switch (method) {
    case 'din-33466': {
      const { levelH, steepH } = dinHours(effort);
      return Math.max(levelH, steepH) + Math.min(levelH, steepH) / 2;
    }
    case 'tobler':
      return effort.toblerH;
    case 'naismith':
      return effort.distanceM / NAISMITH.flatMPerH + effort.climbM / NAISMITH.upMPerH;
  }
}

/** Hours that a leg takes a party: on the move, and with rests. */
export function walkingHours(effort: Effort, { method, partyFactor, restShare }: Pace): WalkingHours {
  const movingH = methodHours(effort, method) * partyFactor;
  return { movingH, walkingH: movingH * (1 + restShare) };
}

/**
 * Hours after setting out, rests included, at which a party is at a place within a leg. Rests are spread evenly over the leg. Never falls along the leg,
 * and is the leg's `walkingH` at its end: where DIN 33466 halves the smaller time of the leg, it is halved on each step of it.
 *
 * @param sofar effort from the start of the leg to the place
 * @param leg effort of the whole leg
 */
export function hoursInto(sofar: Effort, leg: Effort, pace: Pace): number {
  if (pace.method !== 'din-33466') return walkingHours(sofar, pace).walkingH;
  const ofLeg = dinHours(leg);
  const { levelH, steepH } = dinHours(sofar);
  const methodH = ofLeg.levelH >= ofLeg.steepH ? levelH + steepH / 2 : steepH + levelH / 2;
  return methodH * pace.partyFactor * (1 + pace.restShare);
}
