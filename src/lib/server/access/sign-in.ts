import type { Cookies, RequestEvent } from '@sveltejs/kit';
import { addressOf, isFromHere, letIn, markDevice, markOf } from './admit.ts';
import { networkOf, type Asker, type Attempt } from './attempt-limit.ts';
import { deviceOf } from './known-device.ts';
import { isPassphrase, type StoredPassphrase } from './passphrase.ts';

type Event = Pick<RequestEvent, 'request' | 'url' | 'locals' | 'getClientAddress'> & {
  readonly cookies: Cookies;
};

/**
 * Looks at a passphrase and, where it is the right one, signs the browser in anew; whatever it was signed in as before ends.
 *
 * @throws UserError `Busy` where too many try at once
 */
export async function signIn(event: Event, text: string): Promise<Attempt> {
  const { passphrase, attempts, sessions } = event.locals.app.access;
  const stored = await passphrase.stored();
  if (!stored) return { outcome: 'right' };
  const attempt = await attempts.attempt(askerOf(event, stored), () => isPassphrase(stored, text));
  if (attempt.outcome !== 'right') return attempt;
  if (event.locals.session) await sessions.end(event.locals.session.tokenHash);
  letIn(event.cookies, event.url, await sessions.start(stored.id));
  markDevice(event.cookies, event.url, stored);
  return attempt;
}

function askerOf(event: Event, stored: StoredPassphrase): Asker {
  const device = deviceOf(markOf(event.cookies, event.url), stored);
  if (device !== undefined) return { key: `device ${device}`, isStranger: false };
  if (isFromHere(event)) return { key: 'this machine', isStranger: false };
  return { key: networkOf(addressOf(event)), isStranger: true };
}
