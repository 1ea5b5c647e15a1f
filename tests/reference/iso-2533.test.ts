/** Source: ISO 2533:1975 Standard Atmosphere / ICAO Doc 7488, table of pressure by geopotential altitude. */
import { describe, expect, it } from 'vitest';
import { standardPressurePa } from '../../src/lib/planning/stove/standard-atmosphere.ts';

describe('pressure of the standard atmosphere, ISO 2533', () => {
  it.each([
    [0, 1013.25],
    [1000, 898.75],
    [2000, 794.95],
    [3000, 701.09],
    [4000, 616.4],
    [5000, 540.2],
  ])('at %d m is %d hPa', (altitudeM, hPa) => {
    // The tables of both documents are printed to about 0.01 hPa by geopotential altitude; they differ by up to 0.02 hPa by edition.
    expect(Math.abs(standardPressurePa(altitudeM) / 100 - hPa)).toBeLessThan(0.03);
  });

  it('refuses what lies outside the troposphere', () => {
    expect(() => standardPressurePa(11_001)).toThrow(RangeError);
    expect(() => standardPressurePa(-5001)).toThrow(RangeError);
    expect(() => standardPressurePa(Number.NaN)).toThrow(RangeError);
  });
});
