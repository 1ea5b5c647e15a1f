import { say } from '../../texts/say.ts';
import type { Body } from '../model/body.ts';
import type { ResolvedDay } from '../model/resolve-trip.ts';
import type { Estimate, Term } from '../model/trip-plan.ts';
import type { DayLeg } from '../route/day-legs.ts';
import { shownExactly, shownFixed } from '../units/show.ts';
import { ACTIVITY_WORDS, activityLevelOf, energyRequirementKcal } from './energy-requirement.ts';
import { TERRAIN_FACTOR } from './load-carriage.ts';
import { restingEnergyKcal } from './resting-energy.ts';
import { walkingEnergy } from './walking-energy.ts';

/** First age of the adult equations, years. */
export const ADULT_FROM_Y = 19;

export const SLEEP_H = 8;
/** Metabolic equivalents on resting energy. Source: Compendium of Physical Activities 2011 (memory): sleeping 0.95, sitting 1.3, camping, light to moderate, 2.5; of the waking hours at camp a quarter is taken for work and three quarters for sitting (common practice). */
export const MET = { sleep: 0.95, pause: 1.3, camp: 0.75 * 1.3 + 0.25 * 2.5 } as const;
/** Digesting takes about a tenth of what is eaten (common practice); the walking equation was measured on fed walkers and holds it already. */
export const DIGESTION = 0.1;

/** Spread of each part, as a share of it. Resting: four in five adults within 10 % (Frankenfield et al. 2005, memory). Camp: common practice. Walking: trials find the equation 10 to 30 % low more often than high (memory). */
export const SPREAD = { rest: 0.1, camp: 0.15, walkLow: 0.1, walkHigh: 0.2, minor: 0.12 } as const;

/**
 * Energy that an adult spends on a day of the trip, kcal: sleeping, camp life, pauses, and walking with the load.
 *
 * @param loadG mean load on the move, g
 */
export function adultNeed(
  body: Body,
  day: ResolvedDay,
  leg: DayLeg,
  loadG: number,
): Estimate & { readonly walkingRateW: number } {
  const restPerH = restingEnergyKcal(body) / 24;
  const pauseH = Math.max(0, leg.walkingH - leg.movingH);
  const campH = Math.max(0, 24 - SLEEP_H - leg.walkingH);
  const walk = walkingEnergy(leg, body.massG, loadG, TERRAIN_FACTOR[day.terrain]);
  const sleepKcal = restPerH * SLEEP_H * MET.sleep;
  const campKcal = restPerH * (campH * MET.camp + pauseH * MET.pause);
  const digestionKcal = (sleepKcal + campKcal) * DIGESTION;
  const value = sleepKcal + campKcal + digestionKcal + walk.kcal;
  const spread = (walkShare: number) =>
    Math.hypot(sleepKcal * SPREAD.rest, (campKcal + digestionKcal) * SPREAD.camp, walk.kcal * walkShare);
  const level = activityLevelOf(leg.walkingH);
  const terms: Term[] = [
    { label: say('resting energy of a day (Mifflin-St Jeor)'), value: restPerH * 24, unit: 'kcal' },
    { label: say('sleep, {hours} h', { hours: SLEEP_H }), value: sleepKcal, unit: 'kcal' },
    {
      label: say('camp and pauses, {hours} h', { hours: shownFixed(campH + pauseH, 1) }),
      value: campKcal,
      unit: 'kcal',
    },
    { label: say('digesting'), value: digestionKcal, unit: 'kcal' },
    {
      label: say('walking, {hours} h on the move (Pandolf)', { hours: shownFixed(leg.movingH, 1) }),
      value: walk.kcal,
      unit: 'kcal',
    },
    { label: say('mean load on the move'), value: loadG / 1000, unit: 'kg' },
    {
      label: say('cross-check: DRI 2005 requirement, {level}', { level: say(ACTIVITY_WORDS[level]) }),
      value: energyRequirementKcal(body, level),
      unit: 'kcal',
    },
  ];
  return {
    value,
    low: value - spread(SPREAD.walkLow),
    high: value + spread(SPREAD.walkHigh),
    terms,
    walkingRateW: walk.meanW,
  };
}

/**
 * Energy that a child or youth of 3 to 18 years needs on a day of the trip, kcal, by the requirement equation of their age.
 * The load-carriage equation was measured on adults, so the load does not enter.
 */
export function minorNeed(body: Body, leg: DayLeg): Estimate {
  const level = activityLevelOf(leg.walkingH);
  const value = energyRequirementKcal(body, level);
  return {
    value,
    low: value * (1 - SPREAD.minor),
    high: value * (1 + SPREAD.minor),
    terms: [
      {
        label: say('DRI 2005 requirement at {age} years, {level} by {hours} h of walking', {
          age: shownExactly(body.ageY),
          level: say(ACTIVITY_WORDS[level]),
          hours: shownFixed(leg.walkingH, 1),
        }),
        value,
        unit: 'kcal',
      },
    ],
  };
}
