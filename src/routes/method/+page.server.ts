import original from '../../../docs/method.md?raw';
import { readMarkdown, withIdsOf, type Block } from '$lib/prose/read-markdown.ts';
import { markdownInAmerican } from '$lib/texts/american';
import { language, type Language } from '$lib/texts/languages';
import type { PageServerLoad } from './$types';

/** A page to read: it needs no scripts, and its words are not sent twice. */
export const csr = false;

const TRANSLATIONS = import.meta.glob<string>('../../../docs/method.*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const english = readMarkdown(original);
const read = new Map<Language, readonly Block[] | undefined>();

/** @returns the method in a language; `undefined` where nobody has written it yet */
function methodIn(spoken: Language): readonly Block[] | undefined {
  if (spoken === 'en') return english;
  if (!read.has(spoken)) {
    const markdown =
      spoken === 'en-US'
        ? markdownInAmerican(original)
        : Object.entries(TRANSLATIONS).find(([path]) => path.endsWith(`.${spoken}.md`))?.[1];
    read.set(spoken, markdown === undefined ? undefined : withIdsOf(english, readMarkdown(markdown)));
  }
  return read.get(spoken);
}

export const load = (() => {
  const translated = methodIn(language());
  const [, ...blocks] = translated ?? english;
  const parts = blocks.flatMap((block) =>
    block.kind === 'heading' && block.depth === 2 ? [{ id: block.id, title: block.title }] : [],
  );
  return { blocks, parts, lang: translated ? language() : 'en' };
}) satisfies PageServerLoad;
