import { isIP } from 'node:net';

/** Under which names the program may be asked. */
export type KnownNames = {
  /** Names of this machine in the network, such as `larder.local`, with a port where it is another than the program's. */
  readonly names: readonly string[];
  /** The origin of a proxy with TLS in front, `https://…`. */
  readonly behind?: string | undefined;
};

/** Where a connection arrived. */
export type Arrival = { readonly address: string; readonly port: number };

/** @returns an address of IPv4 that came as one of IPv6 as what it is */
export const bareAddress = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, '');

/** @returns whether only this machine reaches an address. @param address IPv4 or IPv6 */
export function isLoopbackAddress(address: string): boolean {
  return /^127\./.test(bareAddress(address)) || address === '::1';
}

/** @returns how an address stands in a Host header */
export function hostOf({ address, port }: Arrival): string {
  const bare = bareAddress(address);
  return new URL(`http://${isIP(bare) === 6 ? `[${bare}]` : bare}:${port}`).host;
}

/**
 * A foreign name that leads to this machine must not reach the program: the page that it belongs to could read everything (DNS
 * rebinding). An address cannot be bent that way, so the one at which the connection arrived is always known.
 *
 * @param host the Host header
 * @returns the origin that was asked, or `undefined` where it is none of ours
 */
export function originAsked(
  host: string | undefined,
  arrival: Arrival,
  { names, behind }: KnownNames,
): string | undefined {
  const asked = host?.toLowerCase();
  if (asked === undefined) return undefined;
  if (behind !== undefined && asked === new URL(behind).host) return behind;
  const known = [hostOf(arrival), ...names.flatMap((name) => [name, `${name}:${arrival.port}`])];
  return known.includes(asked) ? `http://${asked}` : undefined;
}

/** @returns whether this is the name by which a machine calls itself, which is answered with the way to its address */
export const isLocalhost = (host: string | undefined, { address, port }: Arrival): boolean =>
  isLoopbackAddress(address) && host?.toLowerCase() === new URL(`http://localhost:${port}`).host;

/**
 * A page of another site can send a request here, but a browser then says where it came from (CSRF).
 *
 * @param origin the origin that was asked
 * @param silent what is answered where the request says nothing about it, as other programs than browsers do
 */
export function cameFromHere(headers: Headers, origin: string, silent = false): boolean {
  const stated = headers.get('origin');
  if (stated !== null) return stated === origin;
  const site = headers.get('sec-fetch-site');
  if (site !== null) return site === 'same-origin';
  const referer = headers.get('referer');
  return referer === null ? silent : URL.parse(referer)?.origin === origin;
}

/**
 * A page of another site may lead here, and a browser then asks for a whole page. Whatever else it asks for in the name of that page, such as a picture, a script or
 * a frame, could only be weighed or timed by it, and costs work.
 */
export function isTakenElsewhere(headers: Readonly<Record<string, string | string[] | undefined>>): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== 'cross-site' && site !== 'same-site') return false;
  return headers['sec-fetch-mode'] !== 'navigate' || headers['sec-fetch-dest'] !== 'document';
}

/**
 * @param path where somebody was, or wanted to go before they had to sign in
 * @returns it where it is a page of ours, else the first page; an address of another site is never gone to
 */
export function pathWithin(path: string | undefined, origin: string): string {
  const url = path?.startsWith('/') ? URL.parse(path, origin) : null;
  if (url?.origin !== origin || url.pathname.startsWith('//')) return '/';
  return url.pathname + url.search;
}
