import type { DayLeg } from '../route/day-legs.ts';
import { methodHours } from '../route/walking-time.ts';
import { walkingRateW } from './load-carriage.ts';

const KCAL_PER_WH = 3600 / 4184;

/**
 * Energy of walking a leg with a load, integrated over its grade profile.
 *
 * The time on the move falls on the pieces of the profile as DIN 33466 would have it,
 * scaled to the leg's time, so that each piece has a speed. Ground length counts, not its projection.
 *
 * @returns kcal above nothing (resting included, as in the equation), and the mean metabolic rate, W; 0 for a leg without walking
 */
export function walkingEnergy(
  leg: DayLeg,
  massG: number,
  loadG: number,
  terrain: number,
): { kcal: number; meanW: number } {
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
      groundM: lengthM * Math.hypot(1, grade),
      weight: methodHours(effort, 'din-33466'),
    };
  });
  const weights = pieces.reduce((sum, piece) => sum + piece.weight, 0);
  if (leg.movingH <= 0 || weights <= 0) return { kcal: 0, meanW: 0 };
  const energyWh = pieces.reduce((sum, { grade, groundM, weight }) => {
    const hours = (leg.movingH * weight) / weights;
    return hours > 0
      ? sum + hours * walkingRateW({ massG, loadG, speedMs: groundM / (hours * 3600), grade, terrain })
      : sum;
  }, 0);
  return { kcal: energyWh * KCAL_PER_WH, meanW: energyWh / leg.movingH };
}
