import { isLanguage, useCatalog, useLanguage } from '$lib/texts/say';
import type { ClientInit } from '@sveltejs/kit';

/*
 * zod tries whether it may make functions from text, and the content security policy reports the try. It reads this before it tries. Set by
 * name, not by zod's own function: that would load zod on pages that do without it.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

/** The page says in which language it is; texts of another than English are loaded before anything is shown by script. */
export const init: ClientInit = async () => {
  const { lang } = document.documentElement;
  if (!isLanguage(lang) || lang === 'en') return;
  useCatalog(lang, (await import('$lib/texts/de')).german);
  useLanguage(() => lang);
};
