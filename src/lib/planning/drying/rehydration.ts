import type { ProcessFigures } from '../model/kitchen.ts';
import type { Recipe, WaterFinding, WaterNote } from '../model/recipe.ts';

/** How much a note moves the water, as a share of it (common practice: a serving is off by a spoon or by a good gulp). */
const MOVES: Readonly<Record<WaterFinding, number>> = {
  'much liquid left': -0.15,
  'some liquid left': -0.07,
  'just right': 0,
  'a little dry': 0.07,
  'too dry': 0.15,
};
const LEAST_SHARE = 0.1;
const MOST_SHARE = 2;

export type WaterShare = {
  /** Water to add over water removed. */
  readonly share: number;
  readonly startShare: number;
  /** Each note with the share after it. */
  readonly history: readonly (WaterNote & { readonly shareAfter: number })[];
};

/**
 * The water that a recipe wants back, as a share of what drying took: a start, moved by every note of how it turned out.
 */
export function waterShareOf(
  { waterShare, waterNotes }: Pick<Recipe, 'waterShare' | 'waterNotes'>,
  figures: ProcessFigures,
): WaterShare {
  const startShare = waterShare ?? figures.waterShare;
  let share = startShare;
  const history = waterNotes.map((note) => {
    share = Math.min(MOST_SHARE, Math.max(LEAST_SHARE, share * (1 + MOVES[note.finding])));
    return { ...note, shareAfter: share };
  });
  return { share, startShare, history };
}

/** Water to add, ml, for the water removed, g: one gram of water is one millilitre. */
export const waterToAddMl = (removedG: number, share: number): number => Math.max(0, removedG) * share;
