import { allergenLabel, avoided } from '../model/allergens.ts';
import { dietLabel, dietsMet } from '../model/diets.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { Eater } from '../model/trip.ts';

type Excluder = Pick<Eater, 'allergens' | 'diets'>;
type Food = Pick<PouchLot, 'allergens'> & { diets: PouchLot['diets'] };

/**
 * Why an eater must not be served a food, in words; undefined where they may.
 *
 * The wall is hard and on the safe side: food whose allergens nobody has stated is not served to anyone who avoids one,
 * and a diet is met only where it is stated to be met.
 */
export function whyNotServed(food: Food, eater: Excluder): string | undefined {
  if (eater.allergens.length > 0) {
    if (food.allergens === undefined) return 'its allergens are not stated';
    const avoid = avoided(eater.allergens);
    const held = food.allergens.filter((allergen) => avoid.has(allergen));
    if (held.length > 0) return `holds ${held.map(allergenLabel).join(', ')}`;
  }
  const met = dietsMet(food.diets);
  const unmet = eater.diets.filter((diet) => !met.has(diet));
  if (unmet.length > 0) return `is not stated to be ${unmet.map(dietLabel).join(', ')}`;
  return undefined;
}

export const mayEat = (food: Food, eater: Excluder): boolean => whyNotServed(food, eater) === undefined;

/** What an eater excludes, in words, sorted: eaters with equal lists can be served alike. */
export function exclusionsOf(eater: Excluder): string[] {
  return [
    ...eater.allergens.map((code) => `no ${allergenLabel(code)}`),
    ...eater.diets.map(dietLabel),
  ].sort();
}

/** The party in groups of equal exclusions, in the order in which they first come. */
export function groupsByExclusions<T extends Excluder>(party: readonly T[]): T[][] {
  return [...Map.groupBy(party, (eater) => exclusionsOf(eater).join('\n')).values()];
}
