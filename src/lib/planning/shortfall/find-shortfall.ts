import { FED_SHARE } from '../menu/hunger-notices.ts';
import { exclusionsOf, groupsByExclusions, mayEat } from '../menu/exclusions.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import { pouchEnergyKcal, pouchGrossG } from '../model/pouch-totals.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type {
  DayDemand,
  MenuPlan,
  MissingMeal,
  ShoppingLine,
  Shortfall,
  Suggestion,
} from '../model/trip-plan.ts';
import { MEAL_KINDS, type MealKind } from '../model/words.ts';

/** Ways of each sort that are offered for one line of the shopping list. */
const MOST_SUGGESTIONS = 3;

/**
 * What is missing, by day and meal, and what would fill it.
 *
 * A day that misses no more than 3 % counts as fed. What a day misses is put down to the meals that stayed furthest below their share.
 * Over the trip it is gathered by kind of meal and by equal exclusions, so that a suggestion never holds what its eaters avoid.
 */
export function findShortfall(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  menu: MenuPlan,
  stock: Stock,
  settings: Settings,
): Shortfall {
  const meals = demand.flatMap((day) => missingOn(day, menu, stock));
  const shopping = shoppingLines(trip, meals, stock, settings);
  return {
    missingKcal: meals.reduce((sum, meal) => sum + meal.missingKcal, 0),
    missingServings: meals.reduce((sum, meal) => sum + meal.missingServings, 0),
    meals,
    shopping,
  };
}

function missingOn(day: DayDemand, menu: MenuPlan, stock: Stock): MissingMeal[] {
  const missing = day.eaters.flatMap(({ eater, targetKcal, mealKcal }) => {
    const row = menu.energy.find((energy) => energy.day === day.day && energy.eater === eater);
    if (!row || row.eatenKcal >= targetKcal * FED_SHARE) return [];
    const gaps = day.meals.map((meal) => {
      const eatenKcal = menu.meals
        .filter((other) => other.day === day.day && other.meal === meal)
        .flatMap(({ portions }) => portions)
        .filter((portion) => portion.eater === eater)
        .reduce((sum, portion) => sum + portion.energyKcal, 0);
      return { meal, gapKcal: Math.max(0, (mealKcal[meal] ?? 0) - eatenKcal) };
    });
    let restKcal = row.missingKcal;
    return [...gaps]
      .sort((a, b) => b.gapKcal - a.gapKcal)
      .flatMap(({ meal, gapKcal }) => {
        const missingKcal = Math.min(gapKcal, restKcal);
        restKcal -= missingKcal;
        return missingKcal > 0 ? [{ eater, meal, missingKcal }] : [];
      });
  });
  return day.meals.flatMap((meal): MissingMeal[] => {
    const eaters = missing
      .filter((gap) => gap.meal === meal)
      .map(({ eater, missingKcal }) => ({ eater, missingKcal }));
    if (eaters.length === 0) return [];
    const missingKcal = eaters.reduce((sum, gap) => sum + gap.missingKcal, 0);
    const partyMealKcal =
      day.eaters.reduce((sum, eater) => sum + (eater.mealKcal[meal] ?? 0), 0) / day.eaters.length;
    return [
      {
        day: day.day,
        date: day.date,
        meal,
        missingKcal,
        missingServings: missingKcal / servingKcal(meal, stock, partyMealKcal),
        eaters,
      },
    ];
  });
}

/** Energy of a usual serving of a meal: the mean of the shelf's recipes for it, or what the meal should bring where the shelf has none. */
function servingKcal(meal: MealKind, stock: Stock, mealTargetKcal: number): number {
  const lots = stock.filter((lot) => lot.mealKinds.includes(meal) && lot.energyKcal > 0);
  return lots.length > 0 ? lots.reduce((sum, lot) => sum + lot.energyKcal, 0) / lots.length : mealTargetKcal;
}

function shoppingLines(
  trip: ResolvedTrip,
  meals: readonly MissingMeal[],
  stock: Stock,
  settings: Settings,
): ShoppingLine[] {
  const groups = groupsByExclusions(trip.party);
  return MEAL_KINDS.flatMap((meal) =>
    groups.flatMap((group): ShoppingLine[] => {
      const names = new Set(group.map((eater) => eater.name));
      const missed = meals.filter((missing) => missing.meal === meal);
      const shareOf = (missing: MissingMeal) =>
        missing.eaters.filter((gap) => names.has(gap.eater)).reduce((sum, gap) => sum + gap.missingKcal, 0);
      const missingKcal = missed.reduce((sum, missing) => sum + shareOf(missing), 0);
      if (missingKcal < 1) return [];
      const missingServings = missed.reduce(
        (sum, missing) => sum + (missing.missingServings * shareOf(missing)) / missing.missingKcal,
        0,
      );
      const forEaters = group
        .map((eater) => eater.name)
        .filter((name) => missed.some((missing) => missing.eaters.some((gap) => gap.eater === name)));
      return [
        {
          meal,
          forEaters,
          exclusions: group[0] ? exclusionsOf(group[0]) : [],
          missingKcal,
          missingServings,
          suggestions: suggestionsFor(meal, group, missingKcal, stock, settings),
        },
      ];
    }),
  );
}

function suggestionsFor(
  meal: MealKind,
  group: readonly ResolvedEater[],
  missingKcal: number,
  stock: Stock,
  settings: Settings,
): Suggestion[] {
  const suits = (food: PouchLot | Settings['staples'][number]) => group.every((eater) => mayEat(food, eater));
  const recipes = new Map<string, PouchLot>();
  for (const lot of stock)
    if (lot.mealKinds.includes(meal) && lot.energyKcal > 0 && suits(lot) && !recipes.has(lot.recipe))
      recipes.set(lot.recipe, lot);
  const toDry = [...recipes.values()]
    .sort(
      (a, b) =>
        pouchEnergyKcal(b) / pouchGrossG(b) - pouchEnergyKcal(a) / pouchGrossG(a) ||
        (a.recipe < b.recipe ? -1 : 1),
    )
    .slice(0, MOST_SUGGESTIONS)
    .map((lot): Suggestion => {
      const pouches = Math.ceil(missingKcal / pouchEnergyKcal(lot) - 1e-9);
      return {
        way: 'dry',
        what: lot.recipe,
        pouches,
        weightG: pouches * pouchGrossG(lot),
        energyKcal: pouches * pouchEnergyKcal(lot),
        ...(lot.allergens ? { allergens: lot.allergens } : {}),
      };
    });
  const toBuy = settings.staples
    .filter((staple) => staple.meals.includes(meal) && suits(staple))
    .slice(0, MOST_SUGGESTIONS)
    .map((staple): Suggestion => {
      const weightG = Math.ceil(missingKcal / staple.kcalPer100G / 0.1 - 1e-9) * 10;
      return {
        way: 'buy',
        what: staple.name,
        weightG,
        energyKcal: (weightG * staple.kcalPer100G) / 100,
        allergens: staple.allergens,
      };
    });
  return [...toDry, ...toBuy];
}
