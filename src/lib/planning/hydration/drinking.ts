import type { Settings } from '../model/settings.ts';
import type { ResolvedDay } from '../model/trip-defaults.ts';
import type { Estimate } from '../model/trip-plan.ts';

/** US quart, ml. */
const QUART_ML = 946.352946;
/** Most that may be drunk in an hour and in a day: 1.5 and 12 quarts. Above it, over-drinking harms. Source: US Army TB MED 507, fluid replacement table. */
export const MOST_PER_HOUR_ML = 1.5 * QUART_ML;
export const MOST_PER_DAY_ML = 12 * QUART_ML;
/** Individual need differs by ± 1/4 quart an hour. Source: US Army TB MED 507, fluid replacement table. */
const INDIVIDUAL_PER_HOUR_ML = QUART_ML / 4;

/** Above this air temperature sweat makes the walker drink more: 4 % of the mild-day figure for each degree (common practice). */
const MILD_UP_TO_C = 20;
const MORE_PER_DEGREE = 0.04;

/** Drinking water for one hour of walking, ml per eater. */
export function drinkPerWalkingHourMl(day: ResolvedDay, settings: Settings): number {
  const heat = 1 + MORE_PER_DEGREE * Math.max(0, day.airTemperatureC - MILD_UP_TO_C);
  return Math.min(MOST_PER_HOUR_ML, settings.drinkPerWalkingHourMl * heat);
}

/**
 * What one eater drinks on a day, ml: a resting share and a walking share, within the limits of TB MED 507.
 */
export function drinkOfDay(day: ResolvedDay, settings: Settings): Estimate {
  const perHourMl = drinkPerWalkingHourMl(day, settings);
  const value = Math.min(MOST_PER_DAY_ML, settings.drinkAtRestMl + perHourMl * day.walkingH);
  const spread = INDIVIDUAL_PER_HOUR_ML * day.walkingH;
  return {
    value,
    low: Math.max(settings.drinkAtRestMl, value - spread),
    high: Math.min(MOST_PER_DAY_ML, value + spread),
    terms: [
      { label: 'a day at rest', value: settings.drinkAtRestMl, unit: 'ml' },
      { label: `an hour of walking at ${day.airTemperatureC} °C`, value: perHourMl, unit: 'ml' },
      { label: 'hours of walking', value: day.walkingH, unit: 'h' },
    ],
  };
}
