/**
 * Sources: activation energies of rehydration (García-Pascual et al. 2005, 19.2 kJ/mol) and of cooking rice (17 kcal/mol), z of dried beans (Quast & da Silva 1977, 16 to 19 °C). The factors over
 * 100 °C, worked out from them apart from the program, at 96.6, 93.3, 90.0, 86.6, 83.3 °C (1000 to 5000 m).
 */
import { describe, expect, it } from 'vitest';
import { steepAtAltitudeMin, steepFactor } from '../../src/lib/planning/trail-card/steep-time.ts';

const BOILS_C = [96.6, 93.3, 90.0, 86.6, 83.3];

describe.each([
  [undefined, [1.06, 1.13, 1.19, 1.27, 1.35]],
  ['cook', [1.23, 1.52, 1.88, 2.35, 2.92]],
  ['boil hard', [1.5, 2.4, 3.6, 5.6, 8.5]],
] as const)('%s', (cookAfter, factors) => {
  it.each(BOILS_C.map((boilsC, index) => [boilsC, factors[index] ?? 0] as const))(
    'at %d °C takes %d times as long',
    (boilsC, factor) =>
      expect(Math.abs(steepFactor(boilsC, false, cookAfter) / factor - 1)).toBeLessThan(0.035),
  );
});

it('12 minutes are 16 at 5000 m', () => expect(steepAtAltitudeMin(12, 83.3)).toBe(16));

it('mushrooms that took 10 min at 100 °C would take some 2 h at 30 °C, as they were seen to: 3 h', () =>
  expect((10 * steepFactor(30)) / 60).toBeGreaterThan(0.5));
