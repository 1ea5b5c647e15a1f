import type { DayLeg } from '../route/day-legs.ts';
import { methodHours } from '../route/walking-time.ts';
import { isBeyondTests, walkingRateW, type Walk } from './load-carriage.ts';

const KCAL_PER_WH = 3600 / 4184;

/** A walker and what they walk on, all day. */
export type Walker = Omit<Walk, 'speedMs' | 'grade'>;

export type WalkingEnergy = {
  /** Above nothing: resting is in it, as in the equation. */
  readonly kcal: number;
  /** Mean metabolic rate on the move, W; 0 for a leg without walking. */
  readonly meanW: number;
  /** Length of the way on which the equation is carried on beyond what it was tested on, m. */
  readonly beyondM: number;
};

/**
 * Energy of walking a leg with a load, integrated over its grade profile.
 *
 * The time on the move falls on the pieces of the profile as DIN 33466 would have it,
 * scaled to the leg's time, so that each piece has a speed. Ground length counts, not its projection.
 */
export function walkingEnergy(leg: DayLeg, walker: Walker): WalkingEnergy {
  const pieces = leg.grades.map(({ lengthM, grade }) => {
    const riseM = lengthM * grade;
    const effort = {
      distanceM: lengthM,
      climbM: Math.max(0, riseM),
      descentM: Math.max(0, -riseM),
      toblerH: 0,
    };
    return {
      grade,
      lengthM,
      groundM: lengthM * Math.hypot(1, grade),
      weight: methodHours(effort, 'din-33466'),
    };
  });
  const weights = pieces.reduce((sum, piece) => sum + piece.weight, 0);
  if (leg.movingH <= 0 || weights <= 0) return { kcal: 0, meanW: 0, beyondM: 0 };
  let energyWh = 0;
  let beyondM = 0;
  for (const { grade, lengthM, groundM, weight } of pieces) {
    const hours = (leg.movingH * weight) / weights;
    if (hours <= 0) continue;
    const walk = { ...walker, speedMs: groundM / (hours * 3600), grade };
    energyWh += hours * walkingRateW(walk);
    if (isBeyondTests(walk)) beyondM += lengthM;
  }
  return { kcal: energyWh * KCAL_PER_WH, meanW: energyWh / leg.movingH, beyondM };
}
