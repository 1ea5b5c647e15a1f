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
    expect(new Set(kept.filter((_, index) => ages[index]! < 35).map(weekOf)).size).toBeGreaterThanOrEqual(5);
    expect(new Set(kept.map(({ at }) => at.slice(0, 7))).size).toBe(12);
    expect(kept.length).toBeLessThanOrEqual(7 + 5 + 12);
    expect(Math.max(...ages)).toBeLessThan(366);
  }
});
const weekOf = ({ at }: Copy) => Math.floor((Date.parse(at) / DAY_MS + 3) / 7);

test('several copies of a day stay for seven days, whatever their order, and the last of them longer', () => {
  const now = new Date('2026-11-25T12:00:00.000Z');
  const days = ['03', '12', '14', '16', '18', '20', '22', '24'];
  const copies = days.flatMap((day) => [
    copyAt(new Date(`2026-11-${day}T08:00:00Z`)),
    copyAt(new Date(`2026-11-${day}T09:00:00Z`)),
  ]);
  expect(superfluous(copies.toReversed(), now).map(({ at }) => at)).toEqual(['2026-11-03T08:00:00.000Z']);
});

test.each(['1970-01-01T00:00:00Z', '2040-05-05T05:05:05Z'])(
  'a clock that is wrong for one start, at %s, deletes no copy, but for the oldest month and week',
  (wrong) => {
    const now = new Date('2026-11-25T12:00:00.000Z');
    const daily = Array.from({ length: 400 }, (_, day) => copyAt(new Date(now.getTime() - day * DAY_MS)));
    const thinned = (copies: readonly Copy[], at: Date) => {
      const gone = new Set(superfluous(copies, at));
      return copies.filter((copy) => !gone.has(copy));
    };
    const kept = thinned(daily, now);
    expect(kept.length).toBeLessThan(25);
    expect(superfluous(kept, new Date(wrong))).toEqual([]);
    const after = thinned(thinned([copyAt(new Date(wrong)), ...kept], new Date(wrong)), now);
    expect(kept.filter((copy) => !after.includes(copy)).length).toBeLessThanOrEqual(3);
    expect(after.slice(0, 7)).toEqual(expect.arrayContaining(kept.slice(0, 5)));
  },
);

test('the newest of each kind stays, however old it is', () => {
  const now = new Date('2026-11-25T12:00:00.000Z');
  const old = readCopyName(copyName(new Date('2020-01-01T00:00:00Z'), 'before-update'))!;
  const days = Array.from({ length: 800 }, (_, day) => copyAt(new Date(now.getTime() - day * DAY_MS)));
  expect(superfluous([...days, old], now)).not.toContain(old);
});
