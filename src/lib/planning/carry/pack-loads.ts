import { say } from '../../texts/say.ts';
import { lunchStretch } from '../hydration/lunch-stretch.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayLoad, FuelPlan, WaterPlan } from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import { stageOfBoil } from '../stove/plan-fuel.ts';
import { stageCarried } from '../model/resupply.ts';
import type { FoodItem } from './food-items.ts';

export type FuelItem = {
  readonly label: string;
  readonly group: string;
  readonly netG: number;
  readonly tareG: number;
  /** From which it is carried. */
  readonly stage: number;
};
/** An item in the pack of the eater of that place in the party. */
export type Dealt<Item> = Item & { readonly carrier: number };
/** All that the packs of a trip hold, and what is used up of it when. */
export type Carried = {
  readonly trip: ResolvedTrip;
  readonly food: readonly Dealt<FoodItem>[];
  readonly containers: readonly Dealt<FuelItem>[];
  readonly water: WaterPlan;
  readonly fuel: FuelPlan;
};

/** What an eater may carry beyond the base load, g; a gram is left where there is nothing, so that shares stay defined and the overload shows. */
export const headroomG = (eater: ResolvedEater): number => Math.max(1, eater.maxLoadG - eater.baseLoadG);
const MORNING: readonly MealKind[] = ['breakfast'];
const MIDDAY: readonly MealKind[] = ['lunch', 'snack'];

/** What each pack weighs on one day. @param index place of the eater in the party */
export function loadOf(
  { trip, food, containers, water, fuel }: Carried,
  eater: ResolvedEater,
  index: number,
  day: number,
): DayLoad {
  const all = food.filter((item) => item.carrier === index);
  const roomShare = headroomG(eater) / trip.party.reduce((sum, other) => sum + headroomG(other), 0);
  const baseG = eater.baseLoadG;
  const leftAfter = (meals: readonly MealKind[]) => {
    const stage = stageCarried(trip.resupplies, day, meals.includes('lunch') ? 'afternoon' : 'morning');
    const own = all.filter((item) => item.stage <= stage);
    const isOver = (item: { day: number; meal?: MealKind | undefined }) =>
      item.day < day || (item.day === day && item.meal !== undefined && meals.includes(item.meal));
    return {
      foodG: own.reduce(
        (sum, item) =>
          sum + item.foodG - item.leaves.filter(isOver).reduce((eaten, leaving) => eaten + leaving.foodG, 0),
        0,
      ),
      packagingG: own.reduce((sum, item) => sum + (item.binStage <= stage ? 0 : item.tareG), 0),
      fuelG: fuelLeftG(trip, containers, index, fuel.boils.filter(isOver), stage),
    };
  };
  const total = (parts: { foodG: number; packagingG: number; fuelG: number }, waterG: number) =>
    baseG + parts.packagingG + parts.foodG + parts.fuelG + waterG;

  const stretches = water.days[day - 1]?.stretches ?? [];
  const lunchAt = lunchStretch(
    stretches.map((stretch) => stretch.fromH),
    stretches.at(-1)?.toH ?? 0,
  );
  const loads = stretches.map((stretch, position) => {
    const parts = leftAfter(position > lunchAt ? [...MORNING, ...MIDDAY] : MORNING);
    // what children drink is carried by everybody, by room
    const mlOf = (amounts: readonly { readonly eater: string; readonly ml: number }[]) =>
      trip.party.reduce((sum, other) => {
        const ml = amounts.find((entry) => entry.eater === other.name)?.ml ?? 0;
        if (other.isMinor) return sum + ml * roomShare;
        return other.name === eater.name ? sum + ml : sum;
      }, 0);
    const drunkMl = mlOf(stretch.drunkEach);
    const waterG = mlOf(stretch.start.own) + stretch.start.groupMl * roomShare;
    const next = stretches[position + 1];
    const lunchWaterG =
      position === lunchAt && next && !next.refilled
        ? (stretch.start.groupMl - next.start.groupMl) * roomShare
        : 0;
    const atEnd = leftAfter(position >= lunchAt ? [...MORNING, ...MIDDAY] : MORNING);
    const startG = total(parts, waterG);
    return {
      stretch,
      parts,
      waterG,
      startG,
      endG: total(atEnd, Math.max(0, waterG - drunkMl - lunchWaterG)),
      hours: stretch.toH - stretch.fromH,
    };
  });

  const resting = leftAfter(MORNING);
  const morning = loads[0] ?? { parts: resting, waterG: 0, startG: total(resting, 0) };
  const peak = loads.reduce<(typeof loads)[number] | undefined>(
    (most, load) => (most && most.startG >= load.startG ? most : load),
    undefined,
  );
  const peakG = peak?.startG ?? morning.startG;
  const hours = loads.reduce((sum, load) => sum + load.hours, 0);
  return {
    day,
    eater: eater.name,
    baseG,
    foodG: morning.parts.foodG,
    packagingG: morning.parts.packagingG,
    fuelG: morning.parts.fuelG,
    waterG: morning.waterG,
    totalG: morning.startG,
    peakG,
    peakWaterG: peak?.waterG ?? 0,
    peakWhen: peak
      ? peak.stretch.toDryCamp
        ? say('leaving {place} for a dry camp', { place: peak.stretch.from })
        : say('leaving {place}', { place: peak.stretch.from })
      : say('at camp'),
    meanWalkingG:
      hours > 0
        ? loads.reduce((sum, load) => sum + ((load.startG + load.endG) / 2) * load.hours, 0) / hours
        : morning.startG,
    stretches: loads.map(({ stretch, startG, endG }) => ({
      from: stretch.from,
      fromM: stretch.fromM,
      toM: stretch.toM,
      startG,
      endG,
    })),
    limitG: eater.maxLoadG,
    overG: Math.max(0, peakG - eater.maxLoadG),
  };
}

/**
 * Fuel and containers in one pack after some fuel is burnt, g. The containers of a group are emptied one after the other; the empty ones are carried to the next place
 * on the way, where what the stage has left stays with them.
 *
 * @param stage that is walked
 */
function fuelLeftG(
  trip: ResolvedTrip,
  containers: readonly Dealt<FuelItem>[],
  carrier: number,
  burnt: FuelPlan['boils'],
  stage: number,
): number {
  const toBurnG = new Map<string, number>();
  for (const { group, fuelG, ...boil } of burnt)
    if (stageOfBoil(trip, boil) === stage) toBurnG.set(group, (toBurnG.get(group) ?? 0) + fuelG);
  let leftG = 0;
  for (const { group, netG, tareG, carrier: holder, stage: from } of containers) {
    if (from !== stage) continue;
    const fromThisG = Math.min(netG, toBurnG.get(group) ?? 0);
    toBurnG.set(group, (toBurnG.get(group) ?? 0) - fromThisG);
    if (holder === carrier) leftG += netG - fromThisG + tareG;
  }
  return leftG;
}
