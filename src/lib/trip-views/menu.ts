import { keepMenu, listedMeal } from '../planning/menu/edit-menu.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { MenuMeal, MenuPlan, MenuPouches } from '../planning/model/trip-plan.ts';
import type { TripDay } from './trip-days.ts';
import type { Trip } from '../planning/model/trip.ts';

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
  readonly portions: readonly { readonly code: string; readonly recipe: string; readonly servings: number }[];
};

export type MealView = MenuMeal & {
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
        rows: (listedMeal(kept, meal)?.opened ?? []).map(({ code, pouches }) => ({
          code,
          pouches,
          served: meal.opened.find((lot) => lot.code === code),
        })),
        shares: sharesOf(meal),
      })),
  }));
}

function sharesOf(meal: MenuMeal): EaterShare[] {
  const recipes = new Map(meal.opened.map(({ code, recipe }) => [code, recipe]));
  return [...new Set(meal.portions.map(({ eater }) => eater))].map((eater) => {
    const own = meal.portions.filter((portion) => portion.eater === eater);
    return {
      eater,
      energyKcal: own.reduce((sum, portion) => sum + portion.energyKcal, 0),
      portions: own.map(({ code, servings }) => ({ code, recipe: recipes.get(code) ?? code, servings })),
    };
  });
}

/** A reason that stands at this share of what is opened is said once for all of it. */
const COMMON_SHARE = 1 / 4;

/** @returns the reason that stands most often in a menu, where repeating it at each lot would drown the others */
export function commonReason({ meals }: MenuPlan): string | undefined {
  const reasons = meals.flatMap(({ opened }) => opened.map(({ why }) => why));
  const times = (reason: string) => reasons.filter((other) => other === reason).length;
  const [most] = [...new Set(reasons)].sort((a, b) => times(b) - times(a));
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
