import { afterEach, expect, it } from 'vitest';
import { useLanguage } from '$lib/texts/languages.ts';
import { shownFigure } from './fields.ts';
import { typedNumber } from './read-form.ts';

afterEach(() => useLanguage(() => 'en'));

it('shows a stored number as the language writes it, and what was typed as it was typed', () => {
  expect(shownFigure(null, 'a', '3.5')).toBe('3.5');
  useLanguage(() => 'de');
  expect(['3.5', '-0.25', '12', '', 'a.b'].map((stored) => shownFigure(null, 'a', stored))).toEqual([
    '3,5',
    '-0,25',
    '12',
    '',
    'a.b',
  ]);
  expect(shownFigure(null, 'a', undefined)).toBe('');
  expect(shownFigure({ entered: { a: ['3.5'] } }, 'a', '4.5')).toBe('3.5');
});

it('shows no number that is read as another one, or asked about', () => {
  for (const language of ['en', 'de', 'fr'] as const) {
    useLanguage(() => language);
    for (const stored of ['1.2', '1.25', '1.234', '-12.345', '0.001', '1234.567', '120', '1200'])
      expect(typedNumber(shownFigure(null, 'a', stored))).toBe(Number(stored));
  }
});
