import method from '../../../docs/method.md?raw';
import { readMarkdown } from '$lib/prose/read-markdown.ts';
import type { PageServerLoad } from './$types';

/** A page to read: it needs no scripts, and its words are not sent twice. */
export const csr = false;

const [, ...blocks] = readMarkdown(method);
const parts = blocks.flatMap((block) =>
  block.kind === 'heading' && block.depth === 2 ? [{ id: block.id, title: block.title }] : [],
);

export const load: PageServerLoad = () => ({ blocks, parts });
