import type { FuelContainer } from '../model/trip.ts';

export type ContainerCount = { readonly container: FuelContainer; readonly count: number };

/**
 * The lightest set of whole, full containers that holds at least the fuel needed; of equally light sets the one with fewer containers.
 *
 * Exact, by dynamic programming over whole grams: lightest[n] is the lightest way to hold n grams.
 *
 * @param needG fuel needed, g
 * @param sizes containers of one fuel, at least 1 g net each
 * @returns counts in the order of `sizes`; empty where nothing is needed or there is no size
 */
export function chooseContainers(needG: number, sizes: readonly FuelContainer[]): ContainerCount[] {
  const target = Math.ceil(needG - 1e-9);
  if (target <= 0 || sizes.length === 0) return [];
  type Way = { readonly grossG: number; readonly count: number; readonly last: number };
  const lightest: Way[] = [{ grossG: 0, count: 0, last: -1 }];
  for (let grams = 1; grams <= target; grams++) {
    let best: Way | undefined;
    sizes.forEach((size, index) => {
      const before = lightest[Math.max(0, grams - Math.floor(size.netG))];
      if (!before) return;
      const way = { grossG: before.grossG + size.netG + size.tareG, count: before.count + 1, last: index };
      if (
        !best ||
        way.grossG < best.grossG - 1e-9 ||
        (way.grossG < best.grossG + 1e-9 && way.count < best.count)
      )
        best = way;
    });
    if (best) lightest[grams] = best;
  }
  const counts = new Array<number>(sizes.length).fill(0);
  for (let grams = target; grams > 0;) {
    const way = lightest[grams];
    const size = way && sizes[way.last];
    if (!way || !size) break;
    counts[way.last] = (counts[way.last] ?? 0) + 1;
    grams = Math.max(0, grams - Math.floor(size.netG));
  }
  return sizes
    .map((container, index) => ({ container, count: counts[index] ?? 0 }))
    .filter(({ count }) => count > 0);
}
