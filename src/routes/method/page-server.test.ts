import { expect, test } from 'vitest';
import { speaking } from '$lib/server/language-of-request';
import { load } from './+page.server';

test('the method is in the language of the request, and what links to a part of it leads there in each', () => {
  const english = speaking('en', load).parts;
  const german = speaking('de', load).parts;
  expect(english).toContainEqual({ id: 'menu', title: 'Menu' });
  expect(german).toContainEqual({ id: 'menu', title: 'Speiseplan' });
  expect(german.map(({ id }) => id)).toEqual(english.map(({ id }) => id));
});
