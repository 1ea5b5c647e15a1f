import { z } from 'zod';
import { ESTIMABLE, type Estimable } from './lot-estimate.ts';
import { PouchLot } from './pouch-lot.ts';

const { estimated: _estimated, contains: _contains, ...shape } = PouchLot.shape;

/**
 * What was said of a lot: a name, how many pouches, how many servings in one, and what a serving weighs. The rest may be left open;
 * `completeLot` makes a `PouchLot` of it. Figures are for one serving, as there.
 *
 * `allergensOpen`: the list names some that it holds and is silent about the others. It is then no statement of what the food is free of.
 */
export const StatedLot = z.strictObject({
  ...shape,
  mealKinds: shape.mealKinds.optional(),
  sealedOn: shape.sealedOn.optional(),
  bestBefore: shape.bestBefore.optional(),
  energyKcal: shape.energyKcal.optional(),
  waterMl: shape.waterMl.optional(),
  waterKind: shape.waterKind.optional(),
  steepMin: shape.steepMin.optional(),
  tareG: shape.tareG.optional(),
  allergensOpen: z
    .literal(true)
    .optional()
    .describe('The allergens listed are not all that may be in it: nobody has stated the others'),
});
export type StatedLot = z.infer<typeof StatedLot>;

/** @returns what was said of a lot, without its estimates: `statedOf(completeLot(stated, known))` is `stated`. */
export function statedOf(lot: PouchLot): StatedLot {
  const { estimated, contains, ...values } = lot;
  const stated: Partial<Record<keyof PouchLot, unknown>> & { allergensOpen?: true } = { ...values };
  for (const field of ESTIMABLE) if (estimated?.[field]) delete stated[field];
  if (lot.allergens === undefined && contains !== undefined && contains.length > 0) {
    stated.allergens = contains;
    stated.allergensOpen = true;
  }
  return stated as StatedLot;
}

/** @returns whether a value of a lot is an estimate. */
export const isEstimated = (lot: Pick<PouchLot, 'estimated'>, field: Estimable): boolean =>
  lot.estimated?.[field] !== undefined;
