import type { PouchLot } from '../model/pouch-lot.ts';
import { pouchEnergyKcal } from '../model/pouch-totals.ts';
import type { Portion } from '../model/trip-plan.ts';

export type SeatedEater = {
  readonly name: string;
  /** What this meal should bring, kcal. */
  readonly needKcal: number;
  /** The most that this eater eats at this meal, kcal; at least `needKcal`. */
  readonly ceilingKcal: number;
};
export type OpenedPouches = { readonly lot: PouchLot; readonly pouches: number };
export type ServedMeal = {
  readonly portions: Portion[];
  readonly eatenKcal: ReadonlyMap<string, number>;
  readonly leftOver: { code: string; servings: number }[];
};

/**
 * Divides the opened pouches among the eaters who may eat them.
 *
 * Lots that few may eat are dealt first, so that whoever may eat everything leaves the common lots to whoever may not. Each lot goes
 * to its eaters in proportion to what they still need; what is then left goes, in proportion to the room, up to each one's ceiling. The rest is left over.
 *
 * @param mayEat whether an eater, by name, may be served a lot
 */
export function serveMeal(
  opened: readonly OpenedPouches[],
  eaters: readonly SeatedEater[],
  mayEat: (lot: PouchLot, eater: string) => boolean,
): ServedMeal {
  const eatenKcal = new Map(eaters.map((eater) => [eater.name, 0]));
  const servings = new Map<string, number>();
  const left = new Map(opened.map(({ lot, pouches }) => [lot.code, pouches * lot.servingsPerPouch]));
  const guests = new Map(
    opened.map(({ lot }) => [lot.code, eaters.filter((eater) => mayEat(lot, eater.name))]),
  );
  const byFewestGuests = [...opened].sort(
    (a, b) =>
      (guests.get(a.lot.code)?.length ?? 0) - (guests.get(b.lot.code)?.length ?? 0) ||
      (a.lot.code < b.lot.code ? -1 : 1),
  );

  const deal = (lot: PouchLot, roomKcal: (eater: SeatedEater) => number) => {
    const takers = (guests.get(lot.code) ?? [])
      .map((eater) => ({ eater, roomKcal: roomKcal(eater) }))
      .filter(({ roomKcal }) => roomKcal > 1e-9);
    const totalRoomKcal = takers.reduce((sum, { roomKcal }) => sum + roomKcal, 0);
    const available = left.get(lot.code) ?? 0;
    if (available <= 1e-9 || totalRoomKcal <= 0) return;
    const dealtServings = Math.min(available, totalRoomKcal / lot.energyKcal);
    for (const { eater, roomKcal } of takers)
      give(lot, eater.name, (dealtServings * roomKcal) / totalRoomKcal);
  };
  const give = (lot: PouchLot, eater: string, amount: number) => {
    const key = `${lot.code}\n${eater}`;
    servings.set(key, (servings.get(key) ?? 0) + amount);
    eatenKcal.set(eater, (eatenKcal.get(eater) ?? 0) + amount * lot.energyKcal);
    left.set(lot.code, (left.get(lot.code) ?? 0) - amount);
  };

  const withEnergy = byFewestGuests.filter(({ lot }) => pouchEnergyKcal(lot) > 0);
  for (const { lot } of withEnergy) deal(lot, (eater) => eater.needKcal - (eatenKcal.get(eater.name) ?? 0));
  for (const { lot } of withEnergy)
    deal(lot, (eater) => eater.ceilingKcal - (eatenKcal.get(eater.name) ?? 0));
  for (const { lot, pouches } of byFewestGuests) {
    if (pouchEnergyKcal(lot) > 0) continue;
    const takers = guests.get(lot.code) ?? [];
    for (const eater of takers) give(lot, eater.name, (pouches * lot.servingsPerPouch) / takers.length);
  }

  const portions = opened.flatMap(({ lot }) =>
    eaters.flatMap((eater): Portion[] => {
      const amount = servings.get(`${lot.code}\n${eater.name}`) ?? 0;
      return amount > 1e-9
        ? [{ eater: eater.name, code: lot.code, servings: amount, energyKcal: amount * lot.energyKcal }]
        : [];
    }),
  );
  const leftOver = opened.map(({ lot }) => ({
    code: lot.code,
    servings: Math.max(0, left.get(lot.code) ?? 0),
  }));
  return { portions, eatenKcal, leftOver };
}
