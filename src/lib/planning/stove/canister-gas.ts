import { NIGHT_COLDER_C } from '../hydration/night.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { CanisterGas } from '../model/words.ts';

/**
 * Boiling points of what a canister holds besides propane, °C at sea level, and how they fall with the standard atmosphere, °C for each 1000 m. Computed from reference equations of
 * state: isobutane -11.7, -17.8 and -23.8, n-butane -0.5, -6.7 and -12.9 °C at 0, 2000 and 4000 m.
 */
const BOILS: Readonly<Record<CanisterGas, { readonly atSeaLevelC: number; readonly perKm: number }>> = {
  isobutane: { atSeaLevelC: -11.7, perKm: -3.03 },
  butane: { atSeaLevelC: -0.5, perKm: -3.1 },
};
/** A canister cools itself as it burns, so that the air has to be so much warmer, °C (rule of thumb: 5 to 10). */
const SELF_COOLING_C = 10;

/** @returns boiling point of the main gas at an altitude, °C */
export const gasBoilsC = (gas: CanisterGas, altitudeM: number): number =>
  BOILS[gas].atSeaLevelC + (BOILS[gas].perKm * altitudeM) / 1000;

/** The day on which the canister comes furthest below its limit, if it does on any: breakfast is cooked at the end of the night. */
export function coldGasNotices({ days, stove }: ResolvedTrip): Notice[] {
  const { gas } = stove;
  const cold = days
    .map((day) => ({
      day: day.day,
      coldestC: day.airTemperatureC - NIGHT_COLDER_C,
      gasBoilsC: gasBoilsC(gas, day.campAltitudeM),
    }))
    .filter(({ coldestC, gasBoilsC }) => coldestC < gasBoilsC + SELF_COOLING_C)
    .toSorted((a, b) => a.coldestC - a.gasBoilsC - (b.coldestC - b.gasBoilsC));
  return cold
    .slice(0, 1)
    .map(({ day, ...figures }) => notice('cold-for-canister-gas', { gas, ...figures }, { day }));
}
