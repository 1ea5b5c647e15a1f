import { layMeal } from '../menu/lay-meal.ts';
import { buildMenuModel, type MenuModel, type ModelSlot } from '../menu/menu-model.ts';
import type { MenuProblem } from '../menu/menu-problem.ts';
import { MenuState, type ModelMenu } from '../menu/menu-state.ts';
import { fromModel, toModel } from '../menu/place-menu.ts';
import { scoreMenu, SCORE_TERMS, type ScoreTerm } from '../menu/score-menu.ts';
import type { Reason } from '../model/reasons.ts';
import type { OpenProgram } from './linear-program.ts';
import { searchToEnd } from './search-menu.ts';

/** Why a dish stands at a slot. */
export type DishReason = { readonly slot: number; readonly dish: number; readonly reason: Reason };
/** What one more pouch of a lot would gain, points. */
export type OneMore = { readonly lot: number; readonly slot: number; readonly points: number };
/** What a menu would gain, points, if a rule gave way. */
export type RelaxedRule = { readonly rule: 'repeats' | 'one dish'; readonly points: number };

/** Differences smaller than this are none, points. */
const NOTHING = 0.05;
const MOST_NAMED = 5;
const MOST_LOTS_TRIED = 40;

/** For each dish: whether it is the oldest for those who eat it, or what the next best would cost more. */
export function reasonsOf(model: MenuModel, menu: ModelMenu): DishReason[] {
  const state = MenuState.of(model, menu);
  return model.slots.flatMap((slot) => {
    const laying = state.layings[slot.index];
    return (laying?.dishes ?? []).map(({ dish, lots, portions }): DishReason => {
      const places = portions.map(({ place }) => place);
      return { slot: slot.index, dish, reason: reasonFor(model, state, slot, dish, lots, places) };
    });
  });
}

function reasonFor(
  model: MenuModel,
  state: MenuState,
  slot: ModelSlot,
  dish: number,
  lots: readonly number[],
  places: readonly number[],
): Reason {
  if (slot.task.dish === model.dishes[dish]) return { code: 'fixed dish' };
  const eaters = places.map((place) => model.people[slot.people[place] ?? -1] ?? '');
  const isForAll = places.length === slot.people.length;
  // lots of a model stand in the order in which they expire
  const oldest = Math.min(
    ...slot.options
      .filter((option) => places.every((place) => Number.isFinite(option.taste[place])))
      .flatMap((option) => option.lots.filter((lot) => (state.free[lot] ?? 0) > 0 || lots.includes(lot))),
  );
  if (lots.includes(oldest)) {
    if (isForAll) return { code: 'oldest for all' };
    const others = (state.layings[slot.index]?.dishes ?? []).filter((other) => other.dish !== dish);
    const isBarred = (place: number) =>
      others.every((other) => other.lots.some((lot) => !model.lots[lot]?.feeds[slot.people[place] ?? -1]));
    return {
      code: others.length > 0 && places.every(isBarred) ? 'oldest for some' : 'oldest for all',
      eaters,
    };
  }
  const without: ModelSlot = { ...slot, options: slot.options.filter((option) => option.dish !== dish) };
  const before = scoreMenu(model, state.menu());
  const laid = state.clear(slot.index);
  const { laying } = layMeal(model, without, state.around(slot));
  state.lay(laying);
  const after = scoreMenu(model, state.menu());
  state.clear(slot.index);
  if (laid) state.lay(laid);
  const next = laying.dishes.reduce<(typeof laying.dishes)[number] | undefined>(
    (largest, other) => (!largest || other.portions.length > largest.portions.length ? other : largest),
    undefined,
  );
  const points = after.points - before.points;
  if (!next) return { code: 'no other' };
  const recipe = model.dishes[next.dish] ?? '';
  if (points < NOTHING) return { code: 'as good', recipe };
  return {
    code: 'next best',
    recipe,
    points: Math.round(points * 10) / 10,
    cost: decidingTerm(before.terms, after.terms),
  };
}

function decidingTerm(
  before: Readonly<Record<ScoreTerm, number>>,
  after: Readonly<Record<ScoreTerm, number>>,
): ScoreTerm {
  return SCORE_TERMS.reduce((most, term) =>
    after[term] - before[term] > after[most] - before[most] ? term : most,
  );
}

/** The lots of which one more pouch would gain most, at one meal laid anew; one for each dish. */
export function worthOneMore(model: MenuModel, menu: ModelMenu): OneMore[] {
  const best = new Map<number, OneMore>();
  const state = MenuState.of(model, menu);
  const points = state.points();
  const usedUp = model.lots.filter(({ index }) => (state.free[index] ?? 0) === 0).slice(0, MOST_LOTS_TRIED);
  for (const lot of usedUp) {
    const more: MenuModel = {
      ...model,
      lots: model.lots.map((other) => (other === lot ? { ...lot, stock: lot.stock + 1 } : other)),
    };
    const trial = MenuState.of(more, menu);
    for (const slot of model.slots) {
      if (!slot.options.some(({ dish }) => dish === lot.dish)) continue;
      const laid = trial.clear(slot.index);
      trial.layBest(slot.index);
      const gain = points - trial.points();
      if (gain > (best.get(lot.dish)?.points ?? NOTHING))
        best.set(lot.dish, { lot: lot.index, slot: slot.index, points: gain });
      trial.clear(slot.index);
      if (laid) trial.lay(laid);
    }
  }
  return [...best.values()].sort((a, b) => b.points - a.points).slice(0, MOST_NAMED);
}

/**
 * What a menu would gain if a rule gave way, by searching on from it. A gain is what was found in so much work; more may be possible.
 */
export function relaxedRules(
  problem: MenuProblem,
  model: MenuModel,
  menu: ModelMenu,
  open: OpenProgram,
  work: number,
): RelaxedRule[] {
  const { settings } = problem;
  const now = scoreMenu(model, menu);
  const gain = (changed: MenuProblem, paid: number) => {
    const relaxed = buildMenuModel(changed);
    const start = toModel(relaxed, fromModel(model, menu));
    const found = searchToEnd(relaxed, open, { effort: 'quick', starts: [start], work });
    return Math.max(0, now.points - paid - found.points);
  };
  const costs = settings.menuCosts;
  return [
    // what the repeats cost now is no gain by itself: the menu is the same
    {
      rule: 'repeats',
      points: gain({ ...problem, settings: { ...settings, repeatAfterDays: 0 } }, now.terms.repeats),
    },
    {
      rule: 'one dish',
      points: gain({ ...problem, settings: { ...settings, menuCosts: { ...costs, secondDish: 0 } } }, 0),
    },
  ];
}
