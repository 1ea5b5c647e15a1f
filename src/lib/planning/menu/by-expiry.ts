import type { PouchLot } from '../model/pouch-lot.ts';

/** Orders lots first expired, first out: best-before, then sealing date, then code. */
export function byExpiry(a: PouchLot, b: PouchLot): number {
  const key = (lot: PouchLot) => [lot.bestBefore, lot.sealedOn, lot.code].join('\n');
  return key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0;
}
