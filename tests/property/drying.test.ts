import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchSheet } from '../../src/lib/planning/drying/batch-sheet.ts';
import {
  containerMl,
  proposePouches,
  servingsThatFit,
  type Portions,
} from '../../src/lib/planning/drying/portioning.ts';
import { judgeDryness } from '../../src/lib/planning/drying/dryness.ts';
import { keeping } from '../../src/lib/planning/drying/storage.ts';
import { waterActivityOf } from '../../src/lib/planning/drying/water-activity.ts';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { recipeTotals } from '../../src/lib/planning/drying/recipe-totals.ts';
import type { Batch } from '../../src/lib/planning/model/batch.ts';
import { defaultKitchen, PouchSize } from '../../src/lib/planning/model/kitchen.ts';
import { doubtsOf } from '../../src/lib/planning/model/plausibility.ts';
import { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { amount } from '../support/arbitraries.ts';
import { batches, kitchens, recipes, soundBatches } from '../support/kitchen-arbitraries.ts';

const RUNS = { numRuns: 300, seed: 20_260_901, endOnFailure: true };
const TODAY = '2026-09-05';
/** Large pouches too, so that every sound batch finds one. */
const kitchen = {
  ...defaultKitchen(),
  pouches: [
    ...defaultKitchen().pouches,
    PouchSize.parse({ label: 'foil, 8 l', barrier: 'foil pouch', volumeMl: 8000, tareG: 40 }),
  ],
};
const anyBatches = fc.oneof(
  batches,
  soundBatches.map(({ batch }) => batch),
);
const sheetOf = (batch: Batch) => batchSheet(batch, kitchen, [], TODAY);

/** Numbers anywhere in a structure that are not finite, by their path. */
function unfinite(value: unknown, path = 'sheet'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, entry]) => unfinite(entry, `${path}.${key}`));
}

describe('from the ingredients to the pouches', () => {
  it('no dry matter comes or goes in the pot', () =>
    fc.assert(
      fc.property(recipes, (recipe) => {
        const { parts, solidsG, cookedG, problems, energyKcal } = recipeTotals(recipe);
        fc.pre(problems.length === 0);
        const ingredientsG = recipe.ingredients.reduce((sum, { food, quantity, trimmedShare }) => {
          const { waterG, alcoholG } = food.composition;
          return sum + (quantity.amount * trimmedShare * (100 - waterG - alcoholG)) / 100;
        }, 0);
        expect(solidsG).toBeCloseTo(ingredientsG - recipe.fatDrainedG, 6);
        expect(Object.values(parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(
          Math.max(cookedG, solidsG),
          6,
        );
        expect(energyKcal).toBeLessThanOrEqual(9 * solidsG + 1e-6);
      }),
      RUNS,
    ));

  it('energy and dry matter are those of the dish, by what of it is on trays and in pouches', () =>
    fc.assert(
      fc.property(soundBatches, ({ batch }) => {
        const { totals, load, dry, lots, blocks } = sheetOf(batch);
        expect(blocks).toEqual([]);
        const servings = lots.reduce((sum, lot) => sum + lot.pouches * lot.servingsPerPouch, 0);
        expect(servings).toBe(dry.servings);
        const share = load.share * (dry.packedG / dry.dryG);
        const pouched = (of: (lot: PouchLot) => number) =>
          lots.reduce((sum, lot) => sum + lot.pouches * lot.servingsPerPouch * of(lot), 0);
        // lots are rounded to 0.1 kcal and 0.01 g a serving
        expect(Math.abs(pouched((lot) => lot.energyKcal) - totals.energyKcal * share)).toBeLessThan(
          0.0501 * servings,
        );
        expect(Math.abs(pouched((lot) => lot.proteinG ?? 0) - totals.parts.proteinG * share)).toBeLessThan(
          0.00501 * servings,
        );
        expect(Math.abs(pouched((lot) => lot.dryWeightG) - dry.packedG)).toBeLessThan(0.00501 * servings);
        expect((dry.servingG - dry.servingParts.waterG) * servings).toBeCloseTo(totals.solidsG * share, 6);
      }),
      RUNS,
    ));

  it('what water is lost and what is left weigh what was loaded', () =>
    fc.assert(
      fc.property(soundBatches, ({ batch }) => {
        const { load, dry, expected } = sheetOf(batch);
        const packed = dry.packedG / dry.dryG;
        expect((dry.servingG + dry.servingRemovedG) * dry.servings).toBeCloseTo(load.wetG * packed, 6);
        expect(expected.dryG + expected.waterG).toBeCloseTo(load.wetG, 6);
      }),
      RUNS,
    ));
});

describe('more residual moisture', () => {
  it('is more weight, less water to add, as much energy, and never a later best-before', () =>
    fc.assert(
      fc.property(soundBatches, ({ batch, moister }) => {
        fc.pre(batch.packedG === undefined);
        const [dry, wet] = [sheetOf(batch), sheetOf(moister)];
        expect(wet.dry.residual).toBeGreaterThanOrEqual(dry.dry.residual);
        expect(wet.dry.servingG).toBeGreaterThanOrEqual(dry.dry.servingG);
        expect(wet.water.servingMl).toBeLessThanOrEqual(dry.water.servingMl);
        expect(wet.dry.servingKcal).toBeCloseTo(dry.dry.servingKcal, 9);
        const longest = Math.max(...dry.fills.map(({ keeping }) => keeping?.months ?? 0));
        for (const { keeping } of wet.fills) expect(keeping?.months).toBeLessThanOrEqual(longest);
      }),
      RUNS,
    ));
});

describe('proposed pouches', () => {
  const pouchSizes = fc.array(
    fc
      .record({ volumeMl: amount(100, 2500), canBeCut: fc.boolean() })
      .map((size) =>
        PouchSize.parse({ label: `${size.volumeMl} ml`, barrier: 'foil pouch', tareG: 5, ...size }),
      ),
    { minLength: 1, maxLength: 4 },
  );

  it('hold all servings, none overfull, with no more room empty than pouches of one kind', () =>
    fc.assert(
      fc.property(
        pouchSizes,
        fc.integer({ min: 1, max: 14 }),
        amount(50, 700),
        amount(0, 0.5),
        fc.integer({ min: 1, max: 9 }),
        (pouches, servings, servingMl, headspaceShare, most) => {
          const usableMl = (container: Parameters<typeof containerMl>[0]) =>
            containerMl(container) * (1 - headspaceShare);
          const containers = pouches.flatMap((pouch) =>
            (pouch.canBeCut ? [false, true] : [false]).map((half) => ({ pouch, half })),
          );
          const emptyMlOf = containers.flatMap((container) => {
            const fit = Math.min(most, Math.floor(usableMl(container) / servingMl + 1e-9));
            return fit < 1 ? [] : [Math.ceil(servings / fit) * usableMl(container) - servings * servingMl];
          });
          const proposal = proposePouches(
            servings,
            { dryMl: servingMl, wetMl: 0 },
            pouches,
            headspaceShare,
            most,
          );
          expect(proposal === undefined).toBe(emptyMlOf.length === 0);
          if (!proposal) return;

          const sum = (of: (portions: Portions) => number) =>
            proposal.reduce((total, portions) => total + of(portions) * portions.pouches, 0);
          expect(sum((portions) => portions.servings)).toBe(servings);
          for (const portions of proposal) {
            expect(portions.servings).toBeLessThanOrEqual(
              Math.min(most, servingsThatFit(portions, servingMl, headspaceShare)),
            );
            expect(portions.half && !portions.pouch.canBeCut).toBe(false);
          }
          expect(sum(usableMl) - servings * servingMl).toBeLessThanOrEqual(Math.min(...emptyMlOf) + 1e-6);
        },
      ),
      RUNS,
    ));

  it('leave as little room empty as the best of all ways, by trying them all', () => {
    const leastEmptyMl = (usable: readonly number[], servings: number, servingMl: number): number =>
      servings <= 0
        ? 0
        : Math.min(
            ...usable.flatMap((ml) =>
              Array.from(
                { length: Math.min(servings, Math.floor(ml / servingMl + 1e-9)) },
                (_, index) =>
                  ml - (index + 1) * servingMl + leastEmptyMl(usable, servings - index - 1, servingMl),
              ),
            ),
          );
    fc.assert(
      fc.property(
        pouchSizes,
        fc.integer({ min: 1, max: 5 }),
        amount(60, 500),
        (pouches, servings, servingMl) => {
          const containers = pouches.flatMap((pouch) =>
            (pouch.canBeCut ? [false, true] : [false]).map((half) => ({ pouch, half })),
          );
          const proposal = proposePouches(servings, { dryMl: servingMl, wetMl: 0 }, pouches, 0);
          fc.pre(proposal !== undefined);
          const emptyMl = (proposal ?? []).reduce(
            (sum, portions) =>
              sum + portions.pouches * (containerMl(portions) - portions.servings * servingMl),
            0,
          );
          expect(emptyMl).toBeCloseTo(leastEmptyMl(containers.map(containerMl), servings, servingMl), 6);
        },
      ),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('get absorbers that take up their oxygen with its reserve', () =>
    fc.assert(
      fc.property(soundBatches, fc.constantFrom(0, 0.25, 1), ({ batch }, absorberReserve) => {
        const { fills } = batchSheet(batch, { ...kitchen, absorberReserve }, [], TODAY);
        expect(fills.length).toBeGreaterThan(0);
        for (const { absorbedMl, oxygenMl, fill, isOxygenFree } of fills) {
          expect(absorbedMl).toBeGreaterThanOrEqual(oxygenMl * (1 + absorberReserve) - 1e-6);
          expect(isOxygenFree).toBe(true);
          // no fewer of the same would do
          const onesLess = (fill.absorbers - 1) * (fill.absorber?.oxygenMl ?? 0);
          expect(onesLess === 0 || onesLess < oxygenMl * (1 + absorberReserve)).toBe(true);
        }
      }),
      RUNS,
    ));
});

describe('the sheet of any batch in any kitchen', () => {
  it('holds finite numbers only, none of its weights below nothing', () =>
    fc.assert(
      fc.property(batches, kitchens, (batch, anyKitchen) => {
        const sheet = batchSheet(batch, anyKitchen, [], TODAY);
        expect(unfinite(sheet)).toEqual([]);
        const { dry, expected, water, cost, load } = sheet;
        for (const figure of [
          dry.dryG,
          dry.servingG,
          dry.servingKcal,
          dry.servingRemovedG,
          dry.residual,
          expected.dryG,
          expected.waterG,
          water.servingMl,
          cost.totalMinor,
          load.share,
          ...Object.values(dry.servingParts),
        ])
          expect(figure).toBeGreaterThanOrEqual(0);
        for (const { low, value, high } of [expected.run.hours, expected.run.energyKwh]) {
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
        }
      }),
      { ...RUNS, numRuns: 1000 },
    ));

  it('is the same for the same', () =>
    fc.assert(
      fc.property(batches, kitchens, (batch, anyKitchen) => {
        const once = JSON.stringify(batchSheet(batch, anyKitchen, [], TODAY));
        expect(
          JSON.stringify(batchSheet(structuredClone(batch), structuredClone(anyKitchen), [], TODAY)),
        ).toBe(once);
      }),
      RUNS,
    ));

  it('writes lots that the shelf takes, or says why it writes none', () =>
    fc.assert(
      fc.property(anyBatches, kitchens, (batch, anyKitchen) => {
        const { lots, blocks, fills } = batchSheet(batch, anyKitchen, [], TODAY);
        expect(lots).toHaveLength(blocks.length > 0 ? 0 : fills.length);
        expect(blocks.length + lots.length).toBeGreaterThan(0);
        expect(new Set(lots.map(({ code }) => code)).size).toBe(lots.length);
        for (const lot of lots) {
          expect(PouchLot.parse(lot)).toEqual(lot);
          expect(doubtsOf(lot).filter(({ severity }) => severity === 'refuse')).toEqual([]);
        }
      }),
      RUNS,
    ));

  it('lets nothing through to the shelf unasked while a tray is not dry or a check is open', () =>
    fc.assert(
      fc.property(anyBatches, kitchens, (batch, anyKitchen) => {
        const { dryness, blocks, holds, checks } = batchSheet(batch, anyKitchen, [], TODAY);
        const isReady = dryness.dry && checks.every(({ open }) => open === undefined);
        expect(holds.length + blocks.length > 0 || isReady).toBe(true);
        if (isReady) expect(holds).toEqual([]);
        if (dryness.trays.some(({ open }) => open.length > 0)) expect(holds.length).toBeGreaterThan(0);
      }),
      RUNS,
    ));
});

describe('dryness', () => {
  const figures = defaultKitchen().processes['freeze-dried'];
  const judged = (lostG: number, nowG: number, moisture: number, fatShare: number) =>
    judgeDryness(
      {
        trays: [{ tareG: 0, loadedG: 1000 }],
        weighings: [
          { afterH: 20, trays: [{ grossG: nowG + lostG, feel: 'dry through' }] },
          { afterH: 22, trays: [{ grossG: nowG, feel: 'dry through' }] },
        ],
      },
      { moisture, fatShare },
      figures,
      1,
    );

  it('wetter food never passes where drier food does not', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (moisture, fatShare, lostG, waterG, moreWaterG, moreLostG) => {
          fc.pre(fatShare < 1 - moisture);
          const solidsG = 1000 * (1 - moisture);
          const passes = (water: number, lost: number) =>
            judged(lost, solidsG + water, moisture, fatShare).dry;
          if (passes(waterG + moreWaterG, lostG)) expect(passes(waterG, lostG)).toBe(true);
          if (passes(waterG, lostG + moreLostG)) expect(passes(waterG, lostG)).toBe(true);
        },
      ),
      RUNS,
    ));

  it('without a second weighing the wet end of the range counts', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (moisture, waterG) => {
          const [tray] = judgeDryness(
            {
              trays: [{ tareG: 0, loadedG: 1000 }],
              weighings: [
                { afterH: 20, trays: [{ grossG: 1000 * (1 - moisture) + waterG, feel: 'dry through' }] },
              ],
            },
            { moisture, fatShare: 0 },
            figures,
            1,
          ).trays;
          expect(tray?.open.length).toBeGreaterThan(0);
          const isDamp = (tray?.fatFree?.high ?? 0) > figures.mostResidualShare;
          expect(tray?.open.some(({ code }) => code === 'too-moist')).toBe(isDamp);
        },
      ),
      RUNS,
    ));

  it('water activity never falls with moisture', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b) => {
          expect(waterActivityOf(Math.max(a, b)).value).toBeGreaterThanOrEqual(
            waterActivityOf(Math.min(a, b)).value - 1e-12,
          );
        },
      ),
      RUNS,
    ));
});

describe('older food', () => {
  it('never keeps longer, nor warmer food, nor moister', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...defaultKitchen().storage),
        fc.boolean(),
        fc.integer({ min: -25, max: 40 }),
        fc.integer({ min: 0, max: 20 }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.integer({ min: 0, max: 800 }),
        (line, hasMeat, storageTemperatureC, warmerC, residual, more, olderDays) => {
          const until = (sealedOn: string, temperatureC: number, moisture: number) =>
            keeping(
              { ...line, residual: moisture, sealedOn, hasMeat },
              { ...kitchen, storageTemperatureC: temperatureC },
            )?.bestBefore ?? '';
          const fresh = until('2028-03-31', storageTemperatureC, residual);
          expect(until(addDays('2028-03-31', -olderDays), storageTemperatureC, residual) <= fresh).toBe(true);
          expect(until('2028-03-31', storageTemperatureC + warmerC, residual) <= fresh).toBe(true);
          expect(until('2028-03-31', storageTemperatureC, residual + more) <= fresh).toBe(true);
        },
      ),
      RUNS,
    ));
});
