import { problemsOf, type Problem } from '$lib/presentation/problems.ts';
import { routeFaultText } from '$lib/presentation/route-words.ts';
import { Trip, type DayConditions } from '$lib/planning/model/trip.ts';
import { RouteError } from '$lib/planning/route/route-error.ts';
import { knownLegs } from '$lib/planning/route/trip-legs.ts';
import { fieldValue, type Quantity, type UnitSystem } from '$lib/presentation/show.ts';
import { statureValue } from '$lib/planning/units/stature.ts';
import { say, sayWithin, text, type Text } from '$lib/texts/say.ts';
import { withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import {
  CANISTER_GAS_WORDS,
  DAY_KIND_WORDS,
  FUEL_WORDS,
  MEAL_WORDS,
  ALLERGEN_WORDS,
  DIET_WORDS,
} from '$lib/presentation/code-words.ts';
import { type FieldWords } from '$lib/forms/differences.ts';
import {
  atMealFields,
  eaterMealFields,
  MEAL_FIELD_CHOICES,
  MEAL_FIELD_LABELS,
  mealFields,
  readEaterMeals,
  readMeals,
} from './meal-fields.ts';
import { withNewKind } from './kind-of-day.ts';
import {
  ACCLIMATISED_WORDS,
  CAMP_WATER_WORDS,
  PLAN_FOR_WORDS,
  SEX_WORDS,
  SUN_WORDS,
  TERRAIN_WORDS,
  WALKING_TIME_WORDS,
  WIND_WORDS,
} from './choice-words.ts';

type NumberFields<Name extends string> = Readonly<Record<Name, Quantity | undefined>>;

/** Number fields of the parts of a trip, with what is measured; the others are bare numbers. */
const EATER_NUMBERS: NumberFields<'energyKcal' | 'maxLoadG' | 'baseLoadG' | 'waterCapacityMl'> = {
  energyKcal: 'energy',
  maxLoadG: 'pack',
  baseLoadG: 'pack',
  waterCapacityMl: 'water',
};
const CONTAINER: NumberFields<'animalContainerMl'> = { animalContainerMl: 'water' };
const BODY_NUMBERS: NumberFields<'ageY' | 'massG'> = { ageY: undefined, massG: 'pack' };
/** The leg of a day; only where there is no route, which would say it. */
const LEG_NUMBERS: NumberFields<'distanceM' | 'climbM' | 'descentM'> = {
  distanceM: 'distance',
  climbM: 'altitude',
  descentM: 'altitude',
};
const DAY_NUMBERS: NumberFields<
  'walkingH' | 'campAltitudeM' | 'airTemperatureC' | 'humidityShare' | 'waterTemperatureC' | 'waterEveryH'
> = {
  walkingH: undefined,
  campAltitudeM: 'altitude',
  airTemperatureC: 'temperature',
  humidityShare: 'share',
  waterTemperatureC: 'temperature',
  waterEveryH: undefined,
};
const DAY_CHOICES = ['kind', 'terrain', 'sun', 'wind', 'campWater'] as const;
const PACE_NUMBERS: NumberFields<'partyFactor' | 'restShare'> = {
  partyFactor: undefined,
  restShare: 'share',
};
const STOVE_NUMBERS: NumberFields<'efficiency' | 'reserve'> = { efficiency: 'share', reserve: 'share' };

/** The fields of one day that the table shows at once, with a route and without one, and those that fold away. */
export const DAY_FIELDS = {
  onRoute: ['kind', 'endsAt', 'walkingH', 'campAltitudeM', 'airTemperatureC', 'campWater'],
  byHand: [
    'kind',
    'distanceM',
    'climbM',
    'descentM',
    'walkingH',
    'campAltitudeM',
    'airTemperatureC',
    'campWater',
  ],
  more: ['terrain', 'sun', 'humidityShare', 'wind', 'waterTemperatureC', 'waterEveryH'],
} as const satisfies Readonly<Record<string, readonly (keyof DayConditions)[]>>;
export type DayField = (typeof DAY_FIELDS)[keyof typeof DAY_FIELDS][number];

const LABELS: Readonly<Record<string, Text>> = {
  name: text('Name'),
  startDate: text('Start date'),
  dayCount: text('Days'),
  firstMeal: text('First meal of the first day'),
  lastMeal: text('Last meal of the last day'),
  energyKcal: text('Energy'),
  party: text('Group'),
  partySize: text('People'),
  allergens: text('Allergens'),
  diets: text('Diets'),
  maxLoadG: text('Carry limit'),
  baseLoadG: text('Base weight'),
  waterCapacityMl: text('Bottles and water bags hold'),
  animalContainerMl: text('Container safe from animals'),
  body: text('Body data'),
  sex: text('Sex (for the equations)'),
  ageY: text('Age'),
  heightM: text('Height'),
  massG: text('Body weight'),
  planFor: text('Plan for'),
  deficitShare: text('Calorie deficit'),
  days: text('Days'),
  kind: text('Kind of day'),
  distanceM: text('Length'),
  climbM: text('Climb'),
  descentM: text('Descent'),
  endsAt: text('Ends at'),
  walkingH: text('Walking'),
  campAltitudeM: text('Highest camp'),
  airTemperatureC: text('Air'),
  humidityShare: text('Humidity'),
  sun: text('Sun or shade'),
  acclimatised: text('Used to the heat'),
  wind: text('Wind at the stove'),
  terrain: text('Ground'),
  waterTemperatureC: text('Water'),
  campWater: text('Water at camp'),
  waterEveryH: text('Water source every'),
  'pace.method': text('Walking time by'),
  'pace.partyFactor': text('Pace factor'),
  'pace.restShare': text('Breaks'),
  'stove.fuel': text('Fuel'),
  'stove.gas': text('Gas in the canisters'),
  'stove.efficiency': text('Efficiency'),
  'stove.reserve': text('Reserve'),
  ...MEAL_FIELD_LABELS,
};

const ROWS: Readonly<Record<string, Text>> = {
  party: text('Person {number}'),
  days: text('Day {number}'),
  mealRules: text('Other meals, line {number}'),
  resupplies: text('Resupply, place {number}'),
};

/** @returns the label of a field of a trip, with the eater, the day or the line where it is one of several: "Eater 2, may carry". */
export function tripLabel(field: string): string | undefined {
  const row = /^(party|days|mealRules|resupplies)\[(\d+)\](?:\.(?:body\.)?([\w.]+))?/.exec(field);
  if (!row) return LABELS[field] && say(LABELS[field]);
  const [, part = '', index, name = ''] = row;
  const which = say(ROWS[part] ?? text('Day {number}'), { number: Number(index) + 1 });
  const label = LABELS[name];
  return label ? `${which}, ${sayWithin(label)}` : which;
}

/** More rows than any trip may have are not read: what a form holds beyond them, no page has sent. */
const MAX_ROWS = 100;

/** @returns how many eaters or days a form holds. */
export function rowCount(entered: Entered, part: 'party' | 'days'): number {
  const indexes = Object.keys(entered).flatMap((name) => {
    const row = /^(party|days)\[(\d{1,3})\]/.exec(name);
    return row?.[1] === part ? [Number(row[2])] : [];
  });
  return Math.min(MAX_ROWS, Math.max(-1, ...indexes) + 1);
}

/** @returns what the form of a trip is filled with; the menu is changed elsewhere. */
export function tripFields(trip: Trip, system: UnitSystem): Entered {
  const numbers = <Name extends string>(
    fields: NumberFields<Name>,
    values: Partial<Record<Name, number | undefined>>,
    at: string,
  ): Entered =>
    Object.fromEntries(
      Object.entries<Quantity | undefined>(fields).map(([name, quantity]) => {
        const value = values[name as Name];
        const text =
          value === undefined ? '' : quantity ? fieldValue(value, quantity, system) : String(value);
        return [`${at}${name}`, [text]];
      }),
    );
  const fields: Record<string, readonly string[]> = {
    name: [trip.name],
    startDate: [trip.startDate],
    dayCount: [String(trip.dayCount)],
    firstMeal: [trip.firstMeal ?? ''],
    lastMeal: [trip.lastMeal ?? ''],
    energyKcal: [trip.energyKcal === undefined ? '' : fieldValue(trip.energyKcal, 'energy', system)],
    planFor: [trip.planFor ?? ''],
    acclimatised: [trip.acclimatised ?? ''],
    deficitShare: [trip.deficitShare === undefined ? '' : fieldValue(trip.deficitShare, 'share', system)],
    'stove.fuel': [trip.stove.fuel ?? ''],
    'stove.gas': [trip.stove.gas ?? ''],
    ...numbers(STOVE_NUMBERS, trip.stove, 'stove.'),
    'pace.method': [trip.pace.method ?? ''],
    ...numbers(PACE_NUMBERS, trip.pace, 'pace.'),
    ...mealFields(trip),
    ...numbers(CONTAINER, trip, ''),
  };
  trip.party.forEach((eater, index) => {
    const at = `party[${index}].`;
    fields[`${at}name`] = [eater.name];
    fields[`${at}allergens`] = eater.allergens;
    fields[`${at}diets`] = eater.diets;
    fields[`${at}body.sex`] = [eater.body?.sex ?? ''];
    fields[`${at}body.heightM`] = [
      eater.body?.heightM === undefined ? '' : statureValue(eater.body.heightM, system),
    ];
    Object.assign(
      fields,
      numbers(EATER_NUMBERS, eater, at),
      numbers(BODY_NUMBERS, eater.body ?? {}, `${at}body.`),
      eaterMealFields(trip, eater, at),
    );
  });
  for (let index = 0; index < trip.dayCount; index += 1) {
    const at = `days[${index}].`;
    const day = trip.days[index] ?? {};
    for (const name of DAY_CHOICES) fields[`${at}${name}`] = [day[name] ?? ''];
    Object.assign(fields, numbers(DAY_NUMBERS, day, at));
    if (trip.route) fields[`${at}endsAt`] = [day.endsAt ?? ''];
    else Object.assign(fields, numbers(LEG_NUMBERS, day, at));
  }
  return fields;
}

/**
 * Reads the form of a trip, all but its menu, its route, and what the page on water and fuel holds.
 *
 * @param stored the trip as it was when the form was opened
 * @returns the trip with an empty menu and the days that fell off its end although something was entered for them,
 * or `undefined` where `read.problems` says what has to be mended
 */
export function readTrip(
  read: FormReader,
  stored: Trip,
): { trip: Trip; droppedDays: readonly number[] } | undefined {
  const numbers = <Name extends string>(
    fields: NumberFields<Name>,
    values: Partial<Record<Name, number | undefined>> | undefined,
    at: string,
  ) =>
    Object.fromEntries(
      Object.entries<Quantity | undefined>(fields).map(([name, quantity]) => [
        name,
        read.number(`${at}${name}`, { stored: values?.[name as Name], ...(quantity && { quantity }) }),
      ]),
    );

  const party = Array.from({ length: rowCount(read.entered, 'party') }, (_, index) => {
    const at = `party[${index}].`;
    const { body: storedBody } = stored.party[index] ?? {};
    const body = withoutUndefined({
      sex: read.text(`${at}body.sex`),
      heightM: read.stature(`${at}body.heightM`, storedBody?.heightM),
      ...numbers(BODY_NUMBERS, storedBody, `${at}body.`),
    });
    return withoutUndefined({
      name: read.text(`${at}name`) ?? '',
      ...numbers(EATER_NUMBERS, stored.party[index], at),
      body: Object.keys(body).length > 0 ? body : undefined,
      ...readEaterMeals(read, at),
      allergens: read.choices(`${at}allergens`),
      diets: read.choices(`${at}diets`),
    });
  });
  const days = Array.from({ length: rowCount(read.entered, 'days') }, (_, index) => {
    const at = `days[${index}].`;
    const before = stored.days[index];
    const { distanceM, climbM, descentM } = before ?? {};
    const day = withoutUndefined({
      ...numbers(DAY_NUMBERS, before, at),
      ...Object.fromEntries(DAY_CHOICES.map((name) => [name, read.text(`${at}${name}`)])),
      ...(stored.route
        ? { distanceM, climbM, descentM, endsAt: read.text(`${at}endsAt`) }
        : numbers(LEG_NUMBERS, before, at)),
    });
    return withNewKind(day, before);
  });
  const dayCount = read.number('dayCount');
  const inTrip = days.slice(0, dayCount ?? days.length);
  const lastEntered = inTrip.findLastIndex((day) => Object.keys(day).length > 0);

  const meals = readMeals(read, stored, party);
  const { menu: _menu, ...kept } = stored;
  const input = withoutUndefined({
    ...kept,
    name: read.text('name') ?? '',
    startDate: read.text('startDate'),
    dayCount,
    firstMeal: read.text('firstMeal'),
    lastMeal: read.text('lastMeal'),
    energyKcal: read.number('energyKcal', { quantity: 'energy', stored: stored.energyKcal }),
    planFor: read.text('planFor'),
    deficitShare: read.number('deficitShare', { quantity: 'share', stored: stored.deficitShare }),
    acclimatised: read.text('acclimatised'),
    party,
    days: inTrip.slice(0, lastEntered + 1),
    pace: withoutUndefined({
      method: read.text('pace.method'),
      ...numbers(PACE_NUMBERS, stored.pace, 'pace.'),
    }),
    stove: withoutUndefined({
      ...stored.stove,
      fuel: read.text('stove.fuel'),
      gas: read.text('stove.gas'),
      ...numbers(STOVE_NUMBERS, stored.stove, 'stove.'),
    }),
    ...meals.values,
    ...numbers(CONTAINER, stored, ''),
    resupplies: stored.resupplies,
    planned: stored.planned,
    withdrawn: stored.withdrawn,
  });
  const result = Trip.safeParse(input, { reportInput: true });
  if (!result.success) read.add(atMealFields(problemsOf(result.error), read, meals.lines));
  else read.add(problemsOfLegs(result.data));
  if (!result.success || read.problems.length > 0) return undefined;
  const droppedDays = days.flatMap((day, index) =>
    index >= result.data.dayCount && Object.keys(day).length > 0 ? [index + 1] : [],
  );
  return { trip: result.data, droppedDays };
}

/** @returns what is wrong with the days of a trip as a way along its route. */
export function problemsOfLegs(trip: Trip): Problem[] {
  try {
    knownLegs(trip);
    return [];
  } catch (caught) {
    if (!(caught instanceof RouteError)) throw caught;
    const { day } = caught.where;
    const field = day === undefined ? 'days' : `days[${day - 1}].endsAt`;
    return [{ field, message: routeFaultText(caught.fault) }];
  }
}

/** @returns the form with one more, empty, eater. */
export function withEater(entered: Entered): Entered {
  const index = rowCount(entered, 'party');
  return { ...entered, [`party[${index}].name`]: [''] };
}

/** @returns the form without one eater; those behind move up. */
export function withoutEater(entered: Entered, removed: number): Entered {
  return Object.fromEntries(
    Object.entries(entered).flatMap(([name, values]) => {
      const row = /^party\[(\d+)\](.*)$/.exec(name);
      const index = Number(row?.[1]);
      if (!row || index < removed) return [[name, values]];
      return index === removed ? [] : [[`party[${index - 1}]${row[2]}`, values]];
    }),
  );
}

/** @returns the form with what was entered for the first day on every day, but for where each ends. */
export function withFirstDayEverywhere(entered: Entered): Entered {
  const filled: Record<string, readonly string[]> = { ...entered };
  const ofFirst = Object.entries(entered).flatMap(([name, values]) => {
    const [, field] = /^days\[0\]\.(\w+)$/.exec(name) ?? [];
    return field && field !== 'endsAt' ? [{ field, values }] : [];
  });
  for (let index = 1; index < rowCount(entered, 'days'); index += 1)
    for (const { field, values } of ofFirst) filled[`days[${index}].${field}`] = values;
  return filled;
}

const CHOICES: Readonly<Record<string, Readonly<Record<string, Text>>>> = {
  firstMeal: MEAL_WORDS,
  lastMeal: MEAL_WORDS,
  planFor: PLAN_FOR_WORDS,
  'pace.method': WALKING_TIME_WORDS,
  'stove.fuel': FUEL_WORDS,
  'stove.gas': CANISTER_GAS_WORDS,
  'body.sex': SEX_WORDS,
  allergens: ALLERGEN_WORDS,
  diets: DIET_WORDS,
  kind: DAY_KIND_WORDS,
  terrain: TERRAIN_WORDS,
  sun: SUN_WORDS,
  acclimatised: ACCLIMATISED_WORDS,
  wind: WIND_WORDS,
  campWater: CAMP_WATER_WORDS,
  ...MEAL_FIELD_CHOICES,
};

/** How the fields of a trip are said; those of an eater or a day by what stands behind the number of the row. */
export const TRIP_WORDS: FieldWords = {
  label: tripLabel,
  choices: (field) => CHOICES[field.replace(/^(?:party|days|mealRules)\[\d+\]\./, '')],
};
