import type { Cookies, RequestEvent } from '@sveltejs/kit';
import { addressOf, letIn } from './admit.ts';
import { isPassphrase } from './passphrase.ts';

/** What became of a passphrase that was typed in. */
export type SignIn =
  | { readonly outcome: 'in' }
  | { readonly outcome: 'wrong' }
  /** Too many were wrong; `waitS`: seconds until another is looked at. */
  | { readonly outcome: 'later'; readonly waitS: number };

type Event = Pick<RequestEvent, 'request' | 'url' | 'locals' | 'getClientAddress'> & {
  readonly cookies: Cookies;
};

/** Looks at a passphrase and, where it is the right one, signs the browser in anew; whatever it was signed in as before ends. */
export async function signIn(event: Event, text: string): Promise<SignIn> {
  const { passphrase, attempts, sessions } = event.locals.app.access;
  const address = addressOf(event);
  const waitS = attempts.begin(address);
  if (waitS !== undefined) return { outcome: 'later', waitS };
  const stored = await passphrase.stored();
  if (stored && !(await isPassphrase(stored, text))) return { outcome: 'wrong' };
  attempts.succeeded(address);
  if (event.locals.session) await sessions.end(event.locals.session.tokenHash);
  if (stored) letIn(event.cookies, event.url, await sessions.start(stored.id));
  return { outcome: 'in' };
}
