import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readMarkdown } from './read-markdown.ts';

test('words keep what they are', () => {
  expect(readMarkdown('A **bold _and slanted_** `a < b` & [there](#x) \\*.')).toEqual([
    {
      kind: 'paragraph',
      spans: [
        { kind: 'text', text: 'A ' },
        {
          kind: 'strong',
          spans: [
            { kind: 'text', text: 'bold ' },
            { kind: 'em', spans: [{ kind: 'text', text: 'and slanted' }] },
          ],
        },
        { kind: 'text', text: ' ' },
        { kind: 'code', text: 'a < b' },
        { kind: 'text', text: ' & ' },
        { kind: 'link', href: '#x', spans: [{ kind: 'text', text: 'there' }] },
        { kind: 'text', text: ' ' },
        { kind: 'text', text: '*' },
        { kind: 'text', text: '.' },
      ],
    },
  ]);
});

test('a file beside the document is named, since no page opens it', () => {
  expect(readMarkdown('[more](more.md)')).toEqual([
    {
      kind: 'paragraph',
      spans: [
        { kind: 'text', text: 'more' },
        { kind: 'text', text: ' (' },
        { kind: 'code', text: 'more.md' },
        { kind: 'text', text: ')' },
      ],
    },
  ]);
});

test('headings have ids of their words, each its own', () => {
  const ids = readMarkdown('# Water (`hydration/`)\n\n## Menü & more\n\n## Water').map((block) =>
    block.kind === 'heading' ? block.id : block.kind,
  );
  expect(ids).toEqual(['water', 'menü-more', 'water-2']);
});

test('lists in lists, tables, code', () => {
  expect(readMarkdown('1. one\n   - two\n\n| a | b |\n| - | -: |\n| c | 1 |\n\n    code <b>')).toEqual([
    {
      kind: 'list',
      isOrdered: true,
      items: [
        [
          { kind: 'paragraph', spans: [{ kind: 'text', text: 'one' }] },
          {
            kind: 'list',
            isOrdered: false,
            items: [[{ kind: 'paragraph', spans: [{ kind: 'text', text: 'two' }] }]],
          },
        ],
      ],
    },
    {
      kind: 'table',
      name: 'a, b',
      head: [
        { spans: [{ kind: 'text', text: 'a' }], isNumber: false },
        { spans: [{ kind: 'text', text: 'b' }], isNumber: true },
      ],
      rows: [
        [
          { spans: [{ kind: 'text', text: 'c' }], isNumber: false },
          { spans: [{ kind: 'text', text: '1' }], isNumber: true },
        ],
      ],
    },
    { kind: 'code', text: 'code <b>' },
  ]);
});

test('HTML is refused', () => {
  expect(() => readMarkdown('<script>x</script>')).toThrow(/cannot be shown/);
  expect(() => readMarkdown('a <b>b</b>')).toThrow(/cannot be shown/);
});

test('the method can be shown', () => {
  const blocks = readMarkdown(readFileSync(new URL('../../../docs/method.md', import.meta.url), 'utf8'));
  expect(blocks[0]).toMatchObject({ kind: 'heading', depth: 1, id: 'method' });
  expect(blocks).toContainEqual(
    expect.objectContaining({ kind: 'heading', depth: 2, title: 'Menu', id: 'menu' }),
  );
});
