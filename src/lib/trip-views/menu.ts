import { keepMenu, listedMeal } from '../planning/menu/edit-menu.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Reason } from '../planning/model/reasons.ts';
import type { MenuMeal, MenuPlan, MenuPouches, Portion } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { placeKey } from '../trip-forms/meal-place.ts';
import type { TripDay } from './trip-days.ts';

/** A lot on a meal: as it is listed, and as the shelf can serve it. */
export type MealRow = {
  readonly code: string;
  readonly pouches: number;
  /** Missing where the shelf cannot serve any of it. */
  readonly served: MenuPouches | undefined;
};

/** One line of who eats what at a meal. */
export type EaterShare = {
  readonly eater: string;
  readonly energyKcal: number;
  readonly portions: readonly (Portion & { readonly recipe: string })[];
};

export type MealView = MenuMeal & {
  /** Its name in addresses and forms. */
  readonly key: string;
  readonly rows: readonly MealRow[];
  readonly shares: readonly EaterShare[];
};
export type DayView = TripDay & { readonly meals: readonly MealView[] };

/** The menu day by day, with what each eater gets; what a meal lists and the shelf lacks is kept in view. */
export function menuByDay(trip: Trip, menu: MenuPlan, days: readonly TripDay[]): DayView[] {
  const kept = keepMenu(trip, menu);
  return days.map(({ day, date }) => ({
    day,
    date,
    meals: menu.meals
      .filter((meal) => meal.day === day)
      .map((meal) => ({
        ...meal,
        key: placeKey(meal, menu.groups),
        rows: rowsOf(meal, listedMeal(kept, meal)?.opened ?? []),
        shares: sharesOf(meal),
      })),
  }));
}

function rowsOf(
  meal: MenuMeal,
  listed: readonly { readonly code: string; readonly pouches: number }[],
): MealRow[] {
  return [...Map.groupBy(listed, ({ code }) => code)].map(([code, rows]) => ({
    code,
    pouches: rows.reduce((sum, { pouches }) => sum + pouches, 0),
    served: meal.opened.find((lot) => lot.code === code),
  }));
}

function sharesOf(meal: MenuMeal): EaterShare[] {
  const recipes = new Map([...meal.fromOpen, ...meal.opened].map(({ code, recipe }) => [code, recipe]));
  return [...Map.groupBy(meal.portions, ({ eater }) => eater)].map(([eater, own]) => ({
    eater,
    energyKcal: own.reduce((sum, portion) => sum + portion.energyKcal, 0),
    portions: own.map((portion) => ({ ...portion, recipe: recipes.get(portion.code) ?? portion.code })),
  }));
}

/** A reason that is given for this share of what is opened is said once for all of it. */
const COMMON_SHARE = 1 / 4;

export const sameReason = (one: Reason, other: Reason): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** @returns the reason that stands most often in a menu, where repeating it at each lot would drown the others */
export function commonReason({ meals }: Pick<MenuPlan, 'meals'>): Reason | undefined {
  const reasons = meals.flatMap(({ opened }) => opened.map(({ reason }) => reason));
  const times = (reason: Reason) => reasons.filter((other) => sameReason(reason, other)).length;
  const [most] = [...reasons].sort((a, b) => times(b) - times(a));
  return most !== undefined && times(most) > 1 && times(most) >= reasons.length * COMMON_SHARE
    ? most
    : undefined;
}

/** @returns the codes that the menu of a trip lists and no lot of the stock has, each once, in order. */
export function lotsLacking({ menu }: Trip, stock: Stock): string[] {
  const there = new Set(stock.map(({ code }) => code));
  const listed = new Set(menu.flatMap(({ opened }) => opened.map(({ code }) => code)));
  return [...listed.difference(there)].sort();
}
