import { say } from '../../texts/say.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { MenuMeal } from '../model/trip-plan.ts';
import type { DishStyle, Eater, MealRule, Trip } from '../model/trip.ts';
import type { LotKind, ServingStyle, Taste } from '../model/words.ts';
import { MEAL_WORDS, SERVING_STYLE_WORDS } from '../../presentation/code-words.ts';
import { wallText } from '../../presentation/exclusion-words.ts';
import { friendlyAmount } from '../../presentation/fractions.ts';
import type { Outcome, Table } from './by-hand.ts';
import { listPortions, lockDish, lockPlate, setPortion, type MealPlace } from './edit-menu.ts';
import { whyNotServed } from './exclusions.ts';
import { OWN_POUCH_BELOW_SERVINGS, unitsOf } from './lot-rules.ts';

/** A lot on a table, as it is eaten there. */
export type OnTable = { readonly code: string; readonly style: DishStyle };

/**
 * The step in which a portion of a lot is dealt, servings: a quarter from a pot, half a pouch of one's own, a piece of what is counted.
 */
export function portionStep(
  lot: Pick<PouchLot, 'servingsPerPouch' | 'pieces'>,
  role: LotKind,
  style: DishStyle,
): number {
  if (role === 'extra' || role === 'drink') return lot.servingsPerPouch / unitsOf(lot);
  if (style === 'own pouch' && lot.servingsPerPouch < OWN_POUCH_BELOW_SERVINGS)
    return lot.servingsPerPouch / 2;
  return style === 'own pouch' ? 1 / 2 : 1 / 4;
}

/**
 * Gives each person so many servings of a lot at a meal, whatever its pouches hold; the answer says where the sum is another one.
 *
 * @param servings by name; none takes the lot off a plate
 */
export function portionsByHand(
  table: Table,
  at: MealPlace,
  of: OnTable,
  servings: ReadonlyMap<string, number>,
): Outcome {
  const meal = mealAt(table, at);
  const lot = table.stock.find(({ code }) => code === of.code);
  if (!meal || !lot) return gone(at, of.code);
  for (const [name, own] of servings) {
    const eater = table.trip.party.find((other) => other.name === name);
    const why = own > 0 && eater ? whyNotServed(lot, eater) : undefined;
    if (why !== undefined)
      return {
        refused: say('{recipe} is not for {eater}: {why}.', {
          recipe: lot.recipe,
          eater: name,
          why: wallText(why),
        }),
      };
  }
  const listed = listPortions(table.trip, meal);
  const trip = [...servings].reduce(
    (changed, [eater, own]) => setPortion(changed, at, { eater, code: of.code, style: of.style }, own),
    listed,
  );
  const there = [...meal.opened, ...meal.fromOpen]
    .filter(({ code }) => code === of.code)
    .reduce((sum, row) => sum + row.servings, 0);
  const sum = [...servings.values()].reduce((all, own) => all + own, 0);
  const words = {
    ...placeWords(at),
    recipe: lot.recipe,
    sum: friendlyAmount(sum),
    there: friendlyAmount(there),
  };
  if (sum > there + 1e-6)
    return {
      trip,
      said: say(
        'Day {day}, {meal}: portions of {recipe} come to {sum} servings, its pouches hold {there}. Open one more, or give less.',
        words,
      ),
    };
  return {
    trip,
    said:
      sum < there - 1e-6
        ? say('Day {day}, {meal}: {sum} of {there} servings of {recipe} are dealt out.', words)
        : say('Day {day}, {meal}: {recipe} is dealt out.', words),
  };
}

/** Keeps the dish that a lot is of when the menu is planned again, or no longer. */
export function lockDishByHand(table: Table, at: MealPlace, of: OnTable, locked: boolean): Outcome {
  const rows = mealAt(table, at)?.opened ?? [];
  const row = rows.find(({ code, style }) => code === of.code && style === of.style);
  if (!row) return gone(at, of.code);
  const codes = rows
    .filter(({ recipe, role }) => recipe === row.recipe && role === row.role)
    .map(({ code }) => code);
  return {
    trip: lockDish(table.trip, at, codes, locked),
    said: say('Day {day}, {meal}: {what} {locked, select, yes {locked} other {unlocked}}.', {
      ...placeWords(at),
      what: row.recipe,
      locked: locked ? 'yes' : 'no',
    }),
  };
}

/** Keeps what is on somebody's plate when the menu is planned again, or no longer. */
export function lockPlateByHand(table: Table, at: MealPlace, eater: string, locked: boolean): Outcome {
  const meal = mealAt(table, at);
  if (!meal?.eaters.includes(eater))
    return { refused: say('{eater} does not eat at this meal any more. Look at the meal again.', { eater }) };
  return {
    trip: lockPlate(listPortions(table.trip, meal), at, eater, locked),
    said: say('Day {day}, {meal}: {what} {locked, select, yes {locked} other {unlocked}}.', {
      ...placeWords(at),
      what: say("{eater}'s plate", { eater }),
      locked: locked ? 'yes' : 'no',
    }),
  };
}

/**
 * Has one meal served in a style of its own, or again as the whole trip is. What is not locked of it is laid anew.
 *
 * @param style left out: as on the whole trip
 */
export function styleByHand(table: Table, at: MealPlace, style: ServingStyle | undefined): Outcome {
  const isOfMeal = ({ days, meals, ...said }: MealRule) =>
    Array.isArray(days) &&
    days.length === 1 &&
    days[0] === at.day &&
    meals?.length === 1 &&
    meals[0] === at.meal &&
    Object.keys(said).every((name) => name === 'style');
  const others = (table.trip.mealRules ?? []).filter((rule) => !isOfMeal(rule));
  const rules: MealRule[] = style ? [...others, { days: [at.day], meals: [at.meal], style }] : others;
  const { mealRules: _, ...trip } = table.trip;
  return {
    trip: {
      ...trip,
      ...(rules.length > 0 && { mealRules: rules }),
      menu: trip.menu.filter((meal) => meal.day !== at.day || meal.meal !== at.meal || meal.locked),
    },
    said: style
      ? say('Day {day}, {meal}: {style}.', { ...placeWords(at), style: say(SERVING_STYLE_WORDS[style]) })
      : say('Day {day}, {meal}: served as on the whole trip.', placeWords(at)),
  };
}

/** Says what somebody thinks of a dish: never, rather not, gladly, or nothing. The next menu follows it. */
export function tastesByHand(
  trip: Trip,
  recipe: string,
  tastes: ReadonlyMap<string, Taste | undefined>,
): Outcome {
  const withTaste = (eater: Eater): Eater => {
    if (!tastes.has(eater.name)) return eater;
    const taste = tastes.get(eater.name);
    const { tastes: before = [], ...rest } = eater;
    const others = before.filter(({ food }) => food.toLowerCase() !== recipe.toLowerCase());
    const said = taste ? [...others, { food: recipe, taste }] : others;
    return { ...rest, ...(said.length > 0 && { tastes: said }) };
  };
  return {
    trip: { ...trip, party: trip.party.map(withTaste) },
    said: say('Tastes saved. Plan again to follow them.'),
  };
}

const mealAt = ({ plan }: Table, at: MealPlace): MenuMeal | undefined =>
  plan.menu.meals.find(({ day, meal, group }) => day === at.day && meal === at.meal && group === at.group);
const placeWords = ({ day, meal }: MealPlace) => ({ day, meal: say(MEAL_WORDS[meal]) });
const gone = (at: MealPlace, code: string): Outcome => ({
  refused: say('Day {day}, {meal}: lot {code} is not on this meal any more. Look at the meal again.', {
    ...placeWords(at),
    code,
  }),
});
