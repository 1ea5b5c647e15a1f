import { mealKey, type MealChoice } from '../menu/menu-problem.ts';
import type { MenuModel, OpenedAt } from './menu-model.ts';

/** Pouches of a lot at a meal, by code, as a trip or a planner names them. */
type Named = {
  readonly day: number;
  readonly meal: MealChoice['meal'];
  readonly opened: readonly { readonly code: string; readonly pouches: number }[];
};

/** A menu by codes as the model numbers it. Kept meals, and lots that the model does not know, are left out. */
export function toModel(model: MenuModel, meals: readonly Named[]): OpenedAt[] {
  const slots = new Map(model.slots.map((slot) => [mealKey(slot.day, slot.meal), slot]));
  const lots = new Map(model.lots.map((lot) => [lot.lot.code, lot.index]));
  return meals.flatMap(({ day, meal, opened }) => {
    const slot = slots.get(mealKey(day, meal));
    if (!slot?.open) return [];
    return opened.flatMap(({ code, pouches }): OpenedAt[] => {
      const lot = lots.get(code);
      return lot === undefined ? [] : [{ slot: slot.index, lot, pouches }];
    });
  });
}

/** What a planner chose as the model numbers it; the same is left out. */
export function chosenMenu(model: MenuModel, meals: readonly MealChoice[]): OpenedAt[] {
  return toModel(
    model,
    meals.map(({ day, meal, opened }) => ({
      day,
      meal,
      opened: opened.map(({ lot, pouches }) => ({ code: lot.code, pouches })),
    })),
  );
}

/** The open meals of a menu of the model as a planner chooses them; a meal without pouches is chosen empty. */
export function fromModel(
  model: MenuModel,
  opened: readonly OpenedAt[],
  why: (at: OpenedAt) => string,
): MealChoice[] {
  return model.slots
    .filter(({ open }) => open)
    .map((slot) => ({
      day: slot.day,
      meal: slot.meal,
      opened: opened
        .filter((at) => at.slot === slot.index)
        .flatMap((at) => {
          const lot = model.lots[at.lot]?.lot;
          return lot ? [{ lot, pouches: at.pouches, why: why(at) }] : [];
        }),
    }));
}
