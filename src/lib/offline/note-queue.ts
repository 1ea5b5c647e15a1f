/*
 * Notes taken on the trail, from the tap to the ledger. A note waits; while it is on its way it cannot be undone, as the server may
 * have it already; it stays on its way until the server has answered, being sent again with the same id; then it is entered, or a
 * conflict that stays in view until somebody puts it away.
 */
import type { TrailNote, TrailNoteResult } from '../planning/model/trail-note.ts';
import { VERDICT_WORDS } from '../presentation/code-words.ts';
import { friendlyAmount } from '../presentation/fractions.ts';
import { say } from '../texts/say.ts';

export type QueuedNote = {
  /** Order in which notes were taken on this device. */
  readonly seq: number;
  readonly tripId: string;
  /** Where on the card it was taken; see `placeOf`. */
  readonly place: string;
  readonly note: TrailNote;
  readonly state: 'waiting' | 'sending' | 'entered' | 'conflict';
  /** Of a conflict: why it did not fit. */
  readonly message: string;
};

/** A note as the server has it, as far as it matters here. */
export type NoteOnServer = {
  readonly id: string;
  readonly outcome: 'entered' | 'conflict';
  readonly message: string;
  readonly settledAt?: string;
};

/** Notes sent in one request. */
export const MOST_AT_ONCE = 50;

/** @returns the place of a pouch line on the card of a trip */
export const placeOf = (day: number, meal: string, code: string): string => `${day} ${meal} ${code}`;

export const isUnsent = ({ state }: QueuedNote): boolean => state === 'waiting' || state === 'sending';
export const mayBeUndone = ({ state }: QueuedNote): boolean => state === 'waiting';

/** @returns the notes to send next, as they were taken: the oldest unsent one and those of its trip, at most so many */
export function nextBatch(queue: readonly QueuedNote[], most = MOST_AT_ONCE): QueuedNote[] {
  const unsent = queue.filter(isUnsent).sort((a, b) => a.seq - b.seq);
  return unsent.filter(({ tripId }) => tripId === unsent[0]?.tripId).slice(0, most);
}

/**
 * What the server's answer makes of the notes that were sent. One that it says nothing about stays unsent.
 *
 * @param stored what the server has of the trip, needed where it knew a note: its first answer was lost, and may have been a conflict
 */
export function settled(
  sent: readonly QueuedNote[],
  results: readonly TrailNoteResult[],
  stored: readonly NoteOnServer[] = [],
): QueuedNote[] {
  return sent.map((queued) => {
    const result = results.find(({ id }) => id === queued.note.id);
    if (!result) return queued;
    const before = stored.find(({ id }) => id === queued.note.id);
    const isConflict =
      result.outcome === 'conflict' ||
      (result.outcome === 'known' && before?.outcome === 'conflict' && before.settledAt === undefined);
    return isConflict
      ? { ...queued, state: 'conflict', message: result.message ?? before?.message ?? '' }
      : { ...queued, state: 'entered', message: '' };
  });
}

/** @returns what was entered longest ago, beyond so many: it is in the ledger, and nobody looks for it here */
export function surplus(queue: readonly QueuedNote[], most = 500): QueuedNote[] {
  const entered = queue.filter(({ state }) => state === 'entered').sort((a, b) => b.seq - a.seq);
  return entered.slice(most);
}

const FIRST_RETRY_MS = 5000;
const LAST_RETRY_MS = 5 * 60_000;

/** @param failures in a row, at least 1 @returns how long to wait before the next try, doubling up to five minutes */
export const retryDelayMs = (failures: number): number =>
  Math.min(FIRST_RETRY_MS * 2 ** (failures - 1), LAST_RETRY_MS);

/** @returns servings to choose from for what was left over of a line: halves up to what it holds, at most so many choices */
export function leftOverChoices(servings: number, most = 6): number[] {
  const halves = Math.max(1, Math.min(most, Math.floor(servings * 2 + 1e-9)));
  return Array.from({ length: halves }, (_, index) => (index + 1) / 2);
}

/** @returns a note in words: "1 pouch eaten", "1/2 serving left over" */
export function noteWords({ kind, pouches, servings = 0 }: TrailNote): string {
  switch (kind) {
    case 'eaten':
      return say('{pouches, plural, one {# pouch} other {# pouches}} eaten', { pouches });
    case 'brought home':
      return say('{pouches, plural, one {# pouch} other {# pouches}} brought home', { pouches });
    case 'bought':
      return say('{pouches, plural, one {# bag} other {# bags}} bought', { pouches });
    case 'bought, label read':
      return say('{pouches, plural, one {# bag} other {# bags}} bought, label read', { pouches });
    case 'liked':
    case 'not liked':
    case 'too wet':
    case 'too dry':
    case 'too little':
    case 'too much':
      return say(VERDICT_WORDS[kind]);
    case 'left over': {
      const amount = friendlyAmount(servings);
      return servings <= 1
        ? say('{amount} serving left over', { amount })
        : say('{amount} servings left over', { amount });
    }
  }
}
