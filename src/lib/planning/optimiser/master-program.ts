import { daySlopes, DAY_FREE_FROM, DAY_FREE_TO, DAY_MILD_FROM } from '../menu/menu-costs.ts';
import { layMeal } from '../menu/lay-meal.ts';
import { asLaying, pricedOf, totalsOf, type Laying, type Surroundings } from '../menu/laying.ts';
import type { ExtraDay, MenuModel, ModelSlot } from '../menu/menu-model.ts';
import { layingsBelow } from '../menu/near-layings.ts';
import {
  bestPlate,
  plateKey,
  plateLots,
  platesAbove,
  type ExtraPieces,
  type ExtraPlate,
  type PlateLot,
} from './extra-plates.ts';
import type {
  GrowingProgram,
  OpenProgram,
  ProgramColumn,
  ProgramRow,
  ProgramSolution,
} from './linear-program.ts';
import { brokenRepeats, countIn, isIn, type RepeatRow } from './repeat-rows.ts';

/** Reduced costs above this are none. */
const PAYS = 1e-6;
/** Cuts by how often a dish can be opened in large parts. */
const MOST_CUT_PARTS = 12;
const BREAKS = 0.02;
const MOST_NEW_ROWS = 60;
/** Layings taken of a slot at a time, besides the best. */
const MOST_OTHERS = 2;

/** Of a dish that lasts for so many parts of a size, servings, no more such parts are opened. */
type Cut = { readonly row: number; readonly dish: number; readonly parts: number; readonly size: number };
const partsIn = (servings: number, size: number): number => Math.floor(servings / size);
type PlacedRow = RepeatRow & { readonly row: number };
type LayingColumn = { readonly column: number; readonly laying: Laying };

/**
 * What prices prove: no menu is under `points`; with a laying or a plate that is priced above the least of its slot or person, no menu is under these points and what it is above.
 * By slot, and by person and day of extras: the least, points.
 */
export type Proof = {
  readonly points: number;
  readonly prices: Float64Array;
  readonly leastOfSlot: readonly number[];
  readonly leastOfPlate: ReadonlyMap<string, number>;
};

/** What is best at some prices, and what no menu is under, points. */
export type Looked = {
  readonly points: number;
  readonly layings: readonly Laying[];
  readonly plates: readonly ExtraPlate[];
};

/**
 * The linear program over layings: each table is laid once, pouches are not opened more often than there are, and days, protein and repeats are paid for. Layings
 * are made when their price pays (column generation; Desrosiers & Lübbecke 2005, A Primer in Column Generation), rows of repeats and cuts as they are broken.
 * Extras are plates of whole pieces for one person and day, as if nothing of their pouches were left over: that makes the bound lower, never wrong.
 */
export class MasterProgram {
  readonly model: MenuModel;
  readonly #program: GrowingProgram;
  readonly layings: LayingColumn[] = [];
  readonly #keys = new Set<string>();
  readonly #cuts: Cut[] = [];
  readonly #repeats: PlacedRow[] = [];
  readonly #repeatColumn = new Map<string, number>();
  readonly #sides: { readonly lower: number; readonly upper: number }[] = [];
  readonly #layingsOf: LayingColumn[][];
  /** Slots of the same people, who eat as much of the same meal. */
  readonly #twins: Map<string, ModelSlot[]>;
  #columns = 0;
  readonly #slotRow: number;
  readonly #lotRow: number;
  readonly #dayRow: number;
  readonly #lackRow: number;
  readonly #plateRows: number;
  readonly #plateRow = new Map<string, number>();
  readonly #plateLots = new Map<string, readonly PlateLot[]>();
  readonly #servingsOfDish: number[];
  work = { units: 0 };
  /** The best proof so far. */
  proof: Proof | undefined;
  solution: ProgramSolution | undefined;

  constructor(model: MenuModel, open: OpenProgram) {
    this.model = model;
    this.#program = open();
    const days = model.days.length;
    const slotRows = model.slots.map((): ProgramRow => ({ lower: 1, upper: 1, terms: [] }));
    const lotRows = model.lots.map(({ stock }): ProgramRow => ({
      lower: -Infinity,
      upper: stock,
      terms: [],
    }));
    const dayRows = model.people.flatMap((_, person) =>
      model.days.map((_, day): ProgramRow => {
        const need = model.needKcal[person]?.[day] ?? 0;
        const kept = model.keptKcal[person]?.[day] ?? 0;
        return { lower: DAY_FREE_FROM * need - kept, upper: DAY_FREE_TO * need - kept, terms: [] };
      }),
    );
    const lackRows = model.people.flatMap((_, person) =>
      model.days.map((_, day): ProgramRow => ({
        lower: -Infinity,
        upper: -(model.keptLackG[person]?.[day] ?? 0),
        terms: [],
      })),
    );
    const plateKeys = model.extraDays.flatMap((extraDay) =>
      extraDay.people.map((_, place) => {
        const key = keyOf(extraDay, place);
        this.#plateLots.set(key, plateLots(model, extraDay, place));
        return key;
      }),
    );
    this.#slotRow = 0;
    this.#lotRow = slotRows.length;
    this.#dayRow = this.#lotRow + lotRows.length;
    this.#lackRow = this.#dayRow + dayRows.length;
    this.#plateRows = this.#lackRow + lackRows.length;
    plateKeys.forEach((key, index) => this.#plateRow.set(key, this.#plateRows + index));
    this.#addRows([
      ...slotRows,
      ...lotRows,
      ...dayRows,
      ...lackRows,
      ...plateKeys.map((): ProgramRow => ({ lower: -Infinity, upper: 1, terms: [] })),
    ]);
    const slopes = daySlopes(model.costs);
    this.#addColumns(
      model.people.flatMap((_, person) =>
        model.days.flatMap((_, day): ProgramColumn[] => {
          const need = model.needKcal[person]?.[day] ?? 0;
          const row = this.#dayRow + person * days + day;
          return [
            { cost: slopes.mild, upper: (DAY_FREE_FROM - DAY_MILD_FROM) * need, terms: [[row, 1]] },
            { cost: slopes.missing, upper: Infinity, terms: [[row, 1]] },
            { cost: slopes.above, upper: Infinity, terms: [[row, -1]] },
            {
              cost: model.costs.proteinG,
              upper: Infinity,
              terms: [[this.#lackRow + person * days + day, -1]],
            },
          ];
        }),
      ),
    );
    this.#servingsOfDish = model.dishes.map((_, dish) =>
      model.lots.filter((lot) => lot.dish === dish).reduce((sum, lot) => sum + lot.stock * lot.servings, 0),
    );
    this.#layingsOf = model.slots.map(() => []);
    this.#twins = Map.groupBy(model.slots, twinKey);
    for (const slot of model.slots) this.addLaying(asLaying(model, slot, []));
  }

  #addRows(rows: readonly ProgramRow[]): number {
    this.#program.addRows(rows);
    return this.#sides.push(...rows) - rows.length;
  }
  #addColumns(columns: readonly ProgramColumn[]): number {
    this.#program.addColumns(columns);
    this.#columns += columns.length;
    return this.#columns - columns.length;
  }

  /** How many parts of a size are opened at once of a dish. */
  #partsOf(laying: Laying, dish: number, size: number): number {
    let parts = 0;
    for (const other of laying.dishes)
      if (other.dish === dish) parts += partsIn(totalsOf(this.model, other).servings, size);
    return parts;
  }
  /** @returns whether it is a new one */
  addLaying(laying: Laying): boolean {
    const key = layingKey(laying);
    if (this.#keys.has(key)) return false;
    this.#keys.add(key);
    const slot = this.model.slots[laying.slot];
    if (!slot) return false;
    const days = this.model.days.length;
    const terms = new Map<number, number>([[this.#slotRow + slot.index, 1]]);
    const add = (row: number, value: number) => terms.set(row, (terms.get(row) ?? 0) + value);
    for (const dish of laying.dishes)
      dish.lots.forEach((lot, at) => add(this.#lotRow + lot, dish.pouches[at] ?? 0));
    slot.people.forEach((person, place) => {
      if (laying.kcal[place]) add(this.#dayRow + person * days + slot.day, laying.kcal[place] ?? 0);
      if (laying.lackG[place]) add(this.#lackRow + person * days + slot.day, laying.lackG[place] ?? 0);
    });
    for (const cut of this.#cuts) {
      const parts = this.#partsOf(laying, cut.dish, cut.size);
      if (parts > 0) add(cut.row, parts);
    }
    for (const repeat of this.#repeats) {
      const count = countIn(repeat, slot, laying, this.model.settings.repeatAfterDays);
      if (count > 0) add(repeat.row, count);
    }
    const column = this.#addColumns([{ cost: laying.points, upper: Infinity, terms: [...terms] }]);
    this.layings.push({ column, laying });
    this.#layingsOf[laying.slot]?.push({ column, laying });
    return true;
  }

  /** Begins a slot with the layings that are best by themselves. */
  prime(slot: ModelSlot): void {
    const laid = layMeal(this.model, slot, { plate: () => 0, eats: () => 0, pouch: () => 0 }, this.work);
    for (const { laying } of [laid, ...laid.others]) this.addLaying(laying);
  }

  solve(): ProgramSolution {
    this.solution = this.#program.solve();
    return this.solution;
  }

  /** Those that prove most. */
  #bestPrices(): ArrayLike<number> {
    return this.proof?.prices ?? this.solution?.prices ?? [];
  }

  /** The price of a pouch of a lot: what one more would save. */
  priceOf(lot: number): number {
    return Math.max(0, -(this.#bestPrices()[this.#lotRow + lot] ?? 0));
  }

  /** What a kcal is worth to a person on a day. */
  dayPriceOf(person: number, day: number): number {
    return this.#bestPrices()[this.#dayRow + person * this.model.days.length + day] ?? 0;
  }

  around(slot: ModelSlot, prices: ArrayLike<number>, free?: (lot: number) => number): Surroundings {
    const days = this.model.days.length;
    const dayPrice = slot.people.map((person) => prices[this.#dayRow + person * days + slot.day] ?? 0);
    const lackPrice = slot.people.map((person) => prices[this.#lackRow + person * days + slot.day] ?? 0);
    const cutsOf = Map.groupBy(this.#cuts, ({ dish }) => dish);
    const repeatPoints = slot.people.map(() => new Map<number, number>());
    for (const repeat of this.#repeats)
      slot.people.forEach((person, place) => {
        const points = repeatPoints[place];
        const price = prices[repeat.row] ?? 0;
        if (points && price !== 0 && isIn(repeat, slot, person, this.model.settings.repeatAfterDays))
          points.set(repeat.dish, (points.get(repeat.dish) ?? 0) - price);
      });
    return {
      plate: (place, kcal, lackG) => -(dayPrice[place] ?? 0) * kcal - (lackPrice[place] ?? 0) * lackG,
      eats: (place, dish) => repeatPoints[place]?.get(dish) ?? 0,
      pouch: (lot) => Math.max(0, -(prices[this.#lotRow + lot] ?? 0)),
      opens: (dish, servings) =>
        (cutsOf.get(dish) ?? []).reduce(
          (sum, cut) => sum + partsIn(servings, cut.size) * Math.max(0, -(prices[cut.row] ?? 0)),
          0,
        ),
      ...(free && { free }),
    };
  }

  /** Prices as if a kcal were worth the same on every day and in every pouch. @param part of what one that is missing to a day costs */
  evenPrices(part: number): Float64Array {
    const { lots, costs } = this.model;
    const points = part * costs.missingKcal;
    return Float64Array.from(this.#sides, (_, row) => {
      if (row >= this.#dayRow && row < this.#lackRow) return points;
      return row >= this.#lotRow && row < this.#dayRow ? -points * (lots[row - this.#lotRow]?.kcal ?? 0) : 0;
    });
  }

  /** The prices of the rows, each on the side of nothing that it can be on. */
  prices(): Float64Array {
    const { costs } = this.model;
    const { missing, above } = daySlopes(costs);
    return Float64Array.from(this.solution?.prices ?? [], (price, row) => {
      const { lower, upper } = this.#sides[row] ?? { lower: 0, upper: 0 };
      if (row >= this.#dayRow && row < this.#lackRow) return Math.max(-above, Math.min(missing, price));
      const most = Number.isFinite(lower) ? price : Math.min(0, price);
      return Number.isFinite(upper) ? most : Math.max(0, most);
    });
  }

  /** What pouches, days, protein, cuts and repeats are worth at some prices. */
  #worthOf(prices: Float64Array): number {
    let points = 0;
    for (let row = this.#lotRow; row < prices.length; row++) {
      const price = prices[row] ?? 0;
      if (price === 0 || (row >= this.#plateRows && row < this.#plateRows + this.#plateRow.size)) continue;
      const { lower, upper } = this.#sides[row] ?? { lower: 0, upper: 0 };
      points += price * (price > 0 ? lower : upper);
    }
    const { mild } = daySlopes(this.model.costs);
    this.model.people.forEach((_, person) =>
      this.model.days.forEach((_, day) => {
        const price = prices[this.#dayRow + person * this.model.days.length + day] ?? 0;
        const mostKcal = (DAY_FREE_FROM - DAY_MILD_FROM) * (this.model.needKcal[person]?.[day] ?? 0);
        points += Math.min(0, mild - price) * mostKcal;
      }),
    );
    return points;
  }

  /** The best layings and plates of extras at some prices, with what they prove. */
  look(prices: Float64Array): Looked {
    const leastOfSlot: number[] = [];
    const layings: Laying[] = [];
    let points = this.#worthOf(prices);
    for (const slot of this.model.slots) {
      const around = this.around(slot, prices);
      let known = Infinity;
      for (const { laying } of this.#layingsOf[slot.index] ?? [])
        known = Math.min(known, pricedOf(this.model, slot, laying, around));
      const laid = layMeal(this.model, slot, around, this.work, known - PAYS);
      const least = Math.min(known, laid.least);
      leastOfSlot.push(least);
      points += least;
      for (const { laying } of [laid, ...laid.others.slice(0, MOST_OTHERS)]) layings.push(laying);
    }
    const plates: ExtraPlate[] = [];
    const leastOfPlate = new Map<string, number>();
    for (const extraDay of this.model.extraDays)
      extraDay.people.forEach((_, place) => {
        const { plate, gain } = this.#bestPlate(extraDay, place, prices);
        leastOfPlate.set(keyOf(extraDay, place), -gain);
        points -= gain;
        if (gain > 0) plates.push(plate);
      });
    if (points > (this.proof?.points ?? -Infinity))
      this.proof = { points, prices, leastOfSlot, leastOfPlate };
    return { points, layings, plates };
  }

  /** Takes those that pay at some prices. @returns how many */
  takePaying({ layings, plates }: Pick<Looked, 'layings' | 'plates'>, prices: Float64Array): number {
    const { model } = this;
    let added = 0;
    const around = new Map<number, Surroundings>();
    const reducedOf = (slot: ModelSlot, laying: Laying) => {
      const own = around.get(slot.index) ?? this.around(slot, prices);
      around.set(slot.index, own);
      return pricedOf(model, slot, laying, own) - (prices[this.#slotRow + slot.index] ?? 0);
    };
    /** By slot: the best of what was found for another one like it. */
    const lent = new Map<number, { laying: Laying; reduced: number }>();
    for (const laying of layings) {
      const slot = model.slots[laying.slot];
      if (!slot) continue;
      if (reducedOf(slot, laying) < -PAYS && this.addLaying(laying)) added++;
      for (const other of this.#twins.get(twinKey(slot)) ?? []) {
        if (other === slot || !canBeLaid(other, laying)) continue;
        const own = asLaying(model, other, laying.dishes);
        const reduced = reducedOf(other, own);
        if (reduced < Math.min(-PAYS, lent.get(other.index)?.reduced ?? 0) && !this.#keys.has(layingKey(own)))
          lent.set(other.index, { laying: own, reduced });
      }
    }
    for (const { laying } of lent.values()) if (this.addLaying(laying)) added++;
    for (const plate of plates) if (this.#reducedOf(plate, prices) < -PAYS && this.#addPlate(plate)) added++;
    return added;
  }

  /** Makes layings for some slots, of pouches that are free, and plates of extras, as far as they pay. @returns how many */
  price(slots: readonly ModelSlot[], free: (lot: number) => number): number {
    const prices = this.prices();
    const layings = slots.flatMap((slot) => {
      const own = prices[this.#slotRow + slot.index] ?? 0;
      const laid = layMeal(this.model, slot, this.around(slot, prices, free), this.work, own);
      return [laid, ...laid.others.slice(0, MOST_OTHERS)].map(({ laying }) => laying);
    });
    const plates = this.model.extraDays.flatMap((extraDay) =>
      extraDay.people.map((_, place) => this.#bestPlate(extraDay, place, prices).plate),
    );
    return this.takePaying({ layings, plates }, prices);
  }

  /** What a unit of an extra gains on a plate, points. */
  #gainOf(extraDay: ExtraDay, place: number, prices: ArrayLike<number>): (lot: PlateLot) => number {
    const at = (extraDay.people[place] ?? -1) * this.model.days.length + extraDay.day;
    const dayPrice = prices[this.#dayRow + at] ?? 0;
    const lackPrice = prices[this.#lackRow + at] ?? 0;
    return ({ lot, unitPoints, unitKcal, unitLackG, unitPouches }) =>
      dayPrice * unitKcal +
      lackPrice * unitLackG +
      Math.min(0, prices[this.#lotRow + lot] ?? 0) * unitPouches -
      unitPoints;
  }

  /**
   * All layings of a slot that are priced above its least by less than so much, by what the proof says.
   *
   * @returns undefined where there are more than `most`
   */
  layingsWithin(slot: ModelSlot, { prices, leastOfSlot }: Proof, within: number, most: number) {
    const limit = (leastOfSlot[slot.index] ?? 0) + within;
    return layingsBelow(this.model, slot, this.around(slot, prices), limit, most, this.work);
  }

  /** All plates of extras of a person and day within so much of the least. */
  platesWithin(
    extraDay: ExtraDay,
    place: number,
    { prices, leastOfPlate }: Proof,
    within: number,
    most: number,
  ): ExtraPlate[] | undefined {
    const key = keyOf(extraDay, place);
    const found = platesAbove(
      this.#plateLots.get(key) ?? [],
      extraDay.mostKcal[place] ?? 0,
      extraDay.mostSorts[place] ?? 0,
      this.#gainOf(extraDay, place, prices),
      -((leastOfPlate.get(key) ?? 0) + within),
      most,
      this.work,
    );
    return found?.map((chosen) => plateOf(extraDay, place, chosen));
  }

  /** The pieces of extras of a person and day that a plate within so much of the least can have. */
  piecesWithin(extraDay: ExtraDay, place: number, { prices }: Proof, within: number): ExtraPieces {
    const gainOf = this.#gainOf(extraDay, place, prices);
    const lots = (this.#plateLots.get(keyOf(extraDay, place)) ?? []).flatMap((lot) => {
      // without a piece that costs, a plate would be cheaper by that
      const gain = gainOf(lot);
      const most = gain >= 0 ? lot.most : Math.min(lot.most, Math.floor(within / -gain));
      return most > 0 ? [{ lot: lot.lot, most }] : [];
    });
    return {
      extraDay: extraDay.index,
      place,
      lots: lots.map(({ lot }) => lot),
      most: lots.map(({ most }) => most),
    };
  }

  #bestPlate(extraDay: ExtraDay, place: number, prices: ArrayLike<number>) {
    const { gain, units } = bestPlate(
      this.#plateLots.get(keyOf(extraDay, place)) ?? [],
      extraDay.mostKcal[place] ?? 0,
      extraDay.mostSorts[place] ?? 0,
      this.#gainOf(extraDay, place, prices),
      this.work,
    );
    return { gain, plate: plateOf(extraDay, place, [...units]) };
  }

  /** The lots of a plate with their units. */
  #onPlate({ extraDay, place, lots, units }: ExtraPlate): (readonly [PlateLot, number])[] {
    const known = this.#plateLots.get(`${extraDay} ${place}`) ?? [];
    return lots.flatMap((lot, at) => {
      const of = known.find((other) => other.lot === lot);
      return of ? [[of, units[at] ?? 0] as const] : [];
    });
  }
  #reducedOf(plate: ExtraPlate, prices: Float64Array): number {
    const extraDay = this.model.extraDays[plate.extraDay];
    if (!extraDay) return 0;
    const gainOf = this.#gainOf(extraDay, plate.place, prices);
    const gain = this.#onPlate(plate).reduce((sum, [lot, units]) => sum + units * gainOf(lot), 0);
    return -gain - (prices[this.#plateRow.get(keyOf(extraDay, plate.place)) ?? -1] ?? 0);
  }
  /** @returns whether it is a new one */
  #addPlate(plate: ExtraPlate): boolean {
    const extraDay = this.model.extraDays[plate.extraDay];
    const key = plateKey(plate);
    if (!extraDay || this.#keys.has(key)) return false;
    this.#keys.add(key);
    const on = this.#onPlate(plate);
    const sumOf = (of: (lot: PlateLot) => number) =>
      on.reduce((sum, [lot, units]) => sum + units * of(lot), 0);
    const at = (extraDay.people[plate.place] ?? -1) * this.model.days.length + extraDay.day;
    this.#addColumns([
      {
        cost: sumOf(({ unitPoints }) => unitPoints),
        upper: Infinity,
        terms: [
          [this.#plateRow.get(keyOf(extraDay, plate.place)) ?? -1, 1],
          ...on.map(([{ lot, unitPouches }, units]) => [this.#lotRow + lot, units * unitPouches] as const),
          [this.#dayRow + at, sumOf(({ unitKcal }) => unitKcal)],
          [this.#lackRow + at, sumOf(({ unitLackG }) => unitLackG)],
        ],
      },
    ]);
    return true;
  }

  /** Adds rows that the solution breaks: large parts of a dish opened more often than it lasts for, and dishes that come again. @returns how many */
  addBrokenRows({ values }: ProgramSolution): number {
    return this.#addCuts(values) + this.#addRepeats(values);
  }

  #addCuts(values: ArrayLike<number>): number {
    const opened = new Map<number, { share: number; laying: Laying }[]>();
    for (const { column, laying } of this.layings) {
      const share = values[column] ?? 0;
      if (share < 1e-6) continue;
      for (const dish of new Set(laying.dishes.map((other) => other.dish)))
        opened.set(dish, [...(opened.get(dish) ?? []), { share, laying }]);
    }
    const broken: { dish: number; parts: number; size: number; by: number }[] = [];
    for (const [dish, shares] of opened)
      for (let parts = 1; parts <= MOST_CUT_PARTS; parts++) {
        // a little more than that part of it, so that one more would be too much
        const size = (this.#servingsOfDish[dish] ?? 0) / (parts + 1) + 1e-6;
        const sum = shares.reduce(
          (all, { share, laying }) => all + share * this.#partsOf(laying, dish, size),
          0,
        );
        if (sum > parts + BREAKS && !this.#cuts.some((cut) => cut.dish === dish && cut.parts === parts))
          broken.push({ dish, parts, size, by: (sum - parts) / parts });
      }
    broken.sort((a, b) => b.by - a.by);
    const taken = broken.slice(0, MOST_NEW_ROWS);
    const first = this.#addRows(
      taken.map(({ dish, parts, size }): ProgramRow => ({
        lower: -Infinity,
        upper: parts,
        terms: this.layings.flatMap(({ column, laying }) => {
          const own = this.#partsOf(laying, dish, size);
          return own > 0 ? [[column, own] as const] : [];
        }),
      })),
    );
    taken.forEach(({ dish, parts, size }, index) =>
      this.#cuts.push({ row: first + index, dish, parts, size }),
    );
    return taken.length;
  }

  #addRepeats(values: ArrayLike<number>): number {
    const { model } = this;
    const within = model.settings.repeatAfterDays;
    const laid = this.layings.flatMap(({ column, laying }) => {
      const share = values[column] ?? 0;
      return share < 1e-6 ? [] : [{ laying, share }];
    });
    const repeatKey = (group: number, dish: number, day: number) => `${group} ${dish} ${day}`;
    const paid = (group: number, dish: number, day: number) =>
      values[this.#repeatColumn.get(repeatKey(group, dish, day)) ?? -1] ?? 0;
    const broken = brokenRepeats(model, laid, paid, BREAKS, MOST_NEW_ROWS);
    const columnOf = (group: number, dish: number, day: number) => {
      const key = repeatKey(group, dish, day);
      const column =
        this.#repeatColumn.get(key) ??
        this.#addColumns([{ cost: model.costs.repeat, upper: Infinity, terms: [] }]);
      this.#repeatColumn.set(key, column);
      return column;
    };
    const paying = broken.map(({ group, dish, day, isWindow }) =>
      Array.from({ length: isWindow ? within + 1 : 1 }, (_, before) => day - before)
        .filter((at) => at >= 0)
        .map((at) => columnOf(group, dish, at)),
    );
    const first = this.#addRows(
      broken.map((row, at): ProgramRow => ({
        lower: -Infinity,
        upper: row.since.size,
        terms: [
          ...(paying[at] ?? []).map((column) => [column, -1] as const),
          ...this.layings.flatMap(({ column, laying }) => {
            const slot = model.slots[laying.slot];
            const count = slot ? countIn(row, slot, laying, within) : 0;
            return count > 0 ? [[column, count] as const] : [];
          }),
        ],
      })),
    );
    broken.forEach((row, at) => this.#repeats.push({ ...row, row: first + at }));
    return broken.length;
  }

  bounds(columns: readonly number[], lower: number, upper: number): void {
    this.#program.bound(columns, lower, upper);
  }

  close(): void {
    this.#program.close();
  }
}

const twinKey = ({ meal, people, plannedKcal, weight, task }: ModelSlot): string =>
  `${meal} ${task.style} ${people.join()} ${plannedKcal.join()} ${weight.join()}`;
/** Whether a laying of a slot can be one of another like it, by the dates of its lots and what is fixed. */
const canBeLaid = ({ options }: ModelSlot, { dishes }: Laying): boolean =>
  dishes.every(({ dish, lots }) => {
    const option = options.find((other) => other.dish === dish);
    return option !== undefined && lots.every((lot) => option.lots.includes(lot));
  });

const keyOf = ({ index }: ExtraDay, place: number): string => `${index} ${place}`;

const plateOf = (
  { index }: ExtraDay,
  place: number,
  chosen: readonly (readonly [PlateLot, number])[],
): ExtraPlate => ({
  extraDay: index,
  place,
  lots: chosen.map(([{ lot }]) => lot),
  units: chosen.map(([, count]) => count),
});

export const layingKey = ({ slot, dishes }: Laying): string =>
  `${slot} ${dishes
    .map(
      ({ dish, style, lots, pouches, portions }) =>
        `${dish}${style === 'own pouch' ? 'o' : 'p'}${lots.map((lot, at) => `${lot}x${pouches[at]}`).join()}:${portions.map(({ place, servings }) => `${place}=${servings.toFixed(3)}`).join()}`,
    )
    .sort()
    .join('|')}`;
