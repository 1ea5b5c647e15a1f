/** Source: Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241-247: the equation, worked by hand. */
import { expect, it } from 'vitest';
import { restingEnergyKcal } from '../../src/lib/planning/demand/resting-energy.ts';

it('gives resting energy as the equation says', () => {
  // 9.99 × 80 + 6.25 × 180 - 4.92 × 30 + 166 - 161 = 1781.6
  expect(restingEnergyKcal({ sex: 'male', ageY: 30, heightM: 1.8, massG: 80_000 })).toBeCloseTo(1781.6, 6);
  // 9.99 × 60 + 6.25 × 165 - 4.92 × 40 - 161 = 1272.85
  expect(restingEnergyKcal({ sex: 'female', ageY: 40, heightM: 1.65, massG: 60_000 })).toBeCloseTo(
    1272.85,
    6,
  );
});

it('refuses minors', () => {
  expect(() => restingEnergyKcal({ sex: 'female', ageY: 18, heightM: 1.65, massG: 60_000 })).toThrow(
    RangeError,
  );
});
