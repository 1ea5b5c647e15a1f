import { describe, expect, it } from 'vitest';
import { altitudeAt, sliceProfile, stepAt } from './along-profile.ts';

const profile = [
  { distanceM: 0, altitudeM: 600 },
  { distanceM: 100, altitudeM: 700 },
  { distanceM: 300, altitudeM: 500 },
];

it('finds the step of a distance, held to the ends', () => {
  expect([-1, 0, 50, 100, 299, 300, 400].map((m) => stepAt(profile, m))).toEqual([
    { before: 0, share: 0 },
    { before: 0, share: 0 },
    { before: 0, share: 0.5 },
    { before: 1, share: 0 },
    { before: 1, share: 0.995 },
    { before: 1, share: 1 },
    { before: 1, share: 1 },
  ]);
  expect(stepAt(profile.slice(0, 1), 50)).toEqual({ before: 0, share: 0 });
});

it('gives the altitude anywhere along', () => {
  expect([-1, 0, 50, 100, 200, 300, 400].map((m) => altitudeAt(profile, m))).toEqual([
    600, 600, 650, 700, 600, 500, 500,
  ]);
  expect(altitudeAt(profile.slice(2), 7)).toBe(500);
});

describe('a slice', () => {
  it('has a point at each end and those between', () => {
    expect(sliceProfile(profile, 50, 200)).toEqual([
      { distanceM: 50, altitudeM: 650 },
      { distanceM: 100, altitudeM: 700 },
      { distanceM: 200, altitudeM: 600 },
    ]);
    expect(sliceProfile(profile, 0, 300)).toEqual(profile);
  });

  it('leaves no sliver', () => {
    expect(sliceProfile(profile, 99.95, 300).map(({ distanceM }) => distanceM)).toEqual([99.95, 300]);
  });

  it('of no length is one point', () => {
    expect(sliceProfile(profile, 200, 200)).toEqual([{ distanceM: 200, altitudeM: 600 }]);
  });
});
