import type { FuelContainer, StartedContainer } from '../model/trip.ts';

/** What is taken: `count` full ones of a size, or one started container with the fuel that is left in it. */
export type TakenContainer = {
  readonly label: string;
  readonly count: number;
  readonly netG: number;
  readonly tareG: number;
  readonly started: boolean;
};

type Way = { readonly grossG: number; readonly count: number };

/**
 * The lightest set of containers that holds at least the fuel needed: whole full ones, as many of each size as it takes, and the started ones from home, once each.
 * Of equally light sets the one with fewer containers.
 *
 * Exact, by dynamic programming over whole grams: the lightest way to hold n grams with full ones, then with each started one taken or left.
 *
 * @param needG fuel needed, g
 * @param sizes containers of one fuel, at least 1 g net each
 * @param started part-full containers of the same fuel
 * @returns started ones first, then full ones in the order of `sizes`; empty where nothing is needed or nothing can hold it
 */
export function chooseContainers(
  needG: number,
  sizes: readonly FuelContainer[],
  started: readonly StartedContainer[] = [],
): TakenContainer[] {
  const target = Math.ceil(needG - 1e-9);
  if (target <= 0) return [];
  const full = sizes.map((size) => ({ holdsG: Math.floor(size.netG), grossG: size.netG + size.tareG }));
  const lightest: (Way | undefined)[] = [{ grossG: 0, count: 0 }];
  const lastFull: number[] = [-1];
  for (let grams = 1; grams <= target; grams++) {
    full.forEach(({ holdsG, grossG }, index) => {
      const way = plus(lightest[Math.max(0, grams - holdsG)], grossG);
      if (!isLighter(way, lightest[grams])) return;
      lightest[grams] = way;
      lastFull[grams] = index;
    });
  }

  const usable = started
    .map((container) => ({ container, holdsG: Math.floor(container.grossG - container.tareG) }))
    .filter(({ holdsG }) => holdsG > 0);
  const takes = usable.map(({ container, holdsG }) => {
    const taken: boolean[] = [];
    for (let grams = target; grams > 0; grams--) {
      const way = plus(lightest[Math.max(0, grams - holdsG)], container.grossG);
      taken[grams] = isLighter(way, lightest[grams]);
      if (taken[grams]) lightest[grams] = way;
    }
    return taken;
  });
  if (!lightest[target]) return [];

  let grams = target;
  const fromHome: TakenContainer[] = [];
  for (let index = usable.length - 1; index >= 0; index--) {
    const entry = usable[index];
    if (!entry || grams <= 0 || !takes[index]?.[grams]) continue;
    const { label, grossG, tareG } = entry.container;
    fromHome.unshift({ label, count: 1, netG: grossG - tareG, tareG, started: true });
    grams = Math.max(0, grams - entry.holdsG);
  }
  const counts = sizes.map(() => 0);
  while (grams > 0) {
    const index = lastFull[grams] ?? -1;
    const size = full[index];
    if (!size) break;
    counts[index] = (counts[index] ?? 0) + 1;
    grams = Math.max(0, grams - size.holdsG);
  }
  const bought = sizes.flatMap(({ label, netG, tareG }, index): TakenContainer[] =>
    (counts[index] ?? 0) > 0 ? [{ label, count: counts[index] ?? 0, netG, tareG, started: false }] : [],
  );
  return [...fromHome, ...bought];
}

const plus = (way: Way | undefined, grossG: number): Way | undefined =>
  way && { grossG: way.grossG + grossG, count: way.count + 1 };

function isLighter(way: Way | undefined, than: Way | undefined): boolean {
  if (!way) return false;
  if (!than) return true;
  return way.grossG < than.grossG - 1e-9 || (way.grossG < than.grossG + 1e-9 && way.count < than.count);
}
