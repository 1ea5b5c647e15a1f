import { beforeAll, expect, it } from 'vitest';
import { checkTexts, type TextProblems } from './check-texts.ts';
import { ROOT } from './run.ts';

let found: TextProblems;
beforeAll(async () => {
  found = await checkTexts(ROOT);
});

it('every text has a translation in every language', () => {
  expect(Object.keys(found.missing)).toEqual(['de', 'fr']);
  for (const texts of Object.values(found.missing)) expect(texts).toEqual([]);
});

it('translations name the values and tags of their texts, stand once, and are said somewhere', () => {
  expect(found.wrong).toEqual([]);
});

it('no word of the markup stands there unsaid', () => {
  expect(found.looseInMarkup).toEqual([]);
});
