import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { DayDemand, EaterDayEnergy, MenuMeal, MenuPlan } from '../model/trip-plan.ts';
import type { ChosenMeal } from '../model/trip.ts';
import { mayEat } from './exclusions.ts';
import {
  exclusionTable,
  mealKey,
  type MealBurden,
  type MealChoice,
  type MenuPlanner,
} from './menu-problem.ts';
import { shareDay } from './share-day.ts';
import { writtenWhy } from './why.ts';

/** A day that misses no more than this share of its target counts as fed: labels and tables are no more exact (common practice). */
export const FED_SHARE = 0.97;

/**
 * The menu: the meals that the trip lists stand as they are, the planner fills the others, and everything is served.
 *
 * @param stock lots with the pouches free for this trip
 * @returns the served menu and what has to be said about it; pouches that a listed meal wants and the shelf has not are left out and named
 */
export function planMenu(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  stock: Stock,
  burdens: readonly MealBurden[],
  settings: Settings,
  planner: MenuPlanner,
): { menu: MenuPlan; notices: Notice[] } {
  const { kept, rest, notices } = keepListedMeals(trip.menu, demand, stock);
  const chosen = planner.choose({ demand, party: trip.party, stock: rest, kept, burdens, settings });
  const listed = new Map(trip.menu.map((meal) => [mealKey(meal.day, meal.meal), meal]));
  const choices = new Map([...kept, ...chosen].map((choice) => [mealKey(choice.day, choice.meal), choice]));
  const menu = { planner: planner.name, ...serveMenu(trip.party, demand, choices, listed, settings) };
  const used = new Map(pouchesNeeded(menu).map(({ code, pouches }) => [code, pouches]));
  notices.push(...hungerNotices(trip, demand, stock, used, menu.energy));
  return { menu, notices };
}

/** Pouches that the menu opens, by lot code, sorted: what has to be set aside and packed. */
export function pouchesNeeded(menu: MenuPlan): { code: string; pouches: number }[] {
  const need = new Map<string, number>();
  for (const { opened } of menu.meals)
    for (const { code, pouches } of opened) need.set(code, (need.get(code) ?? 0) + pouches);
  return [...need].map(([code, pouches]) => ({ code, pouches })).sort((a, b) => (a.code < b.code ? -1 : 1));
}

function keepListedMeals(
  listed: readonly ChosenMeal[],
  demand: readonly DayDemand[],
  stock: Stock,
): { kept: MealChoice[]; rest: Stock; notices: Notice[] } {
  const notices: Notice[] = [];
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const free = new Map(stock.map((lot) => [lot.code, lot.pouches]));
  const inOrder = [...listed].sort((a, b) => Number(b.locked) - Number(a.locked) || a.day - b.day);
  const kept = inOrder.flatMap((meal): MealChoice[] => {
    const day = demand[meal.day - 1];
    const at = { day: meal.day, meal: meal.meal };
    if (!day?.meals.includes(meal.meal)) {
      if (meal.opened.length > 0) notices.push(notice('meal-outside-trip', {}, at));
      return [];
    }
    const opened = meal.opened.flatMap(({ code, pouches, why }) => {
      const lot = lots.get(code);
      const room = free.get(code) ?? 0;
      const there = { ...at, lot: code };
      if (!lot) {
        notices.push(notice('lot-gone', {}, there));
        return [];
      }
      const { recipe, bestBefore } = lot;
      if (bestBefore < day.date) {
        notices.push(notice('lot-past-date', { recipe, bestBefore }, there));
        return [];
      }
      if (room < pouches)
        notices.push(notice('too-few-pouches', { recipe, wanted: pouches, free: room }, there));
      const taken = Math.min(room, pouches);
      if (taken === 0) return [];
      free.set(code, room - taken);
      return [{ lot, pouches: taken, why: why ?? writtenWhy(meal.byHand ? 'byHand' : 'listed') }];
    });
    return [{ ...at, opened }];
  });
  return {
    kept,
    rest: stock.map((lot): PouchLot => ({ ...lot, pouches: free.get(lot.code) ?? 0 })),
    notices,
  };
}

function serveMenu(
  party: readonly ResolvedEater[],
  demand: readonly DayDemand[],
  choices: ReadonlyMap<string, MealChoice>,
  listed: ReadonlyMap<string, ChosenMeal>,
  settings: Settings,
): { meals: MenuMeal[]; energy: EaterDayEnergy[] } {
  const may = exclusionTable(party);
  const meals: MenuMeal[] = [];
  const energy: EaterDayEnergy[] = [];
  for (const day of demand) {
    const eatenKcal = new Map<string, number>();
    const openedAt = new Map(
      day.meals.map((meal) => [meal, choices.get(mealKey(day.day, meal))?.opened ?? []]),
    );
    const servedAt = shareDay(day, openedAt, may, settings);
    for (const meal of day.meals) {
      const opened = openedAt.get(meal) ?? [];
      const served = servedAt.get(meal);
      if (!served) continue;
      for (const [name, kcal] of served.eatenKcal) eatenKcal.set(name, (eatenKcal.get(name) ?? 0) + kcal);
      const lotOf = new Map(opened.map(({ lot }) => [lot.code, lot]));
      meals.push({
        day: day.day,
        date: day.date,
        meal,
        locked: listed.get(mealKey(day.day, meal))?.locked ?? false,
        byHand: listed.get(mealKey(day.day, meal))?.byHand ?? false,
        opened: opened.map(({ lot, pouches, why }) => {
          const servings = pouches * lot.servingsPerPouch;
          return {
            code: lot.code,
            recipe: lot.recipe,
            pouches,
            servings,
            energyKcal: servings * lot.energyKcal,
            waterMl: servings * lot.waterMl,
            waterKind: lot.waterKind,
            why,
          };
        }),
        portions: served.portions,
        targetKcal: day.eaters.reduce((sum, eater) => sum + (eater.mealKcal[meal] ?? 0), 0),
        eatenKcal: served.portions.reduce((sum, portion) => sum + portion.energyKcal, 0),
        leftOverServings: served.leftOver.reduce((sum, { servings }) => sum + servings, 0),
        leftOverKcal: served.leftOver.reduce(
          (sum, { code, servings }) => sum + servings * (lotOf.get(code)?.energyKcal ?? 0),
          0,
        ),
      });
    }
    for (const { eater, targetKcal } of day.eaters) {
      const eaten = eatenKcal.get(eater) ?? 0;
      energy.push({
        day: day.day,
        eater,
        targetKcal,
        eatenKcal: eaten,
        missingKcal: Math.max(0, targetKcal - eaten),
        aboveKcal: Math.max(0, eaten - targetKcal),
      });
    }
  }
  return { meals, energy };
}

/** Says who is short on which days, and where it is an exclusion that leaves them short although others could still eat. */
function hungerNotices(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  stock: Stock,
  used: ReadonlyMap<string, number>,
  energy: readonly EaterDayEnergy[],
): Notice[] {
  const notices: Notice[] = [];
  for (const eater of trip.party) {
    const short = energy.filter(
      (row) => row.eater === eater.name && row.eatenKcal < row.targetKcal * FED_SHARE,
    );
    if (short.length === 0) continue;
    const missingKcal = short.reduce((sum, row) => sum + row.missingKcal, 0);
    const days = short.map((row) => row.day);
    const { name, allergens, diets } = eater;
    const walled =
      allergens.length + diets.length === 0
        ? []
        : unopenedFor(short, demand, stock, used).filter((lot) => !mayEat(lot, eater));
    notices.push(
      walled.length > 0
        ? notice(
            'hungry-by-exclusions',
            { missingKcal, days, allergens, diets, lots: walled.length },
            { eater: name },
          )
        : notice('hungry', { missingKcal, days }, { eater: name }),
    );
  }
  const undeclared = stock.filter((lot) => lot.pouches > 0 && lot.allergens === undefined);
  const avoiders = trip.party.filter((eater) => eater.allergens.length > 0).map((eater) => eater.name);
  if (undeclared.length > 0 && avoiders.length > 0)
    notices.push(notice('allergens-undeclared', { lots: undeclared.map((lot) => lot.code), avoiders }));
  return notices;
}

function unopenedFor(
  short: readonly EaterDayEnergy[],
  demand: readonly DayDemand[],
  stock: Stock,
  used: ReadonlyMap<string, number>,
): PouchLot[] {
  return stock.filter(
    (lot) =>
      lot.pouches > (used.get(lot.code) ?? 0) &&
      short.some(({ day }) => {
        const on = demand[day - 1];
        return (
          on !== undefined &&
          lot.bestBefore >= on.date &&
          lot.mealKinds.some((meal) => on.meals.includes(meal))
        );
      }),
  );
}
