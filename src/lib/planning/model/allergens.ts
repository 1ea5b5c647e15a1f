/**
 * One controlled list for the nine allergens of US law and the fourteen of EU law.
 *
 * Sources: US: FALCPA 2004 and FASTER Act 2021. EU: Regulation (EU) 1169/2011, Annex II.
 * Wheat is its own allergen in US law and one of the cereals containing gluten in EU law.
 */
export const ALLERGEN_LIST = [
  { code: 'milk', us: true, eu: true },
  { code: 'egg', us: true, eu: true },
  { code: 'fish', us: true, eu: true },
  { code: 'crustaceans', us: true, eu: true },
  { code: 'nuts', us: true, eu: true },
  { code: 'peanut', us: true, eu: true },
  { code: 'wheat', us: true, eu: false },
  { code: 'soy', us: true, eu: true },
  { code: 'sesame', us: true, eu: true },
  { code: 'gluten', us: false, eu: true },
  { code: 'celery', us: false, eu: true },
  { code: 'mustard', us: false, eu: true },
  { code: 'sulphites', us: false, eu: true },
  { code: 'lupin', us: false, eu: true },
  { code: 'molluscs', us: false, eu: true },
] as const;

export const ALLERGENS = ALLERGEN_LIST.map((entry) => entry.code);
export type Allergen = (typeof ALLERGENS)[number];

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
