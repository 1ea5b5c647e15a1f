import {
  DAY_FREE_FROM,
  DAY_FREE_TO,
  DAY_MILD_FROM,
  daySlopes,
  EXTRA_SORT,
  EXTRA_UNIT,
} from '../menu/menu-costs.ts';
import type { Laying } from '../menu/laying.ts';
import { MOST_DRINKS, type MenuModel } from '../menu/menu-model.ts';
import { extraPouchPoints, MenuState } from '../menu/menu-state.ts';
import type { ExtraPieces, ExtraPlate } from './extra-plates.ts';
import type { OpenProgram, ProgramColumn, ProgramRow } from './linear-program.ts';

/** Columns and rows that are put together one by one, and then handed to a solver at once. */
class Draft {
  readonly columns: { cost: number; upper: number; whole: boolean }[] = [];
  readonly rows: { lower: number; upper: number; terms: (readonly [number, number])[] }[] = [];

  column(cost: number, upper: number, whole = false): number {
    return this.columns.push({ cost, upper, whole }) - 1;
  }
  row(lower: number, upper: number, terms: readonly (readonly [number, number])[] = []): number {
    return this.rows.push({ lower, upper, terms: [...terms] }) - 1;
  }
  add(row: number, column: number, value: number): void {
    if (value !== 0) this.rows[row]?.terms.push([column, value]);
  }
}

/** The best menu of some layings and plates, as far as it was looked for, and what none of them is under, points. */
export type Merged = { readonly state: MenuState | undefined; readonly bound: number };

/**
 * The best menu made of layings and plates of extras that were found, exactly, with extras from whole pouches: a program small enough to be solved.
 *
 * @param layings to choose from; each slot has one at least
 * @param plates to choose from, besides none
 * @param pieces of extras to choose from where a person's plates are too many to be listed
 * @param nodes of the tree to look at
 */
export function mergeLayings(
  model: MenuModel,
  layings: readonly Laying[],
  plates: readonly ExtraPlate[],
  pieces: readonly ExtraPieces[],
  open: OpenProgram,
  nodes: number,
): Merged {
  const draft = new Draft();
  const slopes = daySlopes(model.costs);
  const slotRows = model.slots.map(() => draft.row(1, 1));
  const lotRows = model.lots.map(({ stock }) => draft.row(-Infinity, stock));
  const dayRows = model.people.map((_, person) =>
    model.days.map((_, day) => {
      const need = model.needKcal[person]?.[day] ?? 0;
      const kept = model.keptKcal[person]?.[day] ?? 0;
      const row = draft.row(DAY_FREE_FROM * need - kept, DAY_FREE_TO * need - kept);
      draft.add(row, draft.column(slopes.mild, (DAY_FREE_FROM - DAY_MILD_FROM) * need), 1);
      draft.add(row, draft.column(slopes.missing, Infinity), 1);
      draft.add(row, draft.column(slopes.above, Infinity), -1);
      return row;
    }),
  );
  const lackRows = model.people.map((_, person) =>
    model.days.map((_, day) => {
      const row = draft.row(-Infinity, -(model.keptLackG[person]?.[day] ?? 0));
      draft.add(row, draft.column(model.costs.proteinG, Infinity), -1);
      return row;
    }),
  );
  const rowOf = (rows: readonly (readonly number[])[], person: number, day: number) =>
    rows[person]?.[day] ?? -1;

  const columnOf = layings.map((laying) => {
    const column = draft.column(laying.points, 1, true);
    const slot = model.slots[laying.slot];
    draft.add(slotRows[laying.slot] ?? -1, column, 1);
    for (const dish of laying.dishes)
      dish.lots.forEach((lot, at) => draft.add(lotRows[lot] ?? -1, column, dish.pouches[at] ?? 0));
    slot?.people.forEach((person, place) => {
      draft.add(rowOf(dayRows, person, slot.day), column, laying.kcal[place] ?? 0);
      draft.add(rowOf(lackRows, person, slot.day), column, laying.lackG[place] ?? 0);
    });
    return column;
  });
  addRepeats(model, draft, layings, columnOf);

  const extras = new ExtraDraft(model, draft, dayRows, lackRows);
  const plateColumns = plates.map((plate) => extras.plate(plate));
  const pieceColumns = pieces.map((of) => extras.pieces(of));
  extras.open(lotRows);

  const program = open();
  try {
    const terms = draft.columns.map(() => new Map<number, number>());
    const rows: ProgramRow[] = draft.rows.map(({ lower, upper }) => ({ lower, upper, terms: [] }));
    draft.rows.forEach((row, at) => {
      for (const [column, value] of row.terms) terms[column]?.set(at, (terms[column].get(at) ?? 0) + value);
    });
    program.addRows(rows);
    program.addColumns(
      draft.columns.map(({ cost, upper }, at): ProgramColumn => ({
        cost,
        upper,
        terms: [...(terms[at] ?? [])],
      })),
    );
    const { values, bound } = program.solveWhole(
      draft.columns.flatMap(({ whole }, at) => (whole ? [at] : [])),
      nodes,
    );
    if (!values) return { state: undefined, bound };
    const state = new MenuState(model);
    layings.forEach((laying, at) => {
      if ((values[columnOf[at] ?? -1] ?? 0) > 0.5 && !state.layings[laying.slot]) state.lay(laying);
    });
    plates.forEach(({ extraDay, place, lots, units }, at) => {
      if ((values[plateColumns[at] ?? -1] ?? 0) > 0.5)
        lots.forEach((lot, of) => state.addUnits(extraDay, lot, [place], units[of] ?? 0));
    });
    pieces.forEach(({ extraDay, place, lots }, at) =>
      lots.forEach((lot, of) => {
        const count = Math.round(values[pieceColumns[at]?.[of] ?? -1] ?? 0);
        if (count > 0) state.addUnits(extraDay, lot, [place], count);
      }),
    );
    return { state, bound };
  } finally {
    program.close();
  }
}

function addRepeats(
  model: MenuModel,
  draft: Draft,
  layings: readonly Laying[],
  columnOf: readonly number[],
): void {
  const within = model.settings.repeatAfterDays;
  if (within <= 0) return;
  /** By person and dish, then by slot: the columns in which the person eats it. */
  const eaten = new Map<string, Map<number, number[]>>();
  layings.forEach((laying, at) => {
    const slot = model.slots[laying.slot];
    for (const dish of laying.dishes)
      for (const { place } of dish.portions) {
        const key = `${slot?.people[place] ?? -1} ${dish.dish}`;
        const bySlot = eaten.get(key) ?? new Map<number, number[]>();
        eaten.set(key, bySlot);
        bySlot.set(laying.slot, [...(bySlot.get(laying.slot) ?? []), columnOf[at] ?? -1]);
      }
  });
  for (const bySlot of eaten.values()) {
    const slots = [...bySlot.keys()].sort((a, b) => (model.slots[a]?.at ?? 0) - (model.slots[b]?.at ?? 0));
    slots.forEach((later, index) => {
      const before = slots
        .slice(0, index)
        .filter((earlier) => (model.slots[later]?.day ?? 0) - (model.slots[earlier]?.day ?? 0) <= within);
      if (before.length === 0) return;
      const repeat = draft.column(model.costs.repeat, 1);
      for (const earlier of before)
        draft.row(-Infinity, 1, [
          [repeat, -1],
          ...(bySlot.get(later) ?? []).map((column) => [column, 1] as const),
          ...(bySlot.get(earlier) ?? []).map((column) => [column, 1] as const),
        ]);
    });
  }
}

/** Extras of a program: plates or pieces for each person and day, and the pouches that they come from. */
class ExtraDraft {
  readonly #model: MenuModel;
  readonly #draft: Draft;
  readonly #dayRows: readonly (readonly number[])[];
  readonly #lackRows: readonly (readonly number[])[];
  readonly #oneEach = new Map<string, number>();
  /** By extra day and lot: whether it is on the table; and by place, what says so. */
  readonly #sorts = new Map<string, number>();
  readonly #sortRows = new Map<string, number>();
  /** By extra day and whether it is a drink: the sorts on the table. */
  readonly #sortsOf = new Map<string, Set<number>>();
  /** By group and lot, then by day: what is eaten. */
  readonly #eaten = new Map<string, Map<number, (readonly [number, number])[]>>();

  constructor(
    model: MenuModel,
    draft: Draft,
    dayRows: readonly (readonly number[])[],
    lackRows: readonly (readonly number[])[],
  ) {
    this.#model = model;
    this.#draft = draft;
    this.#dayRows = dayRows;
    this.#lackRows = lackRows;
  }

  #isDrink(index: number, lot: number): boolean {
    const extraDay = this.#model.extraDays[index];
    return extraDay?.isDrink[extraDay.lots.indexOf(lot)] ?? false;
  }
  /** Points, kcal and lacking protein of some units of a lot. */
  #unitsOf(lot: number, units: number) {
    const of = this.#model.lots[lot];
    const kcal = of ? (units * of.kcal) / of.units : 0;
    return {
      points: units * EXTRA_UNIT - this.#model.costs.leftOverKcal * kcal,
      kcal,
      lackG: of ? (units * of.servings * of.lackG) / of.units : 0,
    };
  }
  #feed(index: number, place: number, column: number, kcal: number, lackG: number): void {
    const extraDay = this.#model.extraDays[index];
    const person = extraDay?.people[place] ?? -1;
    const day = extraDay?.day ?? -1;
    this.#draft.add(this.#dayRows[person]?.[day] ?? -1, column, kcal);
    this.#draft.add(this.#lackRows[person]?.[day] ?? -1, column, lackG);
  }
  /** A column, at most 1 where a lot is on the plate, that takes so many units of it. */
  #takes(index: number, place: number, lot: number, has: number, column: number, units: number): void {
    const draft = this.#draft;
    const sortKey = `${index} ${lot}`;
    const kind = `${index} ${this.#isDrink(index, lot)}`;
    const sort = this.#sorts.get(sortKey) ?? draft.column(0, 1);
    this.#sorts.set(sortKey, sort);
    const known = this.#sortsOf.get(kind) ?? new Set<number>();
    this.#sortsOf.set(kind, known);
    known.add(sort);
    const row = this.#sortRows.get(`${sortKey} ${place}`) ?? draft.row(-Infinity, 0, [[sort, -1]]);
    this.#sortRows.set(`${sortKey} ${place}`, row);
    draft.add(row, has, 1);
    const extraDay = this.#model.extraDays[index];
    const key = `${extraDay?.group} ${lot}`;
    const byDay = this.#eaten.get(key) ?? new Map<number, (readonly [number, number])[]>();
    this.#eaten.set(key, byDay);
    const day = extraDay?.day ?? -1;
    byDay.set(day, [...(byDay.get(day) ?? []), [column, units]]);
  }

  /** @returns its column */
  plate({ extraDay, place, lots, units }: ExtraPlate): number {
    const all = lots.map((lot, at) => this.#unitsOf(lot, units[at] ?? 0));
    const sumOf = (of: 'points' | 'kcal' | 'lackG') => all.reduce((sum, own) => sum + own[of], 0);
    const column = this.#draft.column(sumOf('points'), 1, true);
    const key = `${extraDay} ${place}`;
    const row = this.#oneEach.get(key) ?? this.#draft.row(-Infinity, 1);
    this.#oneEach.set(key, row);
    this.#draft.add(row, column, 1);
    this.#feed(extraDay, place, column, sumOf('kcal'), sumOf('lackG'));
    lots.forEach((lot, at) => this.#takes(extraDay, place, lot, column, column, units[at] ?? 0));
    return column;
  }

  /** @returns the column of each lot: how many units of it */
  pieces({ extraDay: index, place, lots, most }: ExtraPieces): number[] {
    const draft = this.#draft;
    const extraDay = this.#model.extraDays[index];
    const cap = draft.row(-Infinity, extraDay?.mostKcal[place] ?? 0);
    const drinks = draft.row(-Infinity, MOST_DRINKS);
    const sorts = draft.row(-Infinity, extraDay?.mostSorts[place] ?? 0);
    return lots.map((lot, at) => {
      const { points, kcal, lackG } = this.#unitsOf(lot, 1);
      const column = draft.column(points, most[at] ?? 0, true);
      const has = draft.column(0, 1, true);
      draft.row(-Infinity, 0, [
        [column, 1],
        [has, -(most[at] ?? 0)],
      ]);
      draft.add(cap, column, kcal);
      draft.add(this.#isDrink(index, lot) ? drinks : sorts, has, 1);
      this.#feed(index, place, column, kcal, lackG);
      this.#takes(index, place, lot, has, column, 1);
      return column;
    });
  }

  /** Opens pouches for what is eaten: what is eaten between two days comes from pouches that are open then. */
  open(lotRows: readonly number[]): void {
    const draft = this.#draft;
    const { costs, settings, extraDays, lots } = this.#model;
    for (const own of this.#sortsOf.values())
      if (own.size > 1)
        draft.row(-Infinity, 1, [
          ...[...own].map((column) => [column, 1] as const),
          [draft.column(EXTRA_SORT, Infinity), -1],
        ]);
    for (const [key, byDay] of this.#eaten) {
      const [group, index = -1] = key.split(' ').map(Number);
      const lot = lots[index];
      if (!lot) continue;
      const keeps = lot.keepsOpen ? settings.dryOpenDays : 1;
      const days = [...byDay.keys()].sort((a, b) => a - b);
      const openedOn = new Map(
        days.map((day) => {
          const at = extraDays.find((of) => of.group === group && of.day === day)?.index ?? -1;
          const points = extraPouchPoints(this.#model, index, day, this.#isDrink(at, index));
          const column = draft.column(points + costs.leftOverKcal * lot.kcal, lot.stock, true);
          draft.add(lotRows[index] ?? -1, column, 1);
          return [day, column] as const;
        }),
      );
      for (const from of days)
        for (const to of days.filter((day) => day >= from))
          draft.row(-Infinity, 0, [
            ...days.flatMap((day) => (day >= from && day <= to ? (byDay.get(day) ?? []) : [])),
            ...days
              .filter((day) => day > from - keeps && day <= to)
              .map((day) => [openedOn.get(day) ?? -1, -lot.units] as const),
          ]);
    }
  }
}
