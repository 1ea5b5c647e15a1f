import type { MenuModel, OpenedAt } from './menu-model.ts';
import { MenuTable } from './menu-table.ts';
import { randomFrom, type Random } from './random.ts';

/** Temperatures, points: where the search begins, at the least; where it begins again from the best; where it ends, when a tenth of a point counts. */
const HOT = 40;
const WARM = 6;
const COLD = 0.04;
/** A table of scarce food costs so much that the search has to begin hotter: at this share of the points of a meal. */
const HOT_SHARE = 0.1;
/** The work is cut into coolings: this many from the start, then as many from the best. */
const FRESH = 2;
const AGAIN = 4;
/** Moves between two reports. */
const SLICE = 20_000;
/** Serving a day with walls costs about as much as this many other moves (measured). */
const FLOW_WORK = 6;

export const EFFORTS = ['quick', 'thorough'] as const;
export type Effort = (typeof EFFORTS)[number];

/** Work up to this many meals; beyond, it grows with the cube of their number, up to six times as much. */
const SMALL_TRIP_MEALS = 48;
const WORK: Readonly<Record<Effort, number>> = { quick: 600_000, thorough: 6_000_000 };

/** The budget for a model, in moves: the same on every machine. */
export function workFor(model: MenuModel, effort: Effort): number {
  const growth = Math.min(6, Math.max(1, (model.slots.length / SMALL_TRIP_MEALS) ** 3));
  return Math.round(WORK[effort] * growth);
}

export type SearchOptions = {
  readonly seed: number;
  /** Moves tried: the budget. */
  readonly work: number;
  readonly start: readonly OpenedAt[];
  /** How often the search forgets the best and begins at the start, hot; none where the start is good. */
  readonly fresh?: number;
};
export type SearchReport = {
  /** Share of the budget used. */
  readonly done: number;
  readonly points: number;
  readonly opened: readonly OpenedAt[];
};

/**
 * Looks for a good menu by simulated annealing (Kirkpatrick, Gelatt & Vecchi 1983, Science 220:671-680): small changes of the table, of which a worse one is taken
 * with a chance that falls as the search cools; a few coolings from the start, then more from the best found. The same model, seed, work and start
 * give the same menu on any machine, and it is never worse than the start.
 *
 * @returns reports as it goes; the last one is the outcome
 */
export function* searchMenu(
  model: MenuModel,
  { seed, work, start, fresh = FRESH }: SearchOptions,
): Generator<SearchReport, SearchReport> {
  const random = randomFrom(seed);
  const table = new MenuTable(model, start);
  const moves = new Moves(table, random);
  const first = table.opened();
  let best = first;
  let bestPoints = table.points;
  const hot = Math.max(HOT, (HOT_SHARE * bestPoints) / Math.max(1, table.openSlots.length));
  const share = work / (fresh + AGAIN);
  const report = (done: number): SearchReport => ({
    done: Math.min(1, done),
    points: bestPoints,
    opened: best,
  });

  for (let cooling = 0; cooling < fresh + AGAIN && table.openSlots.length > 0; cooling++) {
    table.become(cooling < fresh ? first : best);
    const from = cooling < fresh ? hot : WARM;
    const flowsBefore = table.flows;
    for (let tried = 0, used = 0; used < share; tried++) {
      used = tried + FLOW_WORK * (table.flows - flowsBefore);
      if (tried % SLICE === 0) yield report((cooling * share + used) / work);
      if (!moves.propose()) continue;
      const heat = from * (COLD / from) ** Math.min(1, used / share);
      if (table.tryChanges(table.points - heat * Math.log(random())) && table.points < bestPoints - 1e-9) {
        bestPoints = table.points;
        best = table.opened();
      }
    }
  }
  return report(1);
}

/** A whole search. @returns its outcome */
export function searchToEnd(model: MenuModel, options: SearchOptions): SearchReport {
  const search = searchMenu(model, options);
  for (;;) {
    const next = search.next();
    if (next.done) return next.value;
  }
}

/** Proposes changes to a table: each is a short list of pouches more or less at a meal. */
class Moves {
  readonly #table: MenuTable;
  readonly #random: Random;

  constructor(table: MenuTable, random: Random) {
    this.#table = table;
    this.#random = random;
  }

  #below(count: number): number {
    return Math.floor(this.#random() * count);
  }

  #anyMeal(): number | undefined {
    const { openSlots } = this.#table;
    return openSlots[this.#below(openSlots.length)];
  }

  propose(): boolean {
    const table = this.#table;
    table.clearChanges();
    const slot = this.#anyMeal();
    if (slot === undefined) return false;
    const kind = this.#random();
    if (kind < 0.08) return this.#add(slot);
    if (kind < 0.14) return this.#remove(slot);
    if (kind < 0.34) return this.#swap(slot);
    if (kind < 0.5) return this.#swap(slot) && this.#trim(table.dayOf(slot));
    if (kind < 0.54) return this.#trade(slot);
    if (kind < 0.64) return this.#refill(slot) && (this.#random() < 0.5 || this.#trim(table.dayOf(slot)));
    const other = this.#anyMeal()!;
    if (other === slot) return false;
    if (!(kind < 0.84 ? this.#exchange(slot, other) : this.#move(slot, other))) return false;
    if (this.#random() < 0.5) return true;
    const [day, otherDay] = [table.dayOf(slot), table.dayOf(other)];
    return this.#trim(day) && (day === otherDay || this.#trim(otherDay));
  }

  /** A meal is cleared and laid anew, with about as much as its day then lacks. */
  #refill(slot: number): boolean {
    const table = this.#table;
    const day = table.dayOf(slot);
    let lackKcal = table.needOn[day]! - table.kcalOn[day]!;
    for (const lot of table.lotsAt[slot]!) {
      const pouches = table.pouchesAt(slot, lot);
      lackKcal += pouches * table.kcal[lot]!;
      if (!table.change(slot, lot, -pouches)) return false;
    }
    const recipes = 1 + this.#below(Math.min(3, table.model.settings.maxRecipesPerMeal));
    for (let at = 0; at < recipes && lackKcal > 0; at++) {
      const lot = this.#candidate(slot);
      if (lot < 0) return false;
      const wanted =
        (lackKcal / table.kcal[lot]!) * (at === recipes - 1 ? 1 : this.#random()) + this.#random();
      const pouches = Math.min(
        Math.floor(wanted),
        table.freeOf(lot) + table.pouchesAt(slot, lot),
        table.mostAt(slot, lot),
      );
      if (pouches <= 0) continue;
      if (!table.change(slot, lot, pouches)) return false;
      lackKcal -= pouches * table.kcal[lot]!;
    }
    return table.changes > 0;
  }

  /** Two meals trade all that is on them. */
  #trade(slot: number): boolean {
    const table = this.#table;
    const other = this.#anyMeal()!;
    if (other === slot || table.lotsAt[slot]!.length + table.lotsAt[other]!.length > 6) return false;
    for (const lot of table.lotsAt[slot]!) {
      const pouches = table.pouchesAt(slot, lot);
      if (!table.change(slot, lot, -pouches) || !table.change(other, lot, pouches)) return false;
    }
    for (const lot of table.lotsAt[other]!) {
      const pouches = table.pouchesAt(other, lot);
      if (!table.change(other, lot, -pouches) || !table.change(slot, lot, pouches)) return false;
    }
    return table.changes > 0;
  }

  /** After a change, the one further swap of the same day that fits its energy best. */
  #trim(day: number): boolean {
    const table = this.#table;
    let kcal = table.kcalOn[day]!;
    const { changedSlot, changedLot, changedBy, changes } = table;
    for (let at = 0; at < changes; at++)
      if (table.dayOf(changedSlot[at]!) === day) kcal += changedBy[at]! * table.kcal[changedLot[at]!]!;
    const need = table.needOn[day]!;
    const missing = table.model.settings.menuCosts.missingKcal;
    let best = Infinity;
    let [bestSlot, bestOut, bestIn] = [-1, -1, -1];
    for (const slot of table.openSlots) {
      if (table.dayOf(slot) !== day) continue;
      const lots = table.candidates[slot]!;
      if (lots.length === 0) continue;
      const tries = Math.min(lots.length, 8);
      for (const out of table.lotsAt[slot]!)
        for (let at = 0; at < tries; at++) {
          const into = this.#candidate(slot);
          if (
            into === out ||
            table.freeOf(into) <= 0 ||
            table.pouchesAt(slot, into) >= table.mostAt(slot, into)
          )
            continue;
          const now = kcal - table.kcal[out]! + table.kcal[into]!;
          const cost = table.costAt(slot, into) - table.costAt(slot, out) + Math.max(0, need - now) * missing;
          if (cost < best) [best, bestSlot, bestOut, bestIn] = [cost, slot, out, into];
        }
    }
    if (bestSlot < 0) return true;
    return table.change(bestSlot, bestOut, -1) && table.change(bestSlot, bestIn, 1);
  }

  #candidate(slot: number): number {
    const { candidates } = this.#table;
    const lots = candidates[slot]!;
    if (lots.length === 0) return -1;
    const at = this.#random();
    return lots[Math.floor(at * at * lots.length)]!;
  }

  #onTable(slot: number): number {
    const lots = this.#table.lotsAt[slot]!;
    return lots.length === 0 ? -1 : lots[this.#below(lots.length)]!;
  }

  #add(slot: number): boolean {
    const table = this.#table;
    const lot = this.#candidate(slot);
    if (lot < 0) return false;
    return table.change(slot, lot, this.#random() < 0.7 ? 1 : 1 + this.#below(3));
  }

  #remove(slot: number): boolean {
    const table = this.#table;
    const lot = this.#onTable(slot);
    if (lot < 0) return false;
    return table.change(slot, lot, this.#random() < 0.5 ? -1 : -table.pouchesAt(slot, lot));
  }

  #swap(slot: number): boolean {
    const table = this.#table;
    const out = this.#onTable(slot);
    const into = this.#candidate(slot);
    if (out < 0 || into < 0 || out === into) return false;
    const had = table.pouchesAt(slot, out);
    const taken = this.#random() < 0.5 ? had : 1;
    const even = (taken * table.kcal[out]!) / table.kcal[into]!;
    const put = Math.max(1, Math.floor(even + this.#random()));
    return table.change(slot, out, -taken) && table.change(slot, into, put);
  }

  /** Two meals exchange a lot each. */
  #exchange(slot: number, other: number): boolean {
    const table = this.#table;
    const a = this.#onTable(slot);
    const b = this.#onTable(other);
    if (a < 0 || b < 0 || a === b) return false;
    const all = this.#random() < 0.6;
    const takenA = all ? table.pouchesAt(slot, a) : 1;
    const takenB = all ? table.pouchesAt(other, b) : 1;
    return (
      table.change(slot, a, -takenA) &&
      table.change(other, b, -takenB) &&
      table.change(other, a, takenA) &&
      table.change(slot, b, takenB)
    );
  }

  /** A lot goes to another meal, and something free may fill its place. */
  #move(slot: number, other: number): boolean {
    const table = this.#table;
    const lot = this.#onTable(other);
    if (lot < 0) return false;
    const taken = this.#random() < 0.5 ? 1 : table.pouchesAt(other, lot);
    if (!table.change(other, lot, -taken) || !table.change(slot, lot, taken)) return false;
    if (this.#random() < 0.5) return true;
    if (this.#random() < 0.5) {
      const out = this.#onTable(slot);
      if (out < 0 || out === lot) return true;
      return table.change(slot, out, -(this.#random() < 0.5 ? 1 : table.pouchesAt(slot, out)));
    }
    const fill = this.#candidate(other);
    return fill < 0 || fill === lot ? true : table.change(other, fill, 1);
  }
}
