import { mealPoints, OWN_SECOND_PART, SKIPPED_MEAL } from './menu-costs.ts';
import {
  handedOut,
  ownParts,
  platesOf,
  potOf,
  shelfAt,
  sumOver,
  type Part,
  type Shared,
  type Used,
} from './dish-parts.ts';
import { asLaying, pricedOf, type LaidDish, type Laying, type Surroundings } from './laying.ts';
import type { MenuModel, ModelSlot } from './menu-model.ts';
import { serveAlone, type Candidate, type Served } from './serve-alone.ts';

const EPSILON = 1e-9;

/** A way to serve one person by themselves; nothing of it where they go without. */
type Way = Candidate<Part | undefined>;

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
    const relaxed = fee + parts.reduce((sum, { part }) => sum + part.priced, 0) + servedOf(alone).least;
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
