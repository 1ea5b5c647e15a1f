import type { Allergen } from '../model/allergens.ts';
import type { BatchCost } from './costs.ts';
import type { DryFood } from './dry-food.ts';
import type { Dryness } from './dryness.ts';
import type { ExpectedRun } from './expect-run.ts';
import type { TrayLoad } from './load-trays.ts';
import type { RecipeTotals } from './recipe-totals.ts';
import type { WaterShare } from './rehydration.ts';
import type { WaterActivity } from './water-activity.ts';

/** All that is reckoned of a batch before its pouches are judged. */
export type BatchFigures = {
  readonly totals: RecipeTotals;
  readonly load: {
    readonly trays: readonly TrayLoad[];
    readonly wetG: number;
    /** What the trays of the dryer take together, g. */
    readonly capacityG: number;
    /** Trays that the cooked food fills, and how much then goes on each, g. */
    readonly traysNeeded: number;
    readonly evenlyG: number;
    /** On the trays, of what was cooked, share. */
    readonly share: number;
  };
  readonly expected: { readonly dryG: number; readonly waterG: number; readonly run: ExpectedRun };
  /** Of the run of the dryer: what this batch has of its hours, electricity and machine, share by the water to remove; and trays that other batches left. */
  readonly run: { readonly share: number; readonly freeTrays: number };
  readonly dryness: Dryness;
  readonly dry: DryFood;
  readonly water: WaterShare & {
    readonly servingMl: number;
    /** Volume of a serving with its water, ml; 0 for food that takes none. */
    readonly rehydratedMl: number;
  };
  readonly steep: { readonly steepMin: number; readonly stirAfterMin?: number };
  readonly cost: BatchCost;
  readonly allergens: readonly Allergen[] | undefined;
  /** Of the dampest tray, estimated from its weight; `undefined` before any is weighed. */
  readonly waterActivity: WaterActivity | undefined;
};
