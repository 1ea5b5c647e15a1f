import { FED_SHARE } from '../menu/hunger-notices.ts';
import { exclusionsOf, groupsByExclusions } from '../menu/exclusions.ts';
import { packetsOf } from '../model/planned-lot.ts';
import type { Stock } from '../model/pouch-lot.ts';
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
import { MAIN_MEALS, MEAL_KINDS, type MealKind } from '../model/words.ts';
import { plannedOffers, shelfOffers, stapleOffers, isSameFood, type Offer } from './offers.ts';
import { offersFor, suggestionOf, type Gap } from './suggest.ts';

/** Ways of each sort that are offered for one line of the shopping list. */
const MOST_SUGGESTIONS = 3;

/**
 * What is missing, by day and meal, and what would fill it.
 *
 * A day that misses no more than 3 % counts as fed. What a day misses is put down to the meals that stayed furthest below their share.
 * Over the trip it is gathered by equal exclusions, so that a suggestion never holds what its eaters avoid, and by the kind of meal that can fill it: a plate
 * that has its dish takes no second one, so what it lacks is for the snacks of the day.
 */
export function findShortfall(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  menu: MenuPlan,
  stock: Stock,
  settings: Settings,
): Shortfall {
  const meals = demand.flatMap((day) => missingOn(day, menu, stock));
  const offers = knownOffers(trip, stock, settings);
  const shopping = lacksOf(trip, demand, menu, meals).map((lack) => shoppingLine(lack, offers));
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

/** What is missing for one kind of meal to eaters of equal exclusions. */
export type Lack = {
  readonly meal: MealKind;
  readonly group: readonly ResolvedEater[];
  readonly gaps: readonly Gap[];
  readonly missingServings: number;
};

/** A plate with less than this of what is planned for the meal has no dish to speak of, and the meal is still to be filled. */
const SERVED_SHARE = 0.5;

/** What is missing, by where it can be filled and for whom. */
export function lacksOf(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  menu: MenuPlan,
  meals: readonly MissingMeal[],
): Lack[] {
  const groups = groupsByExclusions(trip.party);
  const gaps = meals.flatMap((missing) =>
    missing.eaters.map(({ eater, missingKcal }) => ({
      day: missing.day,
      eater,
      missingKcal,
      servings: (missing.missingServings * missingKcal) / missing.missingKcal,
      meal: fillableAt(missing, eater, demand, menu),
    })),
  );
  return MEAL_KINDS.flatMap((meal) =>
    groups.flatMap((group): Lack[] => {
      const names = new Set(group.map(({ name }) => name));
      const own = gaps.filter((gap) => gap.meal === meal && names.has(gap.eater));
      const together = [...Map.groupBy(own, ({ day, eater }) => `${day} ${eater}`).values()].flatMap(
        ([first, ...more]) =>
          first
            ? [
                {
                  day: first.day,
                  eater: first.eater,
                  missingKcal: [first, ...more].reduce((sum, gap) => sum + gap.missingKcal, 0),
                },
              ]
            : [],
      );
      const missingKcal = together.reduce((sum, gap) => sum + gap.missingKcal, 0);
      if (missingKcal < 1) return [];
      return [
        {
          meal,
          group,
          gaps: together,
          missingServings: own.reduce((sum, { servings }) => sum + servings, 0),
        },
      ];
    }),
  );
}

/** The meal of the day at which more of what is missing at one can be eaten. */
function fillableAt(
  { day, meal }: MissingMeal,
  eater: string,
  demand: readonly DayDemand[],
  menu: MenuPlan,
): MealKind {
  const on = demand.find((other) => other.day === day);
  if (!(MAIN_MEALS as readonly MealKind[]).includes(meal) || !on?.meals.includes('snack')) return meal;
  const plannedKcal = on.eaters.find((row) => row.eater === eater)?.mealKcal[meal] ?? 0;
  const eatenKcal = menu.meals
    .filter((other) => other.day === day && other.meal === meal)
    .flatMap(({ portions }) => portions)
    .filter((portion) => portion.eater === eater)
    .reduce((sum, portion) => sum + portion.energyKcal, 0);
  return eatenKcal >= SERVED_SHARE * plannedKcal ? 'snack' : meal;
}

/** All foods that the plan itself knows: more of what is planned, dishes of the shelf, and the bought foods of the settings. */
export function knownOffers(
  trip: Pick<ResolvedTrip, 'planned' | 'days'>,
  stock: Stock,
  settings: Settings,
): Offer[] {
  const startDate = trip.days[0]?.date ?? '';
  const planned = plannedOffers(trip.planned);
  const others = [...shelfOffers(stock, trip.planned, startDate), ...stapleOffers(settings, startDate)];
  return [...planned, ...others.filter((offer) => !planned.some((own) => isSameFood(own, offer)))];
}

/** A line of the shopping list, with the densest foods of each sort first. */
export function shoppingLine(
  { meal, group, gaps, missingServings }: Lack,
  offers: readonly Offer[],
): ShoppingLine {
  const suiting = offersFor(offers, meal, group);
  const densest = [...suiting].sort(
    (a, b) => kcalPerG(b) - kcalPerG(a) || (a.lot.recipe < b.lot.recipe ? -1 : 1),
  );
  const first = (way: Offer['way'], of: readonly Offer[]) =>
    of.filter((offer) => offer.way === way).slice(0, MOST_SUGGESTIONS);
  return {
    meal,
    forEaters: group.map(({ name }) => name).filter((name) => gaps.some(({ eater }) => eater === name)),
    exclusions: group[0] ? exclusionsOf(group[0]) : { allergens: [], diets: [] },
    missingKcal: gaps.reduce((sum, { missingKcal }) => sum + missingKcal, 0),
    missingServings,
    plates: gaps.length,
    suggestions: [...first('dry', densest), ...first('buy', suiting)].map((offer): Suggestion => {
      const { energyKcal, ...planned } = suggestionOf(offer, meal, gaps, suiting.length > 1);
      const { lot, way } = planned;
      const packets = packetsOf(planned);
      return {
        way,
        what: lot.recipe,
        pouches: lot.pouches,
        ...(packets > 0 && { packets }),
        weightG: lot.pouches * pouchGrossG(lot),
        energyKcal,
        ...(lot.allergens && { allergens: lot.allergens }),
        planned,
      };
    }),
  };
}

const kcalPerG = ({ lot }: Offer): number => pouchEnergyKcal(lot) / pouchGrossG(lot);
