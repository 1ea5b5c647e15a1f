import { describe, expect, test } from 'vitest';
import type { TrailNote, TrailNoteResult } from '../planning/model/trail-note.ts';
import {
  isUnsent,
  leftOverChoices,
  mayBeUndone,
  nextBatch,
  noteWords,
  retryDelayMs,
  settled,
  surplus,
  type QueuedNote,
} from './note-queue.ts';

const NOTE: TrailNote = {
  id: 'n',
  at: '2026-07-05T18:30:00.000Z',
  kind: 'eaten',
  code: 'D01',
  pouches: 1,
  text: '',
};
const queued = (seq: number, more: Partial<QueuedNote> = {}): QueuedNote => ({
  seq,
  tripId: 'ridge',
  place: '1 dinner D01',
  note: { ...NOTE, id: `n${seq}` },
  state: 'waiting',
  message: '',
  ...more,
});
const seqs = (notes: readonly QueuedNote[]) => notes.map(({ seq }) => seq);

describe('what is sent next', () => {
  test('is what waits and what was not answered, in the order of the taps', () => {
    const queue = [
      queued(4),
      queued(2, { state: 'entered' }),
      queued(3, { state: 'sending' }),
      queued(1, { state: 'conflict' }),
      queued(5),
    ];
    expect(seqs(nextBatch(queue))).toEqual([3, 4, 5]);
    expect(seqs(queue.filter(mayBeUndone))).toEqual([4, 5]);
  });

  test('goes trip by trip, the one with the oldest note first', () => {
    const queue = [queued(1, { tripId: 'coast' }), queued(2), queued(3, { tripId: 'coast' })];
    expect(seqs(nextBatch(queue))).toEqual([1, 3]);
    expect(seqs(nextBatch(queue.filter(({ tripId }) => tripId !== 'coast')))).toEqual([2]);
  });

  test('is at most so much, from the oldest on', () => {
    const queue = Array.from({ length: 7 }, (_, index) => queued(7 - index));
    expect(seqs(nextBatch(queue, 3))).toEqual([1, 2, 3]);
  });

  test('is nothing where all is answered', () =>
    expect(nextBatch([queued(1, { state: 'entered' }), queued(2, { state: 'conflict' })])).toEqual([]));
});

describe('what the answer makes of the notes', () => {
  const sent = [1, 2, 3].map((seq) => queued(seq, { state: 'sending' }));
  const results: TrailNoteResult[] = [
    { id: 'n3', outcome: 'known' },
    { id: 'n2', outcome: 'conflict', message: 'only 1 is left' },
    { id: 'n1', outcome: 'entered' },
  ];
  const states = (notes: readonly QueuedNote[]) => notes.map(({ state, message }) => [state, message]);

  test('each by its id', () =>
    expect(states(settled(sent, results))).toEqual([
      ['entered', ''],
      ['conflict', 'only 1 is left'],
      ['entered', ''],
    ]));

  test('none is lost where the answer leaves one out', () => {
    const after = settled(sent, results.slice(1));
    expect(after).toHaveLength(3);
    expect(seqs(nextBatch(after))).toEqual([3]);
  });

  test('a conflict whose first answer was lost is a conflict still, unless somebody settled it', () => {
    const before = { id: 'n3', outcome: 'conflict', message: 'none was packed' } as const;
    expect(states(settled(sent, results, [before]))[2]).toEqual(['conflict', 'none was packed']);
    const dealtWith = { ...before, settledAt: '2026-07-09T08:00:00Z' };
    expect(states(settled(sent, results, [dealtWith]))[2]).toEqual(['entered', '']);
  });

  test('sending all once more changes nothing that was answered', () => {
    const after = settled(sent, results);
    expect(nextBatch(after)).toEqual([]);
    expect(after.filter(isUnsent)).toEqual([]);
  });
});

test('of what is entered only the last are kept, of what is not, all', () => {
  const queue = [
    ...[1, 2, 3, 4].map((seq) => queued(seq, { state: 'entered' })),
    queued(5),
    queued(6, { state: 'conflict' }),
    queued(7, { state: 'sending' }),
  ];
  expect(seqs(surplus(queue, 3))).toEqual([1]);
  expect(seqs(surplus(queue, 0))).toEqual([4, 3, 2, 1]);
});

test('tries again after 5 s, then ever later, at least every five minutes', () => {
  expect([1, 2, 3, 4].map(retryDelayMs)).toEqual([5000, 10_000, 20_000, 40_000]);
  expect(retryDelayMs(7)).toBe(300_000);
  expect(retryDelayMs(2000)).toBe(300_000);
});

test('left over is chosen in halves up to what the line holds', () => {
  expect(leftOverChoices(2)).toEqual([0.5, 1, 1.5, 2]);
  expect(leftOverChoices(1.3)).toEqual([0.5, 1]);
  expect(leftOverChoices(0.2)).toEqual([0.5]);
  expect(leftOverChoices(40)).toEqual([0.5, 1, 1.5, 2, 2.5, 3]);
});

test.each([
  [{ kind: 'eaten', pouches: 1 }, '1 pouch eaten'],
  [{ kind: 'brought home', pouches: 2 }, '2 pouches brought home'],
  [{ kind: 'left over', servings: 0.5 }, '1/2 serving left over'],
  [{ kind: 'left over', servings: 1.5 }, '1 1/2 servings left over'],
] as const)('%o in words', (note, words) => expect(noteWords({ ...NOTE, ...note })).toBe(words));
