/** Source: Institute of Medicine, Dietary Reference Intakes 2005, ch. 5: table of estimated energy requirements at age 30; for a boy of 9 years from memory. */
import { describe, expect, it } from 'vitest';
import {
  ACTIVITY_LEVELS,
  activityLevelOf,
  energyRequirementKcal,
} from '../../src/lib/planning/demand/energy-requirement.ts';

describe('estimated energy requirement, age 30', () => {
  it.each([
    ['male', 1.5, 41.6, [1848, 2009, 2215, 2554]],
    ['male', 1.8, 81.0, [2635, 2884, 3200, 3720]],
    ['female', 1.5, 41.6, [1625, 1803, 2025, 2291]],
    ['female', 1.8, 81.0, [2211, 2459, 2769, 3141]],
  ] as const)('%s, %d m, %d kg', (sex, heightM, massKg, table) => {
    // The table's masses are rounded to 0.1 kg from a body-mass index, which moves a figure by up to 3 kcal.
    table.forEach((kcal, index) =>
      expect(
        Math.abs(
          energyRequirementKcal(
            { sex, ageY: 30, heightM, massG: massKg * 1000 },
            ACTIVITY_LEVELS[index] ?? 'sedentary',
          ) - kcal,
        ),
      ).toBeLessThan(3),
    );
  });

  it('gives the boy of 9 years of the table (28.6 kg, 1.34 m)', () => {
    [1530, 1787, 2043, 2359].forEach((kcal, index) =>
      expect(
        Math.abs(
          energyRequirementKcal(
            { sex: 'male', ageY: 9, heightM: 1.34, massG: 28_600 },
            ACTIVITY_LEVELS[index] ?? 'sedentary',
          ) - kcal,
        ),
      ).toBeLessThan(5),
    );
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
