import { say } from '../../texts/say.ts';
import { lunchStretch } from '../hydration/lunch-stretch.ts';
import type { Stock } from '../model/pouch-lot.ts';
import { pouchFoodG } from '../model/pouch-totals.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { CarryPlan, DayLoad, FuelPlan, MenuPlan, Pack, WaterPlan } from '../model/trip-plan.ts';
import { MEAL_KINDS, type MealKind } from '../model/words.ts';

type FoodItem = {
  readonly code: string;
  readonly recipe: string;
  readonly day: number;
  readonly meal: MealKind;
  readonly foodG: number;
  readonly tareG: number;
};
type FuelItem = { readonly label: string; readonly netG: number; readonly tareG: number };
/** An item in the pack of the eater of that place in the party. */
type Dealt<Item> = Item & { readonly carrier: number };

/** What an eater may carry beyond the base load, g; a gram is left where there is nothing, so that shares stay defined and the overload shows. */
const headroomG = (eater: ResolvedEater): number => Math.max(1, eater.maxLoadG - eater.baseLoadG);
const MORNING: readonly MealKind[] = ['breakfast'];
const MIDDAY: readonly MealKind[] = ['lunch', 'snack'];

/**
 * Who carries what, and what each pack weighs on each day.
 *
 * Every item goes to the eater whose room it fills least. Food is dealt from the last meal to the first and the heaviest pouch of a meal first, so the
 * packs are balanced not only at the start but on every later day too, when what is eaten early is gone. Fuel containers are dealt before the food
 * and are burnt in their order. Water for the group is shared by room; everyone carries their own drinking water. Empty pouches are carried out.
 */
export function sharePacks(
  trip: ResolvedTrip,
  menu: MenuPlan,
  stock: Stock,
  water: WaterPlan,
  fuel: FuelPlan,
): { carry: CarryPlan; notices: Notice[] } {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const dealtG = trip.party.map(() => 0);
  const deal = (grossG: number): number => {
    const filled = (index: number) => {
      const eater = trip.party[index];
      return eater ? ((dealtG[index] ?? 0) + grossG) / headroomG(eater) : Infinity;
    };
    const carrier = trip.party.reduce(
      (best, _, index) => (filled(index) < filled(best) - 1e-12 ? index : best),
      0,
    );
    dealtG[carrier] = (dealtG[carrier] ?? 0) + grossG;
    return carrier;
  };

  const fuelItems = fuel.containers
    .flatMap(({ label, count, netG, tareG }) =>
      Array.from({ length: count }, (): FuelItem => ({ label, netG, tareG })),
    )
    .map((item) => ({ ...item, carrier: deal(item.netG + item.tareG) }));
  const foodItems = menu.meals
    .flatMap((meal) =>
      meal.opened.flatMap(({ code, recipe, pouches }) => {
        const lot = lots.get(code);
        if (!lot) throw new RangeError(`the menu opens lot ${code}, which is not in the stock`);
        return Array.from({ length: pouches }, (): FoodItem => ({
          code,
          recipe,
          day: meal.day,
          meal: meal.meal,
          foodG: pouchFoodG(lot),
          tareG: lot.tareG,
        }));
      }),
    )
    .sort(
      (a, b) =>
        b.day - a.day ||
        MEAL_KINDS.indexOf(b.meal) - MEAL_KINDS.indexOf(a.meal) ||
        b.foodG + b.tareG - (a.foodG + a.tareG) ||
        (a.code < b.code ? -1 : a.code > b.code ? 1 : 0),
    )
    .map((item) => ({ ...item, carrier: deal(item.foodG + item.tareG) }));

  const packs = trip.party.map((eater, index) =>
    packOf(
      eater,
      foodItems.filter((item) => item.carrier === index),
      fuelItems.filter((item) => item.carrier === index),
    ),
  );
  const loads = trip.days.flatMap((day) =>
    trip.party.map((eater, index) => loadOf(trip, eater, index, day.day, foodItems, fuelItems, water, fuel)),
  );
  return { carry: { packs, loads }, notices: overloadNotices(loads) };
}

function packOf(eater: ResolvedEater, food: readonly FoodItem[], fuel: readonly FuelItem[]): Pack {
  const pouches = new Map<string, Pack['pouches'][number]>();
  for (const item of [...food].reverse()) {
    const key = `${item.day} ${item.meal} ${item.code}`;
    const before = pouches.get(key);
    pouches.set(key, {
      code: item.code,
      recipe: item.recipe,
      day: item.day,
      meal: item.meal,
      pouches: (before?.pouches ?? 0) + 1,
      grossG: (before?.grossG ?? 0) + item.foodG + item.tareG,
    });
  }
  const containers = new Map<string, Pack['fuelContainers'][number]>();
  for (const { label, netG, tareG } of fuel) {
    const before = containers.get(label);
    containers.set(label, {
      label,
      count: (before?.count ?? 0) + 1,
      grossG: (before?.grossG ?? 0) + netG + tareG,
    });
  }
  return {
    eater: eater.name,
    pouches: [...pouches.values()],
    fuelContainers: [...containers.values()],
    foodG: food.reduce((sum, item) => sum + item.foodG, 0),
    packagingG: food.reduce((sum, item) => sum + item.tareG, 0),
    fuelGrossG: fuel.reduce((sum, item) => sum + item.netG + item.tareG, 0),
  };
}

function loadOf(
  trip: ResolvedTrip,
  eater: ResolvedEater,
  index: number,
  day: number,
  food: readonly Dealt<FoodItem>[],
  containers: readonly Dealt<FuelItem>[],
  water: WaterPlan,
  fuel: FuelPlan,
): DayLoad {
  const own = food.filter((item) => item.carrier === index);
  const roomShare = headroomG(eater) / trip.party.reduce((sum, other) => sum + headroomG(other), 0);
  const baseG = eater.baseLoadG;
  const packagingG = own.reduce((sum, item) => sum + item.tareG, 0);
  const leftAfter = (meals: readonly MealKind[]) => {
    const isOver = (item: { day: number; meal?: MealKind | undefined }) =>
      item.day < day || (item.day === day && item.meal !== undefined && meals.includes(item.meal));
    return {
      foodG: own.filter((item) => !isOver(item)).reduce((sum, item) => sum + item.foodG, 0),
      fuelG: fuelLeftG(
        containers,
        index,
        fuel.boils.filter(isOver).reduce((sum, boil) => sum + boil.fuelG, 0),
      ),
    };
  };
  const total = (parts: { foodG: number; fuelG: number }, waterG: number) =>
    baseG + packagingG + parts.foodG + parts.fuelG + waterG;

  const stretches = water.days[day - 1]?.stretches ?? [];
  const lunchAt = lunchStretch(
    stretches.map((stretch) => stretch.fromH),
    stretches.at(-1)?.toH ?? 0,
  );
  const loads = stretches.map((stretch, position) => {
    const parts = leftAfter(position > lunchAt ? [...MORNING, ...MIDDAY] : MORNING);
    const ownMl = stretch.start.own.find((entry) => entry.eater === eater.name)?.ml ?? 0;
    const drunkMl = stretch.drunkEach.find((entry) => entry.eater === eater.name)?.ml ?? 0;
    const waterG = ownMl + stretch.start.groupMl * roomShare;
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
    packagingG,
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

/** Fuel and containers in one pack after some fuel is burnt, g. The containers are emptied one after the other; the empty ones are carried out. */
function fuelLeftG(containers: readonly Dealt<FuelItem>[], carrier: number, burntG: number): number {
  let toBurnG = burntG;
  let leftG = 0;
  for (const { netG, tareG, carrier: holder } of containers) {
    const fromThisG = Math.min(netG, toBurnG);
    toBurnG -= fromThisG;
    if (holder === carrier) leftG += netG - fromThisG + tareG;
  }
  return leftG;
}

function overloadNotices(loads: readonly DayLoad[]): Notice[] {
  const over = loads.filter((load) => load.overG > 0.5);
  return [...new Set(over.map((load) => load.eater))].map((eater) => {
    const own = over.filter((load) => load.eater === eater);
    const worst = own.reduce((most, load) => (load.overG > most.overG ? load : most));
    const days = own.map((load) => load.day);
    return notice(
      'over-carry-limit',
      { days, overG: worst.overG, when: worst.peakWhen },
      { eater, day: worst.day },
    );
  });
}
