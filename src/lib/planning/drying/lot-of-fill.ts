import type { PouchLot } from '../model/pouch-lot.ts';
import type { Recipe } from '../model/recipe.ts';
import type { BatchFigures } from './batch-figures.ts';
import type { FillSheet } from './fill-pouches.ts';
import { containerMl, containerTareG } from './portioning.ts';
import { cookAfterOf } from './safety-steps.ts';

/** What a lot takes over from elsewhere than the figures of its batch. */
type Given = Pick<PouchLot, 'code' | 'sealedOn' | 'bestBefore' | 'pouches' | 'place' | 'note'>;

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/**
 * The lot that pouches of a batch make, sealed or still to come.
 *
 * @param figures per serving, as measured or as expected
 * @param fill how one of the pouches is filled
 * @returns weights in g to a hundredth, energy to a tenth of a kcal, water and volume in whole ml
 * @example
 * lotOfFill(recipe, batchSheet(batch, kitchen, runs, today), fills[0].fill, { code: 'CH-01', sealedOn, bestBefore, pouches: 6, note: '' });
 */
export function lotOfFill(
  recipe: Recipe,
  { totals, dry, water, steep, allergens, cost }: BatchFigures,
  fill: FillSheet['fill'],
  { code, sealedOn, bestBefore, pouches, place, note }: Given,
): PouchLot {
  const cookAfter = cookAfterOf(recipe);
  const { sugarsG, sodiumMg } = dry.servingStated;
  return {
    code,
    recipe: recipe.name,
    mealKinds: recipe.mealKinds,
    sealedOn,
    bestBefore,
    pouches,
    servingsPerPouch: fill.servings,
    dryWeightG: rounded(dry.servingG, 2),
    energyKcal: rounded(dry.servingKcal, 1),
    proteinG: rounded(dry.servingParts.proteinG, 2),
    fatG: rounded(dry.servingParts.fatG, 2),
    carbohydrateG: rounded(dry.servingParts.carbohydrateG, 2),
    fibreG: rounded(dry.servingParts.fibreG, 2),
    ...(sugarsG !== undefined && { sugarsG: rounded(sugarsG, 2) }),
    ...(sodiumMg !== undefined && { sodiumMg: rounded(sodiumMg, 0) }),
    waterMl: rounded(water.servingMl, 0),
    waterKind: recipe.waterKind,
    ...steep,
    tareG: rounded(containerTareG(fill) + fill.absorbers * (fill.absorber?.tareG ?? 0), 1),
    volumeMl: rounded(containerMl(fill), 0),
    ...(allergens && { allergens: [...allergens] }),
    diets: [...totals.diets],
    ...(totals.unpriced.length === 0 && { costMinor: Math.round(cost.perServingMinor) }),
    ...(fill.pouch.noBoilingWater && { pouchTakesBoilingWater: false }),
    ...(fill.pouch.noEating && { eatFromPouch: false }),
    ...(fill.pouch.stands && { pouchStands: true }),
    ...(place !== undefined && { place }),
    ...(cookAfter && { cookAfter }),
    note,
  };
}
