import { say } from '../../texts/say.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { MenuMeal, TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { MEAL_WORDS } from '../../presentation/code-words.ts';
import { addPouch, pouchesListed, removePouch, setPouches, swapPouch, type MealPlace } from './edit-menu.ts';
import { mealOptions } from './meal-options.ts';

/** What is on the table when a meal is changed by hand: the trip, with every meal of its plan listed, and what it draws on. */
export type Table = { readonly trip: Trip; readonly plan: TripPlan; readonly stock: Stock };

/** What a change came to, in words. A refused change leaves the trip as it was. */
export type Outcome = { readonly trip: Trip; readonly said: string } | { readonly refused: string };

/** Puts pouches of another lot in the place of one lot: as many, or as many as are free. */
export function swapByHand(table: Table, at: MealPlace, fromCode: string, toCode: string): Outcome {
  const wanted = pouchesListed(table.trip, at, fromCode);
  if (wanted === 0) return notThere(at, fromCode);
  const option = optionOf(table, at, toCode);
  if (!option) return notFree(at, toCode);
  const pouches = Math.min(wanted, option.freePouches);
  return {
    trip: swapPouch(table.trip, at, fromCode, toCode, pouches),
    said:
      pouches < wanted
        ? say('Day {day}, {meal}: {wanted} × {from} swapped for {pouches} × {to}, as no more are free.', {
            ...wordsOf(at),
            wanted,
            from: fromCode,
            pouches,
            to: toCode,
          })
        : say('Day {day}, {meal}: {wanted} × {from} swapped for {pouches} × {to}.', {
            ...wordsOf(at),
            wanted,
            from: fromCode,
            pouches,
            to: toCode,
          }),
  };
}

/** Puts one pouch more of a lot on a meal, whether the lot is there already or not. */
export function addByHand(table: Table, at: MealPlace, code: string): Outcome {
  if (!optionOf(table, at, code)) return notFree(at, code);
  const trip = addPouch(table.trip, at, code);
  return { trip, said: nowListed(at, pouchesListed(trip, at, code), code) };
}

/** Takes one pouch of a lot off a meal; the last one takes the lot with it. */
export function takeByHand(table: Table, at: MealPlace, code: string): Outcome {
  const before = pouchesListed(table.trip, at, code);
  if (before === 0) return notThere(at, code);
  return {
    trip: setPouches(table.trip, at, code, before - 1),
    said: before > 1 ? nowListed(at, before - 1, code) : removed(at, code),
  };
}

/** Takes all pouches of a lot off a meal. */
export function removeByHand(table: Table, at: MealPlace, code: string): Outcome {
  if (pouchesListed(table.trip, at, code) === 0) return notThere(at, code);
  return { trip: removePouch(table.trip, at, code), said: removed(at, code) };
}

/** Takes one pouch of a lot off one meal and puts it on another. */
export function moveByHand(table: Table, from: MealPlace, code: string, to: MealPlace): Outcome {
  const before = pouchesListed(table.trip, from, code);
  if (before === 0) return notThere(from, code);
  if (from.day === to.day && from.meal === to.meal && from.group === to.group)
    return { refused: say('Day {day}, {meal}: {code} is there already.', { ...wordsOf(to), code }) };
  if (!optionOf({ ...table, plan: withFewer(table.plan, from, code, 1) }, to, code)) return notFree(to, code);
  return {
    trip: addPouch(setPouches(table.trip, from, code, before - 1), to, code),
    said: say('1 × {code} moved from day {day}, {meal} to day {toDay}, {toMeal}.', {
      code,
      ...wordsOf(from),
      toDay: to.day,
      toMeal: say(MEAL_WORDS[to.meal]),
    }),
  };
}

/** Takes all pouches of some lots, those of a dish, off one meal and puts them on another. @param recipe what the dish is called */
export function moveDishByHand(
  table: Table,
  from: MealPlace,
  { recipe, codes }: { readonly recipe: string; readonly codes: readonly string[] },
  to: MealPlace,
): Outcome {
  const listed = codes
    .map((code) => ({ code, pouches: pouchesListed(table.trip, from, code) }))
    .filter(({ pouches }) => pouches > 0);
  const [first] = listed;
  if (!first) return notThere(from, codes[0] ?? recipe);
  if (from.day === to.day && from.meal === to.meal && from.group === to.group)
    return { refused: say('Day {day}, {meal}: {code} is there already.', { ...wordsOf(to), code: recipe }) };
  let { trip } = table;
  for (const { code, pouches } of listed) {
    if (!optionOf({ ...table, plan: withFewer(table.plan, from, code, pouches) }, to, code))
      return notFree(to, code);
    trip = addPouch(removePouch(trip, from, code), to, code, pouches);
  }
  return {
    trip,
    said: say('{recipe} moved from day {day}, {meal} to day {toDay}, {toMeal}.', {
      recipe,
      ...wordsOf(from),
      toDay: to.day,
      toMeal: say(MEAL_WORDS[to.meal]),
    }),
  };
}

/** The plan as if a meal opened so many pouches of a lot fewer, so that they are free for another. */
function withFewer(plan: TripPlan, at: MealPlace, code: string, pouches: number): TripPlan {
  const meals = plan.menu.meals.map((meal) =>
    meal.day === at.day && meal.meal === at.meal && meal.group === at.group
      ? {
          ...meal,
          opened: meal.opened.map((lot) =>
            lot.code === code ? { ...lot, pouches: lot.pouches - pouches } : lot,
          ),
        }
      : meal,
  );
  return { ...plan, menu: { ...plan.menu, meals } };
}

const wordsOf = ({ day, meal }: MealPlace) => ({ day, meal: say(MEAL_WORDS[meal]) });
const nowListed = (at: MealPlace, pouches: number, code: string): string =>
  say('Day {day}, {meal}: {pouches} × {code}.', { ...wordsOf(at), pouches, code });
const removed = (at: MealPlace, code: string): string =>
  say('Day {day}, {meal}: {code} removed.', { ...wordsOf(at), code });

function optionOf({ trip, plan, stock }: Table, at: MealPlace, code: string) {
  const date = plan.demand.find(({ day }) => day === at.day)?.date;
  const lot = stock.filter((other) => other.code === code);
  return date === undefined ? undefined : mealOptions(eatersAt(trip, plan, at), lot, plan.menu, at, date)[0];
}

/** Who eats a meal, as the trip has them. */
export const eatersAt = (trip: Trip, { menu }: Pick<TripPlan, 'menu'>, at: MealPlace): Trip['party'] => {
  const names = mealOf(menu, at)?.eaters ?? [];
  return trip.party.filter(({ name }) => names.includes(name));
};

const mealOf = ({ meals }: TripPlan['menu'], at: MealPlace): MenuMeal | undefined =>
  meals.find(({ day, meal, group }) => day === at.day && meal === at.meal && group === at.group);

const notThere = (at: MealPlace, code: string): Outcome => ({
  refused: say('Day {day}, {meal}: lot {code} is not on this meal any more. Look at the meal again.', {
    ...wordsOf(at),
    code,
  }),
});
const notFree = (at: MealPlace, code: string): Outcome => ({
  refused: say(
    'Day {day}, {meal}: no pouch of lot {code} can be added. It may be used by other meals or trips, past its best-before date, or unsuitable for everyone in the group. Choose another lot.',
    { ...wordsOf(at), code },
  ),
});
