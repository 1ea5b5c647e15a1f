import type { StoveRun } from '../model/settings.ts';
import type { FuelKind } from '../model/words.ts';
import { boilingPointC } from './boiling-point.ts';
import { NET_CALORIFIC_VALUE } from './fuels.ts';
import { heatForWaterKJ } from './heat-of-water.ts';

export type StoveCalibration = {
  readonly efficiency: number;
  readonly low: number;
  readonly high: number;
  readonly runs: number;
};

/** Spread of a single boil from another, as a share (common practice); used until there are three runs to tell their own. */
const SPREAD_OF_ONE_RUN = 0.1;

/** Share of the fuel's heat that reached the water in one measured boil. Above 1 the weights or the water cannot be right. */
export function efficiencyOfRun(run: StoveRun): number {
  const burntG = run.grossBeforeG - run.grossAfterG;
  return (
    heatForWaterKJ(run.waterMl, run.fromC, boilingPointC(run.altitudeM)) /
    (burntG * NET_CALORIFIC_VALUE[run.fuel])
  );
}

/**
 * The efficiency of the user's own stove from measured boils: heat into all the water over heat in all the fuel burnt, so that larger boils count for more.
 *
 * @returns undefined where no run of this fuel is credible (an efficiency of 5 to 95 %); the range is two standard errors of the runs' mean, at least 3 %
 */
export function calibrateStove(runs: readonly StoveRun[], fuel: FuelKind): StoveCalibration | undefined {
  const credible = runs.filter(
    (run) => run.fuel === fuel && efficiencyOfRun(run) >= 0.05 && efficiencyOfRun(run) <= 0.95,
  );
  if (credible.length === 0) return undefined;
  const burntKJ = credible.reduce(
    (sum, run) => sum + (run.grossBeforeG - run.grossAfterG) * NET_CALORIFIC_VALUE[fuel],
    0,
  );
  const efficiency =
    credible.reduce(
      (sum, run) => sum + heatForWaterKJ(run.waterMl, run.fromC, boilingPointC(run.altitudeM)),
      0,
    ) / burntKJ;
  const variance =
    credible.reduce((sum, run) => sum + (efficiencyOfRun(run) - efficiency) ** 2, 0) /
    Math.max(1, credible.length - 1);
  const spread =
    credible.length < 3
      ? efficiency * SPREAD_OF_ONE_RUN
      : Math.max(efficiency * 0.03, 2 * Math.sqrt(variance / credible.length));
  return {
    efficiency,
    low: Math.max(0.01, efficiency - spread),
    high: Math.min(1, efficiency + spread),
    runs: credible.length,
  };
}
