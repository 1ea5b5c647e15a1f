export const DIET_LIST = [
  { code: 'vegetarian', alsoMeets: ['no-pork', 'no-beef'] },
  { code: 'vegan', alsoMeets: ['vegetarian', 'no-pork', 'no-beef'] },
  { code: 'no-pork', alsoMeets: [] },
  { code: 'no-beef', alsoMeets: [] },
  { code: 'no-alcohol', alsoMeets: [] },
  { code: 'halal', alsoMeets: ['no-pork', 'no-alcohol'] },
  { code: 'kosher', alsoMeets: ['no-pork'] },
] as const;

export const DIETS = DIET_LIST.map((entry) => entry.code);
export type Diet = (typeof DIETS)[number];

/** All diets that food with these notes meets: what is vegan is vegetarian too. */
export function dietsMet(notes: readonly Diet[]): ReadonlySet<Diet> {
  const met = new Set<Diet>(notes);
  for (const { code, alsoMeets } of DIET_LIST)
    if (notes.includes(code)) alsoMeets.forEach((diet) => met.add(diet));
  return met;
}
