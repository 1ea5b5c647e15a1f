import type { MenuModel, OpenedAt } from './menu-model.ts';

/** A variable of an integer program, from 0 to `upper`. */
export type Column = {
  readonly name: string;
  readonly cost: number;
  readonly upper: number;
  readonly whole: boolean;
};
/** A row: lower <= sum of coefficient times column <= upper. */
export type Row = {
  readonly name: string;
  readonly terms: readonly (readonly [column: number, coefficient: number])[];
  readonly lower: number;
  readonly upper: number;
};
/** A mixed-integer program to be minimised; every column is at least 0. */
export type MenuProgram = {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Added to the objective. */
  readonly constant: number;
  /** Columns of the pouches opened: for each lot that may be opened at a meal. */
  readonly opened: readonly { readonly column: number; readonly slot: number; readonly lot: number }[];
  /** Columns by `recipe meal`: whether it is on the table; and by `meal group`: kcal that the meal is under its floor. */
  readonly onTable: ReadonlyMap<string, number>;
  readonly small: ReadonlyMap<string, number>;
};

/**
 * The menu model as a mixed-integer linear program whose objective is, for the same menu, the points of `scoreMenu`.
 *
 * Columns: x lot meal, pouches opened; u recipe meal, whether on the table; v recipe day, likewise for the day; y lot meal group, kcal eaten; left lot meal, kcal left over;
 * miss group day and small group meal, kcal missing; above group day, kcal; again recipe day, a repeat; lack day, g of protein.
 */
export function menuProgram(model: MenuModel): MenuProgram {
  const { menuCosts, maxRecipesPerMeal, repeatAfterDays } = model.settings;
  const columns: Column[] = [];
  const rows: Row[] = [];
  const opened: MenuProgram['opened'][number][] = [];
  let constant = 0;
  const column = (name: string, cost: number, upper: number, whole = false): number =>
    columns.push({ name, cost, upper, whole }) - 1;
  const row = (name: string, terms: Row['terms'], lower: number, upper: number) =>
    rows.push({ name, terms, lower, upper });

  const xOf = new Map<string, number>();
  for (const lot of model.lots)
    for (const slot of model.slots) {
      const most = lot.most[slot.index] ?? 0;
      if (most === 0) continue;
      const x = column(`x_${lot.index}_${slot.index}`, lot.pouchCost[slot.index] ?? 0, most, true);
      xOf.set(`${lot.index} ${slot.index}`, x);
      opened.push({ column: x, slot: slot.index, lot: lot.index });
    }
  for (const lot of model.lots) {
    const own = opened.filter((at) => at.lot === lot.index);
    if (own.reduce((sum, at) => sum + (lot.most[at.slot] ?? 0), 0) > lot.stock)
      row(
        `stock_${lot.index}`,
        own.map((at) => [at.column, 1] as const),
        0,
        lot.stock,
      );
  }

  const uOf = new Map<string, number>();
  for (const slot of model.slots) {
    const here = opened.filter((at) => at.slot === slot.index);
    const byRecipe = Map.groupBy(here, (at) => model.lots[at.lot]?.recipe ?? -1);
    for (const [recipe, lots] of byRecipe) {
      const u = column(`u_${recipe}_${slot.index}`, 0, 1, true);
      uOf.set(`${recipe} ${slot.index}`, u);
      for (const { column: x, lot } of lots)
        row(
          `table_${lot}_${slot.index}`,
          [
            [x, 1],
            [u, -(columns[x]?.upper ?? 0)],
          ],
          -Infinity,
          0,
        );
    }
    if (byRecipe.size > maxRecipesPerMeal)
      row(
        `recipes_${slot.index}`,
        [...byRecipe.keys()].map((recipe) => [uOf.get(`${recipe} ${slot.index}`) ?? -1, 1] as const),
        0,
        maxRecipesPerMeal,
      );
  }
  for (const { slot, lot, pouches } of model.kept) {
    constant += (model.lots[lot]?.pouchCost[slot] ?? 0) * pouches;
    const recipe = model.lots[lot]?.recipe ?? -1;
    if (uOf.has(`${recipe} ${slot}`)) continue;
    const u = column(`u_${recipe}_${slot}`, 0, 1, true);
    uOf.set(`${recipe} ${slot}`, u);
    row(`kept_${recipe}_${slot}`, [[u, 1]], 1, 1);
  }

  if (repeatAfterDays > 0)
    model.recipes.forEach((_, recipe) => {
      const onDay = model.days.map((day) => {
        const uses = day.slots.flatMap((slot) => {
          const u = uOf.get(`${recipe} ${slot}`);
          return u === undefined ? [] : [u];
        });
        if (uses.length <= 1) return uses[0];
        const v = column(`v_${recipe}_${day.index}`, -menuCosts.repeat, 1);
        for (const u of uses) {
          const use = columns[u];
          if (use) columns[u] = { ...use, cost: use.cost + menuCosts.repeat };
          row(
            `day_${recipe}_${u}`,
            [
              [v, 1],
              [u, -1],
            ],
            0,
            Infinity,
          );
        }
        row(`day_${recipe}_${day.index}`, [[v, 1], ...uses.map((u) => [u, -1] as const)], -Infinity, 0);
        return v;
      });
      onDay.forEach((now, day) => {
        if (now === undefined) return;
        const before = onDay.slice(Math.max(0, day - repeatAfterDays), day).filter((v) => v !== undefined);
        if (before.length === 0) return;
        const again = column(`again_${recipe}_${day}`, menuCosts.repeat, 1);
        for (const v of before)
          row(
            `again_${recipe}_${day}_${v}`,
            [
              [again, 1],
              [now, -1],
              [v, -1],
            ],
            -1,
            Infinity,
          );
      });
    });

  const foods = [
    ...opened.map(({ column: x, slot, lot }) => ({ slot, lot, x, kcal: 0 })),
    ...model.kept.map(({ slot, lot, pouches }) => ({
      slot,
      lot,
      x: undefined,
      kcal: pouches * (model.lots[lot]?.kcal ?? 0),
    })),
  ];
  const smallOf = new Map<string, number>();
  const eatenAt = model.slots.map(() => model.groups.map((): number[] => []));
  foods.forEach(({ slot, lot, x, kcal }) => {
    const of = model.lots[lot];
    const name = `${lot}_${slot}`;
    const eaten = model.groups.flatMap((_, group) => {
      if (!of?.feeds[group]) return [];
      const y = column(`y_${name}_${group}`, 0, model.slots[slot]?.mostKcal[group] ?? 0);
      eatenAt[slot]?.[group]?.push(y);
      return [y];
    });
    const mostKcal = x === undefined ? kcal : (columns[x]?.upper ?? 0) * (of?.kcal ?? 0);
    const left = column(`left_${name}`, menuCosts.leftOverKcal, mostKcal);
    row(
      `food_${name}`,
      [
        ...(x === undefined ? [] : [[x, -(of?.kcal ?? 0)] as const]),
        ...eaten.map((y) => [y, 1] as const),
        [left, 1],
      ],
      kcal,
      kcal,
    );
  });
  for (const slot of model.slots)
    model.groups.forEach((_, group) => {
      const terms = (eatenAt[slot.index]?.[group] ?? []).map((y) => [y, 1] as const);
      const floor = slot.floorKcal[group] ?? 0;
      const small = column(`small_${group}_${slot.index}`, menuCosts.smallMealKcal, floor);
      smallOf.set(`${slot.index} ${group}`, small);
      row(`floor_${group}_${slot.index}`, [...terms, [small, 1]], floor, Infinity);
      if (terms.length > 0) row(`sitting_${group}_${slot.index}`, terms, 0, slot.mostKcal[group] ?? 0);
    });
  for (const day of model.days) {
    model.groups.forEach((_, group) => {
      const terms = day.slots.flatMap((slot) => (eatenAt[slot]?.[group] ?? []).map((y) => [y, 1] as const));
      const target = day.targetKcal[group] ?? 0;
      const miss = column(`miss_${group}_${day.index}`, menuCosts.missingKcal, target);
      const sittings = day.slots.reduce((sum, slot) => sum + (model.slots[slot]?.mostKcal[group] ?? 0), 0);
      const above = column(`above_${group}_${day.index}`, menuCosts.aboveCeilingKcal, sittings);
      row(`need_${group}_${day.index}`, [...terms, [miss, 1]], target, Infinity);
      if (terms.length > 0)
        row(
          `ceiling_${group}_${day.index}`,
          [...terms, [above, -1]],
          -Infinity,
          day.ceilingKcal[group] ?? target,
        );
    });
    const keptG = model.kept
      .filter(({ slot }) => day.slots.includes(slot))
      .reduce((sum, { lot, pouches }) => sum + (model.lots[lot]?.proteinLackG ?? 0) * pouches, 0);
    const terms = foods.flatMap(({ slot, lot, x }) => {
      const lackG = model.lots[lot]?.proteinLackG ?? 0;
      return x === undefined || lackG === 0 || !day.slots.includes(slot) ? [] : [[x, -lackG] as const];
    });
    const mostG = terms.reduce(
      (sum, [x, lackG]) => sum + Math.max(0, -lackG) * (columns[x]?.upper ?? 0),
      Math.max(0, keptG),
    );
    const lack = column(`lack_${day.index}`, menuCosts.proteinG, mostG);
    row(`protein_${day.index}`, [[lack, 1], ...terms], keptG, Infinity);
  }
  return { columns, rows, constant, opened, onTable: uOf, small: smallOf };
}

/**
 * The same program with rows that no menu breaks but fractions of pouches do, so that its linear relaxation lies nearer to the best menu: a recipe is on the table only with a pouch,
 * and a meal reaches a group's floor only by recipes on the table, each for no more than the floor.
 */
export function tightened(program: MenuProgram, model: MenuModel): MenuProgram {
  const rows: Row[] = [...program.rows];
  const openedAt = Map.groupBy(program.opened, ({ slot }) => slot);
  for (const slot of model.slots.filter(({ open }) => open)) {
    const byRecipe = Map.groupBy(openedAt.get(slot.index) ?? [], ({ lot }) => model.lots[lot]?.recipe ?? -1);
    const reach = model.groups.map((): [number, number][] => []);
    for (const [recipe, lots] of byRecipe) {
      const u = program.onTable.get(`${recipe} ${slot.index}`);
      if (u === undefined) continue;
      rows.push({
        name: `some_${u}`,
        terms: [...lots.map(({ column }) => [column, 1] as const), [u, -1]],
        lower: 0,
        upper: Infinity,
      });
      model.groups.forEach((_, group) => {
        const kcal = lots.reduce((sum, { lot }) => {
          const of = model.lots[lot];
          return of?.feeds[group] ? sum + (of.most[slot.index] ?? 0) * of.kcal : sum;
        }, 0);
        if (kcal > 0) reach[group]?.push([u, Math.min(kcal, slot.floorKcal[group] ?? 0)]);
      });
    }
    reach.forEach((terms, group) => {
      const small = program.small.get(`${slot.index} ${group}`);
      if (small === undefined) return;
      rows.push({
        name: `reach_${group}_${slot.index}`,
        terms: [...terms, [small, 1]],
        lower: slot.floorKcal[group] ?? 0,
        upper: Infinity,
      });
    });
  }
  return { ...program, rows };
}

/** The pouches that a solution of the program opens. */
export function openedBy(program: MenuProgram, values: ArrayLike<number>): OpenedAt[] {
  return program.opened.flatMap(({ column, slot, lot }) => {
    const pouches = Math.round(values[column] ?? 0);
    return pouches > 0 ? [{ slot, lot, pouches }] : [];
  });
}
