/** Source: specific heat of water 4.186 kJ/(kg K), the 15 °C calorie; worked by hand. */
import { describe, expect, it } from 'vitest';
import { heatForWaterKJ } from '../../src/lib/planning/stove/heat-of-water.ts';

describe('heat of water', () => {
  it('is 334.88 kJ for a litre from 20 to 100 °C', () =>
    expect(heatForWaterKJ(1000, 20, 100)).toBeCloseTo(334.88, 6));
  it('is nothing for water that is warm enough', () => expect(heatForWaterKJ(1000, 95, 90)).toBe(0));
  it('refuses ice and negative amounts', () => {
    expect(() => heatForWaterKJ(100, -1, 50)).toThrow(RangeError);
    expect(() => heatForWaterKJ(-1, 10, 50)).toThrow(RangeError);
  });
});
