import { kindOf } from '../menu/lot-rules.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import { pouchFoodG } from '../model/pouch-totals.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import { stageAt, stageCarried } from '../model/resupply.ts';
import type { FoodVolume, VolumeRange } from '../model/trip-plan.ts';
import { MEAL_KINDS, type LotKind } from '../model/words.ts';
import type { Carried } from './pack-loads.ts';

/** Litres that food takes in packs, and in containers that keep animals from it. */

/**
 * Room that a gram of food takes in its sealed pouch, ml, where nobody stated the volume of the pouch. Rule of thumb: a dry dish weighs 0.25 to 0.7 g/ml, nuts, bars
 * and cheese 0.4 to 1 g/ml, powders 0.35 to 0.8 g/ml; what air is left in a pouch is in it.
 */
export const USUAL_ML_PER_G: Readonly<Record<LotKind, VolumeRange>> = {
  main: { value: 2.5, low: 1.5, high: 4 },
  side: { value: 2.5, low: 1.5, high: 4 },
  extra: { value: 1.6, low: 1, high: 2.5 },
  drink: { value: 1.8, low: 1.2, high: 3 },
};

const NOTHING: VolumeRange = { value: 0, low: 0, high: 0 };

const plus = (a: VolumeRange, b: VolumeRange, share = 1): VolumeRange => ({
  value: a.value + share * b.value,
  low: a.low + share * b.low,
  high: a.high + share * b.high,
});

/** The volume of one sealed pouch, ml: as stated, or estimated from its food. */
export function pouchVolumeMl(lot: PouchLot): VolumeRange {
  if (lot.volumeMl !== undefined) return { value: lot.volumeMl, low: lot.volumeMl, high: lot.volumeMl };
  return plus(NOTHING, USUAL_ML_PER_G[kindOf(lot)], pouchFoodG(lot));
}

/** The last moment of a day. */
const LAST_MEAL = MEAL_KINDS[MEAL_KINDS.length - 1] ?? 'drink';

/**
 * What the food in each pack takes on each day, leaving camp and at night. Of an opened pouch counts what is still in it; empty pouches are pressed flat and count nothing.
 * The night after the last day is not on the trip.
 */
export function foodVolumes({ trip, food }: Pick<Carried, 'trip' | 'food'>): FoodVolume[] {
  const lastDay = trip.days.length;
  return trip.days.flatMap(({ day }) =>
    trip.party.map(({ name }, index): FoodVolume => {
      const own = food.filter((item) => item.carrier === index);
      const left = (stage: number, isOver: (at: { day: number; meal: string }) => boolean) =>
        own
          .filter((item) => item.stage <= stage)
          .reduce((sum, item) => {
            const gone = item.leaves.filter(isOver).reduce((all, { foodG }) => all + foodG, 0);
            return plus(sum, pouchVolumeMl(item.lot), Math.max(0, 1 - gone / item.foodG));
          }, NOTHING);
      const stage = stageCarried(trip.resupplies, day, 'morning');
      const leavingMl = left(stage, (at) => at.day < day || (at.day === day && at.meal === 'breakfast'));
      const nightMl =
        day < lastDay
          ? left(stageAt(trip.resupplies, { day, meal: LAST_MEAL }), (at) => at.day <= day)
          : undefined;
      return {
        day,
        eater: name,
        stage,
        leavingMl,
        ...(nightMl && { nightMl }),
        overMl: overMl(nightMl, trip),
      };
    }),
  );
}

const overMl = (nightMl: VolumeRange | undefined, { animalContainerMl }: ResolvedTrip): number =>
  animalContainerMl === undefined || !nightMl ? 0 : Math.max(0, nightMl.value - animalContainerMl);

/** Says whose food does not fit in their container at night. */
export function containerNotices(
  { animalContainerMl: roomMl, party }: ResolvedTrip,
  volumes: readonly FoodVolume[],
): Notice[] {
  if (roomMl === undefined) return [];
  return party.flatMap(({ name }: ResolvedEater): Notice[] => {
    const over = volumes.filter(({ eater, overMl: beyond }) => eater === name && beyond > 0.5);
    const [first] = over;
    if (!first) return [];
    const worst = over.reduce((most, row) => (row.overMl > most.overMl ? row : most), first);
    return [
      notice(
        'food-beyond-container',
        { days: over.map(({ day }) => day), foodMl: worst.nightMl?.value ?? 0, roomMl },
        { eater: name, day: worst.day },
      ),
    ];
  });
}
