import type { MissingMeal, TripPlan } from '../planning/model/trip-plan.ts';

/** One day of the trip: what it lacks, meal by meal; nothing where it has enough. */
export type MissingDay = {
  readonly day: number;
  readonly date: string;
  readonly meals: readonly MissingMeal[];
};

export function missingByDay(plan: TripPlan): MissingDay[] {
  return plan.demand.map(({ day, date }) => ({
    day,
    date,
    meals: plan.shortfall.meals.filter((meal) => meal.day === day),
  }));
}
