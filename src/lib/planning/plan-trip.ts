import { allPacks } from './carry/all-packs.ts';
import { foodCosts } from './cost/food-costs.ts';
import { sharePacks } from './carry/share-packs.ts';
import { demandNotices, demandOf, type WalkingLoad } from './demand/day-demand.ts';
import { heatOfDays, withHeatRests } from './hydration/heat-rests.ts';
import { planWater } from './hydration/plan-water.ts';
import { learnedDefaults } from './learning/learned-figures.ts';
import { firstExpired } from './menu/first-expired.ts';
import type { MealBurden, MealChoice, MenuPlanner, MenuProblem } from './menu/menu-problem.ts';
import { completeMenu, poseMenu } from './menu/plan-menu.ts';
import { notice, type Notice } from './model/notices.ts';
import { withPlanned } from './model/planned-lot.ts';
import type { Stock } from './model/pouch-lot.ts';
import { tidyNumbers } from './model/tidy-numbers.ts';
import type { Settings } from './model/settings.ts';
import { resolveTrip, type ResolvedTrip } from './model/resolve-trip.ts';
import type { CarryPlan, DayDemand, DayHeat, MenuPlan, Totals, TripPlan } from './model/trip-plan.ts';
import type { Trip } from './model/trip.ts';
import {
  knownDays,
  knownLegs,
  legSummary,
  plannedLegs,
  routeNotices,
  type PlannedLeg,
} from './route/trip-legs.ts';
import { nutritionOfDays } from './nutrition/nutrition-of-days.ts';
import { comingLots, comingNotices, markToCome, stillToCome } from './shortfall/coming-lots.ts';
import { findShortfall } from './shortfall/find-shortfall.ts';
import { mealBurdens } from './stove/meal-burdens.ts';
import { planFuel } from './stove/plan-fuel.ts';
import { makeCard } from './trail-card/make-card.ts';

/** Rounds after which the coupling of load and need is given up; trials settle in two to four. */
const MOST_ROUNDS = 8;
/** The coupling has settled when no eater's daily target moves by more, kcal: far below what a label or an equation knows. */
export const SETTLED_KCAL = 10;

/** What a trip is planned on, which does not change from round to round. */
type Ground = {
  readonly trip: ResolvedTrip;
  readonly legs: readonly PlannedLeg[];
  readonly heat: readonly DayHeat[];
  readonly burdens: readonly MealBurden[];
  readonly demandUnder: (loads: WalkingLoad) => DayDemand[];
};

function groundOf(trip: Trip, settings: Settings): Ground {
  const learned = learnedDefaults(settings.learned);
  const known = knownLegs(trip, learned);
  const given = resolveTrip(trip, knownDays(trip, known), learned);
  const givenLegs = plannedLegs(trip, given, known);
  // rests in heat hang on how hard the walk is, not on which pouches are in the packs
  const heat = heatOfDays(given, givenLegs, demandOf(given, givenLegs, loadsBetween(given, 0.5), settings));
  const { trip: resolved, legs } = withHeatRests(given, givenLegs, heat);
  const demandUnder = (loads: WalkingLoad) => demandOf(resolved, legs, loads, settings);
  // which meals there are, and where, does not hang on the loads
  const burdens = mealBurdens(resolved, legs, demandUnder(baseLoads(resolved)), settings);
  return { trip: resolved, legs, heat, burdens, demandUnder };
}

/** Loads between what everybody has in the pack anyway, 0, and what they may carry, 1. */
const loadsBetween =
  (trip: ResolvedTrip, share: number): WalkingLoad =>
  (_, name) => {
    const eater = trip.party.find((other) => other.name === name);
    return eater ? eater.baseLoadG + share * Math.max(0, eater.maxLoadG - eater.baseLoadG) : 0;
  };
const baseLoads = (trip: ResolvedTrip): WalkingLoad => loadsBetween(trip, 0);

/**
 * The spine: from a trip and a stock to everything the party has to know. Pure: the same input gives the same plan, to the byte of its JSON.
 *
 * Where a need is estimated from body data, the load makes the need and the food makes the load: the plan is made again with the loads of the last
 * round until the targets stand still (docs/method.md says why they do).
 *
 * @param trip a valid trip; the meals its `menu` lists stand as they are, the planner fills the others
 * @param shelf lots, each code once, with the pouches free for this trip; those that the trip plans to buy or to dry come besides
 * @param planner chooses the meals that are not listed
 * @returns the plan; its amounts are rounded to a thousandth of their unit
 * @throws RouteError where the days do not lie along the route
 */
export function planTrip(
  trip: Trip,
  shelf: Stock,
  settings: Settings,
  planner: MenuPlanner = firstExpired,
): TripPlan {
  const stock = withPlanned(shelf, trip.planned);
  const ground = groundOf(trip, settings);
  const { trip: resolved, legs, heat, burdens, demandUnder } = ground;
  const planWith = (demand: readonly DayDemand[]) => {
    const posed = poseMenu(resolved, demand, stock, burdens, settings);
    const chosen = planner.choose(posed.problem);
    const { menu, notices: menuNotices } = completeMenu(resolved, stock, posed, chosen, planner.name);
    const { water, notices: waterNotices } = planWater(resolved, legs, demand, heat, menu, settings);
    const { fuel, notices: fuelNotices, assumptions } = planFuel(resolved, menu, water, settings);
    const { carry, notices: loadNotices } = sharePacks(resolved, menu, stock, water, fuel);
    return {
      menu,
      water,
      fuel,
      carry,
      assumptions,
      notices: [...menuNotices, ...loadNotices, ...waterNotices, ...fuelNotices],
    };
  };

  let demand = demandUnder(baseLoads(resolved));
  let round = planWith(demand);
  let steps = 1;
  let next = demandUnder(loadsOf(round.carry));
  while (targetChangeKcal(demand, next) > SETTLED_KCAL && steps < MOST_ROUNDS) {
    demand = next;
    round = planWith(demand);
    steps++;
    next = demandUnder(loadsOf(round.carry));
  }
  const changeKcal = targetChangeKcal(demand, next);
  const { water, fuel } = round;
  const shortfall = findShortfall(resolved, demand, round.menu, stock, settings);
  const planned = stillToCome(resolved.planned, shelf);
  const { menu, carry, card } = markToCome(
    {
      menu: round.menu,
      carry: round.carry,
      card: makeCard(resolved, round.menu, stock, round.carry, water, fuel, settings),
    },
    planned,
  );
  const coming = comingLots(planned, menu);
  return tidyNumbers({
    tripName: card.title,
    startDate: card.startDate,
    endDate: card.endDate,
    assumptions: [...resolved.assumptions, ...round.assumptions],
    notices: [
      ...withdrawnNotices(trip, round.notices),
      ...round.notices,
      ...comingNotices(coming),
      ...routeNotices(trip),
      ...demandNotices(resolved, legs, demand),
    ],
    legs: legs.map(legSummary),
    coupling: { steps, changeKcal, settled: changeKcal <= SETTLED_KCAL },
    demand,
    menu,
    water,
    fuel,
    nutrition: nutritionOfDays(resolved, demand, menu, water, stock, settings),
    carry,
    shortfall,
    coming,
    card,
    totals: totalsOf(menu, stock, carry, fuel),
    costs: foodCosts(
      menu,
      stock,
      settings,
      resolved.party.map(({ name }) => name),
    ),
  });
}

/**
 * The menu problem of a trip: what a search is given. The meals that the trip lists are kept.
 *
 * @param demand the needs of a plan of this trip, `plan.demand`, whose loads they are of; left out: of first expired, first out
 * @example const problem = buildMenuProblem(trip, stock, settings);
 *   const plan = completePlan(trip, stock, settings, firstExpired.choose(problem), 'first expired, first out');
 * @throws RouteError where the days do not lie along the route
 */
export function buildMenuProblem(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  demand: readonly DayDemand[] = planTrip(trip, stock, settings).demand,
): MenuProblem {
  const { trip: resolved, burdens } = groundOf(trip, settings);
  return poseMenu(resolved, demand, withPlanned(stock, trip.planned), burdens, settings).problem;
}

/**
 * The plan of a trip with a menu that was chosen for it.
 *
 * @param chosen the meals that the trip does not list
 * @param planner who chose them
 * @throws RouteError where the days do not lie along the route
 */
export const completePlan = (
  trip: Trip,
  stock: Stock,
  settings: Settings,
  chosen: readonly MealChoice[],
  planner: string,
): TripPlan => planTrip(trip, stock, settings, { name: planner, choose: () => [...chosen] });

/** Lots that were withdrawn, as far as no meal names them. */
const withdrawnNotices = ({ withdrawn = [] }: Trip, said: readonly Notice[]): Notice[] =>
  withdrawn
    .filter(({ code }) => !said.some((other) => other.code === 'lot-withdrawn' && other.lot === code))
    .map(({ code, recipe, reason }) => notice('lot-withdrawn', { recipe, reason }, { lot: code }));

function loadsOf(carry: CarryPlan): WalkingLoad {
  const loads = new Map(carry.loads.map((load) => [`${load.day} ${load.eater}`, load.meanWalkingG]));
  return (day, eater) => loads.get(`${day} ${eater}`) ?? 0;
}

/** The most that any eater's target of a day moves from one round to the next, kcal. */
export function targetChangeKcal(before: readonly DayDemand[], after: readonly DayDemand[]): number {
  return Math.max(
    ...before.flatMap((day, index) =>
      day.eaters.map((eater, at) => Math.abs(eater.targetKcal - (after[index]?.eaters[at]?.targetKcal ?? 0))),
    ),
  );
}

function totalsOf(menu: MenuPlan, stock: Stock, carry: TripPlan['carry'], fuel: TripPlan['fuel']): Totals {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const packs = allPacks(carry);
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
    foodG: packs.reduce((sum, pack) => sum + pack.foodG, 0),
    packagingG: packs.reduce((sum, pack) => sum + pack.packagingG, 0),
    fuelGrossG: fuel.grossG,
    ...(priced.length > 0
      ? { costMinor: Math.round(priced.reduce((sum, lot) => sum + lot.costMinor, 0)) }
      : {}),
    costKnownShare:
      servingsOpened > 0 ? priced.reduce((sum, lot) => sum + lot.servings, 0) / servingsOpened : 0,
  };
}
