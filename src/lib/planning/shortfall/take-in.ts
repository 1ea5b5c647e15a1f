import { dropLot, eatsOf, forgetUnlocked } from '../menu/edit-menu.ts';
import { freePlannedCode, packetsOf, pouchesFrom, type PlannedLot } from '../model/planned-lot.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { ComingLot, TripPlan } from '../model/trip-plan.ts';
import type { ChosenMeal, Trip } from '../model/trip.ts';
import { MAIN_MEALS, type MealKind } from '../model/words.ts';
import { isSameFood } from './offers.ts';

/**
 * Takes food into the plan of a trip: more of what is planned already, or a planned lot with a code of its own. Meals that lack something are planned again,
 * but for what is locked or was chosen by hand; all others stay.
 *
 * @param plan of this trip
 * @param shelf lots with the pouches free for this trip
 */
export function takeIn(
  trip: Trip,
  { shortfall }: Pick<TripPlan, 'shortfall'>,
  foods: readonly PlannedLot[],
  shelf: Stock,
): Trip {
  const planned = foods.reduce<readonly PlannedLot[]>((all, food) => {
    const same = all.find((own) => isSameFood(own, food));
    if (!same) return [...all, { ...food, lot: { ...food.lot, code: freePlannedCode(all) } }];
    const pouches = same.lot.pouches + food.lot.pouches;
    return all.map((own) => (own === same ? { ...own, lot: { ...own.lot, pouches } } : own));
  }, trip.planned ?? []);
  const shortDays = new Set(shortfall.meals.map(({ day }) => day));
  const short = new Set(shortfall.meals.map(({ day, meal }) => `${day} ${meal}`));
  const isMain = (meal: MealKind) => (MAIN_MEALS as readonly MealKind[]).includes(meal);
  return forgetUnlocked({ ...trip, planned: [...planned] }, shelf, ({ day, meal, byHand }) =>
    byHand ? false : isMain(meal) ? short.has(`${day} ${meal}`) : shortDays.has(day),
  );
}

/**
 * Takes planned food out again, or a part of it: what it was to feed is short again, or fed from the shelf.
 *
 * @param pouches that stay planned; none: all goes
 */
export function takeOut(trip: Trip, code: string, shelf: Stock, pouches = 0): Trip {
  const { planned = [], ...rest } = trip;
  const left = planned.flatMap((own): PlannedLot[] => {
    if (own.lot.code !== code) return [own];
    return pouches > 0 ? [{ ...own, lot: { ...own.lot, pouches } }] : [];
  });
  const stays = left.some(({ lot }) => lot.code === code);
  const { menu } = stays
    ? forgetUnlocked({ ...rest, planned }, shelf, eatsOf(code))
    : dropLot({ ...rest, planned }, code, shelf);
  return { ...rest, ...(left.length > 0 && { planned: left }), menu };
}

/** Leaves of each planned lot what the plan needs, in whole packets, and nothing of what it does not need at all. */
export function trimPlanned(trip: Trip, coming: readonly ComingLot[]): Trip {
  const { planned = [], ...rest } = trip;
  const needed = new Map(coming.map((lot) => [lot.code, lot.needed]));
  const left = planned.flatMap((own): PlannedLot[] => {
    const wanted = needed.get(own.lot.code) ?? own.lot.pouches;
    if (wanted === 0) return [];
    const lot = { ...own.lot, pouches: wanted };
    const { packetG } = own;
    const pouches = packetG === undefined ? wanted : pouchesFrom(packetsOf({ lot, packetG }), packetG, lot);
    return [{ ...own, lot: { ...lot, pouches: Math.min(Math.max(wanted, pouches), own.lot.pouches) } }];
  });
  return { ...rest, ...(left.length > 0 && { planned: left }) };
}

/**
 * Puts pouches that have come in the place of planned ones, meal by meal in the order of the days, as far as they reach; the rest stays to come.
 *
 * @param code of the planned lot
 * @param real code and pouches of the lot that is on the shelf now
 */
export function putInPlace(trip: Trip, code: string, real: { code: string; pouches: number }): Trip {
  const { planned = [], ...rest } = trip;
  const left = planned.flatMap((own): PlannedLot[] => {
    if (own.lot.code !== code) return [own];
    const pouches = own.lot.pouches - real.pouches;
    return pouches > 0 ? [{ ...own, lot: { ...own.lot, pouches } }] : [];
  });
  const isAllThere = left.length < planned.length;
  let free = isAllThere ? Infinity : real.pouches;
  const menu = [...rest.menu]
    .sort((a, b) => a.day - b.day)
    .map((meal): ChosenMeal => {
      const wanted = meal.opened.reduce((sum, row) => sum + (row.code === code ? row.pouches : 0), 0);
      const isEaten = meal.portions?.some((row) => row.code === code) ?? false;
      if (wanted === 0 && !isEaten) return meal;
      const isWhole = wanted <= free;
      const opened = meal.opened.flatMap((row) => {
        if (row.code !== code) return [row];
        const there = Math.min(free, row.pouches);
        free -= there;
        return [
          ...(there > 0 ? [{ ...row, code: real.code, pouches: there }] : []),
          ...(there < row.pouches ? [{ ...row, pouches: row.pouches - there }] : []),
        ];
      });
      const portions = isWhole
        ? meal.portions?.map((row) => (row.code === code ? { ...row, code: real.code } : row))
        : meal.portions?.filter((row) => row.code !== code);
      return { ...meal, opened, ...(portions && { portions }) };
    });
  return { ...rest, ...(left.length > 0 && { planned: left }), menu };
}
