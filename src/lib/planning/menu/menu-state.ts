import {
  DAY_FREE_FROM,
  DAY_FREE_TO,
  DAY_MILD_FROM,
  dayPoints,
  EXTRA_SORT,
  EXTRA_UNIT,
} from './menu-costs.ts';
import { layMeal } from './lay-meal.ts';
import type { Laying, Surroundings } from './laying.ts';
import {
  MOST_DRINKS,
  MOST_EXTRA_SORTS,
  MOST_UNITS,
  pouchPoints,
  type ExtraDay,
  type MenuModel,
  type ModelSlot,
} from './menu-model.ts';

/** Pieces or half servings of an extra that a person eats on a day. @property place in the people of that day */
export type EatenExtra = {
  readonly extraDay: number;
  readonly lot: number;
  readonly place: number;
  readonly units: number;
};
/** A menu of the model: how each slot is laid, and the extras of each day. */
export type ModelMenu = { readonly layings: readonly Laying[]; readonly extras: readonly EatenExtra[] };

/** Pouches of an extra that a group opens, and what becomes of them. */
export type OpenedExtra = { readonly day: number; readonly pouches: number };
export type ExtraUse = {
  readonly opened: readonly OpenedExtra[];
  readonly pouches: number;
  readonly leftUnits: number;
};

/**
 * Opens pouches of an extra as they are needed, one after the other: what is open is eaten first, as long as it keeps.
 *
 * @param unitsByDay what the group eats of it, by day
 * @param keepsDays days on which an opened pouch may be eaten of, the first one included
 */
export function openExtras(
  unitsByDay: ArrayLike<number>,
  unitsPerPouch: number,
  keepsDays: number,
): ExtraUse {
  const opened: OpenedExtra[] = [];
  let open: { day: number; units: number }[] = [];
  let [pouches, leftUnits] = [0, 0];
  for (let day = 0; day < unitsByDay.length; day++) {
    for (const pouch of open) if (day - pouch.day >= keepsDays) leftUnits += pouch.units;
    open = open.filter((pouch) => day - pouch.day < keepsDays);
    let wanted = unitsByDay[day] ?? 0;
    if (wanted === 0) continue;
    for (const pouch of open) {
      const taken = Math.min(pouch.units, wanted);
      pouch.units -= taken;
      wanted -= taken;
    }
    if (wanted > 0) {
      const count = Math.ceil(wanted / unitsPerPouch);
      opened.push({ day, pouches: count });
      pouches += count;
      open.push({ day, units: count * unitsPerPouch - wanted });
    }
    open = open.filter(({ units }) => units > 0);
  }
  leftUnits += open.reduce((sum, { units }) => sum + units, 0);
  return { opened, pouches, leftUnits };
}

const SNACK_AT = 2;
const DRINK_AT = 4;
/** Points of carrying, age and fuel of a pouch of an extra opened on a day. */
export function extraPouchPoints(model: MenuModel, lot: number, day: number, isDrink: boolean): number {
  const usual = isDrink ? DRINK_AT : SNACK_AT;
  const at = model.burdens[day]?.[usual]
    ? usual
    : (model.burdens[day]?.findLastIndex((burden) => burden) ?? -1);
  return pouchPoints(model, lot, day, at);
}

/** How often a person eats a dish again too soon. @param times when it is eaten, `atOf`, in order */
export function repeatsOf(times: readonly number[], withinDays: number): number {
  if (withinDays <= 0) return 0;
  let repeats = 0;
  for (let at = 1; at < times.length; at++)
    if (Math.floor((times[at] ?? 0) / 5) - Math.floor((times[at - 1] ?? 0) / 5) <= withinDays) repeats++;
  return repeats;
}

/** A sort of extra that a day may have. */
type Sort = {
  readonly lot: number;
  readonly isDrink: boolean;
  /** Units in pouches that are open already. */
  readonly open: number;
  readonly units: number;
  readonly unitKcal: number;
  readonly unitLackG: number;
  readonly unitPoints: number;
};
/** Sorts of extras looked at for a day; of drinks half as many. */
const MOST_SORTS_TRIED = 8;

/** Repeats that eating a dish once more would add. */
function repeatsAdded(times: readonly number[], at: number, withinDays: number): number {
  if (withinDays <= 0) return 0;
  const day = Math.floor(at / 5);
  let [before, after] = [-Infinity, Infinity];
  for (const time of times) {
    if (time <= at) before = Math.max(before, time);
    else after = Math.min(after, time);
  }
  const isNear = (one: number, other: number) =>
    Math.abs(Math.floor(one / 5) - Math.floor(other / 5)) <= withinDays;
  const isAgain = before !== -Infinity && day - Math.floor(before / 5) <= withinDays;
  const wasAgain = before !== -Infinity && after !== Infinity && isNear(before, after);
  const makesAgain = after !== Infinity && isNear(at, after);
  return Number(isAgain) + Number(makesAgain) - Number(wasAgain);
}

type Use = { units: Int32Array; use: ExtraUse; points: number };

/** A menu that is changed bit by bit, with what it costs known at every moment. */
export class MenuState {
  readonly model: MenuModel;
  /** By slot. */
  readonly layings: (Laying | undefined)[];
  readonly free: Int32Array;
  /** Points of what is shared by meals: days, protein, repeats, extras. */
  #kcal: Float64Array[];
  #lackG: Float64Array[];
  #times: Map<number, number[]>[];
  /** By extra day, lot and place: units. */
  #eaten: Map<number, Int32Array>[];
  /** By group, then by lot. */
  #uses: Map<number, Use>[];
  work = { units: 0 };

  constructor(model: MenuModel) {
    this.model = model;
    this.layings = model.slots.map(() => undefined);
    this.free = Int32Array.from(model.lots, ({ stock }) => stock);
    this.#kcal = model.keptKcal.map((days) => Float64Array.from(days));
    this.#lackG = model.keptLackG.map((days) => Float64Array.from(days));
    this.#times = model.people.map(() => new Map());
    for (const { person, dish, at } of model.keptEaten) this.#eat(person, dish, at);
    this.#eaten = model.extraDays.map(() => new Map());
    this.#uses = model.groups.map(() => new Map());
  }

  static of(model: MenuModel, menu: ModelMenu): MenuState {
    const state = new MenuState(model);
    for (const laying of menu.layings) state.lay(laying);
    for (const { extraDay, lot, place, units } of menu.extras) state.addUnits(extraDay, lot, [place], units);
    return state;
  }

  menu(): ModelMenu {
    return {
      layings: this.layings.filter((laying) => laying !== undefined),
      extras: this.#eaten.flatMap((lots, extraDay) =>
        [...lots]
          .sort(([a], [b]) => a - b)
          .flatMap(([lot, byPlace]) =>
            [...byPlace].flatMap((units, place) => (units > 0 ? [{ extraDay, lot, place, units }] : [])),
          ),
      ),
    };
  }

  #eat(person: number, dish: number, at: number): void {
    const times = this.#times[person];
    if (!times) return;
    const own = times.get(dish) ?? [];
    own.push(at);
    own.sort((a, b) => a - b);
    times.set(dish, own);
  }
  #uneat(person: number, dish: number, at: number): void {
    const own = this.#times[person]?.get(dish);
    const found = own?.indexOf(at) ?? -1;
    if (own && found >= 0) own.splice(found, 1);
  }

  lay(laying: Laying): void {
    this.#change(laying, 1);
    this.layings[laying.slot] = laying;
  }
  clear(slot: number): Laying | undefined {
    const laying = this.layings[slot];
    if (laying) this.#change(laying, -1);
    this.layings[slot] = undefined;
    return laying;
  }
  #change(laying: Laying, sign: 1 | -1): void {
    const slot = this.model.slots[laying.slot];
    if (!slot) return;
    slot.people.forEach((person, place) => {
      const kcal = this.#kcal[person];
      const lack = this.#lackG[person];
      if (kcal) kcal[slot.day] = (kcal[slot.day] ?? 0) + sign * (laying.kcal[place] ?? 0);
      if (lack) lack[slot.day] = (lack[slot.day] ?? 0) + sign * (laying.lackG[place] ?? 0);
    });
    for (const dish of laying.dishes) {
      dish.lots.forEach((lot, at) => {
        this.free[lot] = (this.free[lot] ?? 0) - sign * (dish.pouches[at] ?? 0);
      });
      for (const { place } of dish.portions) {
        const person = slot.people[place] ?? -1;
        if (sign > 0) this.#eat(person, dish.dish, slot.at);
        else this.#uneat(person, dish.dish, slot.at);
      }
    }
  }

  /** Points of a person's day, with so much more on it. */
  #personDay(person: number, day: number, moreKcal: number, moreLackG: number): number {
    const { costs, needKcal } = this.model;
    const lack = (this.#lackG[person]?.[day] ?? 0) + moreLackG;
    return (
      dayPoints(needKcal[person]?.[day] ?? 0, (this.#kcal[person]?.[day] ?? 0) + moreKcal, costs) +
      costs.proteinG * Math.max(0, lack)
    );
  }

  /** What surrounds a slot that is not laid: the rest of the menu. @param price guides towards lots that others need less @param dayPrice what a kcal is worth on a day that extras will still fill */
  around(
    slot: ModelSlot,
    price?: (lot: number) => number,
    dayPrice?: (person: number, day: number) => number,
  ): Surroundings {
    const { costs, settings } = this.model;
    return {
      plate: dayPrice
        ? (place, kcal) => -dayPrice(slot.people[place] ?? -1, slot.day) * kcal
        : (place, kcal, lackG) => this.#personDay(slot.people[place] ?? -1, slot.day, kcal, lackG),
      eats: (place, dish) => {
        const times = this.#times[slot.people[place] ?? -1]?.get(dish);
        if (!times || times.length === 0) return 0;
        return costs.repeat * repeatsAdded(times, slot.at, settings.repeatAfterDays);
      },
      pouch: price ?? (() => 0),
      kinks: (place) => {
        if (dayPrice) return [];
        const person = slot.people[place] ?? -1;
        const need = this.model.needKcal[person]?.[slot.day] ?? 0;
        const has = this.#kcal[person]?.[slot.day] ?? 0;
        return [DAY_MILD_FROM * need - has, DAY_FREE_FROM * need - has, DAY_FREE_TO * need - has];
      },
      free: (lot) => this.free[lot] ?? 0,
    };
  }

  /** Lays a slot as well as the rest of the menu allows. */
  layBest(
    index: number,
    price?: (lot: number) => number,
    dayPrice?: (person: number, day: number) => number,
  ): void {
    const slot = this.model.slots[index];
    if (slot) this.lay(layMeal(this.model, slot, this.around(slot, price, dayPrice), this.work).laying);
  }

  /**
   * Lays a slot by what is planned for it, without regard to the rest of its day.
   *
   * @param fills whether a kcal that the meal falls clearly short of counts as one missing to the day
   */
  layAlone(slot: ModelSlot, price: (lot: number) => number, fills = false): void {
    const { kinks: _kinks, ...around } = this.around(slot, price);
    const fullKcal = (place: number) => DAY_MILD_FROM * (slot.plannedKcal[place] ?? 0);
    const filled = {
      plate: (place: number, kcal: number) =>
        this.model.costs.missingKcal * Math.max(0, fullKcal(place) - kcal),
      kinks: (place: number) => [fullKcal(place)],
    };
    const alone = { ...around, ...(fills ? filled : { plate: () => 0 }) };
    this.lay(layMeal(this.model, slot, alone, this.work).laying);
  }

  // extras

  #unitServings(lot: number): number {
    const of = this.model.lots[lot];
    return of ? of.servings / of.units : 0;
  }
  #keepsDays(lot: number): number {
    return this.model.lots[lot]?.keepsOpen ? this.model.settings.dryOpenDays : 1;
  }
  #isDrink(extraDay: ExtraDay, lot: number): boolean {
    return extraDay.isDrink[extraDay.lots.indexOf(lot)] ?? false;
  }
  /** What a group's use of an extra comes to. */
  #useOf(group: number, lot: number, units: Int32Array, isDrink: boolean): Use {
    const of = this.model.lots[lot];
    const use = openExtras(units, of?.units ?? 1, this.#keepsDays(lot));
    const points =
      use.opened.reduce(
        (sum, { day, pouches }) => sum + pouches * extraPouchPoints(this.model, lot, day, isDrink),
        0,
      ) +
      this.model.costs.leftOverKcal * use.leftUnits * this.#unitServings(lot) * (of?.servingKcal ?? 0);
    return { units, use, points };
  }

  /** What more units of an extra for some people of a day would cost; undefined where there is none left or they may have no more. */
  priceUnits(index: number, lot: number, places: readonly number[], units: number): number | undefined {
    const extraDay = this.model.extraDays[index];
    const of = this.model.lots[lot];
    if (!extraDay || !of) return undefined;
    const own = this.#eaten[index]?.get(lot);
    const isDrink = this.#isDrink(extraDay, lot);
    const known = this.#uses[extraDay.group]?.get(lot);
    const unitKcal = this.#unitServings(lot) * of.servingKcal;
    const unitLackG = this.#unitServings(lot) * of.lackG;
    let points = EXTRA_UNIT * units * places.length;
    for (const place of places) {
      const person = extraDay.people[place] ?? -1;
      if (!of.feeds[person]) return undefined;
      const has = own?.[place] ?? 0;
      if (has + units > MOST_UNITS || has + units < 0) return undefined;
      if (units > 0) {
        if (this.extraKcal(index, place) + units * unitKcal > (extraDay.mostKcal[place] ?? 0) + 1e-9)
          return undefined;
        if (
          has === 0 &&
          this.#sortsOf(index, place, isDrink) >= (isDrink ? MOST_DRINKS : (extraDay.mostSorts[place] ?? 0))
        )
          return undefined;
      }
      points +=
        this.#personDay(person, extraDay.day, units * unitKcal, units * unitLackG) -
        this.#personDay(person, extraDay.day, 0, 0);
    }
    const hasAny = own?.some((has) => has > 0) ?? false;
    const willHave =
      units > 0 || (own?.some((has, place) => has + (places.includes(place) ? units : 0) > 0) ?? false);
    points +=
      EXTRA_SORT *
      (this.#sortPoints(index, isDrink, willHave && !hasAny ? 1 : !willHave && hasAny ? -1 : 0) -
        this.#sortPoints(index, isDrink, 0));
    const byDay = known ? Int32Array.from(known.units) : new Int32Array(this.model.days.length);
    byDay[extraDay.day] = (byDay[extraDay.day] ?? 0) + units * places.length;
    const use = this.#useOf(extraDay.group, lot, byDay, isDrink);
    if (use.use.pouches - (known?.use.pouches ?? 0) > (this.free[lot] ?? 0)) return undefined;
    this.work.units += places.length + this.model.days.length;
    return points + use.points - (known?.points ?? 0);
  }
  #sortPoints(index: number, isDrink: boolean, change: number): number {
    const extraDay = this.model.extraDays[index];
    let sorts = change;
    for (const [lot, byPlace] of this.#eaten[index] ?? [])
      if (extraDay && this.#isDrink(extraDay, lot) === isDrink && byPlace.some((units) => units > 0)) sorts++;
    return Math.max(0, sorts - 1);
  }
  #sortsOf(index: number, place: number, isDrink: boolean): number {
    const extraDay = this.model.extraDays[index];
    let sorts = 0;
    for (const [lot, byPlace] of this.#eaten[index] ?? [])
      if (extraDay && this.#isDrink(extraDay, lot) === isDrink && (byPlace[place] ?? 0) > 0) sorts++;
    return sorts;
  }
  extraKcal(index: number, place: number): number {
    let kcal = 0;
    for (const [lot, byPlace] of this.#eaten[index] ?? [])
      kcal += (byPlace[place] ?? 0) * this.#unitServings(lot) * (this.model.lots[lot]?.servingKcal ?? 0);
    return kcal;
  }

  addUnits(index: number, lot: number, places: readonly number[], units: number): void {
    const extraDay = this.model.extraDays[index];
    const of = this.model.lots[lot];
    const eaten = this.#eaten[index];
    const uses = extraDay && this.#uses[extraDay.group];
    if (!extraDay || !of || !eaten || !uses) return;
    const byPlace = eaten.get(lot) ?? new Int32Array(extraDay.people.length);
    eaten.set(lot, byPlace);
    for (const place of places) {
      byPlace[place] = (byPlace[place] ?? 0) + units;
      const person = extraDay.people[place] ?? -1;
      const kcal = this.#kcal[person];
      const lack = this.#lackG[person];
      const servings = units * this.#unitServings(lot);
      if (kcal) kcal[extraDay.day] = (kcal[extraDay.day] ?? 0) + servings * of.servingKcal;
      if (lack) lack[extraDay.day] = (lack[extraDay.day] ?? 0) + servings * of.lackG;
    }
    if (byPlace.every((has) => has === 0)) eaten.delete(lot);
    const known = uses.get(lot);
    const byDay = known ? Int32Array.from(known.units) : new Int32Array(this.model.days.length);
    byDay[extraDay.day] = (byDay[extraDay.day] ?? 0) + units * places.length;
    const use = this.#useOf(extraDay.group, lot, byDay, this.#isDrink(extraDay, lot));
    this.free[lot] = (this.free[lot] ?? 0) - (use.use.pouches - (known?.use.pouches ?? 0));
    if (byDay.every((units) => units === 0)) uses.delete(lot);
    else uses.set(lot, use);
  }

  /** Takes all extras of a day back. */
  clearExtras(index: number): EatenExtra[] {
    const taken: EatenExtra[] = [];
    for (const [lot, byPlace] of [...(this.#eaten[index] ?? [])])
      [...byPlace].forEach((units, place) => {
        if (units <= 0) return;
        taken.push({ extraDay: index, lot, place, units });
        this.addUnits(index, lot, [place], -units);
      });
    return taken;
  }

  /**
   * Fills a day with extras: a few sorts for the whole group, of which each takes as many pieces as serve them best; then piece by piece, as pouches come out even.
   *
   * @param price guides away from lots that other days need more
   */
  fillExtras(index: number, price: (lot: number) => number = () => 0): void {
    const extraDay = this.model.extraDays[index];
    if (!extraDay) return;
    const sorts = this.#sortsFor(extraDay, price);
    let chosen: readonly number[] = [];
    let best = { points: this.#unitsOf(extraDay, [], sorts).points, units: [] as Int32Array[] };
    for (let size = 0; size < MOST_EXTRA_SORTS; size++) {
      let better: { chosen: readonly number[]; points: number; units: Int32Array[] } | undefined;
      for (let at = 0; at < sorts.length; at++) {
        if (chosen.includes(at)) continue;
        const tried = [...chosen, at];
        if (tried.filter((other) => sorts[other]?.isDrink).length > MOST_DRINKS) continue;
        const { points, units } = this.#unitsOf(extraDay, tried, sorts);
        if (points < (better?.points ?? best.points) - 1e-6) better = { chosen: tried, points, units };
      }
      if (!better) break;
      chosen = better.chosen;
      best = better;
    }
    chosen.forEach((at, sort) => {
      const lot = sorts[at]?.lot ?? -1;
      best.units[sort]?.forEach((units, place) => {
        for (let unit = 0; unit < units; unit++) {
          const points = this.priceUnits(index, lot, [place], 1);
          if (points === undefined) return;
          this.addUnits(index, lot, [place], 1);
        }
      });
    });
    this.evenExtras(
      index,
      sorts.map(({ lot }) => lot),
      price,
    );
  }

  /** Takes or gives single pieces as long as that gains. */
  evenExtras(index: number, lots: readonly number[], price: (lot: number) => number = () => 0): void {
    const extraDay = this.model.extraDays[index];
    if (!extraDay) return;
    const near = [...new Set([...lots, ...(this.#eaten[index]?.keys() ?? [])])];
    for (let step = 0; step < 40; step++) {
      let best: { lot: number; place: number; units: number; points: number } | undefined;
      for (const lot of near)
        for (let place = 0; place < extraDay.people.length; place++)
          for (const units of [1, -1]) {
            const own = this.priceUnits(index, lot, [place], units);
            if (own === undefined) continue;
            const points = own + (units * price(lot)) / (this.model.lots[lot]?.units ?? 1);
            if (points < -1e-6 && (!best || points < best.points - 1e-9))
              best = { lot, place, units, points };
          }
      if (!best) return;
      this.addUnits(index, best.lot, [best.place], best.units);
    }
  }

  /** Sorts worth looking at for a day: the cheapest for their energy, and what is open. */
  #sortsFor(extraDay: ExtraDay, price: (lot: number) => number): Sort[] {
    const sorts = extraDay.lots.flatMap((lot, at): Sort[] => {
      const of = this.model.lots[lot];
      if (!of) return [];
      const isDrink = extraDay.isDrink[at] ?? false;
      const known = this.#uses[extraDay.group]?.get(lot);
      const open = known ? this.#openOn(known, extraDay.day, lot) : 0;
      if ((this.free[lot] ?? 0) <= 0 && open <= 0) return [];
      const pouch = extraPouchPoints(this.model, lot, extraDay.day, isDrink) + price(lot);
      return [
        {
          lot,
          isDrink,
          open,
          units: (this.free[lot] ?? 0) * of.units + open,
          unitKcal: of.kcal / of.units,
          unitLackG: (of.servings * of.lackG) / of.units,
          unitPoints: EXTRA_UNIT + pouch / of.units,
        },
      ];
    });
    const worth = (sort: Sort) => (sort.open > 0 ? EXTRA_UNIT : sort.unitPoints) / sort.unitKcal;
    sorts.sort((a, b) => worth(a) - worth(b) || a.lot - b.lot);
    const drinks = sorts.filter(({ isDrink }) => isDrink).slice(0, MOST_SORTS_TRIED / 2);
    return [...sorts.filter(({ isDrink }) => !isDrink).slice(0, MOST_SORTS_TRIED), ...drinks];
  }

  /** Units that are open on a day and not spoken for later. */
  #openOn({ units, use }: Use, day: number, lot: number): number {
    const keeps = this.#keepsDays(lot);
    const perPouch = this.model.lots[lot]?.units ?? 1;
    let [opened, eaten] = [0, 0];
    for (const at of use.opened) if (Math.abs(at.day - day) < keeps) opened += at.pouches * perPouch;
    for (let at = Math.max(0, day - keeps + 1); at < Math.min(units.length, day + keeps); at++)
      eaten += units[at] ?? 0;
    return Math.max(0, opened - eaten);
  }

  /** The best number of pieces of some sorts for each person of a day, and what that comes to, pouches as if they came out even. */
  #unitsOf(
    extraDay: ExtraDay,
    chosen: readonly number[],
    sorts: readonly Sort[],
  ): { points: number; units: Int32Array[] } {
    const units = chosen.map(() => new Int32Array(extraDay.people.length));
    const taken = chosen.map(() => 0);
    let points = 0;
    extraDay.people.forEach((person, place) => {
      const counts = new Int32Array(chosen.length);
      const bestCounts = new Int32Array(chosen.length);
      let best = this.#personDay(person, extraDay.day, 0, 0);
      const most = extraDay.mostKcal[place] ?? 0;
      const limits = chosen.map((at, sort) => {
        const of = sorts[at];
        if (!of || !this.model.lots[of.lot]?.feeds[person]) return 0;
        return Math.min(MOST_UNITS, of.units - (taken[sort] ?? 0));
      });
      const tryFrom = (sort: number, kcal: number, lackG: number, own: number) => {
        if (sort === chosen.length) {
          this.work.units += 1;
          const all = own + this.#personDay(person, extraDay.day, kcal, lackG);
          if (all < best - 1e-9) {
            best = all;
            bestCounts.set(counts);
          }
          return;
        }
        const of = sorts[chosen[sort] ?? -1];
        if (!of) return;
        for (let count = 0; count <= (limits[sort] ?? 0); count++) {
          const added = count * of.unitKcal;
          if (kcal + added > most + 1e-9) break;
          counts[sort] = count;
          tryFrom(sort + 1, kcal + added, lackG + count * of.unitLackG, own + count * of.unitPoints);
        }
        counts[sort] = 0;
      };
      tryFrom(0, 0, 0, 0);
      points += best;
      bestCounts.forEach((count, sort) => {
        const own = units[sort];
        if (own) own[place] = count;
        taken[sort] = (taken[sort] ?? 0) + count;
      });
    });
    chosen.forEach((at, sort) => {
      // what is open is paid for
      const of = sorts[at];
      if (of) points -= Math.min(of.open, taken[sort] ?? 0) * (of.unitPoints - EXTRA_UNIT);
    });
    const count = (drinks: boolean) =>
      chosen.filter((at, sort) => sorts[at]?.isDrink === drinks && (taken[sort] ?? 0) > 0).length;
    points += EXTRA_SORT * (Math.max(0, count(false) - 1) + Math.max(0, count(true) - 1));
    return { points, units };
  }

  /** All points of the menu as it stands. */
  points(): number {
    const { model } = this;
    let points = 0;
    for (const laying of this.layings) points += laying?.points ?? 0;
    for (let person = 0; person < model.people.length; person++) {
      for (let day = 0; day < model.days.length; day++) points += this.#personDay(person, day, 0, 0);
      for (const times of this.#times[person]?.values() ?? [])
        points += model.costs.repeat * repeatsOf(times, model.settings.repeatAfterDays);
    }
    for (const uses of this.#uses) for (const { points: own } of uses.values()) points += own;
    model.extraDays.forEach(({ index }) => {
      points += EXTRA_SORT * (this.#sortPoints(index, false, 0) + this.#sortPoints(index, true, 0));
      for (const byPlace of this.#eaten[index]?.values() ?? [])
        points += EXTRA_UNIT * byPlace.reduce((sum, units) => sum + units, 0);
    });
    return points;
  }
}
