import type { TripPlan } from '../planning/model/trip-plan.ts';

/** What menus are compared by, side by side. */
export type MenuFigures = {
  readonly points: number;
  /** Food and its packaging, g. */
  readonly foodG: number;
  readonly missingKcal: number;
  readonly leftOverServings: number;
  readonly pouches: number;
  readonly recipes: number;
  /** Dishes cooked in a pot, over the whole trip. */
  readonly pots: number;
  /** With its reserve, g. */
  readonly fuelG: number;
  /** Money in minor units, as far as it is known; undefined where no lot states a cost. */
  readonly costMinor: number | undefined;
};

/** @param plan the plan with this menu on the table; @param points its score */
export function menuFigures(plan: TripPlan, points: number): MenuFigures {
  const opened = plan.menu.meals.flatMap((meal) =>
    meal.opened.map(({ recipe, style }) => ({ recipe, style, at: `${meal.day} ${meal.meal} ${meal.group}` })),
  );
  return {
    points,
    foodG: plan.totals.foodG + plan.totals.packagingG,
    missingKcal: plan.totals.missingKcal,
    leftOverServings: plan.totals.servingsLeftOver,
    pouches: plan.totals.pouches,
    recipes: new Set(opened.map(({ recipe }) => recipe)).size,
    pots: new Set(
      opened.flatMap(({ recipe, style, at }) => (style === 'shared pot' ? [`${at} ${recipe}`] : [])),
    ).size,
    fuelG: plan.fuel.withReserveG,
    costMinor: plan.totals.costMinor,
  };
}
