import { afterEach, expect, test } from 'vitest';
import { useLanguage, type Language } from '$lib/texts/say';
import { load } from './+page.server';

afterEach(() => useLanguage(() => 'en'));

type Shown = Exclude<Awaited<ReturnType<typeof load>>, void>;
async function shownIn(language: Language): Promise<Shown> {
  useLanguage(() => language);
  return (await load({} as Parameters<typeof load>[0])) as Shown;
}

test('the method is in the language of the request, and what links to a part of it leads there in each', async () => {
  const [english, german] = [await shownIn('en'), await shownIn('de')];
  expect(english.parts).toContainEqual({ id: 'menu', title: 'Menu' });
  expect(german.parts).toContainEqual({ id: 'menu', title: 'Speiseplan' });
  expect(german.parts.map(({ id }) => id)).toEqual(english.parts.map(({ id }) => id));
});
