import { version } from '$app/environment';
import { isLanguage, useLanguage } from '$lib/texts/languages';
import { loadTexts, TEXTS, usePageTexts } from '$lib/texts/page-texts';
import type { ClientInit } from '@sveltejs/kit';

/*
 * zod tries whether it may make functions from text, and the content security policy reports the try. It reads this before it tries. Set by
 * name, not by zod's own function: that would load zod on pages that do without it.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

/**
 * The page says in which language it is, and where its texts are. Where they cannot be had it stays as the server sent it, in its own language and with forms that
 * work.
 */
export const init: ClientInit = async () => {
  const { lang } = document.documentElement;
  if (!isLanguage(lang) || lang === 'en') return;
  useLanguage(() => lang);
  usePageTexts(version);
  const texts = document.querySelector<HTMLLinkElement>(`link[rel="preload"][href^="${TEXTS}"]`);
  if (texts) await loadTexts(new URL(texts.href).pathname);
};
