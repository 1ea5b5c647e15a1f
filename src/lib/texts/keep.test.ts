import { afterEach, expect, it } from 'vitest';
import { keep, sayKept } from './keep.ts';
import { useLanguage } from './languages.ts';
import { text, useCatalog } from './say.ts';

afterEach(() => useLanguage(() => 'en'));

it('is said in the language of whoever reads it', () => {
  useCatalog('de', { 'only {left} are left': 'nur {left} sind übrig' });
  const stored = keep(text('only {left} are left'), { left: 2 });
  expect(sayKept(stored)).toBe('only 2 are left');
  useLanguage(() => 'de');
  expect(sayKept(stored)).toBe('nur 2 sind übrig');
});

it('leaves sentences as they are', () => {
  for (const stored of ['', 'Only 2 are left.', '{left} {"x":1}']) expect(sayKept(stored)).toBe(stored);
});
