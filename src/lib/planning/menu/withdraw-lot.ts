import type { Stock } from '../model/pouch-lot.ts';
import type { ChosenMeal, Trip } from '../model/trip.ts';
import { dropLot } from './edit-menu.ts';

/** A lot that must not be eaten. */
export type WithdrawnLot = NonNullable<Trip['withdrawn']>[number];

/** A trip that keeps in mind that a lot was withdrawn. */
const withMark = (trip: Trip, lot: WithdrawnLot): Trip => ({
  ...trip,
  withdrawn: [...(trip.withdrawn ?? []).filter(({ code }) => code !== lot.code), lot],
});

/** Takes a lot that is withdrawn off all meals of a trip that has not left: those that ate of it are open, to be planned anew. */
export const withdrawFrom = (trip: Trip, lot: WithdrawnLot, stock: Stock): Trip =>
  withMark(dropLot(trip, lot.code, stock), lot);

/**
 * The same for a trip that is on its way: its first meals keep as many pouches as were eaten, the others go without. What to eat instead is decided on the way.
 *
 * @param eaten pouches of the lot that the trip has eaten
 */
export function withdrawOnTheWay(trip: Trip, lot: WithdrawnLot, eaten: number): Trip {
  let left = eaten;
  const menu = [...trip.menu]
    .sort((a, b) => a.day - b.day)
    .map((meal): ChosenMeal => {
      const opened = meal.opened.flatMap((row) => {
        if (row.code !== lot.code) return [row];
        const pouches = Math.min(left, row.pouches);
        left -= pouches;
        return pouches > 0 ? [{ ...row, pouches }] : [];
      });
      const isWhole = meal.opened.every(
        ({ code, pouches }, index) => code !== lot.code || opened[index]?.pouches === pouches,
      );
      if (isWhole) return meal;
      const portions = meal.portions?.filter(({ code }) => code !== lot.code);
      return { ...meal, opened, ...(portions && { portions }) };
    });
  return withMark({ ...trip, menu }, lot);
}

/** A trip without the mark of a lot that may be eaten after all. Its menu stays. */
export function withoutMark(trip: Trip, code: string): Trip {
  const { withdrawn = [], ...rest } = trip;
  const left = withdrawn.filter((lot) => lot.code !== code);
  return { ...rest, ...(left.length > 0 && { withdrawn: left }) };
}
