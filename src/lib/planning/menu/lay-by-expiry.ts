import type { MenuModel } from './menu-model.ts';
import { MenuState, type ModelMenu } from './menu-state.ts';

/** What a serving of the lot that keeps longest costs more than one of the first to expire, points: more than anything but an empty plate. */
const AGE_OF_SERVING = 80;

/** Dishes that may stand at a meal by their age: of the oldest, enough to feed everybody at the table. */
const OLDEST_LOOKED_AT = 24;

/** Prices that put the first to expire before everything but hunger. Lots of a model stand in the order in which they expire. */
export const agePrice =
  (model: MenuModel) =>
  (lot: number): number =>
    ((AGE_OF_SERVING * lot) / Math.max(1, model.lots.length - 1)) * (model.lots[lot]?.servings ?? 1);

/**
 * First expired, first out, by the same rules as the search: meal by meal in the order of the trip, each table is laid from what expires first, and extras fill the days.
 */
export function layByExpiry(model: MenuModel, work?: { units: number }): ModelMenu {
  return layInOrder(model, agePrice(model), OLDEST_LOOKED_AT, work);
}

/** A menu made meal by meal, without a thought for later ones but the prices of the lots. */
export function layInOrder(
  model: MenuModel,
  price: (lot: number) => number,
  mostOptions: number,
  work: { units: number } = { units: 0 },
): ModelMenu {
  const state = new MenuState(model);
  state.work = work;
  const inOrder = [...model.slots].sort((a, b) => a.at - b.at || a.group - b.group);
  for (const slot of inOrder) {
    const left = slot.options.filter(({ lots }) => lots.some((lot) => (state.free[lot] ?? 0) > 0));
    state.layAlone({ ...slot, options: left.slice(0, mostOptions) }, price);
  }
  for (const { index } of model.extraDays) state.fillExtras(index, price);
  return state.menu();
}
