import { afterEach, describe, expect, it } from 'vitest';
import { notice, NOTICE_KINDS, type Notice } from '../planning/model/notices.ts';
import { translationInto } from '../texts/catalogs.ts';
import { useCatalog, useLanguage, type Language } from '../texts/say.ts';
import { noticeText } from './notice-words.ts';

let spoken: Language = 'en';
useLanguage(() => spoken);
useCatalog('de', translationInto('de'));
afterEach(() => {
  spoken = 'en';
});

const at = { day: 2, meal: 'dinner', lot: 'CH-01' } as const;
const EXAMPLES: readonly Notice[] = [
  notice('meal-outside-trip', {}, at),
  notice('lot-gone', {}, at),
  notice('lot-past-date', { recipe: 'chili', bestBefore: '2027-07-01' }, at),
  notice('too-few-pouches', { recipe: 'chili', wanted: 3, free: 1 }, at),
  notice('meal-eaten-elsewhere', {}, at),
  notice('portion-not-for-eater', { recipe: 'chili' }, { ...at, eater: 'Ada' }),
  notice('portions-beyond-pouches', { recipe: 'chili', wanted: 2.5, there: 2 }, at),
  notice('water-without-stove', { boils: true, melts: false }, at),
  notice('fuel-not-flown', {}, at),
  notice('needs-stove', { recipe: 'chili' }, at),
  notice('shared-out-anew', { meals: 3 }),
  notice('reserve-short', { meals: 2, missingKcal: 800 }),
  notice('cook-groups-proposed', {
    groups: [
      ['Ada', 'Bo'],
      ['Cy', 'Di'],
    ],
  }),
  notice('food-to-come', { toBuy: 2, toDry: 1 }),
  notice('nobody-may-carry', { recipe: 'nut bar', avoiders: ['Ada'] }),
  notice('hungry', { missingKcal: 812, days: [1, 3] }, { eater: 'Ada' }),
  notice(
    'hungry-by-exclusions',
    { missingKcal: 812, days: [2], allergens: ['nuts'], diets: ['vegan'], lots: 2 },
    { eater: 'Ada' },
  ),
  notice('lots-estimated', { lots: ['A', 'B'] }),
  notice('allergens-undeclared', { lots: ['A', 'B'], avoiders: ['Ada', 'Bo'] }),
  notice('route-without-elevation', {}),
  notice('body-data-limits', {}),
  notice('minor-in-party', { ageY: 8 }, { eater: 'Ada' }),
  notice('older-than-equation', { ageY: 82, mostY: 78 }, { eater: 'Ada' }),
  notice('planned-deficit', { share: 0.2, eaters: [{ eater: 'Ada', bodyG: 400 }] }),
  notice('beyond-walking-equation', { beyondM: 1200 }, { day: 2 }),
  notice('minor-without-need', {}, { eater: 'Ada' }),
  notice('long-day', { hours: 10.5 }, { day: 2 }),
  notice('very-long-day', { hours: 13 }, { day: 2 }),
  notice('ascent-first-night-high', { altitudeM: 3100 }, { day: 1 }),
  notice('ascent-too-fast', { riseM: 800, days: [2, 3] }, { day: 2 }),
  notice('ascent-without-rest', { riseM: 1200, fromDay: 1 }, { day: 4 }),
  notice('filter-may-freeze', { nightC: -6 }, { day: 2 }),
  notice('water-not-treated', {}),
  notice('pouches-swell', { altitudeM: 4000, factor: 1.64 }),
  notice(
    'too-little-water-capacity',
    { place: 'the start', waterMl: 9000, capacityMl: 6000, toDryCamp: true },
    { day: 2 },
  ),
  notice('lot-withdrawn', { recipe: 'chili', reason: 'the seal was loose' }, { lot: 'CH-01' }),
  notice('heat-danger', { airTemperatureC: 41, category: 5, avoid: true }, { day: 2 }),
  notice('heat-walk-too-long', { workMin: 10, restMin: 50, neededH: 30 }, { day: 2 }),
  notice('heat-rests', { workMin: 40, restMin: 20, neededH: 8.5, acclimatised: false }, { day: 2 }),
  notice('sweat-above-drinking-limit', { eaters: ['Ada'] }, { day: 2 }),
  notice('load-noticeable', { share: 0.27, minor: false }, { eater: 'Ada', day: 1 }),
  notice('load-heavy', { share: 0.18, minor: true }, { eater: 'Ada', day: 1 }),
  notice('load-harmful', { share: 0.48, minor: false }, { eater: 'Ada', day: 1 }),
  notice('gear-of-minors', { eaters: ['Ada'] }),
  notice('no-fuel-container', { fuel: 'kerosene' }),
  notice('cold-for-canister-gas', { gas: 'butane', coldestC: -8, gasBoilsC: -6.7 }, { day: 2 }),
  notice('stove-safety', {}),
  notice('food-beyond-container', { days: [1, 2], foodMl: 12_000, roomMl: 9000 }, { eater: 'Ada', day: 1 }),
  notice('over-carry-limit', { days: [1, 2], overG: 1500, when: 'at camp' }, { eater: 'Ada', day: 1 }),
];

describe('the words of a notice', () => {
  it('are there for every code, in both languages, without a gap', () => {
    expect(new Set(EXAMPLES.map(({ code }) => code))).toEqual(new Set(Object.keys(NOTICE_KINDS)));
    for (const example of EXAMPLES) {
      spoken = 'en';
      const english = noticeText(example, 'metric');
      spoken = 'de';
      const inGerman = noticeText(example, 'metric');
      expect(inGerman).not.toBe(english);
      for (const text of [english, inGerman]) expect(text).not.toMatch(/undefined|[{}]|NaN| {2}/);
    }
  });

  it('name whom, where and what', () => {
    const text = (code: Notice['code'], units: 'metric' | 'us' = 'metric') =>
      EXAMPLES.filter((example) => example.code === code).map((example) => noticeText(example, units))[0];
    expect(text('too-few-pouches')).toBe(
      'The dinner on day 2 needs 3 of lot CH-01 (chili), but only 1 is free for this trip. Choose another pouch or seal more.',
    );
    expect(text('hungry-by-exclusions')).toBe(
      'Ada (no tree nuts, vegan) is 812 kcal short on day 2: 2 lots would fit but are not suitable for Ada. See Shortfall.',
    );
    expect(text('beyond-walking-equation', 'us')).toContain('0.7 mi is steeper');
    expect(text('minor-in-party')).toContain('an active child');
  });
});
