import type { PortionNote, Recipe } from '../model/recipe.ts';

/** How much a note moves the size of a serving, as a share of it (common practice: a few spoons). */
const MOVES: Readonly<Record<PortionNote['finding'], number>> = {
  'too little': 0.1,
  right: 0,
  'too much': -0.1,
};
const LEAST_SIZE = 0.5;
const MOST_SIZE = 2;

export type ServingSize = {
  /** Times the serving of the recipe as it was entered. */
  readonly size: number;
  /** Each note with the size after it. */
  readonly history: readonly (PortionNote & { readonly sizeAfter: number })[];
};

/**
 * How large a serving of a recipe has become by what was said of it, where 1 is as it was entered.
 *
 * @example servingSizeOf({ portionNotes: [{ date: '2026-08-01', finding: 'too little', note: '' }] }).size // 1.1
 */
export function servingSizeOf({ portionNotes = [] }: Pick<Recipe, 'portionNotes'>): ServingSize {
  let size = 1;
  const history = portionNotes.map((note) => {
    size = Math.min(MOST_SIZE, Math.max(LEAST_SIZE, size * (1 + MOVES[note.finding])));
    return { ...note, sizeAfter: size };
  });
  return { size, history };
}

/** @returns servings that one cooking gives: fewer than was entered where they were not enough. */
export const servingsNow = (recipe: Pick<Recipe, 'servings' | 'portionNotes'>): number =>
  recipe.servings / servingSizeOf(recipe).size;
