import { safeBoilMin } from '../planning/stove/safe-boil.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { text, type Text } from '../texts/say.ts';

/** What making water from the land safe takes, by way. */
export const TREATMENT_TAKES: Readonly<Record<NonNullable<Trip['treatment']>, Text>> = {
  boil: text('one minute at a rolling boil, three above 2000 m (6562 ft), after the CDC; and fuel'),
  filter: text(
    'about a minute per litre by hand (rule of thumb); does not remove viruses unless the manufacturer says so, and freezing ruins it',
  ),
  chemical: text(
    'usually half an hour, up to four hours in cold water or against cysts: follow the manufacturer',
  ),
  none: text('for tap water only; a clear stream is no proof that water is safe'),
};

/** Filtering by hand, ml a minute (common practice). */
const FILTER_ML_PER_MIN = 1000;

/** The day on which the most water is taken up from the land, and what making it safe takes. */
export type TreatmentNeed = {
  readonly day: number;
  readonly treatMl: number;
  readonly filterMin: number;
  /** Minutes at a rolling boil, each potful. */
  readonly boilMin: number;
};

export function busiestTreatment(plan: TripPlan): TreatmentNeed {
  const busiest = plan.water.days.reduce((most, day) => (day.treatMl > most.treatMl ? day : most));
  const altitudeM = plan.card.days.find(({ day }) => day === busiest.day)?.altitudeM ?? 0;
  return {
    day: busiest.day,
    treatMl: busiest.treatMl,
    filterMin: Math.ceil(busiest.treatMl / FILTER_ML_PER_MIN),
    boilMin: safeBoilMin(altitudeM),
  };
}

/** Fuel that the plan burns to make water safe by boiling, g. */
export function boilingSafeG(plan: TripPlan): number {
  return plan.fuel.boils
    .filter(({ purpose }) => purpose === 'making safe')
    .reduce((sum, { fuelG }) => sum + fuelG, 0);
}
