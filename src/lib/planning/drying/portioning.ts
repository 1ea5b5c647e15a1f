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

/** Whether food is rehydrated in it and eaten from it; from a jar, or such a pouch, it is poured into a bowl. */
export const isEatenFrom = ({ pouch }: Container): boolean =>
  pouch.barrier !== 'jar or can' && !pouch.noBoilingWater && !pouch.noEating;

/** Bulk volume of a serving, ml: dry, and with its water in it; the same for food that takes none. */
export type ServingVolume = { readonly dryMl: number; readonly wetMl: number };

/** @returns the room that a serving takes in a container, ml: with its water where it is eaten from that, else dry */
export const roomMl = (container: Container, { dryMl, wetMl }: ServingVolume): number =>
  isEatenFrom(container) ? Math.max(dryMl, wetMl) : dryMl;

/** Most servings in one pouch; a lot on the shelf takes no more. */
const MOST_SERVINGS = 100;

/** Whole servings that go into a container, at most a hundred. */
export function servingsThatFit(container: Container, servingMl: number, headspaceShare: number): number {
  const fit = Math.floor((containerMl(container) * (1 - headspaceShare)) / servingMl + 1e-9);
  return Math.min(MOST_SERVINGS, fit);
}

/** A meal from one pouch is for one or two (rule of thumb). */
const MEAL_SERVINGS = 2;

/**
 * Pouches for all servings with the least room left empty, then the fewest pouches. A cut pouch counts as half; its other half is kept for the next time.
 *
 * @param servings whole number of servings
 * @param volume of one, more than 0
 * @param mostPerPouch most servings in a pouch; left out: what fits, but a meal for one or two where it is eaten from the pouch
 * @returns `undefined` where no pouch holds a serving
 */
export function proposePouches(
  servings: number,
  volume: ServingVolume,
  pouches: readonly PouchSize[],
  headspaceShare: number,
  mostPerPouch?: number,
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
    const servingMl = roomMl(container, volume);
    const isMeal = isEatenFrom(container) && volume.wetMl > volume.dryMl;
    const most = Math.min(
      servings,
      mostPerPouch ?? (isMeal ? MEAL_SERVINGS : Infinity),
      servingsThatFit(container, servingMl, headspaceShare),
    );
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
