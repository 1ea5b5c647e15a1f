/** Source: IAPWS R7-97 (2012), Revised Release on the Industrial Formulation 1997, region 4, tables 35 and 36: computer-program verification values. */
import { describe, expect, it } from 'vitest';
import { saturationPressurePa, saturationTemperatureK } from '../../src/lib/planning/stove/boiling-point.ts';

describe('saturation line of water, IAPWS R7-97', () => {
  it.each([
    [0.1e6, 372.755919],
    [1e6, 453.035632],
  ])('boils at %d Pa at %d K (table 36)', (pressurePa, temperatureK) => {
    expect(saturationTemperatureK(pressurePa)).toBeCloseTo(temperatureK, 6);
  });

  it.each([
    [300, 0.00353658941e6],
    [500, 2.63889776e6],
  ])('has at %d K a pressure of %d Pa (table 35)', (temperatureK, pressurePa) => {
    expect(saturationPressurePa(temperatureK) / pressurePa).toBeCloseTo(1, 8);
  });

  it('is its own inverse from 273.16 K to 640 K', () => {
    for (let temperatureK = 273.16; temperatureK < 640; temperatureK += 7.3)
      expect(saturationTemperatureK(saturationPressurePa(temperatureK))).toBeCloseTo(temperatureK, 4);
  });

  it('refuses what is off the line', () => {
    expect(() => saturationTemperatureK(600)).toThrow(RangeError);
    expect(() => saturationTemperatureK(23e6)).toThrow(RangeError);
    expect(() => saturationPressurePa(273)).toThrow(RangeError);
    expect(() => saturationPressurePa(Number.NaN)).toThrow(RangeError);
  });
});
