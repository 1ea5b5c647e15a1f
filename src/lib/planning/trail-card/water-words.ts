import type { WaterKind } from '../model/words.ts';

/** What to pour on, in the words of whoever stands at the stove. */
export const WATER_WORDS: Readonly<Record<WaterKind, string>> = {
  boiling: 'boiling water',
  hot: 'hot water, below the boil',
  cold: 'cold, safe water',
  none: '',
};
