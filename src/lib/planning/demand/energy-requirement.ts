import { text, type Text } from '../../texts/say.ts';
import type { Body } from '../model/body.ts';

/** Levels of physical activity of the DRI, from the least to the most active. */
export const ACTIVITY_LEVELS = ['sedentary', 'low active', 'active', 'very active'] as const;
export type ActivityLevel = (typeof ACTIVITY_LEVELS)[number];
export const ACTIVITY_WORDS: Readonly<Record<ActivityLevel, Text>> = {
  sedentary: text('sedentary'),
  'low active': text('low active'),
  active: text('active'),
  'very active': text('very active'),
};

type Equation = {
  readonly constant: number;
  readonly perYear: number;
  readonly perKg: number;
  readonly perM: number;
  readonly pa: readonly [number, number, number, number];
};

const MEN: Equation = { constant: 662, perYear: 9.53, perKg: 15.91, perM: 539.6, pa: [1, 1.11, 1.25, 1.48] };
const WOMEN: Equation = { constant: 354, perYear: 6.91, perKg: 9.36, perM: 726, pa: [1, 1.12, 1.27, 1.45] };
/** Growth adds 20 kcal/d at 3 to 8 years and 25 at 9 to 18. */
const BOYS: Equation = { constant: 88.5, perYear: 61.9, perKg: 26.7, perM: 903, pa: [1, 1.13, 1.26, 1.42] };
const GIRLS: Equation = { constant: 135.3, perYear: 30.8, perKg: 10, perM: 934, pa: [1, 1.16, 1.31, 1.56] };

/**
 * Estimated energy requirement, kcal/d.
 *
 * Source: Institute of Medicine, Dietary Reference Intakes 2005, ch. 5: adults of 19 years and more; children of 3 to 18 years (coefficients for children from memory).
 *
 * @throws RangeError under 3 years
 */
export function energyRequirementKcal({ sex, ageY, heightM, massG }: Body, level: ActivityLevel): number {
  if (!(ageY >= 3))
    throw new RangeError(`the energy-requirement equations hold from 3 years, not for ${ageY}`);
  const adult = ageY >= 19;
  const equation = sex === 'male' ? (adult ? MEN : BOYS) : adult ? WOMEN : GIRLS;
  const growthKcal = adult ? 0 : ageY >= 9 ? 25 : 20;
  const pa = equation.pa[ACTIVITY_LEVELS.indexOf(level)] ?? 1;
  return (
    equation.constant -
    equation.perYear * ageY +
    pa * (equation.perKg * (massG / 1000) + equation.perM * heightM) +
    growthKcal
  );
}

/** Level of activity of a day on the trail by its hours of walking (common practice). */
export function activityLevelOf(walkingH: number): ActivityLevel {
  return walkingH >= 4 ? 'very active' : walkingH >= 1 ? 'active' : 'low active';
}
