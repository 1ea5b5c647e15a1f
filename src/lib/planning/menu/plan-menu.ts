import { cookGroupsOf } from '../model/meal-rules.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { Stock } from '../model/pouch-lot.ts';
import { firstDayOf } from '../model/resupply.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type { DayDemand, MenuPlan, ReservePouches } from '../model/trip-plan.ts';
import { hungerNotices } from './hunger-notices.ts';
import { keepListedMeals, type KeptMeal } from './listed-meals.ts';
import { mealTasks } from './meal-tasks.ts';
import type { MealBurden, MealChoice, MenuProblem } from './menu-problem.ts';
import { setReserveAside } from './reserve.ts';
import { serveMenu } from './serve-menu.ts';

/** The menu problem of a trip under known needs, and what is settled already: the meals that it lists, and the reserve. */
export type PosedMenu = {
  readonly problem: MenuProblem;
  readonly kept: readonly KeptMeal[];
  readonly reserve: readonly ReservePouches[];
  readonly notices: readonly Notice[];
};

/**
 * Poses the menu of a trip: listed meals stand, the reserve is set aside, and the planner has the rest of the stock for the rest of the meals.
 *
 * @param stock lots with the pouches free for this trip
 */
export function poseMenu(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  stock: Stock,
  burdens: readonly MealBurden[],
  settings: Settings,
): PosedMenu {
  const tasks = mealTasks(trip, demand);
  const listed = keepListedMeals(trip, demand, tasks, stock);
  const { reserve, rest, notices } = setReserveAside(trip, demand, listed.rest);
  const { kept } = listed;
  return {
    problem: {
      demand,
      party: trip.party,
      tasks,
      stock: rest,
      windows: windowsOf(trip),
      kept,
      burdens,
      settings,
    },
    kept,
    reserve,
    notices: [...listed.notices, ...notices, ...groupNotices(trip), ...olderNotices(kept)],
  };
}

/**
 * The menu as it is served: what stands, and what a planner chose besides.
 *
 * @returns the menu and what has to be said about it
 */
export function completeMenu(
  trip: ResolvedTrip,
  stock: Stock,
  { problem, kept, reserve, notices }: PosedMenu,
  chosen: readonly MealChoice[],
  planner: string,
): { menu: MenuPlan; notices: Notice[] } {
  const { demand, tasks, settings } = problem;
  const served = serveMenu(trip, demand, tasks, [...kept, ...chosen], kept, settings);
  const { groups } = cookGroupsOf(trip);
  const menu: MenuPlan = {
    planner,
    groups: groups.map(({ name, eaters }) => ({ name, eaters: [...eaters] })),
    meals: served.meals,
    energy: served.energy,
    reserve: [...reserve],
  };
  const used = new Map(pouchesNeeded(menu).map(({ code, pouches }) => [code, pouches]));
  return {
    menu,
    notices: [
      ...notices,
      ...served.notices,
      ...hungerNotices(trip, demand, stock, used, menu.energy),
      ...estimateNotices(menu),
    ],
  };
}

/** Says which lots are planned with figures that nobody stated. */
function estimateNotices({ meals }: Pick<MenuPlan, 'meals'>): Notice[] {
  const estimated = meals
    .flatMap(({ opened }) => opened)
    .filter((lot) => lot.estimated?.some((field) => field === 'energyKcal' || field === 'waterMl'));
  const lots = [...new Set(estimated.map(({ code }) => code))].sort();
  return lots.length > 0 ? [notice('lots-estimated', { lots })] : [];
}

/** Food bought on the way can be eaten once the shop is reached. */
function windowsOf({ planned, resupplies, days }: ResolvedTrip): MenuProblem['windows'] {
  return Object.fromEntries(
    planned
      .filter(({ at }) => at !== undefined)
      .map(({ at, lot }) => [lot.code, { firstDay: firstDayOf(resupplies, at), lastDay: days.length }]),
  );
}

/** Pouches that the menu opens and the reserve holds, by lot code, sorted: what has to be set aside and packed. */
export function pouchesNeeded({ meals, reserve }: Pick<MenuPlan, 'meals' | 'reserve'>): {
  code: string;
  pouches: number;
}[] {
  const need = new Map<string, number>();
  for (const { code, pouches } of [...meals.flatMap(({ opened }) => opened), ...reserve])
    need.set(code, (need.get(code) ?? 0) + pouches);
  return [...need].map(([code, pouches]) => ({ code, pouches })).sort((a, b) => (a.code < b.code ? -1 : 1));
}

/** The same of pouches that are there: what is still to be bought or dried can be set aside once it has come. */
export const pouchesThere = ({ meals, reserve }: Pick<MenuPlan, 'meals' | 'reserve'>) =>
  pouchesNeeded({
    meals: meals.map((meal) => ({ ...meal, opened: meal.opened.filter(({ toCome }) => !toCome) })),
    reserve: reserve.filter(({ toCome }) => !toCome),
  });

function groupNotices(trip: ResolvedTrip): Notice[] {
  const { groups, proposed } = cookGroupsOf(trip);
  return proposed
    ? [notice('cook-groups-proposed', { groups: groups.map(({ eaters }) => [...eaters]) })]
    : [];
}

/** Meals of a menu of before were shared in other parts; they are shared anew until the menu is planned again. */
function olderNotices(kept: readonly KeptMeal[]): Notice[] {
  const meals = kept.filter(({ dishes }) =>
    dishes.some(({ reason }) => reason?.code === 'from an older menu'),
  );
  return meals.length > 0 ? [notice('shared-out-anew', { meals: meals.length })] : [];
}
