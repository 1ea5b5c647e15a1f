import { describe, expect, it } from 'vitest';
import { ONE_GROUP } from '../../../../tests/support/examples.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import { defaultSettings } from '../model/settings.ts';
import { Trip } from '../model/trip.ts';
import { planTrip } from '../plan-trip.ts';
import {
  addByHand,
  moveByHand,
  moveDishByHand,
  removeByHand,
  swapByHand,
  takeByHand,
  type Outcome,
  type Table,
} from './by-hand.ts';
import { listedMeal, type MealPlace } from './edit-menu.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner', group: ONE_GROUP };
const lot = (code: string, pouches: number, other: Partial<PouchLot> = {}): PouchLot =>
  PouchLot.parse({
    code,
    recipe: `Recipe ${code}`,
    mealKinds: ['dinner'],
    sealedOn: '2026-01-10',
    bestBefore: '2027-01-10',
    pouches,
    servingsPerPouch: 1,
    dryWeightG: 120,
    energyKcal: 500,
    waterMl: 300,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 14,
    allergens: [],
    ...other,
  });
const STOCK = [
  lot('L1', 3),
  lot('L2', 1),
  lot('MILK', 5, { allergens: ['milk'] }),
  lot('PAST', 5, { bestBefore: '2026-07-01' }),
];
const trip = Trip.parse({
  name: 'T',
  startDate: '2026-07-04',
  dayCount: 1,
  firstMeal: 'dinner',
  lastMeal: 'dinner',
  party: [{ name: 'Ada', allergens: ['milk'] }],
  menu: [
    {
      ...DINNER,
      opened: [
        { code: 'L1', pouches: 2 },
        { code: 'GONE', pouches: 1 },
      ],
    },
    { day: 1, meal: 'drink', opened: [] },
  ],
});
const table: Table = { trip, stock: STOCK, plan: planTrip(trip, STOCK, defaultSettings()) };
const dinnerAfter = (outcome: Outcome) =>
  'trip' in outcome ? listedMeal(outcome.trip, DINNER)?.opened : outcome.refused;

describe('changes by hand', () => {
  it('swaps as many pouches as are free and says so', () => {
    const outcome = swapByHand(table, DINNER, 'L1', 'L2');
    expect(dinnerAfter(outcome)).toEqual([
      { code: 'L2', pouches: 1 },
      { code: 'GONE', pouches: 1 },
    ]);
    expect(outcome).toMatchObject({ said: 'Day 1, dinner: 2 × L1 swapped for 1 × L2, as no more are free.' });
  });

  it('swaps away a lot that is gone from the shelf', () => {
    expect(dinnerAfter(swapByHand(table, DINNER, 'GONE', 'L2'))).toEqual([
      { code: 'L1', pouches: 2 },
      { code: 'L2', pouches: 1 },
    ]);
    expect(dinnerAfter(removeByHand(table, DINNER, 'GONE'))).toEqual([{ code: 'L1', pouches: 2 }]);
  });

  it('adds one pouch, of a new lot or of one that is there', () => {
    expect(dinnerAfter(addByHand(table, DINNER, 'L1'))).toContainEqual({ code: 'L1', pouches: 3 });
    expect(dinnerAfter(addByHand(table, DINNER, 'L2'))).toContainEqual({ code: 'L2', pouches: 1 });
  });

  it('takes one pouch, and the lot with the last one', () => {
    const one = takeByHand(table, DINNER, 'L1');
    expect(dinnerAfter(one)).toContainEqual({ code: 'L1', pouches: 1 });
    expect(dinnerAfter(takeByHand(table, DINNER, 'GONE'))).toEqual([{ code: 'L1', pouches: 2 }]);
  });

  it.each([
    ['a lot that holds what everyone avoids', () => addByHand(table, DINNER, 'MILK')],
    ['a lot past its best-before', () => addByHand(table, DINNER, 'PAST')],
    ['a lot that is not on the shelf', () => swapByHand(table, DINNER, 'L1', 'NOWHERE')],
    ['to swap a lot that is not on the meal', () => swapByHand(table, DINNER, 'L2', 'L1')],
    ['to take a lot that is not on the meal', () => takeByHand(table, DINNER, 'L2')],
    ['a day that the trip does not have', () => addByHand(table, { ...DINNER, day: 9 }, 'L1')],
  ])('refuses %s', (_, change) =>
    expect(change()).toEqual({ refused: expect.stringMatching(/^Day \d, dinner: /) }),
  );

  it('refuses more pouches than are free', () => {
    const full = {
      ...table,
      plan: {
        ...table.plan,
        menu: planTrip(
          {
            ...trip,
            menu: [{ ...DINNER, locked: false, byHand: false, opened: [{ code: 'L1', pouches: 3 }] }],
          },
          STOCK,
          defaultSettings(),
        ).menu,
      },
    };
    expect(addByHand(full, DINNER, 'L1')).toHaveProperty('refused');
  });
});

describe('moving a pouch', () => {
  const BREAKFAST: MealPlace = { day: 2, meal: 'breakfast', group: ONE_GROUP };
  const two = Trip.parse({
    ...trip,
    dayCount: 2,
    menu: [
      { ...DINNER, opened: [{ code: 'L2', pouches: 1 }] },
      { ...BREAKFAST, opened: [] },
    ],
  });
  const both: Table = { trip: two, stock: STOCK, plan: planTrip(two, STOCK, defaultSettings()) };

  it('moves the last pouch there is, and leaves nothing behind', () => {
    const outcome = moveByHand(both, DINNER, 'L2', BREAKFAST);
    if (!('trip' in outcome)) throw new Error(outcome.refused);
    expect(listedMeal(outcome.trip, DINNER)?.opened).toEqual([]);
    expect(listedMeal(outcome.trip, BREAKFAST)?.opened).toEqual([{ code: 'L2', pouches: 1 }]);
    expect(outcome.said).toBe('1 × L2 moved from day 1, dinner to day 2, breakfast.');
  });

  it('moves all pouches of all lots of a dish, also the last that are free', () => {
    const dish = Trip.parse({
      ...two,
      menu: [
        {
          ...DINNER,
          opened: [
            { code: 'L1', pouches: 3 },
            { code: 'L2', pouches: 1 },
          ],
        },
      ],
    });
    const table = { trip: dish, stock: STOCK, plan: planTrip(dish, STOCK, defaultSettings()) };
    const outcome = moveDishByHand(table, DINNER, { recipe: 'Stew', codes: ['L1', 'L2'] }, BREAKFAST);
    if (!('trip' in outcome)) throw new Error(outcome.refused);
    expect(listedMeal(outcome.trip, DINNER)?.opened).toEqual([]);
    expect(listedMeal(outcome.trip, BREAKFAST)?.opened).toMatchObject([
      { code: 'L1', pouches: 3 },
      { code: 'L2', pouches: 1 },
    ]);
    expect(outcome.said).toBe('Stew moved from day 1, dinner to day 2, breakfast.');
    const moved = { ...table, trip: outcome.trip };
    expect(moveDishByHand(moved, DINNER, { recipe: 'Stew', codes: ['L1'] }, BREAKFAST)).toMatchObject({
      refused: expect.stringContaining('not on this meal'),
    });
  });

  it('refuses what is not there, is there already, or nobody may eat', () => {
    expect(moveByHand(both, BREAKFAST, 'L2', DINNER)).toMatchObject({
      refused: expect.stringContaining('not on this meal'),
    });
    expect(moveByHand(both, DINNER, 'L2', DINNER)).toMatchObject({
      refused: expect.stringContaining('already'),
    });
    const milk = Trip.parse({ ...two, menu: [{ ...DINNER, opened: [{ code: 'MILK', pouches: 1 }] }] });
    const table = { trip: milk, stock: STOCK, plan: planTrip(milk, STOCK, defaultSettings()) };
    expect(moveByHand(table, DINNER, 'MILK', BREAKFAST)).toMatchObject({
      refused: expect.stringContaining('unsuitable for everyone'),
    });
  });
});
