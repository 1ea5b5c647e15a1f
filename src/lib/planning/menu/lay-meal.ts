import {
  handedOut,
  ownParts,
  platesOf,
  potOf,
  shelfAt,
  type Part,
  type Shared,
  type Shelf,
  type Used,
} from './dish-parts.ts';
import { asLaying, pricedOf, type LaidDish, type Laying, type Surroundings } from './laying.ts';
import { mealPoints, OWN_SECOND_PART, SKIPPED_MEAL } from './menu-costs.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import type { MenuModel, ModelSlot } from './menu-model.ts';
import { chainOf, sameSet, setOf, sumOver, without, type Places } from './place-sets.ts';
import { serveAlone, type Candidate, type Served } from './serve-alone.ts';

const EPSILON = 1e-9;
/** At tables of up to so many all sets of people are looked at. */
const MOST_PLACES_TO_SPLIT = 7;
/** Dishes of one style kept for a set of people: the best, and others where pouches of the best are taken or it stands on the table already. */
const MOST_KEPT = 3;
/** Dishes looked at for a large table that two share, the cheapest ones. */
const MOST_PAIRED = 14;
/** Other layings handed back with the cheapest. */
const MOST_OTHERS = 6;

/** A laid table. `least`: no laying is priced below it. */
export type Laid = {
  readonly laying: Laying;
  readonly priced: number;
  readonly least: number;
  readonly others: readonly { readonly laying: Laying; readonly priced: number }[];
};

/** A way to serve one person by themselves; nothing of it where they go without. */
type Way = Candidate<Part | undefined>;
/** A dish for some of the people, and where it is from. */
type Placed = { readonly part: Part; readonly from: Shared };
type Found = { readonly priced: number; readonly parts: readonly Part[] };
/** Dishes of one style for a set of people, the cheapest first; others cost `next` or more. */
type Kept = { readonly parts: readonly Placed[]; readonly next: number };
/** Dishes that several share and people by themselves, these as if pouches did for them all. Without dishes it stands for those that were not kept: nothing of it is laid. */
type Idea = {
  readonly relaxed: number;
  readonly fee: number;
  readonly placed: readonly Placed[] | undefined;
  readonly alone: Places;
};

/**
 * The cheapest way to lay a table, exactly up to seven people: each dish for each set of people by the best portions of each filling of the pot (portions are convex, so the best quarter at a
 * time is the best of all), the best of all splits of the table into two such sets and people by themselves, and those by an assignment to the pouches.
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
  const table = new Table(model, slot, around, work, below);
  const finish = (parts: readonly LaidDish[]) => {
    const laying = asLaying(model, slot, parts);
    return { laying, priced: pricedOf(model, slot, laying, around) };
  };
  const { best, least, others } = table.lay();
  return { ...finish(best), least, others: others.map(finish) };
}

class Table {
  readonly #work: { units: number };
  readonly #below: number;
  readonly #everyone: Places;
  readonly #shelf: Shelf;
  readonly #secondDish: number;
  /** What several can share, the cheapest first. */
  #shared: Shared[] = [];
  /** By place, the cheapest first. */
  readonly #ways: Way[][];
  /** By place: the least by oneself, and the least in any company. */
  readonly #single: Float64Array;
  readonly #any: Float64Array;
  /** What the second of two dishes adds at least. */
  readonly #leastFee: number;
  readonly #bestFor = new Map<Places, readonly Kept[]>();
  readonly #served = new Map<Places, Served<Part | undefined>>();
  #best: Found = { priced: Infinity, parts: [] };
  #least = Infinity;
  readonly #seen: Found[] = [];

  constructor(
    model: MenuModel,
    slot: ModelSlot,
    around: Surroundings,
    work: { units: number },
    below: number,
  ) {
    const { costs } = model;
    this.#work = work;
    this.#below = below;
    this.#everyone = sameSet(slot.people.map((_, place) => place));
    this.#shelf = shelfAt(model, slot, around);
    this.#secondDish = costs.secondDish;
    const plates = platesOf(model, slot, around);
    const skip = slot.people.map(
      (_, place) =>
        SKIPPED_MEAL * costs.missingKcal +
        mealPoints(slot.plannedKcal[place] ?? 0, 0, costs) +
        around.plate(place, 0, 0),
    );
    this.#ways = skip.map((points): Way[] => [{ lot: undefined, pouches: 0, points, of: undefined }]);
    this.#single = Float64Array.from(skip);
    const isByHand = slot.task.style !== 'shared pot';
    const { length } = this.#everyone;
    for (const option of slot.options) {
      if (isByHand)
        for (const place of this.#everyone)
          for (const part of ownParts(model, slot, option, place, around, this.#shelf))
            this.#offer(
              place,
              part,
              isShared(model, part) && length > 1 ? costs.secondDish * OWN_SECOND_PART : 0,
            );
      const pot = potOf(model, slot, option, around, plates, this.#shelf, work);
      if (pot) this.#shared.push(pot);
      const handed = isByHand && handedOut(model, slot, option, around, plates, this.#shelf, work);
      if (handed) this.#shared.push(handed);
    }
    for (const ways of this.#ways) ways.sort((a, b) => a.points - b.points);
    if (length > 1) for (const place of this.#everyone) this.#offerPots(place);
    const leastFor = (shared: Shared) =>
      shared.fixed +
      sumOver(this.#everyone, (place) => Math.min(shared.least[place] ?? Infinity, this.#single[place] ?? 0));
    const inOrder = this.#shared.map((shared) => ({ shared, points: leastFor(shared) }));
    inOrder.sort((a, b) => a.points - b.points);
    this.#shared = inOrder.map(({ shared }) => shared);
    this.#any = Float64Array.from(this.#single);
    for (const { least } of this.#shared)
      for (const place of this.#everyone)
        this.#any[place] = Math.min(this.#any[place] ?? 0, least[place] ?? Infinity);
    this.#leastFee = Math.min(...this.#shared.map((shared) => this.#feeOf(shared)), costs.secondDish);
  }

  /** The cheapest dishes. `least`: nothing is cheaper, pouches enough or not. */
  lay(): { best: readonly Part[]; least: number; others: readonly (readonly Part[])[] } {
    this.#take({ relaxed: 0, fee: 0, placed: [], alone: this.#everyone });
    if (this.#everyone.length <= MOST_PLACES_TO_SPLIT) this.#laySets();
    else {
      this.#layChains();
      this.#least = Math.min(
        this.#least,
        sumOver(this.#everyone, (place) => this.#any[place] ?? 0),
      );
    }
    const { parts } = this.#best;
    return {
      best: parts,
      least: Math.min(this.#least, this.#limit()),
      others: this.#seen
        .filter((found) => found.parts !== parts)
        .sort((a, b) => a.priced - b.priced)
        .slice(0, MOST_OTHERS)
        .map((found) => found.parts),
    };
  }

  /** Nothing at this or above it is looked for. */
  #limit(): number {
    return Math.min(this.#best.priced, this.#below);
  }

  #feeOf({ style }: Shared): number {
    return this.#secondDish * (style === 'own pouch' ? OWN_SECOND_PART : 1);
  }

  /** A way to serve somebody by themselves, where it is better than to go without. */
  #offer(place: number, part: Part, fee: number): void {
    const ways = this.#ways[place];
    const points = part.priced + fee;
    if (points >= (ways?.[0]?.points ?? 0) - EPSILON) return;
    const [lot] = part.lots.length === 1 ? part.lots : [];
    ways?.push({ lot, pouches: part.pouches[0] ?? 0, points, of: part });
    this.#single[place] = Math.min(this.#single[place] ?? 0, points);
  }

  /** Pots of somebody's own, of each dish from as many lots as people at the table could take before them. */
  #offerPots(place: number): void {
    const ways = this.#ways[place] ?? [];
    const enough = () => ways[this.#everyone.length - 1]?.points ?? Infinity;
    for (const shared of this.#shared) {
      if (shared.style !== 'shared pot') continue;
      const taken = new Map<number, number>();
      for (let count = 0; count < this.#everyone.length; count++) {
        const below = Math.min(enough(), ways.at(-1)?.points ?? 0) - this.#secondDish;
        if (shared.fixed + (shared.least[place] ?? Infinity) >= below) break;
        const part = shared.best(sameSet([place]), below, taken);
        if (!part || part.priced >= below) break;
        const [lot] = part.lots.length === 1 ? part.lots : [];
        const points = part.priced + this.#secondDish;
        ways.push({ lot, pouches: part.pouches[0] ?? 0, points, of: part });
        ways.sort((a, b) => a.points - b.points);
        this.#single[place] = Math.min(this.#single[place] ?? 0, points);
        if (lot === undefined) break;
        taken.set(lot, this.#shelf.free[lot] ?? 0);
      }
    }
  }

  // all sets of people

  #laySets(): void {
    const all = 2 ** this.#everyone.length - 1;
    const leastRest = new Float64Array(all + 1);
    for (let bits = 0; bits <= all; bits++) {
      const places = setOf(bits);
      leastRest[bits] = Math.min(
        this.#aloneLeast(places),
        this.#leastFee + sumOver(places, (place) => this.#any[place] ?? 0),
      );
    }
    const partsOf = (bits: number) =>
      this.#partsFor(setOf(bits), this.#limit() - (leastRest[all & ~bits] ?? 0));
    const one: Idea[] = [];
    for (let bits = all; bits > 0; bits--) {
      const alone = setOf(all & ~bits);
      for (const { parts, next } of partsOf(bits)) {
        for (const own of parts) this.#think(one, [own], own.part.priced, alone);
        this.#think(one, undefined, next, alone);
      }
    }
    this.#takeInOrder(one);
    const two: Idea[] = [];
    for (let bits = all; bits > 0; bits--) {
      const rest = all & ~bits;
      for (const own of partsOf(bits))
        for (let others = rest; others > 0; others = (others - 1) & rest)
          if (others < bits)
            for (const other of partsOf(others)) this.#thinkOfTwo(two, own, other, setOf(rest & ~others));
    }
    this.#takeInOrder(two);
  }

  #thinkOfTwo(ideas: Idea[], some: Kept, others: Kept, alone: Places): void {
    const [first, second] = [some.parts[0], others.parts[0]];
    if (!first || !second) return;
    this.#work.units += 10;
    const fee = this.#feeBeside(first, second);
    for (const one of some.parts)
      for (const other of others.parts) {
        const points = fee + one.part.priced + other.part.priced;
        if (isSharedTwice(one, other) || points + this.#aloneLeast(alone) >= this.#limit()) continue;
        if (this.#fits(other.part, withUse(NOTHING_USED, one.part)))
          this.#think(ideas, [one, other], points, alone, fee);
        else this.#thinkApart(ideas, one, other, alone, fee);
      }
    const next = Math.min(some.next + second.part.priced, first.part.priced + others.next);
    this.#think(ideas, undefined, fee + next, alone);
  }

  /** The second one costs more. */
  #feeBeside(one: Placed, other: Placed): number {
    return Math.min(this.#feeOf(one.from), this.#feeOf(other.from));
  }

  #think(ideas: Idea[], placed: Idea['placed'], points: number, alone: Places, fee = 0): void {
    const relaxed = points + this.#aloneLeast(alone);
    if (relaxed < this.#limit() - EPSILON) ideas.push({ relaxed, fee, placed, alone });
  }

  /** Two dishes that want the same pouches: one of them from others. */
  #thinkApart(ideas: Idea[], one: Placed, other: Placed, alone: Places, fee: number): void {
    const beside = (from: Placed, taken: Placed): Placed[] => {
      const part = from.from.best(placesOf(from), Infinity, withUse(NOTHING_USED, taken.part));
      return part ? [{ part, from: from.from }] : [];
    };
    for (const moved of beside(other, one))
      this.#think(ideas, [one, moved], fee + one.part.priced + moved.part.priced, alone, fee);
    for (const moved of beside(one, other))
      this.#think(ideas, [moved, other], fee + moved.part.priced + other.part.priced, alone, fee);
    this.#think(ideas, undefined, fee + this.#nextOf(one) + this.#nextOf(other), alone);
  }

  /** What the dish comes to at least from other pouches than these. */
  #nextOf({ part, from }: Placed): number {
    return from.best(placesOf({ part, from }), Infinity, undefined, part)?.priced ?? Infinity;
  }

  #takeInOrder(ideas: Idea[]): void {
    ideas.sort((a, b) => a.relaxed - b.relaxed);
    for (const idea of ideas) {
      if (idea.relaxed >= this.#limit() - EPSILON) return;
      this.#take(idea);
    }
  }

  /** The best dishes for just these people, of each style. */
  #partsFor(places: Places, below: number): readonly Kept[] {
    const known = this.#bestFor.get(places);
    if (known) return known;
    const waiting: { shared: Shared; least: number }[] = [];
    for (const shared of this.#shared) {
      let least = shared.fixed;
      for (const place of places) least += shared.least[place] ?? Infinity;
      if (least < below) waiting.push({ shared, least });
    }
    this.#work.units += this.#shared.length;
    waiting.sort((a, b) => a.least - b.least);
    const kept = (['shared pot', 'own pouch'] as const).map((style): Kept => {
      const parts: Placed[] = [];
      let next = Infinity;
      for (const { shared, least } of waiting) {
        if (shared.style !== style) continue;
        const limit = Math.min(below, next);
        if (least >= limit) break;
        const part = shared.best(places, limit);
        if (!part || part.priced >= limit - EPSILON) continue;
        parts.push({ part, from: shared });
        parts.sort((a, b) => a.part.priced - b.part.priced);
        if (parts.length > MOST_KEPT) next = parts.pop()?.part.priced ?? next;
        else if (parts.length === MOST_KEPT) next = parts.at(-1)?.part.priced ?? next;
      }
      return { parts, next };
    });
    this.#bestFor.set(places, kept);
    return kept;
  }

  // large tables

  #layChains(): void {
    const single = this.#single;
    const limit = () => this.#limit();
    const placedAs = (from: Shared, places: Places, below: number): Placed[] => {
      const part = from.best(places, below);
      return part ? [{ part, from }] : [];
    };
    const paired = this.#shared.slice(0, MOST_PAIRED);
    this.#shared.forEach((one, index) => {
      for (const places of chainOf(this.#everyone, one.least, single, () => limit() - one.fixed)) {
        const rest = without(this.#everyone, places);
        for (const first of placedAs(one, places, limit() - this.#anyLeast(rest))) {
          const ideas: Idea[] = [];
          this.#think(ideas, [first], first.part.priced, rest);
          for (const two of index < MOST_PAIRED ? paired : []) {
            const fee = Math.min(this.#feeOf(one), this.#feeOf(two));
            const budget = () => limit() - fee - first.part.priced - two.fixed;
            for (const others of chainOf(rest, two.least, single, budget))
              for (const second of placedAs(two, others, budget()))
                if (
                  !isSharedTwice(first, second) &&
                  this.#fits(second.part, withUse(NOTHING_USED, first.part))
                ) {
                  const points = fee + first.part.priced + second.part.priced;
                  this.#think(ideas, [first, second], points, without(rest, others), fee);
                }
          }
          this.#takeInOrder(ideas);
        }
      }
    });
  }

  #aloneLeast(places: Places): number {
    return sumOver(places, (place) => this.#single[place] ?? 0);
  }
  #anyLeast(places: Places): number {
    return sumOver(places, (place) => this.#any[place] ?? 0);
  }

  // from pouches that are there

  /** Lays an idea, as far as pouches do for those by themselves. */
  #take({ relaxed, fee, placed, alone }: Idea): void {
    if (!placed) {
      this.#least = Math.min(this.#least, relaxed);
      return;
    }
    const points = fee + placed.reduce((sum, { part }) => sum + part.priced, 0);
    const { least, found } = this.#serveBeside(
      alone,
      placed.reduce((used, { part }) => withUse(used, part), NOTHING_USED),
      this.#limit() - points,
    );
    this.#least = Math.min(this.#least, points + least);
    const asked = this.#servedOf(alone).least;
    // or the dishes come from other pouches than those that people by themselves want
    if (least > asked + EPSILON)
      for (const own of placed)
        this.#least = Math.min(this.#least, points - own.part.priced + this.#nextOf(own) + asked);
    if (!found) return;
    const all = { priced: points + found.priced, parts: [...placed.map(({ part }) => part), ...found.parts] };
    this.#seen.push(all);
    if (all.priced < this.#best.priced - EPSILON) this.#best = all;
  }

  #fits(part: Part | undefined, used: Used): boolean {
    return (
      !part ||
      part.lots.every(
        (lot, at) => (part.pouches[at] ?? 0) + (used.get(lot) ?? 0) <= (this.#shelf.free[lot] ?? 0),
      )
    );
  }

  /** Some people by themselves, beside nobody. */
  #servedOf(places: Places): Served<Part | undefined> {
    const before = this.#served.get(places);
    if (before) return before;
    this.#work.units += 4 * places.length;
    const now = serveAlone(
      places.map((place) => this.#ways[place] ?? []),
      (lot) => this.#shelf.free[lot] ?? 0,
    );
    this.#served.set(places, now);
    return now;
  }

  /** Some people by themselves beside others who have pouches already. `least`: nothing costs less; nothing is found where that is not below a limit. */
  #serveBeside(places: Places, taken: Used, below: number): { least: number; found: Found | undefined } {
    const fitting = ({ chosen }: Served<Part | undefined>): Found | undefined => {
      if (!chosen) return undefined;
      let used = taken;
      for (const { of } of chosen) {
        if (!this.#fits(of, used)) return undefined;
        used = withUse(used, of);
      }
      return foundOf(chosen);
    };
    const first = this.#servedOf(places);
    if (first.least >= below - EPSILON) return { least: first.least, found: undefined };
    const atOnce = fitting(first);
    if (atOnce) return { least: first.least, found: atOnce };
    this.#work.units += 8 * places.length;
    const second = serveAlone(
      places.map((place) => this.#ways[place] ?? []),
      (lot) => (this.#shelf.free[lot] ?? 0) - (taken.get(lot) ?? 0),
    );
    const { least } = second;
    if (least >= below - EPSILON) return { least, found: undefined };
    const found = fitting(second);
    if (found) return { least, found };
    // one after the other
    let used = taken;
    const ways = places.map((place) => {
      const way = this.#aloneBeside(place, used);
      used = withUse(used, way.of);
      return way;
    });
    return { least, found: foundOf(ways) };
  }

  /** What serves somebody best by themselves where others have pouches already. */
  #aloneBeside(place: number, used: Used): Way {
    this.#work.units += 20;
    const ways = this.#ways[place] ?? [];
    // to go without takes no pouch
    return (
      ways.find(({ of }) => this.#fits(of, used)) ?? {
        lot: undefined,
        pouches: 0,
        points: Infinity,
        of: undefined,
      }
    );
  }
}

const NOTHING_USED: Used = new Map();

const placesOf = ({ part }: Placed): Places => sameSet(part.portions.map(({ place }) => place));
/** One dish that several share stands on a table once. */
const isSharedTwice = (one: Placed, other: Placed): boolean =>
  one.from === other.from && one.part.portions.length > 1 && other.part.portions.length > 1;

/** Pouches of one's own that could be several people's make a second kind of pouch. */
const isShared = (model: MenuModel, { lots }: Part): boolean =>
  (model.lots[lots[0] ?? -1]?.servings ?? 0) >= OWN_POUCH_BELOW_SERVINGS;

function withUse(used: Used, part: Part | undefined): Used {
  if (!part) return used;
  const more = new Map(used);
  part.lots.forEach((lot, at) => more.set(lot, (more.get(lot) ?? 0) + (part.pouches[at] ?? 0)));
  return more;
}

const foundOf = (chosen: readonly Way[]): Found => ({
  priced: chosen.reduce((sum, { points }) => sum + points, 0),
  parts: chosen.flatMap(({ of }) => of ?? []),
});
