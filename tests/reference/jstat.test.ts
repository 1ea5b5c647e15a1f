/** Source: npm `jstat`, an independent library of statistics: Student's t, and least squares with their residual standard deviation. The prediction interval is that of Draper & Smith, Applied Regression Analysis, ch. 1. */
import jStat from 'jstat';
import { describe, expect, it } from 'vitest';
import { fitLine, tQuantile90 } from '../../src/lib/planning/drying/expect-run.ts';

describe('against jstat', () => {
  it('gives the same 90 % quantile of Student’s t up to 30 degrees of freedom, to the digits of the table', () => {
    for (let degrees = 1; degrees <= 30; degrees++)
      expect(Math.abs(tQuantile90(degrees) - jStat.studentt.inv(0.9, degrees))).toBeLessThan(1e-4);
  });

  it('and beyond, within 0.1 %', () => {
    for (const degrees of [31, 40, 60, 120, 1000])
      expect(Math.abs(tQuantile90(degrees) / jStat.studentt.inv(0.9, degrees) - 1)).toBeLessThan(1e-3);
  });

  it.each<[string, (readonly [number, number])[]]>([
    [
      'three points',
      [
        [900, 17],
        [1800, 22],
        [3100, 31],
      ],
    ],
    [
      'a scatter',
      [
        [1200, 21.5],
        [1450, 19],
        [2000, 26],
        [2300, 24.5],
        [2900, 33],
        [3050, 28],
        [3300, 35],
      ],
    ],
    [
      'a falling line',
      [
        [1, 9],
        [2, 8.5],
        [4, 5],
        [5, 4.2],
      ],
    ],
  ])('draws the same line through %s, with the same prediction interval', (_, points) => {
    const line = fitLine(points);
    const x = points.map(([at]) => at);
    const { coef, t } = jStat.models.ols(
      points.map(([, y]) => y),
      x.map((at) => [1, at]),
    );
    expect(line.intercept).toBeCloseTo(coef[0], 6);
    expect(line.slope).toBeCloseTo(coef[1], 8);

    const n = points.length;
    const meanX = x.reduce((sum, at) => sum + at, 0) / n;
    const sxx = x.reduce((sum, at) => sum + (at - meanX) ** 2, 0);
    for (const at of [0, meanX, 2 * meanX]) {
      const [low, value, high] = line.predict(at);
      const half =
        jStat.studentt.inv(0.9, n - 2) * t.sigmaHat * Math.sqrt(1 + 1 / n + (at - meanX) ** 2 / sxx);
      expect(value).toBeCloseTo(coef[0] + coef[1] * at, 6);
      expect((high - low) / 2 / half).toBeCloseTo(1, 4);
      expect((high + low) / 2).toBeCloseTo(value, 9);
    }
  });
});
