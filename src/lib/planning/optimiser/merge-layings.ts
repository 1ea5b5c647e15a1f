import {
  DAY_FREE_FROM,
  DAY_FREE_TO,
  DAY_MILD_FROM,
  daySlopes,
  EXTRA_SORT,
  EXTRA_UNIT,
} from '../menu/menu-costs.ts';
import type { Laying } from '../menu/lay-meal.ts';
import { MOST_DRINKS, MOST_UNITS, type ExtraDay, type MenuModel } from '../menu/menu-model.ts';
import { extraPouchPoints, MenuState } from '../menu/menu-state.ts';
import type { OpenProgram, ProgramColumn, ProgramRow } from './linear-program.ts';

/** Extras that take part for each group, those worth most first. */
const MOST_EXTRAS = 7;

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

/**
 * The best menu made of layings that were found, exactly, with extras in whole pieces from whole pouches: a program small enough to be solved.
 *
 * @param layings to choose from; each slot has one at least
 * @param worth of a lot as an extra, points: what its energy is worth less what it costs
 * @param nodes of the tree to look at
 * @returns undefined where nothing was found in so many nodes
 */
export function mergeLayings(
  model: MenuModel,
  layings: readonly Laying[],
  worth: (lot: number) => number,
  open: OpenProgram,
  nodes: number,
): MenuState | undefined {
  const draft = new Draft();
  const days = model.days.length;
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

  const units: { extraDay: number; lot: number; place: number; column: number }[] = [];
  model.groups.forEach((_, group) => {
    const own = model.extraDays.filter((extraDay) => extraDay.group === group);
    const lots = [...new Set(own.flatMap((extraDay) => extraDay.lots))]
      .sort((a, b) => worth(b) - worth(a) || a - b)
      .slice(0, MOST_EXTRAS);
    units.push(...addExtras(model, draft, own, lots, lotRows, dayRows, lackRows, days));
  });

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
    const { values } = program.solveWhole(
      draft.columns.flatMap(({ whole }, at) => (whole ? [at] : [])),
      nodes,
    );
    if (!values) return undefined;
    const state = new MenuState(model);
    layings.forEach((laying, at) => {
      if ((values[columnOf[at] ?? -1] ?? 0) > 0.5 && !state.layings[laying.slot]) state.lay(laying);
    });
    for (const { extraDay, lot, place, column } of units) {
      const count = Math.round(values[column] ?? 0);
      if (count > 0) state.addUnits(extraDay, lot, [place], count);
    }
    return state;
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

function addExtras(
  model: MenuModel,
  draft: Draft,
  extraDays: readonly ExtraDay[],
  lots: readonly number[],
  lotRows: readonly number[],
  dayRows: readonly (readonly number[])[],
  lackRows: readonly (readonly number[])[],
  days: number,
) {
  const units: { extraDay: number; lot: number; place: number; column: number }[] = [];
  const capRows = new Map<string, number>();
  const sortRows = new Map<string, number>();
  for (const extraDay of extraDays) {
    extraDay.people.forEach((_, place) => {
      capRows.set(`${extraDay.index} ${place}`, draft.row(-Infinity, extraDay.mostKcal[place] ?? 0));
      sortRows.set(`${extraDay.index} ${place} false`, draft.row(-Infinity, extraDay.mostSorts[place] ?? 0));
      sortRows.set(`${extraDay.index} ${place} true`, draft.row(-Infinity, MOST_DRINKS));
    });
    for (const drink of [false, true]) {
      const row = draft.row(-Infinity, 1);
      draft.add(row, draft.column(EXTRA_SORT, Infinity), -1);
      sortRows.set(`${extraDay.index} ${drink}`, row);
    }
  }
  for (const index of lots) {
    const lot = model.lots[index];
    if (!lot) continue;
    const unitKcal = lot.kcal / lot.units;
    const leftPoints = model.costs.leftOverKcal * unitKcal;
    const keeps = lot.keepsOpen ? model.settings.dryOpenDays : 1;
    const unitsOn: number[][] = Array.from({ length: days }, () => []);
    const openedOn: (number | undefined)[] = [];
    for (const extraDay of extraDays) {
      const at = extraDay.lots.indexOf(index);
      if (at < 0) continue;
      const isDrink = extraDay.isDrink[at] ?? false;
      const opened = draft.column(
        extraPouchPoints(model, index, extraDay.day, isDrink) + leftPoints * lot.units,
        lot.stock,
        true,
      );
      openedOn[extraDay.day] = opened;
      draft.add(lotRows[index] ?? -1, opened, 1);
      const sort = draft.column(0, 1, true);
      draft.add(sortRows.get(`${extraDay.index} ${isDrink}`) ?? -1, sort, 1);
      extraDay.people.forEach((person, place) => {
        if (!lot.feeds[person]) return;
        const column = draft.column(EXTRA_UNIT - leftPoints, MOST_UNITS, true);
        const own = draft.column(0, 1, true);
        draft.row(-Infinity, 0, [
          [column, 1],
          [own, -MOST_UNITS],
        ]);
        draft.row(-Infinity, 0, [
          [own, 1],
          [sort, -1],
        ]);
        draft.add(sortRows.get(`${extraDay.index} ${place} ${isDrink}`) ?? -1, own, 1);
        draft.add(capRows.get(`${extraDay.index} ${place}`) ?? -1, column, unitKcal);
        draft.add(dayRows[person]?.[extraDay.day] ?? -1, column, unitKcal);
        draft.add(lackRows[person]?.[extraDay.day] ?? -1, column, (lot.servings * lot.lackG) / lot.units);
        unitsOn[extraDay.day]?.push(column);
        units.push({ extraDay: extraDay.index, lot: index, place, column });
      });
    }
    // what is eaten between two days comes from pouches that are open then
    for (let from = 0; from < days; from++)
      for (let to = from; to < days; to++) {
        const eaten = unitsOn.slice(from, to + 1).flat();
        if (eaten.length === 0 || (unitsOn[from] ?? []).length === 0 || (unitsOn[to] ?? []).length === 0)
          continue;
        const opened = openedOn
          .slice(Math.max(0, from - keeps + 1), to + 1)
          .filter((column) => column !== undefined);
        draft.row(-Infinity, 0, [
          ...eaten.map((column) => [column, 1] as const),
          ...opened.map((column) => [column, -lot.units] as const),
        ]);
      }
  }
  return units;
}
