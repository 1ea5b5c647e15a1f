import { AsyncLocalStorage } from 'node:async_hooks';
import Negotiator from 'negotiator';
import { useAllCatalogs } from '../texts/catalogs.ts';
import { ALL_LANGUAGES, isLanguage, useLanguage, type Language } from '../texts/languages.ts';

/** The cookie with the language that somebody chose in this browser. */
export const LANGUAGE_COOKIE = 'language';

const spoken = new AsyncLocalStorage<Language>();
useLanguage(() => spoken.getStore() ?? 'en');
useAllCatalogs();

/** @returns the language chosen, else the one that the browser asks for and the program has, else English. */
export function languageOf(request: Request, chosen: string | undefined): Language {
  if (isLanguage(chosen)) return chosen;
  const headers = { 'accept-language': request.headers.get('accept-language') ?? 'en' };
  const asked = new Negotiator({ headers }).language([...ALL_LANGUAGES]);
  return isLanguage(asked) ? asked : 'en';
}

/** Runs work in a language, with all that it waits for. */
export function speaking<Result>(language: Language, work: () => Result): Result {
  return spoken.run(language, work);
}
