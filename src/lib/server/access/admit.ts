import { error, redirect, type Cookies, type RequestEvent } from '@sveltejs/kit';
import { KEEPING_HEADER } from '../../offline/kept-trips.ts';
import { say, text } from '../../texts/say.ts';
import { isForReading, NEEDS_PASSPHRASE, proxies } from '../reading.ts';
import { deviceOf, newMark } from './known-device.ts';
import { bareAddress, cameFromHere, isLoopbackAddress } from './own-origin.ts';
import { SET_IT, type StoredPassphrase } from './passphrase.ts';
import { homeOf, linkMay, readersMay, type Asked } from './read-scope.ts';
import { LONGEST_DAYS } from './session-repository.ts';

const READING = ['GET', 'HEAD'];
/** Reckons and keeps nothing, so that other programs may ask, which do not say where they come from. */
const CHANGES_NOTHING = '/api/plan';
/** Answered whoever asks, for reading too. */
const OF_EVERY_PAGE = ['/language', '/manifest.webmanifest'];
/** Answered whoever asks. */
const OPEN_TO_ALL = ['/sign-in', '/sign-in/link', ...OF_EVERY_PAGE];
const DAY_S = 86_400;
/** The longest that browsers keep a cookie (draft-ietf-httpbis-rfc6265bis, 5.5). */
const MARKED_DAYS = 400;
const FORWARDED = 'x-forwarded-for';

type Event = Pick<
  RequestEvent,
  'request' | 'url' | 'route' | 'params' | 'cookies' | 'isDataRequest' | 'locals' | 'setHeaders' | 'platform'
>;

/**
 * Lets a request in, to everything or for reading, as `locals` then says; or refuses it.
 *
 * @throws HttpError 401, 403, 503; Redirect to the page for signing in
 */
export async function admit(event: Event): Promise<void> {
  const { request, url, locals } = event;
  const asked: Asked = { method: request.method, route: event.route.id, tripId: event.params['id'] };
  if (
    !READING.includes(request.method) &&
    !cameFromHere(request.headers, url.origin, event.route.id === CHANGES_NOTHING)
  )
    error(
      403,
      say(
        'This was sent by a page of another address, or by a program that does not say where it comes from, so nothing was changed. Open {origin} and do it there.',
        { origin: url.origin },
      ),
    );

  const { passphrase, sessions, links } = locals.app.access;
  locals.readsOnly = true;
  if (isForReading(event.platform?.req)) {
    if (!readersMay(asked) && !OF_EVERY_PAGE.includes(event.route.id ?? '')) error(403, say(NOT_FOR_READERS));
    return;
  }

  const stored = await passphrase.stored();
  if (!stored) {
    if (process.env[NEEDS_PASSPHRASE])
      error(
        503,
        say('There is no passphrase any more, so no one can sign in from the network. Set one: {command}', {
          command: SET_IT,
        }),
      );
    locals.readsOnly = false;
    return;
  }
  // What only they may read who sign in stays in no cache of the browser.
  event.setHeaders({ 'cache-control': 'private, no-store' });
  const token = event.cookies.get(cookieName(url));
  locals.session = token === undefined ? undefined : await sessions.find(token, stored.id);
  if (locals.session) {
    locals.readsOnly = false;
    return;
  }
  locals.link = token === undefined ? undefined : await links.find(token);
  if (OPEN_TO_ALL.includes(event.route.id ?? '')) return;
  if (!locals.link) refuse(event);
  else if (event.route.id === '/') redirect(303, homeOf(locals.link));
  else if (!linkMay(locals.link, asked)) error(403, say(NOT_BY_LINK));
}

const NOT_FOR_READERS = text(
  'At this address you can only read pouches and trail cards. For anything else, use the computer that runs Ridgelarder.',
);
const NOT_BY_LINK = text(
  'Your link does not open this. Ask the person who sent it, or sign in with the passphrase at /sign-in.',
);

/** A page leads to signing in. What was sent stays in the form that it was sent from, and a copy for later is not made of another page. */
function refuse({ request, url, isDataRequest }: Event): never {
  const reads = READING.includes(request.method);
  const isPage = isDataRequest || (request.headers.get('accept') ?? '').includes('text/html');
  if (reads && isPage && !request.headers.has(KEEPING_HEADER))
    redirect(303, `/sign-in?to=${encodeURIComponent(url.pathname + url.search)}`);
  error(
    401,
    reads
      ? say('Sign in first at /sign-in.')
      : say(
          'You are signed out, so nothing was changed. Sign in at /sign-in in another window, then come back and send this again.',
        ),
  );
}

/** Behind TLS browsers hold a cookie to this very name and to TLS; without, they would not take such a name. */
const named = (name: string, { protocol }: URL): string =>
  protocol === 'https:' ? `__Host-ridgelarder-${name}` : `ridgelarder-${name}`;
const cookieName = (url: URL): string => named('access', url);
const markName = (url: URL): string => named('device', url);

const cookieOptions = ({ protocol }: URL) =>
  ({ path: '/', httpOnly: true, sameSite: 'lax', secure: protocol === 'https:' }) as const;

/** Lets a browser in with a token, until the session or link ends that it belongs to. @param seconds how long at most */
export function letIn(cookies: Cookies, url: URL, token: string, seconds = LONGEST_DAYS * DAY_S): void {
  cookies.set(cookieName(url), token, { ...cookieOptions(url), maxAge: seconds });
}

/** Takes the token away from a browser. */
export function letOut(cookies: Cookies, url: URL): void {
  cookies.delete(cookieName(url), cookieOptions(url));
}

/** @returns the mark of a browser that says it signed in before */
export const markOf = (cookies: Cookies, url: URL): string | undefined => cookies.get(markName(url));

/** Marks a browser as one that signed in; where it bears such a mark, it keeps it. */
export function markDevice(cookies: Cookies, url: URL, stored: StoredPassphrase): void {
  const mark = markOf(cookies, url);
  cookies.set(markName(url), mark !== undefined && deviceOf(mark, stored) ? mark : newMark(stored), {
    ...cookieOptions(url),
    maxAge: MARKED_DAYS * DAY_S,
  });
}

type FromWhere = Pick<RequestEvent, 'request' | 'url' | 'getClientAddress'>;

/** @returns the address that asks; what a proxy adds to what it was told is believed of a proxy on this machine, or one that `RIDGELARDER_PROXY` lists */
export function addressOf({ request, url, getClientAddress }: FromWhere): string {
  const arrived = getClientAddress();
  const isProxy =
    url.protocol === 'https:' && (isLoopbackAddress(arrived) || proxies().includes(bareAddress(arrived)));
  const told = isProxy ? request.headers.get(FORWARDED) : null;
  return told?.split(',').at(-1)?.trim() || arrived;
}

/** @returns whether somebody on this machine asks, and no proxy on it */
export const isFromHere = ({ request, url, getClientAddress }: FromWhere): boolean =>
  url.protocol === 'http:' && isLoopbackAddress(getClientAddress()) && !request.headers.has(FORWARDED);
