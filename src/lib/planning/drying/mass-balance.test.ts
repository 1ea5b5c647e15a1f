import { describe, expect, it } from 'vitest';
import { dryWeightG, moistureAt } from './mass-balance.ts';

describe('dry matter', () => {
  it('is what is left of the weight', () => {
    expect(dryWeightG(1000, 0.7, 0)).toBeCloseTo(300, 9);
    expect(dryWeightG(1000, 0.7, 0.04)).toBeCloseTo(312.5, 9);
    expect(moistureAt(1000, 0.7, 312.5)).toBeCloseTo(0.04, 9);
  });

  it('leaves food that is drier already as it is', () => {
    expect(dryWeightG(500, 0.01, 0.02)).toBe(500);
  });

  it('is nothing in plain water', () => {
    expect(dryWeightG(500, 1, 0.02)).toBe(0);
    expect(moistureAt(500, 1, 20)).toBe(1);
  });

  it('comes out below no water where the food weighs less than its dry matter', () => {
    expect(moistureAt(1000, 0.7, 250)).toBeCloseTo(-0.2, 9);
  });

  it('refuses what is no moisture and no weight', () => {
    expect(() => dryWeightG(1000, 1.1, 0.02)).toThrow('share from 0 to 1');
    expect(() => dryWeightG(1000, Number.NaN, 0.02)).toThrow('share from 0 to 1');
    expect(() => dryWeightG(1000, 0.7, 1)).toThrow('nothing but water');
    expect(() => moistureAt(1000, 0.7, 0)).toThrow('more than 0');
    expect(() => moistureAt(1000, 0.7, -3)).toThrow('more than 0');
  });
});
