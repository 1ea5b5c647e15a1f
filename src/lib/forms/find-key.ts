import type { Cookies } from '@sveltejs/kit';

/** Leads to the search field of the head, together with the keys that a browser asks for with access keys. */
export const FIND_KEY = 'k';

/** The cookie of a browser in which the key is switched off. */
const COOKIE = 'find-key';
const OFF = 'off';
const A_YEAR_S = 365 * 24 * 3600;

/** @returns the access key of the search field; `undefined` where it is switched off in this browser */
export const findKeyOf = (cookies: Pick<Cookies, 'get'>): string | undefined =>
  cookies.get(COOKIE) === OFF ? undefined : FIND_KEY;

export function switchFindKey(cookies: Cookies, isOn: boolean): void {
  if (isOn) cookies.delete(COOKIE, { path: '/', secure: false });
  else cookies.set(COOKIE, OFF, { path: '/', maxAge: A_YEAR_S, sameSite: 'lax', secure: false });
}
