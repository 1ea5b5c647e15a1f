import type { TripPlan } from '../planning/model/trip-plan.ts';
import { pouchBurden, type MenuModel, type OpenedAt } from '../planning/optimiser/menu-model.ts';

/** What menus are compared by, side by side. */
export type MenuFigures = {
  readonly points: number;
  /** Food and its packaging, g. */
  readonly foodG: number;
  readonly missingKcal: number;
  readonly recipes: number;
  /** Water for the pouches, carried from the last source before the meal: kg for an hour of walking. */
  readonly waterKgH: number;
  /** With its reserve, g. */
  readonly fuelG: number;
  /** Money in minor units, as far as it is known; undefined where no lot states a cost. */
  readonly costMinor: number | undefined;
};

/** @param plan the plan with this menu on the table; @param points its score */
export function menuFigures(
  plan: TripPlan,
  model: MenuModel,
  opened: readonly OpenedAt[],
  points: number,
): MenuFigures {
  return {
    points,
    foodG: plan.totals.foodG + plan.totals.packagingG,
    missingKcal: plan.totals.missingKcal,
    recipes: new Set(plan.menu.meals.flatMap((meal) => meal.opened.map(({ recipe }) => recipe))).size,
    waterKgH: [...model.kept, ...opened].reduce((sum, { slot, lot, pouches }) => {
      const [of, burden] = [model.lots[lot], model.burdens[slot]];
      return of && burden ? sum + pouches * pouchBurden(of.lot, burden, model.walkedH).waterKgH : sum;
    }, 0),
    fuelG: plan.fuel.withReserveG,
    costMinor: plan.totals.costMinor,
  };
}
