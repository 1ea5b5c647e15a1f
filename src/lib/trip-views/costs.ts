import { dishName } from '../planning/model/complete-lot.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';

/** What one person's food costs, minor units. */
export type PersonCosts = {
  readonly eater: string;
  /** Of each day; 0 where nothing priced is eaten. */
  readonly dayMinor: readonly number[];
  readonly homeMinor: number;
  readonly boughtMinor: number;
};

export type CostView = {
  readonly people: readonly PersonCosts[];
  readonly totalMinor: number;
  /** Of all people and days. */
  readonly perDayMinor: number;
};

/** @returns what the food costs by person, and what all come to */
export function costView({
  costs: { rows },
  carry: { packs },
  demand,
}: Pick<TripPlan, 'costs' | 'carry' | 'demand'>): CostView {
  const people = packs.map(({ eater }): PersonCosts => {
    const own = rows.filter((row) => row.eater === eater);
    const sum = (part: 'homeMinor' | 'boughtMinor') => own.reduce((all, row) => all + row[part], 0);
    return {
      eater,
      dayMinor: demand.map(({ day }) =>
        own.reduce((all, row) => all + (row.day === day ? row.homeMinor + row.boughtMinor : 0), 0),
      ),
      homeMinor: sum('homeMinor'),
      boughtMinor: sum('boughtMinor'),
    };
  });
  const totalMinor = people.reduce((all, { homeMinor, boughtMinor }) => all + homeMinor + boughtMinor, 0);
  return {
    people,
    totalMinor,
    perDayMinor: totalMinor / Math.max(1, people.length * demand.length),
  };
}

/** A home-made dish of a menu, with the price of a bought serving where one was entered. */
export type DishPrice = { readonly recipe: string; readonly servingMinor: number | undefined };

/** @returns the home-made dishes of a plan, by name, each once */
export function dishPrices(
  { menu }: Pick<TripPlan, 'menu'>,
  lots: Stock,
  { shopPrices }: Pick<Settings, 'shopPrices'>,
): DishPrice[] {
  const bought = new Set(lots.filter((lot) => lot.bought).map(({ code }) => code));
  const names = menu.meals.flatMap(({ opened }) =>
    opened.filter(({ code }) => !bought.has(code)).map(({ recipe }) => recipe),
  );
  const known = new Map(shopPrices.map(({ recipe, servingMinor }) => [dishName(recipe), servingMinor]));
  return [...new Map(names.map((recipe) => [dishName(recipe), recipe]))]
    .map(([key, recipe]) => ({ recipe, servingMinor: known.get(key) }))
    .sort((a, b) => (a.recipe < b.recipe ? -1 : 1));
}
