import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import { pouchEnergyKcal, pouchGrossG } from '../model/pouch-totals.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayDemand, ReservePouches } from '../model/trip-plan.ts';
import { MAIN_MEALS } from '../model/words.ts';
import { mayEat } from './exclusions.ts';
import { kindOf } from './lot-rules.ts';
import { tasteOf } from './tastes.ts';

/** Of a meal this share is enough: pouches do not come out even (rule of thumb). */
const ENOUGH_SHARE = 0.75;

/**
 * Sets the reserve aside: for each person so many main meals of what keeps longest and, of what keeps as long, is lightest for its energy,
 * and in date on the last day. Whoever has least to choose from comes first.
 *
 * @param stock without the pouches of the meals that are listed
 * @returns what is set aside, and the stock without it
 */
export function setReserveAside(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  stock: Stock,
): { reserve: ReservePouches[]; rest: Stock; notices: Notice[] } {
  const meals = trip.reserveMeals;
  const lastDate = demand.at(-1)?.date ?? '';
  if (meals === 0) return { reserve: [], rest: stock, notices: [] };
  const lots = stock
    .filter(
      (lot) =>
        lot.pouches > 0 && kindOf(lot) === 'main' && pouchEnergyKcal(lot) > 0 && lot.bestBefore >= lastDate,
    )
    .sort(
      (a, b) =>
        (a.bestBefore < b.bestBefore ? 1 : a.bestBefore > b.bestBefore ? -1 : 0) ||
        pouchGrossG(a) / pouchEnergyKcal(a) - pouchGrossG(b) / pouchEnergyKcal(b) ||
        (a.code < b.code ? -1 : 1),
    );
  const mayTake = (lot: PouchLot, eater: ResolvedTrip['party'][number]) =>
    mayEat(lot, eater) && tasteOf(lot.recipe, eater) !== 'never';
  const choices = (eater: ResolvedTrip['party'][number]) => lots.filter((lot) => mayTake(lot, eater)).length;
  const taken = new Map<PouchLot, number>();
  /** Energy in pouches that were taken and belongs to nobody yet, by lot. */
  const spareKcal = new Map<PouchLot, number>();
  let missingKcal = 0;
  for (const eater of [...trip.party].sort((a, b) => choices(a) - choices(b))) {
    let wantedKcal = meals * usualMainMealKcal(demand, eater.name);
    const enoughKcal = wantedKcal * (1 - ENOUGH_SHARE);
    for (const lot of lots) {
      if (wantedKcal <= enoughKcal + 1e-6) break;
      if (!mayTake(lot, eater)) continue;
      while (wantedKcal > enoughKcal + 1e-6) {
        if ((spareKcal.get(lot) ?? 0) <= 1e-6) {
          if ((taken.get(lot) ?? 0) >= lot.pouches) break;
          taken.set(lot, (taken.get(lot) ?? 0) + 1);
          spareKcal.set(lot, (spareKcal.get(lot) ?? 0) + pouchEnergyKcal(lot));
        }
        const kcal = Math.min(wantedKcal, spareKcal.get(lot) ?? 0);
        spareKcal.set(lot, (spareKcal.get(lot) ?? 0) - kcal);
        wantedKcal -= kcal;
      }
    }
    if (wantedKcal > enoughKcal + 1e-6) missingKcal += wantedKcal;
  }
  return {
    reserve: [...taken]
      .map(([lot, pouches]): ReservePouches => ({
        code: lot.code,
        recipe: lot.recipe,
        pouches,
        servings: pouches * lot.servingsPerPouch,
        energyKcal: pouches * pouchEnergyKcal(lot),
      }))
      .sort((a, b) => (a.code < b.code ? -1 : 1)),
    rest: stock.map((lot) => ({ ...lot, pouches: lot.pouches - (taken.get(lot) ?? 0) })),
    notices: missingKcal > 0 ? [notice('reserve-short', { meals, missingKcal })] : [],
  };
}

/** Mean of what is planned for the main meals of somebody, kcal. */
function usualMainMealKcal(demand: readonly DayDemand[], name: string): number {
  const planned = demand.flatMap(({ eaters }) =>
    eaters
      .filter(({ eater }) => eater === name)
      .flatMap(({ mealKcal }) => MAIN_MEALS.map((meal) => mealKcal[meal] ?? 0).filter((kcal) => kcal > 0)),
  );
  return planned.length > 0 ? planned.reduce((sum, kcal) => sum + kcal, 0) / planned.length : 0;
}
