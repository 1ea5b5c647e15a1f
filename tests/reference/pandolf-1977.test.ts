/** Sources: Pandolf, Givoni & Goldman 1977 (J Appl Physiol 43:577-581), worked by hand; Santee et al. 2001/2003, worked by hand; Looney et al. 2019 (memory) as an independent equation. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TERRAIN_FACTOR, walkingRateW } from '../../src/lib/planning/demand/load-carriage.ts';

/** Level walking without a load, W/kg: Looney et al. 2019, Med Sci Sports Exerc 51:893-898 (memory). */
const levelWalkingRateWPerKg = (speedMs: number): number =>
  1.44 + 1.94 * speedMs ** 0.43 + 0.24 * speedMs ** 4;

const walk = { massG: 80_000, loadG: 20_000, speedMs: 1.34, grade: 0, terrain: 1 };

describe('walking with a load', () => {
  it('is 401.8 W for 80 kg + 20 kg at 1.34 m/s on level blacktop', () => {
    // 1.5 × 80 + 2 × 100 × (20/80)² + 100 × 1.5 × 1.34² = 120 + 12.5 + 269.34
    expect(walkingRateW(walk)).toBeCloseTo(401.84, 2);
  });

  it('adds 0.35 V G for each kg uphill', () =>
    expect(walkingRateW({ ...walk, grade: 0.1 }) - walkingRateW(walk)).toBeCloseTo(
      100 * 0.35 * 1.34 * 10,
      6,
    ));

  it('takes off the correction downhill', () => {
    // level part 401.84; 100 × 0.35 × 1.34 × -8 = -375.2; correction -8 × 100 × 1.34 / 3.5 - 100 × 4 / 80 + 25 - 1.7956 = -306.2857 - 5 + 23.2044 = -288.0813
    expect(walkingRateW({ ...walk, grade: -0.08 })).toBeCloseTo(401.84 - 375.2 + 288.0813, 2);
  });

  it('has the terrain factors of Soule & Goldman 1972', () =>
    expect(Object.values(TERRAIN_FACTOR)).toEqual([1.0, 1.1, 1.2, 1.5, 1.8, 2.1]));

  it('lies within 25 % of Looney 2019 for walking without a load at 0.9 to 1.8 m/s', () => {
    for (let speedMs = 0.9; speedMs <= 1.8; speedMs += 0.1) {
      const byPandolf = walkingRateW({ massG: 75_000, loadG: 0, speedMs, grade: 0, terrain: 1 }) / 75;
      expect(Math.abs(byPandolf / levelWalkingRateWPerKg(speedMs) - 1)).toBeLessThan(0.25);
    }
  });

  it('never falls with more load or more climb on the level or uphill', () =>
    fc.assert(
      fc.property(
        fc.record({
          massG: fc.integer({ min: 40_000, max: 120_000 }),
          loadG: fc.integer({ min: 0, max: 40_000 }),
          speedMs: fc.double({ min: 0, max: 2.2, noNaN: true }),
          grade: fc.double({ min: 0, max: 0.6, noNaN: true }),
          terrain: fc.constantFrom(...Object.values(TERRAIN_FACTOR)),
        }),
        fc.integer({ min: 0, max: 10_000 }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (some, moreG, steeper) => {
          expect(walkingRateW({ ...some, loadG: some.loadG + moreG })).toBeGreaterThanOrEqual(
            walkingRateW(some),
          );
          expect(walkingRateW({ ...some, grade: some.grade + steeper })).toBeGreaterThanOrEqual(
            walkingRateW(some),
          );
        },
      ),
      { seed: 1977 },
    ));

  it('takes descents steeper than the data as the steepest, and refuses nonsense', () => {
    expect(walkingRateW({ ...walk, grade: -0.6 })).toBe(walkingRateW({ ...walk, grade: -0.12 }));
    expect(() => walkingRateW({ ...walk, massG: 0 })).toThrow(RangeError);
    expect(() => walkingRateW({ ...walk, loadG: -1 })).toThrow(RangeError);
  });
});
