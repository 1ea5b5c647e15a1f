import { say, text } from '../../texts/say.ts';

/**
 * One controlled list for the nine allergens of US law and the fourteen of EU law.
 *
 * Sources: US: FALCPA 2004 and FASTER Act 2021. EU: Regulation (EU) 1169/2011, Annex II.
 * Wheat is its own allergen in US law and one of the cereals containing gluten in EU law.
 */
export const ALLERGEN_LIST = [
  { code: 'milk', label: text('milk'), us: true, eu: true },
  { code: 'egg', label: text('egg'), us: true, eu: true },
  { code: 'fish', label: text('fish'), us: true, eu: true },
  { code: 'crustaceans', label: text('crustacean shellfish'), us: true, eu: true },
  { code: 'nuts', label: text('tree nuts'), us: true, eu: true },
  { code: 'peanut', label: text('peanut'), us: true, eu: true },
  { code: 'wheat', label: text('wheat'), us: true, eu: false },
  { code: 'soy', label: text('soy'), us: true, eu: true },
  { code: 'sesame', label: text('sesame'), us: true, eu: true },
  { code: 'gluten', label: text('cereals containing gluten'), us: false, eu: true },
  { code: 'celery', label: text('celery'), us: false, eu: true },
  { code: 'mustard', label: text('mustard'), us: false, eu: true },
  { code: 'sulphites', label: text('sulphites'), us: false, eu: true },
  { code: 'lupin', label: text('lupin'), us: false, eu: true },
  { code: 'molluscs', label: text('molluscs'), us: false, eu: true },
] as const;

export const ALLERGENS = ALLERGEN_LIST.map((entry) => entry.code);
export type Allergen = (typeof ALLERGENS)[number];

export function allergenLabel(code: Allergen): string {
  const entry = ALLERGEN_LIST.find((other) => other.code === code);
  return entry ? say(entry.label) : code;
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
