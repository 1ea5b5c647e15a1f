import { describe, expect, it } from 'vitest';
import { defaultKitchen, Dryer } from '../model/kitchen.ts';
import { expectRun, fitLine, type Run } from './expect-run.ts';

const dryer = Dryer.parse(defaultKitchen().dryers[0]);
const run = (waterRemovedG: number, hours: number, more: Partial<Run> = {}): Run => ({
  dryer: dryer.name,
  preFrozen: false,
  waterRemovedG,
  hours,
  ...more,
});
const expected = (runs: readonly Run[], waterG = 2000, preFrozen = false) =>
  expectRun(dryer, preFrozen, waterG, 0.7, runs);

describe('a run', () => {
  it('of a dryer without runs is a usual one, shorter with less on the trays', () => {
    const { hours, energyKwh, basis } = expected([]);
    expect(basis).toEqual({ energy: { meanPowerW: 1000 } });
    expect(hours.value).toBeCloseTo(24 * (0.4 + 0.6 * 0.7), 9);
    expect(hours.low).toBeLessThan(hours.value);
    expect(hours.high).toBe(36);
    expect(energyKwh.value).toBeCloseTo(hours.value, 9);
    expect(expectRun(dryer, false, 2000, 0, []).hours.value).toBeLessThan(hours.value);
    expect(expectRun(dryer, false, 9000, 9, []).hours.value).toBe(24);
  });

  it('is in part proportional to water after one or two', () => {
    const { hours, basis } = expected([run(1000, 20)]);
    expect(hours.value).toBeCloseTo(20 * 1.6, 9);
    expect(hours.low).toBeCloseTo(24, 9);
    expect(hours.high).toBeCloseTo(40, 9);
    expect(basis.hours).toEqual({ runs: 1, kind: 'plain', dryer: 'freeze dryer' });
  });

  it('follows the line through three and more whose loads differ', () => {
    const { hours, basis } = expected([run(1000, 16), run(1500, 21), run(3000, 36)]);
    expect(hours).toMatchObject({ value: 26, low: 26, high: 26 });
    expect(basis.hours).toMatchObject({ runs: 3, kind: 'plain' });
  });

  it('never gets shorter by more water', () => {
    const runs = [run(1000, 30), run(2000, 25), run(3000, 20)];
    expect(expected(runs, 3000).hours.value).toBeGreaterThan(expected(runs, 1000).hours.value);
  });

  it('with loads alike is their mean, with its spread', () => {
    const { hours } = expected([run(2000, 24), run(2000, 26), run(2000, 28)]);
    expect(hours.value).toBe(26);
    // t of 2 degrees of freedom 1.8856 × s 2 × √(4/3)
    expect(hours.high - 26).toBeCloseTo(4.3546, 3);
  });

  it('takes runs alike where there are three, else all of the dryer, and none of another', () => {
    const frozen = [run(2000, 18), run(2000, 19), run(2000, 20)].map((one) => ({ ...one, preFrozen: true }));
    const plain = [run(2000, 27)];
    expect(expected([...frozen, ...plain], 2000, true).basis.hours).toMatchObject({
      runs: 3,
      kind: 'frozen',
    });
    expect(expected([...frozen, ...plain]).basis.hours).toMatchObject({ runs: 4, kind: 'any' });
    expect(expected([run(2000, 5, { dryer: 'another' })]).basis.hours).toBeUndefined();
    expect(expected([run(0, 5)]).basis.hours).toBeUndefined();
  });

  it('is metered where runs were', () => {
    const { energyKwh, basis } = expected([run(2000, 24, { energyKwh: 15 }), run(2000, 24)]);
    expect(energyKwh.value).toBe(15);
    expect(basis.energy).toEqual({ meteredRuns: 1 });
  });

  it('never takes less than no time', () => {
    const runs = [run(1000, 2), run(2000, 22), run(3000, 42)];
    expect(expected(runs, 0).hours).toMatchObject({ low: 0, value: 0, high: 0 });
  });
});

describe('a line', () => {
  it('is that of least squares', () => {
    const { slope, intercept } = fitLine([
      [1, 2],
      [2, 3],
      [3, 5],
      [4, 6],
    ]);
    expect(slope).toBeCloseTo(1.4, 9);
    expect(intercept).toBeCloseTo(0.5, 9);
  });
});
