import { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { Trip, type TripInput } from '../../src/lib/planning/model/trip.ts';

/** A plain dinner lot, changed where a test says so. */
export function exampleLot(changes: Partial<Record<keyof PouchLot, unknown>> = {}): PouchLot {
  return PouchLot.parse({
    code: 'D1',
    recipe: 'bean stew',
    mealKinds: ['dinner'],
    sealedOn: '2026-05-01',
    bestBefore: '2028-05-01',
    pouches: 4,
    servingsPerPouch: 2,
    dryWeightG: 150,
    energyKcal: 600,
    waterMl: 350,
    waterKind: 'boiling',
    steepMin: 10,
    tareG: 12,
    allergens: [],
    ...changes,
  });
}

/** Two eaters, two full days, changed where a test says so. */
export function exampleTrip(changes: Partial<TripInput> = {}): Trip {
  return Trip.parse({
    name: 'ridge walk',
    startDate: '2027-07-05',
    dayCount: 2,
    firstMeal: 'breakfast',
    lastMeal: 'dinner',
    energyKcal: 2000,
    party: [{ name: 'Ada' }, { name: 'Bo' }],
    ...changes,
  });
}
