import type { MenuModel } from './menu-model.ts';
import { MenuState, type ModelMenu } from './menu-state.ts';

/** What a serving of the lot that keeps longest costs more than one of the first to expire, points: more than anything but an empty plate. */
const AGE_OF_SERVING = 80;

/** Dishes that may stand at a meal by their age: of the oldest, enough to feed everybody at the table. */
const OLDEST_LOOKED_AT = 24;

type Price = (lot: number) => number;

/** Prices that put the first to expire before everything but hunger. Lots of a model stand in the order in which they expire. */
export const agePrice =
  (model: MenuModel): Price =>
  (lot) =>
    ((AGE_OF_SERVING * lot) / Math.max(1, model.lots.length - 1)) * (model.lots[lot]?.servings ?? 1);

/**
 * First expired, first out, by the same rules as the search: meal by meal in the order of the trip, each table is laid from what expires first, and extras fill the days.
 * It is the plan where no search was run: what a meal clearly lacks counts as missing to the day.
 */
export function layOldestFirst(model: MenuModel): ModelMenu {
  const price = agePrice(model);
  const laid = layTables(model, price, { units: 0 }, true);
  return withExtras(model, laid.menu(), price);
}

/** The same in little work and small meals, for a search to begin with. */
export function layByExpiry(model: MenuModel, work: { units: number } = { units: 0 }): ModelMenu {
  const price = agePrice(model);
  const state = layTables(model, price, work, false);
  for (const { index } of model.extraDays) state.fillExtras(index, price);
  return state.menu();
}

/** The tables of a menu one after the other, without a thought for later ones but the prices of the lots. */
function layTables(model: MenuModel, price: Price, work: { units: number }, fills: boolean): MenuState {
  const state = new MenuState(model);
  state.work = work;
  const inOrder = [...model.slots].sort((a, b) => a.at - b.at || a.group - b.group);
  for (const slot of inOrder) {
    const left = slot.options.filter(({ lots }) => lots.some((lot) => (state.free[lot] ?? 0) > 0));
    state.layAlone({ ...slot, options: left.slice(0, OLDEST_LOOKED_AT) }, price, fills);
  }
  return state;
}

/** Fills the days with extras, one after the other. What a day leaves in an open bag is no loss yet: the next one may eat of it; in the end it counts. */
function withExtras(model: MenuModel, menu: ModelMenu, price: Price): ModelMenu {
  const state = MenuState.of({ ...model, costs: { ...model.costs, leftOverKcal: 0 } }, menu);
  for (const { index } of model.extraDays) state.fillExtras(index, price);
  const settled = MenuState.of(model, state.menu());
  for (const { index } of model.extraDays) settled.evenExtras(index, [], price);
  return settled.menu();
}
