/**
 * A balance of dry matter, worked by hand: 1 kg of a food with 70 % water holds 0.3 kg of dry matter. Four fifths of its water are 0.56 kg; what is left, 0.44 kg, is 0.14 kg of water and
 * 0.30 kg of dry matter, which is 31.8 %. Singh & Heldman, Introduction to Food Engineering, ch. 1, has this example (not rechecked).
 */
import { describe, expect, it } from 'vitest';
import { dryWeightG, moistureAt } from '../../src/lib/planning/drying/mass-balance.ts';

describe('the worked example of drying', () => {
  it('leaves 0.44 kg at 31.8 % water', () => {
    expect(moistureAt(1000, 0.7, 1000 - 0.8 * 700)).toBeCloseTo(140 / 440, 9);
    expect(140 / 440).toBeCloseTo(0.318, 3);
  });

  it('comes back from that moisture to a loss of 0.56 kg', () => {
    expect(1000 - dryWeightG(1000, 0.7, 0.318)).toBeCloseTo(560, 0);
  });
});
