import { describe, expect, it } from 'vitest';
import { movingMean } from './moving-mean.ts';

const line = (...points: [distanceM: number, altitudeM: number][]) =>
  points.map(([distanceM, altitudeM]) => ({ distanceM, altitudeM }));
const rounded = (values: Float64Array) => [...values].map((value) => Math.round(value * 1e6) / 1e6);

describe('the moving mean', () => {
  it('leaves a straight way as it is, up to its ends, however its points lie', () => {
    const slope = line([0, 100], [3, 103], [4, 104], [40, 140], [100, 200]);
    expect(rounded(movingMean(slope, 11, 10, 30))).toEqual([
      100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200,
    ]);
  });

  it('rounds a summit by a quarter of the window times its grade', () => {
    const summit = line([0, 0], [100, 20], [200, 0]);
    expect(rounded(movingMean(summit, 5, 50, 40))).toEqual([0, 10, 18, 10, 0]);
  });

  it('goes level before the first point and after the last', () => {
    expect(rounded(movingMean(line([40, 500], [60, 500]), 11, 10, 30))).toEqual(Array(11).fill(500));
    expect(rounded(movingMean(line([50, 700]), 3, 50, 30))).toEqual([700, 700, 700]);
  });

  it('fits its window to a way shorter than that', () => {
    expect(rounded(movingMean(line([0, 10], [8, 18]), 2, 8, 30))).toEqual([10, 18]);
  });
});
