/** Source: Singh & Heldman, Introduction to Food Engineering, ch. 1, material balances (memory): 1 kg of a food with 70 % water from which 80 % of its water is removed has lost 0.56 kg and holds 31.8 % water. */
import { describe, expect, it } from 'vitest';
import { dryWeightG, moistureAt } from '../../src/lib/planning/drying/mass-balance.ts';

describe('the worked example of drying', () => {
  it('leaves 0.44 kg at 31.8 % water', () => {
    expect(moistureAt(1000, 0.7, 1000 - 560)).toBeCloseTo(0.318, 3);
  });

  it('comes back from that moisture to a loss of 0.56 kg', () => {
    expect(1000 - dryWeightG(1000, 0.7, 0.318)).toBeCloseTo(560, 0);
  });
});
