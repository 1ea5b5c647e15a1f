import { isMinor } from '../model/minors.ts';
import type { ResolvedDay, ResolvedEater } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type { Estimate } from '../model/trip-plan.ts';
import {
  fluidReplacementMl,
  INDIVIDUAL_PER_HOUR_ML,
  MOST_PER_DAY_ML,
  MOST_PER_HOUR_ML,
  WARM_FROM_C,
  workRateOf,
  type WorkRate,
} from './fluid-replacement.ts';
import { wetBulbGlobeC } from './heat-stress.ts';
import { HEAT_UNSURE_ML, restWaterMl, waterSize } from './rest-water.ts';

/** However much water the food brings, this much of a day at rest is still drunk by an adult, ml (common practice). */
export const LEAST_DRUNK_AT_REST_ML = 1000;
/** Body mass of the soldiers whom the tables of heat are for, g (rule of thumb). */
const TABLE_MASS_G = 75_000;
/** How far people drink apart in the cool, ml an hour. Source: Nolte, Noakes & van Vuuren 2010, MSSE 42:1675: 383 ± 150 ml an hour drunk at will on a march of 4 h. */
export const COOL_SPREAD_PER_HOUR_ML = 150;

export type Drinking = {
  /** Drunk apart from walking, ml. */
  readonly restMl: number;
  /** More would be needed than may be drunk. */
  readonly isCapped: boolean;
  readonly total: Estimate;
};

/** The class of work of an eater on the move. A child's rate is scaled to the mass of the tables: small bodies heat up faster. */
export function workOf({ body }: Pick<ResolvedEater, 'body'>, walkingRateW: number): WorkRate {
  return workRateOf(isMinor(body) && body.massG ? (walkingRateW * TABLE_MASS_G) / body.massG : walkingRateW);
}

/** What a child sweats on the move, of what an adult does: by surface, which goes with mass^(2/3) (rule of thumb; children sweat less still for each m²). */
const sweatSize = (body: ResolvedEater['body']): number => {
  if (!isMinor(body)) return 1;
  return body.massG ? Math.min(1, (body.massG / TABLE_MASS_G) ** (2 / 3)) : waterSize(body);
};

/**
 * What one eater drinks on a day, ml.
 *
 * At rest: the adequate intake for age and sex, and what heat adds, less the water in the food of the day. On the move: the table of TB MED 507 by work and heat; in the cool,
 * and never less, the figure of the settings. Bounded by the limits of TB MED 507, for children by their size.
 *
 * @param foodWaterMl water added to what this eater eats on the day
 * @returns never less in more heat or for longer walking
 */
export function drinkOfDay(
  eater: Pick<ResolvedEater, 'body'>,
  day: ResolvedDay,
  walkingH: number,
  walkingRateW: number,
  foodWaterMl: number,
  settings: Settings,
): Drinking {
  const { body } = eater;
  const wbgtC = wetBulbGlobeC(day.airTemperatureC, day.humidityShare);
  const work = workOf(eater, walkingRateW);
  const sweat = sweatSize(body);
  const rest = restWaterMl(settings.waterAtRestMl, day.airTemperatureC, walkingH, body);
  const restMl = Math.max(LEAST_DRUNK_AT_REST_ML * Math.min(1, waterSize(body)), rest.ml - foodWaterMl);
  const neededPerHourMl =
    Math.max(settings.drinkPerWalkingHourMl, fluidReplacementMl(wbgtC, work, day.sun)) * sweat;
  const perHourMl = Math.min(MOST_PER_HOUR_ML * sweat, neededPerHourMl);
  const mostMl = MOST_PER_DAY_ML * sweat;
  const neededMl = restMl + neededPerHourMl * walkingH;
  const value = Math.min(mostMl, restMl + perHourMl * walkingH);
  const walkSpreadMl =
    (wbgtC < WARM_FROM_C ? COOL_SPREAD_PER_HOUR_ML : INDIVIDUAL_PER_HOUR_ML) * sweat * walkingH;
  const heatSpreadMl = rest.forHeatMl > 0 ? Math.min(rest.forHeatMl, HEAT_UNSURE_ML * waterSize(body)) : 0;
  const spread = Math.hypot(walkSpreadMl, heatSpreadMl);
  return {
    restMl: Math.min(restMl, value),
    isCapped: neededMl > value + 1,
    total: {
      value,
      low: Math.max(0, value - spread),
      high: Math.min(mostMl, value + spread),
      terms: [
        {
          code: 'day at rest',
          value: rest.ml - rest.forHeatMl,
          unit: 'ml',
        },
        ...(rest.forHeatMl > 0
          ? [
              {
                code: 'heat off the trail' as const,
                value: rest.forHeatMl,
                unit: 'ml',
                airC: day.airTemperatureC,
              },
            ]
          : []),
        { code: 'in the food', value: foodWaterMl, unit: 'ml' },
        {
          code: 'hour of walking',
          value: perHourMl,
          unit: 'ml',
          ...(wbgtC >= WARM_FROM_C && { work, wbgtC }),
        },
        { code: 'hours of walking', value: walkingH, unit: 'h' },
      ],
    },
  };
}
