import type { Batch, PouchesByWeight, PouchFill } from '../model/batch.ts';
import { ALIKE } from '../model/complete-lot.ts';
import type { LotEstimate } from '../model/lot-estimate.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { RecipeTotals } from './recipe-totals.ts';
import { servingsNow } from './serving-size.ts';
import type { DryFood } from './dry-food.ts';
import { waterLeft, type DrynessGap } from './dryness.ts';

/** What scales and meters could have told of a batch, and did not. */
export const MEASUREMENTS = ['dish', 'trays', 'dryness', 'cup', 'electricity'] as const;
export type Measurement = (typeof MEASUREMENTS)[number];

const toThousandths = (value: number): number => Number(value.toFixed(3));

/**
 * A batch that skips its steps to pouches that are sealed already.
 *
 * Servings go by weight: a pouch with half as much food has half the servings.
 *
 * @param how the pouch and absorbers of each
 * @returns the batch with its pouches chosen and what they weigh together, g
 * @example quickBatch(batch, { pouches: 6, netG: 140, restG: 70 }, { pouch, half: false, absorbers: 1, absorber })
 *   // packedG 910, fills of 6 and of 1 pouch
 */
export function quickBatch(
  batch: Batch,
  { pouches, netG, restG = 0, servings }: PouchesByWeight,
  how: Pick<PouchFill, 'pouch' | 'half' | 'absorber' | 'absorbers'>,
): Batch {
  const packedG = pouches * netG + restG;
  const each = toThousandths(servings ?? (servingsNow(batch.recipe) * batch.timesCooked * netG) / packedG);
  const rest = toThousandths((each * restG) / netG);
  return {
    ...batch,
    quick: true,
    packedG,
    servings: pouches * each + rest,
    fills: [
      { ...how, servings: each, pouches },
      ...(rest > 0 ? [{ ...how, servings: rest, pouches: 1 }] : []),
    ],
  };
}

/** @returns what nobody measured of a batch. */
export function notMeasured(batch: Batch, dry: Pick<DryFood, 'weighed'>): Measurement[] {
  const measured: Record<Measurement, boolean> = {
    dish: batch.cookedG !== undefined,
    trays: batch.trays.length > 0,
    dryness: dry.weighed && !batch.quick,
    cup: batch.cup !== undefined,
    electricity: batch.energyKwh !== undefined,
  };
  return MEASUREMENTS.filter((what) => !measured[what]);
}

/** Gaps that say that nobody has weighed or felt a tray, and nothing of the food. */
const NOT_LOOKED_AT: readonly DrynessGap['code'][] = ['not-weighed', 'weighed-once', 'not-felt'];

/** @returns what keeps a tray from counting as dry; of a batch that skips its steps only what was found, not what nobody looked at. */
export const gapsFound = ({ quick }: Batch, open: readonly DrynessGap[]): readonly DrynessGap[] =>
  quick ? open.filter(({ code }) => !NOT_LOOKED_AT.includes(code)) : open;

/**
 * Water left in pouches of a batch whose trays nobody weighed, if all of the dish is in them: shares of the food without its fat.
 *
 * @param wetG wet food on the trays, or else all that was cooked, g
 * @returns `undefined` where trays were weighed, which tell it better
 */
export function waterInPouches(
  { quick, packedG }: Batch,
  { cookedG, moisture, parts }: RecipeTotals,
  wetG: number,
  { weighed }: Pick<DryFood, 'weighed'>,
): ReturnType<typeof waterLeft>['fatFree'] | undefined {
  if (!quick || weighed || packedG === undefined || cookedG <= 0) return undefined;
  return waterLeft(wetG, { moisture, fatShare: parts.fatG / cookedG }, packedG).fatFree;
}

/** @returns a lot of a batch that skipped its steps, with what nobody measured marked: its energy and water are the recipe's. */
export function markUnmeasured(lot: PouchLot): PouchLot {
  const ofRecipe = (value: number): LotEstimate => ({
    low: Math.round(value * (1 - ALIKE)),
    high: Math.round(value * (1 + ALIKE)),
    from: 'recipe',
  });
  return {
    ...lot,
    weighedDry: false,
    estimated: {
      energyKcal: ofRecipe(lot.energyKcal),
      ...(lot.waterMl > 0 && { waterMl: ofRecipe(lot.waterMl) }),
    },
  };
}
