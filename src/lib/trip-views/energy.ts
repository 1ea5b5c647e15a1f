import type { EaterDayDemand, TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { text, type Text } from '../texts/say.ts';

/** Energy of the whole party on one day, kcal. */
export type DayEnergy = {
  readonly day: number;
  readonly date: string;
  readonly targetKcal: number;
  /** The range of the need, for the meals that the day has: all eaters low or all high, as the equations err alike for all. */
  readonly needLowKcal: number;
  readonly needHighKcal: number;
  readonly eatenKcal: number;
  readonly missingKcal: number;
  readonly leftOverKcal: number;
};

/** What of a plan tells of the energy of the party. */
export type EnergyPart = Pick<TripPlan, 'demand' | 'menu' | 'totals' | 'coupling'>;

/** @param planFor the point of the range that the plan is made for */
export function energyByDay(
  plan: Pick<EnergyPart, 'demand' | 'menu'>,
  planFor: Trip['planFor'],
): DayEnergy[] {
  return plan.demand.map(({ day, date, eaters }) => {
    const rows = plan.menu.energy.filter((row) => row.day === day);
    const needs = eaters.map((eater) => needOnMeals(eater, planFor));
    return {
      day,
      date,
      targetKcal: rows.reduce((sum, row) => sum + row.targetKcal, 0),
      needLowKcal: needs.reduce((sum, { lowKcal }) => sum + lowKcal, 0),
      needHighKcal: needs.reduce((sum, { highKcal }) => sum + highKcal, 0),
      eatenKcal: rows.reduce((sum, row) => sum + row.eatenKcal, 0),
      missingKcal: rows.reduce((sum, row) => sum + row.missingKcal, 0),
      leftOverKcal: plan.menu.meals
        .filter((meal) => meal.day === day)
        .reduce((sum, meal) => sum + meal.leftOverKcal, 0),
    };
  });
}

/** The need is of a full day; a day that begins or ends between meals has to bring only a part of it. */
function needOnMeals(
  { basis, need, deficitKcal, targetKcal }: EaterDayDemand,
  planFor: Trip['planFor'],
): { lowKcal: number; highKcal: number } {
  const plannedKcal =
    basis === 'entered' || planFor === undefined || planFor === 'middle' ? need.value : need[planFor];
  const fullDayKcal = plannedKcal - deficitKcal;
  const share = fullDayKcal > 0 ? targetKcal / fullDayKcal : 0;
  return { lowKcal: need.low * share, highKcal: need.high * share };
}

export const BASIS_WORDS: Readonly<Record<EaterDayDemand['basis'], Text>> = {
  entered: text('as entered'),
  'adult body': text('estimated from body data'),
  'minor body': text('requirement of the age, by body data'),
};

/** The need of one eater day by day, and whether it is one and the same entered figure on all of them. */
export type EaterNeed = {
  readonly eater: string;
  readonly entered: boolean;
  readonly days: readonly (EaterDayDemand & { readonly day: number })[];
};

export function needByEater(demand: TripPlan['demand']): EaterNeed[] {
  return (demand[0]?.eaters ?? []).map(({ eater }) => {
    const days = demand.flatMap(({ day, eaters }) =>
      eaters.filter((row) => row.eater === eater).map((row) => ({ ...row, day })),
    );
    return { eater, entered: days.every(({ basis }) => basis === 'entered'), days };
  });
}
