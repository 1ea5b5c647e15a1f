import type { ResolvedDay, ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import { takingOf } from '../model/meal-rules.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { DayDemand, EaterDayDemand, Estimate } from '../model/trip-plan.ts';
import { MEAL_KINDS, type MainMeal, type MealKind } from '../model/words.ts';
import type { DayLeg } from '../route/day-legs.ts';
import { TERRAIN_FACTOR } from '../route/terrain.ts';
import { ascentNotices } from './ascent-notices.ts';
import { ADULT_FROM_Y, adultNeed, minorNeed } from './energy-need.ts';
import { MIFFLIN_AGES } from './resting-energy.ts';
import { walkingEnergy } from './walking-energy.ts';

/** Mean load of an eater on the move on a day, g. */
export type WalkingLoad = (day: number, eater: string) => number;

/** Body mass behind the work rate of those who gave no body data, g (common practice: the reference man of the equation's trials). */
export const USUAL_MASS_G = 75_000;
/** Days on the way, with rests, that are looked at and warned of, h (rule of thumb: errors and injuries grow when people tire). */
export const LONG_DAY_H = 10;
export const VERY_LONG_DAY_H = 12;

/** Energy of a kilogram of body mass, kcal. Source: Wishnofsky 1958, Am J Clin Nutr 6:542-546 (3500 kcal a pound); real losses differ, and hold water and muscle too. */
export const KCAL_PER_KG_BODY = 7700;

/** A snack belongs to lunch and a drink to dinner, so a trip that begins with dinner has its evening drink and no snack. */
const LAST_OF: Readonly<Record<MainMeal, MealKind>> = {
  breakfast: 'breakfast',
  lunch: 'snack',
  dinner: 'drink',
};

/** Meals of one day in the order in which they are eaten: those between the trip's first and last meal whose share of the day is not 0. */
export function mealsOfDay(trip: ResolvedTrip, day: ResolvedDay, settings: Settings): MealKind[] {
  const from = day.day === 1 ? MEAL_KINDS.indexOf(trip.firstMeal) : 0;
  const to =
    day.day === trip.days.length ? MEAL_KINDS.indexOf(LAST_OF[trip.lastMeal]) : MEAL_KINDS.length - 1;
  return MEAL_KINDS.slice(from, to + 1).filter((meal) => settings.mealShares[meal] > 0);
}

/**
 * Energy that each eater needs on each day, kcal, and how it falls on the meals.
 *
 * An entered need stands as it is. A need from body data is planned for at the chosen point of its range, less the planned deficit (never for minors).
 * A day that begins or ends between meals needs the shares of the meals that it has, and who eats elsewhere needs nothing of that meal.
 */
export function demandOf(
  trip: ResolvedTrip,
  legs: readonly DayLeg[],
  loads: WalkingLoad,
  settings: Settings,
): DayDemand[] {
  return trip.days.map((day, index) => {
    const leg = legs[index];
    if (!leg) throw new RangeError(`no leg for day ${day.day}`);
    const meals = mealsOfDay(trip, day, settings);
    const eaters = trip.party.map((eater): EaterDayDemand => {
      const walkingLoadG = loads(day.day, eater.name);
      const { basis, need, walkingRateW } = needOf(eater, day, leg, walkingLoadG);
      const plannedKcal = basis === 'entered' ? need.value : pointOf(need, trip.planFor);
      const deficitKcal = basis === 'adult body' ? plannedKcal * trip.deficitShare : 0;
      const fullDayKcal = plannedKcal - deficitKcal;
      const own = meals.filter((meal) => !takingOf(trip, day, meal).elsewhere.has(eater.name));
      const mealKcal = Object.fromEntries(own.map((meal) => [meal, fullDayKcal * settings.mealShares[meal]]));
      const targetKcal = own.reduce((sum, meal) => sum + fullDayKcal * settings.mealShares[meal], 0);
      return {
        eater: eater.name,
        basis,
        need,
        deficitKcal,
        targetKcal,
        mealKcal,
        walkingRateW,
        walkingLoadG,
      };
    });
    return { day: day.day, date: day.date, ...(day.kind && { kind: day.kind }), meals, eaters };
  });
}

function needOf(
  eater: ResolvedEater,
  day: ResolvedDay,
  leg: DayLeg,
  loadG: number,
): Pick<EaterDayDemand, 'basis' | 'need' | 'walkingRateW'> {
  const rateOf = (massG: number) =>
    walkingEnergy(leg, { massG, loadG, terrain: TERRAIN_FACTOR[day.terrain] }).meanW;
  if (eater.need.kind === 'entered') {
    const { kcal } = eater.need;
    const need: Estimate = {
      value: kcal,
      low: kcal,
      high: kcal,
      terms: [{ code: 'energy as entered', value: kcal, unit: 'kcal' }],
    };
    return {
      basis: 'entered',
      need,
      walkingRateW: rateOf(eater.body.massG ?? USUAL_MASS_G),
    };
  }
  const { body, appetite } = eater.need;
  if (body.ageY < ADULT_FROM_Y)
    return {
      basis: 'minor body',
      // a child is never planned to eat less than the need of its age
      need: withAppetite(minorNeed(body, day, leg, loadG), Math.max(1, appetite)),
      walkingRateW: rateOf(body.massG),
    };
  const { walkingRateW, ...need } = adultNeed(body, day, leg, loadG);
  return { basis: 'adult body', need: withAppetite(need, appetite), walkingRateW };
}

/** A need as an eater of this appetite covers it; one of appetite 1 as it is. */
function withAppetite(need: Estimate, appetite: number): Estimate {
  if (appetite === 1) return need;
  return {
    value: need.value * appetite,
    low: need.low * appetite,
    high: need.high * appetite,
    terms: [...need.terms, { code: 'appetite learned', value: appetite * 100, unit: '%' }],
  };
}

const pointOf = (need: Estimate, planFor: ResolvedTrip['planFor']): number =>
  planFor === 'low' ? need.low : planFor === 'high' ? need.high : need.value;

/** What has to be said about the needs: who must be advised by a professional, what a deficit means, and where an equation is used beyond its data. */
export function demandNotices(
  trip: ResolvedTrip,
  legs: readonly DayLeg[],
  demand: readonly DayDemand[],
): Notice[] {
  const notices: Notice[] = [];
  const bodies = trip.party.flatMap(({ name, need }) =>
    need.kind === 'body' ? [{ name, body: need.body }] : [],
  );
  if (bodies.length > 0) notices.push(notice('body-data-limits', {}));
  for (const { name, body } of bodies) {
    const { ageY } = body;
    if (ageY < ADULT_FROM_Y) notices.push(notice('minor-in-party', { ageY }, { eater: name }));
    if (ageY > MIFFLIN_AGES.to)
      notices.push(notice('older-than-equation', { ageY, mostY: MIFFLIN_AGES.to }, { eater: name }));
  }

  const onDeficit = demand.flatMap((day) => day.eaters.filter((eater) => eater.deficitKcal > 0));
  if (onDeficit.length > 0) {
    const eaters = [...new Set(onDeficit.map((row) => row.eater))].map((eater) => {
      const kcal = onDeficit
        .filter((row) => row.eater === eater)
        .reduce((sum, row) => sum + row.deficitKcal, 0);
      return { eater, bodyG: (kcal / KCAL_PER_KG_BODY) * 1000 };
    });
    notices.push(notice('planned-deficit', { share: trip.deficitShare, eaters }));
  }

  legs.forEach((leg, index) => {
    if (leg.walkingH > VERY_LONG_DAY_H)
      notices.push(notice('very-long-day', { hours: leg.walkingH }, { day: leg.day }));
    else if (leg.walkingH > LONG_DAY_H)
      notices.push(notice('long-day', { hours: leg.walkingH }, { day: leg.day }));
    const beyondM = Math.max(
      0,
      ...bodies.map(({ name, body }) => {
        const row = demand[index]?.eaters.find(({ eater }) => eater === name);
        const terrain = TERRAIN_FACTOR[trip.days[index]?.terrain ?? 'dirt-road'];
        return walkingEnergy(leg, { massG: body.massG, loadG: row?.walkingLoadG ?? 0, terrain }).beyondM;
      }),
    );
    if (beyondM > leg.distanceM * 0.02)
      notices.push(notice('beyond-walking-equation', { beyondM }, { day: leg.day }));
  });
  notices.push(...ascentNotices(trip));
  for (const eater of trip.party)
    if (eater.isMinor && eater.need.kind === 'entered' && !eater.isNeedOwn)
      notices.push(notice('minor-without-need', {}, { eater: eater.name }));
  return notices;
}
