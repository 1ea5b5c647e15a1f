/**
 * Source: National Academies (NASEM), Dietary Reference Intakes for Energy 2023: EER = a + b age + c height + d mass (+ growth), worked by hand below from the coefficients as published (read
 * in open implementations); physical activity levels of the bands by age from Health Canada's tables.
 */
import { describe, expect, it } from 'vitest';
import { activityLevelOf, energyRequirementKcal } from '../../src/lib/planning/demand/energy-requirement.ts';
import { restingEnergyKcal } from '../../src/lib/planning/demand/resting-energy.ts';
import { ACTIVITY_LEVELS } from '../../src/lib/planning/model/terms.ts';

const of = (sex: 'male' | 'female', ageY: number, cm: number, kg: number) =>
  ACTIVITY_LEVELS.map((level) =>
    energyRequirementKcal({ sex, ageY, heightM: cm / 100, massG: kg * 1000 }, level),
  );

it.each([
  // 753.07 - 324.9 + 1137.5 + 987 = 2552.67, and so on
  ['male', 30, 175, 70, [2552.67, 2754.87, 2934.62, 3226.67]],
  // 584.9 - 280.4 + 943.8 + 702.6 = 1950.9
  ['female', 40, 165, 60, [1950.9, 2112.77, 2249.35, 2481.58]],
  // -447.51 + 33.12 + 1743.34 + 376.09 + 25 = 1730.04
  ['male', 9, 134, 28.6, [1730.04, 1812.33, 1951.53, 2112.24]],
  // 55.59 - 267 + 1264.5 + 716.94 + 30 = 1800.03
  ['female', 12, 150, 42, [1800.03, 1999.62, 2104.73, 2384.91]],
] as const)('%s of %d years, %d cm, %d kg', (sex, ageY, cm, kg, kcal) =>
  of(sex, ageY, cm, kg).forEach((value, index) =>
    expect(Math.abs(value - (kcal[index] ?? 0))).toBeLessThan(0.5),
  ),
);

it('adults lie in the bands of activity that the levels are named after, over their resting energy', () => {
  const BANDS = [
    [1.0, 1.53],
    [1.53, 1.68],
    [1.68, 1.85],
    [1.85, 2.5],
  ] as const;
  for (const [sex, ageY, cm, kg] of [
    ['male', 30, 178, 75],
    ['female', 30, 165, 60],
  ] as const) {
    const rest = restingEnergyKcal({ sex, ageY, heightM: cm / 100, massG: kg * 1000 });
    of(sex, ageY, cm, kg).forEach((value, index) => {
      const [low, high] = BANDS[index] ?? [0, 0];
      expect(value / rest).toBeGreaterThan(low - 0.1);
      expect(value / rest).toBeLessThan(high + 0.1);
    });
  }
});

describe('ages', () => {
  it('growing takes 20 kcal from 14 to 18 years and nothing later', () => {
    const boy = (ageY: number) => of('male', ageY, 175, 65)[0] ?? 0;
    // from 13 to 14: 3.68 for the year, and 20 for 25
    expect(boy(14) - boy(13)).toBeCloseTo(3.68 - 5, 6);
  });

  it('refuses infants, and calls a day of four hours on foot very active', () => {
    expect(() =>
      energyRequirementKcal({ sex: 'male', ageY: 2, heightM: 0.9, massG: 13_000 }, 'active'),
    ).toThrow(RangeError);
    expect([0, 0.99, 1, 3.9, 4, 12].map(activityLevelOf)).toEqual([
      'low active',
      'low active',
      'active',
      'active',
      'very active',
      'very active',
    ]);
  });
});
