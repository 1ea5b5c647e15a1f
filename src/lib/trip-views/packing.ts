import { TRIP_DEFAULTS } from '../planning/model/trip-defaults.ts';
import type { DayLoad, Pack, TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';

/** The food of one day in one pack: a bag to be reached for, the later days below. */
export type DayBag = {
  readonly day: number;
  readonly date: string;
  /** With packaging, g. */
  readonly grossG: number;
  readonly pouches: Pack['pouches'];
};

/** What one eater packs, in the order of packing. */
export type PackingSheet = Pack & {
  readonly bags: readonly DayBag[];
  /** Their cook group, where there are several; food for another one is marked with it. */
  readonly group: string | undefined;
  /** The reserve with packaging, g. */
  readonly reserveG: number;
  /** Left out where the plan has no day 1 for this eater. */
  readonly dayOne: DayLoad | undefined;
  /** What the bottles and bags hold, ml. */
  readonly bottlesMl: number;
  /** How much more water than that is to be carried at some time, ml. */
  readonly bottlesLackMl: number;
  /** The day whose heaviest pack holds the most water; g is ml. */
  readonly mostWater: DayLoad | undefined;
};

/** @returns the packing lists, one for each eater in the order of the party. */
export function packingSheets(trip: Trip, plan: TripPlan): PackingSheet[] {
  return plan.carry.packs.map((pack) => {
    const loads = plan.carry.loads.filter(({ eater }) => eater === pack.eater);
    const mostWater = loads.reduce<DayLoad | undefined>(
      (most, load) => (most && most.peakWaterG >= load.peakWaterG ? most : load),
      undefined,
    );
    const bottlesMl =
      trip.party.find(({ name }) => name === pack.eater)?.waterCapacityMl ??
      TRIP_DEFAULTS.waterCapacityMl.value;
    return {
      ...pack,
      bags: plan.card.days.flatMap(({ day, date }) => {
        const pouches = pack.pouches.filter((item) => item.day === day);
        const grossG = pouches.reduce((sum, item) => sum + item.grossG, 0);
        return pouches.length > 0 ? [{ day, date, grossG, pouches }] : [];
      }),
      group:
        plan.menu.groups.length > 1
          ? plan.menu.groups.find(({ eaters }) => eaters.includes(pack.eater))?.name
          : undefined,
      reserveG: pack.reserve.reduce((sum, { grossG }) => sum + grossG, 0),
      dayOne: loads[0],
      bottlesMl,
      bottlesLackMl: Math.max(0, (mostWater?.peakWaterG ?? 0) - bottlesMl),
      mostWater,
    };
  });
}
