import { describe, expect, it } from 'vitest';
import { EQUATOR_DEGREE_M, seededNormal, syntheticTrack } from '../../../../tests/support/synthetic-track.ts';
import { lineLengthM } from './geodesic.ts';
import { layPath } from './path.ts';
import { RouteError } from './route-error.ts';
import { routeRemarkText } from '../../presentation/route-words.ts';

const flat = (lengthM: number, stepM = 10) => syntheticTrack({ lengthM, stepM, altitudeM: () => 800 });
const at = (eastM: number, northM = 0) => ({
  latDeg: northM / 110_574.3886,
  lonDeg: -150 + eastM / EQUATOR_DEGREE_M,
});

describe('the length of a track', () => {
  it('is the sum of its steps', () => {
    const path = layPath(flat(12_340));
    expect(path.lengthM).toBeCloseTo(12_340, 3);
    expect([...path.distanceM.slice(0, 3)].map((m) => Math.round(m * 1e4) / 1e4)).toEqual([0, 10, 20]);
    expect(path.pointDistanceM.length).toBe(1235);
    expect(path.left).toEqual([]);
  });

  it('is the same where every point stands twice, or the points lie dense', () => {
    const points = flat(2000);
    expect(layPath(points.flatMap((point) => [point, { ...point }])).lengthM).toBeCloseTo(2000, 3);
    const dense = layPath(flat(2000, 0.5));
    expect(dense.lengthM).toBeCloseTo(2000, 3);
    expect(dense.distanceM.length).toBeLessThan(402);
    expect(dense.pointDistanceM.length).toBe(4001);
  });

  it('grows little while the receiver wanders during a rest', () => {
    const normal = seededNormal(4);
    const rest = Array.from({ length: 1800 }, () => at(1000 + 1.2 * normal(), 1.2 * normal()));
    const points = [...flat(1000), ...rest, ...flat(2000).slice(101)];
    expect(lineLengthM(points)).toBeGreaterThan(5000);
    expect(layPath(points).lengthM).toBeLessThan(2100);
  });

  it('grows little while the receiver wanders on the way: 2 m over 30 s, at 1 m/s', () => {
    const normal = seededNormal(5);
    const keeps = Math.exp(-1 / 30);
    const wander = () => 2 * Math.sqrt(1 - keeps ** 2) * normal();
    let [eastM, northM] = [0, 0];
    const points = Array.from({ length: 20_001 }, (_, second) => {
      [eastM, northM] = [keeps * eastM + wander(), keeps * northM + wander()];
      return at(second + eastM, northM);
    });
    expect(lineLengthM(points)).toBeGreaterThan(1.1 * 20_000);
    expect(layPath(points).lengthM).toBeLessThan(1.03 * 20_000);
  });

  it('leaves out a point that leaps away and back, and says so', () => {
    const points = flat(2000);
    const path = layPath(points.toSpliced(50, 0, { ...at(500, 60_000), elevationM: 0 }));
    expect(path.lengthM).toBeCloseTo(2000, 3);
    expect(path.pointDistanceM[50]).toBeNaN();
    expect(path.left.map(routeRemarkText)).toEqual(['1 point far off the track was ignored.']);
  });

  it('keeps a side trip there and back of a route with few points', () => {
    const path = layPath([at(0), at(3000), at(3000, 4000), at(3000), at(6000)]);
    expect(path.lengthM).toBeCloseTo(14_000, 0);
    expect(path.left).toEqual([]);
  });

  it('goes straight over a gap, and says so', () => {
    const points = [...flat(1000), ...flat(6000).slice(400), at(12_000)];
    const path = layPath(points);
    expect(path.lengthM).toBeCloseTo(12_000, 2);
    expect(path.left.map(routeRemarkText)).toEqual([
      'The track has no point for 6.0 km (3.7 mi) from 6.0 km (3.7 mi) on, and 1 shorter gap elsewhere; each gap is taken as a straight walk.',
    ]);
    expect(layPath(points.slice(0, -1)).left.map(routeRemarkText)).toEqual([
      'The track has no point for 3.0 km (1.9 mi) from 1.0 km (0.6 mi) on; the gap is taken as a straight walk.',
    ]);
  });

  it('follows the ellipsoid over long steps and over the antimeridian', () => {
    const far = [
      { latDeg: 0, lonDeg: 179 },
      { latDeg: 0, lonDeg: -178 },
    ];
    expect(layPath(far).lengthM).toBeCloseTo(3 * EQUATOR_DEGREE_M, 3);
  });
});

describe('refused', () => {
  it.each([
    ['a track that stays in one place', [at(0), at(0.3), at(0)], { code: 'stays-in-place' }],
    [
      'a track around half the world',
      [at(0), { latDeg: 0, lonDeg: 0 }],
      { code: 'too-long-track', lengthM: expect.closeTo(16_698_000, -3), mostM: 5_000_000 },
    ],
  ])('%s', (_, points, fault) => {
    expect(() => layPath(points)).toThrow(RouteError);
    expect(() => layPath(points)).toThrow(expect.objectContaining({ fault }));
  });
});
