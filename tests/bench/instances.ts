import { ALLERGENS, type Allergen } from '../../src/lib/planning/model/allergens.ts';
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { PouchLot, type Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import type { MealKind } from '../../src/lib/planning/model/words.ts';

export type Size = { readonly eaters: number; readonly days: number; readonly lots: number };
export type Instance = { readonly trip: Trip; readonly stock: Stock };

export const START = '2027-07-05';

/** How the lots of a household spread over the meals, and what a serving of each is like (invented, in the range of dry meals). */
const KINDS: readonly {
  readonly meal: MealKind;
  readonly dryWeightG: number;
  readonly kcalPerG: number;
  readonly water: number;
}[] = [
  { meal: 'breakfast', dryWeightG: 110, kcalPerG: 4.3, water: 2.4 },
  { meal: 'lunch', dryWeightG: 105, kcalPerG: 4.3, water: 2.5 },
  { meal: 'snack', dryWeightG: 60, kcalPerG: 4.6, water: 0 },
  { meal: 'dinner', dryWeightG: 145, kcalPerG: 4.4, water: 2.8 },
  { meal: 'drink', dryWeightG: 35, kcalPerG: 4.1, water: 6 },
];

/**
 * A party and its shelf, invented: most meals find their lots, some do not.
 *
 * @param seed the same seed gives the same instance
 */
export function instance({ eaters, days, lots }: Size, seed: number): Instance {
  const random = randomFrom(seed);
  const between = (low: number, high: number) => low + random() * (high - low);
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const some = (chance: number): Allergen[] => ALLERGENS.filter(() => random() < chance);

  const trip = Trip.parse({
    name: `${eaters} eaters, ${days} days`,
    startDate: START,
    dayCount: days,
    party: Array.from({ length: eaters }, (_, index) => ({
      name: `Eater ${index + 1}`,
      energyKcal: Math.round(between(2200, 3600)),
      allergens: index % 3 === 1 ? some(0.1) : [],
      diets: index % 4 === 2 ? ['vegetarian'] : [],
    })),
    days: Array.from({ length: days }, () => ({
      walkingH: between(3, 8),
      campAltitudeM: between(300, 3000),
      campWater: random() < 0.2 ? 'dry' : 'source',
    })),
  });

  const stock = Array.from({ length: lots }, (_, index) => {
    const kind = KINDS[index % KINDS.length]!;
    const dryWeightG = Math.round(kind.dryWeightG * between(0.8, 1.2));
    const servingsPerPouch = whole(1, 2);
    const waterMl = Math.round(dryWeightG * kind.water);
    return PouchLot.parse({
      code: `L${String(index + 1).padStart(4, '0')}`,
      recipe: `Recipe ${index + 1}`,
      mealKinds: [kind.meal],
      sealedOn: addDays(START, -whole(30, 400)),
      bestBefore: addDays(START, whole(-10, 700)),
      pouches: whole(1, eaters), // who cooks for many dries many pouches at once
      servingsPerPouch,
      dryWeightG,
      energyKcal: Math.round(dryWeightG * kind.kcalPerG * between(0.9, 1.1)),
      waterMl,
      waterKind: waterMl === 0 ? 'none' : random() < 0.3 ? 'cold' : 'boiling',
      steepMin: waterMl === 0 ? 0 : whole(3, 20),
      tareG: whole(8, 25),
      allergens: some(0.12),
      diets: random() < 0.5 ? ['vegetarian'] : [],
    });
  });
  return { trip, stock };
}
