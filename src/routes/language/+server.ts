import { pathWithin } from '$lib/server/access/own-origin';
import { LANGUAGE_COOKIE } from '$lib/server/language-of-request';
import { isLanguage, say } from '$lib/texts/say';
import { error, redirect } from '@sveltejs/kit';
import type { RequestHandler } from './$types';

const A_YEAR_S = 365 * 24 * 3600;

/** Keeps the language `to` in this browser and goes back to the page `from`. */
export const GET: RequestHandler = ({ url, cookies }) => {
  const to = url.searchParams.get('to');
  if (!isLanguage(to))
    error(400, say('That language is not available. Go back and choose one from the list.'));
  cookies.set(LANGUAGE_COOKIE, to, { path: '/', maxAge: A_YEAR_S, sameSite: 'lax', secure: false });
  redirect(303, pathWithin(url.searchParams.get('from') ?? undefined, url.origin));
};
