import { expect, test } from 'vitest';
import { lotKeys, searchWords } from './lot-keys.ts';

const codeKey = (code: string) => lotKeys({ code, recipe: '', note: '' }).codeKey;

test('numbers sort as people count, whatever zeros stand before them', () => {
  const codes = ['b-2', 'B-10', 'b-010a', 'B-9', 'a-999', 'a-1000', 'Ä-5', '7', '0'];
  expect(codes.toSorted((a, b) => (codeKey(a) < codeKey(b) ? -1 : 1))).toEqual([
    ...['0', '7', 'Ä-5', 'a-999', 'a-1000', 'b-2', 'B-9', 'B-10', 'b-010a'],
  ]);
  expect(codeKey('B-007')).toBe(codeKey('b-7'));
});

test('words are looked for without regard to case and accents, in code, recipe and note', () => {
  const { searchKey } = lotKeys({ code: 'L-7', recipe: 'Crème of leek', note: 'Less SALT' });
  const finds = (search: string) => searchWords(search).every((word) => searchKey.includes(word));
  expect(finds(' creme  l-7\tsalt')).toBe(true);
  expect(finds('creme pepper')).toBe(false);
  expect(searchWords(' \0 ')).toEqual([]);
});
