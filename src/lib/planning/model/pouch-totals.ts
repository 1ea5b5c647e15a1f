import type { PouchLot } from './pouch-lot.ts';

/* What one pouch of a lot holds and weighs. */

export const pouchFoodG = (lot: PouchLot): number => lot.dryWeightG * lot.servingsPerPouch;
export const pouchGrossG = (lot: PouchLot): number => pouchFoodG(lot) + lot.tareG;
export const pouchEnergyKcal = (lot: Pick<PouchLot, 'energyKcal' | 'servingsPerPouch'>): number =>
  lot.energyKcal * lot.servingsPerPouch;
