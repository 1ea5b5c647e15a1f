/**
 * Source: US Army TB MED 507, fluid replacement and work/rest table for warm weather, as printed on the heat cards of 2002 to 2004 (four copies agree).
 * WBGT °F: 78-81.9, 82-84.9, 85-87.9, 88-89.9, 90 and more.
 */
import { describe, expect, it } from 'vitest';
import { walkingRateW } from '../../src/lib/planning/demand/load-carriage.ts';
import {
  fluidReplacementMl,
  heatCategory,
  MOST_PER_DAY_ML,
  MOST_PER_HOUR_ML,
  WORK_RATES,
  workRateOf,
} from '../../src/lib/planning/hydration/fluid-replacement.ts';
import { workRestOf } from '../../src/lib/planning/hydration/work-rest.ts';
import { toCore } from '../../src/lib/planning/units/convert.ts';

const quarts = (wbgtF: number, work: (typeof WORK_RATES)[number]) =>
  fluidReplacementMl(toCore(wbgtF, '°F'), work) / toCore(1, 'qt');

describe('fluid replacement', () => {
  it.each([
    [78, 0.5, 0.75, 0.75],
    [81.9, 0.5, 0.75, 0.75],
    [82, 0.5, 0.75, 1],
    [84.9, 0.5, 0.75, 1],
    [85, 0.75, 0.75, 1],
    [87.9, 0.75, 0.75, 1],
    [88, 0.75, 0.75, 1],
    [89.9, 0.75, 0.75, 1],
    [90, 1, 1, 1],
    [110, 1, 1, 1],
  ])('at a WBGT of %d °F is %d, %d, %d quarts an hour', (wbgtF, easy, moderate, hard) => {
    expect(WORK_RATES.map((work) => quarts(wbgtF, work))).toEqual(
      [easy, moderate, hard, hard].map((value) => expect.closeTo(value, 9)),
    );
  });

  it('never exceeds 1 1/2 quarts an hour and 12 quarts a day', () => {
    expect(MOST_PER_HOUR_ML / toCore(1, 'qt')).toBeCloseTo(1.5, 9);
    expect(MOST_PER_DAY_ML / toCore(1, 'qt')).toBeCloseTo(12, 9);
  });

  it('never falls with heat or work', () => {
    for (let wbgtF = 60; wbgtF < 105; wbgtF += 0.1)
      for (const [index, work] of WORK_RATES.entries()) {
        expect(quarts(wbgtF + 0.1, work)).toBeGreaterThanOrEqual(quarts(wbgtF, work));
        const lighter = WORK_RATES[index - 1];
        if (lighter) expect(quarts(wbgtF, work)).toBeGreaterThanOrEqual(quarts(wbgtF, lighter));
      }
    expect(heatCategory(toCore(77, '°F'))).toBe(0);
  });

  it('classes walking as its examples do: 2.5 mph on a hard surface with a light load is easy, 3.5 mph with 40 lb and more is at least moderate', () => {
    const walk = (mph: number, lb: number, terrain: number) =>
      workRateOf(
        walkingRateW({
          massG: 75_000,
          loadG: toCore(lb, 'lb'),
          speedMs: (mph * 1609.344) / 3600,
          grade: 0,
          terrain,
        }),
      );
    expect(walk(2.5, 20, 1)).toBe('easy');
    expect(walk(3.5, 30, 1)).toBe('moderate');
    expect(walk(2.5, 0, 2.1)).toBe('moderate');
    expect(walk(3.5, 60, 1.1)).toBe('hard');
    expect(walk(2.5, 30, 2.1)).toBe('hard');
  });

  it('changes by 1/4 quart in full sun and in full shade', () => {
    const at = (sun: 'sun' | 'mixed' | 'shade') =>
      fluidReplacementMl(toCore(85, '°F'), 'easy', sun) / toCore(1, 'qt');
    expect([at('sun'), at('mixed'), at('shade')]).toEqual([1, 0.75, 0.5].map((qt) => expect.closeTo(qt, 9)));
  });
});

describe('work and rest, minutes of an hour, of those used to the heat', () => {
  it.each([
    [77.9, [60, 60, 60]],
    [78, [60, 60, 40]],
    [82, [60, 50, 30]],
    [85, [60, 40, 30]],
    [88, [60, 30, 20]],
    [90, [50, 20, 10]],
  ] as const)('at a WBGT of %d °F work %j', (wbgtF, minutes) => {
    const of = (work: (typeof WORK_RATES)[number]) => workRestOf(toCore(wbgtF, '°F'), work, true).workMin;
    expect([of('easy'), of('moderate'), of('hard')]).toEqual([...minutes]);
  });
});
