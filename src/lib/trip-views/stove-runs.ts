import type { Settings, StoveRun } from '../planning/model/settings.ts';
import { FUEL_KINDS, type FuelKind } from '../planning/model/words.ts';
import { calibrateStove, efficiencyOfRun, type StoveCalibration } from '../planning/stove/calibrate-stove.ts';

/** A measured boil with its place in the settings, the fuel it burnt and the share of the heat that reached the water. */
export type MeasuredRun = StoveRun & {
  readonly place: number;
  readonly burntG: number;
  readonly efficiency: number;
};
export type MeasuredFuel = { readonly fuel: FuelKind } & StoveCalibration;

/** @returns the measured boils, the newest first. */
export function measuredRuns({ stoveRuns }: Settings): MeasuredRun[] {
  return stoveRuns
    .map((run, place) => ({
      ...run,
      place,
      burntG: run.grossBeforeG - run.grossAfterG,
      efficiency: efficiencyOfRun(run),
    }))
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : b.place - a.place));
}

/** @returns the efficiency of the stove for each fuel that was measured. */
export function measuredFuels({ stoveRuns }: Settings): MeasuredFuel[] {
  return FUEL_KINDS.flatMap((fuel) => {
    const calibration = calibrateStove(stoveRuns, fuel);
    return calibration ? [{ fuel, ...calibration }] : [];
  });
}
