import { text, type Text } from '$lib/texts/say';
import type { Stage } from '../ledger-kinds.ts';

/** How far a trip has come, as the lists say it. */
export const STAGE_WORDS: Readonly<Record<Stage, Text>> = {
  open: text('nothing set aside yet'),
  'set aside': text('set aside'),
  packed: text('packed'),
  finished: text('finished'),
};
