import type { ModelLot } from './menu-model.ts';

/** Pouches of one recipe that are opened into one pot, or handed out. */
export type Filling = {
  /** Indices of the lots, and pouches of each. */
  readonly lots: readonly number[];
  readonly pouches: readonly number[];
  readonly servings: number;
  readonly kcal: number;
  readonly lackG: number;
  /** Servings of its smallest pouch. */
  readonly leastServings: number;
};

/** Lots that go into one pot at most: more codes than that nobody sorts out at the stove (rule of thumb). */
export const MOST_LOTS = 3;
/** Fillings kept for one dish and table, those with the fewest lots and the oldest first. */
const MOST_FILLINGS = 240;

/**
 * Every filling of a pot that is worth opening: of one to three lots, and none with a pouch that nobody could eat of.
 *
 * @param lots of one recipe, the oldest first
 * @param mostKcal what the people at the table can eat of it at most
 */
export function fillingsOf(lots: readonly ModelLot[], mostKcal: number): Filling[] {
  const fillings: Filling[] = [];
  const choose = (chosen: readonly { lot: ModelLot; pouches: number }[], from: number, more: number) => {
    for (let at = from; at < lots.length; at++) {
      const lot = lots[at];
      if (!lot) continue;
      const kcal = chosen.reduce((sum, other) => sum + other.pouches * other.lot.kcal, 0);
      const least = Math.min(lot.kcal, ...chosen.map((other) => other.lot.kcal));
      // without its smallest pouch it would still be more than they can eat
      for (let pouches = 1; pouches <= lot.stock && kcal + pouches * lot.kcal - least < mostKcal; pouches++) {
        if (fillings.length >= MOST_FILLINGS) return;
        const withIt = [...chosen, { lot, pouches }];
        if (more === 0) fillings.push(fillingOf(withIt));
        else choose(withIt, at + 1, more - 1);
      }
    }
  };
  for (let more = 0; more < MOST_LOTS; more++) choose([], 0, more);
  return fillings;
}

/** A filling of the pouches given. */
export function fillingOf(opened: readonly { lot: ModelLot; pouches: number }[]): Filling {
  const sumOf = (of: (lot: ModelLot) => number) =>
    opened.reduce((sum, { lot, pouches }) => sum + pouches * of(lot), 0);
  return {
    lots: opened.map(({ lot }) => lot.index),
    pouches: opened.map(({ pouches }) => pouches),
    servings: sumOf(({ servings }) => servings),
    kcal: sumOf(({ kcal }) => kcal),
    lackG: sumOf(({ lackG, servings }) => lackG * servings),
    leastServings: Math.min(...opened.map(({ lot }) => lot.servings)),
  };
}
