import { afterEach, expect, it } from 'vitest';
import { REASON_CODES, type Reason } from '../planning/model/reasons.ts';
import { translationInto } from '../texts/catalogs.ts';
import { useCatalog, useLanguage, type Language } from '../texts/say.ts';
import { reasonText } from './reason-words.ts';

let spoken: Language = 'en';
useLanguage(() => spoken);
useCatalog('de', translationInto('de'));
afterEach(() => {
  spoken = 'en';
});

const full = (code: Reason['code']): Reason => ({
  code,
  lot: 'CH-01',
  recipe: 'Chilli',
  eaters: ['Ada', 'Bo'],
  points: 12.34,
  cost: 'hunger',
  choice: 'lightest',
});

it.each(REASON_CODES)('says "%s" in both languages, with all of its parts or none', (code) => {
  for (const reason of [full(code), { code }]) {
    spoken = 'en';
    const english = reasonText(reason);
    spoken = 'de';
    expect(reasonText(reason)).not.toBe(english);
    expect(english).not.toMatch(/undefined|[{}]|NaN|\.$/);
  }
});

it('names people, dishes and figures', () => {
  expect(reasonText(full('oldest for all'))).toBe('the oldest that suits Ada and Bo');
  expect(reasonText(full('next best'))).toBe('Chilli (CH-01) would cost 12.3 points more, for hunger');
  expect(reasonText(full('of a choice'))).toBe('from the menu "lightest"');
});
