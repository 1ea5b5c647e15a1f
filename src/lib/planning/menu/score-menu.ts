import {
  dayPoints,
  EXTRA_SORT,
  EXTRA_UNIT,
  mealPoints,
  OWN_PLATE,
  OWN_SECOND_PART,
  POT,
  POT_FOR_OWN,
  SITTING_SHARE,
  SKIPPED_MEAL,
} from './menu-costs.ts';
import { MOST_LOTS } from './fillings.ts';
import { MOST_QUARTERS, MOST_SERVINGS, MOST_SHARED, type LaidDish } from './laying.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import { MEAL_KINDS } from '../model/words.ts';
import { LEAST_QUARTERS, MOST_DRINKS, MOST_UNITS, pouchPoints, type MenuModel } from './menu-model.ts';
import { extraPouchPoints, openExtras, repeatsOf, type ModelMenu } from './menu-state.ts';

/** What a menu is paid for. */
export const SCORE_TERMS = [
  'hunger',
  'mealSize',
  'leftOver',
  'dishes',
  'repeats',
  'tastes',
  'extras',
  'burden',
  'protein',
] as const;
export type ScoreTerm = (typeof SCORE_TERMS)[number];
export type MenuScore = { readonly points: number; readonly terms: Readonly<Record<ScoreTerm, number>> };

/**
 * Scores any menu, however it was found, from the model alone: it knows nothing of the search, and works everything out anew.
 *
 * @returns points in all, and by what they are paid for; less is better
 */
export function scoreMenu(model: MenuModel, menu: ModelMenu): MenuScore {
  const { costs, settings } = model;
  const terms: Record<ScoreTerm, number> = {
    hunger: 0,
    mealSize: 0,
    leftOver: 0,
    dishes: 0,
    repeats: 0,
    tastes: 0,
    extras: 0,
    burden: 0,
    protein: 0,
  };
  const kcal = model.keptKcal.map((days) => [...days]);
  const lackG = model.keptLackG.map((days) => [...days]);
  const times = new Map<string, number[]>();
  const eat = (person: number, dish: number, at: number) =>
    times.set(`${person} ${dish}`, [...(times.get(`${person} ${dish}`) ?? []), at]);
  for (const { person, dish, at } of model.keptEaten) eat(person, dish, at);
  const give = (person: number, day: number, moreKcal: number, moreLackG: number) => {
    const [ofKcal, ofLack] = [kcal[person], lackG[person]];
    if (ofKcal) ofKcal[day] = (ofKcal[day] ?? 0) + moreKcal;
    if (ofLack) ofLack[day] = (ofLack[day] ?? 0) + moreLackG;
  };

  for (const slot of model.slots) {
    const laying = menu.layings.find((other) => other.slot === slot.index);
    const plate = slot.people.map(() => 0);
    const fed = new Set<number>();
    const fees: number[] = [];
    for (const dish of laying?.dishes ?? []) {
      let [servings, dishKcal, dishLack] = [0, 0, 0];
      dish.lots.forEach((index, at) => {
        const lot = model.lots[index];
        const pouches = dish.pouches[at] ?? 0;
        if (!lot) return;
        servings += pouches * lot.servings;
        dishKcal += pouches * lot.kcal;
        dishLack += pouches * lot.servings * lot.lackG;
        terms.burden += pouches * pouchPoints(model, index, slot.day, slot.at % MEAL_KINDS.length);
      });
      let eaten = 0;
      const taste = slot.options.find((option) => option.dish === dish.dish)?.taste ?? [];
      for (const { place, servings: portion } of dish.portions) {
        eaten += portion;
        fed.add(place);
        plate[place] = (plate[place] ?? 0) + (portion / servings) * dishKcal;
        const person = slot.people[place] ?? -1;
        give(person, slot.day, (portion / servings) * dishKcal, (portion / servings) * dishLack);
        eat(person, dish.dish, slot.at);
        terms.tastes += taste[place] ?? 0;
      }
      terms.leftOver += costs.leftOverKcal * dishKcal * Math.max(0, 1 - eaten / servings);
      const first = model.lots[dish.lots[0] ?? -1];
      if (dish.style === 'own pouch') terms.dishes += OWN_PLATE * dish.portions.length;
      else terms.dishes += POT + (slot.task.style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0);
      if (dish.style === 'shared pot') fees.push(costs.secondDish);
      else if ((first?.servings ?? 0) >= OWN_POUCH_BELOW_SERVINGS)
        fees.push(costs.secondDish * OWN_SECOND_PART);
    }
    const dearest = Math.max(0, ...fees);
    terms.dishes += fees.reduce((sum, fee) => sum + fee, 0) - dearest;
    slot.people.forEach((_, place) => {
      terms.mealSize += mealPoints(slot.plannedKcal[place] ?? 0, plate[place] ?? 0, costs);
      if (!fed.has(place)) terms.dishes += SKIPPED_MEAL * costs.missingKcal;
    });
  }

  for (let group = 0; group < model.groups.length; group++) {
    const ofGroup = menu.extras.filter(({ extraDay }) => model.extraDays[extraDay]?.group === group);
    for (const [index, eaten] of Map.groupBy(ofGroup, ({ lot }) => lot)) {
      const lot = model.lots[index];
      if (!lot) continue;
      const unit = lot.servings / lot.units;
      const byDay = model.days.map(() => 0);
      for (const { extraDay, place, units } of eaten) {
        const on = model.extraDays[extraDay];
        if (!on) continue;
        byDay[on.day] = (byDay[on.day] ?? 0) + units;
        give(on.people[place] ?? -1, on.day, units * unit * lot.servingKcal, units * unit * lot.lackG);
        terms.extras += EXTRA_UNIT * units;
      }
      const first = model.extraDays[eaten[0]?.extraDay ?? -1];
      const isDrink = first?.isDrink[first.lots.indexOf(index)] ?? false;
      const use = openExtras(byDay, lot.units, lot.keepsOpen ? settings.dryOpenDays : 1);
      for (const { day, pouches } of use.opened)
        terms.burden += pouches * extraPouchPoints(model, index, day, isDrink);
      terms.leftOver += costs.leftOverKcal * use.leftUnits * unit * lot.servingKcal;
    }
  }
  for (const extraDay of model.extraDays)
    for (const drinks of [false, true]) {
      const sorts = new Set(
        menu.extras
          .filter(
            ({ extraDay: of, lot }) =>
              of === extraDay.index && (extraDay.isDrink[extraDay.lots.indexOf(lot)] ?? false) === drinks,
          )
          .map(({ lot }) => lot),
      );
      terms.extras += EXTRA_SORT * Math.max(0, sorts.size - 1);
    }

  model.people.forEach((_, person) =>
    model.days.forEach((_, day) => {
      terms.hunger += dayPoints(model.needKcal[person]?.[day] ?? 0, kcal[person]?.[day] ?? 0, costs);
      terms.protein += costs.proteinG * Math.max(0, lackG[person]?.[day] ?? 0);
    }),
  );
  for (const own of times.values())
    terms.repeats +=
      costs.repeat *
      repeatsOf(
        own.sort((a, b) => a - b),
        settings.repeatAfterDays,
      );
  return { points: Object.values(terms).reduce((sum, points) => sum + points, 0), terms };
}

/** A rule that a menu breaks, with where. */
export type BrokenRule = { readonly rule: string; readonly slot?: number; readonly lot?: number };

/** What is wrong with the pouches of a dish: how many lots, how many of each, and fewer that would do. */
function brokenPouches(model: MenuModel, { style, lots, pouches, portions }: LaidDish): string[] {
  const broken: string[] = [];
  const isByHand = style === 'own pouch';
  if (lots.length < 1 || lots.length > (isByHand ? 1 : MOST_LOTS) || new Set(lots).size < lots.length)
    broken.push('lots of a dish');
  if (pouches.some((count) => !isWhole(count) || count < 1)) broken.push('whole pouches');
  if (portions.length === 0 || portions.some(({ servings }) => servings <= 0)) broken.push('portions');
  const sizes = lots.map((lot) => model.lots[lot]?.servings ?? 0);
  const opened = sizes.reduce((sum, size, at) => sum + size * (pouches[at] ?? 0), 0);
  const eaten = portions.reduce((sum, { servings }) => sum + servings, 0);
  const [size = 0] = sizes;
  const isSmall = size < OWN_POUCH_BELOW_SERVINGS;
  // of larger pouches by hand whole servings are eaten; of a pot, the last quarter that is one
  const inPouch = isByHand && !isSmall ? Math.floor(size + 1e-9) : Math.min(...sizes);
  const room = isByHand ? inPouch * (pouches[0] ?? 0) : Math.floor(opened * 4 + 1e-9) / 4;
  if (eaten > room + 1e-6) broken.push('more than opened');
  if (room - eaten >= inPouch - 1e-6) broken.push('fewer pouches');
  const most = isByHand ? (isSmall ? Infinity : MOST_SERVINGS) : MOST_QUARTERS / 4;
  if (portions.some(({ servings }) => servings > most + 1e-6)) broken.push('largest portion');
  return broken;
}

const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6;

/** Which hard rules a menu of the model breaks; none for a menu that may be eaten. */
export function brokenRules(model: MenuModel, menu: ModelMenu): BrokenRule[] {
  const broken: BrokenRule[] = [];
  const used = model.lots.map(() => 0);
  for (const laying of menu.layings) {
    const slot = model.slots[laying.slot];
    if (!slot) continue;
    const at = { slot: slot.index };
    const fed = new Map<number, number>();
    const shared = laying.dishes.filter(({ portions }) => portions.length > 1);
    const sharedKeys = new Set(shared.map(({ dish, style }) => `${dish} ${style}`));
    if (shared.length > MOST_SHARED || sharedKeys.size < shared.length)
      broken.push({ rule: 'dishes of a table', ...at });
    for (const dish of laying.dishes) {
      const option = slot.options.find((other) => other.dish === dish.dish);
      if (!option) broken.push({ rule: 'dish', ...at });
      for (const rule of brokenPouches(model, dish)) broken.push({ rule, ...at });
      let servings = 0;
      dish.lots.forEach((lot, index) => {
        used[lot] = (used[lot] ?? 0) + (dish.pouches[index] ?? 0);
        servings += (dish.pouches[index] ?? 0) * (model.lots[lot]?.servings ?? 0);
        if (!option?.lots.includes(lot)) broken.push({ rule: 'lot', ...at, lot });
        for (const { place } of dish.portions)
          if (!model.lots[lot]?.feeds[slot.people[place] ?? -1])
            broken.push({ rule: 'exclusion', ...at, lot });
      });
      const eaten = dish.portions.reduce((sum, { servings: portion }) => sum + portion, 0);
      const weights = dish.portions.reduce((sum, { place }) => sum + (slot.weight[place] ?? 0), 0);
      const kcal = dish.lots.reduce(
        (sum, lot, index) => sum + (dish.pouches[index] ?? 0) * (model.lots[lot]?.kcal ?? 0),
        0,
      );
      for (const { place, servings: portion } of dish.portions) {
        fed.set(place, (fed.get(place) ?? 0) + 1);
        if ((portion / servings) * kcal > SITTING_SHARE * (slot.plannedKcal[place] ?? 0) + 1e-6)
          broken.push({ rule: 'sitting', ...at });
        if (dish.style === 'shared pot') {
          if (!isWhole(portion * 4) || portion * 4 < LEAST_QUARTERS - 1e-6)
            broken.push({ rule: 'quarters', ...at });
          const share = ((slot.weight[place] ?? 0) / weights) * eaten;
          if (Math.abs(portion - share) > 0.25 + 1e-6) broken.push({ rule: 'proportion', ...at });
        } else {
          const lot = model.lots[dish.lots[0] ?? -1];
          const isSmall = (lot?.servings ?? 0) < OWN_POUCH_BELOW_SERVINGS;
          if (slot.task.style === 'shared pot' || !lot?.isOwnPouch) broken.push({ rule: 'own pouch', ...at });
          if (isSmall ? !isWhole((portion / (lot?.servings ?? 1)) * 2) : !isWhole(portion))
            broken.push({ rule: 'halves', ...at });
          if (isSmall && dish.portions.length > 1) broken.push({ rule: 'one eater', ...at });
        }
      }
    }
    if ([...fed.values()].some((dishes) => dishes > 1)) broken.push({ rule: 'one main dish', ...at });
  }
  const units = new Map<string, number[]>();
  const perDay = new Map<string, { kcal: number; sorts: number; drinks: number }>();
  for (const { extraDay, lot, place, units: eaten } of menu.extras) {
    const on = model.extraDays[extraDay];
    const of = model.lots[lot];
    if (!on || !of || !on.lots.includes(lot) || !of.feeds[on.people[place] ?? -1] || eaten > MOST_UNITS) {
      broken.push({ rule: 'extra', lot });
      continue;
    }
    const key = `${on.group} ${lot}`;
    const byDay = units.get(key) ?? model.days.map(() => 0);
    byDay[on.day] = (byDay[on.day] ?? 0) + eaten;
    units.set(key, byDay);
    const dayKey = `${extraDay} ${place}`;
    const day = perDay.get(dayKey) ?? { kcal: 0, sorts: 0, drinks: 0 };
    day.kcal += (eaten * of.servings * of.servingKcal) / of.units;
    if (on.isDrink[on.lots.indexOf(lot)]) day.drinks++;
    else day.sorts++;
    perDay.set(dayKey, day);
    if (day.kcal > (on.mostKcal[place] ?? 0) + 1e-6) broken.push({ rule: 'extras of a day', lot });
    if (day.drinks > MOST_DRINKS || day.sorts > (on.mostSorts[place] ?? 0))
      broken.push({ rule: 'sorts of a day', lot });
  }
  for (const [key, byDay] of units) {
    const lot = Number(key.split(' ')[1]);
    const of = model.lots[lot];
    if (of)
      used[lot] =
        (used[lot] ?? 0) + openExtras(byDay, of.units, of.keepsOpen ? model.settings.dryOpenDays : 1).pouches;
  }
  model.lots.forEach(({ index, stock }) => {
    if ((used[index] ?? 0) > stock) broken.push({ rule: 'stock', lot: index });
  });
  return broken;
}
