import { fromCore, VOLUME_ML } from '../units/convert.ts';

export const WORK_RATES = ['easy', 'moderate', 'hard'] as const;
export type WorkRate = (typeof WORK_RATES)[number];

/**
 * Quarts an hour by heat category, 1 to 5. Source: US Army TB MED 507, fluid replacement table.
 * Categories by wet-bulb globe temperature, °F: 78-81.9, 82-84.9, 85-87.9, 88-89.9, 90 and more.
 */
const QUARTS_PER_HOUR: Readonly<Record<WorkRate, readonly [number, number, number, number, number]>> = {
  easy: [0.5, 0.5, 0.75, 0.75, 1],
  moderate: [0.75, 0.75, 0.75, 0.75, 1],
  hard: [0.75, 1, 1, 1, 1],
};
const CATEGORY_FROM_F = [78, 82, 85, 88, 90] as const;

/** Most that may be drunk in an hour and in a day; above it, over-drinking harms. Source: US Army TB MED 507. */
export const MOST_PER_HOUR_ML = 1.5 * VOLUME_ML.qt;
export const MOST_PER_DAY_ML = 12 * VOLUME_ML.qt;
/** Individual need differs by ± 1/4 quart an hour. Source: US Army TB MED 507. */
export const INDIVIDUAL_PER_HOUR_ML = VOLUME_ML.qt / 4;

/**
 * Work-rate class of a metabolic rate: TB MED 507 gives about 250 W for easy, 425 W for moderate and 600 W for hard work (memory); the classes meet half-way.
 */
export function workRateOf(metabolicRateW: number): WorkRate {
  return metabolicRateW < (250 + 425) / 2 ? 'easy' : metabolicRateW < (425 + 600) / 2 ? 'moderate' : 'hard';
}

/** Heat category 1 to 5, or 0 below 78 °F, where the table does not reach. */
export function heatCategory(wbgtC: number): number {
  return CATEGORY_FROM_F.filter((fromF) => fromCore(wbgtC, '°F') >= fromF - 1e-9).length;
}

/** @returns ml an hour by the table; 0 below its heat categories */
export function fluidReplacementMl(wbgtC: number, work: WorkRate): number {
  const category = heatCategory(wbgtC);
  return category === 0 ? 0 : (QUARTS_PER_HOUR[work][category - 1] ?? 0) * VOLUME_ML.qt;
}
