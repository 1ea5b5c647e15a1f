import { ALLERGENS, type Allergen } from '../model/allergens.ts';
import type { Batch, PouchFill } from '../model/batch.ts';
import type { Kitchen, ProcessFigures } from '../model/kitchen.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { Recipe } from '../model/recipe.ts';
import type { BatchFigures } from './batch-figures.ts';
import { batchNotices, servingsIn, type BatchNotice } from './batch-notices.ts';
import { batchCost, type BatchCost } from './costs.ts';
import { dryFood, type DryFood } from './dry-food.ts';
import { judgeDryness, type Dryness, type DrynessGap, type TrayDryness } from './dryness.ts';
import { expectRun, type Run } from './expect-run.ts';
import { fillPouches, type FillSheet } from './fill-pouches.ts';
import { trayCapacityG, trayLoads, traysFor } from './load-trays.ts';
import { dryWeightG } from './mass-balance.ts';
import { gapsFound, notMeasured, waterInPouches, type Measurement } from './quick-batch.ts';
import { recipeTotals, type RecipeTotals } from './recipe-totals.ts';
import { waterShareOf, waterToAddMl } from './rehydration.ts';
import { freeTrays } from './shared-run.ts';
import { checksOf, type CheckGap, type SafetyCheck } from './safety-steps.ts';
import { sealedLots, type SealingBlock } from './sealed-lots.ts';
import {
  CONTROLLED_FROM,
  NOTHING_GROWS_BELOW,
  waterActivityOf,
  type WaterActivity,
} from './water-activity.ts';

/** What is not shown to be dry or safe: of a tray, counted from 1, of a check, or of a meter's reading. */
export type SealingHold =
  | { readonly tray: number; readonly open: DrynessGap }
  | { readonly check: SafetyCheck; readonly open: CheckGap }
  | { readonly waterActivity: number; readonly limit: number }
  /** Water in the pouches of a batch whose trays nobody weighed, share of the food without its fat. */
  | { readonly inPouches: number; readonly most: number };

export type BatchSheet = BatchFigures & {
  readonly fills: readonly FillSheet[];
  readonly checks: readonly (SafetyCheck & { readonly open: CheckGap | undefined })[];
  readonly notices: readonly BatchNotice[];
  /** Why it cannot be sealed at all. */
  readonly blocks: readonly SealingBlock[];
  /** Why it is not let onto the shelf unless the cook says so and why. */
  readonly holds: readonly SealingHold[];
  /** What sealing writes. */
  readonly lots: readonly PouchLot[];
  readonly notMeasured: readonly Measurement[];
};

/**
 * The spine of the kitchen: all that is known of a batch, from the ingredients to the lots that sealing would write. Pure.
 *
 * Dry matter and energy are those of the cooked dish, in the share of it that went onto the trays and from there into pouches; only water is lost in between.
 *
 * @param runs finished runs of all dryers
 * @param today calendar date, for what is not sealed yet
 * @param beside other batches in the same run of the dryer
 */
export function batchSheet(
  batch: Batch,
  kitchen: Kitchen,
  runs: readonly Run[],
  today: string,
  beside: readonly Batch[] = [],
): BatchSheet {
  const { recipe, dryer } = batch;
  const process = kitchen.processes[dryer.process];
  const sealedOn = batch.sealed?.on ?? today;

  const totals = recipeTotals(recipe, batch.timesCooked, batch.cookedG);
  const free = freeTrays(dryer, beside);
  const load = loadOf(batch, totals, free);
  const dryness = judgeDryness(
    batch,
    { moisture: totals.moisture, fatShare: totals.cookedG > 0 ? totals.parts.fatG / totals.cookedG : 0 },
    process,
    kitchen.scaleStepG,
  );
  const expectedDryG = dryWeightG(load.wetG, totals.moisture, process.residualShare);
  const expectedWaterG = Math.max(0, load.wetG - expectedDryG);
  const others = beside.map((other) => waterAndFill(other, kitchen));
  const runWaterG = others.reduce((sum, { waterG }) => sum + waterG, expectedWaterG);
  const filledShare = others.reduce(
    (sum, { filled }) => sum + filled,
    load.capacityG > 0 ? load.wetG / load.capacityG : 0,
  );
  const run = expectRun(dryer, batch.preFrozen, runWaterG, filledShare, runs);
  const shareOfRun = runWaterG > 0 ? expectedWaterG / runWaterG : 1 / (beside.length + 1);
  const dry = dryFood(batch, totals, load, dryness, expectedDryG, process.mostResidualShare);
  const inPouches = waterInPouches(batch, totals, load.wetG, dry);
  const share = waterShareOf(recipe, process);
  const waterMl = recipe.waterKind === 'none' ? 0 : waterToAddMl(dry.servingRemovedG, share.share);
  const wetMl = waterMl > 0 ? (dry.servingG + waterMl) / recipe.bulkGPerMl : 0;
  const fills = fillPouches(batch, kitchen, dry, totals.fatClass, sealedOn, wetMl);

  const figures: BatchFigures = {
    totals,
    load,
    expected: { dryG: expectedDryG, waterG: expectedWaterG, run },
    run: { share: shareOfRun, freeTrays: free },
    dryness,
    dry,
    water: { ...share, servingMl: waterMl, rehydratedMl: wetMl },
    steep: steepOf(recipe, process),
    cost: costOf(batch, kitchen, totals, load.share, dry, fills ?? [], {
      share: shareOfRun,
      energyKwh:
        [batch, ...beside].find(({ energyKwh }) => energyKwh !== undefined)?.energyKwh ?? run.energyKwh.value,
    }),
    allergens: allergensOf(totals, batch.allergens),
    waterActivity: dampest(inPouches ? [inPouches] : ofTrays(dryness)),
  };
  const checks = checksOf(batch, kitchen, sealedOn);
  const notices = batchNotices(batch, kitchen, figures, fills, sealedOn);
  return {
    ...figures,
    fills: fills ?? [],
    checks,
    notices,
    holds: [
      ...dryness.trays.flatMap(({ open }, index) =>
        gapsFound(batch, open).map((gap) => ({ tray: index + 1, open: gap })),
      ),
      ...(inPouches && inPouches.value > process.mostResidualShare
        ? [{ inPouches: inPouches.value, most: process.mostResidualShare }]
        : []),
      ...activityHolds(batch),
      ...checks.flatMap(({ open, ...check }) => (open ? [{ check, open }] : [])),
    ],
    ...sealedLots(batch, figures, fills ?? [], notices, sealedOn),
    notMeasured: notMeasured(batch, dry),
  };
}

type Moisture = NonNullable<TrayDryness['fatFree']>;
const ofTrays = ({ trays }: Dryness): Moisture[] =>
  trays.flatMap(({ fatFree }) => (fatFree ? [fatFree] : []));

/** Of the food with most water, with the range of its moisture and of the estimate. */
function dampest(known: readonly Moisture[]): WaterActivity | undefined {
  const worst = (end: 'low' | 'value' | 'high') =>
    waterActivityOf(Math.max(...known.map((tray) => tray[end])))[end];
  return known.length > 0 ? { value: worst('value'), low: worst('low'), high: worst('high') } : undefined;
}

/** A meter's reading at which moulds and yeasts can grow; where germs can, the batch cannot be sealed at all: see `batchNotices`. */
const activityHolds = ({ waterActivity }: Batch): SealingHold[] =>
  waterActivity !== undefined && waterActivity >= NOTHING_GROWS_BELOW && waterActivity < CONTROLLED_FROM
    ? [{ waterActivity, limit: NOTHING_GROWS_BELOW }]
    : [];

/** What is on the trays; before any is weighed in, what would be. */
function loadOf(batch: Batch, totals: RecipeTotals, free: number): BatchSheet['load'] {
  const { dryer, recipe } = batch;
  const trays = trayLoads(batch);
  const trayG = trayCapacityG(dryer, recipe.bulkGPerMl);
  const traysNeeded = traysFor(totals.cookedG, dryer, recipe.bulkGPerMl);
  const wetG = trays.length > 0 ? trays.reduce((sum, tray) => sum + tray.wetG, 0) : totals.cookedG;
  return {
    trays,
    wetG,
    capacityG: dryer.trayCount * trayG,
    traysNeeded,
    evenlyG: Math.min(trayG, totals.cookedG / Math.max(1, Math.min(traysNeeded, free))),
    share: totals.cookedG > 0 ? wetG / totals.cookedG : 0,
  };
}

/** What another batch brings into the run: water to remove, g, and the share of the dryer that it fills. */
function waterAndFill(batch: Batch, kitchen: Kitchen): { waterG: number; filled: number } {
  const totals = recipeTotals(batch.recipe, batch.timesCooked, batch.cookedG);
  const { wetG, capacityG } = loadOf(batch, totals, batch.dryer.trayCount);
  const { residualShare } = kitchen.processes[batch.dryer.process];
  return {
    waterG: Math.max(0, wetG - dryWeightG(wetG, totals.moisture, residualShare)),
    filled: capacityG > 0 ? wetG / capacityG : 0,
  };
}

/** How long it steeps, by the recipe or else as is usual for its way of drying; a stir that does not fall within is left out. */
function steepOf(recipe: Recipe, usual: ProcessFigures): BatchSheet['steep'] {
  const steepMin = recipe.waterKind === 'none' ? 0 : (recipe.steepMin ?? usual.steepMin);
  const stirAfterMin =
    recipe.stirAfterMin ?? (recipe.steepMin === undefined ? usual.stirAfterMin : undefined);
  return stirAfterMin !== undefined && stirAfterMin > 0 && stirAfterMin < steepMin
    ? { steepMin, stirAfterMin }
    : { steepMin };
}

function costOf(
  batch: Batch,
  kitchen: Kitchen,
  totals: RecipeTotals,
  share: number,
  dry: DryFood,
  fills: readonly FillSheet[],
  run: { readonly share: number; readonly energyKwh: number },
): BatchCost {
  const sumOf = (of: (fill: PouchFill) => number) =>
    fills.reduce((sum, { fill }) => sum + of(fill) * fill.pouches, 0);
  const servings = servingsIn(fills) || dry.servings;
  return batchCost({
    ingredientsMinor: totals.costMinor * Math.min(1, share),
    energyKwh: run.energyKwh * run.share,
    turnaroundKwh: (batch.dryer.turnaroundKwh ?? 0) * run.share,
    minorPerKwh: kitchen.electricityMinorPerKwh,
    pouchesMinor: sumOf(({ pouch, half }) => pouch.priceMinor * (half ? 0.5 : 1)),
    absorbersMinor: sumOf(({ absorber, absorbers }) => (absorber?.priceMinor ?? 0) * absorbers),
    machineMinor: batch.dryer.priceMinor * run.share,
    expectedBatches: batch.dryer.expectedBatches,
    servings,
    energyKcal: dry.servingKcal * servings,
    shopServingMinor: batch.shopServingMinor ?? kitchen.shopServingMinor,
  });
}

/** From the ingredients and from the cook; `undefined` where neither knows of all. */
function allergensOf(totals: RecipeTotals, stated: readonly Allergen[] | undefined): Allergen[] | undefined {
  if (totals.allergensUnstated.length > 0 && stated === undefined) return undefined;
  const all = new Set([...totals.allergens, ...(stated ?? [])]);
  return ALLERGENS.filter((allergen) => all.has(allergen));
}
