import fc from 'fast-check';
import { ALLERGENS } from '../../src/lib/planning/model/allergens.ts';
import { DIETS } from '../../src/lib/planning/model/diets.ts';
import { PouchLot, type Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import {
  FUEL_KINDS,
  MAIN_MEALS,
  MEAL_KINDS,
  DAY_KINDS,
  MEAL_STOPS,
  PORTION_SIZES,
  SERVING_STYLES,
  TASTES,
} from '../../src/lib/planning/model/words.ts';

/** Random shelves and trips that the schemas accept, for the properties every plan must have. */

const START = '2027-07-01';
export const amount = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => Math.round(value * 10) / 10);
export const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
export const present = <T extends object>(value: T) =>
  Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined));

const lotWith = (code: string): fc.Arbitrary<PouchLot> =>
  fc
    .record({
      recipe: fc.constantFrom(
        'bean stew',
        'dal',
        'goulash',
        'porridge',
        'rice pan',
        'soup',
        'trail bar',
        'cocoa',
      ),
      mealKinds: fc.subarray([...MEAL_KINDS], { minLength: 1, maxLength: 3 }),
      bestBefore: fc.integer({ min: -3, max: 12 }).map((days) => addDays(START, days)),
      pouches: fc.integer({ min: 0, max: 8 }),
      servingsPerPouch: fc.constantFrom(1, 1, 2, 2, 4, 0.5, 1.5),
      dryWeightG: amount(20, 220),
      kcalPerG: amount(2.5, 6),
      waterPerG: amount(0, 4),
      waterKind: fc.constantFrom('boiling', 'boiling', 'hot', 'cold', 'none'),
      steepMin: fc.integer({ min: 0, max: 20 }),
      stirShare: optional(amount(0.1, 0.9)),
      tareG: amount(0, 25),
      allergens: optional(fc.subarray([...ALLERGENS], { maxLength: 3 })),
      diets: fc.subarray([...DIETS], { maxLength: 2 }),
      costMinor: optional(fc.integer({ min: 0, max: 900 })),
      kind: optional(fc.constantFrom('main' as const, 'extra' as const, 'drink' as const)),
      pieces: optional(fc.integer({ min: 1, max: 8 })),
      cookAfter: fc.oneof(
        { weight: 9, arbitrary: fc.constant(undefined) },
        { weight: 1, arbitrary: fc.constantFrom('cook' as const, 'boil hard' as const) },
      ),
      pouchTakesBoilingWater: optional(fc.boolean()),
    })
    .map(({ kcalPerG, waterPerG, stirShare, ...lot }) =>
      PouchLot.parse(
        present({
          ...lot,
          code,
          sealedOn: '2026-05-01',
          stirAfterMin: stirShare && lot.steepMin > 0 ? stirShare * lot.steepMin : undefined,
          energyKcal: Math.round(lot.dryWeightG * kcalPerG),
          waterMl: lot.waterKind === 'none' ? 0 : Math.round(lot.dryWeightG * waterPerG),
        }),
      ),
    );

export const lots: fc.Arbitrary<PouchLot> = fc
  .string({ unit: fc.constantFrom(...'ABC-019 '), minLength: 1, maxLength: 20 })
  .filter((code) => code.trim() !== '')
  .chain(lotWith);

export const stocks: fc.Arbitrary<Stock> = fc
  .integer({ min: 0, max: 25 })
  .chain((count) =>
    fc.tuple(...Array.from({ length: count }, (_, index) => lotWith(`L${String(index).padStart(2, '0')}`))),
  );

export const trips: fc.Arbitrary<Trip> = fc
  .record({
    dayCount: fc.integer({ min: 1, max: 7 }),
    firstMeal: optional(fc.constantFrom(...MAIN_MEALS)),
    lastMeal: optional(fc.constantFrom(...MAIN_MEALS)),
    energyKcal: optional(fc.integer({ min: 1500, max: 4500 })),
    party: fc.array(
      fc.record({
        energyKcal: optional(fc.integer({ min: 1200, max: 5000 })),
        allergens: fc.oneof(
          { weight: 3, arbitrary: fc.constant([]) },
          { weight: 1, arbitrary: fc.subarray([...ALLERGENS], { maxLength: 2 }) },
        ),
        diets: fc.oneof(
          { weight: 4, arbitrary: fc.constant([]) },
          { weight: 1, arbitrary: fc.subarray([...DIETS], { maxLength: 1 }) },
        ),
        portion: fc.oneof(
          { weight: 4, arbitrary: fc.constant(undefined) },
          { weight: 1, arbitrary: fc.constantFrom(...PORTION_SIZES) },
        ),
        tastes: fc.oneof(
          { weight: 3, arbitrary: fc.constant(undefined) },
          {
            weight: 1,
            arbitrary: fc.array(
              fc.record({
                food: fc.constantFrom('stew', 'dal', 'goulash', 'soup', 'trail bar'),
                taste: fc.constantFrom(...TASTES),
              }),
              { maxLength: 3 },
            ),
          },
        ),
        maxLoadG: optional(fc.integer({ min: 0, max: 25_000 })),
        baseLoadG: optional(fc.integer({ min: 0, max: 15_000 })),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    /** After whom of the party a second cook group begins. */
    splitAfter: fc.oneof(
      { weight: 3, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.integer({ min: 1, max: 4 }) },
    ),
    servingStyle: optional(fc.constantFrom(...SERVING_STYLES)),
    mealRules: fc.oneof(
      { weight: 2, arbitrary: fc.constant(undefined) },
      {
        weight: 1,
        arbitrary: fc.array(
          fc
            .record({
              days: optional(fc.constantFrom([1], [2], 'rest days' as const)),
              meals: optional(fc.subarray([...MEAL_KINDS], { minLength: 1 })),
              style: optional(fc.constantFrom(...SERVING_STYLES)),
              stop: optional(fc.constantFrom(...MEAL_STOPS)),
              elsewhere: optional(fc.constantFrom('everyone' as const, 'no one' as const)),
              extras: optional(fc.boolean()),
              dish: optional(fc.constantFrom('dal', 'soup', 'porridge')),
            })
            .map(present),
          { maxLength: 3 },
        ),
      },
    ),
    reserveMeals: fc.constantFrom(undefined, undefined, 1, 2),
    days: fc.array(
      fc.record({
        kind: optional(fc.constantFrom(...DAY_KINDS)),
        walkingH: optional(amount(0, 10)),
        campAltitudeM: optional(fc.integer({ min: -400, max: 5500 })),
        airTemperatureC: optional(fc.integer({ min: -20, max: 42 })),
        waterTemperatureC: optional(fc.integer({ min: -10, max: 25 })),
        humidityShare: optional(amount(0, 1)),
        wind: optional(fc.constantFrom('calm' as const, 'breezy' as const, 'windy' as const)),
        campWater: optional(fc.constantFrom('source' as const, 'dry' as const, 'snow' as const)),
        waterEveryH: optional(amount(0.5, 12)),
      }),
      { maxLength: 7 },
    ),
    treatment: optional(fc.constantFrom('boil' as const, 'filter' as const)),
    stove: fc.record({
      fuel: optional(fc.constantFrom(...FUEL_KINDS)),
      efficiency: optional(amount(0.2, 0.8)),
      reserve: optional(amount(0, 0.6)),
    }),
  })
  .map(({ party, days, stove, splitAfter, ...trip }) => {
    const names = party.map((_, index) => `eater ${index + 1}`);
    const cookGroups =
      splitAfter !== undefined && splitAfter < names.length
        ? [
            { name: 'first', eaters: names.slice(0, splitAfter) },
            { name: 'second', eaters: names.slice(splitAfter) },
          ]
        : undefined;
    const oneDayBackwards =
      trip.dayCount === 1 &&
      trip.firstMeal &&
      trip.lastMeal &&
      MAIN_MEALS.indexOf(trip.firstMeal) > MAIN_MEALS.indexOf(trip.lastMeal);
    return Trip.parse(
      present({
        ...trip,
        cookGroups,
        lastMeal: oneDayBackwards ? undefined : trip.lastMeal,
        name: 'random trip',
        startDate: START,
        party: party.map((eater, index) => present({ ...eater, name: `eater ${index + 1}` })),
        days: days.slice(0, trip.dayCount).map(present),
        stove: present(stove),
      }),
    );
  });
