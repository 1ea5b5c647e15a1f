import { cookGroupsOf, takingOf } from '../model/meal-rules.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { MealTask } from './menu-problem.ts';

/** The meals that each cook group takes, in the order in which they are eaten. A meal that a whole group eats elsewhere is none. */
export function mealTasks(trip: ResolvedTrip, demand: readonly DayDemand[]): MealTask[] {
  const { groups } = cookGroupsOf(trip);
  return demand.flatMap((day, index) =>
    day.meals.flatMap((meal) =>
      groups.flatMap(({ name, eaters }): MealTask[] => {
        const conditions = trip.days[index];
        if (!conditions) return [];
        const taking = takingOf(trip, conditions, meal);
        const here = eaters.filter((eater) => !taking.elsewhere.has(eater));
        if (here.length === 0) return [];
        return [
          {
            day: day.day,
            meal,
            group: name,
            eaters: here,
            style: taking.style,
            stop: taking.stop,
            extras: taking.extras,
            dish: taking.dish,
            airC: conditions.airTemperatureC,
          },
        ];
      }),
    ),
  );
}
