import type { Body } from '../model/body.ts';
import type { ActivityLevel } from '../model/terms.ts';

/** kcal/d = constant + perYear × age + perCm × height + perKg × mass. */
type Equation = readonly [constant: number, perYear: number, perCm: number, perKg: number];
type Equations = Readonly<Record<ActivityLevel, Equation>>;

const MEN: Equations = {
  inactive: [753.07, -10.83, 6.5, 14.1],
  'low active': [581.47, -10.83, 8.3, 14.94],
  active: [1004.82, -10.83, 6.52, 15.91],
  'very active': [-517.88, -10.83, 15.61, 19.11],
};
const WOMEN: Equations = {
  inactive: [584.9, -7.01, 5.72, 11.71],
  'low active': [575.77, -7.01, 6.6, 12.14],
  active: [710.25, -7.01, 6.54, 12.34],
  'very active': [511.83, -7.01, 9.07, 12.56],
};
const BOYS: Equations = {
  inactive: [-447.51, 3.68, 13.01, 13.15],
  'low active': [19.12, 3.68, 8.62, 20.28],
  active: [-388.19, 3.68, 12.66, 20.46],
  'very active': [-671.75, 3.68, 15.38, 23.25],
};
const GIRLS: Equations = {
  inactive: [55.59, -22.25, 8.43, 17.07],
  'low active': [-297.54, -22.25, 12.77, 14.73],
  active: [-189.55, -22.25, 11.74, 18.34],
  'very active': [-709.59, -22.25, 18.22, 14.25],
};

/** What growing takes, kcal/d, under 19 years. */
function growthKcal({ sex, ageY }: Body): number {
  if (ageY >= 19) return 0;
  if (ageY >= 14) return 20;
  if (ageY >= 9) return sex === 'male' ? 25 : 30;
  return ageY >= 4 || sex === 'female' ? 15 : 20;
}

/**
 * Estimated energy requirement, kcal/d.
 *
 * Source: National Academies (NASEM), Dietary Reference Intakes for Energy 2023, in open implementations (adults three, children one): adults of 19 years and more; children and youths
 * of 3 to 18 years.
 *
 * @throws RangeError under 3 years
 */
export function energyRequirementKcal(body: Body, level: ActivityLevel): number {
  const { sex, ageY, heightM, massG } = body;
  if (!(ageY >= 3))
    throw new RangeError(`the energy-requirement equations hold from 3 years, not for ${ageY}`);
  const isAdult = ageY >= 19;
  const equations = sex === 'male' ? (isAdult ? MEN : BOYS) : isAdult ? WOMEN : GIRLS;
  const [constant, perYear, perCm, perKg] = equations[level];
  return constant + perYear * ageY + perCm * heightM * 100 + perKg * (massG / 1000) + growthKcal(body);
}

/** Level of activity of a day on the trail by its hours of walking (common practice). */
export function activityLevelOf(walkingH: number): ActivityLevel {
  return walkingH >= 4 ? 'very active' : walkingH >= 1 ? 'active' : 'low active';
}
