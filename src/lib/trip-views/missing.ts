import { allergenLabel } from '../presentation/code-words.ts';
import type { MissingMeal, Shortfall, Suggestion } from '../planning/model/trip-plan.ts';
import type { TripDay } from './trip-days.ts';
import { show } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** One day of the trip: what it lacks, meal by meal; nothing where it has enough. */
export type MissingDay = TripDay & { readonly meals: readonly MissingMeal[] };

export function missingByDay({ meals }: Shortfall, days: readonly TripDay[]): MissingDay[] {
  return days.map(({ day, date }) => ({
    day,
    date,
    meals: meals.filter((meal) => meal.day === day),
  }));
}

/** @returns the names, or "everyone" where they are all of a party of more than one */
export const eatersText = (names: readonly string[], partySize: number): string =>
  partySize > 1 && names.length === partySize ? say('everyone') : names.join(', ');

/** @returns who lacks how much: "Ada 332 kcal, Ben 210 kcal"; "everyone 332 kcal each" where all lack the same */
export function whoLacks({ eaters }: Pick<MissingMeal, 'eaters'>, partySize: number): string {
  const lacks = eaters.map(({ missingKcal }) => show(missingKcal, 'energy', 'metric'));
  const [lack] = lacks;
  const who = eatersText(
    eaters.map(({ eater }) => eater),
    partySize,
  );
  return new Set(lacks).size === 1 && lack !== undefined
    ? eaters.length > 1
      ? say('{eaters} {energy} each', { eaters: who, energy: lack })
      : `${who} ${lack}`
    : eaters.map(({ eater }, index) => `${eater} ${lacks[index]}`).join(', ');
}

/** @returns what a suggested food holds: "holds milk, egg" */
export function allergensOf({ allergens }: Pick<Suggestion, 'allergens'>): string {
  if (allergens === undefined) return say('allergens not declared');
  return allergens.length > 0
    ? say('contains {allergens}', { allergens: allergens.map(allergenLabel).join(', ') })
    : say('none of the listed allergens');
}
