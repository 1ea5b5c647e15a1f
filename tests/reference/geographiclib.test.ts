/**
 * Sources: npm `geographiclib-geodesic`, an independent check of our own formula for short distances; for long ones, which that library computes,
 * the figures printed in Karney 2013, "Algorithms for geodesics", J Geod 87:43-55, and the axes of WGS 84.
 */
import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { distanceM } from '../../src/lib/planning/route/geodesic.ts';

const wgs84 = geodesic.Geodesic.WGS84;
const karneyM = (lat1: number, lon1: number, lat2: number, lon2: number) =>
  wgs84.Inverse(lat1, lon1, lat2, lon2).s12 ?? NaN;
const oursM = (lat1: number, lon1: number, lat2: number, lon2: number) =>
  distanceM({ latDeg: lat1, lonDeg: lon1 }, { latDeg: lat2, lonDeg: lon2 });

/** Within a millionth of the length; nearer than a centimetre, within ten nanometres. */
function agrees(ours: number, theirs: number): void {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-6 * theirs + 1e-8);
}

const latitudes = fc.oneof(
  fc.double({ min: -90, max: 90, noNaN: true }),
  fc.constantFrom(-90, -89.9999, 0, 45, 89.9999, 90),
);
const longitudes = fc.oneof(
  fc.double({ min: -180, max: 180, noNaN: true }),
  fc.constantFrom(-180, -179.9999, 0, 179.9999, 180),
);

describe('geodesic distance', () => {
  it('of any step of a walk, 0.1 mm to 150 km in any direction from anywhere, agrees with geographiclib', () => {
    fc.assert(
      fc.property(
        latitudes,
        longitudes,
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -4, max: 5.18, noNaN: true }),
        (lat, lon, azimuth, powerOfTen) => {
          const { lat2 = NaN, lon2 = NaN } = wgs84.Direct(lat, lon, azimuth, 10 ** powerOfTen);
          agrees(oursM(lat, lon, lat2, lon2), karneyM(lat, lon, lat2, lon2));
        },
      ),
      { numRuns: 5000, seed: 2013 },
    );
  });

  it('of any two places agrees with geographiclib', () => {
    fc.assert(
      fc.property(latitudes, longitudes, latitudes, longitudes, (lat1, lon1, lat2, lon2) =>
        agrees(oursM(lat1, lon1, lat2, lon2), karneyM(lat1, lon1, lat2, lon2)),
      ),
      { numRuns: 2000, seed: 2013 },
    );
  });

  it.each([
    ['one degree of the equator, a π/180', 0, 0, 0, 1, (6_378_137 * Math.PI) / 180],
    ['across the antimeridian', 0, 179.5, 0, -179.5, (6_378_137 * Math.PI) / 180],
    ['a quarter meridian of WGS 84', 0, 0, 90, 0, 10_001_965.729],
    ['pole to pole', -90, 12, 90, -50, 20_003_931.4586],
    ['antipodes on the equator, over a pole', 0, 0, 0, 180, 20_003_931.4586],
    ['nearly antipodal, Karney 2013 table 5', -30, 0, 29.9, 179.8, 19_989_832.82761],
    ['10 000 km, Karney 2013 table 2', 40, 0, 41.79331020506, 137.84490004377, 10_000_000],
  ])('%s', (_, lat1, lon1, lat2, lon2, expectedM) => {
    expect(oursM(lat1, lon1, lat2, lon2)).toBeCloseTo(expectedM, 3);
  });
});
