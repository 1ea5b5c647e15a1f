import { afterEach, expect, it, test } from 'vitest';
import { useLanguage, type Language } from './languages.ts';
import {
  sayList,
  sayNumber,
  sayPercent,
  showDate,
  showDates,
  showDay,
  showInstant,
  withUnit,
  writesDecimalComma,
} from './locale.ts';

/** A blank that does not break, of either width. */
const narrow = (text: string) => text.replaceAll('\u00a0', '\u202f');
let spoken: Language = 'en';
useLanguage(() => spoken);
afterEach(() => {
  spoken = 'en';
});

/** Blanks, dashes and the comma after a weekday differ between versions of the locale data. */
const plain = (text: string) =>
  text
    .replace(/\s+/g, ' ')
    .replace(/\s*–\s*/, '–')
    .replace(/^(Sat|sam\.),? /, '$1 ');

test.each<[Language, string, string, string, string]>([
  ['en', 'Sat 4 Jul 2026', 'Sat 4 Jul', '4–8 Jul 2026', 'Sat 4 Jul, 18:05'],
  ['en-US', 'Sat Jul 4, 2026', 'Sat Jul 4', 'Jul 4–8, 2026', 'Sat Jul 4, 6:05 PM'],
  ['de', 'Sa., 4. Juli 2026', 'Sa., 4. Juli', '4.–8. Juli 2026', 'Sa., 4. Juli, 18:05'],
  ['fr', 'sam. 4 juil. 2026', 'sam. 4 juil.', '4–8 juil. 2026', 'sam. 4 juil., 18:05'],
])('writes dates in "%s", whatever the zone', (language, date, day, days, instant) => {
  spoken = language;
  expect(plain(showDate('2026-07-04'))).toBe(date);
  expect(plain(showDay('2026-07-04'))).toBe(day);
  expect(plain(showDates('2026-07-04', '2026-07-08'))).toBe(days);
  expect(plain(showInstant(new Date(2026, 6, 4, 18, 5).toISOString()))).toBe(instant);
});

test.each<[Language, string, string, string, string]>([
  ['en', '1,234.5', '97%', '16.8 L', '12.5%'],
  ['en-US', '1,234.5', '97%', '16.8 L', '12.5%'],
  ['de', '1.234,5', '97\u202f%', '16,8 l', '12,5\u202f%'],
  ['fr', '1\u202f234,5', '97\u202f%', '16,8 l', '12,5\u202f%'],
])('writes figures in "%s"', (language, number, whole, litres, share) => {
  spoken = language;
  expect(sayNumber(1234.5)).toBe(number);
  expect(narrow(sayPercent(0.97))).toBe(whole);
  expect(narrow(withUnit(sayNumber(97), '%'))).toBe(whole);
  expect(withUnit(sayNumber(16.8), 'l')).toBe(litres);
  expect(narrow(sayPercent(0.125, 1))).toBe(share);
  expect(writesDecimalComma()).toBe(number.endsWith(',5'));
});

it('lists by the language', () => {
  const listed = (language: Language) => {
    spoken = language;
    return [sayList(['a', 'b', 'c']), sayList(['a', 'b'], 'disjunction')];
  };
  expect(listed('en')).toEqual(['a, b and c', 'a or b']);
  expect(listed('en-US')).toEqual(['a, b, and c', 'a or b']);
  expect(listed('de')).toEqual(['a, b und c', 'a oder b']);
  expect(listed('fr')).toEqual(['a, b et c', 'a ou b']);
});
