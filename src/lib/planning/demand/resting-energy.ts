import type { Body } from '../model/body.ts';

/** Ages the equation was fitted on, years. */
export const MIFFLIN_AGES = { from: 19, to: 78 } as const;

/**
 * Resting energy of an adult, kcal/d.
 *
 * Source: Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241-247: 9.99 W + 6.25 H - 4.92 A + 166 s - 161, W in kg, H in cm, A in years, s = 1 for men and 0 for women;
 * fitted on ages 19 to 78. Above that age it is carried on.
 *
 * @throws RangeError under 19 years
 */
export function restingEnergyKcal({ sex, ageY, heightM, massG }: Body): number {
  if (!(ageY >= MIFFLIN_AGES.from))
    throw new RangeError(
      `the resting-energy equation holds from ${MIFFLIN_AGES.from} years, not for ${ageY}`,
    );
  return 9.99 * (massG / 1000) + 625 * heightM - 4.92 * ageY + (sex === 'male' ? 166 : 0) - 161;
}
