import { expect, it } from 'vitest';
import { readability } from './plain-english.ts';

it.each([
  ['This food holds milk.', 'contains'],
  ['Somebody has to look.', 'someone'],
  ['Left empty: 3 L', 'leave blank'],
  ['{count, plural, one {the # packet} other {# packages}}', 'package'],
  ['What was stored', 'the noun'],
  [`${'word '.repeat(26)}.`, '26 words'],
])('refuses %j', (text, why) => expect(readability([text]).refused.join()).toContain(why));

it.each([
  'The pouch holds {servings} servings.',
  '{party, select, party {Group} other {{eater}}}',
  'What is short?',
  `<strong>Warning:</strong> ${'word '.repeat(26)}.`,
])('takes %j', (text) => expect(readability([text]).refused).toEqual([]));

/*
 * The opening of the Gettysburg Address (Bliss copy, 1863): one sentence of 30 words and 46 syllables by a dictionary, so grade
 * 0.39 × 30 + 11.8 × 46/30 − 15.59 = 14.2 (Kincaid, Fishburne, Rogers & Chissom 1975).
 */
it('measures words and grade', () => {
  const { sentenceTexts, averageWords, averageGrade } = readability([
    'Four score and seven years ago our fathers brought forth on this continent, a new nation, conceived in Liberty, and dedicated to the proposition that all men are created equal.',
    'Not a sentence',
  ]);
  expect([sentenceTexts, averageWords]).toEqual([1, 30]);
  expect(averageGrade).toBeGreaterThan(13.5);
  expect(averageGrade).toBeLessThan(15);
});
