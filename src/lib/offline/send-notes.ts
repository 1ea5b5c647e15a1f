import type { TrailNoteResult } from '../planning/model/trail-note.ts';
import { say } from '../texts/say.ts';
import { isUnsent, settled, type NoteOnServer, type QueuedNote } from './note-queue.ts';
import { putNotes, takeBatch } from './note-store.ts';

/** Answers that will not change by sending the same again: the note itself is refused. */
const REFUSED = [400, 404, 409, 413, 422];

const SIGNED_OUT = 401;

/** Why notes could not be sent, for the user. They are kept, and can be sent later. */
export class NotSent extends Error {
  override readonly name = 'NotSent';
}

/**
 * Sends every unsent note of this device in order. Two windows never send at a time, where the browser lets them agree on it; where
 * not, a note that is sent twice is entered once all the same.
 *
 * @param changed called whenever the state of notes has changed
 * @throws NotSent where the server cannot be reached or fails
 */
export async function sendNotes(changed: () => Promise<void>): Promise<void> {
  const all = async () => {
    while (await sendBatch(changed));
    await changed(); // another window may have sent some
  };
  await (navigator.locks ? navigator.locks.request('send-trail-notes', all) : all());
}

/** @returns whether there was anything to send */
async function sendBatch(changed: () => Promise<void>): Promise<boolean> {
  // Asked before notes go on their way, so that without a server they can still be undone.
  await read(await ask('/_app/version.json', { cache: 'no-store' }));
  const batch = await takeBatch();
  if (batch.length === 0) return false;
  await changed();
  const answered = await deliver(batch);
  if (answered.every(isUnsent)) throw new NotSent(say('The server did not mention them.'));
  await putNotes(answered);
  await changed();
  return true;
}

async function deliver(batch: readonly QueuedNote[]): Promise<QueuedNote[]> {
  const [{ tripId } = { tripId: '' }] = batch;
  const address = `/trips/${tripId}/notes.json`;
  const response = await ask(
    address,
    {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ notes: batch.map(({ note }) => note) }),
    },
    REFUSED,
  );
  if (!response.ok) {
    const message = await refusal(response);
    const [first, ...others] = batch;
    // One bad note must not hold up the others: the first alone shows whether it is the one.
    if (others.length === 0 || !first)
      return batch.map((queued) => ({ ...queued, state: 'conflict', message }));
    return deliver([first]);
  }
  const { results } = await read<{ results: TrailNoteResult[] }>(response);
  if (!results.some(({ outcome }) => outcome === 'known')) return settled(batch, results);
  const { notes } = await read<{ notes: NoteOnServer[] }>(await ask(address));
  return settled(batch, results, notes);
}

/** @throws NotSent where there is no good answer, nor one of the statuses that are expected */
async function ask(address: string, init?: RequestInit, expected: readonly number[] = []): Promise<Response> {
  const response = await fetch(address, init).catch(() => undefined);
  if (!response) throw new NotSent(say('There is no connection.'));
  if (response.status === SIGNED_OUT)
    throw new NotSent(say('This device is not signed in any more. Sign in at /sign-in, and they are sent.'));
  if (!response.ok && !expected.includes(response.status))
    throw new NotSent(
      say('The server cannot accept them right now ({status}).', { status: response.status }),
    );
  return response;
}

/** @throws NotSent where it is no JSON: somebody else answered, such as the sign-in page of a network */
function read<Answer>(response: Response): Promise<Answer> {
  return response.json().catch(() => {
    throw new NotSent(say('Something other than the server answered; this network may want you to sign in.'));
  });
}

async function refusal(response: Response): Promise<string> {
  const answer = (await response.json().catch(() => ({}))) as {
    message?: string;
    problems?: { field: string; message: string }[];
  };
  const why =
    answer.message ?? answer.problems?.map(({ field, message }) => `${field} ${message}`).join('; ') ?? '';
  const { status } = response;
  return why
    ? say('The server refused it ({status}): {why}', { status, why })
    : say('The server refused it ({status})', { status });
}
