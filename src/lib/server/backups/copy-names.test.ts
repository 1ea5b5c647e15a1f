import { expect, test } from 'vitest';
import { copyName, readCopyName, superfluous, type Copy } from './copy-names.ts';

const DAY_MS = 86_400_000;
const copyAt = (at: Date): Copy => readCopyName(copyName(at, 'daily'))!;

test('a name says when and why, and other files are not taken for copies', () => {
  const name = copyName(new Date('2026-11-25T19:41:46.123Z'), 'before-update');
  expect(name).toBe('20261125T194146123Z-before-update.sqlite');
  expect(readCopyName(name)).toEqual({ name, at: '2026-11-25T19:41:46.123Z', reason: 'before-update' });
  for (const other of [
    'ridgelarder.sqlite',
    '20261125T194146123Z-because.sqlite',
    '20261399T194146123Z-daily.sqlite',
    '../20261125T194146123Z-daily.sqlite',
    `${name}.unfinished`,
  ])
    expect(readCopyName(other), other).toBeUndefined();
});

test('two years of a copy a day leave a week whole, then one a week, then one a month, for a year', () => {
  let kept: Copy[] = [];
  const start = Date.parse('2025-01-01T04:00:00.000Z');
  for (let day = 0; day < 730; day += 1) {
    const now = new Date(start + day * DAY_MS);
    kept.push(copyAt(now));
    const gone = new Set(superfluous(kept, now));
    kept = kept.filter((copy) => !gone.has(copy));
    if (day < 366) continue;
    const ages = kept.map(({ at }) => (now.getTime() - Date.parse(at)) / DAY_MS);
    expect(ages.filter((age) => age < 7)).toEqual([6, 5, 4, 3, 2, 1, 0]);
    const weekly = ages.filter((age) => age >= 7 && age < 35);
    expect(weekly.length).toBeGreaterThanOrEqual(4);
    expect(weekly.length).toBeLessThanOrEqual(5);
    const monthly = kept.filter((_, index) => ages[index]! >= 35).map(({ at }) => at.slice(0, 7));
    expect(new Set(monthly).size).toBe(monthly.length);
    expect(monthly.length).toBeGreaterThanOrEqual(10);
    expect(monthly.length).toBeLessThanOrEqual(12);
    expect(Math.max(...ages)).toBeLessThan(365);
  }
});

test('several copies of a day stay for a week, whatever their order, and the last of them longer', () => {
  const now = new Date('2026-11-25T12:00:00.000Z');
  const fresh = ['2026-11-20T08:00:00.000Z', '2026-11-20T09:00:00.000Z'];
  const old = ['2026-11-10T08:00:00.000Z', '2026-11-10T09:00:00.000Z'];
  const gone = superfluous(
    [...old, ...fresh].map((at) => copyAt(new Date(at))),
    now,
  );
  expect(gone.map(({ at }) => at)).toEqual(['2026-11-10T08:00:00.000Z']);
});
