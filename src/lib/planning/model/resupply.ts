import type { Resupply } from './trip.ts';
import { MEAL_KINDS, type MealKind } from './words.ts';

/*
 * A journey with places where food and fuel are picked up is walked in stages: stage 0 from the start to the first of them, stage 1 from there on, and so forth.
 */

type Moment = { readonly day: number; readonly meal: MealKind };

/** A moment of the trip as a number that grows. */
const orderOf = ({ day, meal }: Moment): number => day * MEAL_KINDS.length + MEAL_KINDS.indexOf(meal);

/** The first meal that is eaten from what is picked up. */
export const firstMealOf = ({ day, from }: Pick<Resupply, 'day' | 'from'>): Moment => ({ day, meal: from });

/** Places where food and fuel are picked up, in the order of the way. */
export const inOrder = (resupplies: readonly Resupply[] | undefined): Resupply[] =>
  [...(resupplies ?? [])].sort((a, b) => orderOf(firstMealOf(a)) - orderOf(firstMealOf(b)));

/**
 * The stage of a meal: how many places lie before it.
 *
 * @param places in order
 * @example stageAt(inOrder(trip.resupplies), { day: 4, meal: 'dinner' }) // 1, where a box waits on day 4 before dinner
 */
export const stageAt = (places: readonly Resupply[], at: Moment): number =>
  places.filter((place) => orderOf(firstMealOf(place)) <= orderOf(at)).length;

/**
 * The stage from whose start on a pouch is carried: food comes with what is picked up last before its meal, from a box or a cache. A shop sells food, and
 * brings none of the shelf.
 *
 * @param boughtAt the shop on the way where it is bought; left out: it comes from home
 */
export function carriedFromStage(places: readonly Resupply[], at: Moment, boughtAt?: string): number {
  const shop = places.findIndex(({ place }) => place === boughtAt);
  if (boughtAt !== undefined && shop >= 0) return shop + 1;
  const stage = stageAt(places, at);
  for (let index = stage; index > 0; index--) if (places[index - 1]?.kind !== 'shop') return index;
  return 0;
}

/** The first whole day on which food bought at a place on the way can be eaten; from the first meal after it where that is breakfast. */
export function firstDayOf(places: readonly Resupply[], boughtAt: string | undefined): number {
  const place = places.find((other) => other.place === boughtAt);
  if (!place) return 1;
  return place.from === 'breakfast' ? place.day : place.day + 1;
}

/** The stage from which the packaging of a meal is not carried on: the next place after it that has bins, as a cache has none. */
export function binAfter(places: readonly Resupply[], at: Moment): number {
  const next = places.findIndex(({ kind }, index) => kind !== 'cache' && index >= stageAt(places, at));
  return next < 0 ? Infinity : next + 1;
}

/** The stage that is walked at a time of a day, in the morning after breakfast or after the midday stop: what was picked up for it is in the packs. */
export const stageCarried = (
  places: readonly Resupply[],
  day: number,
  time: 'morning' | 'afternoon',
): number =>
  places.filter((place) => {
    if (place.day !== day) return place.day < day;
    return place.from === 'breakfast' || (time === 'afternoon' && place.from === 'lunch');
  }).length;
