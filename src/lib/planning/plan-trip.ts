import { sharePacks } from './carry/share-packs.ts';
import { demandOf } from './demand/day-demand.ts';
import { planWater } from './hydration/plan-water.ts';
import { firstExpired } from './menu/first-expired.ts';
import type { MenuPlanner } from './menu/menu-problem.ts';
import { planMenu } from './menu/plan-menu.ts';
import type { Stock } from './model/pouch-lot.ts';
import { tidyNumbers } from './model/tidy-numbers.ts';
import type { Settings } from './model/settings.ts';
import { resolveTrip } from './model/trip-defaults.ts';
import type { MenuPlan, Totals, TripPlan } from './model/trip-plan.ts';
import type { Trip } from './model/trip.ts';
import { findShortfall } from './shortfall/find-shortfall.ts';
import { planFuel } from './stove/plan-fuel.ts';
import { makeCard } from './trail-card/make-card.ts';

/**
 * The spine: from a trip and a stock to everything the party has to know. Pure: the same input gives the same plan, to the byte of its JSON.
 *
 * @param trip a valid trip; the meals its `menu` lists stand as they are, the planner fills the others
 * @param stock lots, each code once, with the pouches free for this trip
 * @param planner chooses the meals that are not listed
 * @returns the plan; its amounts are rounded to a thousandth of their unit
 */
export function planTrip(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  planner: MenuPlanner = firstExpired,
): TripPlan {
  const resolved = resolveTrip(trip);
  const demand = demandOf(resolved, settings);
  const { menu, notices: menuNotices } = planMenu(resolved, demand, stock, settings, planner);
  const water = planWater(resolved, menu, settings);
  const { fuel, notices: fuelNotices } = planFuel(resolved, menu, settings);
  const { carry, notices: loadNotices } = sharePacks(resolved, menu, stock, water, fuel);
  const shortfall = findShortfall(resolved, demand, menu, stock, settings);
  const card = makeCard(resolved, menu, stock, carry, fuel);
  return tidyNumbers({
    tripName: card.title,
    startDate: card.startDate,
    endDate: card.endDate,
    assumptions: [...resolved.assumptions],
    notices: [...menuNotices, ...loadNotices, ...fuelNotices],
    demand,
    menu,
    water,
    fuel,
    carry,
    shortfall,
    card,
    totals: totalsOf(menu, stock, carry, fuel),
  });
}

function totalsOf(menu: MenuPlan, stock: Stock, carry: TripPlan['carry'], fuel: TripPlan['fuel']): Totals {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const opened = menu.meals.flatMap((meal) => meal.opened);
  const servingsOpened = opened.reduce((sum, { servings }) => sum + servings, 0);
  const priced = opened.flatMap(({ code, servings }) => {
    const costMinor = lots.get(code)?.costMinor;
    return costMinor === undefined ? [] : [{ servings, costMinor: servings * costMinor }];
  });
  return {
    pouches: opened.reduce((sum, { pouches }) => sum + pouches, 0),
    servingsOpened,
    servingsLeftOver: menu.meals.reduce((sum, meal) => sum + meal.leftOverServings, 0),
    targetKcal: menu.energy.reduce((sum, row) => sum + row.targetKcal, 0),
    eatenKcal: menu.energy.reduce((sum, row) => sum + row.eatenKcal, 0),
    missingKcal: menu.energy.reduce((sum, row) => sum + row.missingKcal, 0),
    foodG: carry.packs.reduce((sum, pack) => sum + pack.foodG, 0),
    packagingG: carry.packs.reduce((sum, pack) => sum + pack.packagingG, 0),
    fuelGrossG: fuel.grossG,
    ...(priced.length > 0
      ? { costMinor: Math.round(priced.reduce((sum, lot) => sum + lot.costMinor, 0)) }
      : {}),
    costKnownShare:
      servingsOpened > 0 ? priced.reduce((sum, lot) => sum + lot.servings, 0) / servingsOpened : 0,
  };
}
