import { expect, test } from 'vitest';
import { amountText, sharesText } from './portion-words.ts';

test.each([
  [{ servings: 1.5 }, '1 1/2 servings'],
  [{ servings: 1 }, '1 serving'],
  [{ servings: 0.5 }, '1/2 serving'],
  [{ servings: 1, pouches: 1 }, '1 whole pouch'],
  [{ servings: 0.5, pouches: 0.5 }, 'half a pouch'],
  [{ servings: 0.75, pouches: 0.75 }, '3/4 of a pouch'],
  [{ servings: 2.4, pouches: 2 }, '2 pouches'],
  [{ servings: 0.4, pieces: 3 }, '3 pieces'],
  [{ servings: 0.1, pieces: 1 }, '1 piece'],
])('%j is %s', (amount, words) => {
  expect(amountText(amount)).toBe(words);
});

test('people with the same amount stand together, in the order in which they come', () => {
  expect(
    sharesText([
      { eater: 'Ada', servings: 1.5 },
      { eater: 'Ben', servings: 1 },
      { eater: 'Cas', servings: 1.5 },
    ]),
  ).toEqual(['Ada and Cas: 1 1/2 servings each', 'Ben: 1 serving']);
});
