/**
 * Source: Tobler 1993, Three presentations on geographical analysis and modeling, NCGIA Technical Report 93-1: km/h = 6 exp(-3.5 |slope + 0.05|);
 * 5.04 km/h on the flat, the most, 6 km/h, at 5 % down.
 */
import { describe, expect, it } from 'vitest';
import { effortAlong, methodHours, toblerKmPerH } from '../../src/lib/planning/route/walking-time.ts';

describe('walking speed by Tobler 1993', () => {
  it('is 5.04 km/h on the flat, and 6 km/h at 5 % down, which is the most', () => {
    expect(toblerKmPerH(0)).toBeCloseTo(5.04, 2);
    expect(toblerKmPerH(-0.05)).toBe(6);
    for (let grade = -0.6; grade <= 0.6; grade += 0.01) expect(toblerKmPerH(grade)).toBeLessThanOrEqual(6);
  });

  it('is as much slower going up from the best grade as going down from it', () => {
    for (const off of [0.01, 0.1, 0.3, 0.55])
      expect(toblerKmPerH(-0.05 + off)).toBeCloseTo(toblerKmPerH(-0.05 - off), 12);
  });

  it('makes the hours of a way step by step: 5.04 km of flat, then 6 km at 5 % down, are 2 h', () => {
    const along = effortAlong([
      { distanceM: 0, altitudeM: 1000 },
      { distanceM: 5036.7, altitudeM: 1000 },
      { distanceM: 11_036.7, altitudeM: 700 },
    ]);
    expect(methodHours(along(11_036.7), 'tobler')).toBeCloseTo(2, 4);
  });

  it('is slower over up and down than over the flat between', () => {
    const over = effortAlong([
      { distanceM: 0, altitudeM: 0 },
      { distanceM: 1000, altitudeM: 600 },
      { distanceM: 2000, altitudeM: 0 },
    ]);
    // By hand: 1 / (6 e^(-3.5 × 0.65)) + 1 / (6 e^(-3.5 × 0.55)) = 1.6214 + 1.1426 h
    expect(methodHours(over(2000), 'tobler')).toBeCloseTo(2.764, 3);
  });
});
