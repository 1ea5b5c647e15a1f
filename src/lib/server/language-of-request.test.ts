import { expect, it } from 'vitest';
import { language } from '../texts/say.ts';
import { languageOf, speaking } from './language-of-request.ts';

const asking = (accepted?: string) =>
  new Request(
    'http://127.0.0.1/',
    accepted === undefined ? {} : { headers: { 'accept-language': accepted } },
  );

it('speaks as the browser asks, by its weights', () => {
  expect(languageOf(asking('de-AT,de;q=0.9,en;q=0.5'), undefined)).toBe('de');
  expect(languageOf(asking('eo,en;q=0.4,de;q=0.8'), undefined)).toBe('de');
  expect(languageOf(asking('fr-CH, fr;q=0.9, en;q=0.8'), undefined)).toBe('fr');
  expect(languageOf(asking('en-US,en;q=0.9,de;q=0.3'), undefined)).toBe('en-US');
  for (const asked of ['en-GB,en;q=0.9', 'en', 'en-AU, de;q=0.2'])
    expect(languageOf(asking(asked), undefined)).toBe('en');
});

it('speaks English to whoever asks for a language that it has not, or for none', () => {
  for (const accepted of ['eo', '*', '', ';;;,', undefined])
    expect(languageOf(asking(accepted), undefined)).toBe('en');
});

it('puts a choice before it, unless it is none', () => {
  expect(languageOf(asking('en'), 'de')).toBe('de');
  expect(languageOf(asking('de'), 'tlh')).toBe('de');
  expect(languageOf(asking('en'), 'toString')).toBe('en');
});

it('keeps two requests at once apart', async () => {
  const later = (spoken: 'en' | 'de') =>
    speaking(spoken, async () => {
      await new Promise((done) => setTimeout(done, 5));
      return language();
    });
  expect(await Promise.all([later('de'), later('en'), later('de')])).toEqual(['de', 'en', 'de']);
  expect(language()).toBe('en');
});
