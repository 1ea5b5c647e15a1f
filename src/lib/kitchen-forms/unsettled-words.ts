import type { Unsettled } from '$lib/recipe-text/read-line.ts';
import { text, type Text } from '$lib/texts/say.ts';

/** Why a line is left, as it is said beside it. */
export const UNSETTLED_WORDS: Readonly<Record<Unsettled, Text>> = {
  'food unknown': text('Not understood. Choose a food, or change the line.'),
  'food unsure': text('Not sure which food. Choose one, or change the line.'),
  'no amount': text('No amount. Enter the grams.'),
  'weight unknown': text('Weight of this amount not known. Enter the grams.'),
};
