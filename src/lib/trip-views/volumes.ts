import type { CarryPlan, FoodVolume, PickUp, VolumeRange } from '../planning/model/trip-plan.ts';
import { shownNumber, type UnitSystem } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** What is in the packs on the first day of a stage. */
export type StageVolumes = {
  /** Where its food was picked up; left out: at the start. */
  readonly place: string | undefined;
  readonly day: number;
  readonly rows: readonly FoodVolume[];
};

/** @returns for each stage the day on which the most food leaves camp: what has to fit in the packs */
export function stageVolumes(
  { volumes }: CarryPlan,
  pickUps: readonly Pick<PickUp, 'place'>[],
): StageVolumes[] {
  const stages = [...Map.groupBy(volumes, ({ stage }) => stage)].sort(([a], [b]) => a - b);
  return stages.map(([stage, rows]) => {
    const day = Math.min(...rows.map((row) => row.day));
    return {
      place: pickUps[stage - 1]?.place,
      day,
      rows: rows.filter((row) => row.day === day),
    };
  });
}

/** @returns the volumes of one eater, day by day */
export const volumesOf = ({ volumes }: CarryPlan, eater: string): FoodVolume[] =>
  volumes.filter((row) => row.eater === eater);

/** @returns a volume with its range, without a unit: "8.4 (6.0 to 12.1)"; the range is left out where it is none to be seen */
export function rangeText({ value, low, high }: VolumeRange, system: UnitSystem): string {
  const number = (ml: number) => shownNumber(ml, 'water', system);
  if (number(low) === number(high)) return number(value);
  return say('{value} ({low} to {high})', { value: number(value), low: number(low), high: number(high) });
}
