import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedEater } from '../model/resolve-trip.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { DishStyle } from '../model/trip.ts';
import type { LotKind, MealKind, MealStop, ServingStyle, WaterKind } from '../model/words.ts';
import { mayEat } from './exclusions.ts';
import type { Reason } from '../model/reasons.ts';

export type { DishStyle } from '../model/trip.ts';

/** A dish on the table of a meal: pouches of one recipe, or one extra, and who eats how much of it. */
export type Dish = {
  readonly recipe: string;
  readonly role: LotKind;
  readonly style: DishStyle;
  /** Pouches opened for it at this meal; none where it comes from pouches opened before. */
  readonly opened: readonly { readonly lot: PouchLot; readonly pouches: number }[];
  /** Servings by eater and lot. The rows of a pot are in quarters and add up to each portion. */
  readonly portions: readonly { readonly eater: string; readonly lot: PouchLot; readonly servings: number }[];
  readonly reason?: Reason;
};

/** What stands on the table of one cook group at one meal. */
export type MealChoice = {
  readonly day: number;
  readonly meal: MealKind;
  readonly group: string;
  readonly dishes: readonly Dish[];
};

/** A meal that one cook group takes. */
export type MealTask = {
  readonly day: number;
  readonly meal: MealKind;
  readonly group: string;
  /** Names of those who eat it with the group. */
  readonly eaters: readonly string[];
  readonly style: ServingStyle;
  readonly stop: MealStop;
  /** Extras make the meal: so somebody said, or there is no stop. */
  readonly extras: boolean;
  /** The dish that somebody fixed for it. */
  readonly dish: string | undefined;
  /** Air temperature of the day, °C. */
  readonly airC: number;
};

/** What it takes to carry and cook a meal, by where on the way it is eaten. */
export type MealBurden = {
  readonly day: number;
  readonly meal: MealKind;
  /** Hours walked with its pouches. */
  readonly carriedH: number;
  /** Hours walked with its water, from the last source. */
  readonly waterCarriedH: number;
  /** Fuel for a millilitre of its water, g, by the kind of water. */
  readonly fuelGPerMl: Readonly<Record<WaterKind, number>>;
};

/** What a planner is given. Kept dishes stand; their pouches are already out of `stock`. */
export type MenuProblem = {
  readonly demand: readonly DayDemand[];
  readonly party: readonly ResolvedEater[];
  /** By day and meal, each cook group that takes it. */
  readonly tasks: readonly MealTask[];
  readonly stock: Stock;
  /** First and last day of the trip on which a lot can be eaten, by code; left out: from the first day to its best-before. */
  readonly windows: Readonly<Record<string, { readonly firstDay: number; readonly lastDay: number }>>;
  /** Dishes that stand. A main dish feeds its eaters, and the others of the meal are still to be fed, unless the meal is `whole`. */
  readonly kept: readonly (MealChoice & { readonly whole: boolean })[];
  /** One for each meal of the demand. */
  readonly burdens: readonly MealBurden[];
  readonly settings: Settings;
};

/** The seam for menu planners: chooses what is not kept, from the stock, and nothing else. */
export type MenuPlanner = { readonly name: string; readonly choose: (problem: MenuProblem) => MealChoice[] };

export const mealKey = (day: number, meal: MealKind, group: string): string => `${day} ${meal} ${group}`;

/** Whether an eater, by name, may be served a lot; answers are remembered, as they are asked for many times over. */
export function exclusionTable(party: readonly ResolvedEater[]): (lot: PouchLot, eater: string) => boolean {
  const byEater = new Map(party.map((eater) => [eater.name, { eater, known: new Map<string, boolean>() }]));
  return (lot, name) => {
    const entry = byEater.get(name);
    if (!entry) return false;
    let answer = entry.known.get(lot.code);
    if (answer === undefined) entry.known.set(lot.code, (answer = mayEat(lot, entry.eater)));
    return answer;
  };
}
