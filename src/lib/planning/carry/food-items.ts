import { mayEat } from '../menu/exclusions.ts';
import { keepsOpen } from '../menu/lot-rules.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import { binAfter, carriedFromStage } from '../model/resupply.ts';
import type { MenuPlan } from '../model/trip-plan.ts';
import { pouchFoodG } from '../model/pouch-totals.ts';
import { MEAL_KINDS, type MealKind } from '../model/words.ts';

/** A moment at which food leaves a pack. */
type Leaving = { readonly day: number; readonly meal: MealKind; readonly foodG: number };

/** A pouch that is carried until it is eaten, or home. */
export type FoodItem = {
  readonly lot: PouchLot;
  /** The meal that opens it; undefined for the reserve. */
  readonly at: { readonly day: number; readonly meal: MealKind; readonly group: string } | undefined;
  /** From which it is carried. */
  readonly stage: number;
  /** From which its empty packaging is not: it stays at a place with bins. */
  readonly binStage: number;
  readonly foodG: number;
  readonly tareG: number;
  /** When its food is eaten: food that keeps is carried on when it is open. */
  readonly leaves: readonly Leaving[];
};

/** Nobody carries what they must not touch: food that holds, or may hold, what they avoid. What is against a diet they may carry. */
export const mayCarry = (lot: PouchLot, eater: ResolvedEater): boolean =>
  mayEat(lot, { allergens: eater.allergens, diets: [] });

type Eating = { readonly day: number; readonly meal: MealKind; servings: number };

/** Every pouch of the menu and its reserve, the last meal first and of a meal the heaviest first, the reserve before all. */
export function foodItems(
  menu: MenuPlan,
  lots: ReadonlyMap<string, PouchLot>,
  { resupplies, planned }: Pick<ResolvedTrip, 'resupplies' | 'planned'>,
): FoodItem[] {
  const boughtAt = new Map(planned.map(({ lot, at }) => [lot.code, at]));
  const lotOf = (code: string): PouchLot => {
    const lot = lots.get(code);
    if (!lot) throw new RangeError(`the menu opens lot ${code}, which is not in the stock`);
    return lot;
  };
  const weights = (lot: PouchLot) => ({ lot, foodG: pouchFoodG(lot), tareG: lot.tareG });
  const carriedHome = menu.reserve.flatMap(({ code, pouches }) =>
    Array.from({ length: pouches }, (): FoodItem => ({
      ...weights(lotOf(code)),
      at: undefined,
      stage: 0,
      binStage: Infinity,
      leaves: [],
    })),
  );
  const eatings = new Map<string, Eating[]>();
  const opened = menu.meals.flatMap((meal) =>
    meal.opened.flatMap(({ code, pouches }) => {
      const lot = lotOf(code);
      const at = { day: meal.day, meal: meal.meal, group: meal.group };
      const key = `${meal.day} ${meal.group}\n${code}`;
      const eaten = eatings.get(key) ?? eatingsOf(menu, at, code);
      eatings.set(key, eaten);
      return Array.from({ length: pouches }, (): FoodItem => ({
        ...weights(lot),
        at,
        stage: carriedFromStage(resupplies, at, boughtAt.get(code)),
        binStage: binAfter(resupplies, at),
        leaves: keepsOpen(lot) ? takeFrom(eaten, lot, at) : [{ ...at, foodG: pouchFoodG(lot) }],
      }));
    }),
  );
  const mealAt = ({ at }: FoodItem) => (at ? MEAL_KINDS.indexOf(at.meal) : 0);
  return [...carriedHome, ...opened].sort(
    (a, b) =>
      (b.at?.day ?? Infinity) - (a.at?.day ?? Infinity) ||
      mealAt(b) - mealAt(a) ||
      b.foodG + b.tareG - (a.foodG + a.tareG) ||
      (a.lot.code < b.lot.code ? -1 : a.lot.code > b.lot.code ? 1 : 0),
  );
}

/** When what a group opens of a lot on a day is eaten, in order. */
function eatingsOf(menu: MenuPlan, { day, group }: { day: number; group: string }, code: string): Eating[] {
  const servings = (rows: readonly { readonly code: string; readonly servings: number }[]) =>
    rows.reduce((sum, row) => sum + (row.code === code ? row.servings : 0), 0);
  return menu.meals
    .filter((meal) => meal.group === group && meal.day >= day)
    .map((meal) => {
      const fromToday = servings(meal.fromOpen.filter(({ sinceDay }) => sinceDay === day));
      const now = meal.day === day ? servings(meal.portions) - servings(meal.fromOpen) : 0;
      return { day: meal.day, meal: meal.meal, servings: fromToday + now };
    })
    .filter((eating) => eating.servings > 1e-9);
}

/** Takes one pouch from what is eaten; what nobody eats of it goes with the last that is eaten of what was opened. */
function takeFrom(eaten: Eating[], lot: PouchLot, at: Pick<Eating, 'day' | 'meal'>): Leaving[] {
  const leaves: Leaving[] = [];
  let servings = lot.servingsPerPouch;
  for (const eating of eaten) {
    const taken = Math.min(servings, eating.servings);
    if (taken <= 1e-9) continue;
    eating.servings -= taken;
    servings -= taken;
    leaves.push({ day: eating.day, meal: eating.meal, foodG: taken * lot.dryWeightG });
  }
  const { day, meal } = eaten.at(-1) ?? at;
  return [...leaves, { day, meal, foodG: servings * lot.dryWeightG }];
}
