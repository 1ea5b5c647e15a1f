import { layByExpiry } from '../menu/lay-by-expiry.ts';
import type { Laying } from '../menu/laying.ts';
import type { MenuModel } from '../menu/menu-model.ts';
import { MenuState, type EatenExtra, type ModelMenu } from '../menu/menu-state.ts';
import type { OpenProgram } from './linear-program.ts';
import { MasterProgram } from './master-program.ts';
import { solveNear, type NearLimits } from './near-menu.ts';
import { randomFrom, type Random } from './random.ts';
import { settlePrices } from './settle-prices.ts';

export const EFFORTS = ['quick', 'thorough'] as const;
export type Effort = (typeof EFFORTS)[number];

/** How far a search is. */
export type SearchStep = {
  /** Share of its work that is done. */
  readonly done: number;
  readonly points: number;
  /** What no menu is under, points; -Infinity until it is known. */
  readonly bound: number;
  readonly menu: ModelMenu;
};
export type SearchOptions = {
  readonly effort: Effort;
  readonly seed?: number;
  /** Menus to begin with; first expired, first out is always one. */
  readonly starts?: readonly ModelMenu[];
  /** Work for the search by pieces, in `WORK_UNITS`; left out: by effort and size. */
  readonly work?: number;
};

/** Share of the meals that a dive settles at a time. */
const DIVE_SHARE = 0.08;
/** Rounds of pricing at most, after which the bound is taken as it is. */
const MOST_ROUNDS = { quick: 60, thorough: 300 };
/** Work of pricing at most; then the bound is what it is. */
const MOST_PRICING = { quick: 100_000_000, thorough: 1_500_000_000 };
/** Work of the search by pieces for each meal, in units of `MenuState.work`. */
const WORK_OF_MEAL = { quick: 900_000, thorough: 2_500_000 };
const MOST_WORK = { quick: 40_000_000, thorough: 150_000_000 };
/** Trips of up to so many plates of main dishes have the best of what is near put together exactly. */
const NEAR: Readonly<Record<Effort, readonly (NearLimits & { readonly mostPlates: number })[]>> = {
  quick: [
    { mostPlates: 16, layings: 1000, plates: 60, nodes: 30 },
    { mostPlates: 60, layings: 60, plates: 20, nodes: 1 },
  ],
  thorough: [
    { mostPlates: 16, layings: 4000, plates: 400, nodes: 20_000 },
    { mostPlates: 60, layings: 400, plates: 100, nodes: 100 },
  ],
};
/** Part of the work that is done before there are prices. */
const FIRST_SHARE = 0.3;
/** Points by which a menu may be worse than the best so far and still be gone on from, at first; in the end none. */
const MOST_WORSE = 5;
/** A bound that is nearer than this share of the points need not be bettered. */
const NEAR_ENOUGH = 1e-4;

/**
 * Looks for the best menu and for a bound that no menu is under: layings are made as their price pays, a dive settles a few meals at a time, and a search takes up one to
 * three meals and lays them anew. Effort is counted in work, so the same input gives the same menu.
 */
export function* searchMenu(
  model: MenuModel,
  open: OpenProgram,
  { effort, seed = 1, starts = [], work }: SearchOptions,
): Generator<SearchStep, SearchStep> {
  const random = randomFrom(seed);
  let best: ModelMenu = layByExpiry(model);
  let points = MenuState.of(model, best).points();
  for (const start of starts) {
    const own = MenuState.of(model, start).points();
    if (own < points) [best, points] = [start, own];
  }
  let bound = -Infinity;
  const step = (done: number): SearchStep => ({ done, points, bound, menu: best });
  const take = (menu: ModelMenu, own: number) => {
    if (own < points - 1e-9) [best, points] = [menu, own];
  };
  if (model.slots.length === 0 && model.extraDays.length === 0) return step(1);
  yield step(0);

  // a menu that people could eat gives the prices something to begin with
  const allWork = work ?? workOf(model, effort);
  const noPrices = model.people.map(() => model.days.map(() => 0));
  for (const part of betterByPieces(
    model,
    best,
    new Float64Array(model.lots.length),
    noPrices,
    random,
    FIRST_SHARE * allWork,
  ))
    take(part.menu, part.points);
  yield step(0.1);

  const master = new MasterProgram(model, open);
  try {
    for (const menu of [best, ...starts]) for (const laying of menu.layings) master.addLaying(laying);
    for (const slot of model.slots) master.prime(slot);
    const limits = { rounds: MOST_ROUNDS[effort], work: MOST_PRICING[effort] };
    const settling = settlePrices(master, limits, NEAR_ENOUGH);
    let settled = settling.next();
    for (let round = 1; !settled.done; round++, settled = settling.next()) {
      bound = settled.value;
      if (round % 5 === 0) yield step(Math.min(0.4, round * 0.02));
    }
    bound = settled.value;
    // the best prices so far lead better than the last ones of a program that has not settled
    const prices = Float64Array.from(model.lots, (_, lot) => master.priceOf(lot));
    const dayPriceOf = model.people.map((_, person) =>
      model.days.map((_, day) => master.dayPriceOf(person, day)),
    );
    const dived = dive(model, master);
    take(dived.menu(), dived.points());
    yield step(0.5);

    for (const part of betterByPieces(model, best, prices, dayPriceOf, random, allWork)) {
      take(part.menu, part.points);
      yield step(0.5 + 0.5 * part.done);
      if (points - bound < NEAR_ENOUGH * Math.abs(points)) break;
    }
    const { proof } = master;
    const atTables = model.slots.reduce((sum, { people }) => sum + people.length, 0);
    const nearLimits = NEAR[effort].find(({ mostPlates }) => atTables <= mostPlates);
    // a part of a search looks for a menu, not for its proof
    if (proof && nearLimits && work === undefined && points - bound >= NEAR_ENOUGH * Math.abs(points)) {
      const near = solveNear(model, master, proof, open, best, points, nearLimits);
      if (near.state) take(near.state.menu(), near.state.points());
      bound = Math.max(bound, near.bound);
    }
  } finally {
    master.close();
  }
  return step(1);
}

/** Work of the search by pieces, for a model of this size. */
export const workOf = ({ slots, extraDays }: MenuModel, effort: Effort): number =>
  Math.min(MOST_WORK[effort], WORK_OF_MEAL[effort] * Math.max(4, slots.length + extraDays.length));

/** Runs a search to its end. */
export function searchToEnd(model: MenuModel, open: OpenProgram, options: SearchOptions): SearchStep {
  const steps = searchMenu(model, open, options);
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}

/** Settles the meals that the relaxed menu is surest of, a few at a time, and relaxes the rest anew. */
function dive(model: MenuModel, master: MasterProgram): MenuState {
  const state = new MenuState(model);
  const isOpen = model.slots.map(() => true);
  const fits = (laying: Laying) => {
    const used = new Map<number, number>();
    for (const dish of laying.dishes)
      dish.lots.forEach((lot, at) => used.set(lot, (used.get(lot) ?? 0) + (dish.pouches[at] ?? 0)));
    return [...used].every(([lot, pouches]) => pouches <= (state.free[lot] ?? 0));
  };
  let solution = master.solve();
  let stuck = 0;
  for (let left = model.slots.length; left > 0 && stuck < 3;) {
    const values = solution.values;
    const candidates = new Map<number, { laying: Laying; share: number; column: number }>();
    for (const { column, laying } of master.layings) {
      if (!isOpen[laying.slot]) continue;
      const share = values[column] ?? 0;
      const known = candidates.get(laying.slot);
      if (share > 0.01 && (!known || share > known.share + 1e-9) && fits(laying))
        candidates.set(laying.slot, { laying, share, column });
    }
    const inOrder = [...candidates.values()].sort(
      (a, b) => b.share - a.share || a.laying.slot - b.laying.slot,
    );
    const count = Math.max(1, Math.ceil(DIVE_SHARE * model.slots.length));
    let settled = 0;
    for (const { laying, share, column } of inOrder) {
      if (settled >= count && share < 1 - 1e-6) break;
      if (!fits(laying)) continue;
      state.lay(laying);
      isOpen[laying.slot] = false;
      left--;
      settled++;
      master.bounds(
        master.layings
          .filter((other) => other.laying.slot === laying.slot && other.column !== column)
          .map((other) => other.column),
        0,
        0,
      );
    }
    if (left === 0) break;
    stuck = settled > 0 ? 0 : stuck + 1;
    const open = model.slots.filter(({ index }) => isOpen[index]);
    if (settled > 0) solution = master.solve();
    for (let round = 0; round < (settled > 0 ? 2 : 6); round++) {
      if (master.price(open, (lot) => state.free[lot] ?? 0) === 0) break;
      solution = master.solve();
    }
  }
  const price = (lot: number) => master.priceOf(lot);
  for (const slot of model.slots)
    if (isOpen[slot.index]) state.layBest(slot.index, price, (person, day) => master.dayPriceOf(person, day));
  // extras as far as they pay; where pouches are dear, whatever is left is better than nothing
  for (const { index } of model.extraDays) state.fillExtras(index, price);
  const paying = state.menu();
  const payingPoints = state.points();
  for (const { index } of model.extraDays) {
    state.clearExtras(index);
    state.fillExtras(index);
  }
  return state.points() < payingPoints ? state : MenuState.of(model, paying);
}

type Piece = { readonly menu: ModelMenu; readonly points: number; readonly done: number };

/** Takes up one to three meals, and sometimes the extras of their day, and lays them anew; what is little worse than the best stands, in the end only what is no worse (record-to-record travel: Dueck 1993, Journal of Computational Physics 104:86-92). */
function* betterByPieces(
  model: MenuModel,
  start: ModelMenu,
  prices: Float64Array,
  dayPrices: readonly (readonly number[])[],
  random: Random,
  mostWork: number,
): Generator<Piece> {
  const state = MenuState.of(model, start);
  let points = state.points();
  let best: Piece = { menu: start, points, done: 0 };
  const pick = (count: number) => Math.floor(random() * count);
  const slotsOf = Map.groupBy(model.slots, ({ day, group }) => `${day} ${group}`);
  const slotsOfDish = Map.groupBy(
    model.slots.flatMap((slot) => slot.options.map(({ dish }) => ({ slot, dish }))),
    ({ dish }) => dish,
  );
  const extrasOf = Map.groupBy(model.extraDays, ({ day, group }) => `${day} ${group}`);
  let shownAt = 0;
  while (state.work.units < mostWork) {
    const before = state.work.units;
    const guide = [0, 0.5, 1][pick(3)] ?? 0;
    const price = (lot: number) => guide * (prices[lot] ?? 0);
    const chosen = new Set<number>();
    const extraDays = new Set<number>();
    const first = model.slots[pick(model.slots.length)];
    if (!first || random() < 0.15) {
      const extraDay = model.extraDays[pick(model.extraDays.length)];
      if (extraDay) extraDays.add(extraDay.index);
      if (!extraDay && !first) return;
    } else {
      chosen.add(first.index);
      const more = pick(3);
      const dish = state.layings[first.index]?.dishes[0]?.dish;
      const near =
        random() < 0.5
          ? (slotsOf.get(`${first.day} ${first.group}`) ?? [])
          : dish !== undefined && random() < 0.6
            ? (slotsOfDish.get(dish) ?? []).map(({ slot }) => slot)
            : model.slots;
      for (let at = 0; at < more; at++) {
        const other = near[pick(near.length)];
        if (other) chosen.add(other.index);
      }
      if (random() < 0.4)
        for (const index of chosen) {
          const slot = model.slots[index];
          for (const extraDay of (slot && extrasOf.get(`${slot.day} ${slot.group}`)) ?? [])
            extraDays.add(extraDay.index);
        }
    }
    const oldLayings: Laying[] = [];
    const oldExtras: EatenExtra[] = [];
    for (const index of extraDays) oldExtras.push(...state.clearExtras(index));
    for (const index of chosen) {
      const old = state.clear(index);
      if (old) oldLayings.push(old);
    }
    const order = [...chosen].sort(() => random() - 0.5);
    for (const index of order) {
      const slot = model.slots[index];
      const isFilled =
        slot &&
        (extrasOf.get(`${slot.day} ${slot.group}`) ?? []).some(({ index: own }) => extraDays.has(own));
      state.layBest(index, price, isFilled ? (person, day) => dayPrices[person]?.[day] ?? 0 : undefined);
    }
    for (const index of extraDays) state.fillExtras(index, price);
    const now = state.points();
    const allowed = best.points + MOST_WORSE * Math.max(0, 1 - state.work.units / mostWork);
    if (now <= Math.max(points, allowed) + 1e-9) {
      points = now;
      if (points < best.points - 1e-9) best = { menu: state.menu(), points, done: 0 };
    } else {
      for (const index of extraDays) state.clearExtras(index);
      for (const index of chosen) state.clear(index);
      for (const laying of oldLayings) state.lay(laying);
      for (const { extraDay, lot, place, units } of oldExtras) state.addUnits(extraDay, lot, [place], units);
    }
    // a step that found nothing to do counts as well
    if (state.work.units - before < 100) state.work.units += 100;
    if (state.work.units - shownAt > mostWork / 20) {
      shownAt = state.work.units;
      yield { ...best, done: state.work.units / mostWork };
    }
  }
  yield { ...best, done: 1 };
}
