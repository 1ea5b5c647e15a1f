import fc from 'fast-check';
import { expect, it } from 'vitest';
import { codeInAddress, lotHref } from './lot-href.ts';

const fromAddress = (href: string) => {
  const path = new URL(href, 'http://localhost').pathname;
  expect(path).toMatch(/^\/shelf\/[^/]+$/);
  return codeInAddress(decodeURIComponent(path.slice('/shelf/'.length)));
};

it.each([
  'A-12',
  'new',
  'import',
  'export',
  '.',
  '..',
  '~',
  '~new',
  '~~',
  '50 % off',
  'Crème 1',
  '#7',
  'a+b&c',
])('finds %j again', (code) => expect(fromAddress(lotHref(code))).toBe(code));

it('finds any code again, and none leads to a page of its own', () => {
  fc.assert(
    fc.property(
      fc.string({ minLength: 1, unit: 'grapheme' }).filter((code) => code.isWellFormed()),
      (code) => {
        expect(fromAddress(lotHref(code))).toBe(code);
      },
    ),
  );
  for (const word of ['new', 'import', 'labels', 'pictures', 'export.csv', 'lots.json'])
    expect(lotHref(word)).not.toBe(`/shelf/${word}`);
});
