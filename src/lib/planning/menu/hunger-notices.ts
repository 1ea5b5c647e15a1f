import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayDemand, EaterDayEnergy } from '../model/trip-plan.ts';
import { mayEat } from './exclusions.ts';

/** A day that misses no more than this share of its target counts as fed: labels and tables are no more exact (common practice). */
export const FED_SHARE = 0.95;

/** Says who is short on which days, and where it is an exclusion that leaves them short although others could still eat. */
export function hungerNotices(
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
