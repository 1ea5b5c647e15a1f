import type { MenuPlan } from '../model/trip-plan.ts';
import type { ChosenMeal, OpenedLot, Trip } from '../model/trip.ts';
import type { MealKind } from '../model/words.ts';

/** Which meal of the trip is meant. */
export type MealPlace = { readonly day: number; readonly meal: MealKind };

const isAt = (at: MealPlace) => (meal: ChosenMeal) => meal.day === at.day && meal.meal === at.meal;

/** @returns the meal as the trip lists it; `undefined` where the planner still fills it. */
export function listedMeal(trip: Trip, at: MealPlace): ChosenMeal | undefined {
  return trip.menu.find(isAt(at));
}

/** @returns how many pouches of a lot the trip lists for a meal. */
export function pouchesListed(trip: Trip, at: MealPlace, code: string): number {
  return listedMeal(trip, at)?.opened.find((lot) => lot.code === code)?.pouches ?? 0;
}

/**
 * Lists every meal of a menu in the trip, so that it stands from now on. Meals that the trip lists already stay as they are listed,
 * even where the shelf cannot serve them.
 */
export function keepMenu(trip: Trip, menu: MenuPlan): Trip {
  const planned = menu.meals
    .filter((meal) => !trip.menu.some(isAt(meal)))
    .map(({ day, meal, opened }): ChosenMeal => ({
      day,
      meal,
      locked: false,
      byHand: false,
      opened: opened.map(({ code, pouches, why }) => ({ code, pouches, why })),
    }));
  return { ...trip, menu: [...trip.menu, ...planned] };
}

/** Puts as many pouches of another lot in the place of all pouches of one lot. */
export function swapPouch(
  trip: Trip,
  at: MealPlace,
  fromCode: string,
  toCode: string,
  pouches: number,
): Trip {
  if (fromCode === toCode) return setPouches(trip, at, toCode, pouches);
  return editMeal(trip, at, (opened) => {
    const alreadyThere = opened.find(({ code }) => code === toCode)?.pouches ?? 0;
    return opened
      .filter(({ code }) => code !== toCode)
      .map((lot) => (lot.code === fromCode ? { code: toCode, pouches: pouches + alreadyThere } : lot));
  });
}

/** Adds pouches of a lot to a meal. */
export function addPouch(trip: Trip, at: MealPlace, code: string, pouches = 1): Trip {
  return setPouches(trip, at, code, pouchesListed(trip, at, code) + pouches);
}

/** Makes a meal open so many pouches of a lot: none takes the lot off the meal. */
export function setPouches(trip: Trip, at: MealPlace, code: string, pouches: number): Trip {
  if (pouches <= 0) return removePouch(trip, at, code);
  return editMeal(trip, at, (opened) =>
    opened.some((lot) => lot.code === code)
      ? opened.map((lot) => (lot.code === code ? { ...lot, pouches } : lot))
      : [...opened, { code, pouches }],
  );
}

/** Takes a lot off a meal. A meal that loses its last lot stays empty until the menu is planned again. */
export function removePouch(trip: Trip, at: MealPlace, code: string): Trip {
  return editMeal(trip, at, (opened) => opened.filter((lot) => lot.code !== code));
}

/** Locks a meal, so that it outlives planning again, or unlocks it. */
export function lockMeal(trip: Trip, at: MealPlace, locked: boolean): Trip {
  return changeMeal(trip, at, (meal) => ({ ...meal, locked }));
}

/** Drops every meal that is not locked, for the planner to fill anew. */
export function forgetUnlocked(trip: Trip): Trip {
  return { ...trip, menu: trip.menu.filter(({ locked }) => locked) };
}

/** Drops the meals that a trip no longer has, after its days or its first or last meal have changed. */
export function dropMeals(trip: Trip, dropped: readonly MealPlace[]): Trip {
  return { ...trip, menu: trip.menu.filter((meal) => !dropped.some((at) => isAt(at)(meal))) };
}

function editMeal(trip: Trip, at: MealPlace, edit: (opened: readonly OpenedLot[]) => OpenedLot[]): Trip {
  return changeMeal(trip, at, (meal) => ({ ...meal, byHand: true, opened: edit(meal.opened) }));
}

function changeMeal(trip: Trip, at: MealPlace, change: (meal: ChosenMeal) => ChosenMeal): Trip {
  const empty: ChosenMeal = { day: at.day, meal: at.meal, locked: false, byHand: false, opened: [] };
  const menu = listedMeal(trip, at) ? trip.menu : [...trip.menu, empty];
  return { ...trip, menu: menu.map((meal) => (isAt(at)(meal) ? change(meal) : meal)) };
}
