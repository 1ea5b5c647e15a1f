import { differences } from '$lib/forms/differences.ts';
import type { ChosenMeal, Trip } from '$lib/planning/model/trip.ts';
import { MEAL_WORDS } from '$lib/presentation/code-words.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import { TRIP_WORDS, tripFields } from './trip-fields.ts';
import { waterFields, waterLabel } from './water-and-fuel.ts';

/** More names than this are counted instead. */
const MOST_NAMED = 3;

/** Parts of a trip that are no fields of its form, by what they are called. */
const PARTS: Readonly<Partial<Record<keyof Trip, Text>>> = {
  route: text('route'),
  resupplies: text('places of resupply'),
  planned: text('food that is planned'),
};

/**
 * @returns what differs between two states of a trip, in words: fields of its forms, meals, and other parts; empty where nothing does
 * @example
 * changesInWords(before, after, 'metric'); // "Day 1, walking; day 2, dinner"
 */
export function changesInWords(before: Trip, after: Trip, system: UnitSystem): string {
  const inForm = differences(tripFields(before, system), tripFields(after, system), TRIP_WORDS);
  const inWater = differences(waterFields(before, system), waterFields(after, system), {
    label: waterLabel,
    choices: () => undefined,
  });
  const fields = [...new Set([...inForm, ...inWater].map(({ label }) => label))];
  const meals = changedMeals(before.menu, after.menu);
  const parts = Object.entries(PARTS).flatMap(([key, words]) =>
    isSame(before[key as keyof Trip], after[key as keyof Trip]) ? [] : [say(words)],
  );
  const containers = isSame(before.stove.started, after.stove.started) ? [] : [say('part-full containers')];
  return [
    ...few(fields, (count) => say('{count, plural, one {# field} other {# fields}}', { count })),
    ...few(meals, (count) => say('{count, plural, one {# meal} other {# meals}}', { count })),
    ...parts,
    ...containers,
  ].join('; ');
}

const few = (names: readonly string[], counted: (count: number) => string): readonly string[] =>
  names.length > MOST_NAMED ? [counted(names.length)] : names;

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

function changedMeals(before: readonly ChosenMeal[], after: readonly ChosenMeal[]): string[] {
  const keyOf = ({ day, meal, group }: ChosenMeal) => JSON.stringify([day, meal, group]);
  // Why pouches stand at a meal is no change of it.
  const told = ({ opened, locked, portions, lockedPlates }: ChosenMeal) =>
    JSON.stringify([opened.map(({ code, pouches }) => [code, pouches]), locked, portions, lockedPlates]);
  const was = new Map(before.map((meal) => [keyOf(meal), meal]));
  const is = new Map(after.map((meal) => [keyOf(meal), meal]));
  const changed = [...new Set([...was.keys(), ...is.keys()])].flatMap((key) => {
    const [old, now] = [was.get(key), is.get(key)];
    const meal = now ?? old;
    return meal && (!old || !now || told(old) !== told(now)) ? [meal] : [];
  });
  return [
    ...new Set(
      changed
        .sort((a, b) => a.day - b.day)
        .map(({ day, meal }) => say('day {day}, {meal}', { day, meal: say(MEAL_WORDS[meal]) })),
    ),
  ];
}
