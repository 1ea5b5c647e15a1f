/**
 * The densities of the parts of food, held against measured ones instead of against the fits that they are from (Choi & Okos 1986, not rechecked). Sources: water at 20 °C 998.2 kg/m³ (IAPWS-95);
 * olive oil 216 g and water 237 g to a cup of 236.6 ml (USDA National Nutrient Database SR26, weights); sucrose crystals 1587 and glucose 1544 kg/m³, starch granules some 1500 kg/m³,
 * dry protein some 1300 to 1400 kg/m³, rock salt 2165 kg/m³ (handbook values, not rechecked).
 */
import { describe, expect, it } from 'vitest';
import { trueVolumeMl } from '../../src/lib/planning/drying/true-volume.ts';

const NOTHING = { waterG: 0, proteinG: 0, fatG: 0, carbohydrateG: 0, fibreG: 0, ashG: 0 };
const density = (part: keyof typeof NOTHING) => 1000 / trueVolumeMl({ ...NOTHING, [part]: 1000 });

describe('the density', () => {
  it('of water is that of water, within 0.3 %', () =>
    expect(Math.abs(density('waterG') / 0.9982 - 1)).toBeLessThan(0.003));

  it('of fat is that of olive oil by the cup, within 1 %', () =>
    expect(Math.abs(density('fatG') / (216 / 236.6) - 1)).toBeLessThan(0.01));

  it('of carbohydrate lies between starch and sugar', () => {
    expect(density('carbohydrateG')).toBeGreaterThan(1.5);
    expect(density('carbohydrateG')).toBeLessThan(1.587 * 1.01);
  });

  it('of protein lies between 1.3 and 1.4', () => {
    expect(density('proteinG')).toBeGreaterThan(1.3);
    expect(density('proteinG')).toBeLessThan(1.4);
  });

  it('of ash is above that of salt, as minerals are heavier', () =>
    expect(density('ashG')).toBeGreaterThan(2.165));

  it('volumes of the parts add up', () =>
    expect(trueVolumeMl({ ...NOTHING, waterG: 100, fatG: 50 })).toBeCloseTo(
      100 / density('waterG') + 50 / density('fatG'),
      9,
    ));
});
