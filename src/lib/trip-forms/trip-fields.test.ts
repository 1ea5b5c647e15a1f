import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ALLERGENS } from '$lib/planning/model/allergens.ts';
import { DIETS } from '$lib/planning/model/diets.ts';
import { exampleLot } from '../../../tests/support/examples.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { TERRAINS, WALKING_TIME_METHODS } from '$lib/planning/model/route.ts';
import {
  FUEL_KINDS,
  MAIN_MEALS,
  MEAL_KINDS,
  DAY_KINDS,
  MEAL_STOPS,
  PORTION_SIZES,
  SERVING_STYLES,
  TASTES,
} from '$lib/planning/model/words.ts';
import { differences } from '$lib/forms/differences.ts';
import { FormReader, withoutUndefined, type Entered } from '$lib/forms/read-form.ts';
import {
  readTrip,
  rowCount,
  TRIP_WORDS,
  tripFields,
  tripLabel,
  withEater,
  withFirstDayEverywhere,
  withoutEater,
} from './trip-fields.ts';

const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 3,
  energyKcal: 2800,
  party: [
    { name: 'Ada', maxLoadG: 15_000, allergens: ['milk', 'egg'] },
    { name: 'Ben', energyKcal: 3300, diets: ['vegan'] },
  ],
  days: [{}, { walkingH: 7.5, campAltitudeM: 1850, campWater: 'dry' }],
  stove: { efficiency: 0.45 },
});

function reader(entered: Entered, system: 'metric' | 'us' = 'metric'): FormReader {
  const form = new FormData();
  for (const [name, values] of Object.entries(entered)) for (const value of values) form.append(name, value);
  return new FormReader(form, system);
}
const edited = (change: Record<string, string>, system: 'metric' | 'us' = 'metric') => {
  const changes = Object.fromEntries(Object.entries(change).map(([name, value]) => [name, [value]]));
  return reader({ ...tripFields(TRIP, system), ...changes }, system);
};

describe('tripFields and readTrip', () => {
  it('keeps what the form does not show: places on the way, planned food, withdrawn lots', () => {
    const stored = Trip.parse({
      ...TRIP,
      resupplies: [{ place: 'Valley hut', kind: 'box', day: 2 }],
      withdrawn: [{ code: 'B01', recipe: 'Bean stew', reason: 'mould' }],
    });
    const read = reader(tripFields(stored, 'metric'));
    expect(readTrip(read, stored)?.trip).toEqual({ ...stored, menu: [] });
  });

  const optional = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });
  const day = fc
    .record({
      walkingH: optional(fc.double({ min: 0, max: 20, noNaN: true })),
      campAltitudeM: optional(fc.double({ min: -430, max: 8848, noNaN: true })),
      airTemperatureC: optional(fc.double({ min: -50, max: 55, noNaN: true })),
      humidityShare: optional(fc.double({ min: 0, max: 1, noNaN: true })),
      waterTemperatureC: optional(fc.double({ min: -40, max: 60, noNaN: true })),
      kind: optional(fc.constantFrom(...DAY_KINDS)),
      terrain: optional(fc.constantFrom(...TERRAINS)),
      wind: optional(fc.constantFrom('calm' as const, 'breezy' as const, 'windy' as const)),
      campWater: optional(fc.constantFrom('source' as const, 'dry' as const, 'snow' as const)),
      waterEveryH: optional(fc.double({ min: 0.25, max: 48, noNaN: true })),
    })
    .map(withoutUndefined);
  const leg = fc.option(
    fc.record({
      distanceM: fc.double({ min: 2000, max: 150_000, noNaN: true }),
      climbM: fc.double({ min: 0, max: 1000, noNaN: true }),
      descentM: fc.double({ min: 0, max: 1000, noNaN: true }),
    }),
    { nil: {} },
  );
  const eater = fc
    .record({
      energyKcal: optional(fc.integer({ min: 500, max: 12_000 })),
      allergens: fc.subarray([...ALLERGENS]),
      diets: fc.subarray([...DIETS]),
      maxLoadG: optional(fc.double({ min: 0, max: 80_000, noNaN: true })),
      baseLoadG: optional(fc.double({ min: 0, max: 80_000, noNaN: true })),
      portion: optional(fc.constantFrom(...PORTION_SIZES)),
      tastes: optional(
        fc
          .uniqueArray(fc.constantFrom('mushroom', 'Chicken, rice and peas', 'liver'), { minLength: 1 })
          .map((foods) => foods.map((food, index) => ({ food, taste: TASTES[index] ?? 'never' }))),
      ),
    })
    .map(withoutUndefined);
  const mealRule = fc
    .record({
      days: optional(
        fc.oneof(
          fc.constant('rest days' as const),
          fc
            .uniqueArray(fc.integer({ min: 1, max: 90 }), { minLength: 1 })
            .map((all) => all.sort((a, b) => a - b)),
        ),
      ),
      meals: optional(fc.subarray([...MEAL_KINDS], { minLength: 1 })),
      stop: fc.constantFrom(...MEAL_STOPS),
      style: optional(fc.constantFrom(...SERVING_STYLES)),
      elsewhere: optional(fc.constantFrom('everyone' as const, 'no one' as const, ['Eater 1'])),
      extras: optional(fc.boolean()),
      dish: optional(fc.constant('Pancakes')),
    })
    .map(withoutUndefined);
  /** Cook groups of the first of a party and of the others. */
  const inTwo = ([first = '', ...others]: readonly string[]) => [
    { name: 'North', eaters: [first], potMl: 900 },
    ...(others.length > 0 ? [{ name: 'South', eaters: others }] : []),
  ];
  const trips = fc
    .record({
      party: fc.array(eater, { minLength: 1, maxLength: 5 }),
      days: fc.array(
        fc.tuple(day, leg).map(([given, way]) => ({ ...given, ...way })),
        { maxLength: 4 },
      ),
      restShare: optional(fc.double({ min: 0, max: 2, noNaN: true })),
      method: optional(fc.constantFrom(...WALKING_TIME_METHODS)),
      servingStyle: optional(fc.constantFrom(...SERVING_STYLES)),
      reserveMeals: optional(fc.integer({ min: 0, max: 30 })),
      isSplit: fc.boolean(),
      mealRules: optional(fc.array(mealRule, { minLength: 1, maxLength: 3 })),
      firstMeal: optional(fc.constantFrom(...MAIN_MEALS)),
      fuel: optional(fc.constantFrom(...FUEL_KINDS)),
      efficiency: optional(fc.double({ min: 0.05, max: 0.95, noNaN: true })),
    })
    .map(({ party, days, firstMeal, fuel, efficiency, restShare, method, isSplit, ...meals }) =>
      Trip.parse({
        ...withoutUndefined(meals),
        ...(isSplit && { cookGroups: inTwo(party.map((_, index) => `Eater ${index + 1}`)) }),
        name: 'Any',
        startDate: '2026-07-04',
        dayCount: 4,
        ...withoutUndefined({ firstMeal }),
        party: party.map((other, index) => ({ ...other, name: `Eater ${index + 1}` })),
        days: days.slice(0, days.findLastIndex((given) => Object.keys(given).length > 0) + 1),
        stove: withoutUndefined({ fuel, efficiency }),
        pace: withoutUndefined({ restShare, method }),
      }),
    );

  it('read back to the same trip in every unit system, to the last gram', () => {
    fc.assert(
      fc.property(trips, fc.constantFrom('metric' as const, 'us' as const), (trip, system) => {
        const read = reader(tripFields(trip, system), system);
        expect(readTrip(read, trip)).toEqual({ trip: { ...trip, menu: [] }, droppedDays: [] });
      }),
    );
  });

  it('takes what was changed, in the unit shown', () => {
    const trip = readTrip(
      edited({ 'party[1].maxLoadG': '40', 'days[0].airTemperatureC': '50' }, 'us'),
      TRIP,
    )?.trip;
    expect(trip?.party[1]?.maxLoadG).toBeCloseTo(18_143.69, 1);
    expect(trip?.days[0]?.airTemperatureC).toBe(10);
    expect(trip?.party[0]).toEqual(TRIP.party[0]);
  });

  it('names the days that fall off the end although something was entered for them', () => {
    expect(readTrip(edited({ dayCount: '1' }), TRIP)).toEqual({
      trip: { ...TRIP, dayCount: 1, days: [], menu: [] },
      droppedDays: [2],
    });
    expect(readTrip(edited({ dayCount: '2' }), TRIP)?.droppedDays).toEqual([]);
  });

  it.each<[string, Record<string, string>, string, string]>([
    ['0 days', { dayCount: '0' }, 'dayCount', 'must be at least 1 day'],
    ['400 days', { dayCount: '400' }, 'dayCount', 'must be at most 90 days'],
    ['half a day', { dayCount: '2.5' }, 'dayCount', 'must be a whole number of days'],
    ['no days', { dayCount: '' }, 'dayCount', 'please fill this in'],
    ['negative calories', { energyKcal: '-2000' }, 'energyKcal', 'must be at least 500'],
    ['words for a number', { 'party[1].maxLoadG': 'a lot' }, 'party[1].maxLoadG', 'is not a number'],
    ['an unknown allergen', { 'party[0].allergens': 'moonlight' }, 'party[0].allergens[0]', 'moonlight'],
    ['no name', { 'party[0].name': ' ' }, 'party[0].name', 'must not be empty'],
    ['one name twice', { 'party[1].name': 'Ada' }, 'party[1].name', 'twice'],
    ['no date', { startDate: '2026-02-30' }, 'startDate', 'must be a date'],
    ['an unknown fuel', { 'stove.fuel': 'hope' }, 'stove.fuel', 'hope'],
  ])('refuses %s and names the field', (_, change, field, message) => {
    const read = edited(change);
    expect(readTrip(read, TRIP)).toBeUndefined();
    expect(read.refused().problems).toContainEqual({ field, message: expect.stringContaining(message) });
    for (const [name, value] of Object.entries(change)) expect(read.refused().entered[name]).toEqual([value]);
  });

  it('refuses a party of none', () => {
    const read = reader(withoutEater(withoutEater(tripFields(TRIP, 'metric'), 0), 0));
    expect(readTrip(read, TRIP)).toBeUndefined();
    expect(read.problems).toEqual([{ field: 'party', message: 'must have at least one person' }]);
  });
});

describe('the form of a trip with a route', () => {
  const ON_ROUTE = Trip.parse({
    ...TRIP,
    days: [{ endsAt: 'Hut' }, { endsAt: 'Hut', distanceM: 9000 }],
    route: {
      name: 'Ridge',
      profile: [
        { distanceM: 0, altitudeM: 800 },
        { distanceM: 30_000, altitudeM: 1400 },
      ],
      waypoints: [
        { name: 'Spring', distanceM: 4000, water: true },
        { name: 'Hut', distanceM: 12_000 },
      ],
    },
  });
  const readOnRoute = (change: Record<string, string>) => {
    const changes = Object.fromEntries(Object.entries(change).map(([name, value]) => [name, [value]]));
    const read = reader({ ...tripFields(ON_ROUTE, 'metric'), ...changes });
    return { trip: readTrip(read, ON_ROUTE)?.trip, problems: read.problems };
  };

  it('keeps the route, the ends of the days, and the legs that it does not show', () => {
    expect(readOnRoute({})).toEqual({ trip: { ...ON_ROUTE, menu: [] }, problems: [] });
    expect(readOnRoute({ 'days[0].endsAt': 'Spring' }).trip?.days[0]).toEqual({ endsAt: 'Spring' });
  });

  it.each([
    ['an end before that of the day before', { 'days[1].endsAt': 'Spring' }, 1, 'before the end of'],
    ['a last day that stops on the way', { 'days[2].endsAt': 'Hut' }, 2, 'where the last day ends'],
    ['a place that is not on the route', { 'days[0].endsAt': 'Moon' }, 0, 'no waypoint'],
  ])('refuses %s at its day', (_, change, day, message) => {
    const { trip, problems } = readOnRoute(change);
    expect(trip).toBeUndefined();
    expect(problems).toEqual([{ field: `days[${day}].endsAt`, message: expect.stringContaining(message) }]);
    expect(problems[0]?.message).not.toMatch(/^Day/);
  });

  it('the first day is copied to every day, but not where it ends', () => {
    const alike = withFirstDayEverywhere({
      ...tripFields(ON_ROUTE, 'metric'),
      'days[0].terrain': ['blacktop'],
    });
    expect(alike['days[2].terrain']).toEqual(['blacktop']);
    expect(alike['days[2].endsAt']).toEqual(['']);
  });
});

describe('rows of the form', () => {
  const fields = tripFields(TRIP, 'metric');

  it('are counted, and not beyond what any trip has', () => {
    expect(rowCount(fields, 'party')).toBe(2);
    expect(rowCount(fields, 'days')).toBe(3);
    expect(rowCount({ 'party[999].name': ['x'], 'party[99999999].name': ['x'] }, 'party')).toBe(100);
    expect(rowCount({}, 'party')).toBe(0);
  });

  it('an eater is added empty and at the end', () => {
    const more = withEater(fields);
    expect(rowCount(more, 'party')).toBe(3);
    expect(more).toMatchObject({ ...fields, 'party[2].name': [''] });
  });

  it('an eater is taken away with all their fields, and the next one moves up', () => {
    const fewer = withoutEater(fields, 0);
    expect(rowCount(fewer, 'party')).toBe(1);
    expect(fewer).toMatchObject({
      'party[0].name': ['Ben'],
      'party[0].diets': ['vegan'],
      'party[0].allergens': [],
    });
    expect(fewer['days[1].walkingH']).toEqual(['7.5']);
  });

  it('the first day is copied to every day', () => {
    const alike = withFirstDayEverywhere({
      ...fields,
      'days[0].walkingH': ['5'],
      'days[0].campWater': ['dry'],
    });
    for (const index of [0, 1, 2]) {
      expect(alike[`days[${index}].walkingH`]).toEqual(['5']);
      expect(alike[`days[${index}].campWater`]).toEqual(['dry']);
      expect(alike[`days[${index}].campAltitudeM`]).toEqual(['']);
    }
  });
});

it('what other pages hold of a trip is kept', () => {
  const stored = Trip.parse({
    ...TRIP,
    template: true,
    treatment: 'boil',
    resupplies: [{ place: 'Mill', kind: 'box', day: 2 }],
    planned: [{ way: 'buy', lot: exampleLot({ code: '+1' }) }],
  });
  expect(readTrip(reader(tripFields(stored, 'metric')), stored)?.trip).toEqual({ ...stored, menu: [] });
  const shorter = reader({ ...tripFields(stored, 'metric'), dayCount: ['1'] });
  expect(readTrip(shorter, stored)).toBeUndefined();
  expect(shorter.problems.map(({ field }) => tripLabel(field))).toEqual(['Resupply, place 1']);
});

it('tripLabel says which eater or day', () => {
  expect(tripLabel('party[1].maxLoadG')).toBe('Person 2, carry limit');
  expect(tripLabel('party[0].allergens[3]')).toBe('Person 1, allergens');
  expect(tripLabel('days[2].campWater')).toBe('Day 3, water at camp');
  expect(tripLabel('stove.reserve')).toBe('Reserve');
  expect(tripLabel('version')).toBeUndefined();
});

it('two fillings of the form differ in words, not in codes', () => {
  const theirs = tripFields(TRIP, 'metric');
  const mine = {
    ...theirs,
    dayCount: ['4'],
    firstMeal: ['lunch'],
    'party[0].name': ['calm'],
    'party[0].allergens': ['milk'],
    'days[0].wind': ['calm'],
    'stove.fuel': ['canister-gas'],
    version: ['7'],
  };
  expect(differences(mine, { ...theirs, firstMeal: [''] }, TRIP_WORDS)).toEqual([
    { label: 'Days', mine: '4', theirs: '3' },
    { label: 'First meal of the first day', mine: 'lunch', theirs: '–' },
    { label: 'Fuel', mine: 'canister gas', theirs: '–' },
    { label: 'Person 1, name', mine: 'calm', theirs: 'Ada' },
    { label: 'Person 1, allergens', mine: 'milk', theirs: 'egg, milk' },
    { label: 'Day 1, wind at the stove', mine: 'calm', theirs: '–' },
  ]);
});
