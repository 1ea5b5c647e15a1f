/**
 * Source: DIN 33466, Wegweiser für Wanderwege: 4 km/h on the flat, 300 m of height an hour up, 500 m down; the larger of the two times plus half the smaller (not rechecked).
 * The hours are worked out by hand from that.
 */
import { describe, expect, it } from 'vitest';
import { effortAlong, methodHours } from '../../src/lib/planning/route/walking-time.ts';

const hours = (...profile: [distanceM: number, altitudeM: number][]) => {
  const along = effortAlong(profile.map(([distanceM, altitudeM]) => ({ distanceM, altitudeM })));
  return methodHours(along(profile.at(-1)?.[0] ?? 0), 'din-33466');
};

describe('walking time by DIN 33466', () => {
  it.each([
    [
      '4 km on the flat: 1 h',
      1,
      [
        [0, 500],
        [4000, 500],
      ],
    ],
    [
      '8 km with 300 m up: 2 h and half of 1 h',
      2.5,
      [
        [0, 500],
        [8000, 800],
      ],
    ],
    [
      '8 km with 500 m down: 2 h and half of 1 h',
      2.5,
      [
        [0, 1000],
        [8000, 500],
      ],
    ],
    [
      '4 km with 900 m up: 3 h and half of 1 h',
      3.5,
      [
        [0, 500],
        [4000, 1400],
      ],
    ],
    [
      '6 km up and down, 600 m each: 2 h + 1.2 h and half of 1.5 h',
      3.95,
      [
        [0, 500],
        [3000, 1100],
        [6000, 500],
      ],
    ],
    [
      '12 km, 300 m up then 500 m down: 3 h and half of 2 h',
      4,
      [
        [0, 800],
        [4000, 1100],
        [12_000, 600],
      ],
    ],
  ] as [string, number, [number, number][]][])('%s', (_, expectedH, profile) => {
    expect(hours(...profile)).toBeCloseTo(expectedH, 9);
  });
});
