import { expect, it } from 'vitest';
import { localDate, showDate, showDates, showDay, showInstant } from './dates.ts';

/** Blanks differ between versions of the locale data. */
const plain = (text: string) => text.replace(/\s+/g, ' ');

it('dates are read as they are where the units are used, in any time zone', () => {
  expect(plain(showDate('2026-07-04', 'metric'))).toBe('Sat, 4 Jul 2026');
  expect(plain(showDate('2026-07-04', 'us'))).toBe('Sat, Jul 4, 2026');
  expect(plain(showDay('2026-12-31', 'us'))).toBe('Thu, Dec 31');
  expect(plain(showDates('2026-07-04', '2026-07-08', 'metric'))).toMatch(/^4 ?– ?8 Jul 2026$/);
});

it('an instant is read by the clock of whoever looks', () => {
  const evening = new Date(2026, 6, 4, 18, 5);
  expect(plain(showInstant(evening.toISOString(), 'metric'))).toMatch(/^Sat,? 4 Jul, 18:05$/);
  expect(plain(showInstant(evening.toISOString(), 'us'))).toMatch(/^Sat, Jul 4, 6:05 PM$/);
  expect(localDate(evening)).toBe('2026-07-04');
  expect(localDate(new Date(2027, 0, 1, 0, 0))).toBe('2027-01-01');
});
