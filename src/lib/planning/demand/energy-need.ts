import type { Body } from '../model/body.ts';
import type { ResolvedDay } from '../model/resolve-trip.ts';
import type { Term } from '../model/terms.ts';
import type { Estimate } from '../model/trip-plan.ts';
import type { DayLeg } from '../route/day-legs.ts';
import { TERRAIN_FACTOR } from '../route/terrain.ts';
import { activityLevelOf, energyRequirementKcal } from './energy-requirement.ts';
import { USUAL_RESTING_W_PER_KG } from './load-carriage.ts';
import { altitudeFactor, coldFactor } from './hard-conditions.ts';
import { restingEnergyKcal } from './resting-energy.ts';
import { walkingEnergy } from './walking-energy.ts';

/** First age of the adult equations, years. */
export const ADULT_FROM_Y = 19;
export const SLEEP_H = 8;
/** Metabolic equivalents on resting energy. Source: Compendium of Physical Activities 2011: sleeping 0.95, sitting 1.3, camping, light to moderate, 2.5; of the waking hours at camp a quarter is taken for work and three quarters for sitting (common practice). */
export const MET = { sleep: 0.95, pause: 1.3, camp: 0.75 * 1.3 + 0.25 * 2.5 } as const;
/** Digesting takes about a tenth of what is eaten (common practice); the walking equation was measured on fed walkers and holds it already. */
export const DIGESTION = 0.1;
/**
 * Half of an 80 % range, as a share. Resting: rule of thumb, an own measurement would replace it. Camp: rule of thumb. Walking equation: ± 0.59 W/kg from person to person on some 5 W/kg
 * (Looney et al. 2022), times 1.28. Pace and ground: how well the hours and the grades are known (rule of thumb). Minors: rule of thumb.
 */
export const SPREAD = { rest: 0.1, camp: 0.15, walkEquation: 0.15, walkPace: 0.15, minor: 0.15 } as const;

const W_PER_KCAL_PER_H = 4184 / 3600;

/**
 * Energy that an adult spends on a day of the trip, kcal: sleeping, camp life, pauses, and walking with the load.
 *
 * The day has 24 hours: where the walk takes more than 16, sleep is what is left. Errors add as they hang together: the resting rate is in every hour of the day, the hours at camp
 * and the two of walking are independent of it and of each other.
 *
 * @param loadG mean load on the move, g
 */
export function adultNeed(
  body: Body,
  day: ResolvedDay,
  leg: DayLeg,
  loadG: number,
): Estimate & { readonly walkingRateW: number } {
  const height = altitudeFactor(day.campAltitudeM);
  const cold = coldFactor(day.airTemperatureC);
  const restPerH = (restingEnergyKcal(body) / 24) * height * cold;
  const walkingH = Math.min(24, leg.walkingH);
  const pauseH = Math.max(0, walkingH - leg.movingH);
  const sleepH = Math.min(SLEEP_H, 24 - walkingH);
  const campH = Math.max(0, 24 - sleepH - walkingH);
  const walk = walkingEnergy(leg, {
    massG: body.massG,
    loadG,
    terrain: TERRAIN_FACTOR[day.terrain],
    restingWPerKg: (restPerH * W_PER_KCAL_PER_H * 1000) / body.massG,
  });

  const sleepKcal = restPerH * sleepH * MET.sleep;
  const campKcal = restPerH * (campH * MET.camp + pauseH * MET.pause);
  const digestionKcal = (sleepKcal + campKcal) * DIGESTION;
  const value = sleepKcal + campKcal + digestionKcal + walk.kcal;
  const restWalkingKcal = restPerH * leg.movingH;
  const spread = Math.hypot(
    (sleepKcal + campKcal + digestionKcal + restWalkingKcal) * SPREAD.rest,
    (campKcal + digestionKcal) * SPREAD.camp,
    walk.kcal * SPREAD.walkEquation,
    walk.kcal * SPREAD.walkPace,
  );
  const level = activityLevelOf(leg.walkingH);
  const terms: Term[] = [
    {
      code: 'resting',
      value: restingEnergyKcal(body),
      unit: 'kcal',
    },
    ...(height > 1 ? [{ code: 'altitude' as const, value: (height - 1) * 100, unit: '%' }] : []),
    ...(cold > 1 ? [{ code: 'cold' as const, value: (cold - 1) * 100, unit: '%' }] : []),
    { code: 'sleep', value: sleepKcal, unit: 'kcal', hours: sleepH },
    {
      code: 'camp and pauses',
      value: campKcal,
      unit: 'kcal',
      hours: campH + pauseH,
    },
    { code: 'digesting', value: digestionKcal, unit: 'kcal' },
    {
      code: 'walking',
      value: walk.kcal,
      unit: 'kcal',
      hours: leg.movingH,
    },
    { code: 'load on the move', value: loadG / 1000, unit: 'kg' },
    {
      code: 'requirement',
      value: energyRequirementKcal(body, level),
      unit: 'kcal',
      level,
    },
  ];
  return { value, low: value - spread, high: value + spread, terms, walkingRateW: walk.meanW };
}

/**
 * Energy that a child or youth of 3 to 18 years needs on a day of the trip, kcal: the requirement of their age at the activity of the day, or that of an inactive day and the walk, whichever
 * is more. The walk is that of the equation for adults, which runs low for small bodies, with the pack that the child carries.
 */
export function minorNeed(body: Body, day: ResolvedDay, leg: DayLeg, loadG: number): Estimate {
  const level = activityLevelOf(leg.walkingH);
  const byLevel = energyRequirementKcal(body, level);
  const atRest = energyRequirementKcal(body, 'inactive');
  const walk = walkingEnergy(leg, { massG: body.massG, loadG, terrain: TERRAIN_FACTOR[day.terrain] });
  const restingKcal = (USUAL_RESTING_W_PER_KG * (body.massG / 1000) * leg.movingH) / W_PER_KCAL_PER_H;
  const walkKcal = Math.max(0, walk.kcal - restingKcal);
  const value =
    Math.max(byLevel, atRest + walkKcal) *
    altitudeFactor(day.campAltitudeM) *
    coldFactor(day.airTemperatureC);
  return {
    value,
    low: value * (1 - SPREAD.minor),
    high: value * (1 + SPREAD.minor),
    terms: [
      {
        code: 'requirement by walk',
        value: byLevel,
        unit: 'kcal',
        ageY: body.ageY,
        level,
        hours: leg.walkingH,
      },
      {
        code: 'requirement and walk',
        value: atRest + walkKcal,
        unit: 'kcal',
        ageY: body.ageY,
      },
    ],
  };
}
