/** The languages of the program, each by its own name. English is the language of the sources; every other has a folder here. */
export const LANGUAGES = {
  en: 'English (UK)',
  'en-US': 'English (US)',
  de: 'Deutsch',
  fr: 'Français',
} as const;
export type Language = keyof typeof LANGUAGES;

export const ALL_LANGUAGES = Object.keys(LANGUAGES) as readonly Language[];

/** @returns whether the program has that language. */
export const isLanguage = (value: unknown): value is Language =>
  typeof value === 'string' && Object.hasOwn(LANGUAGES, value);

/** @returns whether a language is a spelling of the English of the sources. */
export const isEnglish = (language: Language): boolean => language.startsWith('en');

let languageNow: () => Language = () => 'en';

/**
 * Sets where the language comes from: on the server the request, in a browser the page, in a thread the task. Like the locale of `Intl`, it is
 * around everything that is said instead of being handed through every function.
 */
export function useLanguage(source: () => Language): void {
  languageNow = source;
}

/** @returns the language in which things are said here and now. */
export function language(): Language {
  return languageNow();
}
