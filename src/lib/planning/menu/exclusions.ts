import { say } from '../../texts/say.ts';
import { avoided, type Allergen } from '../model/allergens.ts';
import { dietsMet, type Diet } from '../model/diets.ts';
import { allergenLabel, dietLabel } from '../../presentation/code-words.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { Eater } from '../model/trip.ts';

type Excluder = Pick<Eater, 'allergens' | 'diets'>;
type Food = Pick<PouchLot, 'allergens'> & { diets: PouchLot['diets'] };

/** What bars an eater from a food. */
type Wall =
  | { readonly kind: 'unstated' }
  | { readonly kind: 'holds'; readonly allergens: readonly Allergen[] }
  | { readonly kind: 'unmet'; readonly diets: readonly Diet[] };

/**
 * The wall is hard and on the safe side: food whose allergens nobody has stated is not served to anyone who avoids one,
 * and a diet is met only where it is stated to be met.
 */
function wallBetween(food: Food, eater: Excluder): Wall | undefined {
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

/** Why an eater must not be served a food, in words; undefined where they may. */
export function whyNotServed(food: Food, eater: Excluder): string | undefined {
  const wall = wallBetween(food, eater);
  switch (wall?.kind) {
    case undefined:
      return undefined;
    case 'unstated':
      return say('allergens not declared');
    case 'holds':
      return say('contains {allergens}', { allergens: wall.allergens.map(allergenLabel).join(', ') });
    case 'unmet':
      return say('not declared as {diets}', { diets: wall.diets.map(dietLabel).join(', ') });
  }
}

export const mayEat = (food: Food, eater: Excluder): boolean => wallBetween(food, eater) === undefined;

/** What an eater excludes, in words, sorted. */
export function exclusionsOf(eater: Excluder): string[] {
  return [
    ...eater.allergens.map((code) => say('no {allergen}', { allergen: allergenLabel(code) })),
    ...eater.diets.map(dietLabel),
  ].sort();
}

/** The party in groups of equal exclusions, in the order in which they first come. */
export function groupsByExclusions<T extends Excluder>(party: readonly T[]): T[][] {
  return [
    ...Map.groupBy(party, ({ allergens, diets }) => [...allergens, ...diets].sort().join(' ')).values(),
  ];
}
