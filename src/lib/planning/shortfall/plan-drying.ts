import { expectRun, type Run, type RunBasis } from '../drying/expect-run.ts';
import { trayCapacityG } from '../drying/load-trays.ts';
import { whyNotServed, type Wall } from '../menu/exclusions.ts';
import { addDays } from '../model/calendar.ts';
import type { Dryer, Kitchen } from '../model/kitchen.ts';
import { WEEKDAYS } from '../model/words.ts';
import { ingredientCost, ingredientG, isTapWater, type Recipe } from '../model/recipe.ts';
import type { Estimate, ShoppingLine } from '../model/trip-plan.ts';
import {
  dishOf,
  fillTrays,
  fitDishes,
  fitsDryer,
  OpenNeeds,
  waterOfLoadG,
  type Dish,
  type DishLoad,
  type DryingNeed,
  type Fitting,
  type ServedFood,
  type Share,
} from './fill-dryer.ts';

/** A batch that is not sealed yet: it holds its dryer, and its food will come to the shelf. */
export type BatchUnderWay = {
  readonly id: string;
  readonly code: string;
  readonly recipe: string;
  /** Name of its dryer. */
  readonly dryer: string;
  /** What names the run that it shares with others; left out where it shares none that is known. */
  readonly run?: string | undefined;
  readonly cookedOn: string;
  /** Whether it is on the trays already. */
  readonly loaded: boolean;
  readonly trays: number;
  readonly waterG: number;
  readonly hours: Estimate;
  readonly food: ServedFood;
  /** Energy of all of it, kcal. */
  readonly energyKcal: number;
};

/** What a load is for: a line of the shopping list, or food that is planned to be dried already. */
export type DryingLine = Pick<ShoppingLine, 'meal' | 'forEaters'>;

/** What there is to dry with. */
export type DryingMeans = {
  readonly recipes: readonly { readonly id: string; readonly recipe: Recipe }[];
  readonly kitchen: Kitchen;
  /** Finished runs of all dryers, from which hours are expected. */
  readonly runs: readonly Run[];
  readonly underWay: readonly BatchUnderWay[];
  readonly today: string;
};

export type DryingInput = DryingMeans & {
  readonly needs: readonly DryingNeed[];
  /** Runs for other trips, which hold their dryers; left out: none. */
  readonly others?: readonly Pick<PlannedRun, 'dryer' | 'cookOn' | 'freeOn' | 'joins'>[];
  /** First day of the trip. */
  readonly departure: string;
};

export type PlannedLoad = {
  readonly recipeId: string;
  readonly recipe: string;
  /** How many times the amounts of the recipe, in quarters. */
  readonly timesCooked: number;
  readonly servings: number;
  readonly trays: number;
  /** Wet food on each of them, g. */
  readonly trayG: number;
  readonly energyKcal: number;
  readonly shares: readonly Share[];
};

export type PlannedRun = {
  readonly dryer: string;
  readonly cookOn: string;
  /** Unloaded and tested on this day. */
  readonly unloadOn: string;
  /** Sealed on this day: dehydrated food has been conditioned by then. */
  readonly readyOn: string;
  /** Hours after it until the dryer can be loaded again, and the day of that. */
  readonly turnaroundH: number;
  readonly freeOn: string;
  /** Of the whole run; the high end is planned with. */
  readonly hours: Estimate;
  readonly basis: RunBasis;
  /** Filled by these loads, of so many of the dryer. */
  readonly trays: number;
  readonly trayCount: number;
  readonly loads: readonly PlannedLoad[];
  /** Codes of batches under way that these loads join on trays left free. */
  readonly joins: readonly string[];
};

export type Grocery = {
  readonly food: string;
  /** As bought, g. */
  readonly weightG: number;
  /** Where the weight of one is known. */
  readonly pieces?: number;
  /** Minor units, not rounded; missing where a price is not known. */
  readonly costMinor?: number;
};

export type WhyToBuy =
  | { readonly kind: 'no recipe' }
  | { readonly kind: 'recipe gone'; readonly recipe: string }
  | { readonly kind: 'no dryer' }
  | { readonly kind: 'not suited'; readonly recipes: readonly { recipe: string; because: Wall }[] }
  | { readonly kind: 'too large'; readonly recipes: readonly string[] }
  | { readonly kind: 'no time' };

/** What the cook should know of a recipe. */
export type DryingNote = { readonly code: 'recipe-unfinished' | 'high-in-fat'; readonly recipe: string };

export type DryingPlan = {
  /** Everything is sealed on this day at the latest. */
  readonly readyBy: string;
  readonly runs: readonly PlannedRun[];
  /** Days on which something is cooked or sealed for these runs. */
  readonly workDays: readonly string[];
  /** Batches under way that will fill a part. */
  readonly underWay: readonly (Pick<BatchUnderWay, 'id' | 'code' | 'recipe'> & {
    readonly readyOn: string;
    readonly shares: readonly Share[];
  })[];
  readonly groceries: readonly Grocery[];
  /** Of the groceries whose price is known, minor units, not rounded. */
  readonly costMinor: number;
  /** Groceries without a price. */
  readonly unpriced: readonly string[];
  readonly toBuy: readonly { readonly line: number; readonly missingKcal: number; readonly why: WhyToBuy }[];
  readonly notes: readonly DryingNote[];
};

const HOURS_PER_DAY = 24;
/** Earlier deadlines that are looked at, the first so many cook days. */
const MOST_DEADLINES = 40;
/** Less than this is dust of reckoning, kcal. */
const DUST_KCAL = 1e-6;

/**
 * Turns what is missing into runs of the dryers before departure, groceries for them, and what has to be bought since it no longer fits. Pure.
 *
 * Run after run the one is taken that brings most of what is missing, the earlier ready of two that bring alike, until nothing is missing or no time is left.
 * Cooking is on a cook day, today included; a run takes whole days by the high end of its hours, and is unloaded on the first cook day after, on which it is
 * sealed too unless it has to be conditioned first. With the hours between two runs the dryer may be taken for longer than its food. It is
 * a greedy plan: good and the same every time, not proven to be the best.
 *
 * @returns a plan in which shares of loads, of batches under way and `toBuy` add up to what is missing
 */
export function planDrying(input: DryingInput): DryingPlan {
  const { needs, kitchen, recipes, today, departure } = input;
  const dishes = recipes.flatMap((recipe) => dishOf(recipe) ?? []);
  const drying = dishes.filter((dish) => kitchen.dryers.some((dryer) => fitsDryer(dish, dryer)));
  const fitting = fitDishes(needs, drying);
  const readyBy = addDays(departure, -kitchen.readyDaysBefore);
  const cookDays = cookDaysBetween(today, readyBy, kitchen);

  const { runs, credited, open } = bestSchedule(cookDays, input, drying, fitting);
  const groceries = groceriesFor(runs.flatMap(({ loads }) => loads));
  const planned = runs
    .map(shownRun)
    .sort((a, b) => compare(a.cookOn, b.cookOn) || compare(a.readyOn, b.readyOn));
  return {
    readyBy,
    runs: planned,
    workDays: [
      ...new Set(planned.flatMap(({ cookOn, unloadOn, readyOn }) => [cookOn, unloadOn, readyOn])),
    ].sort(),
    underWay: credited,
    groceries,
    costMinor: groceries.reduce((sum, { costMinor }) => sum + (costMinor ?? 0), 0),
    unpriced: groceries.filter(({ costMinor }) => costMinor === undefined).map(({ food }) => food),
    toBuy: needs.flatMap((need, line) => {
      const missingKcal = open.openKcal(line);
      return missingKcal > DUST_KCAL
        ? [{ line, missingKcal, why: whyToBuy(need, dishes, fitting.dishes[line] ?? [], kitchen) }]
        : [];
    }),
    notes: notesOn(input, dishes, runs),
  };
}

// the calendar

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const later = (a: string, b: string): string => (a > b ? a : b);

function cookDaysBetween(first: string, last: string, { cookDays }: Kitchen): string[] {
  const days: string[] = [];
  for (let date = first; date <= last; date = addDays(date, 1)) {
    const weekday = WEEKDAYS[(new Date(`${date}T00:00:00Z`).getUTCDay() + 6) % 7];
    if (weekday && cookDays.includes(weekday)) days.push(date);
  }
  return days;
}

/** The last cook day on which a run of so many days can begin and still be sealed in time; `undefined` where there is none. */
export function lastCookDay(
  days: number,
  today: string,
  departure: string,
  kitchen: Kitchen,
): string | undefined {
  const cookDays = cookDaysBetween(today, addDays(departure, -kitchen.readyDaysBefore), kitchen);
  const last = cookDays.at(-1);
  return last === undefined ? undefined : cookDays.findLast((day) => addDays(day, days) <= last);
}

/** A dryer in use: from the day it is loaded until the day it is unloaded, on which it can be loaded again. */
type Taken = {
  readonly dryer: string;
  readonly from: string;
  readonly until: string;
  /** What is in it takes so many days. */
  readonly days: number;
  readonly trays: number;
  readonly waterG: number;
  /** Batches under way in it; what is planned here is filled already and takes no more. */
  readonly codes: readonly string[];
};

/** The days of a run. */
type RunDates = {
  readonly cookOn: string;
  readonly unloadOn: string;
  readonly readyOn: string;
  /** The dryer can be loaded again. */
  readonly freeOn: string;
};

type ScheduledRun = RunDates & {
  readonly dryer: Dryer;
  readonly hours: Estimate;
  readonly basis: RunBasis;
  readonly loads: readonly DishLoad[];
  readonly joined: Taken | undefined;
};

type Schedule = {
  readonly runs: readonly ScheduledRun[];
  readonly credited: DryingPlan['underWay'];
  readonly open: OpenNeeds;
};

type Candidate = { readonly run: ScheduledRun; readonly open: OpenNeeds; readonly broughtKcal: number };

/**
 * A greedy choice may bring less with more time than with less. Where time is short, therefore, what would be done with less of it is looked at too, and done
 * where it brings more: so a later departure never brings less, as long as it is among the deadlines looked at.
 */
function bestSchedule(
  cookDays: readonly string[],
  input: DryingInput,
  dishes: readonly Dish[],
  fitting: Fitting,
): Schedule {
  const lackedKcal = ({ open }: Schedule) =>
    fitting.needs.reduce((sum, _, line) => sum + open.openKcal(line), 0);
  let best = schedule(cookDays, input, dishes, fitting);
  const isShortOfTime = fitting.dishes.some(
    (suiting, line) => suiting.length > 0 && best.open.openKcal(line) > DUST_KCAL,
  );
  if (isShortOfTime)
    for (let count = Math.min(cookDays.length - 1, MOST_DEADLINES); count > 0; count -= 1) {
      const earlier = schedule(cookDays.slice(0, count), input, dishes, fitting);
      if (lackedKcal(earlier) < lackedKcal(best) - DUST_KCAL) best = earlier;
    }
  return best;
}

/** @param cookDays days on which there is time to work, the last of them the last to seal on */
function schedule(
  cookDays: readonly string[],
  input: DryingInput,
  dishes: readonly Dish[],
  fitting: Fitting,
): Schedule {
  let open = new OpenNeeds(fitting);
  const { taken, credited } = takeUnderWay(cookDays, input, open);
  const runs: ScheduledRun[] = [];

  const candidates = () =>
    input.kitchen.dryers.flatMap((dryer) => {
      const own = taken.filter((other) => other.dryer === dryer.name);
      const joinable = own.filter(
        ({ codes, from, trays }) => codes.length > 0 && trays < dryer.trayCount && cookDays.includes(from),
      );
      return [...joinable, undefined].flatMap(
        (joined) => candidateRun(dryer, joined, own, cookDays, input, dishes, open) ?? [],
      );
    });
  const better = (a: Candidate, b: Candidate): Candidate =>
    b.broughtKcal > a.broughtKcal + DUST_KCAL ||
    (b.broughtKcal > a.broughtKcal - DUST_KCAL && b.run.readyOn < a.run.readyOn)
      ? b
      : a;

  for (let all = candidates(); all.length > 0; all = candidates()) {
    const next = all.reduce(better);
    const { dryer, cookOn, freeOn, joined, loads } = next.run;
    open = next.open;
    runs.push(next.run);
    if (joined) taken.splice(taken.indexOf(joined), 1);
    const inside = { days: wholeDays(next.run.hours), trays: traysOf(loads), waterG: 0, codes: [] };
    taken.push({ dryer: dryer.name, from: cookOn, until: freeOn, ...inside });
  }
  return {
    runs,
    credited: credited.map((batch) => ({ ...batch, readyOn: readyWith(batch, runs) })),
    open,
  };
}

/** What is in the dryers already, and what it will bring in time. */
function takeUnderWay(
  cookDays: readonly string[],
  { underWay, others = [], today, kitchen }: DryingInput,
  open: OpenNeeds,
): { taken: Taken[]; credited: DryingPlan['underWay'] } {
  const batches = underWay
    .map((batch) => {
      const from = batch.loaded ? batch.cookedOn : later(batch.cookedOn, today);
      const end = addDays(from, wholeDays(batch.hours));
      const dryer = kitchen.dryers.find(({ name }) => name === batch.dryer);
      const unloadOn = cookDays.find((day) => day >= end);
      const dryOn = unloadOn && addDays(unloadOn, dryer ? conditioningOf(dryer, kitchen) : 0);
      return {
        ...{ batch, from, end },
        until: later(unloadOn ?? end, addDays(from, wholeDays(batch.hours, dryer?.turnaroundH))),
        readyOn: dryOn && cookDays.find((day) => day >= dryOn),
      };
    })
    .sort((a, b) => compare(a.end, b.end) || compare(a.batch.code, b.batch.code));
  const isJoined = (codes: readonly string[]) =>
    others.some(({ joins }) => joins.some((code) => codes.includes(code)));
  const taken = [
    ...Map.groupBy(batches, ({ batch, from }) => batch.run ?? `${from} ${batch.dryer}`).values(),
  ].flatMap((together): Taken[] => {
    const [first] = together;
    if (!first) return [];
    return [
      {
        dryer: first.batch.dryer,
        from: together.map(({ from }) => from).reduce((a, b) => (a < b ? a : b)),
        until: together.map(({ until }) => until).reduce(later),
        days: Math.max(...together.map(({ batch }) => wholeDays(batch.hours))),
        trays: together.reduce((sum, { batch }) => sum + batch.trays, 0),
        waterG: together.reduce((sum, { batch }) => sum + batch.waterG, 0),
        codes: isJoined(together.map(({ batch }) => batch.code))
          ? []
          : together.map(({ batch }) => batch.code),
      },
    ];
  });
  const held = others.map(({ dryer, cookOn, freeOn }): Taken => ({
    dryer,
    from: cookOn,
    until: freeOn,
    days: 0,
    trays: 0,
    waterG: 0,
    codes: [],
  }));
  const credited = batches.flatMap(({ batch: { id, code, recipe, food, energyKcal }, readyOn }) => {
    if (readyOn === undefined) return [];
    const shares = open.credit(recipe, food, energyKcal);
    return shares.length > 0 ? [{ id, code, recipe, readyOn, shares }] : [];
  });
  return { taken: [...taken, ...held], credited };
}

/** A batch whose run takes more trays than its own is ready when the run is. */
const readyWith = (
  { code, readyOn }: DryingPlan['underWay'][number],
  runs: readonly ScheduledRun[],
): string => runs.find(({ joined }) => joined?.codes.includes(code))?.readyOn ?? readyOn;

/**
 * The fullest run of a dryer that is sealed in time, on its first free days. Fewer trays are tried where they dry in fewer days.
 *
 * @param joined a run under way with trays left free; left out: a run of its own
 * @param taken all that the dryer is taken for
 */
function candidateRun(
  dryer: Dryer,
  joined: Taken | undefined,
  taken: readonly Taken[],
  cookDays: readonly string[],
  { kitchen, runs }: DryingInput,
  dishes: readonly Dish[],
  open: OpenNeeds,
): Candidate | undefined {
  const others = taken.filter((other) => other !== joined);
  const joinedTrays = joined?.trays ?? 0;
  let fewestDays = Infinity;
  for (let freeTrays = dryer.trayCount - joinedTrays; freeTrays > 0;) {
    const left = open.copy();
    const loads = fillTrays(dryer, freeTrays, dishes, left);
    if (loads.length === 0) break;
    const waterG = loads.reduce((sum, load) => sum + waterOfLoadG(load, dryer, kitchen), joined?.waterG ?? 0);
    const loadShare =
      loads.reduce(
        (sum, { dish, wetG }) => sum + wetG / trayCapacityG(dryer, dish.recipe.bulkGPerMl),
        joinedTrays,
      ) / dryer.trayCount;
    const { hours, basis } = expectRun(dryer, false, waterG, loadShare, runs);
    const days = Math.max(wholeDays(hours), joined?.days ?? 0);
    const dates =
      days < fewestDays &&
      firstFree(daysOf(dryer, hours, days, kitchen), joined ? [joined.from] : cookDays, cookDays, others);
    if (dates)
      return {
        run: { dryer, ...dates, hours, basis, loads, joined },
        open: left,
        broughtKcal: sumKcal(loads),
      };
    fewestDays = Math.min(fewestDays, days);
    freeTrays = traysOf(loads) - 1;
  }
  return undefined;
}

/** Days from loading: until the food is dry, and until the dryer can be loaded again; and those of conditioning after unloading. */
type RunDays = { readonly dry: number; readonly free: number; readonly conditioning: number };

const conditioningOf = ({ process }: Dryer, { conditioningDays }: Kitchen): number =>
  process === 'dehydrated' ? conditioningDays : 0;

const daysOf = (dryer: Dryer, hours: Estimate, dry: number, kitchen: Kitchen): RunDays => ({
  dry,
  free: Math.max(dry, wholeDays(hours, dryer.turnaroundH)),
  conditioning: conditioningOf(dryer, kitchen),
});

/** @returns days from loading a dryer until its food can be sealed, if every day is a cook day */
export const daysToSealing = (dryer: Dryer, hours: Estimate, kitchen: Kitchen): number =>
  wholeDays(hours) + conditioningOf(dryer, kitchen);

/** The first days from loading to sealing on which nothing else is in the dryer; `undefined` where there are none in time. */
function firstFree(
  { dry, free, conditioning }: RunDays,
  starts: readonly string[],
  cookDays: readonly string[],
  taken: readonly Taken[],
): RunDates | undefined {
  const from = (date: string) => cookDays.find((day) => day >= date);
  for (const cookOn of starts) {
    const unloadOn = from(addDays(cookOn, dry));
    const readyOn = unloadOn && from(addDays(unloadOn, conditioning));
    if (unloadOn === undefined || readyOn === undefined) return undefined;
    const freeOn = later(unloadOn, addDays(cookOn, free));
    if (!taken.some((other) => cookOn < other.until && freeOn > other.from))
      return { cookOn, unloadOn, readyOn, freeOn };
  }
  return undefined;
}

/** Whole days that a run takes, by the most hours that it may take, with those that follow it. */
export const wholeDays = ({ high }: Estimate, thenH = 0): number =>
  Math.max(1, Math.ceil((high + thenH) / HOURS_PER_DAY));
const traysOf = (loads: readonly DishLoad[]): number => loads.reduce((sum, { trays }) => sum + trays, 0);
const sumKcal = (loads: readonly DishLoad[]): number =>
  loads.flatMap(({ shares }) => shares).reduce((sum, { energyKcal }) => sum + energyKcal, 0);

// what the reader gets

function shownRun({
  dryer,
  cookOn,
  unloadOn,
  readyOn,
  freeOn,
  hours,
  basis,
  loads,
  joined,
}: ScheduledRun): PlannedRun {
  return {
    dryer: dryer.name,
    cookOn,
    unloadOn,
    readyOn,
    turnaroundH: dryer.turnaroundH ?? 0,
    freeOn,
    hours,
    basis,
    trays: traysOf(loads),
    trayCount: dryer.trayCount,
    loads: loads.map(({ dish: { id, recipe, totals }, timesCooked, wetG, trays, shares }) => ({
      recipeId: id,
      recipe: recipe.name,
      timesCooked,
      servings: timesCooked * recipe.servings,
      trays,
      trayG: wetG / trays,
      energyKcal: timesCooked * totals.energyKcal,
      shares,
    })),
    joins: joined?.codes ?? [],
  };
}

/** Everything for the loads but tap water, by food; of one food only where all of it is priced is the cost known. */
function groceriesFor(loads: readonly DishLoad[]): Grocery[] {
  const parts = loads.flatMap(({ dish, timesCooked }) =>
    dish.recipe.ingredients
      .filter((line) => !isTapWater(line))
      .map((ingredient) => {
        const cost = ingredientCost(ingredient);
        return {
          food: ingredient.food,
          weightG: timesCooked * ingredientG(ingredient),
          costMinor: cost === undefined ? undefined : timesCooked * cost,
        };
      }),
  );
  return [...Map.groupBy(parts, ({ food }) => food.name)]
    .map(([food, alike]): Grocery => {
      const weightG = alike.reduce((sum, part) => sum + part.weightG, 0);
      const gPerPiece = alike.find((part) => part.food.gPerPiece !== undefined)?.food.gPerPiece;
      const priced = alike.every(({ costMinor }) => costMinor !== undefined);
      return {
        food,
        weightG,
        ...(gPerPiece !== undefined && { pieces: weightG / gPerPiece }),
        ...(priced && { costMinor: alike.reduce((sum, { costMinor }) => sum + (costMinor ?? 0), 0) }),
      };
    })
    .sort((a, b) => compare(a.food, b.food));
}

/** @param suiting dishes that suit the need and go into a dryer */
function whyToBuy(
  need: DryingNeed,
  dishes: readonly Dish[],
  suiting: readonly Dish[],
  { dryers }: Kitchen,
): WhyToBuy {
  if (suiting.length > 0) return { kind: 'no time' };
  if (need.recipe !== undefined && !dishes.some(({ recipe }) => recipe.name === need.recipe))
    return { kind: 'recipe gone', recipe: need.recipe };
  const forMeal = dishes.filter(({ recipe }) => recipe.mealKinds.includes(need.meal));
  if (forMeal.length === 0) return { kind: 'no recipe' };
  const refused = forMeal.flatMap(({ recipe, food }) => {
    const because = need.eaters.flatMap((eater) => whyNotServed(food, eater) ?? [])[0];
    return because === undefined ? [] : [{ recipe: recipe.name, because }];
  });
  if (refused.length === forMeal.length) return { kind: 'not suited', recipes: refused };
  if (dryers.length === 0) return { kind: 'no dryer' };
  const names = new Set(refused.map(({ recipe }) => recipe));
  return {
    kind: 'too large',
    recipes: forMeal.map(({ recipe }) => recipe.name).filter((name) => !names.has(name)),
  };
}

function notesOn(
  { recipes }: DryingInput,
  dishes: readonly Dish[],
  runs: readonly ScheduledRun[],
): DryingNote[] {
  const usable = new Set(dishes.map(({ id }) => id));
  const planned = new Set(runs.flatMap(({ loads }) => loads.map(({ dish }) => dish)));
  return [
    ...recipes
      .filter(({ id }) => !usable.has(id))
      .map(({ recipe }) => ({ code: 'recipe-unfinished', recipe: recipe.name }) as const),
    ...[...planned]
      .filter(({ totals }) => totals.fatClass === 'fatty')
      .map(({ recipe }) => ({ code: 'high-in-fat', recipe: recipe.name }) as const),
  ];
}
