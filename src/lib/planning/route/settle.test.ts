import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settle } from './settle.ts';

const settled = (...altitudesM: number[]) => [...settle(Float64Array.from(altitudesM), 10)];
const rises = (altitudesM: readonly number[]) =>
  altitudesM.slice(1).reduce((sum, altitudeM, i) => sum + Math.max(0, altitudeM - (altitudesM[i] ?? 0)), 0);

describe('settling', () => {
  it('keeps a way whose ups and downs all count', () => {
    expect(settled(0, 20, 5, 40, 40, 12)).toEqual([0, 20, 5, 40, 40, 12]);
  });

  it('flattens what is smaller than the swing, and keeps tops and bottoms', () => {
    expect(settled(0, 30, 24, 50)).toEqual([0, 27, 27, 50]);
    expect(settled(50, 24, 30, 0)).toEqual([50, 27, 27, 0]);
    expect(settled(0, 30, 25, 31, 20, 60)).toEqual([0, 27.5, 27.5, 31, 20, 60]);
  });

  it('counts a swing of exactly the least size', () => {
    expect(settled(0, 20, 10, 30)).toEqual([0, 20, 10, 30]);
    expect(settled(0, 20, 10.1, 30)).toEqual([0, 15.05, 15.05, 30]);
  });

  it('flattens a small dip at either end', () => {
    expect(settled(100, 96, 200)).toEqual([98, 98, 200]);
    expect(settled(200, 96, 100)).toEqual([200, 98, 98]);
  });

  it('leaves of a way that hardly rises nothing but its rise', () => {
    expect(settled(3, 1, 4, 2, 5)).toEqual([2, 2, 3, 3, 5]);
    expect(settled(4, 4, 4)).toEqual([4, 4, 4]);
    expect(settled(1, 5, 1)).toEqual([7 / 3, 7 / 3, 7 / 3].map((m) => expect.closeTo(m, 9)));
    expect(settled(7)).toEqual([7]);
    expect(settled()).toEqual([]);
  });

  const ways = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 1, maxLength: 60 });

  it('is the same backwards', () => {
    fc.assert(
      fc.property(ways, (way) => {
        const backwards = settled(...way.toReversed()).toReversed();
        settled(...way).forEach((altitudeM, i) => expect(altitudeM).toBeCloseTo(backwards[i] ?? NaN, 9));
      }),
      { seed: 1 },
    );
  });

  it('never adds climb, never leaves the range of the way, and leaves no swing inside that is too small', () => {
    fc.assert(
      fc.property(ways, (way) => {
        const flat = settled(...way);
        expect(rises(flat)).toBeLessThanOrEqual(rises(way) + 1e-9);
        expect(Math.min(...flat)).toBeGreaterThanOrEqual(Math.min(...way) - 1e-9);
        expect(Math.max(...flat)).toBeLessThanOrEqual(Math.max(...way) + 1e-9);
        const turns = flat.filter((m, i, all) => i === 0 || m !== all[i - 1]);
        const extremes = turns.filter((m, i, all) => {
          const [before, after] = [all[i - 1], all[i + 1]];
          return before !== undefined && after !== undefined && (m - before) * (after - m) < 0;
        });
        extremes
          .slice(1)
          .forEach((m, i) => expect(Math.abs(m - (extremes[i] ?? NaN))).toBeGreaterThanOrEqual(10));
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});
