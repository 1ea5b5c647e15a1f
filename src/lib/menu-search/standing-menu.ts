import { forgetUnlocked } from '../planning/menu/edit-menu.ts';
import type { MenuPlanner, MenuProblem } from '../planning/menu/menu-problem.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { buildMenuModel, type MenuModel, type OpenedAt } from '../planning/optimiser/menu-model.ts';
import { chosenMenu, fromModel } from '../planning/optimiser/place-menu.ts';
import { brokenRules, scoreMenu, type MenuScore } from '../planning/optimiser/score-menu.ts';
import { planTrip, SETTLED_KCAL, targetChangeKcal } from '../planning/plan-trip.ts';
import { poseMenuProblem } from '../planning/pose-menu-problem.ts';
import { firstExpiredMenu } from './find-menu.ts';

/** A menu as it stands, made by hand or found, scored like a found one. */
export type StandingMenu = {
  readonly problem: MenuProblem;
  readonly model: MenuModel;
  /** The pouches of the meals that are not locked. */
  readonly opened: readonly OpenedAt[];
  readonly score: MenuScore;
  /** The points of first expired, first out. */
  readonly firstExpiredPoints: number;
  /** What a hand may do and a search may not, in words; a bound does not hold for such a menu. */
  readonly broken: readonly string[];
};

/**
 * Scores the menu of a plan.
 *
 * @param plan the trip's plan
 * @param known the problem that a search solved for this trip, stock and settings; it is scored by it, and so compared with its bound, as long as the needs are the same
 */
export function standingMenu(
  trip: Trip,
  plan: TripPlan,
  stock: Stock,
  settings: Settings,
  known?: MenuProblem,
): StandingMenu {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const meals = plan.menu.meals
    .filter(({ locked }) => !locked)
    .map(({ day, meal, opened }) => ({
      day,
      meal,
      opened: opened.flatMap(({ code, pouches, why }) => {
        const lot = lots.get(code);
        return lot ? [{ lot, pouches, why }] : [];
      }),
    }));
  const asItStands: MenuPlanner = { name: plan.menu.planner, choose: () => meals };
  const posed = poseMenuProblem(forgetUnlocked(trip), stock, settings, asItStands);
  const problem = known && targetChangeKcal(known.demand, posed.demand) <= SETTLED_KCAL ? known : posed;
  const model = buildMenuModel(problem);
  const opened = chosenMenu(model, meals);
  return {
    problem,
    model,
    opened,
    score: scoreMenu(model, opened),
    firstExpiredPoints: scoreMenu(model, firstExpiredMenu(model, problem)).points,
    broken: brokenRules(model, opened),
  };
}

/** The plan of a trip with a menu of the model on the table; the locked meals stay. */
export function planWithMenu(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  { model, opened, why }: { model: MenuModel; opened: readonly OpenedAt[]; why: string },
): TripPlan {
  const meals = fromModel(model, opened, () => why);
  return planTrip(forgetUnlocked(trip), stock, settings, { name: why, choose: () => meals });
}

/** @returns whether two menus of one model open the same pouches at the same meals. */
export function sameMenu(one: readonly OpenedAt[], other: readonly OpenedAt[]): boolean {
  const words = (opened: readonly OpenedAt[]) =>
    opened
      .filter(({ pouches }) => pouches > 0)
      .map(({ slot, lot, pouches }) => `${slot} ${lot} ${pouches}`)
      .sort()
      .join();
  return words(one) === words(other);
}
