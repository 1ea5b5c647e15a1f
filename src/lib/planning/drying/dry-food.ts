import type { Batch } from '../model/batch.ts';
import type { Process } from '../model/kitchen.ts';
import type { Dryness } from './dryness.ts';
import { servingsNow } from './serving-size.ts';
import { moistureAt } from './mass-balance.ts';
import { scaleParts, scaleStated, type Parts, type RecipeTotals, type Stated } from './recipe-totals.ts';

/** The dry food and one serving of it. */
export type DryFood = {
  /** On the trays, g. */
  readonly dryG: number;
  /** Into pouches, g. */
  readonly packedG: number;
  readonly residual: number;
  /** Whether it was weighed dry; else it is what is expected. */
  readonly weighed: boolean;
  readonly servings: number;
  readonly servingG: number;
  readonly servingKcal: number;
  readonly servingParts: Parts;
  readonly servingStated: Stated;
  /** Water that drying took from one serving, g. */
  readonly servingRemovedG: number;
  /** Weight of one millilitre of the dry food, g, and whether a cup of it was weighed. */
  readonly bulkGPerMl: number;
  readonly bulkWeighed: boolean;
  readonly servingMl: number;
};

/**
 * Weight of a millilitre of dry dish, crumbled, before a cup of it is weighed, g. Rule of thumb, in the middle of what dry foods weigh:
 * potato flakes 0.25, short noodles 0.36 to 0.44, lentils 0.81 (USDA National Nutrient Database SR26, weights of a cup).
 */
export const USUAL_BULK: Readonly<Record<Process, number>> = { 'freeze-dried': 0.4, dehydrated: 0.5 };

/**
 * What is dry and one serving of it, in the share of the dish that went onto the trays and from there into pouches. Before it is weighed dry: what is expected.
 *
 * @param load wet food on the trays, g, and its share of the dish
 * @param expectedDryG g
 * @param mostResidualShare the dampest food that is let onto the shelf: what nobody weighed dry is taken to be so
 */
export function dryFood(
  batch: Batch,
  totals: RecipeTotals,
  load: { readonly wetG: number; readonly share: number },
  dryness: Dryness,
  expectedDryG: number,
  mostResidualShare: number,
): DryFood {
  const weighed = dryness.trays.length > 0 && dryness.trays.every(({ residual }) => residual !== undefined);
  const isQuick = batch.quick === true && !weighed;
  const dryG = weighed ? dryness.nowG : Math.max(expectedDryG, isQuick ? (batch.packedG ?? 0) : 0);
  const packedG = batch.packedG ?? dryG;
  const servings =
    batch.servings ??
    Math.max(1, Math.round(servingsNow(batch.recipe) * batch.timesCooked * Math.min(1, load.share)));
  const packedShare = dryG > 0 ? packedG / dryG : 0;
  const perServing = (load.share * packedShare) / servings;
  const servingG = packedG / servings;
  const bulkGPerMl = batch.cup ? batch.cup.netG / batch.cup.volumeMl : USUAL_BULK[batch.dryer.process];
  return {
    dryG,
    packedG,
    residual: Math.max(
      isQuick ? mostResidualShare : 0,
      dryG > 0 ? moistureAt(load.wetG, totals.moisture, dryG) : 0,
    ),
    weighed,
    servings,
    servingG,
    servingKcal: totals.energyKcal * perServing,
    servingParts: {
      ...scaleParts(totals.parts, perServing),
      waterG: Math.max(0, servingG - totals.solidsG * perServing),
    },
    servingStated: scaleStated(totals.stated, perServing),
    servingRemovedG: (Math.max(0, load.wetG - dryG) * packedShare) / servings,
    bulkGPerMl,
    bulkWeighed: batch.cup !== undefined,
    servingMl: servingG / bulkGPerMl,
  };
}
