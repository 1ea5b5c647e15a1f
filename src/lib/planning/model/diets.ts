import { z } from 'zod';

export const DIET_LIST = [
  { code: 'vegetarian', label: 'vegetarian', alsoMeets: ['no-pork', 'no-beef'] },
  { code: 'vegan', label: 'vegan', alsoMeets: ['vegetarian', 'no-pork', 'no-beef'] },
  { code: 'no-pork', label: 'no pork', alsoMeets: [] },
  { code: 'no-beef', label: 'no beef', alsoMeets: [] },
  { code: 'no-alcohol', label: 'no alcohol', alsoMeets: [] },
  { code: 'halal', label: 'halal, as the cook states', alsoMeets: ['no-pork', 'no-alcohol'] },
  { code: 'kosher', label: 'kosher, as the cook states', alsoMeets: ['no-pork'] },
] as const;

export const DIETS = DIET_LIST.map((entry) => entry.code);
export const Diet = z.enum(DIETS);
export type Diet = z.infer<typeof Diet>;

export function dietLabel(code: Diet): string {
  return DIET_LIST.find((entry) => entry.code === code)?.label ?? code;
}

/** All diets that food with these notes meets: what is vegan is vegetarian too. */
export function dietsMet(notes: readonly Diet[]): ReadonlySet<Diet> {
  const met = new Set<Diet>(notes);
  for (const { code, alsoMeets } of DIET_LIST)
    if (notes.includes(code)) alsoMeets.forEach((diet) => met.add(diet));
  return met;
}
