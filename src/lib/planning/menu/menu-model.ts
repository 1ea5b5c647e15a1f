import type { PouchLot } from '../model/pouch-lot.ts';
import { pouchEnergyKcal, pouchGrossG } from '../model/pouch-totals.ts';
import type { MenuCosts, Settings } from '../model/settings.ts';
import type { ResolvedEater } from '../model/resolve-trip.ts';
import { MAIN_MEALS, MEAL_KINDS, type MealKind, type PortionSize } from '../model/words.ts';
import { byExpiry } from './by-expiry.ts';
import { mayEat } from './exclusions.ts';
import { fillingsOf, type Filling } from './fillings.ts';
import { canBeOwnPouch, keepsOpen, kindOf, roleAt, suitsStop, unitsOf } from './lot-rules.ts';
import { LIKED, SITTING_SHARE } from './menu-costs.ts';
import type { MealBurden, MealTask, MenuProblem } from './menu-problem.ts';
import { tasteOf } from './tastes.ts';

/** Shelf life beyond this counts no further: a pouch good for two more years is as young as one good for five (rule of thumb). */
const MOST_SHELF_LIFE_Y = 2;
const MS_PER_YEAR = 365.25 * 24 * 3600 * 1000;
/** What a stated size takes of a pot, beside the mean of the group (rule of thumb). */
export const SIZE_FACTOR: Readonly<Record<PortionSize, number>> = {
  child: 0.6,
  small: 0.8,
  usual: 1,
  large: 1.25,
};
/** Least portion from a pot, quarters of a serving. */
export const LEAST_QUARTERS = 2;
/** Units of one extra that a person eats on a day at most: pieces, or half servings. */
export const MOST_UNITS = 4;
/** Sorts of extras that a person eats on a day at most, and of drinks; more only at meals made of extras. */
export const MOST_EXTRA_SORTS = 3;
export const MOST_DRINKS = 1;
/** Extras of a day over what is planned for snacks and drinks. */
const EXTRAS_SHARE = 1.75;

export type ModelLot = {
  readonly index: number;
  readonly lot: PouchLot;
  /** Index of its recipe. */
  readonly dish: number;
  /** Pouches free for the open meals. */
  readonly stock: number;
  /** Energy of a pouch, kcal, and of a serving. */
  readonly kcal: number;
  readonly servingKcal: number;
  readonly servings: number;
  /** By person: whether they may be served it. */
  readonly feeds: readonly boolean[];
  /** First and last day on which it can be eaten, indices of days. */
  readonly firstDay: number;
  readonly lastDay: number;
  /** One pouch, full and empty, g; and its water. */
  readonly grossG: number;
  readonly tareG: number;
  readonly waterMl: number;
  readonly shelfLifeY: number;
  /** Protein that a serving lacks to the floor of its own energy, g; negative where it has more; 0 where unknown. */
  readonly lackG: number;
  /** Pieces or half servings in a pouch. */
  readonly units: number;
  readonly keepsOpen: boolean;
  readonly isOwnPouch: boolean;
};

/** A dish that may be put on the table of a slot. */
export type SlotOption = {
  readonly dish: number;
  /** Indices of the lots, the oldest first. */
  readonly lots: readonly number[];
  readonly fillings: readonly Filling[];
  /** By place at the table: points of taste for eating it; Infinity where they may not or will not. */
  readonly taste: readonly number[];
};

/** A main meal of one cook group that is to be chosen, for those of it who are still to be fed. */
export type ModelSlot = {
  readonly index: number;
  readonly day: number;
  readonly meal: MealKind;
  readonly group: number;
  readonly task: MealTask;
  /** Order in time over the whole trip, the same for all groups. */
  readonly at: number;
  /** Indices of the people at the table. */
  readonly people: readonly number[];
  /** By place at the table: what is planned for the meal, kcal, and the share of a pot. */
  readonly plannedKcal: readonly number[];
  readonly weight: readonly number[];
  readonly options: readonly SlotOption[];
};

/** Extras and drinks of one cook group on one day. */
export type ExtraDay = {
  readonly index: number;
  readonly day: number;
  readonly group: number;
  /** The meals at which they are eaten. */
  readonly meals: readonly MealTask[];
  readonly people: readonly number[];
  /** By place, then by meal: what is planned, kcal. */
  readonly plannedKcal: readonly Readonly<Partial<Record<MealKind, number>>>[];
  /** By place: most kcal of extras on this day. */
  readonly mostKcal: readonly number[];
  /** By place: most sorts of extras. */
  readonly mostSorts: readonly number[];
  /** Lots that may be eaten, oldest first. */
  readonly lots: readonly number[];
  /** Lots that are eaten as extras at meals that cannot be served otherwise, and drinks. */
  readonly isDrink: readonly boolean[];
};

/** Somebody eats a dish at a time: for repeats. */
export type Eaten = { readonly person: number; readonly dish: number; readonly at: number };

/**
 * The menu as a problem of numbers. Data only: it is read by the scoring, the search, the bound and the writer of the model file, none of which needs another.
 */
export type MenuModel = {
  readonly people: readonly string[];
  readonly groups: readonly { readonly name: string; readonly people: readonly number[] }[];
  /** Numbers of the days, from 1. */
  readonly days: readonly number[];
  /** By person and day, kcal; 0 where nothing is eaten. */
  readonly needKcal: readonly (readonly number[])[];
  /** By day, then by meal: what it takes to carry and cook; undefined where there is no such meal. */
  readonly burdens: readonly (readonly (MealBurden | undefined)[])[];
  /** Hours walked on the whole trip. */
  readonly walkedH: number;
  readonly dishes: readonly string[];
  readonly lots: readonly ModelLot[];
  readonly slots: readonly ModelSlot[];
  readonly extraDays: readonly ExtraDay[];
  /** What kept dishes bring, by person and day. */
  readonly keptKcal: readonly (readonly number[])[];
  readonly keptLackG: readonly (readonly number[])[];
  readonly keptEaten: readonly Eaten[];
  readonly settings: Settings;
  readonly costs: MenuCosts;
};

export const atOf = (day: number, meal: MealKind): number =>
  day * MEAL_KINDS.length + MEAL_KINDS.indexOf(meal);

/** Builds the model of a menu problem. Lots without energy, without a free pouch, or for no meal of the trip are left out. */
export function buildMenuModel(problem: MenuProblem): MenuModel {
  const { demand, party, settings } = problem;
  const costs = settings.menuCosts;
  const people = party.map(({ name }) => name);
  const personOf = new Map(people.map((name, index) => [name, index]));
  const names = [...new Set(problem.tasks.map(({ group }) => group))];
  const groups = names.map((name) => ({
    name,
    people: [
      ...new Set(problem.tasks.filter(({ group }) => group === name).flatMap(({ eaters }) => eaters)),
    ].map((eater) => personOf.get(eater) ?? -1),
  }));
  const needKcal = people.map((name) =>
    demand.map((day) => day.eaters.find(({ eater }) => eater === name)?.targetKcal ?? 0),
  );
  const kept = keptFigures(problem, personOf);

  const dishes: string[] = [];
  const dishIndex = new Map<string, number>();
  const dishOf = (recipe: string) => {
    const known = dishIndex.get(recipe) ?? dishes.push(recipe) - 1;
    dishIndex.set(recipe, known);
    return known;
  };
  const lots = [...problem.stock]
    .filter((lot) => lot.pouches > 0 && pouchEnergyKcal(lot) > 0)
    .sort(byExpiry)
    .map((lot, index) => modelLot(lot, index, dishOf(lot.recipe), problem))
    .filter(({ firstDay, lastDay }) => firstDay <= lastDay)
    .map((lot, index) => ({ ...lot, index }));

  const mealKcal = demand.map(
    ({ eaters }) => new Map(eaters.map((row) => [personOf.get(row.eater) ?? -1, row.mealKcal])),
  );
  const plannedOf = (day: number, person: number, meal: MealKind) => mealKcal[day]?.get(person)?.[meal] ?? 0;
  const slots: ModelSlot[] = [];
  const extraDays: ExtraDay[] = [];
  const fillings = new Map<string, readonly Filling[]>();
  const suits = new Map<string, readonly ModelLot[]>();
  demand.forEach((day, dayIndex) => {
    names.forEach((name, group) => {
      const tasks = problem.tasks.filter((task) => task.day === day.day && task.group === name);
      const extraMeals: MealTask[] = [];
      for (const task of tasks) {
        const stands = problem.kept.filter(
          (meal) => meal.day === task.day && meal.meal === task.meal && meal.group === name,
        );
        if (stands.some(({ whole }) => whole)) continue;
        const fed = new Set(
          stands.flatMap(({ dishes }) =>
            dishes
              .filter(({ role }) => role === 'main')
              .flatMap(({ portions }) => portions.map(({ eater }) => eater)),
          ),
        );
        const atTable = task.eaters
          .filter((eater) => !fed.has(eater))
          .map((eater) => personOf.get(eater) ?? -1)
          .filter((person) => plannedOf(dayIndex, person, task.meal) > 0);
        if (atTable.length === 0) continue;
        if (!(MAIN_MEALS as readonly MealKind[]).includes(task.meal)) {
          extraMeals.push(task);
          continue;
        }
        const options =
          task.extras || task.stop === 'no stop'
            ? []
            : optionsOf(task, dayIndex, atTable, lots, party, plannedOf, suits, fillings, problem);
        const isExtras =
          task.extras || task.stop === 'no stop' || (options.length === 0 && hasExtras(task, lots));
        if (isExtras) {
          extraMeals.push(task);
          continue;
        }
        const plannedKcal = atTable.map((person) => plannedOf(dayIndex, person, task.meal));
        slots.push({
          index: slots.length,
          day: dayIndex,
          meal: task.meal,
          group,
          task,
          at: atOf(dayIndex, task.meal),
          people: atTable,
          plannedKcal,
          weight: weightsOf(atTable, plannedKcal, party),
          options,
        });
      }
      const extraDay = extrasOf(extraMeals, dayIndex, group, lots, party, personOf, plannedOf);
      if (extraDay) extraDays.push({ ...extraDay, index: extraDays.length });
    });
  });
  return {
    people,
    groups,
    days: demand.map(({ day }) => day),
    needKcal,
    burdens: burdensByDay(problem),
    walkedH: Math.max(0, ...problem.burdens.map(({ carriedH }) => carriedH)),
    dishes,
    lots,
    slots,
    extraDays,
    ...kept(dishOf),
    settings,
    costs,
  };
}

function keptFigures({ kept, demand, party, settings }: MenuProblem, personOf: ReadonlyMap<string, number>) {
  const keptKcal = party.map(() => demand.map(() => 0));
  const keptLackG = party.map(() => demand.map(() => 0));
  return (dishOf: (recipe: string) => number) => {
    const keptEaten: Eaten[] = [];
    for (const meal of kept) {
      const day = demand.findIndex((other) => other.day === meal.day);
      for (const dish of meal.dishes) {
        const eaters = new Set<number>();
        for (const { eater, lot, servings } of dish.portions) {
          const person = personOf.get(eater) ?? -1;
          const kcal = keptKcal[person];
          const lack = keptLackG[person];
          if (!kcal || !lack || day < 0) continue;
          kcal[day] = (kcal[day] ?? 0) + servings * lot.energyKcal;
          lack[day] = (lack[day] ?? 0) + servings * lackOf(lot, settings);
          eaters.add(person);
        }
        if (dish.role === 'main')
          for (const person of eaters)
            keptEaten.push({ person, dish: dishOf(dish.recipe), at: atOf(day, meal.meal) });
      }
    }
    return { keptKcal, keptLackG, keptEaten };
  };
}

const lackOf = (lot: PouchLot, settings: Settings): number =>
  lot.proteinG === undefined ? 0 : (lot.energyKcal / 1000) * settings.proteinFloorG - lot.proteinG;

function modelLot(lot: PouchLot, index: number, dish: number, problem: MenuProblem): ModelLot {
  const { demand, party, settings } = problem;
  const dates = demand.map(({ date }) => date);
  const window = problem.windows[lot.code];
  const dayIndex = (day: number) => demand.findIndex((other) => other.day === day);
  const lastInDate = dates.filter((date) => date <= lot.bestBefore).length - 1;
  const startMs = Date.parse(dates[0] ?? '');
  const shelfLifeY = Math.min(
    MOST_SHELF_LIFE_Y,
    Math.max(0, (Date.parse(lot.bestBefore) - startMs) / MS_PER_YEAR),
  );
  return {
    index,
    lot,
    dish,
    stock: lot.pouches,
    kcal: pouchEnergyKcal(lot),
    servingKcal: lot.energyKcal,
    servings: lot.servingsPerPouch,
    feeds: party.map((eater) => mayEat(lot, eater) && tasteOf(lot.recipe, eater) !== 'never'),
    firstDay: window ? (dayIndex(window.firstDay) < 0 ? demand.length : dayIndex(window.firstDay)) : 0,
    lastDay: window ? Math.min(lastInDate, dayIndex(window.lastDay)) : lastInDate,
    grossG: pouchGrossG(lot),
    tareG: lot.tareG,
    waterMl: lot.waterMl * lot.servingsPerPouch,
    shelfLifeY,
    lackG: lackOf(lot, settings),
    units: unitsOf(lot),
    keepsOpen: keepsOpen(lot),
    isOwnPouch: canBeOwnPouch(lot),
  };
}

function burdensByDay({ demand, burdens }: MenuProblem): (MealBurden | undefined)[][] {
  const known = new Map(burdens.map((burden) => [`${burden.day} ${burden.meal}`, burden]));
  return demand.map(({ day }) => MEAL_KINDS.map((meal) => known.get(`${day} ${meal}`)));
}

/**
 * Points of opening one pouch at a meal: its weight over the hours walked with it, its empty packaging over the hours after, its water over the hours since the last
 * source, the fuel for its water without the pot's own heat, and its age.
 *
 * @param meal index in `MEAL_KINDS`
 */
export function pouchPoints(model: MenuModel, index: number, day: number, meal: number): number {
  const lot = model.lots[index];
  const burden = model.burdens[day]?.[meal];
  if (!lot || !burden) return 0;
  const { costs } = model;
  const carriedKgH =
    (lot.grossG * burden.carriedH +
      lot.tareG * (model.walkedH - burden.carriedH) +
      lot.waterMl * burden.waterCarriedH) /
    1000;
  return (
    costs.carriedKgH * carriedKgH +
    costs.fuelG * lot.waterMl * burden.fuelGPerMl[lot.lot.waterKind] +
    costs.shelfLifeYear * lot.shelfLifeY
  );
}

function weightsOf(
  people: readonly number[],
  plannedKcal: readonly number[],
  party: readonly ResolvedEater[],
): number[] {
  const mean = plannedKcal.reduce((sum, kcal) => sum + kcal, 0) / plannedKcal.length;
  return people.map((person, place) => {
    const size = party[person]?.portion;
    return size ? mean * SIZE_FACTOR[size] : (plannedKcal[place] ?? mean);
  });
}

/** Dishes looked at for one meal at most, those whose oldest lot expires first. */
const MOST_OPTIONS = 160;
const inDate = (lot: ModelLot, day: number) => lot.firstDay <= day && day <= lot.lastDay;

function optionsOf(
  task: MealTask,
  day: number,
  people: readonly number[],
  lots: readonly ModelLot[],
  party: readonly ResolvedEater[],
  plannedOf: (day: number, person: number, meal: MealKind) => number,
  suits: Map<string, readonly ModelLot[]>,
  known: Map<string, readonly Filling[]>,
  { settings }: MenuProblem,
): SlotOption[] {
  const key = `${task.meal} ${task.stop} ${task.airC} ${people.join()}`;
  const always =
    suits.get(key) ??
    lots.filter(
      (lot) =>
        roleAt(lot.lot, task.meal) === 'main' &&
        suitsStop(lot.lot, task.stop, task.airC) &&
        people.some((person) => lot.feeds[person]),
    );
  suits.set(key, always);
  const suiting = always.filter((lot) => inDate(lot, day));
  const fixed = task.dish === undefined ? [] : suiting.filter(({ lot }) => lot.recipe === task.dish);
  const byDish = Map.groupBy(fixed.length > 0 ? fixed : suiting, ({ dish }) => dish);
  return [...byDish].slice(0, MOST_OPTIONS).map(([dish, own]) => {
    const mostKcal = people.reduce(
      (sum, person) =>
        sum +
        (own.some(({ feeds }) => feeds[person]) ? SITTING_SHARE * plannedOf(day, person, task.meal) : 0),
      0,
    );
    const key = `${own.map(({ index }) => index).join()} ${Math.round(mostKcal)}`;
    const fillings = known.get(key) ?? fillingsOf(own, mostKcal);
    known.set(key, fillings);
    return {
      dish,
      lots: own.map(({ index }) => index),
      fillings,
      taste: people.map((person) => {
        const eater = party[person];
        if (!eater || !own.some(({ feeds }) => feeds[person])) return Infinity;
        const taste = tasteOf(own[0]?.lot.recipe ?? '', eater);
        if (taste === 'rather not') return settings.menuCosts.disliked;
        return taste === 'gladly' ? -LIKED : 0;
      }),
    };
  });
}

/** Whether the shelf has extras for a main meal that has no main dish. */
const hasExtras = (task: MealTask, lots: readonly ModelLot[]): boolean =>
  lots.some(({ lot }) => kindOf(lot) === 'extra' && lot.mealKinds.includes(task.meal));

const isMain = ({ meal }: MealTask) => (MAIN_MEALS as readonly MealKind[]).includes(meal);

/** Whether a lot can be an extra or a drink at a meal; at a meal made of extras, those that suit snacks do as well. */
export function isExtraAt(lot: PouchLot, task: MealTask): boolean {
  const role = roleAt(lot, task.meal);
  const isExtra = role === 'extra' || (isMain(task) && roleAt(lot, 'snack') === 'extra');
  // raw food is cooked in a pot, for everyone
  return (isExtra || role === 'drink') && !lot.cookAfter && suitsStop(lot, task.stop, task.airC);
}

function extrasOf(
  meals: readonly MealTask[],
  day: number,
  group: number,
  lots: readonly ModelLot[],
  party: readonly ResolvedEater[],
  personOf: ReadonlyMap<string, number>,
  plannedOf: (day: number, person: number, meal: MealKind) => number,
): Omit<ExtraDay, 'index'> | undefined {
  if (meals.length === 0) return undefined;
  const people = [...new Set(meals.flatMap(({ eaters }) => eaters))].map((name) => personOf.get(name) ?? -1);
  const suiting = lots.filter(
    (lot) =>
      inDate(lot, day) &&
      meals.some((task) => isExtraAt(lot.lot, task)) &&
      people.some((person) => lot.feeds[person] && party[person]),
  );
  if (suiting.length === 0) return undefined;
  const sumOf = (person: number, of: (task: MealTask) => number) =>
    meals
      .filter(({ eaters }) => eaters.some((name) => personOf.get(name) === person))
      .reduce((sum, task) => sum + of(task), 0);
  return {
    day,
    group,
    meals,
    people,
    plannedKcal: people.map((person) =>
      Object.fromEntries(meals.map(({ meal }) => [meal, plannedOf(day, person, meal)])),
    ),
    mostKcal: people.map((person) =>
      sumOf(person, (task) => plannedOf(day, person, task.meal) * EXTRAS_SHARE),
    ),
    mostSorts: people.map(
      (person) => MOST_EXTRA_SORTS * (1 + sumOf(person, (task) => (isMain(task) ? 1 : 0))),
    ),
    lots: suiting.map(({ index }) => index),
    isDrink: suiting.map(({ lot }) => kindOf(lot) === 'drink'),
  };
}
