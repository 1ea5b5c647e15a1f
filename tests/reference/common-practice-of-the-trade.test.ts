/** Common practice of the trade, told by people who dry at home; no published source. The dish and its prices are invented. */
import { describe, expect, it } from 'vitest';
import { batchSheet } from '../../src/lib/planning/drying/batch-sheet.ts';
import { expectRun } from '../../src/lib/planning/drying/expect-run.ts';
import { AbsorberSize, defaultKitchen, Dryer, PouchSize } from '../../src/lib/planning/model/kitchen.ts';
import { fromCore } from '../../src/lib/planning/units/convert.ts';
import { exampleBatch } from '../support/kitchen-examples.ts';

const kitchen = defaultKitchen();
const freezeDryer = Dryer.parse(kitchen.dryers.find(({ process }) => process === 'freeze-dried'));
const largePouch = PouchSize.parse(kitchen.pouches.find(({ volumeMl }) => volumeMl === 1700));
const largeAbsorber = AbsorberSize.parse(kitchen.absorbers.find(({ oxygenMl }) => oxygenMl === 300));
/** 4 kg at 70 % water, 11 servings of some 110 g when dry. */
const sheet = batchSheet(
  exampleBatch(),
  { ...kitchen, pouches: [largePouch], absorbers: [largeAbsorber] },
  [],
  '2026-09-03',
);

describe('a full load of four trays of a cooked mixed dish', () => {
  const run = (preFrozen: boolean) => expectRun(freezeDryer, preFrozen, 2900, 1, []).hours;

  it('that was not frozen before takes 26 h in a freeze dryer', () => {
    expect(freezeDryer.trayCount).toBe(4);
    expect(run(false).value).toBe(26);
    expect(run(false).low).toBeLessThan(26);
    expect(run(false).high).toBeGreaterThan(26);
  });

  it('takes less when it goes in frozen', () => {
    expect(run(true).value).toBeLessThan(run(false).value);
    expect(run(true).low).toBeLessThan(run(false).low);
    expect(run(true).high).toBeLessThan(run(false).high);
  });
});

describe('a serving of some 110 g of dry mix', () => {
  it('fills about 1 1/4 cups', () => {
    expect(sheet.dry.servingG).toBeGreaterThan(105);
    expect(sheet.dry.servingG).toBeLessThan(115);
    expect(fromCore(sheet.dry.servingMl, 'cup')).toBeCloseTo(1.25, 1);
  });

  it('takes about as much boiling water, or a little less', () => {
    const cupsOfWaterPerCup = sheet.water.servingMl / sheet.dry.servingMl;
    expect(cupsOfWaterPerCup).toBeGreaterThan(0.75);
    expect(cupsOfWaterPerCup).toBeLessThanOrEqual(1.05);
  });

  it('steeps for 5 min, is stirred, and steeps for 4 min more', () => {
    expect(sheet.steep).toEqual({ steepMin: 5 + 4, stirAfterMin: 5 });
  });
});

describe('a pouch of 1.7 l', () => {
  /** Five servings of the same size. */
  const fills = batchSheet(
    exampleBatch({ servings: 5, packedG: 5 * sheet.dry.servingG }),
    { ...kitchen, pouches: [largePouch], absorbers: [largeAbsorber] },
    [],
    '2026-09-03',
  ).fills.map(({ fill }) => fill);

  it('holds four servings with two absorbers of 300 ml', () => {
    expect(fills[0]).toMatchObject({ half: false, servings: 4, pouches: 1, absorbers: 2 });
  });

  it('cut in half holds one serving with one', () => {
    expect(fills[1]).toMatchObject({ half: true, servings: 1, pouches: 1, absorbers: 1 });
    expect(fills).toHaveLength(2);
  });
});

describe('a serving costs', () => {
  it('all that was paid over the servings that came out', () => {
    const pouch = { ...largePouch, priceMinor: 40 };
    const absorber = { ...largeAbsorber, priceMinor: 10 };
    const { cost } = batchSheet(
      exampleBatch({
        energyKwh: 20,
        dryer: { ...freezeDryer, priceMinor: 240_000, expectedBatches: 300 },
        // 8 servings in whole pouches with two absorbers, 2 in halves with one: one serving is eaten at once
        fills: [
          { pouch, servings: 4, pouches: 2, absorber, absorbers: 2 },
          { pouch, half: true, servings: 1, pouches: 2, absorber, absorbers: 1 },
        ],
      }),
      { ...kitchen, electricityMinorPerKwh: 30 },
      [],
      '2026-09-03',
    );
    // ingredients 10.00, electricity 6.00, pouches 2 × 0.40 + 2 × 0.20, absorbers 6 × 0.10, machine 2400 / 300 = 8.00
    expect(cost.totalMinor).toBeCloseTo(1000 + 600 + 120 + 60 + 800, 9);
    expect(cost.perServingMinor).toBeCloseTo(2580 / 10, 9);
  });
});
