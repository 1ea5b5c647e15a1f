import german from '../../../docs/method.de.md?raw';
import english from '../../../docs/method.md?raw';
import { readMarkdown, withIdsOf, type Block } from '$lib/prose/read-markdown.ts';
import { language, type Language } from '$lib/texts/say';
import type { PageServerLoad } from './$types';

/** A page to read: it needs no scripts, and its words are not sent twice. */
export const csr = false;

const original = readMarkdown(english);
const METHOD: Readonly<Record<Language, readonly Block[]>> = {
  en: original,
  de: withIdsOf(original, readMarkdown(german)),
};

export const load = (() => {
  const [, ...blocks] = METHOD[language()];
  const parts = blocks.flatMap((block) =>
    block.kind === 'heading' && block.depth === 2 ? [{ id: block.id, title: block.title }] : [],
  );
  return { blocks, parts };
}) satisfies PageServerLoad;
