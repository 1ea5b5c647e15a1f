import type { Reason } from '$lib/server/backups/copy-names.ts';
import { text, type Text } from '$lib/texts/say.ts';

/** Why copies were made, in words. */
export const REASON_WORDS: Readonly<Record<Reason, Text>> = {
  daily: text('copy of the day'),
  'before-update': text('before the tables were changed by a newer version'),
  'before-restore': text('before another copy was put back'),
  'by-hand': text('made by hand'),
  uploaded: text('uploaded'),
};

/** @returns an instant in UTC, to the minute */
export const moment = (at: string): string => at.slice(0, 16).replace('T', ' ');
