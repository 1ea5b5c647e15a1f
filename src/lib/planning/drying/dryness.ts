import type { Batch, TrayFeel } from '../model/batch.ts';
import type { ProcessFigures } from '../model/kitchen.ts';
import { dryWeightG, moistureAt } from './mass-balance.ts';

/** Why a tray does not count as dry. Shares are of its weight without fat. */
export type DrynessGap =
  | {
      readonly code:
        | 'not-weighed'
        | 'weighed-once'
        | 'gained-weight'
        | 'not-felt'
        | 'cold-spot'
        | 'damp-spot'
        | 'lighter-than-dry-matter';
    }
  | { readonly code: 'weighed-too-soon'; readonly leastH: number }
  | { readonly code: 'still-losing'; readonly lostG: number; readonly hours: number; readonly mostG: number }
  | {
      readonly code: 'scale-too-coarse';
      readonly stepG: number;
      readonly hours: number;
      readonly waitH: number;
    }
  | { readonly code: 'too-moist'; readonly share: number; readonly most: number };

/** What looks odd about a tray, counted from 1. */
export type DrynessDoubts = {
  'lighter-than-dry-matter': { readonly number: number; readonly weightG: number; readonly solidsG: number };
  'wetter-than-others': { readonly number: number; readonly share: number; readonly least: number };
};
export type DrynessDoubt = {
  readonly [Code in keyof DrynessDoubts]: { readonly code: Code; readonly params: DrynessDoubts[Code] };
}[keyof DrynessDoubts];

type Range = { readonly value: number; readonly low: number; readonly high: number };

export type TrayDryness = {
  readonly wetG: number;
  /** Food on the tray at its last weighing, g; the wet food before any. */
  readonly nowG: number;
  readonly expectedDryG: number;
  /** Water over all at the last weighing, share; `undefined` before any. */
  readonly residual: Range | undefined;
  /** The same over what is there without its fat, which holds no water: this has the bound. */
  readonly fatFree: Range | undefined;
  /** Loss from the weighing before to the last, as a share of its weight in an hour; `undefined` before two weighings. */
  readonly lossPerH: number | undefined;
  /** The same in grams, and the most of a dry tray. */
  readonly lossGPerH: number | undefined;
  readonly boundGPerH: number;
  readonly feel: TrayFeel;
  /** Why the tray does not count as dry; empty: dry. */
  readonly open: readonly DrynessGap[];
};

export type Dryness = {
  readonly trays: readonly TrayDryness[];
  /** All food on the trays now, g. */
  readonly nowG: number;
  readonly expectedDryG: number;
  readonly hours: number;
  /** Every tray is dry. */
  readonly dry: boolean;
  readonly doubts: readonly DrynessDoubt[];
};

/** Two weighings closer than this show nothing, h (common practice). */
export const LEAST_INTERVAL_H = 1;
/** The usual second weighing, h after the one before (rule of thumb: two to three). */
const USUAL_INTERVAL_H = 2;
/** What a kitchen scale can show, g. */
const SCALE_STEP_G = 1;

/**
 * When to weigh a tray again, and the most that it may have lost by then to count as dry.
 *
 * The bound is a share of the weight in an hour; where that is less than a kitchen scale shows in two hours, the wait is longer.
 *
 * @param nowG food on the tray, g
 * @param lossBoundPerH share of its weight in an hour
 * @example nextWeighing(300, 0.005) // { afterH: 2, mostLossG: 3 }
 */
export function nextWeighing(nowG: number, lossBoundPerH: number): { afterH: number; mostLossG: number } {
  const perHG = nowG * lossBoundPerH;
  const afterH = perHG > 0 ? Math.max(USUAL_INTERVAL_H, Math.ceil(SCALE_STEP_G / perHG)) : USUAL_INTERVAL_H;
  return { afterH, mostLossG: perHG * afterH };
}

/** Water of a cooked dish is known from tables to about this, share of its weight (common practice: foods vary). */
export const MOISTURE_UNSURE = 0.015;
/** A tray with so much more residual moisture than the driest stands out. */
const STANDS_OUT = 0.03;

/**
 * What is left of the water of food, from its weight before and now.
 *
 * @param wetG weight before, g
 * @param dish its moisture and fat then, shares of its weight
 * @param nowG weight now, g
 * @returns shares of what is there, and of that without its fat, which holds no water
 */
export function waterLeft(
  wetG: number,
  { moisture, fatShare }: { readonly moisture: number; readonly fatShare: number },
  nowG: number,
): { readonly residual: Range; readonly fatFree: Range } {
  const at = (wetMoisture: number) =>
    Math.max(0, moistureAt(wetG, Math.min(1, Math.max(0, wetMoisture)), nowG));
  const residual = {
    value: at(moisture),
    low: at(moisture - MOISTURE_UNSURE),
    high: at(moisture + MOISTURE_UNSURE),
  };
  const withoutFat = (share: number) => {
    const waterG = share * nowG;
    return waterG / Math.max(waterG, nowG - fatShare * wetG, 1e-9);
  };
  return {
    residual,
    fatFree: {
      value: withoutFat(residual.value),
      low: withoutFat(residual.low),
      high: withoutFat(residual.high),
    },
  };
}

/**
 * Whether the food of each tray is dry: its weight has come to a stand, what is left of its water is within bounds, and it feels dry through.
 *
 * Tables know the water of a dish only within a range. Where two weighings show that no more leaves the food, the dry end of that range counts; else the wet end does. A loss is
 * told from the step of the scale: what a display cannot show counts as lost.
 *
 * @param dish moisture and fat of the food when it was loaded, shares of its weight
 * @param scaleStepG the smallest step of the scale, g
 */
export function judgeDryness(
  { trays, weighings }: Pick<Batch, 'trays' | 'weighings'>,
  { moisture, fatShare }: { readonly moisture: number; readonly fatShare: number },
  figures: ProcessFigures,
  scaleStepG: number,
): Dryness {
  const doubts: DrynessDoubt[] = [];
  const judged = trays.map((tray, index): TrayDryness => {
    const wetG = tray.loadedG - tray.tareG;
    const weighed = weighings.flatMap(({ afterH, trays: lines }) => {
      const grossG = lines[index]?.grossG;
      return grossG === undefined ? [] : [{ afterH, netG: grossG - tray.tareG }];
    });
    const last = weighed.at(-1);
    const before = weighed.at(-2);
    // What was felt stays noted until the tray is weighed again.
    const felt = weighings.findLast(({ trays: lines }) => {
      const line = lines[index];
      return line !== undefined && (line.grossG !== undefined || line.feel !== 'not felt');
    });
    const feel = felt?.trays[index]?.feel ?? 'not felt';
    const nowG = last?.netG ?? wetG;
    const lossPerH =
      last && before ? (before.netG - last.netG) / (last.afterH - before.afterH) / last.netG : undefined;
    const { residual, fatFree } = last
      ? waterLeft(wetG, { moisture, fatShare }, nowG)
      : { residual: undefined, fatFree: undefined };
    const boundGPerH = figures.lossBoundPerH * wetG * (1 - moisture);

    const open: DrynessGap[] = [];
    let stands = false;
    if (!last) open.push({ code: 'not-weighed' });
    else if (!before || lossPerH === undefined) open.push({ code: 'weighed-once' });
    else if (last.afterH - before.afterH < LEAST_INTERVAL_H)
      open.push({ code: 'weighed-too-soon', leastH: LEAST_INTERVAL_H });
    else {
      const gap = gapOfLoss(before.netG - last.netG, last.afterH - before.afterH, boundGPerH, scaleStepG);
      if (gap) open.push(gap);
      stands = gap === undefined;
    }
    const counts = fatFree && (stands ? fatFree.low : fatFree.high);
    if (counts !== undefined && counts > figures.mostResidualShare)
      open.push({ code: 'too-moist', share: counts, most: figures.mostResidualShare });
    if (last && feel === 'not felt') open.push({ code: 'not-felt' });
    if (feel === 'cold spot') open.push({ code: 'cold-spot' });
    if (feel === 'damp or soft spot') open.push({ code: 'damp-spot' });
    if (last && moistureAt(wetG, moisture, nowG) < -MOISTURE_UNSURE / (1 - moisture)) {
      open.push({ code: 'lighter-than-dry-matter' });
      doubts.push({
        code: 'lighter-than-dry-matter',
        params: { number: index + 1, weightG: nowG, solidsG: wetG * (1 - moisture) },
      });
    }
    return {
      wetG,
      nowG,
      expectedDryG: dryWeightG(wetG, moisture, figures.residualShare),
      residual,
      fatFree,
      lossPerH,
      lossGPerH: lossPerH !== undefined && last ? lossPerH * last.netG : undefined,
      boundGPerH,
      feel,
      open,
    };
  });

  const known = judged.flatMap(({ residual }) => (residual ? [residual.value] : []));
  judged.forEach(({ residual }, index) => {
    if (residual && residual.value > Math.min(...known) + STANDS_OUT)
      doubts.push({
        code: 'wetter-than-others',
        params: { number: index + 1, share: residual.value, least: Math.min(...known) },
      });
  });
  return {
    trays: judged,
    nowG: judged.reduce((sum, tray) => sum + tray.nowG, 0),
    expectedDryG: judged.reduce((sum, tray) => sum + tray.expectedDryG, 0),
    hours: weighings.at(-1)?.afterH ?? 0,
    dry: judged.length > 0 && judged.every(({ open }) => open.length === 0),
    doubts,
  };
}

/** Why a weight does not stand; `undefined`: it does. */
function gapOfLoss(lostG: number, hours: number, boundGPerH: number, stepG: number): DrynessGap | undefined {
  const mostG = boundGPerH * hours;
  if (lostG < -Math.max(mostG, stepG)) return { code: 'gained-weight' };
  if (lostG > mostG) return { code: 'still-losing', lostG, hours, mostG };
  const couldBeG = Math.max(0, lostG) + stepG;
  if (couldBeG <= mostG) return undefined;
  // in whole half hours
  return { code: 'scale-too-coarse', stepG, hours, waitH: Math.ceil((2 * couldBeG) / boundGPerH) / 2 };
}
