import { expect, it } from 'vitest';
import { localDate } from './dates.ts';

it('the calendar date of an instant is that of the clock on the wall', () => {
  expect(localDate(new Date(2026, 6, 4, 18, 5))).toBe('2026-07-04');
  expect(localDate(new Date(2027, 0, 1, 0, 0))).toBe('2027-01-01');
});
