import { z } from 'zod';

/**
 * One controlled list for the nine allergens of US law and the fourteen of EU law.
 *
 * Sources: US: FALCPA 2004 and FASTER Act 2021. EU: Regulation (EU) 1169/2011, Annex II.
 * Wheat is its own allergen in US law and one of the cereals containing gluten in EU law.
 */
export const ALLERGEN_LIST = [
  { code: 'milk', label: 'milk', us: true, eu: true },
  { code: 'egg', label: 'egg', us: true, eu: true },
  { code: 'fish', label: 'fish', us: true, eu: true },
  { code: 'crustaceans', label: 'crustacean shellfish', us: true, eu: true },
  { code: 'nuts', label: 'tree nuts', us: true, eu: true },
  { code: 'peanut', label: 'peanut', us: true, eu: true },
  { code: 'wheat', label: 'wheat', us: true, eu: false },
  { code: 'soy', label: 'soy', us: true, eu: true },
  { code: 'sesame', label: 'sesame', us: true, eu: true },
  { code: 'gluten', label: 'cereals with gluten', us: false, eu: true },
  { code: 'celery', label: 'celery', us: false, eu: true },
  { code: 'mustard', label: 'mustard', us: false, eu: true },
  { code: 'sulphites', label: 'sulphites', us: false, eu: true },
  { code: 'lupin', label: 'lupin', us: false, eu: true },
  { code: 'molluscs', label: 'molluscs', us: false, eu: true },
] as const;

export const ALLERGENS = ALLERGEN_LIST.map((entry) => entry.code);
export const Allergen = z.enum(ALLERGENS);
export type Allergen = z.infer<typeof Allergen>;

export function allergenLabel(code: Allergen): string {
  return ALLERGEN_LIST.find((entry) => entry.code === code)?.label ?? code;
}

/**
 * What an eater has to avoid, widened to the safe side: wheat is a cereal with gluten, and a lot that says only
 * "cereals with gluten" may hold wheat, so whoever avoids one of the two avoids both.
 */
export function avoided(excluded: readonly Allergen[]): ReadonlySet<Allergen> {
  const all = new Set(excluded);
  if (all.has('wheat')) all.add('gluten');
  if (all.has('gluten')) all.add('wheat');
  return all;
}
