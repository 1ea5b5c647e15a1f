import { describe, expect, it } from 'vitest';
import { exampleBatch } from '../../../../tests/support/kitchen-examples.ts';
import { Batch, type PouchesByWeight } from '../model/batch.ts';
import { defaultKitchen, PouchSize } from '../model/kitchen.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import { batchSheet } from './batch-sheet.ts';
import { quickBatch } from './quick-batch.ts';

const TODAY = '2026-09-03';
const POUCH = PouchSize.parse({ label: 'foil', barrier: 'foil pouch', volumeMl: 2000, tareG: 20 });
const HOW = {
  pouch: POUCH,
  half: false,
  absorber: { label: '500 ml', oxygenMl: 2000, tareG: 5, priceMinor: 10 },
  absorbers: 1,
};

/** 1200 g of dry matter in eleven servings, all of it in pouches: nothing was weighed before. */
const quick = (said: PouchesByWeight, changes: Parameters<typeof exampleBatch>[0] = {}) =>
  Batch.parse(quickBatch(exampleBatch({ trays: [], weighings: [], ...changes }), said, HOW));
const sheetOf = (batch: Batch) => batchSheet(batch, defaultKitchen(), [], TODAY);

describe('a batch that skips its steps', () => {
  it('is sealed by the weight of its pouches, and says what nobody measured', () => {
    const batch = quick({ pouches: 5, netG: 220, restG: 110 });
    const { lots, blocks, holds, notMeasured } = sheetOf(batch);
    expect([...blocks, ...holds]).toEqual([]);
    expect(notMeasured).toEqual(['dish', 'trays', 'dryness', 'cup', 'electricity']);
    expect(lots.map(({ pouches, servingsPerPouch }) => [pouches, servingsPerPouch])).toEqual([
      [5, 2],
      [1, 1],
    ]);
    for (const lot of lots) {
      expect(lot).toMatchObject({ dryWeightG: 110, weighedDry: false });
      expect(lot.estimated?.energyKcal).toMatchObject({ from: 'recipe' });
      expect(lot.estimated?.waterMl).toMatchObject({ from: 'recipe' });
      // 1210 of the 1224 g that the recipe comes to when dry, 5200 kcal in all
      expect(lot.energyKcal).toBeCloseTo((5200 * 1210) / 1200 / (1 / 0.98) / 11, 0);
      expect(PouchLot.parse(lot)).toEqual(lot);
    }
  });

  it('takes the servings that the cook says, and gives the rest its share by weight', () => {
    const { lots } = sheetOf(quick({ pouches: 4, netG: 270, restG: 135, servings: 3 }));
    expect(lots.map(({ servingsPerPouch }) => servingsPerPouch)).toEqual([3, 1.5]);
    expect(lots.map(({ dryWeightG }) => dryWeightG)).toEqual([90, 90]);
  });

  it('keeps every safety check', () => {
    const done = exampleBatch().checks;
    const without = (id: string) =>
      sheetOf(quick({ pouches: 6, netG: 200 }, { checks: done.filter((check) => check.id !== id) })).holds;
    expect(done.length).toBeGreaterThan(4);
    for (const { id } of done)
      expect(without(id)).toMatchObject([{ check: { id }, open: { code: 'not-ticked' } }]);
  });

  it('keeps less long than the same food that was weighed dry: it counts as damp as is let through', () => {
    const months = (batch: Batch) => sheetOf(batch).fills[0]!.keeping!.months;
    const weighed = months(exampleBatch({ fills: quick({ pouches: 6, netG: 200 }).fills }));
    expect(months(quick({ pouches: 6, netG: 200 }))).toBe(Math.floor(weighed * (0.02 / 0.05)));
  });

  it('is held where its pouches weigh more than dry food would, and refused where germs could grow', () => {
    // 1200 g of dry matter, 160 g of it fat: 120 g of water in 1160 g
    const damp = sheetOf(quick({ pouches: 6, netG: 220 }));
    expect(damp.blocks).toEqual([]);
    expect(damp.holds).toEqual([{ inPouches: expect.closeTo(120 / 1160, 6), most: 0.05 }]);
    expect(sheetOf(quick({ pouches: 6, netG: 220 }, { releasedBecause: 'frozen' })).lots).toHaveLength(1);
    const wet = sheetOf(quick({ pouches: 6, netG: 200 }, { waterActivity: 0.9, releasedBecause: 'no' }));
    expect(wet.blocks).toMatchObject([{ code: 'germs-can-grow' }]);
    expect(wet.lots).toEqual([]);
  });

  it('is held by what was found on a tray, and not by what nobody looked at', () => {
    const trays = [{ loadedG: 1000 }, { loadedG: 1000 }, { loadedG: 1000 }, { loadedG: 1000 }];
    const once = (feel: 'dry through' | 'cold spot') => ({
      trays,
      weighings: [{ afterH: 20, trays: trays.map(() => ({ grossG: 306, feel })) }],
    });
    expect(sheetOf(quick({ pouches: 6, netG: 200 }, { trays })).holds).toEqual([]);
    const found = sheetOf(quick({ pouches: 6, netG: 200 }, once('cold spot'))).holds;
    expect(found).toContainEqual({ tray: 1, open: { code: 'cold-spot' } });
  });
});
