import { describe, expect, it } from 'vitest';
import {
  gable,
  hills,
  seededNormal,
  syntheticTrack,
  type TrackPoint,
} from '../../../../tests/support/synthetic-track.ts';
import { ProfilePoint } from '../model/route.ts';
import { climbAndDescent, makeProfile } from './make-profile.ts';
import { layPath } from './path.ts';
import { routeRemarkText } from '../../presentation/route-words.ts';

const made = (points: TrackPoint[]) => makeProfile(points, layPath(points));
const climbOf = (points: TrackPoint[]) => climbAndDescent(made(points).profile);
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
const flat = () => 1000;

describe('climb is not invented', () => {
  it.each([
    [1, 10],
    [3, 1],
    [3, 10],
    [3, 30],
    [3, 50],
    [5, 10],
    [10, 10],
  ])('on 50 km of flat with a noise of %d m in points %d m apart', (noiseM, stepM) => {
    for (const seed of SEEDS) {
      const { climbM, descentM } = climbOf(
        syntheticTrack({ lengthM: 50_000, stepM, altitudeM: flat, noiseM, seed }),
      );
      expect(climbM + descentM).toBeLessThan(Math.max(10, 2 * noiseM));
    }
  });

  it('and to an eighth of the raw rises where the error drifts: 3 m, falling off over 100 m of the way', () => {
    for (const seed of SEEDS) {
      const normal = seededNormal(seed);
      let driftM = 3 * normal();
      const points = syntheticTrack({ lengthM: 50_000, altitudeM: flat });
      for (const point of points) {
        driftM = driftM * Math.exp(-0.1) + 3 * Math.sqrt(1 - Math.exp(-0.2)) * normal();
        point.elevationM = 1000 + driftM;
      }
      const raw = points
        .slice(1)
        .reduce(
          (sum, { elevationM = 0 }, i) => sum + Math.max(0, elevationM - (points[i]?.elevationM ?? 0)),
          0,
        );
      expect(raw).toBeGreaterThan(2500);
      expect(climbOf(points).climbM).toBeLessThan(raw / 8);
    }
  });
});

describe('climb is kept', () => {
  it.each([0, 1, 3, 5])('of one way up of 500 m, to three in a hundred, at a noise of %d m', (noiseM) => {
    for (const seed of SEEDS) {
      const ramp = syntheticTrack({ lengthM: 10_000, altitudeM: (m) => 600 + m / 20, noiseM, seed });
      expect(Math.abs(climbOf(ramp).climbM / 500 - 1)).toBeLessThan(0.03);
      expect(climbOf(ramp).descentM).toBeLessThan(10);
    }
  });

  it.each([
    [0, 500],
    [1, 500],
    [3, 500],
    [3, 800],
    [5, 800],
  ])(
    'of rolling hills of 30 m, to ten in a hundred, at a noise of %d m and with a hill every %d m',
    (noiseM, everyM) => {
      const lengthM = 40 * everyM;
      for (const seed of SEEDS) {
        const { climbM, descentM } = climbOf(
          syntheticTrack({ lengthM, altitudeM: hills(30, everyM), noiseM, seed }),
        );
        expect(Math.abs(climbM / 1200 - 1)).toBeLessThan(0.1);
        expect(Math.abs(descentM / 1200 - 1)).toBeLessThan(0.1);
      }
    },
  );

  it('of a gable of 60 %', () => {
    for (const noiseM of [0, 3]) {
      const { climbM, descentM } = climbOf(
        syntheticTrack({ lengthM: 2000, altitudeM: gable(600, 2000), noiseM }),
      );
      expect(Math.abs(climbM / 600 - 1)).toBeLessThan(0.03);
      expect(Math.abs(descentM / 600 - 1)).toBeLessThan(0.03);
    }
  });

  it('of points far apart, which are believed as they stand', () => {
    const points = syntheticTrack({ lengthM: 8000, stepM: 1000, altitudeM: hills(200, 2000) });
    expect(climbOf(points).climbM).toBeGreaterThan(0.97 * 800);
  });

  it('under the sea as on the highest mountain', () => {
    const deep = syntheticTrack({ lengthM: 4000, altitudeM: (m) => -400 + m / 10 });
    expect(climbOf(deep).climbM).toBeCloseTo(400, 0);
    const high = made(syntheticTrack({ lengthM: 4000, altitudeM: (m) => 8448 + m / 10, noiseM: 5 })).profile;
    for (const point of high) expect(ProfilePoint.safeParse(point).error).toBeUndefined();
    expect(climbAndDescent(high).climbM).toBeGreaterThan(380);
  });
});

describe('a track', () => {
  const walked = syntheticTrack({
    lengthM: 12_000,
    altitudeM: (m) => hills(60, 900)(m) + m / 30,
    noiseM: 3,
    seed: 9,
  });

  it('walked backwards swaps climb and descent', () => {
    const there = climbOf(walked);
    const back = climbOf(walked.toReversed());
    expect(Math.abs(back.climbM - there.descentM)).toBeLessThan(0.5);
    expect(Math.abs(back.descentM - there.climbM)).toBeLessThan(0.5);
  });

  it('whose points stand twice has the same profile', () => {
    expect(made(walked.flatMap((point) => [point, { ...point }])).profile).toEqual(made(walked).profile);
  });

  it('has a profile whose plain rises are its climb', () => {
    const { profile } = made(walked);
    const rises = profile.map(({ altitudeM }, i) => altitudeM - (profile[i - 1]?.altitudeM ?? altitudeM));
    const climbM = rises.filter((riseM) => riseM > 0).reduce((sum, riseM) => sum + riseM, 0);
    expect(climbAndDescent(profile).climbM).toBeCloseTo(climbM, 6);
    const [first, last] = [profile[0], profile.at(-1)];
    const { descentM } = climbAndDescent(profile);
    expect(climbM - descentM).toBeCloseTo((last?.altitudeM ?? NaN) - (first?.altitudeM ?? NaN), 6);
    expect([first?.distanceM, last?.distanceM]).toEqual([0, 12_000]);
  });

  it('of 200 000 points keeps its tops in 2000 points', () => {
    const long = syntheticTrack({ lengthM: 200_000, stepM: 1, altitudeM: hills(100, 1000), noiseM: 3 });
    const { profile } = made(long);
    expect(profile.length).toBeLessThanOrEqual(2000);
    profile.forEach((point, i) => expect(point.distanceM).toBeGreaterThan(profile[i - 1]?.distanceM ?? -1));
    expect(Math.abs(climbAndDescent(profile).climbM / 20_000 - 1)).toBeLessThan(0.03);
  });

  it('of two points is a line', () => {
    const { profile } = made(syntheticTrack({ lengthM: 100, stepM: 100, altitudeM: (m) => 500 + m / 10 }));
    expect(profile.length).toBe(11);
    expect(climbAndDescent(profile).climbM).toBeCloseTo(10, 6);
  });

  it('shorter than a step of the grid still has a profile', () => {
    const { profile } = made(syntheticTrack({ lengthM: 4, stepM: 4, altitudeM: flat }));
    expect(profile).toEqual([
      { distanceM: 0, altitudeM: 1000 },
      { distanceM: 4, altitudeM: 1000 },
    ]);
  });
});

describe('elevation that cannot be believed', () => {
  const ramp = () => syntheticTrack({ lengthM: 10_000, altitudeM: (m) => 600 + m / 20, noiseM: 1 });

  it('is none at all: the profile is flat and says so', () => {
    const { profile, altitudeKnown, left } = made(
      ramp().map((point) => ({ ...point, elevationM: undefined })),
    );
    expect(altitudeKnown).toBe(false);
    expect(new Set(profile.map((point) => point.altitudeM))).toEqual(new Set([0]));
    expect(left.map(routeRemarkText)).toEqual([
      'The track has no elevation, so that its climb is not known and is taken as none.',
    ]);
  });

  it('is missing here and there, or out of this world', () => {
    const points = ramp();
    points.slice(200, 300).forEach((point) => (point.elevationM = undefined));
    points.slice(0, 2).forEach((point) => (point.elevationM = -32_768));
    const { profile, left, altitudeKnown } = made(points);
    expect(altitudeKnown).toBe(true);
    expect(climbAndDescent(profile).climbM).toBeCloseTo(500, -1);
    expect(left.map(routeRemarkText)).toEqual([
      '102 of 1001 points have no usable elevation; it is interpolated from their neighbours.',
    ]);
  });

  it('is a spike, within the track and at its ends', () => {
    const points = ramp();
    for (const index of [0, 1, 400, 401, 402, 700, 1000])
      points[index]!.elevationM = index === 700 ? 2000 : 0;
    const { profile, left } = made(points);
    expect(climbAndDescent(profile).climbM).toBeCloseTo(500, -1);
    expect(climbAndDescent(profile).descentM).toBeLessThan(5);
    expect(left.map(routeRemarkText)).toEqual([
      "7 points had elevations far from their neighbours'; they were ignored.",
    ]);
  });

  it('but a cliff is no spike', () => {
    const points = syntheticTrack({ lengthM: 2000, altitudeM: (m) => (m < 1000 ? 500 : 560), noiseM: 0.5 });
    expect(climbOf(points).climbM).toBeCloseTo(60, -1);
    expect(made(points).left).toEqual([]);
  });
});

it('a hand-made profile is counted with hysteresis too', () => {
  const profile = [0, 6, 1, 30, 24, 38, 20, 50].map((altitudeM, i) => ({ distanceM: i * 100, altitudeM }));
  expect(climbAndDescent(profile)).toEqual({ climbM: 38 + 30, descentM: 18 });
});
