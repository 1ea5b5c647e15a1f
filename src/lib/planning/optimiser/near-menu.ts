import type { Laying } from '../menu/laying.ts';
import type { MenuModel } from '../menu/menu-model.ts';
import type { MenuState, ModelMenu } from '../menu/menu-state.ts';
import { plateKey, type ExtraPieces, type ExtraPlate } from './extra-plates.ts';
import type { OpenProgram } from './linear-program.ts';
import { layingKey, type MasterProgram, type Proof } from './master-program.ts';
import { mergeLayings } from './merge-layings.ts';

/** How much is put together: layings of a slot and plates of a person's day at most, and nodes of the tree. */
export type NearLimits = { readonly layings: number; readonly plates: number; readonly nodes: number };
/** Where there is too much within some points, what is within half of them is looked for, so often. */
const HALVINGS = 7;

/** All of something within so many points, or within a part of them. */
function within<T>(points: number, of: (points: number) => T[] | undefined): { found: T[]; within: number } {
  let near = points;
  for (let times = 0; times <= HALVINGS; times++) {
    const found = of(near);
    if (found) return { found, within: near };
    near /= 2;
  }
  return { found: [], within: 0 };
}

/**
 * The best menu of what can be in a better one than that known: a laying or a plate whose price is above the least by more than what the known menu is above the bound is in no better menu
 * (reduced cost fixing). Where there is too much of that, of the nearest; then what is farther bounds.
 *
 * @param best the best menu known @param points its points
 * @returns a menu, where one was found, and what no menu is under
 */
export function solveNear(
  model: MenuModel,
  master: MasterProgram,
  proof: Proof,
  open: OpenProgram,
  best: ModelMenu,
  points: number,
  limits: NearLimits,
): { readonly state: MenuState | undefined; readonly bound: number } {
  const gap = Math.max(0, points - proof.points) + 1e-6;
  let least = gap;
  const layings = new Map<string, Laying>();
  for (const laying of best.layings) layings.set(layingKey(laying), laying);
  for (const slot of model.slots) {
    const near = within(gap, (most) => master.layingsWithin(slot, proof, most, limits.layings));
    for (const laying of near.found) layings.set(layingKey(laying), laying);
    least = Math.min(least, near.within);
  }
  const ofBest = platesOf(best);
  const plates: ExtraPlate[] = [];
  const pieces: ExtraPieces[] = [];
  for (const extraDay of model.extraDays)
    extraDay.people.forEach((_, place) => {
      const near = master.platesWithin(extraDay, place, proof, gap, limits.plates);
      if (!near) {
        pieces.push(master.piecesWithin(extraDay, place, proof, gap));
        return;
      }
      const known = new Map(near.map((plate) => [plateKey(plate), plate]));
      for (const plate of ofBest)
        if (plate.extraDay === extraDay.index && plate.place === place) known.set(plateKey(plate), plate);
      plates.push(...known.values());
    });
  const merged = mergeLayings(model, [...layings.values()], plates, pieces, open, limits.nodes);
  const farther = least >= gap ? points : proof.points + least;
  return { state: merged.state, bound: Math.min(points, farther, merged.bound) };
}

/** The extras of a menu as plates. */
export function platesOf({ extras }: ModelMenu): ExtraPlate[] {
  return [...Map.groupBy(extras, ({ extraDay, place }) => `${extraDay} ${place}`).values()].flatMap((own) => {
    const [first] = own;
    return first
      ? [
          {
            extraDay: first.extraDay,
            place: first.place,
            lots: own.map(({ lot }) => lot),
            units: own.map(({ units }) => units),
          },
        ]
      : [];
  });
}
