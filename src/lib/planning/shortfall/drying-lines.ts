import type { ShoppingLine, TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import type { DryingNeed } from './fill-dryer.ts';
import type { DryingLine } from './plan-drying.ts';

/** A line with what is missing; where it is one dish that is planned, its recipe. */
type WantedLine = DryingLine & Pick<ShoppingLine, 'missingKcal'> & { readonly recipe?: string };

/** What can be dried for a trip: first what it plans to dry, then what it lacks. */
export function dryingLines(
  { planned }: Pick<Trip, 'planned'>,
  { coming, shortfall }: Pick<TripPlan, 'coming' | 'shortfall'>,
): WantedLine[] {
  const toDry = coming
    .filter(({ way, energyKcal }) => way === 'dry' && energyKcal > 0)
    .map(({ code, recipe, energyKcal, eaters }) => ({
      meal: planned?.find(({ lot }) => lot.code === code)?.lot.mealKinds[0] ?? ('dinner' as const),
      missingKcal: energyKcal,
      forEaters: eaters,
      recipe,
    }));
  return [...toDry, ...shortfall.shopping];
}

/** The lines as needs of a drying plan, in the same order. */
export const dryingNeeds = (lines: readonly WantedLine[], { party }: Pick<Trip, 'party'>): DryingNeed[] =>
  lines.map(({ meal, missingKcal, forEaters, recipe }) => ({
    meal,
    missingKcal,
    eaters: party.filter(({ name }) => forEaters.includes(name)),
    ...(recipe !== undefined && { recipe }),
  }));
