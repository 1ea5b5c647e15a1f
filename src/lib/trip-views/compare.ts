import type { TripPlan } from '../planning/model/trip-plan.ts';
import { MEAL_KINDS, type MealKind } from '../planning/model/words.ts';
import type { Quantity } from '../presentation/show.ts';
import { heaviestOn } from './loads.ts';
import { say } from '../texts/say.ts';

/** One figure of two trips. */
export type ComparedFigure = {
  readonly label: string;
  readonly a: number | undefined;
  readonly b: number | undefined;
  /** How it is shown; `count` for a bare number, `money` for minor units. */
  readonly as: Quantity | 'count' | 'money';
};

/** A meal at which the two trips open different pouches. */
export type ComparedMeal = {
  readonly day: number;
  readonly meal: MealKind;
  /** "2 × Bean chilli (D02)", in words; empty where the trip opens nothing or has no such meal. */
  readonly a: readonly string[];
  readonly b: readonly string[];
};

export type Comparison = {
  readonly figures: readonly ComparedFigure[];
  readonly meals: readonly ComparedMeal[];
  /** Meals at which both open the same. */
  readonly alike: number;
};

/** Two trips side by side, usually one and its copy with something changed. */
export function compareTrips(a: TripPlan, b: TripPlan): Comparison {
  const figure = (
    label: string,
    as: ComparedFigure['as'],
    of: (plan: TripPlan) => number | undefined,
  ): ComparedFigure => ({ label, a: of(a), b: of(b), as });
  const walking = (plan: TripPlan) => plan.legs.reduce((sum, { walkingH }) => sum + walkingH, 0);

  const opened = (plan: TripPlan, day: number, meal: MealKind): string[] =>
    plan.menu.meals
      .filter((other) => other.day === day && other.meal === meal)
      .flatMap((other) => other.opened)
      .map(({ pouches, recipe, code }) => `${pouches} × ${recipe} (${code})`)
      .sort();
  const days = Math.max(a.demand.length, b.demand.length);
  const meals = Array.from({ length: days }, (_, index) => index + 1).flatMap((day) =>
    MEAL_KINDS.map((meal): ComparedMeal => ({ day, meal, a: opened(a, day, meal), b: opened(b, day, meal) })),
  );
  const some = meals.filter((meal) => meal.a.length > 0 || meal.b.length > 0);
  const different = some.filter((meal) => meal.a.join('\n') !== meal.b.join('\n'));
  return {
    figures: [
      figure(say('Days'), 'count', (plan) => plan.demand.length),
      figure(say('People'), 'count', (plan) => plan.carry.packs.length),
      figure(say('Walking, h'), 'count', (plan) => Number(walking(plan).toFixed(1))),
      figure(say('Energy needed'), 'energy', (plan) => plan.totals.targetKcal),
      figure(say('Energy eaten'), 'energy', (plan) => plan.totals.eatenKcal),
      figure(say('Shortfall'), 'energy', (plan) => plan.shortfall.missingKcal),
      figure(say('Pouches'), 'count', (plan) => plan.totals.pouches),
      figure(say('Food'), 'pack', (plan) => plan.totals.foodG),
      figure(say('Packaging'), 'food', (plan) => plan.totals.packagingG),
      figure(say('Fuel with containers'), 'food', (plan) => plan.totals.fuelGrossG),
      figure(say('Heaviest pack of day 1'), 'pack', (plan) => heaviestOn(plan.carry, 1)?.peakG),
      figure(say('Most water carried'), 'water', (plan) => plan.water.peakMl),
      figure(say('Cost of the pouches, known prices'), 'money', (plan) => plan.totals.costMinor),
      figure(
        say('Needs attention'),
        'count',
        (plan) => plan.notices.filter(({ severity }) => severity === 'attention').length,
      ),
    ],
    meals: different,
    alike: some.length - different.length,
  };
}
