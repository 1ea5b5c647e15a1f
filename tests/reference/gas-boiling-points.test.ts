/** Source: normal and reduced-pressure boiling points from reference equations of state, standard atmosphere, °C: isobutane -11.7, -17.8, -23.8 and n-butane -0.5, -6.7, -12.9 at 0, 2000, 4000 m. */
import { expect, it } from 'vitest';
import { gasBoilsC } from '../../src/lib/planning/stove/canister-gas.ts';

it.each([
  ['isobutane', 0, -11.7],
  ['isobutane', 2000, -17.8],
  ['isobutane', 4000, -23.8],
  ['butane', 0, -0.5],
  ['butane', 2000, -6.7],
  ['butane', 4000, -12.9],
] as const)('%s at %d m boils at %d °C', (gas, altitudeM, boilsC) =>
  expect(Math.abs(gasBoilsC(gas, altitudeM) - boilsC)).toBeLessThan(0.2),
);
