import { MEAL_KINDS, type MealKind } from '../model/words.ts';
import { dealRows } from './deal-rows.ts';
import { asLaying, type LaidDish, type Laying } from './laying.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import { isExtraAt, type ExtraDay, type MenuModel, type ModelLot, type ModelSlot } from './menu-model.ts';
import { mealKey, type Dish, type MealChoice } from './menu-problem.ts';
import { openExtras, type EatenExtra, type ModelMenu } from './menu-state.ts';
import type { Reason } from '../model/reasons.ts';

/** Why a dish stands at a slot, or an extra on a day. */
export type ReasonOf = (
  at: { slot: number; dish: number } | { extraDay: number; lot: number },
) => Reason | undefined;

/** A menu of the model as a planner chooses it: each open meal with its dishes; a meal without any is chosen empty. */
export function fromModel(
  model: MenuModel,
  menu: ModelMenu,
  reasonOf: ReasonOf = () => undefined,
): MealChoice[] {
  const choices = new Map<string, { day: number; meal: MealKind; group: string; dishes: Dish[] }>();
  const at = (day: number, meal: MealKind, group: number) => {
    const name = model.groups[group]?.name ?? '';
    const number = model.days[day] ?? 0;
    const key = mealKey(number, meal, name);
    const known = choices.get(key) ?? { day: number, meal, group: name, dishes: [] };
    choices.set(key, known);
    return known;
  };
  for (const slot of model.slots) {
    const choice = at(slot.day, slot.meal, slot.group);
    const laying = menu.layings.find((other) => other.slot === slot.index);
    // pouches of their own that hold the same dish are one dish
    const own = Map.groupBy(laying?.dishes ?? [], ({ dish, style }, at) =>
      style === 'own pouch' ? `${dish}` : `pot ${at}`,
    );
    for (const [first, ...more] of own.values()) {
      if (!first) continue;
      const reason = reasonOf({ slot: slot.index, dish: first.dish });
      choice.dishes.push(
        [first, ...more].map((dish) => dishOf(model, slot.people, dish, reason)).reduce(joined),
      );
    }
  }
  for (const extraDay of model.extraDays)
    for (const { meal } of extraDay.meals) at(extraDay.day, meal, extraDay.group);
  placeExtras(model, menu, reasonOf, at);
  return [...choices.values()].sort(
    (a, b) => a.day - b.day || MEAL_KINDS.indexOf(a.meal) - MEAL_KINDS.indexOf(b.meal),
  );
}

function joined(one: Dish, other: Dish): Dish {
  const opened = [...one.opened, ...other.opened];
  return {
    ...one,
    opened: [...Map.groupBy(opened, ({ lot }) => lot).entries()].map(([lot, rows]) => ({
      lot,
      pouches: rows.reduce((sum, { pouches }) => sum + pouches, 0),
    })),
    portions: [...one.portions, ...other.portions],
  };
}

function dishOf(
  model: MenuModel,
  people: readonly number[],
  laid: LaidDish,
  reason: Reason | undefined,
): Dish {
  const lots = laid.lots.flatMap((index) => model.lots[index]?.lot ?? []);
  const rows = dealRows(
    laid.portions.map(({ servings }) => servings),
    laid.lots.map((index, at) => (laid.pouches[at] ?? 0) * (model.lots[index]?.servings ?? 0)),
  );
  return {
    recipe: model.dishes[laid.dish] ?? '',
    role: 'main',
    style: laid.style,
    opened: lots.map((lot, at) => ({ lot, pouches: laid.pouches[at] ?? 0 })),
    portions: rows.flatMap(({ to, lot, servings }) => {
      const of = lots[lot];
      const eater = model.people[people[laid.portions[to]?.place ?? -1] ?? -1];
      return of && eater !== undefined ? [{ eater, lot: of, servings }] : [];
    }),
    ...(reason && { reason }),
  };
}

/** Puts the extras of each day on its meals: drinks with the drink, others where most of what is planned is still to come. */
function placeExtras(
  model: MenuModel,
  menu: ModelMenu,
  reasonOf: ReasonOf,
  at: (day: number, meal: MealKind, group: number) => { dishes: Dish[] },
): void {
  const opened = openedByDay(model, menu);
  for (const extraDay of model.extraDays) {
    const own = menu.extras.filter((extra) => extra.extraDay === extraDay.index);
    const placed = new Map<string, { meal: MealKind; lot: number; units: Map<number, number> }>();
    const givenKcal = new Map<string, number>();
    /** Food that does not keep when it is open is eaten at one meal. */
    const onlyMeal = new Map<number, MealKind>();
    for (const { lot, place, units } of own) {
      const of = model.lots[lot];
      if (!of) continue;
      const unitKcal = of.kcal / of.units;
      const person = model.people[extraDay.people[place] ?? -1] ?? '';
      const meals = extraDay.meals.filter((task) => isExtraAt(of.lot, task) && task.eaters.includes(person));
      for (let unit = 0; unit < units; unit++) {
        const known = of.keepsOpen ? undefined : meals.find((task) => task.meal === onlyMeal.get(lot))?.meal;
        const meal = known ?? emptiest(extraDay, meals, place, givenKcal);
        if (meal === undefined) continue;
        if (!onlyMeal.has(lot)) onlyMeal.set(lot, meal);
        givenKcal.set(`${place} ${meal}`, (givenKcal.get(`${place} ${meal}`) ?? 0) + unitKcal);
        const key = `${meal} ${lot}`;
        const row = placed.get(key) ?? { meal, lot, units: new Map<number, number>() };
        placed.set(key, row);
        row.units.set(place, (row.units.get(place) ?? 0) + 1);
      }
    }
    const inOrder = [...placed.values()].sort(
      (a, b) => MEAL_KINDS.indexOf(a.meal) - MEAL_KINDS.indexOf(b.meal) || a.lot - b.lot,
    );
    const isOpened = new Set<number>();
    for (const { meal, lot, units } of inOrder) {
      const of = model.lots[lot];
      if (!of) continue;
      const pouches = isOpened.has(lot) ? 0 : (opened.get(`${extraDay.group} ${lot} ${extraDay.day}`) ?? 0);
      isOpened.add(lot);
      const reason = reasonOf({ extraDay: extraDay.index, lot });
      at(extraDay.day, meal, extraDay.group).dishes.push({
        recipe: of.lot.recipe,
        role: extraDay.isDrink[extraDay.lots.indexOf(lot)] ? 'drink' : 'extra',
        style: 'own pouch',
        opened: pouches > 0 ? [{ lot: of.lot, pouches }] : [],
        portions: [...units]
          .sort(([a], [b]) => a - b)
          .map(([place, count]) => ({
            eater: model.people[extraDay.people[place] ?? -1] ?? '',
            lot: of.lot,
            servings: (count * of.servings) / of.units,
          })),
        ...(reason && { reason }),
      });
    }
  }
}

/** The meal with the most of what is planned for it still to come. */
function emptiest(
  extraDay: ExtraDay,
  meals: ExtraDay['meals'],
  place: number,
  givenKcal: ReadonlyMap<string, number>,
): MealKind | undefined {
  let best: { meal: MealKind; leftKcal: number } | undefined;
  for (const { meal } of meals) {
    const leftKcal = (extraDay.plannedKcal[place]?.[meal] ?? 0) - (givenKcal.get(`${place} ${meal}`) ?? 0);
    if (!best || leftKcal > best.leftKcal + 1e-9) best = { meal, leftKcal };
  }
  return best?.meal;
}

/** Pouches of extras opened, by group, lot and day. */
function openedByDay(model: MenuModel, menu: ModelMenu): Map<string, number> {
  const units = new Map<string, Int32Array>();
  for (const { extraDay, lot, units: eaten } of menu.extras) {
    const on = model.extraDays[extraDay];
    if (!on) continue;
    const key = `${on.group} ${lot}`;
    const byDay = units.get(key) ?? new Int32Array(model.days.length);
    byDay[on.day] = (byDay[on.day] ?? 0) + eaten;
    units.set(key, byDay);
  }
  const opened = new Map<string, number>();
  for (const [key, byDay] of units) {
    const lot = model.lots[Number(key.split(' ')[1])];
    if (!lot) continue;
    const keeps = lot.keepsOpen ? model.settings.dryOpenDays : 1;
    for (const { day, pouches } of openExtras(byDay, lot.units, keeps).opened)
      opened.set(`${key} ${day}`, pouches);
  }
  return opened;
}

/** Pouches handed out, lot by lot; of small ones, each person's by themselves. */
function handedOut(
  model: MenuModel,
  slot: ModelSlot,
  dish: Dish,
  index: number,
  lots: ReadonlyMap<string, ModelLot>,
): LaidDish[] {
  return dish.opened.flatMap(({ lot, pouches }): LaidDish[] => {
    const known = lots.get(lot.code);
    if (!known) return [];
    const portions = slot.people.flatMap((person, place) => {
      const servings = dish.portions
        .filter(({ eater, lot: of }) => eater === model.people[person] && of.code === lot.code)
        .reduce((sum, portion) => sum + portion.servings, 0);
      return servings > 0 ? [{ place, servings }] : [];
    });
    const laid = (own: typeof portions, count: number): LaidDish => ({
      dish: index,
      style: 'own pouch',
      lots: [known.index],
      pouches: [count],
      portions: own,
    });
    if (known.servings >= OWN_POUCH_BELOW_SERVINGS)
      return portions.length > 0 ? [laid(portions, pouches)] : [];
    return portions.map((portion) => laid([portion], Math.ceil(portion.servings / known.servings - 1e-9)));
  });
}

/** Chosen meals as the model numbers them. Kept dishes, and what the model does not know, are left out. */
export function toModel(model: MenuModel, meals: readonly MealChoice[]): ModelMenu {
  const lots = new Map(model.lots.map((lot) => [lot.lot.code, lot]));
  const byKey = new Map(meals.map((meal) => [mealKey(meal.day, meal.meal, meal.group), meal]));
  const mealAt = (day: number, meal: MealKind, group: number) =>
    byKey.get(mealKey(model.days[day] ?? 0, meal, model.groups[group]?.name ?? ''));
  const layings = model.slots.map((slot): Laying => {
    const dishes = (mealAt(slot.day, slot.meal, slot.group)?.dishes ?? []).flatMap((dish): LaidDish[] => {
      if (dish.role !== 'main') return [];
      const opened = dish.opened.flatMap(({ lot, pouches }) => {
        const known = lots.get(lot.code);
        return known ? [{ known, pouches }] : [];
      });
      const portions = slot.people.flatMap((person, place) => {
        const servings = dish.portions
          .filter(({ eater }) => eater === model.people[person])
          .reduce((sum, portion) => sum + portion.servings, 0);
        return servings > 0 ? [{ place, servings }] : [];
      });
      const index = model.dishes.indexOf(dish.recipe);
      if (opened.length < dish.opened.length || opened.length === 0 || portions.length === 0 || index < 0)
        return [];
      if (!slot.options.some((option) => option.dish === index)) return [];
      if (dish.style === 'own pouch') return handedOut(model, slot, dish, index, lots);
      return [
        {
          dish: index,
          style: dish.style,
          lots: opened.map(({ known }) => known.index),
          pouches: opened.map(({ pouches }) => pouches),
          portions,
        },
      ];
    });
    return asLaying(model, slot, dishes);
  });
  const extras = model.extraDays.flatMap((extraDay) => {
    const units = new Map<string, EatenExtra>();
    for (const { meal } of extraDay.meals)
      for (const dish of mealAt(extraDay.day, meal, extraDay.group)?.dishes ?? [])
        for (const { eater, lot, servings } of dish.portions) {
          const known = lots.get(lot.code);
          const place = extraDay.people.findIndex((person) => model.people[person] === eater);
          if (!known || place < 0 || !extraDay.lots.includes(known.index)) continue;
          const count = Math.round((servings * known.units) / known.servings);
          const key = `${known.index} ${place}`;
          const before = units.get(key)?.units ?? 0;
          if (count > 0)
            units.set(key, { extraDay: extraDay.index, lot: known.index, place, units: before + count });
        }
    return [...units.values()];
  });
  return { layings, extras };
}
