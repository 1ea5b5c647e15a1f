import { text, type Text } from '../texts/say.ts';
import type { WaterKind } from '../planning/model/words.ts';

/** What to pour on, in the words of whoever stands at the stove. */
export const POUR_WORDS: Readonly<Record<Exclude<WaterKind, 'none'>, Text>> = {
  boiling: text('boiling water'),
  hot: text('hot water, not boiling'),
  cold: text('cold drinking water'),
};
