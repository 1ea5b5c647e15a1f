import type { PouchLot } from '../model/pouch-lot.ts';
import { pouchEnergyKcal } from '../model/pouch-totals.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import { byExpiry } from './by-expiry.ts';
import { groupsByExclusions } from './exclusions.ts';
import {
  exclusionTable,
  mealKey,
  seatEaters,
  type ChosenPouches,
  type MealChoice,
  type MenuPlanner,
  type MenuProblem,
} from './menu-problem.ts';
import { serveMeal, type SeatedEater } from './serve-meal.ts';
import { withAnd, writtenWhy } from './why.ts';

/** An eater who has had this share of what the meal should bring is not served a pouch that is mostly too much. */
const FED_ENOUGH = 0.5;

export /**
 * First expired, first out: each meal, in the order of the trip, takes the lot that expires soonest of those that suit it and are in date
 * that day. Eaters with the fewest lots to choose from choose first, for themselves; what their pouches hold above their need feeds the others.
 * While another lot fits, a recipe of the last days waits, and so does a lot that eaters with less choice will need on the days to come.
 */
const firstExpired: MenuPlanner = {
  name: 'first expired, first out',
  choose(problem) {
    const may = exclusionTable(problem.party);
    const lots = [...problem.stock].sort(byExpiry);
    const free = new Map(lots.map((lot) => [lot.code, lot.pouches]));
    const kept = new Map(problem.kept.map((choice) => [mealKey(choice.day, choice.meal), choice]));
    const lastServedOn = new Map<string, number>();
    const chosen: MealChoice[] = [];

    for (const day of problem.demand) {
      for (const choice of problem.kept)
        if (choice.day === day.day)
          for (const { lot } of choice.opened) lastServedOn.set(lot.recipe, day.day);
      const eatenKcal = new Map<string, number>();
      for (const meal of day.meals) {
        const seats = seatEaters(day, meal, eatenKcal, problem.settings.eatUpToShare);
        const keptHere = kept.get(mealKey(day.day, meal));
        const opened = keptHere?.opened ?? fillMeal(problem, may, day, meal, seats, lots, free, lastServedOn);
        if (!keptHere) {
          chosen.push({ day: day.day, meal, opened });
          for (const { lot, pouches } of opened) {
            free.set(lot.code, (free.get(lot.code) ?? 0) - pouches);
            lastServedOn.set(lot.recipe, day.day);
          }
        }
        for (const [name, kcal] of serveMeal(opened, seats, may).eatenKcal)
          eatenKcal.set(name, (eatenKcal.get(name) ?? 0) + kcal);
      }
    }
    return chosen;
  },
};

function fillMeal(
  problem: MenuProblem,
  may: (lot: PouchLot, eater: string) => boolean,
  day: DayDemand,
  meal: MealKind,
  seats: readonly SeatedEater[],
  lots: readonly PouchLot[],
  free: ReadonlyMap<string, number>,
  lastServedOn: ReadonlyMap<string, number>,
): ChosenPouches[] {
  const { settings } = problem;
  const suits = lots.filter(
    (lot) =>
      lot.mealKinds.includes(meal) &&
      lot.bestBefore >= day.date &&
      (free.get(lot.code) ?? 0) > 0 &&
      pouchEnergyKcal(lot) > 0,
  );
  const unmetKcal = new Map(seats.map((seat) => [seat.name, seat.needKcal]));
  const sumUnmet = (names: readonly string[]) =>
    names.reduce((sum, name) => sum + (unmetKcal.get(name) ?? 0), 0);
  const feed = (lot: PouchLot, names: readonly string[], kcal: number): number => {
    const takers = names.filter((name) => may(lot, name));
    const wantedKcal = sumUnmet(takers);
    const share = wantedKcal > 0 ? Math.min(1, kcal / wantedKcal) : 0;
    for (const name of takers) unmetKcal.set(name, (unmetKcal.get(name) ?? 0) * (1 - share));
    return kcal - wantedKcal * share;
  };
  const opened = new Map<string, ChosenPouches>();
  const roomOf = (lot: PouchLot) => (free.get(lot.code) ?? 0) - (opened.get(lot.code)?.pouches ?? 0);
  const isRecent = (lot: PouchLot) => {
    const last = lastServedOn.get(lot.recipe);
    return !opened.has(lot.code) && last !== undefined && day.day - last <= settings.repeatAfterDays;
  };

  for (const group of groupsByChoice(problem, suits, may)) {
    const choices = suits.filter((lot) => group.every((name) => may(lot, name)));
    const whom = choices.length < suits.length ? withAnd(group) : undefined;
    const needKcal = sumUnmet(group);
    const isNeededLater = laterNeed(problem, may, day, meal, group, suits, roomOf);
    for (;;) {
      const missingKcal = sumUnmet(group);
      if (missingKcal < 1) break;
      const recipes = new Set([...opened.values()].map(({ lot }) => lot.recipe));
      const candidates = choices.filter(
        (lot) => roomOf(lot) > 0 && (recipes.has(lot.recipe) || recipes.size < settings.maxRecipesPerMeal),
      );
      const wanted = (lot: PouchLot) =>
        Math.floor(missingKcal / pouchEnergyKcal(lot) + (1 - settings.openFromShare));
      const fitting = candidates.filter((lot) => wanted(lot) >= 1);
      const spare = fitting.filter((lot) => !isNeededLater(lot));
      const pick =
        spare.find((lot) => !isRecent(lot)) ??
        spare[0] ??
        fitting.find((lot) => !isRecent(lot)) ??
        fitting[0];
      const smallest = smallestOf(candidates.filter((lot) => !isNeededLater(lot))) ?? smallestOf(candidates);
      const lot = pick ?? (missingKcal > needKcal * (1 - FED_ENOUGH) ? smallest : undefined);
      if (!lot) break;
      const pouches = pick ? Math.min(roomOf(lot), wanted(lot)) : 1;
      const why = pick
        ? reasonFor(pick, fitting, whom, isRecent)
        : whom === undefined
          ? writtenWhy('smallest')
          : writtenWhy('smallestOf', { eaters: whom });
      const before = opened.get(lot.code);
      opened.set(lot.code, { lot, pouches: (before?.pouches ?? 0) + pouches, why: before?.why ?? why });
      const restKcal = feed(lot, group, pouches * pouchEnergyKcal(lot));
      feed(
        lot,
        seats.map((seat) => seat.name).filter((name) => !group.includes(name)),
        restKcal,
      );
    }
  }
  return [...opened.values()];
}

function smallestOf(lots: readonly PouchLot[]): PouchLot | undefined {
  return lots.reduce<PouchLot | undefined>(
    (best, lot) => (best && pouchEnergyKcal(best) <= pouchEnergyKcal(lot) ? best : lot),
    undefined,
  );
}

function reasonFor(
  pick: PouchLot,
  fitting: readonly PouchLot[],
  whom: string | undefined,
  isRecent: (lot: PouchLot) => boolean,
): string {
  const passedOver = fitting.filter((lot) => byExpiry(lot, pick) < 0);
  let why = whom === undefined ? writtenWhy('first') : writtenWhy('firstOf', { eaters: whom });
  if (passedOver.some(isRecent)) why = writtenWhy('notRecent', { why });
  if (passedOver.some((lot) => !isRecent(lot))) why = writtenWhy('notNeeded', { why });
  return why;
}

/**
 * Whether a lot has to be left for the coming days of eaters outside a group who have less choice than the group: where all that they
 * may still be served at this kind of meal is hardly what they will need.
 */
function laterNeed(
  problem: MenuProblem,
  may: (lot: PouchLot, eater: string) => boolean,
  day: DayDemand,
  meal: MealKind,
  group: readonly string[],
  suits: readonly PouchLot[],
  roomOf: (lot: PouchLot) => number,
): (lot: PouchLot) => boolean {
  const allowedToGroup = suits.filter((lot) => group.every((name) => may(lot, name)));
  const dependents = problem.party.flatMap(({ name }) => {
    if (group.includes(name) || allowedToGroup.every((lot) => may(lot, name))) return [];
    const laterKcal = problem.demand
      .filter((later) => later.day > day.day)
      .reduce((sum, later) => sum + (later.eaters.find((row) => row.eater === name)?.mealKcal[meal] ?? 0), 0);
    const supplyKcal = suits
      .filter((lot) => may(lot, name))
      .reduce((sum, lot) => sum + roomOf(lot) * pouchEnergyKcal(lot), 0);
    return [{ name, laterKcal, supplyKcal }];
  });
  return (lot) =>
    dependents.some(
      ({ name, laterKcal, supplyKcal }) => may(lot, name) && supplyKcal - pouchEnergyKcal(lot) < laterKcal,
    );
}

/** The eaters by equal exclusions, those with the fewest lots to choose from first. */
function groupsByChoice(
  problem: MenuProblem,
  suits: readonly PouchLot[],
  may: (lot: PouchLot, eater: string) => boolean,
): string[][] {
  const groups = groupsByExclusions(problem.party).map((group) => group.map((eater) => eater.name));
  const choices = (names: readonly string[]) =>
    suits.filter((lot) => names[0] !== undefined && may(lot, names[0])).length;
  return groups.sort((a, b) => choices(a) - choices(b));
}
