import { pouchEnergyKcal, pouchGrossG } from '../model/pouch-totals.ts';
import type { PlannedLot } from '../model/planned-lot.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import type { FillPreference } from '../model/words.ts';
import { planTrip } from '../plan-trip.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import { knownOffers, lacksOf } from '../shortfall/find-shortfall.ts';
import { isSameFood, type Offer } from '../shortfall/offers.ts';
import { fillLine, offersFor } from '../shortfall/suggest.ts';
import { takeIn, trimPlanned } from '../shortfall/take-in.ts';

/** Rounds of filling and planning; each fills what the plan could not use of the last. */
const MOST_ROUNDS = 8;
/** A line of less is no reason to go to a shop, kcal (rule of thumb: a handful of anything). */
const LEAST_LINE_KCAL = 150;

const costOf = ({ lot }: Offer): number =>
  lot.costMinor === undefined || lot.energyKcal === 0 ? Infinity : lot.costMinor / lot.energyKcal;
const weightOf = ({ lot }: Offer): number => pouchGrossG(lot) / Math.max(1, pouchEnergyKcal(lot));
const isBought = ({ way }: Offer): number => Number(way === 'buy');
const inTurn = (a: number, b: number): number => (a === b ? 0 : a - b);

/** Which of two foods is taken first. Sorting is stable: foods that are alike stay in the order in which they are offered. */
const ORDER: Readonly<Record<FillPreference, (a: Offer, b: Offer) => number>> = {
  'dry first': (a, b) => isBought(a) - isBought(b),
  'buy only': () => 0,
  cheapest: (a, b) => inTurn(costOf(a), costOf(b)),
  lightest: (a, b) => inTurn(weightOf(a), weightOf(b)),
};

/**
 * Fills all that is missing to a trip by a stated preference: round after round it takes foods in for every line, plans again, and looks what is missing still.
 * No more of one food is taken than one would eat of it, so a line may need several, and some may stay.
 *
 * @param recipes what can be dried from recipes of the kitchen, and nothing else can; left out: dishes that the shelf has or had
 * @returns the trip with the planned lots that its plan uses
 */
export function fillShortfall(
  trip: Trip,
  shelf: Stock,
  settings: Settings,
  preference: FillPreference,
  recipes?: readonly Offer[],
): Trip {
  let best = { trip, plan: planTrip(trip, shelf, settings) };
  // foods of which more was offered and none was eaten: everybody has as much of them as they take
  const enough: PlannedLot[] = [];
  for (let round = 0; round < MOST_ROUNDS && best.plan.shortfall.missingKcal > 0; round++) {
    const all = foodsFor(best.trip, best.plan, shelf, settings, preference, recipes, enough);
    if (all.length === 0) break;
    const filled = takeIn(best.trip, best.plan, all, shelf);
    const plan = planTrip(filled, shelf, settings);
    enough.push(
      ...all.filter((food) => neededOf(filled, plan, food) <= neededOf(best.trip, best.plan, food)),
    );
    if (plan.shortfall.missingKcal < best.plan.shortfall.missingKcal - 1)
      best = { trip: trimPlanned(filled, plan.coming), plan };
  }
  return withoutSurplus(best.trip, best.plan, shelf, settings);
}

/** With fewer pouches to choose from a plan may need fewer still; what it does not need is left out, as long as nobody gets less by it. */
function withoutSurplus(trip: Trip, { shortfall }: TripPlan, shelf: Stock, settings: Settings): Trip {
  let best = trip;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const plan = planTrip(best, shelf, settings);
    if (plan.shortfall.missingKcal > shortfall.missingKcal + 1) break;
    const trimmed = trimPlanned(best, plan.coming);
    if (JSON.stringify(trimmed) === JSON.stringify(best)) break;
    best = trimmed;
  }
  return best;
}

/** Pouches of a planned food that a plan opens. */
function neededOf({ planned = [] }: Trip, { coming }: TripPlan, food: PlannedLot): number {
  const code = planned.find((own) => isSameFood(own, food))?.lot.code;
  return coming.find((lot) => lot.code === code)?.needed ?? 0;
}

function foodsFor(
  trip: Trip,
  { demand, menu, shortfall }: TripPlan,
  shelf: Stock,
  settings: Settings,
  preference: FillPreference,
  recipes: readonly Offer[] | undefined,
  enough: readonly PlannedLot[],
): PlannedLot[] {
  const resolved = resolveTrip(trip);
  const known = knownOffers(resolved, shelf, settings);
  const isPlanned = (offer: Offer) => trip.planned?.some((own) => isSameFood(own, offer)) === true;
  const others = known.filter(
    (offer) =>
      !recipes?.some((own) => isSameFood(own, offer)) &&
      (recipes === undefined || offer.way === 'buy' || isPlanned(offer)),
  );
  const offers = [...(recipes ?? []), ...others]
    .filter(({ way }) => preference !== 'buy only' || way === 'buy')
    .filter((offer) => !enough.some((food) => isSameFood(food, offer)))
    .sort(ORDER[preference]);
  return lacksOf(resolved, demand, menu, shortfall.meals)
    .filter(({ gaps }) => gaps.reduce((sum, { missingKcal }) => sum + missingKcal, 0) >= LEAST_LINE_KCAL)
    .flatMap(({ meal, group, gaps }) => fillLine(offersFor(offers, meal, group), meal, gaps));
}
