import { describe, expect, it } from 'vitest';
import { exampleBatch } from '../../../../tests/support/kitchen-examples.ts';
import { trayCapacityG, trayLoads, traysFor } from './load-trays.ts';

const { dryer } = exampleBatch();
const load = (loadedG: number, tareG = 0) =>
  trayLoads(exampleBatch({ trays: [{ loadedG, tareG }], weighings: [] }))[0];

describe('a tray', () => {
  it('takes what its weight limit and its depth both allow', () => {
    expect(trayCapacityG(dryer, 1)).toBe(1000);
    // 2 cm × 800 cm² × 0.4 g/ml
    expect(trayCapacityG(dryer, 0.4)).toBeCloseTo(640, 9);
  });

  it('is counted full by full', () => {
    expect(traysFor(0, dryer, 1)).toBe(0);
    expect(traysFor(1000, dryer, 1)).toBe(1);
    expect(traysFor(1001, dryer, 1)).toBe(2);
    expect(traysFor(6000, dryer, 1)).toBe(6);
  });

  it('is weighed without its tare and measured in depth', () => {
    expect(load(1300, 500)).toEqual({ wetG: 800, depthMm: 10, tooHeavy: false, tooDeep: false });
    expect(load(1001)).toMatchObject({ tooHeavy: true, tooDeep: false });
    expect(load(1800)).toMatchObject({ tooHeavy: true, tooDeep: true });
  });
});
