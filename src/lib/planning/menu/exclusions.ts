import { avoided, type Allergen } from '../model/allergens.ts';
import { dietsMet, type Diet } from '../model/diets.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { Exclusions } from '../model/trip-plan.ts';
import type { Eater } from '../model/trip.ts';

type Excluder = Pick<Eater, 'allergens' | 'diets'>;
type Food = Pick<PouchLot, 'allergens'> & { diets: PouchLot['diets'] };

/** What bars an eater from a food. */
export type Wall =
  | { readonly kind: 'unstated' }
  | { readonly kind: 'holds'; readonly allergens: readonly Allergen[] }
  | { readonly kind: 'unmet'; readonly diets: readonly Diet[] };

/**
 * Why an eater must not be served a food; undefined where they may. The wall is hard and on the safe side: food whose allergens nobody has stated
 * is not served to anyone who avoids one, and a diet is met only where it is stated to be met.
 */
export function whyNotServed(food: Food, eater: Excluder): Wall | undefined {
  if (eater.allergens.length > 0) {
    if (food.allergens === undefined) return { kind: 'unstated' };
    const avoid = avoided(eater.allergens);
    const held = food.allergens.filter((allergen) => avoid.has(allergen));
    if (held.length > 0) return { kind: 'holds', allergens: held };
  }
  const met = dietsMet(food.diets);
  const unmet = eater.diets.filter((diet) => !met.has(diet));
  return unmet.length > 0 ? { kind: 'unmet', diets: unmet } : undefined;
}

export const mayEat = (food: Food, eater: Excluder): boolean => whyNotServed(food, eater) === undefined;

/** What an eater avoids and keeps to, each sorted. */
export const exclusionsOf = ({ allergens, diets }: Excluder): Exclusions => ({
  allergens: [...allergens].sort(),
  diets: [...diets].sort(),
});

/** The party in groups of equal exclusions, in the order in which they first come. */
export function groupsByExclusions<T extends Excluder>(party: readonly T[]): T[][] {
  return [
    ...Map.groupBy(party, ({ allergens, diets }) => [...allergens, ...diets].sort().join(' ')).values(),
  ];
}
