import { describe, expect, it } from 'vitest';
import { calibrateStove, efficiencyOfRun } from './calibrate-stove.ts';

const run = (burntG: number, more: object = {}) => ({
  date: '2026-10-01',
  fuel: 'canister-gas' as const,
  grossBeforeG: 300,
  grossAfterG: 300 - burntG,
  waterMl: 1000,
  fromC: 15,
  altitudeM: 0,
  ...more,
});

describe('calibrateStove', () => {
  it('is heat into the water over heat in the fuel burnt', () => {
    // 4.186 × (99.974 - 15) = 355.7 kJ over 15 g × 45.76 kJ/g = 686.4 kJ
    expect(efficiencyOfRun(run(15))).toBeCloseTo(0.518, 3);
    expect(calibrateStove([run(15)], 'canister-gas')).toMatchObject({
      runs: 1,
      efficiency: expect.closeTo(0.518, 3),
    });
  });

  it('weighs larger boils more, and narrows with more runs', () => {
    const three = calibrateStove([run(15), run(16), run(14.5)], 'canister-gas');
    expect(three?.efficiency).toBeCloseTo((3 * 355.7) / (45.5 * 45.76), 3);
    expect((three?.high ?? 0) - (three?.low ?? 0)).toBeLessThan(2 * 0.1 * 0.518);
  });

  it('leaves out other fuels and boils that cannot be', () => {
    expect(calibrateStove([run(15, { fuel: 'ethanol' })], 'canister-gas')).toBeUndefined();
    expect(calibrateStove([run(5)], 'canister-gas')).toBeUndefined();
    expect(calibrateStove([], 'canister-gas')).toBeUndefined();
  });
});
