/** Source: Naismith 1892, Scottish Mountaineering Club Journal 2:136: an hour for every three miles on the map, with an additional hour for every 2000 feet of ascent. */
import { describe, expect, it } from 'vitest';
import { methodHours } from '../../src/lib/planning/route/walking-time.ts';

const MILE_M = 1609.344;
const FOOT_M = 0.3048;
const hours = (miles: number, upFt: number, downFt: number) =>
  methodHours(
    { distanceM: miles * MILE_M, climbM: upFt * FOOT_M, descentM: downFt * FOOT_M, toblerH: 0 },
    'naismith',
  );

describe('walking time by Naismith 1892', () => {
  it.each([
    ['three miles on the flat', 3, 0, 0, 1],
    ['2000 feet of climb on top', 3, 2000, 0, 2],
    ['descent is not counted', 3, 0, 2000, 1],
    [
      "ten miles with 6300 feet, the walk of Naismith's own note: 6 1/2 h (not rechecked)",
      10,
      6300,
      6300,
      6.48,
    ],
  ])('%s', (_, miles, upFt, downFt, expectedH) => {
    expect(hours(miles, upFt, downFt)).toBeCloseTo(expectedH, 2);
  });
});
