/* The method says the same in each language: translations are written by hand, and nothing but this holds them to the original. */
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readMarkdown, withIdsOf, type Block, type Cell, type Span } from './read-markdown.ts';

const read = (name: string) => readFileSync(new URL(`../../../docs/${name}`, import.meta.url), 'utf8');
const original = readMarkdown(read('method.md'));

/** Names that have a point in every language: a format, a paragraph of a law, a table of a book. */
const POINTED = new Set(['1.1', '26.10', '101.9']);

const wordsOf = (spans: readonly Span[]): string =>
  spans.map((span) => ('text' in span ? span.text : wordsOf(span.spans))).join('');
const flat = (spans: readonly Span[]): readonly Span[] =>
  spans.flatMap((span) => [span, ...('spans' in span ? flat(span.spans) : [])]);
/** With their signs. */
const numbersIn = (words: string) => words.match(/(?:(?<![\p{L}\d])[-−])?\d+(?:[.,]\d+)*/gu) ?? [];

/** What no translation changes about words, in their order. */
const boneOf = (spans: readonly Span[]) => ({
  numbers: numbersIn(wordsOf(spans)).map((number) => number.replaceAll(',', '.')),
  marked: flat(spans).flatMap((span) =>
    span.kind === 'text'
      ? []
      : [span.kind === 'code' ? span.text : span.kind === 'link' ? span.href : span.kind],
  ),
});
const boneOfCell = ({ spans, isNumber }: Cell) => ({ isNumber, ...boneOf(spans) });

function skeletonOf(block: Block): unknown {
  switch (block.kind) {
    case 'heading':
      return { depth: block.depth, id: block.id, ...boneOf(block.spans) };
    case 'paragraph':
      return boneOf(block.spans);
    case 'list':
      return { isOrdered: block.isOrdered, items: block.items.map((item) => item.map(skeletonOf)) };
    case 'table':
      return { head: block.head.map(boneOfCell), rows: block.rows.map((row) => row.map(boneOfCell)) };
    case 'code':
      return block;
  }
}

/** Paragraphs, and what is read aloud of tables. */
const saidIn = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((block) => {
    if (block.kind === 'paragraph') return [wordsOf(block.spans)];
    if (block.kind === 'list') return block.items.flatMap(saidIn);
    return block.kind === 'table' ? [block.name] : [];
  });

const languages = globSync('method.*.md', { cwd: new URL('../../../docs/', import.meta.url) }).map(
  (file) => file.split('.')[1] ?? '',
);

describe.each(languages)('the method in "%s"', (language) => {
  const markdown = read(`method.${language}.md`);
  const translated = withIdsOf(original, readMarkdown(markdown));

  test('has the headings, figures, code, links and tables of the original, in the same order', () => {
    expect(translated.map(skeletonOf)).toEqual(original.map(skeletonOf));
  });

  test('leaves nothing in English', () => {
    const english = new Set(saidIn(original));
    expect(saidIn(translated).filter((words) => english.has(words))).toEqual([]);
  });

  test('writes decimals with a comma', () => {
    const numbers = numbersIn(markdown).filter((number) => !POINTED.has(number));
    expect(numbers.filter((number) => number.includes('.'))).toEqual([]);
  });
});
