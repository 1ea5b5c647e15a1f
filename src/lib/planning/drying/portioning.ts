import type { PouchFill } from '../model/batch.ts';
import type { PouchSize } from '../model/kitchen.ts';

/**
 * Volume of half a flat pouch over that of the whole: of two pillows of like shape, the one of half the area holds 0.5 to the power of 1.5 (geometry).
 */
const HALF_VOLUME_SHARE = 0.5 ** 1.5;

/** A pouch, or half of one that was cut. */
export type Container = Pick<PouchFill, 'pouch' | 'half'>;
/** Pouches alike, not yet with their absorbers. */
export type Portions = Container & Pick<PouchFill, 'servings' | 'pouches'>;

export const containerMl = ({ pouch, half }: Container): number =>
  pouch.volumeMl * (half ? HALF_VOLUME_SHARE : 1);
export const containerTareG = ({ pouch, half }: Container): number => pouch.tareG * (half ? 0.5 : 1);
/** A pouch as its owner calls it, or half of it. */
export type ContainerName = { readonly label: string; readonly half: boolean };
export const containerName = ({ pouch, half }: Container): ContainerName => ({ label: pouch.label, half });

/** Most servings in one pouch; a lot on the shelf takes no more. */
const MOST_SERVINGS = 100;

/** Whole servings that go into a container, at most a hundred. */
export function servingsThatFit(container: Container, servingMl: number, headspaceShare: number): number {
  const fit = Math.floor((containerMl(container) * (1 - headspaceShare)) / servingMl + 1e-9);
  return Math.min(MOST_SERVINGS, fit);
}

/**
 * Pouches for all servings with the least room left empty, then the fewest pouches. A cut pouch counts as half; its other half is kept for the next time.
 *
 * @param servings whole number of servings
 * @param servingMl bulk volume of one, ml, more than 0
 * @param mostPerPouch most servings in a pouch; left out: what fits
 * @returns `undefined` where no pouch holds a serving
 */
export function proposePouches(
  servings: number,
  servingMl: number,
  pouches: readonly PouchSize[],
  headspaceShare: number,
  mostPerPouch = Infinity,
): Portions[] | undefined {
  const containers = pouches.flatMap((pouch): Container[] =>
    pouch.canBeCut
      ? [
          { pouch, half: false },
          { pouch, half: true },
        ]
      : [{ pouch, half: false }],
  );
  const ways = containers.flatMap((container) => {
    const usableMl = containerMl(container) * (1 - headspaceShare);
    const most = Math.min(servings, mostPerPouch, servingsThatFit(container, servingMl, headspaceShare));
    return Array.from({ length: most }, (_, index) => ({
      container,
      servings: index + 1,
      emptyMl: usableMl - (index + 1) * servingMl,
      counts: container.half ? 0.5 : 1,
    }));
  });
  if (ways.length === 0) return undefined;

  // best way to pouch n servings, from those of fewer
  type Best = { readonly emptyMl: number; readonly counts: number; readonly way: number };
  const best: (Best | undefined)[] = [{ emptyMl: 0, counts: 0, way: -1 }];
  for (let n = 1; n <= servings; n++)
    ways.forEach((way, index) => {
      const rest = best[n - way.servings];
      if (!rest) return;
      const emptyMl = rest.emptyMl + way.emptyMl;
      const counts = rest.counts + way.counts;
      const standing = best[n];
      if (
        !standing ||
        emptyMl < standing.emptyMl - 1e-9 ||
        (emptyMl < standing.emptyMl + 1e-9 && counts < standing.counts)
      )
        best[n] = { emptyMl, counts, way: index };
    });

  const taken = new Map<number, number>();
  for (let n = servings; n > 0;) {
    const way = best[n]?.way ?? 0;
    taken.set(way, (taken.get(way) ?? 0) + 1);
    n -= ways[way]?.servings ?? n;
  }
  return [...taken]
    .sort(([a], [b]) => (ways[b]?.servings ?? 0) - (ways[a]?.servings ?? 0) || a - b)
    .flatMap(([index, pouchCount]) => {
      const way = ways[index];
      return way ? [{ ...way.container, servings: way.servings, pouches: pouchCount }] : [];
    });
}
