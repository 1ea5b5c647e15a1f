import {
  MEAL_FREE_FROM,
  MEAL_FREE_TO,
  mealPoints,
  OWN_PLATE,
  POT,
  POT_FOR_OWN,
  SITTING_SHARE,
} from './menu-costs.ts';
import type { Filling } from './fillings.ts';
import { MOST_QUARTERS, MOST_SERVINGS, pouchPointsAt, type LaidDish, type Surroundings } from './laying.ts';
import { LEAST_QUARTERS, type MenuModel, type ModelSlot, type SlotOption } from './menu-model.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import type { DishStyle } from './menu-problem.ts';
import { sumOver } from './place-sets.ts';

const EPSILON = 1e-9;

export type Part = LaidDish & { readonly priced: number };

/** A dish offered to several people: its best part for each set of them, worked out when it is asked for. */
export type Shared = {
  readonly option: SlotOption;
  readonly style: DishStyle;
  /** No part is cheaper than `fixed` and what `least` adds up to over its people, points, and by place. */
  readonly fixed: number;
  readonly least: Float64Array;
  /** @param below parts priced at this or above need not be found @param used pouches that other dishes of the table have, by lot @param except a part whose pouches are not to be opened */
  readonly best: (places: readonly number[], below: number, used?: Used, except?: Part) => Part | undefined;
};
export type Used = ReadonlyMap<number, number>;
/** What a pouch of each lot of a slot costs to open here, and how many are free. */
export type Shelf = { readonly points: Float64Array; readonly free: Int32Array };

export function shelfAt(model: MenuModel, slot: ModelSlot, around: Surroundings): Shelf {
  const points = new Float64Array(model.lots.length);
  const free = new Int32Array(model.lots.length);
  for (const option of slot.options)
    for (const lot of option.lots) {
      points[lot] = around.pouch(lot) + pouchPointsAt(model, slot, lot);
      free[lot] = Math.min(model.lots[lot]?.stock ?? 0, around.free?.(lot) ?? Infinity);
    }
  return { points, free };
}

/** What a filling costs to open here, points; Infinity where its pouches are not free. */
export function fillingPoints({ points: pouchPoints, free }: Shelf, filling: Filling): number {
  const { lots, pouches } = filling;
  let points = 0;
  for (let at = 0; at < lots.length; at++) {
    const lot = lots[at] ?? 0;
    const count = pouches[at] ?? 0;
    if (count > (free[lot] ?? 0)) return Infinity;
    points += count * (pouchPoints[lot] ?? 0);
  }
  return points;
}

/** Points of a portion on a plate: its size, its energy to the day, its taste. */
export function platePoints(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  place: number,
  kcal: number,
  lackG: number,
  around: Surroundings,
): number {
  return (
    mealPoints(slot.plannedKcal[place] ?? 0, kcal, model.costs) +
    around.plate(place, kcal, lackG) +
    (option.taste[place] ?? Infinity) +
    around.eats(place, option.dish)
  );
}

const mayEatAll = (model: MenuModel, slot: ModelSlot, lots: readonly number[], place: number): boolean =>
  lots.every((lot) => model.lots[lot]?.feeds[slot.people[place] ?? -1]);

/** What a kcal of a dish costs to open at least; Infinity where nothing of it is free. */
export function kcalPointsOf(model: MenuModel, shelf: Shelf, lots: readonly number[]): number {
  let least = Infinity;
  for (const lot of lots)
    if ((shelf.free[lot] ?? 0) >= 1)
      least = Math.min(least, (shelf.points[lot] ?? 0) / (model.lots[lot]?.kcal ?? 1));
  return least;
}

/** What plates cost by their energy alone, whatever is on them: kept for a table while its dishes are compared. */
export type Plates = {
  /** By place: the kcal at which its points bend, and the points there. */
  readonly kinks: readonly { readonly kcal: number; readonly points: number }[][];
  /** By price of energy in `ENERGY_PRICES`, then by place: the least that a plate comes to at that price. */
  readonly least: readonly Float64Array[];
  /** What protein can bring to a plate, points for each gram of it in the food, by place. */
  readonly lackPoints: Float64Array;
};
/** Prices of a kcal, as parts of one that is missing to a day, at which plates are weighed to see early that a filling is too dear. */
export const ENERGY_PRICES = [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.45, 0.6, 0.8, 1, 1.3, 2, 4];

export function platesOf(model: MenuModel, slot: ModelSlot, around: Surroundings): Plates {
  const { costs } = model;
  const kinks = slot.people.map((_, place) => {
    const planned = slot.plannedKcal[place] ?? 0;
    const most = SITTING_SHARE * planned;
    return [
      0,
      MEAL_FREE_FROM * planned,
      planned,
      MEAL_FREE_TO * planned,
      most,
      ...(around.kinks?.(place) ?? []),
    ]
      .filter((kcal) => kcal >= 0 && kcal <= most)
      .map((kcal) => ({
        kcal,
        points: mealPoints(planned, kcal, costs) + around.plate(place, kcal, 0) - costs.leftOverKcal * kcal,
      }));
  });
  const least = ENERGY_PRICES.map((part) =>
    Float64Array.from(kinks, (own) =>
      own.reduce(
        (min, { kcal, points }) => Math.min(min, points + part * costs.missingKcal * kcal),
        Infinity,
      ),
    ),
  );
  const lackPoints = Float64Array.from(slot.people, (_, place) =>
    Math.max(0, around.plate(place, 0, 0) - around.plate(place, 0, -1)),
  );
  return { kinks, least, lackPoints };
}

/** What eating a dish costs whatever the portion, less what its protein can bring at most. */
export function eatingPoints(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  place: number,
  around: Surroundings,
  plates: Plates,
): number {
  const taste = option.taste[place] ?? Infinity;
  if (taste === Infinity) return Infinity;
  const richest = option.lots.reduce((most, index) => {
    const lot = model.lots[index];
    return lot ? Math.max(most, -lot.lackG / lot.servingKcal) : most;
  }, 0);
  const mostG = richest * SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
  return taste + around.eats(place, option.dish) - (plates.lackPoints[place] ?? 0) * mostG;
}

/** The least that each place adds to a dish whose pouches cost so much for a kcal. */
export const leastByPlace = (
  slot: ModelSlot,
  plates: Plates,
  eating: Float64Array,
  kcalPoints: number,
  leftOverKcal: number,
): Float64Array =>
  Float64Array.from(slot.people, (_, place) =>
    eating[place] === Infinity
      ? Infinity
      : (eating[place] ?? 0) +
        (plates.kinks[place] ?? []).reduce(
          (min, { kcal, points }) => Math.min(min, points + (kcalPoints + leftOverKcal) * kcal),
          Infinity,
        ),
  );

/** One pot of a dish. Portions in quarters, each within a quarter of its share of the pot. */
export function potOf(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  around: Surroundings,
  plates: Plates,
  shelf: Shelf,
  work: { units: number },
): Shared | undefined {
  const { costs } = model;
  const asked = POT + (slot.task.style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0);
  const eating = Float64Array.from(slot.people, (_, place) =>
    eatingPoints(model, slot, option, place, around, plates),
  );
  if (eating.every((points) => points === Infinity)) return undefined;
  const kcalPoints = kcalPointsOf(model, shelf, option.lots);
  if (kcalPoints === Infinity) return undefined;

  const { fillings } = option;
  /** Of each filling, with its pot and all of it left over. */
  let opened: Float64Array | undefined;
  const openAll = () => {
    work.units += fillings.length;
    return Float64Array.from(
      fillings,
      (filling) =>
        fillingPoints(shelf, filling) +
        (around.opens?.(option.dish, filling.servings) ?? 0) +
        asked +
        costs.leftOverKcal * filling.kcal,
    );
  };
  const tables: (PotTable | undefined)[] = [];
  const known = new Map<readonly number[], { readonly part: Part | undefined; readonly below: number }>();
  const best: Shared['best'] = (places, below, used, except) => {
    const isPlain = !used && !except;
    const before = isPlain ? known.get(places) : undefined;
    if (before && (before.part || before.below >= below)) return before.part;
    const eat = sumOver(places, (place) => eating[place] ?? Infinity);
    const atPrice = plates.least.map((byPlace) => sumOver(places, (place) => byPlace[place] ?? 0));
    const least = scratchOf(fillings.length);
    opened ??= openAll();
    for (let index = 0; index < fillings.length; index++) {
      const kcal = (fillings[index]?.kcal ?? 0) * costs.missingKcal;
      // food that is not there cannot be eaten: at any price of energy this is no more than the filling comes to
      let bound = -Infinity;
      for (let at = 0; at < ENERGY_PRICES.length; at++) {
        const atThis = (atPrice[at] ?? 0) - (ENERGY_PRICES[at] ?? 0) * kcal;
        if (atThis > bound) bound = atThis;
      }
      least[index] = bound + (opened[index] ?? 0) + eat;
    }
    work.units += fillings.length;
    let found: Part | undefined;
    for (;;) {
      // the most promising one that is left
      let index = -1;
      let bound = found ? found.priced - EPSILON : below;
      for (let at = 0; at < fillings.length; at++)
        if ((least[at] ?? 0) < bound) {
          bound = least[at] ?? 0;
          index = at;
        }
      const filling = fillings[index];
      if (!filling) break;
      least[index] = Infinity;
      if (used && !isLeft(filling, shelf.free, used)) continue;
      if (except && filling.lots === except.lots && filling.pouches === except.pouches) continue;
      const { plate, most, total } = (tables[index] ??= potTable(model, slot, option, filling, around, work));
      const shared = shareOut(plate, most, slot.weight, places, total, filling.leastServings, work);
      if (!shared) continue;
      const priced = (opened[index] ?? 0) + shared.points;
      if (priced >= (found ? found.priced - EPSILON : Infinity)) continue;
      found = {
        dish: option.dish,
        style: 'shared pot',
        lots: filling.lots,
        pouches: filling.pouches,
        portions: places.map((place, at) => ({ place, servings: (shared.quarters[at] ?? 0) / 4 })),
        priced,
      };
    }
    if (isPlain) known.set(places, { part: found, below });
    return found;
  };
  return {
    option,
    style: 'shared pot',
    fixed: asked,
    least: leastByPlace(slot, plates, eating, kcalPoints, costs.leftOverKcal),
    best,
  };
}

const isLeft = ({ lots, pouches }: Filling, free: Int32Array, used: Used): boolean =>
  lots.every((lot, at) => (pouches[at] ?? 0) + (used.get(lot) ?? 0) <= (free[lot] ?? 0));

let scratch = new Float64Array(256);
/** Numbers that are only needed for a moment. */
function scratchOf(length: number): Float64Array {
  if (scratch.length < length) scratch = new Float64Array(2 * length);
  return scratch;
}

/** What each quarter of a serving from a pot costs on each plate. */
type PotTable = {
  readonly total: number;
  readonly most: Int32Array;
  /** By place, then by quarters: points, what would be left over in them given back. */
  readonly plate: readonly Float64Array[];
};

export function potTable(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  filling: Filling,
  around: Surroundings,
  work: { units: number },
): PotTable {
  const { costs } = model;
  const count = slot.people.length;
  const total = Math.min(Math.floor(filling.servings * 4 + EPSILON), count * MOST_QUARTERS);
  const quarterKcal = filling.kcal / (filling.servings * 4);
  const quarterLackG = filling.lackG / (filling.servings * 4);
  const most = new Int32Array(count);
  const plate = slot.people.map((_, place) => {
    if (!Number.isFinite(option.taste[place]) || !mayEatAll(model, slot, filling.lots, place))
      return new Float64Array(0);
    const mostKcal = SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
    const quarters = Math.min(total, MOST_QUARTERS, Math.floor(mostKcal / quarterKcal + EPSILON));
    if (quarters < LEAST_QUARTERS) return new Float64Array(0);
    most[place] = quarters;
    const row = new Float64Array(quarters + 1);
    for (let q = LEAST_QUARTERS; q <= quarters; q++)
      row[q] =
        platePoints(model, slot, option, place, q * quarterKcal, q * quarterLackG, around) -
        costs.leftOverKcal * q * quarterKcal;
    work.units += quarters;
    return row;
  });
  return { total, most, plate };
}

/** The best portions from a pot for some people; for each number of quarters served, a quarter at a time goes to whom it serves best. */
function shareOut(
  plate: readonly Float64Array[],
  most: Int32Array,
  weight: readonly number[],
  places: readonly number[],
  total: number,
  leastServings: number,
  work: { units: number },
): { points: number; quarters: number[] } | undefined {
  const count = places.length;
  const weights = sumOver(places, (place) => weight[place] ?? 0);
  // with a whole pouch left over, fewer pouches would do
  const from = Math.max(LEAST_QUARTERS * count, total - Math.ceil(leastServings * 4 - EPSILON) + 1);
  const quarters = new Int32Array(count);
  let best: { points: number; quarters: number[] } | undefined;
  for (let served = total; served >= from; served--) {
    let given = 0;
    let room = 0;
    let points = 0;
    let fits = true;
    for (let at = 0; at < count; at++) {
      const place = places[at] ?? 0;
      const share = ((weight[place] ?? 0) / weights) * served;
      const low = Math.max(LEAST_QUARTERS, Math.ceil(share - 1 - EPSILON));
      const high = Math.min(most[place] ?? 0, Math.floor(share + 1 + EPSILON));
      if (low > high) {
        fits = false;
        break;
      }
      quarters[at] = low;
      given += low;
      room += high - low;
      points += plate[place]?.[low] ?? Infinity;
    }
    work.units += count;
    if (!fits || given > served || given + room < served) continue;
    while (given < served) {
      let to = -1;
      let gain = Infinity;
      for (let at = 0; at < count; at++) {
        const place = places[at] ?? 0;
        const q = quarters[at] ?? 0;
        const share = ((weight[place] ?? 0) / weights) * served;
        if (q + 1 > Math.min(most[place] ?? 0, Math.floor(share + 1 + EPSILON))) continue;
        const step = (plate[place]?.[q + 1] ?? Infinity) - (plate[place]?.[q] ?? 0);
        if (step < gain - EPSILON) {
          gain = step;
          to = at;
        }
      }
      if (to < 0) break;
      quarters[to] = (quarters[to] ?? 0) + 1;
      points += gain;
      given += 1;
      work.units += count;
    }
    if (given === served && (!best || points < best.points - EPSILON))
      best = { points, quarters: [...quarters] };
  }
  return best;
}

/** Pouches for one person, small ones whole or half eaten, larger ones in whole servings: the best portion of each lot and number of them. */
export function ownParts(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  place: number,
  around: Surroundings,
  shelf: Shelf,
): Part[] {
  if (!Number.isFinite(option.taste[place])) return [];
  const mostKcal = SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
  const parts: Part[] = [];
  for (const index of option.lots) {
    const lot = model.lots[index];
    if (!lot?.isOwnPouch || !lot.feeds[slot.people[place] ?? -1]) continue;
    const free = shelf.free[index] ?? 0;
    const pouch = shelf.points[index] ?? 0;
    const isSmall = lot.servings < OWN_POUCH_BELOW_SERVINGS;
    const each = isSmall ? 2 : Math.floor(lot.servings + EPSILON);
    const unit = isSmall ? lot.servings / 2 : 1;
    const mostUnits = isSmall ? Infinity : MOST_SERVINGS;
    let best: Part | undefined;
    for (let units = 1; units <= mostUnits && units * unit * lot.servingKcal <= mostKcal + EPSILON; units++) {
      const pouches = Math.ceil(units / each);
      if (pouches > free) break;
      const servings = units * unit;
      const priced =
        OWN_PLATE +
        pouches * pouch +
        (around.opens?.(option.dish, pouches * lot.servings) ?? 0) +
        model.costs.leftOverKcal * (pouches * lot.kcal - servings * lot.servingKcal) +
        platePoints(model, slot, option, place, servings * lot.servingKcal, servings * lot.lackG, around);
      // more pouches than another way must cost less
      if (best && priced >= best.priced - EPSILON) continue;
      if (best && best.pouches[0] === pouches) parts.pop();
      best = {
        dish: option.dish,
        style: 'own pouch',
        lots: [index],
        pouches: [pouches],
        portions: [{ place, servings }],
        priced,
      };
      parts.push(best);
    }
  }
  return parts;
}

/** Larger pouches handed out: each feeds one to as many people as it has whole servings, in whole servings. */
export function handedOut(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  around: Surroundings,
  plates: Plates,
  shelf: Shelf,
  work: { units: number },
): Shared | undefined {
  const { costs } = model;
  const count = slot.people.length;
  const suiting = option.lots.filter((index) => {
    const lot = model.lots[index];
    return lot?.isOwnPouch && lot.servings >= OWN_POUCH_BELOW_SERVINGS && (shelf.free[index] ?? 0) >= 1;
  });
  if (suiting.length === 0) return undefined;
  const kcalPoints = kcalPointsOf(model, shelf, suiting);
  const eating = Float64Array.from(
    slot.people,
    (_, place) => OWN_PLATE + eatingPoints(model, slot, option, place, around, plates),
  );
  const least = leastByPlace(slot, plates, eating, kcalPoints, costs.leftOverKcal);
  if (least.every((points) => points === Infinity)) return undefined;
  const makeTables = () =>
    suiting.flatMap((index) => {
      const lot = model.lots[index];
      if (!lot) return [];
      const free = shelf.free[index] ?? 0;
      const pouch = shelf.points[index] ?? 0;
      const each = Math.floor(lot.servings + EPSILON);
      const most = new Int32Array(count);
      const plate = slot.people.map((person, place) => {
        if (!Number.isFinite(option.taste[place]) || !lot.feeds[person]) return new Float64Array(0);
        const mostKcal = SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
        const servings = Math.min(
          Math.floor(mostKcal / lot.servingKcal + EPSILON),
          MOST_SERVINGS,
          free * each,
        );
        const row = new Float64Array(Math.max(0, servings) + 1);
        for (let s = 1; s <= servings; s++) {
          const own =
            OWN_PLATE + platePoints(model, slot, option, place, s * lot.servingKcal, s * lot.lackG, around);
          row[s] = own - costs.leftOverKcal * s * lot.servingKcal;
        }
        most[place] = Math.max(0, servings);
        work.units += servings;
        return row;
      });
      /** By place: the least that a portion of it comes to. */
      const low = Float64Array.from(plate, (row) => {
        let least = Infinity;
        for (let s = 1; s < row.length; s++) least = Math.min(least, row[s] ?? Infinity);
        return least;
      });
      return [{ lot, index, pouch, each, free, plate, most, low }];
    });
  let tables: ReturnType<typeof makeTables> | undefined;
  const known = new Map<readonly number[], { readonly part: Part | undefined; readonly below: number }>();
  const best: Shared['best'] = (places, below, used, except) => {
    const isPlain = !used && !except;
    const before = isPlain ? known.get(places) : undefined;
    if (before && (before.part || before.below >= below)) return before.part;
    let found: Part | undefined;
    tables ??= makeTables();
    for (const { lot, index, pouch, each, free, plate, most, low } of tables) {
      let [leastPlates, mostServings, canAll] = [0, 0, true];
      for (const place of places) {
        leastPlates += low[place] ?? Infinity;
        mostServings += most[place] ?? 0;
        if ((most[place] ?? 0) < 1) canAll = false;
      }
      if (!canAll) continue;
      const left = free - (used?.get(index) ?? 0);
      for (
        let pouches = Math.ceil(places.length / each);
        pouches <= left && (pouches - 1) * each < mostServings;
        pouches++
      ) {
        work.units += places.length;
        // more pouches cost more
        const opened = pouches * (pouch + costs.leftOverKcal * lot.kcal);
        if (opened + leastPlates >= (found?.priced ?? below)) break;
        if (except?.lots[0] === index && except.pouches[0] === pouches) continue;
        const room = pouches * each;
        const servings = places.map(() => 1);
        let given = places.length;
        let points = sumOver(places, (place) => plate[place]?.[1] ?? Infinity);
        for (;;) {
          let to = -1;
          let gain = 0;
          for (let at = 0; at < places.length && given < room; at++) {
            const place = places[at] ?? 0;
            const s = servings[at] ?? 0;
            if (s + 1 > (most[place] ?? 0)) continue;
            const step = (plate[place]?.[s + 1] ?? Infinity) - (plate[place]?.[s] ?? 0);
            if (step < gain - EPSILON) {
              gain = step;
              to = at;
            }
          }
          if (to < 0) break;
          servings[to] = (servings[to] ?? 0) + 1;
          points += gain;
          given += 1;
        }
        work.units += room * places.length;
        const priced =
          pouches * pouch +
          (around.opens?.(option.dish, pouches * lot.servings) ?? 0) +
          costs.leftOverKcal * pouches * lot.kcal +
          points;
        if (!found || priced < found.priced - EPSILON)
          found = {
            dish: option.dish,
            style: 'own pouch',
            lots: [index],
            pouches: [pouches],
            portions: places.map((place, at) => ({ place, servings: servings[at] ?? 0 })),
            priced,
          };
      }
    }
    if (isPlain) known.set(places, { part: found, below });
    return found;
  };
  return { option, style: 'own pouch', fixed: 0, least, best };
}
