import { notice, type Notice } from '../model/notices.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type { CarryPlan, DayLoad, FuelPlan, MenuPlan, Pack, WaterPlan } from '../model/trip-plan.ts';
import { bodyLoadNotices, gearNotices } from './body-loads.ts';
import { foodItems, mayCarry, type FoodItem } from './food-items.ts';
import { headroomG, loadOf, type Carried, type FuelItem } from './pack-loads.ts';
import { swellingNotices } from './swelling.ts';

/**
 * Who carries what, and what each pack weighs on each day.
 *
 * Every item goes to the eater whose room it fills least, of those who may carry it: nobody carries an allergen that they avoid, and the fuel of a cook group is with its people.
 * Food is dealt from the last meal to the first and the heaviest pouch of a meal first, so the packs are balanced not only at the start but on every later day too, when what is
 * eaten early is gone. Fuel containers are dealt before the food and are burnt in their order. Water for the group, and what children drink, is shared by room; adults carry their own.
 * Empty pouches are carried out, and the reserve home.
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
  const everyone = trip.party.map((_, index) => index);
  const deal = (grossG: number, may: readonly number[]): number => {
    const filled = (index: number) => {
      const eater = trip.party[index];
      return eater ? ((dealtG[index] ?? 0) + grossG) / headroomG(eater) : Infinity;
    };
    const carrier = may.reduce(
      (best, index) => (filled(index) < filled(best) - 1e-12 ? index : best),
      may[0] ?? 0,
    );
    dealtG[carrier] = (dealtG[carrier] ?? 0) + grossG;
    return carrier;
  };

  const containers = fuel.containers
    .flatMap(({ label, group, count, netG, tareG }) =>
      Array.from({ length: count }, (): FuelItem => ({ label, group, netG, tareG })),
    )
    .map((item) => {
      const own = menu.groups.find(({ name }) => name === item.group)?.eaters ?? [];
      const may = everyone.filter((index) => own.includes(trip.party[index]?.name ?? ''));
      return { ...item, carrier: deal(item.netG + item.tareG, may.length > 0 ? may : everyone) };
    });
  const uncarried = new Set<string>();
  const food = foodItems(menu, lots).map((item) => {
    const may = everyone.filter((index) => {
      const eater = trip.party[index];
      return eater !== undefined && mayCarry(item.lot, eater);
    });
    if (may.length === 0) uncarried.add(item.lot.recipe);
    return { ...item, carrier: deal(item.foodG + item.tareG, may.length > 0 ? may : everyone) };
  });

  const packs = trip.party.map((eater, index) =>
    packOf(
      eater,
      food.filter((item) => item.carrier === index),
      containers.filter((item) => item.carrier === index),
    ),
  );
  const carried: Carried = { trip, food, containers, water, fuel };
  const loads = trip.days.flatMap(({ day }) =>
    trip.party.map((eater, index) => loadOf(carried, eater, index, day)),
  );
  const avoiders = trip.party.filter(({ allergens }) => allergens.length > 0).map(({ name }) => name);
  return {
    carry: { packs, loads },
    notices: [
      ...[...uncarried].sort().map((recipe) => notice('nobody-may-carry', { recipe, avoiders })),
      ...overloadNotices(loads),
      ...bodyLoadNotices(trip.party, loads),
      ...gearNotices(trip.party),
      ...swellingNotices(trip),
    ],
  };
}

function packOf(eater: ResolvedEater, food: readonly FoodItem[], fuel: readonly FuelItem[]): Pack {
  const pouches = new Map<string, Pack['pouches'][number]>();
  const reserve = new Map<string, Pack['reserve'][number]>();
  for (const { lot, at, foodG, tareG } of [...food].reverse()) {
    const { code, recipe } = lot;
    const key = at ? `${at.day} ${at.meal} ${at.group} ${code}` : code;
    const before = (at ? pouches : reserve).get(key);
    const row = {
      code,
      recipe,
      pouches: (before?.pouches ?? 0) + 1,
      grossG: (before?.grossG ?? 0) + foodG + tareG,
    };
    if (at) pouches.set(key, { ...row, ...at });
    else reserve.set(key, row);
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
    reserve: [...reserve.values()],
    fuelContainers: [...containers.values()],
    foodG: food.reduce((sum, item) => sum + item.foodG, 0),
    packagingG: food.reduce((sum, item) => sum + item.tareG, 0),
    fuelGrossG: fuel.reduce((sum, item) => sum + item.netG + item.tareG, 0),
  };
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
