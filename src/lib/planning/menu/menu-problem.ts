import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedEater } from '../model/resolve-trip.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { MealKind, WaterKind } from '../model/words.ts';
import { mayEat } from './exclusions.ts';
import type { OpenedPouches, SeatedEater } from './serve-meal.ts';

/** One meal with the pouches to be opened at it. */
export type ChosenPouches = OpenedPouches & { readonly why: string };
export type MealChoice = {
  readonly day: number;
  readonly meal: MealKind;
  readonly opened: readonly ChosenPouches[];
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

/** What a planner is given. `kept` meals stand; their pouches are already out of `stock`. */
export type MenuProblem = {
  readonly demand: readonly DayDemand[];
  readonly party: readonly ResolvedEater[];
  readonly stock: Stock;
  readonly kept: readonly MealChoice[];
  /** One for each meal of the demand. */
  readonly burdens: readonly MealBurden[];
  readonly settings: Settings;
};

/** The seam for menu planners: chooses the meals that are not kept, from the stock, and nothing else. */
export type MenuPlanner = { readonly name: string; readonly choose: (problem: MenuProblem) => MealChoice[] };

export const mealKey = (day: number, meal: MealKind): string => `${day} ${meal}`;

/** Whether an eater, by name, may be served a lot; answers are remembered, as the walls are asked many times over. */
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

/** Nobody eats much more at one sitting than was planned for it, whatever was opened (common practice). */
export const SITTING_SHARE = 1.75;

/**
 * Who sits down to a meal with what need: what is still missing to the day's target, shared among the meals that are left,
 * so that a small breakfast makes for a larger dinner and the other way round, up to what one sitting holds.
 *
 * @param eatenKcal what each eater has eaten so far on this day
 */
export function seatEaters(
  day: DayDemand,
  meal: MealKind,
  eatenKcal: ReadonlyMap<string, number>,
  eatUpToShare: number,
): SeatedEater[] {
  const rest = day.meals.slice(day.meals.indexOf(meal));
  return day.eaters.map(({ eater, targetKcal, mealKcal }) => {
    const eaten = eatenKcal.get(eater) ?? 0;
    const restKcal = rest.reduce((sum, kind) => sum + (mealKcal[kind] ?? 0), 0);
    const share = restKcal > 0 ? (mealKcal[meal] ?? 0) / restKcal : 0;
    const needKcal = Math.min(Math.max(0, targetKcal - eaten) * share, (mealKcal[meal] ?? 0) * SITTING_SHARE);
    const ceilingKcal = Math.max(
      needKcal,
      Math.min(targetKcal * eatUpToShare - eaten, (mealKcal[meal] ?? 0) * SITTING_SHARE),
    );
    return { name: eater, needKcal, ceilingKcal };
  });
}
