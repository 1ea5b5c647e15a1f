import { atLines, keptLines } from '$lib/forms/lines.ts';
import { bareField, withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import type { Problem } from '$lib/presentation/problems.ts';
import type { CookGroup, Eater, MealRule, Trip } from '$lib/planning/model/trip.ts';
import { MEAL_KINDS, TASTES, type MealKind } from '$lib/planning/model/words.ts';
import {
  MEAL_STOP_WORDS,
  MEAL_WORDS,
  PORTION_SIZE_WORDS,
  SERVING_STYLE_WORDS,
} from '$lib/presentation/code-words.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import { daysInWords, readDays, type DaysMeant } from './day-list.ts';

/* How people of a trip eat: portion, tastes and cook group of each, the serving style, reserve meals, and meals that are taken otherwise. */

/** Codes of the boxes that name no one in particular. */
export const EVERYONE = 'everyone';
export const NO_ONE = 'no one';
const MADE_OF_WORDS: Readonly<Record<string, Text>> = {
  yes: text('extras, such as bars, nuts and bread'),
  no: text('a main dish'),
};

export const MEAL_FIELD_LABELS: Readonly<Record<string, Text>> = {
  portion: text('Portion from a pot'),
  cookGroup: text('Cook group'),
  'tastes.never': text('Never eats'),
  'tastes.rather not': text('Rather not'),
  'tastes.gladly': text('Gladly'),
  servingStyle: text('Serving style'),
  reserveMeals: text('Reserve meals'),
  days: text('Days'),
  meals: text('Meals'),
  stop: text('Stop'),
  style: text('Serving style'),
  elsewhere: text('Eats elsewhere'),
  dish: text('Dish'),
  extras: text('Made of'),
  remove: text('Remove'),
};

export const MEAL_FIELD_CHOICES: Readonly<Record<string, Readonly<Record<string, Text>>>> = {
  portion: PORTION_SIZE_WORDS,
  servingStyle: SERVING_STYLE_WORDS,
  style: SERVING_STYLE_WORDS,
  stop: MEAL_STOP_WORDS,
  meals: MEAL_WORDS,
  extras: MADE_OF_WORDS,
  elsewhere: { [EVERYONE]: text('everyone'), [NO_ONE]: text('no one') },
};

/** @returns what the fields of a trip about its meals are filled with, but for those of each eater. */
export function mealFields({ servingStyle, reserveMeals, mealRules = [] }: Trip): Entered {
  const fields: Record<string, readonly string[]> = {
    servingStyle: [servingStyle ?? ''],
    reserveMeals: bareField(reserveMeals),
  };
  mealRules.forEach(({ days, meals, stop, style, elsewhere, dish, extras }, index) => {
    const at = `mealRules[${index}].`;
    fields[`${at}days`] = [daysInWords(days)];
    fields[`${at}meals`] = meals ?? [];
    fields[`${at}stop`] = [stop ?? ''];
    fields[`${at}style`] = [style ?? ''];
    fields[`${at}elsewhere`] = elsewhere === undefined ? [] : [elsewhere].flat();
    fields[`${at}dish`] = [dish ?? ''];
    fields[`${at}extras`] = [extras === undefined ? '' : extras ? 'yes' : 'no'];
  });
  return fields;
}

/** @returns what the fields of one eater are filled with; `at` is their place, such as `party[0].`. */
export function eaterMealFields(
  { cookGroups = [] }: Pick<Trip, 'cookGroups'>,
  { name, portion, tastes = [] }: Eater,
  at: string,
): Entered {
  return {
    [`${at}portion`]: [portion ?? ''],
    [`${at}cookGroup`]: [cookGroups.find(({ eaters }) => eaters.includes(name))?.name ?? ''],
    ...Object.fromEntries(
      TASTES.map((taste) => [
        `${at}tastes.${taste}`,
        [
          tastes
            .filter((said) => said.taste === taste)
            .map(({ food }) => food)
            .join('\n'),
        ],
      ]),
    ),
  };
}

/** Reads portion and tastes of one eater. */
export function readEaterMeals(read: FormReader, at: string) {
  const tastes = TASTES.flatMap((taste) =>
    foodsOf(read, `${at}tastes.${taste}`).map((food) => ({ food, taste })),
  );
  return { portion: read.text(`${at}portion`), tastes: tastes.length > 0 ? tastes : undefined };
}

const foodsOf = (read: FormReader, name: string): string[] => [
  ...new Set(
    (read.text(name) ?? '')
      .split('\n')
      .map((line) => line.trim())
      .filter(Boolean),
  ),
];

/**
 * Reads what a trip says of its meals.
 *
 * @param stored the trip as it was when the form was opened: pots of cook groups are kept
 * @param party as read, with its names
 * @returns the values, and which lines of the form the rules come from
 */
export function readMeals(read: FormReader, stored: Trip, party: readonly { readonly name: string }[]) {
  const lines = keptLines(read, 'mealRules', []);
  const mealRules = lines.map((line) => readRule(read, `mealRules[${line}].`, party));
  return {
    lines,
    values: {
      servingStyle: read.text('servingStyle'),
      reserveMeals: read.number('reserveMeals', { stored: stored.reserveMeals }),
      cookGroups: readGroups(read, stored.cookGroups ?? [], party),
      mealRules: mealRules.length > 0 ? mealRules : undefined,
    },
  };
}

function readRule(read: FormReader, at: string, party: readonly { readonly name: string }[]) {
  const meals = read.choices(`${at}meals`);
  const extras = read.text(`${at}extras`);
  const rule = withoutUndefined({
    days: daysAt(read, `${at}days`),
    meals: meals.length > 0 ? MEAL_KINDS.filter((meal) => meals.includes(meal)) : undefined,
    stop: read.text(`${at}stop`),
    style: read.text(`${at}style`),
    elsewhere: elsewhereAt(read, `${at}elsewhere`, party),
    dish: read.text(`${at}dish`),
    extras: extras === undefined ? undefined : extras === 'yes',
  });
  const { days: _days, meals: _meals, ...said } = rule;
  if (Object.keys(said).length === 0)
    read.add([
      { field: `${at}stop`, message: say('say what is different at these meals, or remove the line') },
    ]);
  return rule;
}

function daysAt(read: FormReader, field: string): DaysMeant | undefined {
  const typed = read.text(field);
  const days = typed === undefined ? undefined : readDays(typed);
  if (typeof days !== 'object' || !('problem' in days)) return days;
  read.add([{ field, message: days.problem }]);
  return undefined;
}

function elsewhereAt(
  read: FormReader,
  field: string,
  party: readonly { readonly name: string }[],
): MealRule['elsewhere'] {
  const chosen = read.choices(field);
  if (chosen.length === 0) return undefined;
  if (chosen.includes(EVERYONE)) return EVERYONE;
  if (chosen.includes(NO_ONE)) return NO_ONE;
  const gone = chosen.find((name) => !party.some((eater) => eater.name === name));
  if (gone !== undefined)
    read.add([{ field, message: say('"{name}" is not in the group; choose again', { name: gone }) }]);
  return chosen;
}

/** Groups by what each eater's field says, in the order in which they stood. Where no one says any, there are none. */
function readGroups(
  read: FormReader,
  stored: readonly CookGroup[],
  party: readonly { readonly name: string }[],
): CookGroup[] | undefined {
  const said = party.map(({ name }, index) => ({
    name,
    field: `party[${index}].cookGroup`,
    group: read.text(`party[${index}].cookGroup`),
  }));
  if (said.every(({ group }) => group === undefined)) return undefined;
  for (const { field, group } of said)
    if (group === undefined)
      read.add([{ field, message: say('name a cook group here too, since others have one') }]);
  const place = (group: string) => {
    const index = stored.findIndex(({ name }) => name === group);
    return index < 0 ? stored.length : index;
  };
  return [...Map.groupBy(said, ({ group }) => group ?? '')]
    .filter(([group]) => group !== '')
    .sort(([one], [other]) => place(one) - place(other))
    .map(([group, members]) => {
      const before = stored.find(({ name }) => name === group);
      return { ...before, name: group, eaters: members.map(({ name }) => name) };
    });
}

/** @returns the problems where the form has their fields. */
export function atMealFields(
  problems: readonly Problem[],
  read: FormReader,
  lines: readonly number[],
): Problem[] {
  const groupField = () =>
    Object.keys(read.entered).find(
      (name) => name.endsWith('.cookGroup') && (read.text(name)?.length ?? 0) > 0,
    );
  return atLines(problems, { mealRules: lines }).map((problem) => {
    const taste = /^(party\[\d+\]\.)tastes(?:\[(\d+)\])?/.exec(problem.field);
    if (taste)
      return {
        ...problem,
        field: `${taste[1]}tastes.${tasteAt(read, taste[1] ?? '', Number(taste[2] ?? 0))}`,
      };
    return problem.field.startsWith('cookGroups')
      ? { ...problem, field: groupField() ?? problem.field }
      : problem;
  });
}

/** In which of an eater's fields a taste stands, counted through all of them. */
function tasteAt(read: FormReader, at: string, index: number): string {
  let before = 0;
  for (const taste of TASTES) {
    before += foodsOf(read, `${at}tastes.${taste}`).length;
    if (index < before) return taste;
  }
  return 'never';
}

/** @returns a rule as a closed line says it: "day 3, dinner: everyone eats elsewhere". */
export function ruleInWords({ days, meals, stop, style, elsewhere, dish, extras }: MealRule): string {
  const when = [
    days === undefined
      ? say('every day')
      : days === 'rest days'
        ? say('rest days')
        : say('{count, plural, one {day {days}} other {days {days}}}', {
            count: days.length,
            days: daysInWords(days),
          }),
    ...(meals ?? []).map((meal: MealKind) => say(MEAL_WORDS[meal])),
  ].join(', ');
  const what = [
    elsewhere === undefined
      ? ''
      : elsewhere === EVERYONE
        ? say('everyone eats elsewhere')
        : elsewhere === NO_ONE
          ? say('no one eats elsewhere')
          : say('{eaters} elsewhere', { eaters: elsewhere.join(', ') }),
    stop === undefined ? '' : say(MEAL_STOP_WORDS[stop]),
    style === undefined ? '' : say(SERVING_STYLE_WORDS[style]),
    dish ?? '',
    extras === undefined ? '' : say(MADE_OF_WORDS[extras ? 'yes' : 'no'] ?? text('a main dish')),
  ]
    .filter(Boolean)
    .join(', ');
  return say('{when}: {what}', { when, what });
}
