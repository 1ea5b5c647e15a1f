import { expect, test } from 'vitest';
import { speaking } from '$lib/server/language-of-request';
import type { Language } from '$lib/texts/say';
import { GET } from './+server';

const manifestIn = (language: Language): Promise<Record<string, unknown>> =>
  speaking(language, async () => (await GET({} as Parameters<typeof GET>[0])).json());

test('the installed app tells of itself in the language of the request, and is the same app in each', async () => {
  const { lang, description, ...app } = await manifestIn('en');
  expect(lang).toBe('en');
  expect(description).toMatch(/^Plans a hike/);
  const { lang: spoken, description: told, ...same } = await manifestIn('de');
  expect(spoken).toBe('de');
  expect(told).toMatch(/^Plant /);
  expect(same).toEqual(app);
});
