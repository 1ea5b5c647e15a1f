import type { Settings } from '../model/settings.ts';
import type { ResolvedDay, ResolvedTrip } from '../model/trip-defaults.ts';
import type { DayDemand, EaterDayDemand, Term } from '../model/trip-plan.ts';
import { MEAL_KINDS, type MainMeal, type MealKind } from '../model/words.ts';

/** A snack belongs to lunch and a drink to dinner, so a trip that begins with dinner has its evening drink and no snack. */
const FIRST_OF: Readonly<Record<MainMeal, MealKind>> = {
  breakfast: 'breakfast',
  lunch: 'lunch',
  dinner: 'dinner',
};
const LAST_OF: Readonly<Record<MainMeal, MealKind>> = {
  breakfast: 'breakfast',
  lunch: 'snack',
  dinner: 'drink',
};

/**
 * Meals of one day in the order in which they are eaten: those between the trip's first and last meal whose share of the day is not 0.
 */
export function mealsOfDay(trip: ResolvedTrip, day: ResolvedDay, settings: Settings): MealKind[] {
  const from = day.day === 1 ? MEAL_KINDS.indexOf(FIRST_OF[trip.firstMeal]) : 0;
  const to =
    day.day === trip.days.length ? MEAL_KINDS.indexOf(LAST_OF[trip.lastMeal]) : MEAL_KINDS.length - 1;
  return MEAL_KINDS.slice(from, to + 1).filter((meal) => settings.mealShares[meal] > 0);
}

/**
 * Energy that each eater needs on each day, kcal, and how it falls on the meals.
 *
 * A day that begins or ends between meals needs the shares of the meals that it has. The shares are a choice of the user;
 * the daily target is what the user entered or the trip's default.
 */
export function demandOf(trip: ResolvedTrip, settings: Settings): DayDemand[] {
  return trip.days.map((day) => {
    const meals = mealsOfDay(trip, day, settings);
    const dayShare = meals.reduce((sum, meal) => sum + settings.mealShares[meal], 0);
    const eaters = trip.party.map((eater): EaterDayDemand => {
      const terms: Term[] = [{ label: 'energy target of a full day', value: eater.energyKcal, unit: 'kcal' }];
      if (meals.length < MEAL_KINDS.length)
        terms.push({
          label: `share of the day: ${meals.join(', ') || 'no meal'}`,
          value: dayShare * 100,
          unit: '%',
        });
      return {
        eater: eater.name,
        targetKcal: eater.energyKcal * dayShare,
        mealKcal: Object.fromEntries(
          meals.map((meal) => [meal, eater.energyKcal * settings.mealShares[meal]]),
        ),
        terms,
      };
    });
    return { day: day.day, date: day.date, meals, eaters };
  });
}
