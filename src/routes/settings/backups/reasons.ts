import type { Reason } from '$lib/server/backups/copy-names.ts';
import { text, type Text } from '$lib/texts/say.ts';

/** Why copies were made, in words. */
export const REASON_WORDS: Readonly<Record<Reason, Text>> = {
  daily: text('daily backup'),
  'before-update': text('before an update changed the database'),
  'before-restore': text('before another backup was restored'),
  'by-hand': text('made by hand'),
  uploaded: text('uploaded'),
};

/** @returns an instant in UTC, to the minute */
export const moment = (at: string): string => at.slice(0, 16).replace('T', ' ');
