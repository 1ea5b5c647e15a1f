import { dryWeightG } from '../drying/mass-balance.ts';
import { trayCapacityG, traysFor } from '../drying/load-trays.ts';
import { recipeTotals, type RecipeTotals } from '../drying/recipe-totals.ts';
import { mayEat } from '../menu/exclusions.ts';
import type { Dryer, Kitchen } from '../model/kitchen.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { Recipe } from '../model/recipe.ts';
import type { Eater } from '../model/trip.ts';
import type { MealKind } from '../model/words.ts';

/** What is missing at one kind of meal to eaters who can be served alike. */
export type DryingNeed = {
  readonly meal: MealKind;
  readonly missingKcal: number;
  readonly eaters: readonly Pick<Eater, 'name' | 'allergens' | 'diets'>[];
  /** The one dish that is wanted, where it is planned already. */
  readonly recipe?: string;
};

/** A recipe that can be cooked and dried; amounts are those of one cooking. */
export type Dish = {
  readonly id: string;
  readonly recipe: Recipe;
  readonly totals: RecipeTotals;
  readonly servingKcal: number;
  readonly food: ServedFood;
};

/** What decides who may be served a food, and when. */
export type ServedFood = Pick<PouchLot, 'mealKinds' | 'allergens' | 'diets'>;

/** Energy put down to a need, by its place in the list of needs. */
export type Share = { readonly line: number; readonly energyKcal: number };

/** One recipe on some trays of a run. */
export type DishLoad = {
  readonly dish: Dish;
  /** How many times the amounts of the recipe, in quarters. */
  readonly timesCooked: number;
  readonly wetG: number;
  readonly trays: number;
  /** What it brings to whom; less than all of its energy where amounts were rounded up. */
  readonly shares: readonly Share[];
};

/** Amounts of a recipe are halved and quartered, but not finer (common practice). */
export const STEPS_PER_COOKING = 4;

/** @returns the dish, or `undefined` where the recipe does not come to a dish with energy yet */
export function dishOf({ id, recipe }: { readonly id: string; readonly recipe: Recipe }): Dish | undefined {
  const totals = recipeTotals(recipe);
  if (totals.problems.length > 0 || totals.energyKcal <= 0) return undefined;
  const stated = totals.allergensUnstated.length === 0;
  const food = {
    mealKinds: recipe.mealKinds,
    ...(stated && { allergens: [...totals.allergens] }),
    diets: [...totals.diets],
  };
  return { id, recipe, totals, servingKcal: totals.energyKcal / recipe.servings, food };
}

/** Whether a dish is the one that is wanted, or for the meal, and every eater of the need may have it. */
export const suitsNeed = (name: string, food: ServedFood, { meal, eaters, recipe }: DryingNeed): boolean =>
  recipe === undefined
    ? food.mealKinds.includes(meal) && eaters.every((eater) => mayEat(food, eater))
    : recipe === name;

const mostCookings = ({ recipe, totals }: Dish, trays: number, dryer: Dryer): number =>
  Math.floor(
    // a hair more, since a tray that is full to the last gram is not over-full
    ((STEPS_PER_COOKING * trays * trayCapacityG(dryer, recipe.bulkGPerMl)) / totals.cookedG) * (1 + 1e-12),
  ) / STEPS_PER_COOKING;

/** Whether the least that is cooked of a dish goes into an empty dryer. */
export const fitsDryer = (dish: Dish, dryer: Dryer): boolean =>
  mostCookings(dish, dryer.trayCount, dryer) > 0;

/** Water that drying takes from a load, g. */
export function waterOfLoadG({ dish, wetG }: DishLoad, dryer: Dryer, kitchen: Kitchen): number {
  const { residualShare } = kitchen.processes[dryer.process];
  return Math.max(0, wetG - dryWeightG(wetG, dish.totals.moisture, residualShare));
}

/** Which dishes suit which needs. */
export type Fitting = {
  readonly needs: readonly DryingNeed[];
  /** Needs that few dishes suit come first, so that what they could have is not used up by others. */
  readonly order: readonly number[];
  /** By need, the dishes that suit it. */
  readonly dishes: readonly (readonly Dish[])[];
  /** By dish, the needs that it suits, in that order. */
  readonly lines: ReadonlyMap<Dish, readonly number[]>;
};

/** @param dishes those that some dryer takes */
export function fitDishes(needs: readonly DryingNeed[], dishes: readonly Dish[]): Fitting {
  const suiting = needs.map((need) =>
    dishes.filter(({ recipe, food }) => suitsNeed(recipe.name, food, need)),
  );
  const order = needs
    .map((_, line) => line)
    .sort((a, b) => (suiting[a]?.length ?? 0) - (suiting[b]?.length ?? 0) || a - b);
  const lines = new Map(dishes.map((dish) => [dish, order.filter((line) => suiting[line]?.includes(dish))]));
  return { needs, order, dishes: suiting, lines };
}

/** What is still missing, need by need, and what each dish has brought to each need so far. */
export class OpenNeeds {
  readonly #fitting: Fitting;
  readonly #openKcal: number[];
  readonly #broughtKcal: Map<Dish, number>[];

  constructor(fitting: Fitting, from?: OpenNeeds) {
    this.#fitting = fitting;
    this.#openKcal = from ? [...from.#openKcal] : fitting.needs.map(({ missingKcal }) => missingKcal);
    this.#broughtKcal = fitting.needs.map((_, line) => new Map(from ? from.#broughtKcal[line] : []));
  }

  copy(): OpenNeeds {
    return new OpenNeeds(this.#fitting, this);
  }

  openKcal(line: number): number {
    return this.#openKcal[line] ?? 0;
  }

  /** Energy that a dish can still bring; with `varied`, without giving anybody too much of the same. */
  wantedKcal(dish: Dish, varied: boolean): number {
    return this.#linesOf(dish).reduce((sum, line) => sum + this.#wantedAt(line, dish, varied), 0);
  }

  /** Puts a load down to the needs it fills, for variety first. @returns what each of them gets */
  bring(dish: Dish, energyKcal: number): Share[] {
    const shares: Share[] = [];
    let leftKcal = energyKcal;
    for (const varied of [true, false])
      for (const line of this.#linesOf(dish)) {
        const givenKcal = Math.min(leftKcal, this.#wantedAt(line, dish, varied));
        if (givenKcal <= 0) continue;
        leftKcal -= givenKcal;
        this.#give(line, givenKcal);
        this.#broughtKcal[line]?.set(dish, this.#broughtAt(line, dish) + givenKcal);
        shares.push({ line, energyKcal: givenKcal });
      }
    return sumShares(shares);
  }

  /** Puts food that is under way already down to the needs it suits. @returns what each of them gets */
  credit(name: string, food: ServedFood, energyKcal: number): Share[] {
    let leftKcal = energyKcal;
    const shares = this.#fitting.order.flatMap((line): Share[] => {
      const need = this.#fitting.needs[line];
      const givenKcal = Math.min(leftKcal, this.openKcal(line));
      if (!need || givenKcal <= 0 || !suitsNeed(name, food, need)) return [];
      leftKcal -= givenKcal;
      this.#give(line, givenKcal);
      return [{ line, energyKcal: givenKcal }];
    });
    return sumShares(shares);
  }

  #linesOf(dish: Dish): readonly number[] {
    return this.#fitting.lines.get(dish) ?? [];
  }

  #broughtAt(line: number, dish: Dish): number {
    return this.#broughtKcal[line]?.get(dish) ?? 0;
  }

  #give(line: number, energyKcal: number): void {
    this.#openKcal[line] = this.openKcal(line) - energyKcal;
  }

  #wantedAt(line: number, dish: Dish, varied: boolean): number {
    const open = this.openKcal(line);
    if (!varied || (this.#fitting.dishes[line]?.length ?? 0) < 2) return open;
    const servings = servingsFor(this.#fitting.needs[line]?.missingKcal ?? 0, dish);
    const mostKcal = Math.ceil(servings / 2) * dish.servingKcal;
    return Math.max(0, Math.min(open, mostKcal - this.#broughtAt(line, dish)));
  }
}

/** @returns whole servings that bring so much */
const servingsFor = (energyKcal: number, { servingKcal }: Dish): number =>
  Math.ceil(energyKcal / servingKcal - 1e-9);

/** One share for each need, in their order. */
function sumShares(shares: readonly Share[]): Share[] {
  const byLine = Map.groupBy(shares, ({ line }) => line);
  return [...byLine]
    .map(([line, own]) => ({ line, energyKcal: own.reduce((sum, share) => sum + share.energyKcal, 0) }))
    .sort((a, b) => a.line - b.line);
}

/**
 * Fills the trays of a dryer: again and again with what brings most missing energy on each tray, the less of it to dry the better, but another dish first where somebody would get more than half of
 * their servings of the same. Trays are whole, each with one dish.
 *
 * @param needs is changed: what the loads bring is no longer open
 */
export function fillTrays(
  dryer: Dryer,
  trays: number,
  dishes: readonly Dish[],
  needs: OpenNeeds,
): DishLoad[] {
  const loads: DishLoad[] = [];
  for (let free = trays; free > 0;) {
    const best = bestLoad(dryer, free, dishes, needs, true) ?? bestLoad(dryer, free, dishes, needs, false);
    if (!best) break;
    const { dish, timesCooked } = best;
    const shares = needs.bring(dish, timesCooked * dish.totals.energyKcal);
    loads.push({ ...best, shares });
    free -= best.trays;
  }
  return mergeAlike(loads, dryer);
}

function bestLoad(
  dryer: Dryer,
  freeTrays: number,
  dishes: readonly Dish[],
  needs: OpenNeeds,
  varied: boolean,
): Omit<DishLoad, 'shares'> | undefined {
  let best: (Omit<DishLoad, 'shares'> & { readonly kcalPerTray: number }) | undefined;
  for (const dish of dishes) {
    const wantedKcal = needs.wantedKcal(dish, varied);
    if (wantedKcal <= 0) continue;
    const servings = servingsFor(wantedKcal, dish);
    const timesCooked = Math.min(
      Math.ceil((STEPS_PER_COOKING * servings) / dish.recipe.servings - 1e-9) / STEPS_PER_COOKING,
      mostCookings(dish, freeTrays, dryer),
    );
    if (timesCooked <= 0) continue;
    const wetG = timesCooked * dish.totals.cookedG;
    const trays = traysFor(wetG, dryer, dish.recipe.bulkGPerMl);
    const kcalPerTray = Math.min(wantedKcal, timesCooked * dish.totals.energyKcal) / trays;
    const better =
      !best || kcalPerTray > best.kcalPerTray || (kcalPerTray === best.kcalPerTray && wetG < best.wetG);
    if (better) best = { dish, timesCooked, wetG, trays, kcalPerTray };
  }
  return best && { dish: best.dish, timesCooked: best.timesCooked, wetG: best.wetG, trays: best.trays };
}

/** The same dish twice in a run is one load. */
function mergeAlike(loads: readonly DishLoad[], dryer: Dryer): DishLoad[] {
  return [...Map.groupBy(loads, ({ dish }) => dish)].map(([dish, alike]): DishLoad => {
    const timesCooked = alike.reduce((sum, load) => sum + load.timesCooked, 0);
    const wetG = timesCooked * dish.totals.cookedG;
    const trays = traysFor(wetG, dryer, dish.recipe.bulkGPerMl);
    return { dish, timesCooked, wetG, trays, shares: sumShares(alike.flatMap((load) => load.shares)) };
  });
}
