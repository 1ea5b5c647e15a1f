import type { TripPlan } from '../planning/model/trip-plan.ts';

/** Energy of the whole party on one day, kcal. */
export type DayEnergy = {
  readonly day: number;
  readonly date: string;
  readonly targetKcal: number;
  readonly eatenKcal: number;
  readonly missingKcal: number;
  readonly leftOverKcal: number;
};

export function energyByDay(plan: TripPlan): DayEnergy[] {
  return plan.demand.map(({ day, date }) => {
    const rows = plan.menu.energy.filter((row) => row.day === day);
    return {
      day,
      date,
      targetKcal: rows.reduce((sum, row) => sum + row.targetKcal, 0),
      eatenKcal: rows.reduce((sum, row) => sum + row.eatenKcal, 0),
      missingKcal: rows.reduce((sum, row) => sum + row.missingKcal, 0),
      leftOverKcal: plan.menu.meals
        .filter((meal) => meal.day === day)
        .reduce((sum, meal) => sum + meal.leftOverKcal, 0),
    };
  });
}
