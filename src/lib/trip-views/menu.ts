import { keepMenu, listedMeal } from '../planning/menu/edit-menu.ts';
import { OWN_POUCH_BELOW_SERVINGS } from '../planning/menu/lot-rules.ts';
import type { Notice } from '../planning/model/notices.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Reason } from '../planning/model/reasons.ts';
import type { MenuMeal, MenuPlan, MenuPouches, Portion } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { MAIN_MEALS } from '../planning/model/words.ts';
import type { Amount } from '../presentation/portion-words.ts';
import { placeKey } from './meal-place.ts';
import type { TripDay } from './trip-days.ts';

/** A lot on a meal: as it is listed, and as the shelf can serve it. */
export type MealRow = {
  readonly code: string;
  readonly pouches: number;
  /** Missing where the shelf cannot serve any of it. */
  readonly served: MenuPouches | undefined;
};

/** What one person has of one lot of a dish. */
export type DishShare = Amount & {
  readonly eater: string;
  readonly code: string;
  readonly energyKcal: number;
};

/** A dish on the table of one cook group. */
export type DishView = Pick<MenuPouches, 'role' | 'style'> & {
  /** Missing where the shelf has none of its lots. */
  readonly recipe: string | undefined;
  readonly rows: readonly MealRow[];
  /** The day on which the pouch was opened that it comes from; missing where it is opened now. */
  readonly sinceDay: number | undefined;
  /** By lot. */
  readonly shares: readonly DishShare[];
  /** The whole of each person. */
  readonly plates: readonly (Amount & { readonly eater: string })[];
  readonly staysOpen: { readonly servings: number; readonly untilDay: number } | undefined;
  readonly leftOverServings: number;
  readonly reason: Reason | undefined;
  readonly locked: boolean;
};

export type MealView = MenuMeal & {
  /** Its name in addresses and forms. */
  readonly key: string;
  readonly dishes: readonly DishView[];
  /** Who of them gets nothing at a breakfast, a lunch or a dinner. */
  readonly unfed: readonly string[];
  /** Portions that the pouches cannot fill, by recipe. */
  readonly beyond: readonly { readonly recipe: string; readonly wanted: number; readonly there: number }[];
};
export type DayView = TripDay & { readonly meals: readonly MealView[] };

/** The menu day by day, dish by dish, with what each person gets; what a meal lists and the shelf lacks is kept in view. */
export function menuByDay(
  trip: Trip,
  menu: MenuPlan,
  days: readonly TripDay[],
  notices: readonly Notice[] = [],
): DayView[] {
  const kept = keepMenu(trip, menu);
  return days.map(({ day, date }) => ({
    day,
    date,
    meals: menu.meals
      .filter((meal) => meal.day === day)
      .map((meal) => ({
        ...meal,
        key: placeKey(meal, menu.groups),
        dishes: dishesOf(meal, listedMeal(kept, meal)?.opened ?? []),
        unfed: MAIN_MEALS.some((main) => main === meal.meal)
          ? meal.eaters.filter((name) => !meal.portions.some(({ eater }) => eater === name))
          : [],
        beyond: notices.flatMap((notice) =>
          notice.code === 'portions-beyond-pouches' && notice.day === meal.day && notice.meal === meal.meal
            ? [notice.params]
            : [],
        ),
      })),
  }));
}

type Listed = readonly { readonly code: string; readonly pouches: number }[];

function dishesOf(meal: MenuMeal, listed: Listed): DishView[] {
  const recipeOf = new Map([...meal.fromOpen, ...meal.opened].map(({ code, recipe }) => [code, recipe]));
  const keyOf = ({ code, role, style }: Pick<Portion, 'code' | 'role' | 'style'>) =>
    `${role}\n${recipeOf.get(code) ?? code}\n${style}`;
  const opened = Map.groupBy(meal.opened, keyOf);
  const portions = Map.groupBy(meal.portions, keyOf);
  const told = new Set<string>();
  const dishes = [...new Set([...opened.keys(), ...portions.keys()])].map((key): DishView => {
    const rows = opened.get(key) ?? [];
    const eaten = portions.get(key) ?? [];
    const codes = new Set([...rows, ...eaten].map(({ code }) => code));
    const [first] = [...rows, ...eaten];
    const shares = eaten.map((portion) => shareOf(meal, portion));
    const since = meal.fromOpen.filter(({ code }) => codes.has(code)).map(({ sinceDay }) => sinceDay);
    // of a lot with two dishes on one table, what is left is told at the first
    const isTold = ({ code }: { readonly code: string }) => codes.has(code) && !told.has(code);
    const staysOpen = meal.staysOpen.filter(isTold);
    const leftOver = meal.leftOver.filter(isTold);
    for (const code of codes) told.add(code);
    return {
      recipe: recipeOf.get(first?.code ?? ''),
      role: first?.role ?? 'main',
      style: first?.style ?? 'own pouch',
      rows: rows.map((served) => ({
        code: served.code,
        pouches: Math.max(served.pouches, listedPouches(meal, listed, served)),
        served,
      })),
      sinceDay: rows.length === 0 && since.length > 0 ? Math.min(...since) : undefined,
      shares,
      plates: [...Map.groupBy(shares, ({ eater }) => eater)].map(([eater, own]) => plateOf(eater, own)),
      staysOpen:
        staysOpen.length > 0
          ? {
              servings: staysOpen.reduce((sum, { servings }) => sum + servings, 0),
              untilDay: Math.max(...staysOpen.map(({ untilDay }) => untilDay)),
            }
          : undefined,
      leftOverServings: leftOver.reduce((sum, { servings }) => sum + servings, 0),
      reason: rows[0]?.reason,
      locked: rows.some(({ locked }) => locked),
    };
  });
  const lacking = listed.filter(({ code }) => !meal.opened.some((lot) => lot.code === code));
  return [
    ...dishes,
    ...lacking.map(({ code, pouches }): DishView => ({
      recipe: undefined,
      role: 'main',
      style: 'own pouch',
      rows: [{ code, pouches, served: undefined }],
      sinceDay: undefined,
      shares: [],
      plates: [],
      staysOpen: undefined,
      leftOverServings: 0,
      reason: undefined,
      locked: false,
    })),
  ];
}

/** Pouches that are listed of a lot, less those of its other dishes on this table. */
function listedPouches(meal: MenuMeal, listed: Listed, served: MenuPouches): number {
  const all = listed
    .filter(({ code }) => code === served.code)
    .reduce((sum, { pouches }) => sum + pouches, 0);
  const others = meal.opened
    .filter((other) => other.code === served.code && other !== served)
    .reduce((sum, { pouches }) => sum + pouches, 0);
  return all - others;
}

function shareOf(
  meal: MenuMeal,
  { eater, code, role, style, servings, pieces, energyKcal }: Portion,
): DishShare {
  const opened = meal.opened.find((lot) => lot.code === code && lot.style === style);
  const perPouch = opened ? opened.servings / opened.pouches : Infinity;
  const isOwn = style === 'own pouch' && role === 'main' && perPouch < OWN_POUCH_BELOW_SERVINGS;
  return {
    eater,
    code,
    servings,
    ...(pieces !== undefined && { pieces }),
    ...(isOwn && { pouches: servings / perPouch }),
    energyKcal,
  };
}

function plateOf(eater: string, shares: readonly DishShare[]): Amount & { readonly eater: string } {
  const total = (of: (share: DishShare) => number | undefined) =>
    shares.every((share) => of(share) !== undefined)
      ? shares.reduce((sum, share) => sum + (of(share) ?? 0), 0)
      : undefined;
  return {
    eater,
    servings: shares.reduce((sum, { servings }) => sum + servings, 0),
    pieces: total(({ pieces }) => pieces),
    pouches: total(({ pouches }) => pouches),
  };
}

/** Whether a menu, or a part of it, was stored by a program of before and stands as it was then. */
export const isFromBefore = ({ meals }: Pick<MenuPlan, 'meals'>): boolean =>
  meals.some(({ opened }) => opened.some(({ reason }) => reason.code === 'from an older menu'));

/** @returns the codes that the menu of a trip lists and no lot of the stock has, each once, in order. */
export function lotsLacking({ menu }: Trip, stock: Stock): string[] {
  const there = new Set(stock.map(({ code }) => code));
  const listed = new Set(menu.flatMap(({ opened }) => opened.map(({ code }) => code)));
  return [...listed.difference(there)].sort();
}
