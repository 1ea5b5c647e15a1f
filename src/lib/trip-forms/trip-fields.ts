import { ALLERGEN_LIST } from '$lib/planning/model/allergens.ts';
import { DIET_LIST } from '$lib/planning/model/diets.ts';
import { problemsOf } from '$lib/planning/model/problems.ts';
import { Trip, type DayConditions } from '$lib/planning/model/trip.ts';
import { fieldValue, type Quantity, type UnitSystem } from '$lib/planning/units/show.ts';
import { withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';

type NumberFields<Name extends string> = Readonly<Record<Name, Quantity | undefined>>;

/** Number fields of the parts of a trip, with what is measured; the others are bare numbers. */
const EATER_NUMBERS: NumberFields<'energyKcal' | 'maxLoadG' | 'baseLoadG'> = {
  energyKcal: 'energy',
  maxLoadG: 'pack',
  baseLoadG: 'pack',
};
const DAY_NUMBERS: NumberFields<
  'walkingH' | 'campAltitudeM' | 'airTemperatureC' | 'waterTemperatureC' | 'waterEveryH'
> = {
  walkingH: undefined,
  campAltitudeM: 'altitude',
  airTemperatureC: 'temperature',
  waterTemperatureC: 'temperature',
  waterEveryH: undefined,
};
const STOVE_NUMBERS: NumberFields<'efficiency' | 'reserve'> = { efficiency: 'share', reserve: 'share' };

/** The fields of one day, in the order of the table. */
export const DAY_FIELDS = [
  'walkingH',
  'campAltitudeM',
  'airTemperatureC',
  'waterTemperatureC',
  'campWater',
  'waterEveryH',
] as const satisfies readonly (keyof DayConditions)[];

const LABELS: Readonly<Record<string, string>> = {
  name: 'Name',
  startDate: 'Start date',
  dayCount: 'Days',
  firstMeal: 'First meal of the first day',
  lastMeal: 'Last meal of the last day',
  energyKcal: 'Energy',
  party: 'Party',
  partySize: 'Eaters',
  allergens: 'Allergens',
  diets: 'Diets',
  maxLoadG: 'May carry',
  baseLoadG: 'Base load',
  days: 'Days',
  walkingH: 'Walking',
  campAltitudeM: 'Highest camp',
  airTemperatureC: 'Air',
  waterTemperatureC: 'Water',
  campWater: 'Camp at',
  waterEveryH: 'Water on the way every',
  'stove.fuel': 'Fuel',
  'stove.efficiency': 'Efficiency',
  'stove.reserve': 'Reserve',
};

/** @returns the label of a field of a trip, with the eater or the day where it is one of several: "Eater 2, may carry". */
export function tripLabel(field: string): string | undefined {
  const row = /^(party|days)\[(\d+)\](?:\.(\w+))?/.exec(field);
  if (!row) return LABELS[field];
  const [, part, index, name = ''] = row;
  const which = `${part === 'party' ? 'Eater' : 'Day'} ${Number(index) + 1}`;
  const label = LABELS[name];
  return label ? `${which}, ${label.charAt(0).toLowerCase()}${label.slice(1)}` : which;
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
    'stove.fuel': [trip.stove.fuel ?? ''],
    ...numbers(STOVE_NUMBERS, trip.stove, 'stove.'),
  };
  trip.party.forEach((eater, index) => {
    const at = `party[${index}].`;
    fields[`${at}name`] = [eater.name];
    fields[`${at}allergens`] = eater.allergens;
    fields[`${at}diets`] = eater.diets;
    Object.assign(fields, numbers(EATER_NUMBERS, eater, at));
  });
  for (let index = 0; index < trip.dayCount; index += 1) {
    const at = `days[${index}].`;
    fields[`${at}campWater`] = [trip.days[index]?.campWater ?? ''];
    Object.assign(fields, numbers(DAY_NUMBERS, trip.days[index] ?? {}, at));
  }
  return fields;
}

/**
 * Reads the form of a trip, all but its menu.
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
    return withoutUndefined({
      name: read.text(`${at}name`) ?? '',
      ...numbers(EATER_NUMBERS, stored.party[index], at),
      allergens: read.choices(`${at}allergens`),
      diets: read.choices(`${at}diets`),
    });
  });
  const days = Array.from({ length: rowCount(read.entered, 'days') }, (_, index) => {
    const at = `days[${index}].`;
    return withoutUndefined({
      ...numbers(DAY_NUMBERS, stored.days[index], at),
      campWater: read.text(`${at}campWater`),
    });
  });
  const dayCount = read.number('dayCount');
  const inTrip = days.slice(0, dayCount ?? days.length);
  const lastEntered = inTrip.findLastIndex((day) => Object.keys(day).length > 0);

  const input = withoutUndefined({
    name: read.text('name') ?? '',
    startDate: read.text('startDate'),
    dayCount,
    firstMeal: read.text('firstMeal'),
    lastMeal: read.text('lastMeal'),
    energyKcal: read.number('energyKcal', { quantity: 'energy', stored: stored.energyKcal }),
    party,
    days: inTrip.slice(0, lastEntered + 1),
    stove: withoutUndefined({
      fuel: read.text('stove.fuel'),
      ...numbers(STOVE_NUMBERS, stored.stove, 'stove.'),
    }),
  });
  const result = Trip.safeParse(input, { reportInput: true });
  if (!result.success) read.add(problemsOf(result.error));
  if (!result.success || read.problems.length > 0) return undefined;
  const droppedDays = days.flatMap((day, index) =>
    index >= result.data.dayCount && Object.keys(day).length > 0 ? [index + 1] : [],
  );
  return { trip: result.data, droppedDays };
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

/** @returns the form with what was entered for the first day on every day. */
export function withFirstDayEverywhere(entered: Entered): Entered {
  const filled: Record<string, readonly string[]> = { ...entered };
  for (let index = 1; index < rowCount(entered, 'days'); index += 1)
    for (const name of DAY_FIELDS) filled[`days[${index}].${name}`] = entered[`days[0].${name}`] ?? [''];
  return filled;
}

export type Difference = { readonly label: string; readonly mine: string; readonly theirs: string };

/** @returns the fields in which two fillings of the form of one trip differ, as words. */
export function tripDifferences(mine: Entered, theirs: Entered): Difference[] {
  const names = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
  return [...names].flatMap((name) => {
    const label = tripLabel(name);
    const [ours, others] = [wordsFor(mine[name]), wordsFor(theirs[name])];
    return label && ours !== others ? [{ label, mine: ours, theirs: others }] : [];
  });
}

const WORDS = new Map<string, string>(
  [...ALLERGEN_LIST, ...DIET_LIST].map(({ code, label }) => [code, label]),
);

function wordsFor(values: readonly string[] = []): string {
  return (
    values
      .map((value) => WORDS.get(value) ?? value.trim())
      .sort()
      .join(', ') || '–'
  );
}
