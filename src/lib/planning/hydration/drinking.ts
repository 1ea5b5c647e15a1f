import { say } from '../../texts/say.ts';
import type { ResolvedDay } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type { Estimate } from '../model/trip-plan.ts';
import { shownFixed } from '../units/show.ts';
import {
  fluidReplacementMl,
  INDIVIDUAL_PER_HOUR_ML,
  MOST_PER_DAY_ML,
  MOST_PER_HOUR_ML,
  workRateOf,
} from './fluid-replacement.ts';
import { wetBulbGlobeC } from './heat-stress.ts';

/** However much water the food brings, this much of a day at rest is still drunk, ml (common practice). */
export const LEAST_DRUNK_AT_REST_ML = 1000;

export type Drinking = {
  /** Drunk apart from walking, ml. */
  readonly restMl: number;
  readonly total: Estimate;
};

/**
 * What one eater drinks on a day, ml.
 *
 * At rest: the adequate intake of EFSA 2010 (2.0 l women, 2.5 l men, food included, moderate weather; memory; a setting), less the water in the food of the day.
 * On the move: the table of TB MED 507 by work rate and heat; below its heats, and never less, the figure of the settings (the lower end of the 0.4 to 0.8 l/h of the
 * American College of Sports Medicine 2007, memory). Bounded by the limits of TB MED 507.
 *
 * @param foodWaterMl water added to what this eater eats on the day
 */
export function drinkOfDay(
  day: ResolvedDay,
  walkingH: number,
  walkingRateW: number,
  foodWaterMl: number,
  settings: Settings,
): Drinking {
  const wbgtC = wetBulbGlobeC(day.airTemperatureC, day.humidityShare);
  const work = workRateOf(walkingRateW);
  const restMl = Math.max(LEAST_DRUNK_AT_REST_ML, settings.waterAtRestMl - foodWaterMl);
  const wantedPerHourMl = Math.min(
    MOST_PER_HOUR_ML,
    Math.max(settings.drinkPerWalkingHourMl, fluidReplacementMl(wbgtC, work)),
  );
  const value = Math.min(MOST_PER_DAY_ML, restMl + wantedPerHourMl * walkingH);
  const spread = INDIVIDUAL_PER_HOUR_ML * walkingH;
  return {
    restMl: Math.min(restMl, value),
    total: {
      value,
      low: Math.max(Math.min(restMl, value), value - spread),
      high: Math.min(MOST_PER_DAY_ML, value + spread),
      terms: [
        { label: say('water of a day at rest, food included'), value: settings.waterAtRestMl, unit: 'ml' },
        { label: say('already in the food'), value: foodWaterMl, unit: 'ml' },
        {
          label: say(
            'an hour of {work, select, easy {easy} moderate {moderate} other {hard}} walking at {heat} °C WBGT',
            { work, heat: shownFixed(wbgtC, 0) },
          ),
          value: wantedPerHourMl,
          unit: 'ml',
        },
        { label: say('hours of walking'), value: walkingH, unit: 'h' },
      ],
    },
  };
}
