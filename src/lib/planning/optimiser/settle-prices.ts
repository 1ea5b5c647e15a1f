import type { MasterProgram } from './master-program.ts';

export type SettleLimits = { readonly rounds: number; readonly work: number };

/** How near the best prices so far it is looked around, as a share of the way to those of the program. */
const SMOOTH = 0.7;
/** A smaller part of the way where the prices looked at prove less than the best so far; so much less where they prove more. */
const NEARER = 0.7;
const FARTHER = 0.1;
/** Prices of a kcal, in the day and in the pouch, to begin with, as parts of one that is missing to a day: those of an ample shelf, and of a scarce one. */
const EVEN_PRICES = [0, 0.45, 1];

/**
 * Makes layings and plates until no more pay. Prices of a program with few layings swing widely, so what pays is looked for between them and the best prices so far, and nearer to its own
 * each time that nothing came of it (smoothing: Wentges 1997, International Transactions in Operational Research 4:151-162; Pessoa et al. 2018, INFORMS Journal on Computing 30:339-360).
 *
 * @param enough a bound that is nearer than this share of the program's points need not be bettered
 * @returns what no menu is under, points; so is what it yields after each round
 */
export function* settlePrices(
  master: MasterProgram,
  { rounds, work }: SettleLimits,
  enough: number,
): Generator<number, number> {
  let share = SMOOTH;
  let missed = 0;
  let bound = -Infinity;
  for (const part of EVEN_PRICES) {
    const found = master.look(master.evenPrices(part));
    for (const laying of found.layings) master.addLaying(laying);
    bound = Math.max(bound, found.points);
  }
  for (let round = 0; round < rounds; round++) {
    const solution = master.solve();
    const own = master.prices();
    const at = missed > 0 ? Math.max(0, share - missed * (1 - SMOOTH)) : share;
    const found = master.look(between(own, master.proof?.prices ?? own, at));
    const added = master.takePaying(found, own);
    if (master.work.units > work) return Math.max(bound, found.points);
    missed = added === 0 ? missed + 1 : 0;
    // past the best on the way: nearer to it next time
    share = found.points > bound ? Math.max(0, share - FARTHER) : 1 - NEARER * (1 - share);
    bound = Math.max(bound, found.points);
    const isNear = solution.points - bound < enough * Math.abs(solution.points) || (added === 0 && at === 0);
    if (isNear) {
      if (master.addBrokenRows(solution) === 0) break;
      missed = 0;
      share = SMOOTH;
    }
    yield bound;
  }
  return bound;
}

/** Prices between some and others, by the share of the others; of rows that the others do not know, nothing of theirs. */
function between(some: Float64Array, others: Float64Array, share: number): Float64Array {
  if (share === 0) return some;
  return Float64Array.from(some, (price, row) => (1 - share) * price + share * (others[row] ?? 0));
}
