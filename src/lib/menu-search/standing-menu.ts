import { forgetUnlocked } from '../planning/menu/edit-menu.ts';
import { layOldestFirst } from '../planning/menu/lay-by-expiry.ts';
import { buildMenuModel, type MenuModel } from '../planning/menu/menu-model.ts';
import type { Dish, DishStyle, MealChoice, MenuProblem } from '../planning/menu/menu-problem.ts';
import type { ModelMenu } from '../planning/menu/menu-state.ts';
import { fromModel, toModel } from '../planning/menu/place-menu.ts';
import { brokenRules, scoreMenu, type BrokenRule, type MenuScore } from '../planning/menu/score-menu.ts';
import { withPlanned } from '../planning/model/planned-lot.ts';
import type { PouchLot, Stock } from '../planning/model/pouch-lot.ts';
import type { Reason } from '../planning/model/reasons.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { buildMenuProblem, completePlan, SETTLED_KCAL, targetChangeKcal } from '../planning/plan-trip.ts';

/** A menu as it stands, made by hand or found, scored like a found one. */
export type StandingMenu = {
  readonly problem: MenuProblem;
  readonly model: MenuModel;
  /** The meals that are not locked. */
  readonly menu: ModelMenu;
  readonly score: MenuScore;
  /** The points of first expired, first out. */
  readonly firstExpiredPoints: number;
  /** What a hand may do and a search may not; a bound does not hold for such a menu. */
  readonly broken: readonly BrokenRule[];
};

/** The dishes of a plan's meals, as a planner chooses them. */
export function standingChoices(plan: TripPlan, stock: Stock): MealChoice[] {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  return plan.menu.meals.map(({ day, meal, group, opened, portions }) => {
    const rows = opened.flatMap((row) => {
      const lot = lots.get(row.code);
      return lot ? [{ ...row, lot }] : [];
    });
    const eaten = portions.flatMap((portion) => {
      const lot = lots.get(portion.code);
      return lot ? [{ ...portion, lot }] : [];
    });
    const keyOf = ({ lot, style }: { lot: PouchLot; style?: DishStyle | undefined }) =>
      `${lot.recipe}\n${style ?? 'own pouch'}`;
    const dishes = [...new Set([...rows, ...eaten].map(keyOf))].map((key): Dish => {
      const own = rows.filter((row) => keyOf(row) === key);
      const of = eaten.filter((row) => keyOf(row) === key);
      const recipe = (own[0] ?? of[0])?.lot.recipe ?? '';
      const kept = own[0];
      return {
        recipe,
        role: kept?.role ?? of[0]?.role ?? 'main',
        style: kept?.style ?? 'own pouch',
        opened: own.map(({ lot, pouches }) => ({ lot, pouches })),
        portions: of.map(({ eater, lot, servings }) => ({ eater, lot, servings })),
      };
    });
    return { day, meal, group, dishes };
  });
}

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
  const posed = buildMenuProblem(forgetUnlocked(trip, stock), stock, settings, plan.demand);
  const problem = known && targetChangeKcal(known.demand, posed.demand) <= SETTLED_KCAL ? known : posed;
  const model = buildMenuModel(problem);
  const menu = toModel(model, standingChoices(plan, withPlanned(stock, trip.planned)));
  return {
    problem,
    model,
    menu,
    score: scoreMenu(model, menu),
    firstExpiredPoints: scoreMenu(model, layOldestFirst(model)).points,
    broken: brokenRules(model, menu),
  };
}

/** The plan of a trip with a menu of the model on the table; the locked meals stay. */
export function planWithMenu(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  { model, menu, reason }: { model: MenuModel; menu: ModelMenu; reason: Reason },
): TripPlan {
  return completePlan(
    forgetUnlocked(trip, stock),
    stock,
    settings,
    fromModel(model, menu, () => reason),
    reason.code,
  );
}
