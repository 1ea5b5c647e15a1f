/** Sources: specific heat of water 4.186 kJ/(kg K), of ice 2.1, latent heat of fusion 333.55 kJ/kg: handbook values, worked by hand. */
import { describe, expect, it } from 'vitest';
import { heatForWaterKJ } from '../../src/lib/planning/stove/heat-of-water.ts';

describe('heat of water', () => {
  it('is 334.88 kJ for a litre from 20 to 100 °C', () =>
    expect(heatForWaterKJ(1000, 20, 100)).toBeCloseTo(334.88, 6));
  it('is nothing for water that is warm enough', () => expect(heatForWaterKJ(1000, 95, 90)).toBe(0));
  it('warms, melts and heats snow: a litre from -10 to 100 °C takes 21 + 333.55 + 418.6 kJ', () =>
    expect(heatForWaterKJ(1000, -10, 100)).toBeCloseTo(773.15, 6));
  it('takes water at 0 °C as liquid, and is never less for colder water', () => {
    expect(heatForWaterKJ(1000, 0, 100)).toBeCloseTo(418.6, 6);
    for (let fromC = -40; fromC < 90; fromC++)
      expect(heatForWaterKJ(500, fromC, 90)).toBeGreaterThanOrEqual(heatForWaterKJ(500, fromC + 1, 90));
  });
  it('refuses negative amounts and impossible temperatures', () => {
    expect(() => heatForWaterKJ(-1, 10, 50)).toThrow(RangeError);
    expect(() => heatForWaterKJ(100, -61, 50)).toThrow(RangeError);
    expect(() => heatForWaterKJ(100, 10, -1)).toThrow(RangeError);
  });
});
