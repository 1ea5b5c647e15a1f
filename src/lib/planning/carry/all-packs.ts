import type { CarryPlan, Pack } from '../model/trip-plan.ts';

/** Every pack of a trip, those that are filled on the way included. */
export const allPacks = ({ packs, pickUps }: Pick<CarryPlan, 'packs' | 'pickUps'>): Pack[] => [
  ...packs,
  ...pickUps.flatMap((pickUp) => pickUp.packs),
];
