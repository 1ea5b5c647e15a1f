import type { ResolvedDay } from '../model/resolve-trip.ts';
import { fromCore, VOLUME_ML } from '../units/convert.ts';

export const WORK_RATES = ['easy', 'moderate', 'hard', 'very hard'] as const;
export type WorkRate = (typeof WORK_RATES)[number];

/**
 * Quarts an hour by heat category, 1 to 5; the table has no column above hard work, which counts as hard. Source: US Army TB MED 507, fluid replacement table as
 * printed on the heat cards of 2002 to 2004. Categories by wet-bulb globe temperature, °F: 78-81.9, 82-84.9, 85-87.9, 88-89.9, 90 and more.
 */
const QUARTS_PER_HOUR: Readonly<Record<WorkRate, readonly [number, number, number, number, number]>> = {
  easy: [0.5, 0.5, 0.75, 0.75, 1],
  moderate: [0.75, 0.75, 0.75, 0.75, 1],
  hard: [0.75, 1, 1, 1, 1],
  'very hard': [0.75, 1, 1, 1, 1],
};
const CATEGORY_FROM_F = [78, 82, 85, 88, 90] as const;

/** Most that may be drunk in an hour and in a day; above it, over-drinking harms. Source: US Army TB MED 507. */
export const MOST_PER_HOUR_ML = 1.5 * VOLUME_ML.qt;
export const MOST_PER_DAY_ML = 12 * VOLUME_ML.qt;
/** Individual need differs by ± 1/4 quart an hour, and full sun or full shade adds or takes as much. Source: US Army TB MED 507. */
export const INDIVIDUAL_PER_HOUR_ML = VOLUME_ML.qt / 4;
export const SUN_PER_HOUR_ML: Readonly<Record<ResolvedDay['sun'], number>> = {
  sun: VOLUME_ML.qt / 4,
  mixed: 0,
  shade: -VOLUME_ML.qt / 4,
};

/**
 * From this wet-bulb globe temperature up to the first heat category, °C, people drink as in the first category.
 * Source: Canadian Forces Health Services, Annex B, whose first row begins there and asks for as much.
 */
export const WARM_FROM_C = 20;

/**
 * Metabolic rates at which work becomes moderate and hard, W: those of the examples of TB MED 507 by our walking equation for 75 kg. Easy work is 2.5 mph on a hard surface with
 * less than 30 lb; hard work is 3.5 mph with 40 lb and more. Very hard: half as much again (rule of thumb).
 */
export const WORK_FROM_W = { moderate: 314, hard: 486, 'very hard': 730 } as const;

/** @param metabolicRateW of an adult; of a child scaled to 75 kg */
export function workRateOf(metabolicRateW: number): WorkRate {
  if (metabolicRateW < WORK_FROM_W.moderate) return 'easy';
  if (metabolicRateW < WORK_FROM_W.hard) return 'moderate';
  return metabolicRateW < WORK_FROM_W['very hard'] ? 'hard' : 'very hard';
}

/** Heat category 1 to 5, or 0 below 78 °F, where the table does not reach. */
export function heatCategory(wbgtC: number): number {
  return CATEGORY_FROM_F.filter((fromF) => fromCore(wbgtC, '°F') >= fromF - 1e-9).length;
}

/** @returns ml an hour by the table, from WARM_FROM_C on; 0 where it is cooler */
export function fluidReplacementMl(wbgtC: number, work: WorkRate, sun: ResolvedDay['sun'] = 'mixed'): number {
  if (wbgtC < WARM_FROM_C) return 0;
  const column = Math.max(1, heatCategory(wbgtC)) - 1;
  return (QUARTS_PER_HOUR[work][column] ?? 0) * VOLUME_ML.qt + SUN_PER_HOUR_ML[sun];
}
