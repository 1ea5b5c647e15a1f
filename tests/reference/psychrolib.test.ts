/** Source: npm `psychrolib`, an independent library of the ASHRAE Handbook of Fundamentals, ch. 1: pressure by altitude (eq. 3), saturation vapour pressure over water (eq. 6). */
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { boilingPointC, saturationPressurePa } from '../../src/lib/planning/stove/boiling-point.ts';
import { standardPressurePa } from '../../src/lib/planning/stove/standard-atmosphere.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

describe('against psychrolib (ASHRAE Fundamentals)', () => {
  it('gives the same air pressure from -400 m to 8848 m, within 0.02 %', () => {
    for (let altitudeM = -400; altitudeM <= 8848; altitudeM += 289)
      expect(
        Math.abs(standardPressurePa(altitudeM) / psychrolib.GetStandardAtmPressure(altitudeM) - 1),
      ).toBeLessThan(2e-4);
  });

  it('gives the same vapour pressure from 1 to 150 °C, within 0.1 %', () => {
    for (let temperatureC = 1; temperatureC <= 150; temperatureC += 1)
      expect(
        Math.abs(saturationPressurePa(temperatureC + 273.15) / psychrolib.GetSatVapPres(temperatureC) - 1),
      ).toBeLessThan(1e-3);
  });

  it('boils at the temperature where psychrolib’s vapour pressure meets its air pressure, within 0.05 °C', () => {
    for (let altitudeM = -400; altitudeM <= 8848; altitudeM += 577) {
      let low = 50;
      let high = 120;
      for (let step = 0; step < 60; step++) {
        const middle = (low + high) / 2;
        if (psychrolib.GetSatVapPres(middle) < psychrolib.GetStandardAtmPressure(altitudeM)) low = middle;
        else high = middle;
      }
      expect(Math.abs(boilingPointC(altitudeM) - low)).toBeLessThan(0.05);
    }
  });

  it('boils near 90 °C at 3000 m', () => {
    expect(boilingPointC(3000)).toBeGreaterThan(89.5);
    expect(boilingPointC(3000)).toBeLessThan(90.5);
  });
});
