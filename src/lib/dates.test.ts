import { expect, it } from 'vitest';
import { showDate, showDates, showDay } from './dates.ts';

/** Blanks differ between versions of the locale data. */
const plain = (text: string) => text.replace(/\s+/g, ' ');

it('dates are read as they are where the units are used, in any time zone', () => {
  expect(plain(showDate('2026-07-04', 'metric'))).toBe('Sat, 4 Jul 2026');
  expect(plain(showDate('2026-07-04', 'us'))).toBe('Sat, Jul 4, 2026');
  expect(plain(showDay('2026-12-31', 'us'))).toBe('Thu, Dec 31');
  expect(plain(showDates('2026-07-04', '2026-07-08', 'metric'))).toMatch(/^4 ?– ?8 Jul 2026$/);
});
