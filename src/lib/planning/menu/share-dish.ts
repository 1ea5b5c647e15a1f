import type { PouchLot } from '../model/pouch-lot.ts';
import type { DishStyle } from '../model/trip.ts';
import type { PortionSize } from '../model/words.ts';
import { dealRows } from './deal-rows.ts';
import { canBeOwnPouch, OWN_POUCH_BELOW_SERVINGS, unitsOf } from './lot-rules.ts';
import { SITTING_SHARE } from './menu-costs.ts';
import type { MealTask } from './menu-problem.ts';
import { SIZE_FACTOR } from './menu-model.ts';

/** Somebody at the table of a meal. */
export type AtTable = {
  readonly name: string;
  /** What is planned for them at this meal, kcal. */
  readonly plannedKcal: number;
  /** How much they take of a pot, where somebody said so. */
  readonly portion?: PortionSize | undefined;
};
export type OpenedPouches = { readonly lot: PouchLot; readonly pouches: number };
export type DishPortion = { readonly eater: string; readonly lot: PouchLot; readonly servings: number };

const EPSILON = 1e-9;
const QUARTERS = 4;
/** A portion from a pot, quarters: at least a half, and a quarter where there is too little for that. */
const LEAST_QUARTERS = 2;

const quartersIn = ({ lot, pouches }: OpenedPouches): number =>
  Math.floor(pouches * lot.servingsPerPouch * QUARTERS + EPSILON);
const energyIn = (opened: readonly OpenedPouches[]): number =>
  opened.reduce((sum, { lot, pouches }) => sum + pouches * lot.servingsPerPouch * lot.energyKcal, 0);

/** Parts of pouches that are handed out whole: a small pouch, or one serving of a larger one. */
const partsIn = (opened: readonly OpenedPouches[]): { lot: PouchLot; servings: number }[] =>
  opened.flatMap(({ lot, pouches }) => {
    const isSmall = lot.servingsPerPouch < OWN_POUCH_BELOW_SERVINGS;
    const count = pouches * (isSmall ? 1 : Math.floor(lot.servingsPerPouch + EPSILON));
    return Array.from({ length: count }, () => ({ lot, servings: isSmall ? lot.servingsPerPouch : 1 }));
  });

/** How the pouches of a dish come to people where nobody said so: each their own where there are enough of them and the meal is not of one pot. */
export function styleOf(
  task: Pick<MealTask, 'style'>,
  people: readonly AtTable[],
  opened: readonly OpenedPouches[],
): DishStyle {
  if (task.style === 'shared pot' || !opened.every(({ lot }) => canBeOwnPouch(lot))) return 'shared pot';
  const allSmall = opened.every(({ lot }) => lot.servingsPerPouch < OWN_POUCH_BELOW_SERVINGS);
  const isEnough = partsIn(opened).length >= people.length;
  return isEnough && (allSmall || task.style === 'own pouch') ? 'own pouch' : 'shared pot';
}

/**
 * Shares out what is opened of one main dish: a pot in quarters, in proportion to what each takes; pouches of their own whole or by half.
 * Nobody gets more than fits one sitting, and what nobody gets is left over.
 *
 * @param people all of whom may eat it
 * @param style left out: as fits
 */
export function shareDish(
  task: Pick<MealTask, 'style'>,
  people: readonly AtTable[],
  opened: readonly OpenedPouches[],
  style: DishStyle = styleOf(task, people, opened),
): DishPortion[] {
  if (people.length === 0) return [];
  return style === 'shared pot' ? fromPot(people, opened) : handedOut(people, partsIn(opened), true);
}

function fromPot(people: readonly AtTable[], opened: readonly OpenedPouches[]): DishPortion[] {
  const total = opened.reduce((sum, of) => sum + quartersIn(of), 0);
  const servings = opened.reduce((sum, { lot, pouches }) => sum + pouches * lot.servingsPerPouch, 0);
  const quarterKcal = energyIn(opened) / (servings * QUARTERS);
  const mean = people.reduce((sum, { plannedKcal }) => sum + plannedKcal, 0) / people.length;
  const weights = people.map(({ plannedKcal, portion }) =>
    portion ? mean * SIZE_FACTOR[portion] : plannedKcal,
  );
  const allWeights = weights.reduce((sum, weight) => sum + weight, 0);
  const most = people.map(({ plannedKcal }) =>
    quarterKcal > 0 ? Math.max(1, Math.floor((SITTING_SHARE * plannedKcal) / quarterKcal + EPSILON)) : total,
  );
  const share = weights.map((weight) =>
    allWeights > 0 ? (weight / allWeights) * total : total / people.length,
  );
  const least =
    total >= LEAST_QUARTERS * people.length ? LEAST_QUARTERS : Math.min(1, Math.floor(total / people.length));
  const quarters = share.map((of, at) => Math.min(most[at] ?? 0, Math.max(least, Math.floor(of + EPSILON))));
  const sum = () => quarters.reduce((all, own) => all + own, 0);
  // whoever is furthest under their share takes the next quarter; whoever is furthest above it gives one back
  const furthest = (sign: 1 | -1, may: (at: number) => boolean) =>
    quarters.reduce<number | undefined>((best, own, at) => {
      if (!may(at)) return best;
      const lack = sign * ((share[at] ?? 0) - own);
      const of = best === undefined ? -Infinity : sign * ((share[best] ?? 0) - (quarters[best] ?? 0));
      return lack > of + EPSILON ? at : best;
    }, undefined);
  while (sum() > total) {
    const from = furthest(-1, (at) => (quarters[at] ?? 0) > 0);
    if (from === undefined) break;
    quarters[from] = (quarters[from] ?? 0) - 1;
  }
  while (sum() < total) {
    const to = furthest(1, (at) => (quarters[at] ?? 0) < (most[at] ?? 0));
    if (to === undefined) break;
    quarters[to] = (quarters[to] ?? 0) + 1;
  }
  return pouredPortions(
    people.map(({ name }, at) => ({ eater: name, servings: (quarters[at] ?? 0) / QUARTERS })),
    opened,
  );
}

/** Portions of a dish by lot: the lots one after the other, as they are opened. */
export function pouredPortions(
  portions: readonly { readonly eater: string; readonly servings: number }[],
  opened: readonly OpenedPouches[],
): DishPortion[] {
  const rows = dealRows(
    portions.map(({ servings }) => servings),
    opened.map(({ lot, pouches }) => pouches * lot.servingsPerPouch),
  );
  return rows.flatMap(({ to, lot, servings }) => {
    const [portion, of] = [portions[to], opened[lot]];
    return portion && of ? [{ eater: portion.eater, lot: of.lot, servings }] : [];
  });
}

/** Each part goes to whom the meal has brought least so far of what is planned. @param halves a small pouch that is far too much is left half full */
function handedOut(
  people: readonly AtTable[],
  parts: readonly { readonly lot: PouchLot; readonly servings: number }[],
  halves: boolean,
): DishPortion[] {
  const rows = new Map<string, DishPortion>();
  const eatenKcal = new Map<string, number>();
  const fullness = ({ name, plannedKcal }: AtTable) =>
    plannedKcal > 0 ? (eatenKcal.get(name) ?? 0) / plannedKcal : Infinity;
  for (const { lot, servings } of parts) {
    const room = ({ name, plannedKcal }: AtTable, amount: number) =>
      (eatenKcal.get(name) ?? 0) + amount * lot.energyKcal <= SITTING_SHARE * plannedKcal + EPSILON;
    const takers = people.filter((one) => room(one, servings) || !eatenKcal.has(one.name));
    const [first, ...others] = takers;
    if (!first) continue;
    const to = others.reduce((best, one) => (fullness(one) < fullness(best) - EPSILON ? one : best), first);
    const isWhole = !halves || room(to, servings) || lot.servingsPerPouch >= OWN_POUCH_BELOW_SERVINGS;
    const taken = isWhole ? servings : servings / 2;
    const key = `${to.name}\n${lot.code}`;
    rows.set(key, { eater: to.name, lot, servings: (rows.get(key)?.servings ?? 0) + taken });
    eatenKcal.set(to.name, (eatenKcal.get(to.name) ?? 0) + taken * lot.energyKcal);
  }
  return [...rows.values()];
}

/** Deals an extra, a side or a drink by pieces, spoons or half servings, as long as it is not too much for the meal. */
export function dealExtra(people: readonly AtTable[], { lot, pouches }: OpenedPouches): DishPortion[] {
  const count = pouches * unitsOf(lot);
  const servings = lot.servingsPerPouch / unitsOf(lot);
  return handedOut(
    people,
    Array.from({ length: count }, () => ({ lot, servings })),
    false,
  );
}
