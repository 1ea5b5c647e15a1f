/**
 * Source: Choi & Okos 1986, in Le Maguer & Jelen (eds.), Food Engineering and Process Applications 1 (memory): density of the parts of food, kg/m³, as linear fits
 * over temperature (water: quadratic), here at 20 °C.
 */
import { describe, expect, it } from 'vitest';
import { trueVolumeMl } from '../../src/lib/planning/drying/true-volume.ts';

const T = 20;
const NOTHING = { waterG: 0, proteinG: 0, fatG: 0, carbohydrateG: 0, fibreG: 0, ashG: 0 };

describe('the volume of 1 kg', () => {
  it.each([
    ['waterG', 997.18 + 0.0031439 * T - 0.0037574 * T ** 2],
    ['proteinG', 1329.9 - 0.5184 * T],
    ['fatG', 925.59 - 0.41757 * T],
    ['carbohydrateG', 1599.1 - 0.31046 * T],
    ['fibreG', 1311.5 - 0.36589 * T],
    ['ashG', 2423.8 - 0.28063 * T],
  ])('of %s is that of its density, %d kg/m³', (part, densityKgPerM3) => {
    const litres = trueVolumeMl({ ...NOTHING, [part]: 1000 }) / 1000;
    expect(Math.abs(1000 / litres - densityKgPerM3)).toBeLessThan(0.06);
  });
});
