/** Net calorific values, MJ/kg, from memory: propane 46.4, n-butane 45.7, isobutane 45.6, naphtha 44.9, kerosene 43.1, ethanol 26.8. */
import { expect, it } from 'vitest';
import { NET_CALORIFIC_VALUE } from '../../src/lib/planning/stove/fuels.ts';

it('the fuels hold the heat of what they are made of', () => {
  const [propane, butane, isobutane, naphtha, kerosene, ethanol] = [
    46.4, 45.7, 45.6, 44.9, 43.1, 26.8,
  ] as const;
  expect(NET_CALORIFIC_VALUE['canister-gas']).toBeCloseTo(0.8 * isobutane + 0.2 * propane, 9);
  // Any mix of the three gases lies between the least and the most of them, which are less than 2 % apart.
  expect(NET_CALORIFIC_VALUE['canister-gas']).toBeGreaterThanOrEqual(Math.min(propane, butane, isobutane));
  expect(NET_CALORIFIC_VALUE['canister-gas']).toBeLessThanOrEqual(Math.max(propane, butane, isobutane));
  expect(NET_CALORIFIC_VALUE.naphtha).toBe(naphtha);
  expect(NET_CALORIFIC_VALUE.kerosene).toBe(kerosene);
  expect(NET_CALORIFIC_VALUE.ethanol).toBeCloseTo(0.93 * ethanol, 9);
});
