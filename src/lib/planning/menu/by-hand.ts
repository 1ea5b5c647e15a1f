import type { Stock } from '../model/pouch-lot.ts';
import type { TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { addPouch, pouchesListed, removePouch, setPouches, swapPouch, type MealPlace } from './edit-menu.ts';
import { mealOptions } from './meal-options.ts';

/** What is on the table when a meal is changed by hand: the trip, with every meal of its plan listed, and what it draws on. */
export type Table = { readonly trip: Trip; readonly plan: TripPlan; readonly stock: Stock };

/** What a change came to, in words. A refused change leaves the trip as it was. */
export type Outcome = { readonly trip: Trip; readonly said: string } | { readonly refused: string };

/** Puts pouches of another lot in the place of one lot: as many, or as many as are free. */
export function swapByHand(table: Table, at: MealPlace, fromCode: string, toCode: string): Outcome {
  const wanted = pouchesListed(table.trip, at, fromCode);
  if (wanted === 0) return notThere(at, fromCode);
  const option = optionOf(table, at, toCode);
  if (!option) return notFree(at, toCode);
  const pouches = Math.min(wanted, option.freePouches);
  return {
    trip: swapPouch(table.trip, at, fromCode, toCode, pouches),
    said: `${nameOf(at)}: ${wanted} × ${fromCode} swapped for ${pouches} × ${toCode}${pouches < wanted ? ', as no more are free' : ''}.`,
  };
}

/** Puts one pouch more of a lot on a meal, whether the lot is there already or not. */
export function addByHand(table: Table, at: MealPlace, code: string): Outcome {
  if (!optionOf(table, at, code)) return notFree(at, code);
  const trip = addPouch(table.trip, at, code);
  return { trip, said: `${nameOf(at)}: ${pouchesListed(trip, at, code)} × ${code}.` };
}

/** Takes one pouch of a lot off a meal; the last one takes the lot with it. */
export function takeByHand(table: Table, at: MealPlace, code: string): Outcome {
  const before = pouchesListed(table.trip, at, code);
  if (before === 0) return notThere(at, code);
  return {
    trip: setPouches(table.trip, at, code, before - 1),
    said: before > 1 ? `${nameOf(at)}: ${before - 1} × ${code}.` : `${nameOf(at)}: ${code} removed.`,
  };
}

/** Takes all pouches of a lot off a meal. */
export function removeByHand(table: Table, at: MealPlace, code: string): Outcome {
  if (pouchesListed(table.trip, at, code) === 0) return notThere(at, code);
  return { trip: removePouch(table.trip, at, code), said: `${nameOf(at)}: ${code} removed.` };
}

/** Takes one pouch of a lot off one meal and puts it on another. */
export function moveByHand(table: Table, from: MealPlace, code: string, to: MealPlace): Outcome {
  const before = pouchesListed(table.trip, from, code);
  if (before === 0) return notThere(from, code);
  if (from.day === to.day && from.meal === to.meal)
    return { refused: `${nameOf(to)}: ${code} is there already.` };
  if (!optionOf({ ...table, plan: withoutOne(table.plan, from, code) }, to, code)) return notFree(to, code);
  return {
    trip: addPouch(setPouches(table.trip, from, code, before - 1), to, code),
    said: `1 × ${code} moved from day ${from.day}, ${from.meal} to day ${to.day}, ${to.meal}.`,
  };
}

/** The plan as if a meal opened one pouch of a lot fewer, so that this pouch is free for another. */
function withoutOne(plan: TripPlan, at: MealPlace, code: string): TripPlan {
  const meals = plan.menu.meals.map((meal) =>
    meal.day === at.day && meal.meal === at.meal
      ? {
          ...meal,
          opened: meal.opened.map((lot) => (lot.code === code ? { ...lot, pouches: lot.pouches - 1 } : lot)),
        }
      : meal,
  );
  return { ...plan, menu: { ...plan.menu, meals } };
}

const nameOf = ({ day, meal }: MealPlace): string => `Day ${day}, ${meal}`;

function optionOf({ trip, plan, stock }: Table, at: MealPlace, code: string) {
  const date = plan.demand.find(({ day }) => day === at.day)?.date;
  const lot = stock.filter((other) => other.code === code);
  return date === undefined ? undefined : mealOptions(trip.party, lot, plan.menu, at, date)[0];
}

const notThere = (at: MealPlace, code: string): Outcome => ({
  refused: `${nameOf(at)}: lot ${code} is not on this meal any more. Look at the meal again.`,
});
const notFree = (at: MealPlace, code: string): Outcome => ({
  refused: `${nameOf(at)}: no pouch of lot ${code} can be added. All may be used by other meals or trips, it may be past its best-before, or nobody in the party may eat it. Choose another lot.`,
});
