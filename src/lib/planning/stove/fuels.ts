import type { FuelKind } from '../model/words.ts';

/**
 * Net calorific value, kJ/g (equal to MJ/kg): propane 46.4, isobutane 45.6, naphtha 44.9, kerosene 43.1, ethanol 26.8.
 * Canister gas is taken as 80 % isobutane and 20 % propane by mass (common practice); spirit as sold holds some water: 93 % ethanol by mass (common practice).
 */
export const NET_CALORIFIC_VALUE: Readonly<Record<FuelKind, number>> = {
  'canister-gas': 0.8 * 45.6 + 0.2 * 46.4,
  naphtha: 44.9,
  kerosene: 43.1,
  ethanol: 0.93 * 26.8,
};
