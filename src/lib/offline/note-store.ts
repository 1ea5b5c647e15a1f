import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { isUnsent, mayBeUndone, nextBatch, surplus, type QueuedNote } from './note-queue.ts';

/*
 * Where notes of the trail are kept on the device. Each change is one transaction, so that two windows of the program cannot send
 * what the other has just undone.
 */

interface Notes extends DBSchema {
  notes: { key: number; value: QueuedNote };
}

let opened: Promise<IDBPDatabase<Notes>> | undefined;

const database = (): Promise<IDBPDatabase<Notes>> =>
  (opened ??= openDB<Notes>('trail-notes', 1, {
    upgrade: (db) => void db.createObjectStore('notes', { keyPath: 'seq', autoIncrement: true }),
    terminated: () => (opened = undefined),
  }).catch((error: unknown) => {
    opened = undefined;
    throw error;
  }));

/** @returns all notes of this device, in the order of the taps */
export const allNotes = async (): Promise<QueuedNote[]> => (await database()).getAll('notes');

/** Keeps a new note; its `seq` is given here. It is on the disk when this resolves. */
export async function addNote(note: Omit<QueuedNote, 'seq'>): Promise<void> {
  const trx = (await database()).transaction('notes', 'readwrite', { durability: 'strict' });
  await Promise.all([trx.store.add(note as QueuedNote), trx.done]);
}

/** Takes a note back, unless it is on its way. */
export const undoNote = (seq: number): Promise<void> => removeIf(seq, mayBeUndone);

/** Puts an answered note away. */
export const removeAnswered = (seq: number): Promise<void> => removeIf(seq, (queued) => !isUnsent(queued));

async function removeIf(seq: number, may: (queued: QueuedNote) => boolean): Promise<void> {
  const trx = (await database()).transaction('notes', 'readwrite');
  const queued = await trx.store.get(seq);
  if (queued && may(queued)) await trx.store.delete(seq);
  await trx.done;
}

/** @returns the notes to send next; from here on they are on their way */
export async function takeBatch(): Promise<QueuedNote[]> {
  const trx = (await database()).transaction('notes', 'readwrite', { durability: 'strict' });
  const batch = nextBatch(await trx.store.getAll()).map((queued) => ({
    ...queued,
    state: 'sending' as const,
  }));
  await Promise.all([...batch.map((queued) => trx.store.put(queued)), trx.done]);
  return batch;
}

/** Keeps what became of notes. */
export async function putNotes(notes: readonly QueuedNote[]): Promise<void> {
  const trx = (await database()).transaction('notes', 'readwrite', { durability: 'strict' });
  await Promise.all(notes.map((queued) => trx.store.put(queued)));
  await Promise.all(surplus(await trx.store.getAll()).map(({ seq }) => trx.store.delete(seq)));
  await trx.done;
}
