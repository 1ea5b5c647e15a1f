import type { Dryer, Process } from '../model/kitchen.ts';
import type { Estimate } from '../model/trip-plan.ts';

/** A finished run of a dryer. */
export type Run = {
  readonly dryer: string;
  readonly preFrozen: boolean;
  readonly waterRemovedG: number;
  readonly hours: number;
  readonly energyKwh?: number | undefined;
};

/** What the hours and the electricity of a run are known from. */
export type RunBasis = {
  /** Runs of a dryer, all of them or those that went in frozen, or not, like this one; missing: common practice. */
  readonly hours?: {
    readonly runs: number;
    readonly kind: 'any' | 'frozen' | 'plain';
    readonly dryer: string;
  };
  readonly energy: { readonly meteredRuns: number } | { readonly meanPowerW: number };
};

export type ExpectedRun = {
  readonly hours: Estimate;
  readonly energyKwh: Estimate;
  readonly basis: RunBasis;
};

/** Runs from which a line is drawn. */
export const LEAST_RUNS = 3;
/** Spread of a single run about a proportional guess (rule of thumb). */
const FEW_RUNS_SPREAD = 0.25;
/**
 * Hours of a full load of a cooked mixed dish, a rule of thumb until runs of the dryer are known: about a day in a freeze dryer, less when it goes in frozen
 * hard; half a day in warm air, where freezing does not matter.
 */
export const USUAL_H: Record<Process, { readonly plain: Range; readonly preFrozen: Range }> = {
  'freeze-dried': { plain: [18, 24, 36], preFrozen: [15, 20, 30] },
  dehydrated: { plain: [8, 12, 16], preFrozen: [8, 12, 16] },
};
type Range = readonly [low: number, value: number, high: number];
/** The thinner the layer the faster, but a run never gets short: hours of an empty load over those of a full one (rule of thumb). */
const LEAST_LOAD_SHARE = 0.4;
/** Mean power of unmetered runs is known to about this share (rule of thumb). */
const POWER_SPREAD = 0.3;

/**
 * Upper quantile of Student's t for a two-sided 80 % interval, by degrees of freedom 1 to 30; beyond, that of the normal distribution plus its first correction.
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.10 (checked in the tests against a statistics library).
 */
const T_90 = [
  3.0777, 1.8856, 1.6377, 1.5332, 1.4759, 1.4398, 1.4149, 1.3968, 1.383, 1.3722, 1.3634, 1.3562, 1.3502,
  1.345, 1.3406, 1.3368, 1.3334, 1.3304, 1.3277, 1.3253, 1.3232, 1.3212, 1.3195, 1.3178, 1.3163, 1.315,
  1.3137, 1.3125, 1.3114, 1.3104,
];
export const tQuantile90 = (degreesOfFreedom: number): number =>
  T_90[degreesOfFreedom - 1] ?? 1.28155 + 0.8467 / degreesOfFreedom;

export type Line = {
  readonly intercept: number;
  readonly slope: number;
  /** @returns the value at x with its 80 % prediction interval */
  predict(x: number): Range;
};

/**
 * Least squares, y = a + b x, with the prediction interval of one more observation: y ± t s √(1 + 1/n + (x - x̄)²/Sxx), s² = SSE/(n - 2).
 * Source: any textbook of regression, for instance Draper & Smith, Applied Regression Analysis, ch. 1.
 *
 * @param points at least three, not all at the same x
 */
export function fitLine(points: readonly (readonly [x: number, y: number])[]): Line {
  const n = points.length;
  const meanOf = (of: (point: readonly [number, number]) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / n;
  const meanX = meanOf(([x]) => x);
  const meanY = meanOf(([, y]) => y);
  const sxx = points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const sxy = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const slope = sxy / sxx;
  const intercept = meanY - slope * meanX;
  const sse = points.reduce((sum, [x, y]) => sum + (y - intercept - slope * x) ** 2, 0);
  const s = Math.sqrt(sse / (n - 2));
  return {
    intercept,
    slope,
    predict(x) {
      const half = tQuantile90(n - 2) * s * Math.sqrt(1 + 1 / n + (x - meanX) ** 2 / sxx);
      const value = intercept + slope * x;
      return [value - half, value, value + half];
    },
  };
}

/**
 * Hours and energy that a run will take: by the runs of this dryer so far, or, where there are none, by what is common practice.
 *
 * Runs that went in frozen or not like this one are taken where there are three of them, else all of the dryer.
 *
 * @param waterG water to be removed, g
 * @param loadShare what is on the trays over what they take, share
 */
export function expectRun(
  dryer: Dryer,
  preFrozen: boolean,
  waterG: number,
  loadShare: number,
  runs: readonly Run[],
): ExpectedRun {
  const ofDryer = runs.filter((run) => run.dryer === dryer.name && run.waterRemovedG > 0);
  const alike = ofDryer.filter((run) => run.preFrozen === preFrozen);
  const used = alike.length >= LEAST_RUNS || alike.length === ofDryer.length ? alike : ofDryer;
  const kind = used !== alike ? 'any' : preFrozen ? 'frozen' : 'plain';

  const hours = predicted(
    used.map((run) => [run.waterRemovedG, run.hours]),
    waterG,
  );
  const range = hours ?? usualHours(dryer.process, preFrozen, loadShare);
  const hoursTerm = hours
    ? { code: 'water to remove' as const, value: waterG, unit: 'g' }
    : { code: 'load of dryer' as const, value: loadShare * 100, unit: '%' };

  const metered = used.flatMap((run): [number, number][] =>
    run.energyKwh === undefined ? [] : [[run.waterRemovedG, run.energyKwh]],
  );
  const kw = dryer.meanPowerW / 1000;
  const energy: Range = predicted(metered, waterG) ?? [
    range[0] * kw * (1 - POWER_SPREAD),
    range[1] * kw,
    range[2] * kw * (1 + POWER_SPREAD),
  ];
  return {
    hours: estimate(range, [hoursTerm]),
    energyKwh: estimate(energy, [{ code: 'hours of run', value: range[1], unit: 'h' }]),
    basis: {
      ...(hours && { hours: { runs: used.length, kind, dryer: dryer.name } }),
      energy: metered.length > 0 ? { meteredRuns: metered.length } : { meanPowerW: dryer.meanPowerW },
    },
  };
}

/** By a line where there are runs enough and their loads differ, else in proportion or by their mean. */
function predicted(points: readonly (readonly [number, number])[], x: number): Range | undefined {
  const [first] = points;
  if (!first) return undefined;
  const mean = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const spreadX = Math.max(...points.map(([at]) => at)) / Math.min(...points.map(([at]) => at));
  if (points.length >= LEAST_RUNS && spreadX > 1.15) {
    const line = fitLine(points);
    // more water never dries faster: a falling line is chance
    if (line.slope > 0) return line.predict(x);
  }
  const meanX = points.reduce((sum, [at]) => sum + at, 0) / points.length;
  const value = mean * (LEAST_LOAD_SHARE + (1 - LEAST_LOAD_SHARE) * (x / meanX));
  if (points.length < LEAST_RUNS)
    return [value * (1 - FEW_RUNS_SPREAD), value, value * (1 + FEW_RUNS_SPREAD)];
  const s = Math.sqrt(points.reduce((sum, [, y]) => sum + (y - mean) ** 2, 0) / (points.length - 1));
  const half = tQuantile90(points.length - 1) * s * Math.sqrt(1 + 1 / points.length);
  return [value - half, value, value + half];
}

function usualHours(process: Process, preFrozen: boolean, loadShare: number): Range {
  const [low, value, high] = USUAL_H[process][preFrozen ? 'preFrozen' : 'plain'];
  const factor = LEAST_LOAD_SHARE + (1 - LEAST_LOAD_SHARE) * Math.min(1, Math.max(0, loadShare));
  return [low * factor, value * factor, high];
}

function estimate([low, value, high]: Range, terms: Estimate['terms']): Estimate {
  return { low: Math.max(0, low), value: Math.max(0, value), high: Math.max(0, high), terms };
}
