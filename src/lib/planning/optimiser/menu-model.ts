import type { PouchLot } from '../model/pouch-lot.ts';
import { pouchEnergyKcal, pouchGrossG } from '../model/pouch-totals.ts';
import type { MenuCosts, Settings } from '../model/settings.ts';
import type { MealKind } from '../model/words.ts';
import { groupsByExclusions, mayEat } from '../menu/exclusions.ts';
import { mealKey, SITTING_SHARE, type MealBurden, type MenuProblem } from '../menu/menu-problem.ts';

/** Shelf life beyond this counts no further: a pouch good for two more years is as young as one good for five (common practice). */
const MOST_SHELF_LIFE_Y = 2;
const MS_PER_YEAR = 365.25 * 24 * 3600 * 1000;

/** Eaters who may be served the same lots; inside a group portions follow the energy targets. */
export type ModelGroup = { readonly eaters: readonly string[] };

export type ModelSlot = {
  readonly index: number;
  readonly dayIndex: number;
  readonly day: number;
  readonly meal: MealKind;
  /** False where the user keeps the meal as it is. */
  readonly open: boolean;
  /** By group, kcal: the least a meal should bring, and the most that is eaten at one sitting. */
  readonly floorKcal: readonly number[];
  readonly mostKcal: readonly number[];
};

export type ModelDay = {
  readonly index: number;
  readonly day: number;
  /** Indices of its slots. */
  readonly slots: readonly number[];
  /** By group, kcal. */
  readonly targetKcal: readonly number[];
  readonly ceilingKcal: readonly number[];
};

export type ModelLot = {
  readonly index: number;
  readonly lot: PouchLot;
  /** Index of its recipe. */
  readonly recipe: number;
  /** Pouches free for the open meals. */
  readonly stock: number;
  /** Energy of a pouch, kcal. */
  readonly kcal: number;
  /** By group: whether it may be served there. */
  readonly feeds: readonly boolean[];
  /** By slot: most pouches that may be opened there; 0 where it is out of date, of another kind of meal, or for nobody. */
  readonly most: readonly number[];
  /** By slot, points of one pouch: its carrying, its fuel, its shelf life. */
  readonly pouchCost: readonly number[];
  /** Shelf life that it still has on the first day, years, as far as it counts. */
  readonly shelfLifeY: number;
  /** Protein that a pouch lacks to the floor of its own energy, g; negative where it has more; 0 where unknown. */
  readonly proteinLackG: number;
};

/** Pouches of a lot opened at a meal, by index. */
export type OpenedAt = { readonly slot: number; readonly lot: number; readonly pouches: number };

/**
 * The menu as a problem of numbers: what may be opened where, who may be served it, and what everything costs. Data only: it is read by the
 * scoring, the search, the bound and the writer of the model file, none of which needs another.
 */
export type MenuModel = {
  readonly groups: readonly ModelGroup[];
  readonly days: readonly ModelDay[];
  readonly slots: readonly ModelSlot[];
  readonly lots: readonly ModelLot[];
  readonly recipes: readonly string[];
  /** What stands on the kept meals. */
  readonly kept: readonly OpenedAt[];
  readonly burdens: readonly MealBurden[];
  /** Hours walked on the whole trip. */
  readonly walkedH: number;
  readonly settings: Settings;
  /** A wish of one search, which is no cost of the settings: points for a recipe that comes again later than the settings mind, but within so many days. */
  readonly variety?: { readonly withinDays: number; readonly points: number };
};

/** Builds the model of a menu problem. Lots without energy, without a free pouch, or for no meal of the trip are left out. */
export function buildMenuModel(problem: MenuProblem): MenuModel {
  const { demand, settings, burdens } = problem;
  const kept = new Map(problem.kept.map((choice) => [mealKey(choice.day, choice.meal), choice]));
  const keptLots = new Map(problem.kept.flatMap(({ opened }) => opened.map(({ lot }) => [lot.code, lot])));
  const startMs = Date.parse(demand[0]?.date ?? '');

  const fitsSomewhere = (lot: PouchLot) =>
    lot.pouches > 0 &&
    demand.some(
      ({ date, meals }) => lot.bestBefore >= date && lot.mealKinds.some((meal) => meals.includes(meal)),
    );
  const usable = [
    ...problem.stock.filter(
      (lot) => pouchEnergyKcal(lot) > 0 && (fitsSomewhere(lot) || keptLots.has(lot.code)),
    ),
    ...[...keptLots.values()].filter(
      (lot) => pouchEnergyKcal(lot) > 0 && !problem.stock.some((other) => other.code === lot.code),
    ),
  ];
  const groups = groupsOverLots(problem, usable);
  const recipes = [...new Set(usable.map((lot) => lot.recipe))];
  const recipeIndex = new Map(recipes.map((recipe, index) => [recipe, index]));

  const slots: ModelSlot[] = [];
  const days = demand.map((day, index): ModelDay => {
    const sumOf = (group: ModelGroup, kcal: (row: (typeof day.eaters)[number]) => number) =>
      day.eaters.filter((row) => group.eaters.includes(row.eater)).reduce((sum, row) => sum + kcal(row), 0);
    const targetKcal = groups.map((group) => sumOf(group, (row) => row.targetKcal));
    const own = day.meals.map((meal) => {
      const planned = groups.map((group) => sumOf(group, (row) => row.mealKcal[meal] ?? 0));
      slots.push({
        index: slots.length,
        dayIndex: index,
        day: day.day,
        meal,
        open: !kept.has(mealKey(day.day, meal)),
        floorKcal: planned.map((kcal) => kcal * settings.mealFloorShare),
        mostKcal: planned.map((kcal) => kcal * SITTING_SHARE),
      });
      return slots.length - 1;
    });
    return {
      index,
      day: day.day,
      slots: own,
      targetKcal,
      ceilingKcal: targetKcal.map((kcal) => kcal * settings.eatUpToShare),
    };
  });

  const burdenOf = new Map(burdens.map((burden) => [mealKey(burden.day, burden.meal), burden]));
  const slotBurdens = slots.map((slot) => {
    const burden = burdenOf.get(mealKey(slot.day, slot.meal));
    if (!burden) throw new RangeError(`no burden for ${slot.meal} of day ${slot.day}`);
    return burden;
  });
  const walkedH = Math.max(0, ...burdens.map(({ carriedH }) => carriedH));

  const lots = usable.map((lot, index): ModelLot => {
    const kcal = pouchEnergyKcal(lot);
    const feeds = groups.map((group) =>
      problem.party.some((eater) => eater.name === group.eaters[0] && mayEat(lot, eater)),
    );
    const shelfLifeY = Math.min(
      MOST_SHELF_LIFE_Y,
      Math.max(0, (Date.parse(lot.bestBefore) - startMs) / MS_PER_YEAR),
    );
    return {
      index,
      lot,
      recipe: recipeIndex.get(lot.recipe) ?? -1,
      stock: lot.pouches,
      kcal,
      feeds,
      shelfLifeY,
      most: slots.map((slot) => {
        const date = demand[slot.dayIndex]?.date ?? '';
        const fits = slot.open && lot.mealKinds.includes(slot.meal) && lot.bestBefore >= date;
        return fits ? Math.min(lot.pouches, mostAtSitting(slot.mostKcal, { kcal, feeds })) : 0;
      }),
      pouchCost: pouchCosts(lot, shelfLifeY, slotBurdens, walkedH, settings.menuCosts),
      proteinLackG:
        lot.proteinG === undefined
          ? 0
          : (kcal / 1000) * settings.proteinFloorG - lot.proteinG * lot.servingsPerPouch,
    };
  });
  const lotIndex = new Map(lots.map(({ lot, index }) => [lot.code, index]));
  return {
    groups,
    days,
    slots,
    lots,
    recipes,
    kept: slots.flatMap((slot) =>
      (kept.get(mealKey(slot.day, slot.meal))?.opened ?? []).flatMap(({ lot, pouches }): OpenedAt[] => {
        const index = lotIndex.get(lot.code);
        return index === undefined ? [] : [{ slot: slot.index, lot: index, pouches }];
      }),
    ),
    burdens: slotBurdens,
    walkedH,
    settings,
  };
}

/**
 * What one pouch takes to carry and cook at a meal: its weight over the hours walked with it, its empty packaging over the hours after, its water over the hours since the last source;
 * and the fuel for its water, without the pot's own heat.
 */
export function pouchBurden(
  lot: PouchLot,
  burden: MealBurden,
  walkedH: number,
): { foodKgH: number; waterKgH: number; carriedKgH: number; fuelG: number } {
  const waterMl = lot.waterMl * lot.servingsPerPouch;
  const foodKgH = (pouchGrossG(lot) * burden.carriedH + lot.tareG * (walkedH - burden.carriedH)) / 1000;
  const waterKgH = (waterMl * burden.waterCarriedH) / 1000;
  return {
    foodKgH,
    waterKgH,
    carriedKgH: foodKgH + waterKgH,
    fuelG: waterMl * burden.fuelGPerMl[lot.waterKind],
  };
}

/** Pouches of a lot that its eaters could eat of at one sitting: the last one perhaps only in part. */
export function mostAtSitting(
  mostKcal: ModelSlot['mostKcal'],
  { kcal, feeds }: Pick<ModelLot, 'kcal' | 'feeds'>,
): number {
  const eatenKcal = mostKcal.reduce((sum, most, group) => sum + (feeds[group] ? most : 0), 0);
  return Math.ceil(eatenKcal / kcal - 1e-9);
}

/** Points of one pouch at each meal: its carrying, its fuel, its shelf life. */
function pouchCosts(
  lot: PouchLot,
  shelfLifeY: number,
  burdens: readonly MealBurden[],
  walkedH: number,
  costs: MenuCosts,
): number[] {
  return burdens.map((burden) => {
    const { carriedKgH, fuelG } = pouchBurden(lot, burden, walkedH);
    return costs.carriedKgH * carriedKgH + costs.fuelG * fuelG + costs.shelfLifeYear * shelfLifeY;
  });
}

/** The same model under other costs and rules. */
export function withSettings(model: MenuModel, settings: Settings): MenuModel {
  return {
    ...model,
    settings,
    lots: model.lots.map((lot) => ({
      ...lot,
      pouchCost: pouchCosts(lot.lot, lot.shelfLifeY, model.burdens, model.walkedH, settings.menuCosts),
    })),
  };
}

/** Eaters with the same exclusions are one group, and so are those whose different exclusions leave them the same lots. */
function groupsOverLots(problem: MenuProblem, lots: readonly PouchLot[]): ModelGroup[] {
  const byLots = Map.groupBy(groupsByExclusions(problem.party), ([eater]) =>
    lots.map((lot) => (eater && mayEat(lot, eater) ? '1' : '0')).join(''),
  );
  return [...byLots.values()].map((groups) => ({ eaters: groups.flat().map((eater) => eater.name) }));
}
