import {
  MEAL_FREE_FROM,
  MEAL_FREE_TO,
  mealPoints,
  OWN_PLATE,
  OWN_SECOND_PART,
  POT,
  POT_FOR_OWN,
  SITTING_SHARE,
  SKIPPED_MEAL,
} from './menu-costs.ts';
import type { Filling } from './fillings.ts';
import { MEAL_KINDS } from '../model/words.ts';
import {
  LEAST_QUARTERS,
  pouchPoints,
  type MenuModel,
  type ModelSlot,
  type SlotOption,
} from './menu-model.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import type { DishStyle } from './menu-problem.ts';
import { serveAlone, type Candidate, type Served } from './serve-alone.ts';

/** What one person at the table gets of a dish. */
export type LaidPortion = { readonly place: number; readonly servings: number };
/** A dish as it is put on the table: pouches of one recipe for some of the people. */
export type LaidDish = {
  readonly dish: number;
  readonly style: DishStyle;
  readonly lots: readonly number[];
  readonly pouches: readonly number[];
  readonly portions: readonly LaidPortion[];
};
/** A way to lay a table for one meal. */
export type Laying = {
  readonly slot: number;
  readonly dishes: readonly LaidDish[];
  /** Own points: pouches, leftovers, sizes of the meals, dishes to cook, tastes, and who goes without. */
  readonly points: number;
  /** By place. */
  readonly kcal: readonly number[];
  readonly lackG: readonly number[];
};

/**
 * What a laying costs besides its own points, by what surrounds it: prices of a linear program, or the rest of a menu that stands.
 * What energy brings to a person must be convex in it, and pouches must not be worth less than nothing.
 */
export type Surroundings = {
  /** Points of energy and lacking protein on a person's plate. @param place at the table */
  readonly plate: (place: number, kcal: number, lackG: number) => number;
  /** Points for eating a dish. */
  readonly eats: (place: number, dish: number) => number;
  /** Points of one pouch of a lot; Infinity where none is free. */
  readonly pouch: (lot: number) => number;
  /** Points of opening so many servings of a dish at once. */
  readonly opens?: (dish: number, servings: number) => number;
  /** Pouches of a lot that may be opened; left out: its whole stock. */
  readonly free?: (lot: number) => number;
  /** Dishes looked at for a table that two share at most, the cheapest ones; left out: all. */
  readonly mostPaired?: number;
  /** Where the points of energy on a plate bend, kcal; left out: nowhere. */
  readonly kinks?: (place: number) => readonly number[];
};

/** Quarters from a pot, and servings by hand, that one person gets at most. */
export const MOST_QUARTERS = 32;
export const MOST_SERVINGS = 8;
const EPSILON = 1e-9;

type Part = LaidDish & { readonly priced: number };

/** A dish offered to several people: its best part for each set of them, worked out when it is asked for. */
type Shared = {
  readonly option: SlotOption;
  readonly style: DishStyle;
  /** No part is cheaper than what it adds up to over its people, points by place. */
  readonly least: Float64Array;
  /** @param below parts priced at this or above need not be found @param used pouches that other dishes of the table have, by lot */
  readonly best: (places: readonly number[], below: number, used?: Used) => Part | undefined;
};
type Used = ReadonlyMap<number, number>;
/** A way to serve one person by themselves; nothing of it where they go without. */
type Way = Candidate<Part | undefined>;

const sumOver = (places: readonly number[], of: (place: number) => number): number => {
  let sum = 0;
  for (const place of places) sum += of(place);
  return sum;
};

/**
 * The cheapest way to lay a table, exactly: each dish for each set of people by the best portions of each filling of the pot (portions are convex, so the best quarter at a
 * time is the best of all), pouches of their own by person, and at most two dishes shared, with others for single people.
 *
 * @param below layings that are priced at this or above need not be found
 * @returns the cheapest laying and its points with those of the surroundings, and some others that were come upon
 */
export function layMeal(
  model: MenuModel,
  slot: ModelSlot,
  around: Surroundings,
  work: { units: number } = { units: 0 },
  below = Infinity,
): Laid {
  const everyone = sameSet(slot.people.map((_, place) => place));
  const found = layPlaces(model, slot, everyone, around, work, below);
  const finish = (parts: readonly LaidDish[]) => {
    const laying = asLaying(model, slot, parts);
    return { laying, priced: pricedOf(model, slot, laying, around) };
  };
  return { ...finish(found.parts), least: found.least, others: found.others.map(finish) };
}

/** A laid table. `least`: no laying is priced below it. */
export type Laid = {
  readonly laying: Laying;
  readonly priced: number;
  readonly least: number;
  readonly others: readonly { readonly laying: Laying; readonly priced: number }[];
};

/** The points of a laying with those of what surrounds it. */
export function pricedOf(model: MenuModel, slot: ModelSlot, laying: Laying, around: Surroundings): number {
  let points = laying.points;
  slot.people.forEach((_, place) => {
    points += around.plate(place, laying.kcal[place] ?? 0, laying.lackG[place] ?? 0);
  });
  for (const dish of laying.dishes) {
    points += around.opens?.(dish.dish, totalsOf(model, dish).servings) ?? 0;
    dish.lots.forEach((lot, at) => (points += (dish.pouches[at] ?? 0) * around.pouch(lot)));
    for (const { place } of dish.portions) points += around.eats(place, dish.dish);
  }
  return points;
}

/** The cheapest dishes for the places of a table. `least`: nothing is cheaper, pouches enough or not. */
function layPlaces(
  model: MenuModel,
  slot: ModelSlot,
  everyone: readonly number[],
  around: Surroundings,
  work: { units: number },
  below: number,
): { parts: readonly LaidDish[]; least: number; others: (readonly LaidDish[])[] } {
  const { costs } = model;
  const { style } = slot.task;
  const skip = slot.people.map(
    (_, place) =>
      SKIPPED_MEAL * costs.missingKcal +
      mealPoints(slot.plannedKcal[place] ?? 0, 0, costs) +
      around.plate(place, 0, 0),
  );

  // somebody by themselves: nothing, a pouch of their own, or a pot of their own
  const single = new Float64Array(skip);
  const ways = skip.map((points): Way[] => [{ lot: undefined, pouches: 0, points, of: undefined }]);
  const offer = (place: number, lot: number | undefined, part: Part, fee: number) => {
    const points = part.priced + fee;
    if (points >= (skip[place] ?? 0) - EPSILON) return;
    ways[place]?.unshift({ lot, pouches: part.pouches[0] ?? 0, points, of: part });
    single[place] = Math.min(single[place] ?? 0, points);
  };
  const plates = platesOf(model, slot, around);
  const shelf = shelfAt(model, slot, around);
  const shared: Shared[] = [];
  for (const option of slot.options) {
    if (style !== 'shared pot')
      for (const place of everyone)
        for (const part of ownParts(model, slot, option, place, around)) offer(place, part.lots[0], part, 0);
    const pot = potOf(model, slot, option, around, plates, shelf, work);
    if (pot) shared.push(pot);
    if (style !== 'shared pot') {
      const handed = handedOut(model, slot, option, around, plates, work);
      if (handed) shared.push(handed);
    }
  }
  const secondDish = (shared: Shared) =>
    costs.secondDish * (shared.style === 'own pouch' ? OWN_SECOND_PART : 1);
  if (everyone.length > 1)
    for (const place of everyone) {
      let best: { part: Part; fee: number } | undefined;
      for (const one of shared) {
        const fee = secondDish(one);
        const limit = best ? best.part.priced + best.fee : (single[place] ?? 0);
        if ((one.least[place] ?? Infinity) + fee >= limit) continue;
        const part = one.best(sameSet([place]), limit - fee);
        if (part && part.priced + fee < limit - EPSILON) best = { part, fee };
      }
      if (best) offer(place, undefined, best.part, best.fee);
    }

  const fits = (part: Part | undefined, used: Used) =>
    !part ||
    part.lots.every((lot, at) => (part.pouches[at] ?? 0) + (used.get(lot) ?? 0) <= (shelf.free[lot] ?? 0));
  const withUse = (used: Used, part: Part | undefined): Used => {
    if (!part) return used;
    const more = new Map(used);
    part.lots.forEach((lot, at) => more.set(lot, (more.get(lot) ?? 0) + (part.pouches[at] ?? 0)));
    return more;
  };
  /** What serves somebody best by themselves where others have pouches already. */
  const aloneBeside = (place: number, used: Used): Way => {
    let best: Way | undefined;
    for (const way of ways[place] ?? [])
      if ((!best || way.points < best.points) && fits(way.of, used)) best = way;
    work.units += 20 + 2 * shared.length;
    for (const one of everyone.length > 1 ? shared : []) {
      const fee = secondDish(one);
      const limit = best?.points ?? Infinity;
      if ((one.least[place] ?? Infinity) + fee >= limit) continue;
      const part = one.best(sameSet([place]), limit - fee, used);
      if (part && part.priced + fee < limit - EPSILON)
        best = { lot: undefined, pouches: 0, points: part.priced + fee, of: part };
    }
    return best ?? { lot: undefined, pouches: 0, points: skip[place] ?? 0, of: undefined };
  };

  type Found = { priced: number; parts: readonly Part[] };
  const foundOf = (chosen: readonly Way[]): Found => ({
    priced: chosen.reduce((sum, { points }) => sum + points, 0),
    parts: chosen.flatMap(({ of }) => of ?? []),
  });
  const fitTogether = (parts: readonly Part[], taken: Used): boolean => {
    let used = taken;
    for (const part of parts) {
      if (!fits(part, used)) return false;
      used = withUse(used, part);
    }
    return true;
  };
  const served = new Map<readonly number[], Served<Part | undefined>>();
  /** Some people by themselves, beside nobody. */
  const servedOf = (places: readonly number[]): Served<Part | undefined> => {
    const before = served.get(places);
    if (before) return before;
    work.units += 4 * places.length;
    const now = serveAlone(
      places.map((place) => ways[place] ?? []),
      (lot) => shelf.free[lot] ?? 0,
    );
    served.set(places, now);
    return now;
  };
  const serveBeside = (places: readonly number[], taken: Used): Found => {
    const { chosen } = servedOf(places);
    const first = chosen && foundOf(chosen);
    if (first && fitTogether(first.parts, taken)) return first;
    work.units += 8 * places.length;
    const again = serveAlone(
      places.map((place) => ways[place] ?? []),
      (lot) => (shelf.free[lot] ?? 0) - (taken.get(lot) ?? 0),
    );
    const second = again.chosen && foundOf(again.chosen);
    if (second && fitTogether(second.parts, taken)) return second;
    // one after the other
    let used = taken;
    const ownWays = places.map((place) => {
      const way = aloneBeside(place, used);
      used = withUse(used, way.of);
      return way;
    });
    return foundOf(ownWays);
  };
  const alonePoints = (places: readonly number[]) => sumOver(places, (place) => single[place] ?? 0);
  let best: Found = { priced: Infinity, parts: [] };
  let least = Infinity;
  /** Nothing at this or above it is looked for. */
  const limit = () => Math.min(best.priced, below);
  const seen: Found[] = [];
  /** Dishes for several people, and others by themselves: as cheap as can be, and then from pouches that are there. */
  const take = (fee: number, parts: readonly { part: Part; from: Shared }[], alone: readonly number[]) => {
    const relaxed =
      fee + parts.reduce((sum, { part }) => sum + part.priced, 0) + servedOf(alone).least;
    if (relaxed >= limit() - EPSILON) return;
    least = Math.min(least, relaxed);
    let used: Used = new Map();
    let priced = fee;
    const laid: Part[] = [];
    for (const { part, from } of parts) {
      const own = fits(part, used)
        ? part
        : from.best(sameSet(part.portions.map(({ place }) => place)), Infinity, used);
      if (!own) return;
      used = withUse(used, own);
      priced += own.priced;
      laid.push(own);
    }
    const others = serveBeside(alone, used);
    const found = { priced: priced + others.priced, parts: [...laid, ...others.parts] };
    seen.push(found);
    if (found.priced < best.priced - EPSILON) best = found;
  };
  take(0, [], everyone);
  const leastOf = ({ least }: Shared) =>
    sumOver(everyone, (place) => Math.min(least[place] ?? Infinity, single[place] ?? 0));
  shared.sort((a, b) => leastOf(a) - leastOf(b));
  for (const one of shared) {
    if (leastOf(one) >= limit()) break;
    for (const places of splitsOf(everyone, one.least, single, limit)) {
      const alone = without(everyone, places);
      const part = one.best(places, limit() - alonePoints(alone));
      if (!part) continue;
      take(0, [{ part, from: one }], alone);
    }
  }
  const atBest = shared.map(({ least }) => {
    const own = new Float64Array(slot.people.length);
    for (const place of everyone) own[place] = Math.min(least[place] ?? Infinity, single[place] ?? 0);
    return own;
  });
  const paired = Math.min(shared.length, around.mostPaired ?? Infinity);
  for (let i = 0; i < paired; i++)
    for (let j = 0; j < paired; j++) {
      const [one, two] = [shared[i], shared[j]];
      if (!one || !two || (i > j && secondDish(one) <= secondDish(two))) continue;
      // the second one costs more
      const fee = Math.min(secondDish(one), secondDish(two));
      let together = fee;
      for (const place of everyone) together += Math.min(atBest[i]?.[place] ?? 0, atBest[j]?.[place] ?? 0);
      if (together >= limit()) continue;
      work.units += 10;
      const rest = atBest[j] ?? single;
      for (const first of splitsOf(everyone, one.least, rest, () => limit() - fee)) {
        if (first.length === everyone.length) continue;
        const remaining = without(everyone, first);
        const leastRest = fee + sumOver(remaining, (place) => rest[place] ?? 0);
        if (leastRest + sumOver(first, (place) => one.least[place] ?? Infinity) >= limit()) continue;
        const partOne = one.best(first, limit() - leastRest);
        if (!partOne || partOne.priced + leastRest >= limit()) continue;
        const budget = () => limit() - fee - partOne.priced;
        for (const second of splitsOf(remaining, two.least, single, budget)) {
          const alone = without(remaining, second);
          const partTwo = two.best(second, budget() - alonePoints(alone));
          // pouches of one lot that are handed out are one dish
          if (!partTwo || (one === two && one.style === 'own pouch' && partOne.lots[0] === partTwo.lots[0]))
            continue;
          take(
            fee,
            [
              { part: partOne, from: one },
              { part: partTwo, from: two },
            ],
            alone,
          );
        }
      }
    }

  least = Math.min(least, limit());
  return {
    parts: best.parts,
    least,
    others: seen
      .filter(({ parts }) => parts !== best.parts)
      .sort((a, b) => a.priced - b.priced)
      .slice(0, 6)
      .map(({ parts }) => parts),
  };
}

/** Sets of people of up to so many are all looked at; of larger tables, those that leave out people one at a time in the order of what leaving them out gains. */
const MOST_PLACES_TO_SPLIT = 7;
/** Places up to this one are counted as bits. */
const MOST_BITS = 30;

const sets = new Map<number, readonly number[]>();
/** The places of a set of bits, the same array each time. */
function setOf(bits: number): readonly number[] {
  const known = sets.get(bits);
  if (known) return known;
  const places: number[] = [];
  for (let place = 0; place <= MOST_BITS; place++) if ((bits >> place) & 1) places.push(place);
  sets.set(bits, places);
  return places;
}
const bitsOf = (places: readonly number[]): number => {
  let bits = 0;
  for (const place of places) bits |= 1 << place;
  return bits;
};
/** A set as the array that stands for it, where it can be counted as bits. */
const sameSet = (places: readonly number[]): readonly number[] =>
  places.every((place) => place <= MOST_BITS) ? setOf(bitsOf(places)) : places;
const without = (all: readonly number[], some: readonly number[]): readonly number[] =>
  all.every((place) => place <= MOST_BITS)
    ? setOf(bitsOf(all) & ~bitsOf(some))
    : all.filter((place) => !some.includes(place));

/** Sets of people worth looking at for a dish whose least points are known, those who cannot eat it left out. */
function* splitsOf(
  places: readonly number[],
  least: Float64Array,
  otherwise: ArrayLike<number>,
  below: () => number,
): Generator<readonly number[]> {
  const may = places.filter((place) => Number.isFinite(least[place]));
  if (may.length === 0) return;
  let base = 0;
  for (const place of places) base += otherwise[place] ?? 0;
  const gain = (place: number) => (least[place] ?? 0) - (otherwise[place] ?? 0);
  if (may.length <= MOST_PLACES_TO_SPLIT && places.every((place) => place <= MOST_BITS)) {
    const all = bitsOf(may);
    for (let bits = all; bits > 0; bits = (bits - 1) & all) {
      let points = base;
      for (const place of may) if ((bits >> place) & 1) points += gain(place);
      if (points < below()) yield setOf(bits);
    }
    return;
  }
  const byGain = [...may].sort((a, b) => gain(a) - gain(b));
  let points = base + byGain.reduce((sum, place) => sum + gain(place), 0);
  for (let count = byGain.length; count > 0; count--) {
    if (points < below()) yield sameSet(byGain.slice(0, count).sort((a, b) => a - b));
    points -= gain(byGain[count - 1] ?? 0);
  }
}

/** What a pouch of each lot of a slot costs to open here, and how many are free. */
type Shelf = { readonly points: Float64Array; readonly free: Int32Array };

function shelfAt(model: MenuModel, slot: ModelSlot, around: Surroundings): Shelf {
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
function fillingPoints({ points: pouchPoints, free }: Shelf, filling: Filling): number {
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

export const pouchPointsAt = (model: MenuModel, slot: Pick<ModelSlot, 'day' | 'at'>, lot: number): number =>
  pouchPoints(model, lot, slot.day, slot.at % MEAL_KINDS.length);

/** Points of a portion on a plate: its size, its energy to the day, its taste. */
function platePoints(
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

/** What plates cost by their energy alone, whatever is on them: kept for a table while its dishes are compared. */
type Plates = {
  /** By place: the kcal at which its points bend, and the points there. */
  readonly kinks: readonly { readonly kcal: number; readonly points: number }[][];
  /** By price of energy in `ENERGY_PRICES`, then by place: the least that a plate comes to at that price. */
  readonly least: readonly Float64Array[];
  /** What protein can bring to a plate, points for each gram of it in the food, by place. */
  readonly lackPoints: Float64Array;
};
/** Prices of a kcal, as parts of one that is missing to a day, at which plates are weighed to see early that a filling is too dear. */
const ENERGY_PRICES = [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.45, 0.6, 0.8, 1, 1.3, 2, 4];

function platesOf(model: MenuModel, slot: ModelSlot, around: Surroundings): Plates {
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
function eatingPoints(
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
const leastByPlace = (
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
function potOf(
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
  const { fillings } = option;
  /** Of each filling, with its pot and all of it left over. */
  const opened = new Float64Array(fillings.length);
  const tables: (PotTable | undefined)[] = [];
  let kcalPoints = Infinity;
  for (let index = 0; index < fillings.length; index++) {
    const filling = fillings[index];
    if (!filling) continue;
    const points =
      fillingPoints(shelf, filling) + (around.opens ? around.opens(option.dish, filling.servings) : 0);
    opened[index] = points + asked + costs.leftOverKcal * filling.kcal;
    if (points / filling.kcal < kcalPoints) kcalPoints = points / filling.kcal;
  }
  work.units += fillings.length;
  if (kcalPoints === Infinity) return undefined;

  const known = new Map<readonly number[], { readonly part: Part | undefined; readonly below: number }>();
  const best = (places: readonly number[], below: number, used?: Used): Part | undefined => {
    const before = used ? undefined : known.get(places);
    if (before && (before.part || before.below >= below)) return before.part;
    const eat = sumOver(places, (place) => eating[place] ?? Infinity);
    const atPrice = plates.least.map((byPlace) => sumOver(places, (place) => byPlace[place] ?? 0));
    const least = scratchOf(fillings.length);
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
    if (!used) known.set(places, { part: found, below });
    return found;
  };
  return {
    option,
    style: 'shared pot',
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

function potTable(
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

/** Pouches of somebody's own, whole or half eaten: the best portion of each lot and number of them; only of pouches that are one person's. */
function ownParts(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  place: number,
  around: Surroundings,
): Part[] {
  if (!Number.isFinite(option.taste[place])) return [];
  const mostKcal = SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
  const parts: Part[] = [];
  for (const index of option.lots) {
    const lot = model.lots[index];
    if (!lot || !lot.isOwnPouch || lot.servings >= OWN_POUCH_BELOW_SERVINGS) continue;
    if (!lot.feeds[slot.people[place] ?? -1]) continue;
    const free = Math.min(lot.stock, around.free?.(index) ?? Infinity);
    const pouch = around.pouch(index) + pouchPointsAt(model, slot, index);
    let best: Part | undefined;
    for (let halves = 1; (halves / 2) * lot.kcal <= mostKcal + EPSILON; halves++) {
      const pouches = Math.ceil(halves / 2);
      if (pouches > free) break;
      const servings = (halves / 2) * lot.servings;
      const priced =
        OWN_PLATE +
        pouches * pouch +
        (around.opens?.(option.dish, pouches * lot.servings) ?? 0) +
        model.costs.leftOverKcal * (pouches - halves / 2) * lot.kcal +
        platePoints(model, slot, option, place, (halves / 2) * lot.kcal, servings * lot.lackG, around);
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
function handedOut(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  around: Surroundings,
  plates: Plates,
  work: { units: number },
): Shared | undefined {
  const { costs } = model;
  const count = slot.people.length;
  const suiting = option.lots.filter((index) => {
    const lot = model.lots[index];
    return (
      lot?.isOwnPouch &&
      lot.servings >= OWN_POUCH_BELOW_SERVINGS &&
      Math.min(lot.stock, around.free?.(index) ?? Infinity) >= 1
    );
  });
  if (suiting.length === 0) return undefined;
  const kcalPoints = Math.min(
    ...suiting.map(
      (index) => (around.pouch(index) + pouchPointsAt(model, slot, index)) / (model.lots[index]?.kcal ?? 1),
    ),
  );
  const eating = Float64Array.from(
    slot.people,
    (_, place) => OWN_PLATE + eatingPoints(model, slot, option, place, around, plates),
  );
  const least = leastByPlace(slot, plates, eating, kcalPoints, costs.leftOverKcal);
  if (least.every((points) => points === Infinity)) return undefined;
  const makeTables = () =>
    suiting.flatMap((index) => {
      const lot = model.lots[index];
      if (!lot || !lot.isOwnPouch || lot.servings < OWN_POUCH_BELOW_SERVINGS) return [];
      const free = Math.min(lot.stock, around.free?.(index) ?? Infinity);
      if (free < 1) return [];
      const pouch = around.pouch(index) + pouchPointsAt(model, slot, index);
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
      return [{ lot, index, pouch, each, free, plate, most }];
    });
  let tables: ReturnType<typeof makeTables> | undefined;
  const known = new Map<readonly number[], Part | undefined>();
  const best = (places: readonly number[], _below: number, used?: Used): Part | undefined => {
    if (!used && known.has(places)) return known.get(places);
    let found: Part | undefined;
    tables ??= makeTables();
    for (const { lot, index, pouch, each, free, plate, most } of tables) {
      if (places.some((place) => (most[place] ?? 0) < 1)) continue;
      const mostServings = sumOver(places, (place) => most[place] ?? 0);
      const left = free - (used?.get(index) ?? 0);
      for (let pouches = 1; pouches <= left && (pouches - 1) * each < mostServings; pouches++) {
        const room = pouches * each;
        if (room < places.length) continue;
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
    if (!used) known.set(places, found);
    return found;
  };
  return { option, style: 'own pouch', least, best };
}

/** A laying of its dishes, with its own points, whatever surrounds it. */
export function asLaying(model: MenuModel, slot: ModelSlot, dishes: readonly LaidDish[]): Laying {
  const kcal = slot.people.map(() => 0);
  const lackG = slot.people.map(() => 0);
  for (const dish of dishes) {
    const { kcal: dishKcal, lackG: dishLackG, servings } = totalsOf(model, dish);
    for (const { place, servings: portion } of dish.portions) {
      kcal[place] = (kcal[place] ?? 0) + (portion / servings) * dishKcal;
      lackG[place] = (lackG[place] ?? 0) + (portion / servings) * dishLackG;
    }
  }
  return {
    slot: slot.index,
    dishes: dishes.map(({ dish, style, lots, pouches, portions }) => ({
      dish,
      style,
      lots,
      pouches,
      portions,
    })),
    points: layingPoints(model, slot, dishes, kcal),
    kcal,
    lackG,
  };
}

/** What is opened of a dish. */
export function totalsOf(model: MenuModel, dish: Pick<LaidDish, 'lots' | 'pouches'>) {
  let [kcal, lackG, servings] = [0, 0, 0];
  dish.lots.forEach((index, at) => {
    const lot = model.lots[index];
    const pouches = dish.pouches[at] ?? 0;
    if (!lot) return;
    kcal += pouches * lot.kcal;
    lackG += pouches * lot.servings * lot.lackG;
    servings += pouches * lot.servings;
  });
  return { kcal, lackG, servings };
}

/** The points of a laying by themselves, from its dishes alone. */
export function layingPoints(
  model: MenuModel,
  slot: ModelSlot,
  dishes: readonly LaidDish[],
  kcalByPlace: readonly number[],
): number {
  const { costs } = model;
  const fed = new Set(dishes.flatMap(({ portions }) => portions.map(({ place }) => place)));
  let points = 0;
  slot.people.forEach((_, place) => {
    points += mealPoints(slot.plannedKcal[place] ?? 0, kcalByPlace[place] ?? 0, costs);
    if (!fed.has(place)) points += SKIPPED_MEAL * costs.missingKcal;
  });
  const fees: number[] = [];
  for (const dish of dishes) {
    const { kcal, servings } = totalsOf(model, dish);
    const eaten = dish.portions.reduce((sum, portion) => sum + portion.servings, 0);
    points += costs.leftOverKcal * kcal * Math.max(0, 1 - eaten / servings);
    dish.lots.forEach((lot, at) => (points += (dish.pouches[at] ?? 0) * pouchPointsAt(model, slot, lot)));
    const option = slot.options.find((other) => other.dish === dish.dish);
    for (const { place } of dish.portions) points += option?.taste[place] ?? 0;
    const isSmall =
      dish.style === 'own pouch' &&
      (model.lots[dish.lots[0] ?? -1]?.servings ?? 0) < OWN_POUCH_BELOW_SERVINGS;
    if (dish.style === 'own pouch') points += OWN_PLATE * dish.portions.length;
    else points += POT + (slot.task.style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0);
    if (!isSmall) fees.push(costs.secondDish * (dish.style === 'own pouch' ? OWN_SECOND_PART : 1));
  }
  // the dearest dish to make is the one that is made anyway
  fees.sort((a, b) => b - a);
  return points + fees.slice(1).reduce((sum, fee) => sum + fee, 0);
}
