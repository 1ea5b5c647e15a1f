import type { Settings } from '../model/settings.ts';
import type { ResolvedDay, ResolvedTrip } from '../model/trip-defaults.ts';
import type { DayWater, MenuPlan, WaterPlan } from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import { drinkOfDay } from './drinking.ts';

/** Of the drinking water of a day at rest, this share is drunk at camp, from arriving to leaving; the rest on the way (common practice). */
const AT_CAMP_SHARE = 0.5;

/**
 * The trip as a line of moments: at each, water is used (by each eater, and by the group for its food), and there may be a source.
 * What has to be carried past a moment is all that is used until the next source.
 */
type Moment = {
  readonly day: number;
  readonly place: 'breakfast' | 'leaving camp' | 'source on the way' | 'evening';
  readonly source: boolean;
  readonly eachMl: number;
  readonly groupMl: number;
};

/**
 * Water to drink, to cook with and to carry, day by day.
 *
 * The trip starts at a source. Sources on the way come every `waterEveryH` hours of walking, and lunch is cooked half-way.
 * A camp is a source unless it is dry; at a dry camp everything until the next source has been carried there.
 */
export function planWater(trip: ResolvedTrip, menu: MenuPlan, settings: Settings): WaterPlan {
  const cookMl = (day: number, meals: readonly MealKind[]) =>
    menu.meals
      .filter((meal) => meal.day === day && meals.includes(meal.meal))
      .reduce((sum, meal) => sum + meal.opened.reduce((water, lot) => water + lot.waterMl, 0), 0);

  const moments = trip.days.flatMap((day) => momentsOf(day, trip, settings, cookMl));
  const carriedFrom = (start: number) => {
    let eachMl = 0;
    let groupMl = 0;
    for (let index = start; index < moments.length; index++) {
      const moment = moments[index];
      if (!moment || (index > start && moment.source)) break;
      eachMl += moment.eachMl;
      groupMl += moment.groupMl;
    }
    return { eachMl, groupMl };
  };

  const days = trip.days.map((day): DayWater => {
    const own = moments.flatMap((moment, index) => (moment.day === day.day ? [{ moment, index }] : []));
    const leavingCamp = own.find(({ moment }) => moment.place === 'leaving camp');
    const morning = leavingCamp ? carriedFrom(leavingCamp.index) : { eachMl: 0, groupMl: 0 };
    const lastSource = own.filter(({ moment }) => moment.place === 'source on the way').at(-1);
    const evening = own.find(({ moment }) => moment.place === 'evening');
    const toDryCamp =
      lastSource && evening && !evening.moment.source ? carriedFrom(lastSource.index) : undefined;
    const eaters = trip.party.length;
    const fills = own
      .filter(({ moment }) => moment.place === 'leaving camp' || moment.place === 'source on the way')
      .map(({ index }) => carriedFrom(index));
    const drink = trip.party.map((eater) => ({ eater: eater.name, ml: drinkOfDay(day, settings) }));
    return {
      day: day.day,
      drink,
      drinkMl: drink.reduce((sum, { ml }) => sum + ml.value, 0),
      cookMl: cookMl(day.day, ['breakfast', 'lunch', 'snack', 'dinner', 'drink']),
      morning,
      ...(toDryCamp ? { toDryCamp } : {}),
      peakMl: Math.max(0, ...fills.map(({ eachMl, groupMl }) => eachMl * eaters + groupMl)),
    };
  });
  const peak = days.reduce((most, day) => (day.peakMl > most.peakMl ? day : most));
  return {
    days,
    drinkMl: days.reduce((sum, day) => sum + day.drinkMl, 0),
    cookMl: days.reduce((sum, day) => sum + day.cookMl, 0),
    peakMl: peak.peakMl,
    peakDay: peak.day,
  };
}

function momentsOf(
  day: ResolvedDay,
  trip: ResolvedTrip,
  settings: Settings,
  cookMl: (day: number, meals: readonly MealKind[]) => number,
): Moment[] {
  const drinkMl = drinkOfDay(day, settings).value;
  const campMl = day.walkingH > 0 ? settings.drinkAtRestMl * AT_CAMP_SHARE : drinkMl;
  const perHourMl = day.walkingH > 0 ? (drinkMl - campMl) / day.walkingH : 0;
  const lunchMl = cookMl(day.day, ['lunch', 'snack']);
  const sourceBefore = day.day === 1 || trip.days[day.day - 2]?.campWater === 'source';

  const stops: number[] = [];
  for (let hour = day.waterEveryH; hour < day.walkingH - 1e-9; hour += day.waterEveryH) stops.push(hour);
  const starts = [0, ...stops];
  const noon = day.walkingH / 2;
  const lunchAt = starts.reduce((latest, start, index) => (start <= noon + 1e-9 ? index : latest), 0);

  // Breakfast is cooked before leaving, so its water is no load out of camp; at a dry camp it was carried there with the evening's.
  const breakfast: Moment = {
    day: day.day,
    place: 'breakfast',
    source: sourceBefore,
    eachMl: 0,
    groupMl: cookMl(day.day, ['breakfast']) + (day.walkingH > 0 ? 0 : lunchMl),
  };
  const walking = starts.map((start, index): Moment => ({
    day: day.day,
    place: index === 0 ? 'leaving camp' : 'source on the way',
    source: index > 0 || sourceBefore,
    eachMl: perHourMl * ((starts[index + 1] ?? day.walkingH) - start),
    groupMl: index === lunchAt && day.walkingH > 0 ? lunchMl : 0,
  }));
  const isLast = day.day === trip.days.length;
  const evening: Moment = {
    day: day.day,
    place: 'evening',
    source: day.campWater === 'source' || (isLast && trip.lastMeal !== 'dinner'),
    eachMl: campMl,
    groupMl: cookMl(day.day, ['dinner', 'drink']),
  };
  return [breakfast, ...walking, evening];
}
