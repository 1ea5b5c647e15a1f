import geodesic from 'geographiclib-geodesic';

export type Position = { readonly latDeg: number; readonly lonDeg: number };

/** Semi-major axis and flattening of WGS 84 (NIMA TR8350.2, table 3.1). */
const A_M = 6_378_137;
const F = 1 / 298.257223563;
const E2 = F * (2 - F);
/** Mean radius of the ellipsoid (Moritz 2000, Geodetic Reference System 1980). */
const MEAN_RADIUS_M = 6_371_008.8;
const RAD = Math.PI / 180;

/**
 * Up to this chord c, the way along the ground is taken as its arc by the first term of the series, s = c (1 + c²/24R²); beyond, Karney's routine is asked.
 * The error is the difference of the local radius of curvature from the mean one: at most 1.2e-7 of the length anywhere on Earth.
 */
export const LONGEST_CHORD_M = 100_000;

/**
 * Geodesic distance on WGS 84, m. Heights are left out of it: 2000 m above the ellipsoid lengthen a way by 0.03 %.
 *
 * Source: up to 100 km the chord in earth-centred coordinates, corrected to the arc; beyond, Karney 2013 (J Geod 87:43-55) by geographiclib.
 *
 * @param a latitude -90 to 90°, any longitude
 */
export const distanceM = (a: Position, b: Position): number => lineLengthM([a, b]);

/** Sum of the geodesic distances from each position to the next, m. */
export function lineLengthM(positions: readonly Position[]): number {
  const xyz = earthCentred(positions);
  return positions.reduce((lengthM, _, i) => (i === 0 ? 0 : lengthM + stepM(positions, xyz, i - 1, i)), 0);
}

/** Earth-centred coordinates of positions on the ellipsoid: x, y and z of each in turn, m. */
export function earthCentred(positions: readonly Position[]): Float64Array {
  const xyz = new Float64Array(3 * positions.length);
  positions.forEach(({ latDeg, lonDeg }, index) => {
    const sinLat = Math.sin(latDeg * RAD);
    const normalM = A_M / Math.sqrt(1 - E2 * sinLat * sinLat);
    const axisM = normalM * Math.cos(latDeg * RAD);
    xyz[3 * index] = axisM * Math.cos(lonDeg * RAD);
    xyz[3 * index + 1] = axisM * Math.sin(lonDeg * RAD);
    xyz[3 * index + 2] = normalM * (1 - E2) * sinLat;
  });
  return xyz;
}

/** Straight distance between two of the positions whose earth-centred coordinates are given, m. */
export const chordM = (xyz: Float64Array, i: number, j: number): number =>
  Math.hypot(
    (xyz[3 * j] ?? 0) - (xyz[3 * i] ?? 0),
    (xyz[3 * j + 1] ?? 0) - (xyz[3 * i + 1] ?? 0),
    (xyz[3 * j + 2] ?? 0) - (xyz[3 * i + 2] ?? 0),
  );

/** Geodesic distance between two of the positions, whose earth-centred coordinates are given too, m. */
export function stepM(positions: readonly Position[], xyz: Float64Array, i: number, j: number): number {
  const chord = chordM(xyz, i, j);
  if (chord <= LONGEST_CHORD_M) return chord * (1 + (chord / MEAN_RADIUS_M) ** 2 / 24);
  const [a, b] = [positions[i], positions[j]];
  return (a && b && geodesic.Geodesic.WGS84.Inverse(a.latDeg, a.lonDeg, b.latDeg, b.lonDeg).s12) ?? NaN;
}
