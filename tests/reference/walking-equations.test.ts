/**
 * Sources: see `tests/support/walking-equations.ts`, where the equations stand as published. Sample values of the equation of 2022 at 1.2 m/s with a resting rate of 1.2 W/kg: level
 * 3.9, with a pack of a fifth 4.5; of 2019 at 1.2 m/s from -30 to 30 %: 3.9, 3.2, 2.8, 3.1, 4.0, 5.7, 7.8, 12.2, 16.3 W/kg. Minetti et al. 2002 measured 17.33 J/kg/m at 45 % up.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { walkingRateW } from '../../src/lib/planning/demand/load-carriage.ts';
import {
  BODY_KG,
  looney2019,
  looney2022,
  meanInRange,
  minetti2002,
  pandolf1977,
  TEN_LEGS,
  type TestLeg,
} from '../support/walking-equations.ts';

const ours = ({ speedMs, gradePercent, packShare }: TestLeg, terrain = 1): number =>
  walkingRateW({
    massG: BODY_KG * 1000,
    loadG: packShare * BODY_KG * 1000,
    speedMs,
    grade: gradePercent / 100,
    terrain,
  }) / BODY_KG;
const leg = (speedMs: number, gradePercent: number, packShare: number): TestLeg => ({
  name: '',
  speedMs,
  gradePercent,
  packShare,
});

describe('the equations as written down', () => {
  it.each([
    [-30, 3.9],
    [-20, 3.2],
    [-10, 2.8],
    [-5, 3.1],
    [0, 4.0],
    [5, 5.7],
    [10, 7.8],
    [20, 12.2],
    [30, 16.3],
  ])('of 2019 at %d %% gives %d W/kg at 1.2 m/s', (grade, wPerKg) =>
    expect(looney2019(leg(1.2, grade, 0))).toBeCloseTo(wPerKg, 1),
  );

  it('of 2022 gives 3.9 W/kg without and 4.5 with a pack of a fifth', () => {
    expect(looney2022(leg(1.2, 0, 0))).toBeCloseTo(3.9, 1);
    expect(looney2022(leg(1.2, 0, 0.2))).toBeCloseTo(4.5, 1);
  });

  it('of Pandolf gives 401.8 W for 80 kg and 20 kg at 1.34 m/s, worked by hand', () => {
    // 1.5 × 75 + 2 × 93.75 × 0.25² + 93.75 × 1.5 × 1.34² = 112.5 + 11.72 + 252.51 = 376.73 W
    expect(pandolf1977(leg(1.34, 0, 0.25)) * BODY_KG).toBeCloseTo(376.7, 1);
  });

  it('of Minetti comes near what was measured at 45 % up: 17.33 ± 1.11 J/kg/m', () => {
    const cost = minetti2002(leg(1, 45, 0)) - 1.2;
    expect(Math.abs(cost - 17.33)).toBeLessThan(2 * 1.11);
  });
});

describe('our walking', () => {
  it.each(TEN_LEGS)('$name lies within 10 % of the mean of the equations in range', (test) =>
    expect(Math.abs(ours(test) / meanInRange(test) - 1)).toBeLessThan(0.1),
  );

  it.each(TEN_LEGS)('$name lies within 25 % of Minetti', (test) =>
    expect(Math.abs(ours(test) / minetti2002(test) - 1)).toBeLessThan(0.25),
  );

  it.each([-40, -30, -20])('down %d %% is not free: it costs more than down 10 %%', (grade) =>
    expect(ours(leg(0.8, grade, 0.2))).toBeGreaterThan(ours(leg(0.8, -10, 0.2))),
  );

  it('in loose sand is that of the equation with its factor of 2.1', () =>
    expect(ours(leg(1, 0, 0.2), 2.1)).toBeCloseTo(looney2022(leg(1, 0, 0.2), 2.1), 9));
});

describe('the method', () => {
  const table = (file: string) =>
    readFileSync(new URL(`../../docs/${file}`, import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => /^\| .* \|\s+\d+[.,]\d\d \|/.test(line))
      .map((line) =>
        line
          .split('|')
          .slice(2, -1)
          .map((cell) => Number(cell.trim().replace(',', '.').replace('−', '-'))),
      );

  it.each(['method.md', 'method.de.md'])('%s shows the ten legs as they come out', (file) => {
    const rows = table(file);
    expect(rows).toHaveLength(TEN_LEGS.length);
    TEN_LEGS.forEach((test, index) => {
      const figures = [looney2019(test), looney2022(test), pandolf1977(test), minetti2002(test), ours(test)];
      expect(rows[index]?.slice(0, 6)).toEqual([
        test.speedMs,
        ...figures.map((value) => expect.closeTo(value, 1)),
      ]);
    });
  });
});
