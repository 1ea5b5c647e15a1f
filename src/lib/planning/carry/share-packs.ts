import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type { CarryPlan, DayLoad, FuelPlan, MenuPlan, Pack, PickUp, WaterPlan } from '../model/trip-plan.ts';
import type { Resupply } from '../model/trip.ts';
import { bodyLoadNotices, gearNotices } from './body-loads.ts';
import { containerNotices, foodVolumes } from './food-volume.ts';
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
  const dealtG = [0, ...trip.resupplies].map(() => trip.party.map(() => 0));
  const everyone = trip.party.map((_, index) => index);
  const deal = (stage: number, grossG: number, may: readonly number[]): number => {
    const dealt = dealtG[stage] ?? [];
    const filled = (index: number) => {
      const eater = trip.party[index];
      return eater ? ((dealt[index] ?? 0) + grossG) / headroomG(eater) : Infinity;
    };
    const carrier = may.reduce(
      (best, index) => (filled(index) < filled(best) - 1e-12 ? index : best),
      may[0] ?? 0,
    );
    dealt[carrier] = (dealt[carrier] ?? 0) + grossG;
    return carrier;
  };

  const containers = fuel.containers
    .flatMap(({ label, group, count, netG, tareG, stage = 0 }) =>
      Array.from({ length: count }, (): FuelItem => ({ label, group, netG, tareG, stage })),
    )
    .map((item) => {
      const own = menu.groups.find(({ name }) => name === item.group)?.eaters ?? [];
      const may = everyone.filter((index) => own.includes(trip.party[index]?.name ?? ''));
      return { ...item, carrier: deal(item.stage, item.netG + item.tareG, may.length > 0 ? may : everyone) };
    });
  const uncarried = new Set<string>();
  const food = foodItems(menu, lots, trip).map((item) => {
    const may = everyone.filter((index) => {
      const eater = trip.party[index];
      return eater !== undefined && mayCarry(item.lot, eater);
    });
    if (may.length === 0) uncarried.add(item.lot.recipe);
    return { ...item, carrier: deal(item.stage, item.foodG + item.tareG, may.length > 0 ? may : everyone) };
  });

  const packsOf = (stage: number) =>
    trip.party.map((eater, index) =>
      packOf(
        eater,
        food.filter((item) => item.carrier === index && item.stage === stage),
        containers.filter((item) => item.carrier === index && item.stage === stage),
      ),
    );
  const packs = packsOf(0);
  const pickUps = trip.resupplies.map((place, index) =>
    pickUpOf(place, trip.resupplies[index + 1]?.day ?? trip.days.length, packsOf(index + 1), lots),
  );
  const carried: Carried = { trip, food, containers, water, fuel };
  const loads = trip.days.flatMap(({ day }) =>
    trip.party.map((eater, index) => loadOf(carried, eater, index, day)),
  );
  const volumes = foodVolumes(carried);
  const avoiders = trip.party.filter(({ allergens }) => allergens.length > 0).map(({ name }) => name);
  return {
    carry: { packs, pickUps, loads, volumes, volumeStatedShare: statedShare(food) },
    notices: [
      ...[...uncarried].sort().map((recipe) => notice('nobody-may-carry', { recipe, avoiders })),
      ...overloadNotices(loads),
      ...containerNotices(trip, volumes),
      ...bodyLoadNotices(trip.party, loads),
      ...gearNotices(trip.party),
      ...swellingNotices(trip),
    ],
  };
}

/** Share of the pouches whose volume is stated. */
const statedShare = (food: readonly FoodItem[]): number =>
  food.length > 0 ? food.filter(({ lot }) => lot.volumeMl !== undefined).length / food.length : 0;

/** What is picked up at a place, with what it comes to. */
function pickUpOf(
  { place, kind, day, from, postBy, boxG, label }: Resupply,
  untilDay: number,
  packs: readonly Pack[],
  lots: ReadonlyMap<string, PouchLot>,
): PickUp {
  const sum = (of: (pack: Pack) => number) => packs.reduce((all, pack) => all + of(pack), 0);
  const together = <Row extends { readonly grossG: number }>(
    rows: readonly Row[],
    key: (row: Row) => string,
    count: (row: Row) => number,
  ) =>
    [...Map.groupBy(rows, key)].map(([name, own]) => ({
      name,
      first: own[0],
      count: own.reduce((all, row) => all + count(row), 0),
      grossG: own.reduce((all, row) => all + row.grossG, 0),
    }));
  const pouches = together(
    packs.flatMap((pack) => pack.pouches),
    ({ code }) => code,
    (row) => row.pouches,
  ).map(({ name, first, count, grossG }) => ({
    code: name,
    recipe: first?.recipe ?? '',
    pouches: count,
    grossG,
  }));
  const fuelContainers = together(
    packs.flatMap((pack) => pack.fuelContainers),
    ({ label: of }) => of,
    (row) => row.count,
  ).map(({ name, count, grossG }) => ({ label: name, count, grossG }));
  const [foodG, packagingG, fuelGrossG] = [
    sum((pack) => pack.foodG),
    sum((pack) => pack.packagingG),
    sum((pack) => pack.fuelGrossG),
  ];
  const dates = pouches.flatMap(({ code }) => lots.get(code)?.bestBefore ?? []).sort();
  return {
    place,
    kind,
    day,
    from,
    untilDay,
    ...(postBy !== undefined && { postBy }),
    label,
    ...(dates[0] !== undefined && { bestBefore: dates[0] }),
    pouches: pouches.sort((a, b) => (a.code < b.code ? -1 : 1)),
    fuelContainers,
    foodG,
    packagingG,
    fuelGrossG,
    boxG,
    totalG: foodG + packagingG + fuelGrossG + boxG,
    packs: [...packs],
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
