import { cookGroupsOf } from '../model/meal-rules.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Reason } from '../model/reasons.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { ChosenMeal, OpenedLot } from '../model/trip.ts';
import { keepsOpen, kindOf, roleAt, unitsOf } from './lot-rules.ts';
import { exclusionTable, type Dish, type MealChoice, type MealTask } from './menu-problem.ts';
import type { AtTable } from './share-dish.ts';
import { byDish, shareMeal, type TablePouches } from './share-meal.ts';

/** A meal as the trip lists it, as far as the shelf can serve it. */
export type KeptMeal = MealChoice & {
  /** Nothing is added to it. */
  readonly whole: boolean;
  readonly locked: boolean;
  readonly byHand: boolean;
  readonly lockedPlates: readonly string[];
  /** Recipes of the dishes that are locked. */
  readonly lockedDishes: ReadonlySet<string>;
};

type ListedPortion = NonNullable<ChosenMeal['portions']>[number];
/** What one listed meal puts on the table of one group. @property portions left out: to be shared out anew */
type AtGroup = {
  readonly task: MealTask;
  readonly meal: ChosenMeal;
  readonly rows: TablePouches[];
  portions: readonly ListedPortion[] | undefined;
};

const QUARTER = 1 / 4;

/**
 * The meals that a trip lists, as far as the shelf can serve them: locked meals first, then day by day.
 *
 * A meal without portions, from a trip of before or written by hand, is shared out by the rules of menus; one of a cook group that there is no more goes to the groups that there are.
 *
 * @returns what stands, the stock without its pouches, and what has to be said: pouches that are wanted and not there are left out and named
 */
export function keepListedMeals(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  tasks: readonly MealTask[],
  stock: Stock,
): { kept: KeptMeal[]; rest: Stock; notices: Notice[] } {
  const notices: Notice[] = [];
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const free = new Map(stock.map((lot) => [lot.code, lot.pouches]));
  const mayEat = exclusionTable(trip.party);
  const inOrder = [...trip.menu].sort((a, b) => Number(b.locked) - Number(a.locked) || a.day - b.day);
  const tables = inOrder.flatMap((meal): AtGroup[] => {
    const day = demand[meal.day - 1];
    const at = { day: meal.day, meal: meal.meal };
    if (!day?.meals.includes(meal.meal)) {
      if (meal.opened.length > 0) notices.push(notice('meal-outside-trip', {}, at));
      return [];
    }
    const here = tasks.filter((task) => task.day === meal.day && task.meal === meal.meal);
    const { groups } = cookGroupsOf(trip);
    const isOfGroup = groups.some(({ name }) => name === meal.group);
    const taking = isOfGroup ? here.filter(({ group }) => group === meal.group) : here;
    if (taking.length === 0) {
      if (meal.opened.length > 0) notices.push(notice('meal-eaten-elsewhere', {}, at));
      return [];
    }
    let isWhole = true;
    const rows = meal.opened.flatMap((row): TablePouches[] => {
      const lot = lots.get(row.code);
      const place = { ...at, lot: row.code };
      if (!lot) {
        notices.push(notice('lot-gone', {}, place));
        isWhole = false;
        return [];
      }
      if (lot.bestBefore < day.date) {
        const { recipe, bestBefore } = lot;
        notices.push(notice('lot-past-date', { recipe, bestBefore }, place));
        isWhole = false;
        return [];
      }
      const there = free.get(row.code) ?? 0;
      if (there < row.pouches) {
        const wanted = row.pouches;
        const { recipe, withdrawn } = lot;
        notices.push(
          withdrawn === undefined
            ? notice('too-few-pouches', { recipe, wanted, free: there }, place)
            : notice('lot-withdrawn', { recipe, reason: withdrawn }, place),
        );
        isWhole = false;
      }
      const pouches = Math.min(there, row.pouches);
      if (pouches === 0) return [];
      free.set(row.code, there - pouches);
      return [tableRow(row, lot, pouches, meal)];
    });
    const [only] = taking;
    if (only && taking.length === 1)
      return [{ task: only, meal, rows, portions: isWhole ? meal.portions : undefined }];
    return dealtToGroups(taking, rows, demand, mayEat).map((of) => ({ ...of, meal, portions: undefined }));
  });
  const byTable = Map.groupBy(tables, ({ task }) => task);
  return {
    kept: [...byTable].map(([task, listed]) => keptMeal(trip, task, listed, demand, lots, mayEat, notices)),
    rest: stock.map((lot): PouchLot => ({ ...lot, pouches: free.get(lot.code) ?? 0 })),
    notices,
  };
}

function tableRow(row: OpenedLot, lot: PouchLot, pouches: number, meal: ChosenMeal): TablePouches {
  const role = row.role ?? roleAt(lot, meal.meal) ?? kindOf(lot);
  return { lot, pouches, role, style: row.style, reason: reasonOf(row, meal) };
}

function reasonOf(row: OpenedLot, meal: ChosenMeal): Reason {
  if (row.reason) return row.reason;
  if (row.why !== undefined) return { code: 'from an older menu' };
  return { code: meal.byHand ? 'by hand' : 'as listed' };
}

/** Pouches that were put on one table for several groups: each goes to the group that has least so far of what it is planned to eat, where somebody may eat it. */
function dealtToGroups(
  tasks: readonly MealTask[],
  rows: readonly TablePouches[],
  demand: readonly DayDemand[],
  mayEat: (lot: PouchLot, eater: string) => boolean,
): { task: MealTask; rows: TablePouches[] }[] {
  const tables = tasks.map((task) => ({
    task,
    rows: new Map<TablePouches, number>(),
    kcal: 0,
    plannedKcal: peopleOf(task, demand).reduce((sum, { plannedKcal }) => sum + plannedKcal, 0),
  }));
  for (const row of rows)
    for (let pouch = 0; pouch < row.pouches; pouch++) {
      const may = tables.filter(({ task }) => task.eaters.some((eater) => mayEat(row.lot, eater)));
      const [first, ...others] = may.length > 0 ? may : tables;
      if (!first) continue;
      const fullness = (table: typeof first) => table.kcal / Math.max(1, table.plannedKcal);
      const to = others.reduce((best, table) => (fullness(table) < fullness(best) ? table : best), first);
      to.rows.set(row, (to.rows.get(row) ?? 0) + 1);
      to.kcal += row.lot.servingsPerPouch * row.lot.energyKcal;
    }
  return tables.map(({ task, rows: own }) => ({
    task,
    rows: [...own].map(([row, pouches]) => ({ ...row, pouches })),
  }));
}

function peopleOf(
  task: MealTask,
  demand: readonly DayDemand[],
  party: ResolvedTrip['party'] = [],
): AtTable[] {
  const rows = demand.find(({ day }) => day === task.day)?.eaters ?? [];
  return task.eaters.map((name) => ({
    name,
    plannedKcal: rows.find(({ eater }) => eater === name)?.mealKcal[task.meal] ?? 0,
    portion: party.find((eater) => eater.name === name)?.portion,
  }));
}

function keptMeal(
  trip: ResolvedTrip,
  task: MealTask,
  listed: readonly AtGroup[],
  demand: readonly DayDemand[],
  lots: ReadonlyMap<string, PouchLot>,
  mayEat: (lot: PouchLot, eater: string) => boolean,
  notices: Notice[],
): KeptMeal {
  const people = peopleOf(task, demand, trip.party);
  const dishes = listed.flatMap(({ rows, portions }) =>
    portions
      ? asServed(task, people, rows, portions, lots, mayEat, notices)
      : shareMeal(task, people, rows, mayEat),
  );
  const lockedCodes = new Set(
    listed.flatMap(({ meal }) => meal.opened.filter(({ locked }) => locked).map(({ code }) => code)),
  );
  return {
    day: task.day,
    meal: task.meal,
    group: task.group,
    dishes,
    whole: listed.some(({ meal }) => !meal.toFill),
    locked: listed.some(({ meal }) => meal.locked),
    byHand: listed.some(({ meal }) => meal.byHand),
    lockedPlates: listed.flatMap(({ meal }) => meal.lockedPlates ?? []),
    lockedDishes: new Set([...lockedCodes].flatMap((code) => lots.get(code)?.recipe ?? [])),
  };
}

/**
 * The dishes of a meal with its listed portions; a dish without any is shared out anew, to those who have no main dish. The wall stands: what somebody must not eat is taken
 * off their plate.
 */
function asServed(
  task: MealTask,
  people: readonly AtTable[],
  rows: readonly TablePouches[],
  portions: readonly ListedPortion[],
  lots: ReadonlyMap<string, PouchLot>,
  mayEat: (lot: PouchLot, eater: string) => boolean,
  notices: Notice[],
): Dish[] {
  const dishes = byDish(rows);
  const dishOf = ({ code, style }: ListedPortion) =>
    dishes.find((own) => own.some((row) => row.lot.code === code && (style ?? row.style) === row.style)) ??
    dishes.find((own) => own.some((row) => row.lot.code === code));
  const taken = portions.flatMap((portion) => {
    const lot = lots.get(portion.code);
    if (!lot || !task.eaters.includes(portion.eater)) return [];
    if (mayEat(lot, portion.eater))
      return [{ ...portion, servings: unrounded(portion.servings, lot), lot, dish: dishOf(portion) }];
    notices.push(
      notice(
        'portion-not-for-eater',
        { recipe: lot.recipe },
        { day: task.day, meal: task.meal, eater: portion.eater, lot: lot.code },
      ),
    );
    return [];
  });
  const anew = dishes.filter((own) => !portions.some((portion) => dishOf(portion) === own));
  const served = dishes.flatMap((own): Dish[] => {
    const [first] = own;
    if (!first || anew.includes(own)) return [];
    const eaten = taken.filter(({ dish }) => dish === own);
    const eaters = new Set(eaten.map(({ eater }) => eater));
    return [
      {
        recipe: first.lot.recipe,
        role: first.role,
        style: first.style ?? eaten.find(({ style }) => style)?.style ?? styleSeen(own, eaters.size),
        opened: own.map(({ lot, pouches }) => ({ lot, pouches })),
        portions: fitted(task, own, eaten, notices),
        reason: first.reason,
      },
    ];
  });
  const hasMain = new Set(
    served.filter(({ role }) => role === 'main').flatMap((dish) => dish.portions.map(({ eater }) => eater)),
  );
  const hungry = people.filter(({ name }) => !hasMain.has(name));
  const sharedAnew = anew.flatMap((own) => {
    const may = hungry.filter(({ name }) => own.every(({ lot }) => mayEat(lot, name)));
    return shareMeal(task, own[0]?.role === 'main' && may.length > 0 ? may : people, own, mayEat);
  });
  const fromOpen = Map.groupBy(
    taken.filter(({ dish }) => dish === undefined),
    ({ lot }) => lot,
  );
  return [
    ...served,
    ...sharedAnew,
    ...[...fromOpen].map(([lot, eaten]): Dish => ({
      recipe: lot.recipe,
      role: eaten[0]?.role ?? roleAt(lot, task.meal) ?? kindOf(lot),
      style: eaten[0]?.style ?? 'own pouch',
      opened: [],
      portions: eaten.map(({ eater, servings }) => ({ eater, lot, servings })),
    })),
  ];
}

/** A plan has its amounts to a thousandth; a third of a pouch is one all the same. */
function unrounded(servings: number, lot: PouchLot): number {
  const unit = lot.servingsPerPouch / unitsOf(lot);
  const whole = Math.round(servings / unit) * unit;
  return Math.abs(whole - servings) < 0.001 ? whole : servings;
}

const styleSeen = (rows: readonly TablePouches[], eaters: number): Dish['style'] =>
  rows[0]?.role !== 'main' || rows.reduce((sum, { pouches }) => sum + pouches, 0) >= eaters
    ? 'own pouch'
    : 'shared pot';

/** Portions cut, a quarter at a time from the largest, to what the pouches hold. Food that keeps is cut where all meals are known. */
function fitted(
  { day, meal }: MealTask,
  rows: readonly TablePouches[],
  portions: readonly { readonly eater: string; readonly lot: PouchLot; readonly servings: number }[],
  notices: Notice[],
): Dish['portions'] {
  return rows.flatMap(({ lot, pouches }) => {
    const own = portions
      .filter((portion) => portion.lot === lot)
      .map(({ eater, servings }) => ({ eater, lot, servings }));
    const there = pouches * lot.servingsPerPouch;
    if (keepsOpen(lot)) return own;
    const cut = cutToFit(own, there);
    if (cut !== own) {
      const wanted = own.reduce((sum, { servings }) => sum + servings, 0);
      notices.push(
        notice(
          'portions-beyond-pouches',
          { recipe: lot.recipe, wanted, there },
          { day, meal, lot: lot.code },
        ),
      );
    }
    return cut;
  });
}

/** @returns the same portions where there is enough; else smaller ones that come to what there is. */
export function cutToFit<Part extends { readonly servings: number }>(
  portions: readonly Part[],
  thereServings: number,
): readonly Part[] {
  const sum = (of: readonly Part[]) => of.reduce((all, { servings }) => all + servings, 0);
  if (sum(portions) <= thereServings + 1e-6) return portions;
  let cut = [...portions];
  while (cut.length > 0 && sum(cut) > thereServings + 1e-6) {
    const largest = cut.reduce((most, part) => (part.servings > most.servings ? part : most));
    cut = cut.flatMap((part) => {
      if (part !== largest) return [part];
      const servings = Math.round((part.servings - QUARTER) / QUARTER) * QUARTER;
      return servings > 1e-6 ? [{ ...part, servings }] : [];
    });
  }
  return cut;
}
