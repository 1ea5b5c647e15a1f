import { expect, test } from 'vitest';
import { roundedServings } from './shown-count.ts';

test.each([
  [169.1, 169, 'yes'],
  [169, 169, 'no'],
  [19.5, 19.5, 'no'],
  [2.3, 2.5, 'yes'],
  [0.1 + 0.2 + 0.2, 0.5, 'no'],
  [20.5, 21, 'yes'],
])('%d servings are said as %d, "about": %s', (servings, shown, about) => {
  expect(roundedServings(servings)).toEqual({ servings: shown, about });
});
