import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chordM, distanceM, earthCentred, lineLengthM, LONGEST_CHORD_M } from './geodesic.ts';

const at = (latDeg: number, lonDeg: number) => ({ latDeg, lonDeg });

describe('distance on WGS 84', () => {
  it('is nothing from a place to itself, and the same both ways', () => {
    expect(distanceM(at(0.5, -150.5), at(0.5, -150.5))).toBe(0);
    const degrees = (max: number) => fc.double({ min: -max, max, noNaN: true });
    fc.assert(
      fc.property(degrees(90), degrees(180), degrees(90), degrees(180), (lat1, lon1, lat2, lon2) => {
        const there = distanceM(at(lat1, lon1), at(lat2, lon2));
        const back = distanceM(at(lat2, lon2), at(lat1, lon1));
        expect(Math.abs(there - back)).toBeLessThanOrEqual(1e-6 + there * 1e-12);
      }),
      { seed: 1 },
    );
  });

  it('does not jump where the formula changes', () => {
    const lonOfLongest = LONGEST_CHORD_M / 111_319.49;
    const below = distanceM(at(0, 0), at(0, lonOfLongest - 1e-6));
    const above = distanceM(at(0, 0), at(0, lonOfLongest + 1e-6));
    expect(above - below).toBeGreaterThan(0.1);
    expect(above - below).toBeLessThan(0.3);
  });

  it('sees no seam at the antimeridian, nor at the pole', () => {
    expect(distanceM(at(10, 179.999), at(10, -179.999))).toBeCloseTo(distanceM(at(10, 0), at(10, 0.002)), 6);
    expect(distanceM(at(89.999, 0), at(89.999, 180))).toBeCloseTo(
      2 * distanceM(at(89.999, 0), at(90, 77)),
      6,
    );
  });
});

it('puts positions on the ellipsoid', () => {
  const xyz = earthCentred([at(0, 90), at(-90, 0)]);
  expect([...xyz].map((value) => Math.round(value) + 0)).toEqual([0, 6_378_137, 0, 0, 0, -6_356_752]);
  expect(chordM(xyz, 0, 1)).toBeCloseTo(Math.hypot(6_378_137, 6_356_752.3142), 3);
});

it('adds up the steps of a line', () => {
  const line = [at(0, 0), at(0, 0.1), at(0.1, 0.1), at(0, 2)];
  const steps = line.slice(1).map((position, i) => distanceM(line[i] ?? position, position));
  expect(lineLengthM(line)).toBeCloseTo(
    steps.reduce((sum, m) => sum + m, 0),
    6,
  );
  expect(lineLengthM(line.slice(0, 1))).toBe(0);
  expect(lineLengthM([])).toBe(0);
});
