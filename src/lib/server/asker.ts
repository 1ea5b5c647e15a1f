import { AsyncLocalStorage } from 'node:async_hooks';
import { say } from '../texts/say.ts';
import { UserError } from './errors.ts';

/** Who waits for some work. */
export type Asker = {
  /** Aborted when nobody waits for it any more. */
  readonly signal?: AbortSignal | undefined;
  /** Comes before what waits, as the owner at this machine does. */
  readonly first?: boolean | undefined;
};

/** As much of a socket as is listened to. */
type Connection = {
  readonly destroyed: boolean;
  once(event: 'close', heard: () => void): unknown;
  off(event: 'close', heard: () => void): unknown;
};

const asking = new AsyncLocalStorage<Asker>();

/** @returns for whom the work around is done; nobody in particular outside of requests */
export const asker = (): Asker => asking.getStore() ?? {};

/**
 * Does work, and all that it waits for, for whoever sent a request.
 *
 * @param socket that the request came by; when it closes, whoever asked has gone. The signal of SvelteKit's request tells that only while a body is being sent
 */
export async function askedBy<Result>(
  socket: Connection | undefined,
  first: boolean,
  work: () => Promise<Result>,
): Promise<Result> {
  const gone = new AbortController();
  const onClose = () =>
    gone.abort(new UserError('Busy', say('The page that asked for this was left, so it was ended.')));
  if (socket?.destroyed) onClose();
  socket?.once('close', onClose);
  try {
    return await asking.run({ signal: gone.signal, first }, work);
  } finally {
    socket?.off('close', onClose);
  }
}
