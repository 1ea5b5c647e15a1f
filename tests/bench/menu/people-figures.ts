import { DAY_FREE_FROM, MEAL_FREE_FROM, MEAL_FREE_TO } from '../../../src/lib/planning/menu/menu-costs.ts';
import { totalsOf } from '../../../src/lib/planning/menu/laying.ts';
import type { MenuModel } from '../../../src/lib/planning/menu/menu-model.ts';
import { openExtras, type ModelMenu } from '../../../src/lib/planning/menu/menu-state.ts';

/** What people get of a menu. */
export type PeopleFigures = {
  readonly portions: number;
  /** Portions of main dishes that are no quarters of a serving from a pot, no halves of a pouch of one's own and no whole servings by hand. */
  readonly oddPortions: number;
  /** Portions of main dishes of less than a quarter of a serving. */
  readonly crumbs: number;
  /** Plates with several main dishes. */
  readonly fullPlates: number;
  /** Meals laid, and dishes that are cooked or handed out at them beside pouches of their own. */
  readonly tables: number;
  readonly dishes: number;
  /** Plates with a main dish, those without one, and those outside 75 to 130 % of what is planned. */
  readonly plates: number;
  readonly without: number;
  readonly offPlan: number;
  readonly personDays: number;
  /** Days of a person that are short by more than 5 %. */
  readonly shortDays: number;
  /** Most extras and most drinks of a person and day. */
  readonly mostExtras: number;
  readonly mostDrinks: number;
  /** Plates of a dish that its eater had within two days. */
  readonly repeats: number;
  /** Gross weight of all pouches opened, g. */
  readonly grams: number;
  readonly eatenKcal: number;
  readonly leftOverKcal: number;
};

const REPEAT_DAYS = 2;
const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6;

export function peopleFigures(model: MenuModel, menu: ModelMenu): PeopleFigures {
  const figures = {
    ...{ portions: 0, oddPortions: 0, crumbs: 0, fullPlates: 0, tables: 0, dishes: 0, plates: 0, without: 0 },
    ...{ offPlan: 0, personDays: 0, shortDays: 0, mostExtras: 0, mostDrinks: 0, repeats: 0 },
    ...{ grams: 0, eatenKcal: 0, leftOverKcal: 0 },
  };
  const kcal = model.keptKcal.map((days) => [...days]);
  const eat = (person: number, day: number, more: number) => {
    const own = kcal[person];
    if (own) own[day] = (own[day] ?? 0) + more;
    figures.eatenKcal += more;
  };
  const days = new Map<string, number[]>();
  for (const slot of model.slots) {
    const laying = menu.layings.find((other) => other.slot === slot.index);
    const mains = slot.people.map(() => 0);
    if (laying && laying.dishes.length > 0) figures.tables++;
    for (const dish of laying?.dishes ?? []) {
      const { kcal: opened } = totalsOf(model, dish);
      const first = model.lots[dish.lots[0] ?? -1];
      const isSmall = dish.style === 'own pouch' && (first?.servings ?? 0) < 1.5;
      if (!isSmall) figures.dishes++;
      dish.lots.forEach(
        (lot, at) => (figures.grams += (dish.pouches[at] ?? 0) * (model.lots[lot]?.grossG ?? 0)),
      );
      figures.leftOverKcal += opened;
      for (const { place, servings } of dish.portions) {
        figures.portions++;
        const unit = dish.style === 'shared pot' ? 1 / 4 : isSmall ? (first?.servings ?? 1) / 2 : 1;
        if (!isWhole(servings / unit)) figures.oddPortions++;
        if (servings < 1 / 4 - 1e-9) figures.crumbs++;
        mains[place] = (mains[place] ?? 0) + 1;
        const key = `${slot.people[place]} ${dish.dish}`;
        days.set(key, [...(days.get(key) ?? []), slot.day]);
      }
    }
    slot.people.forEach((person, place) => {
      const own = laying?.kcal[place] ?? 0;
      const planned = slot.plannedKcal[place] ?? 0;
      eat(person, slot.day, own);
      figures.leftOverKcal -= own;
      if ((mains[place] ?? 0) > 1) figures.fullPlates++;
      if ((mains[place] ?? 0) === 0) figures.without++;
      else {
        figures.plates++;
        if (own < MEAL_FREE_FROM * planned - 1e-6 || own > MEAL_FREE_TO * planned + 1e-6) figures.offPlan++;
      }
    });
  }
  for (const own of days.values()) {
    own.sort((a, b) => a - b);
    for (let at = 1; at < own.length; at++)
      if ((own[at] ?? 0) - (own[at - 1] ?? 0) <= REPEAT_DAYS) figures.repeats++;
  }
  for (const extraDay of model.extraDays)
    extraDay.people.forEach((_, place) => {
      const own = menu.extras.filter((extra) => extra.extraDay === extraDay.index && extra.place === place);
      const drinks = own.filter(({ lot }) => extraDay.isDrink[extraDay.lots.indexOf(lot)]).length;
      figures.mostDrinks = Math.max(figures.mostDrinks, drinks);
      figures.mostExtras = Math.max(figures.mostExtras, own.length - drinks);
    });
  for (const { extraDay, lot, place, units } of menu.extras) {
    const on = model.extraDays[extraDay];
    const of = model.lots[lot];
    if (on && of) eat(on.people[place] ?? -1, on.day, (units * of.kcal) / of.units);
  }
  const groupOf = (extraDay: number) => model.extraDays[extraDay]?.group ?? -1;
  for (const own of Map.groupBy(menu.extras, ({ extraDay, lot }) => `${groupOf(extraDay)} ${lot}`).values()) {
    const lot = model.lots[own[0]?.lot ?? -1];
    if (!lot) continue;
    const byDay = model.days.map((_, day) =>
      own.reduce((sum, { extraDay, units }) => sum + (model.extraDays[extraDay]?.day === day ? units : 0), 0),
    );
    const use = openExtras(byDay, lot.units, lot.keepsOpen ? model.settings.dryOpenDays : 1);
    figures.grams += use.pouches * lot.grossG;
    figures.leftOverKcal += (use.leftUnits * lot.kcal) / lot.units;
  }
  model.needKcal.forEach((needs, person) =>
    needs.forEach((need, day) => {
      if (need <= 0) return;
      figures.personDays++;
      if ((kcal[person]?.[day] ?? 0) < DAY_FREE_FROM * need - 1e-6) figures.shortDays++;
    }),
  );
  return figures;
}
