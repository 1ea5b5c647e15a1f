import { mealPoints, OWN_PLATE, OWN_SECOND_PART, POT, POT_FOR_OWN, SKIPPED_MEAL } from './menu-costs.ts';
import { MEAL_KINDS } from '../model/words.ts';
import { pouchPoints, type MenuModel, type ModelSlot } from './menu-model.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import type { DishStyle } from './menu-problem.ts';

/** What one person at the table gets of a dish. */
export type LaidPortion = { readonly place: number; readonly servings: number };
/** A dish as it is put on the table: pouches of one recipe for some of the people. */
export type LaidDish = {
  readonly dish: number;
  readonly style: DishStyle;
  readonly lots: readonly number[];
  readonly pouches: readonly number[];
  readonly portions: readonly LaidPortion[];
};
/** A way to lay a table for one meal. */
export type Laying = {
  readonly slot: number;
  readonly dishes: readonly LaidDish[];
  /** Own points: pouches, leftovers, sizes of the meals, dishes to cook, tastes, and who goes without. */
  readonly points: number;
  /** By place. */
  readonly kcal: readonly number[];
  readonly lackG: readonly number[];
};

/**
 * What a laying costs besides its own points, by what surrounds it: prices of a linear program, or the rest of a menu that stands.
 * What energy brings to a person must be convex in it, and pouches must not be worth less than nothing.
 */
export type Surroundings = {
  /** Points of energy and lacking protein on a person's plate. @param place at the table */
  readonly plate: (place: number, kcal: number, lackG: number) => number;
  /** Points for eating a dish. */
  readonly eats: (place: number, dish: number) => number;
  /** Points of one pouch of a lot; Infinity where none is free. */
  readonly pouch: (lot: number) => number;
  /** Points of opening so many servings of a dish at once. */
  readonly opens?: (dish: number, servings: number) => number;
  /** Pouches of a lot that may be opened; left out: its whole stock. */
  readonly free?: (lot: number) => number;
  /** Where the points of energy on a plate bend, kcal; left out: nowhere. */
  readonly kinks?: (place: number) => readonly number[];
};

/** Quarters from a pot, and servings by hand, that one person gets at most. */
export const MOST_QUARTERS = 32;
export const MOST_SERVINGS = 8;
/** Dishes of which several people eat, at one table. */
export const MOST_SHARED = 2;

/** The points of a laying with those of what surrounds it. */
export function pricedOf(model: MenuModel, slot: ModelSlot, laying: Laying, around: Surroundings): number {
  let points = laying.points;
  slot.people.forEach((_, place) => {
    points += around.plate(place, laying.kcal[place] ?? 0, laying.lackG[place] ?? 0);
  });
  for (const dish of laying.dishes) {
    points += around.opens?.(dish.dish, totalsOf(model, dish).servings) ?? 0;
    dish.lots.forEach((lot, at) => (points += (dish.pouches[at] ?? 0) * around.pouch(lot)));
    for (const { place } of dish.portions) points += around.eats(place, dish.dish);
  }
  return points;
}

export const pouchPointsAt = (model: MenuModel, slot: Pick<ModelSlot, 'day' | 'at'>, lot: number): number =>
  pouchPoints(model, lot, slot.day, slot.at % MEAL_KINDS.length);

/** A laying of its dishes, with its own points, whatever surrounds it. */
export function asLaying(model: MenuModel, slot: ModelSlot, dishes: readonly LaidDish[]): Laying {
  const kcal = slot.people.map(() => 0);
  const lackG = slot.people.map(() => 0);
  for (const dish of dishes) {
    const { kcal: dishKcal, lackG: dishLackG, servings } = totalsOf(model, dish);
    for (const { place, servings: portion } of dish.portions) {
      kcal[place] = (kcal[place] ?? 0) + (portion / servings) * dishKcal;
      lackG[place] = (lackG[place] ?? 0) + (portion / servings) * dishLackG;
    }
  }
  return {
    slot: slot.index,
    dishes: dishes.map(({ dish, style, lots, pouches, portions }) => ({
      dish,
      style,
      lots,
      pouches,
      portions,
    })),
    points: layingPoints(model, slot, dishes, kcal),
    kcal,
    lackG,
  };
}

/** What is opened of a dish. */
export function totalsOf(model: MenuModel, dish: Pick<LaidDish, 'lots' | 'pouches'>) {
  let [kcal, lackG, servings] = [0, 0, 0];
  dish.lots.forEach((index, at) => {
    const lot = model.lots[index];
    const pouches = dish.pouches[at] ?? 0;
    if (!lot) return;
    kcal += pouches * lot.kcal;
    lackG += pouches * lot.servings * lot.lackG;
    servings += pouches * lot.servings;
  });
  return { kcal, lackG, servings };
}

/** The points of a laying by themselves, from its dishes alone. */
export function layingPoints(
  model: MenuModel,
  slot: ModelSlot,
  dishes: readonly LaidDish[],
  kcalByPlace: readonly number[],
): number {
  const { costs } = model;
  const fed = new Set(dishes.flatMap(({ portions }) => portions.map(({ place }) => place)));
  let points = 0;
  slot.people.forEach((_, place) => {
    points += mealPoints(slot.plannedKcal[place] ?? 0, kcalByPlace[place] ?? 0, costs);
    if (!fed.has(place)) points += SKIPPED_MEAL * costs.missingKcal;
  });
  const fees: number[] = [];
  for (const dish of dishes) {
    const { kcal, servings } = totalsOf(model, dish);
    const eaten = dish.portions.reduce((sum, portion) => sum + portion.servings, 0);
    points += costs.leftOverKcal * kcal * Math.max(0, 1 - eaten / servings);
    dish.lots.forEach((lot, at) => (points += (dish.pouches[at] ?? 0) * pouchPointsAt(model, slot, lot)));
    const option = slot.options.find((other) => other.dish === dish.dish);
    for (const { place } of dish.portions) points += option?.taste[place] ?? 0;
    const isSmall =
      dish.style === 'own pouch' &&
      (model.lots[dish.lots[0] ?? -1]?.servings ?? 0) < OWN_POUCH_BELOW_SERVINGS;
    if (dish.style === 'own pouch') points += OWN_PLATE * dish.portions.length;
    else points += POT + (slot.task.style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0);
    if (!isSmall) fees.push(costs.secondDish * (dish.style === 'own pouch' ? OWN_SECOND_PART : 1));
  }
  // the dearest dish to make is the one that is made anyway
  fees.sort((a, b) => b - a);
  return points + fees.slice(1).reduce((sum, fee) => sum + fee, 0);
}
