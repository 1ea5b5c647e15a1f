import type { TrailNote } from '../planning/model/trail-note.ts';
import { say } from '../texts/say.ts';
import { isUnsent, retryDelayMs, type QueuedNote } from './note-queue.ts';
import { addNote, allNotes, removeAnswered, undoNote } from './note-store.ts';
import { noted } from './noted.svelte.ts';
import { NotSent, sendNotes } from './send-notes.ts';

/** The notes of this device as pages show them, and the sending of them. */
class TrailNotes {
  #all = $state.raw<readonly QueuedNote[]>([]);
  /** Why the last try to send failed, or why nothing can be kept; empty where all is well. */
  trouble = $state('');
  #started: Promise<void> | undefined;
  #sending = false;
  #failures = 0;
  #retry: ReturnType<typeof setTimeout> | undefined;

  get all(): readonly QueuedNote[] {
    return this.#all;
  }
  get unsent(): readonly QueuedNote[] {
    return this.#all.filter(isUnsent);
  }
  get conflicts(): readonly QueuedNote[] {
    return this.#all.filter(({ state }) => state === 'conflict');
  }

  /** Reads what is kept, and sends what was not sent: once for every time the program is opened, whoever calls. */
  start(): Promise<void> {
    return (this.#started ??= this.#changing(() => Promise.resolve()).then(this.send));
  }

  /** Keeps a note, and sends it where there is a connection. */
  async add(
    tripId: string,
    place: string,
    what: Pick<TrailNote, 'kind' | 'code' | 'pouches' | 'servings'>,
  ): Promise<void> {
    const note = { ...what, id: uuid(), at: new Date().toISOString(), text: '' };
    await this.#changing(() => addNote({ tripId, place, note, state: 'waiting', message: '' }));
    void navigator.storage?.persist?.().catch(() => false); // so that the browser does not clear notes to make room
    this.#sendIn(UNDO_MS);
  }

  undo = (seq: number): Promise<void> => this.#changing(() => undoNote(seq));
  putAway = (seq: number): Promise<void> => this.#changing(() => removeAnswered(seq));

  /** Sends what waits. Where that fails, it is tried again later, and at once when the network comes back. */
  send = async (): Promise<void> => {
    if (this.#sending || this.unsent.length === 0) return;
    this.#sending = true;
    try {
      await sendNotes(this.#reread);
      this.#failures = 0;
      this.trouble = '';
    } catch (error) {
      this.#failures += 1;
      this.trouble = error instanceof NotSent ? error.message : String(error);
      this.#sendIn(retryDelayMs(this.#failures));
    } finally {
      this.#sending = false;
    }
  };

  #sendIn(ms: number): void {
    clearTimeout(this.#retry);
    this.#retry = setTimeout(() => void this.send(), ms);
  }

  #reread = async (): Promise<void> => {
    this.#all = await allNotes();
    if (this.unsent.length === 0) this.trouble = '';
    noted.remember(this.unsent.length + this.conflicts.length > 0);
  };

  async #changing(change: () => Promise<unknown>): Promise<void> {
    try {
      await change();
      await this.#reread();
    } catch (error) {
      noted.any = true;
      this.trouble = say(
        'This browser cannot store notes ({reason}). Write them down and enter them after the trip.',
        { reason: String(error) },
      );
    }
  }
}

/** A tap can be undone for this long before it is sent, even with a connection. */
const UNDO_MS = 5000;

export const trailNotes = new TrailNotes();

/** A random UUID; `crypto.randomUUID` is there on secure pages only. */
function uuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
