import { say, text } from '../../texts/say.ts';

export const DIET_LIST = [
  { code: 'vegetarian', label: text('vegetarian'), alsoMeets: ['no-pork', 'no-beef'] },
  { code: 'vegan', label: text('vegan'), alsoMeets: ['vegetarian', 'no-pork', 'no-beef'] },
  { code: 'no-pork', label: text('no pork'), alsoMeets: [] },
  { code: 'no-beef', label: text('no beef'), alsoMeets: [] },
  { code: 'no-alcohol', label: text('no alcohol'), alsoMeets: [] },
  { code: 'halal', label: text('halal (according to the cook)'), alsoMeets: ['no-pork', 'no-alcohol'] },
  { code: 'kosher', label: text('kosher (according to the cook)'), alsoMeets: ['no-pork'] },
] as const;

export const DIETS = DIET_LIST.map((entry) => entry.code);
export type Diet = (typeof DIETS)[number];

export function dietLabel(code: Diet): string {
  const entry = DIET_LIST.find((other) => other.code === code);
  return entry ? say(entry.label) : code;
}

/** All diets that food with these notes meets: what is vegan is vegetarian too. */
export function dietsMet(notes: readonly Diet[]): ReadonlySet<Diet> {
  const met = new Set<Diet>(notes);
  for (const { code, alsoMeets } of DIET_LIST)
    if (notes.includes(code)) alsoMeets.forEach((diet) => met.add(diet));
  return met;
}
