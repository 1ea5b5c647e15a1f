import { describe, expect, it } from 'vitest';
import { batchCost } from './costs.ts';

const PAID = {
  ingredientsMinor: 1500,
  energyKwh: 20,
  minorPerKwh: 30,
  pouchesMinor: 100,
  absorbersMinor: 60,
  machineMinor: 240_000,
  expectedBatches: 300,
  servings: 10,
  energyKcal: 5000,
  shopServingMinor: 900,
};

describe('a batch costs', () => {
  it('its ingredients, electricity, pouches, absorbers and share of the machine', () => {
    const { lines, totalMinor, perServingMinor, per1000KcalMinor } = batchCost(PAID);
    expect(lines.map(({ minor }) => minor)).toEqual([1500, 600, 100, 60, 800]);
    expect(totalMinor).toBe(3060);
    expect(perServingMinor).toBe(306);
    expect(per1000KcalMinor).toBe(612);
  });

  it('less than servings from a shop, until the machine is paid for', () => {
    // each batch saves 10 × 900 − 2260 = 6740; 240 000 of them are 35.6 batches
    expect(batchCost(PAID).shop).toEqual({ servingMinor: 900, savedPerServingMinor: 594, batchesToPay: 36 });
    expect(batchCost({ ...PAID, shopServingMinor: 200 }).shop).toEqual({
      servingMinor: 200,
      savedPerServingMinor: -106,
      batchesToPay: undefined,
    });
    expect(batchCost({ ...PAID, machineMinor: 0 }).shop?.batchesToPay).toBeUndefined();
    expect(batchCost({ ...PAID, shopServingMinor: undefined }).shop).toBeUndefined();
  });

  it('nothing by the serving or the kilocalorie where there are none', () => {
    expect(batchCost({ ...PAID, servings: 0, energyKcal: 0 })).toMatchObject({
      perServingMinor: 0,
      per1000KcalMinor: undefined,
    });
  });
});
