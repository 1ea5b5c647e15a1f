import { describe, expect, it } from 'vitest';
import { Trip, type TripInput } from '../model/trip.ts';
import type { MenuMeal, MenuPlan } from '../model/trip-plan.ts';
import {
  addPouch,
  dropMeals,
  forgetUnlocked,
  keepMenu,
  listedMeal,
  lockMeal,
  pouchesListed,
  removePouch,
  setPouches,
  swapPouch,
  type MealPlace,
} from './edit-menu.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner' };
const LUNCH: MealPlace = { day: 2, meal: 'lunch' };

const trip = (menu: TripInput['menu'] = []): Trip =>
  Trip.parse({
    name: 'Two days',
    startDate: '2026-07-04',
    dayCount: 2,
    party: [{ name: 'A' }],
    menu,
  });
const withDinner = trip([
  {
    ...DINNER,
    opened: [
      { code: 'L1', pouches: 2 },
      { code: 'L2', pouches: 1 },
    ],
  },
  { ...LUNCH, opened: [{ code: 'L3', pouches: 1 }] },
]);

const served = (at: MealPlace, code: string, pouches: number): MenuMeal => ({
  ...at,
  date: '2026-07-04',
  locked: false,
  byHand: false,
  opened: [
    {
      code,
      recipe: code,
      pouches,
      servings: 1,
      energyKcal: 1,
      waterMl: 1,
      waterKind: 'boiling',
      why: 'the rule',
    },
  ],
  portions: [],
  targetKcal: 0,
  eatenKcal: 0,
  leftOverServings: 0,
  leftOverKcal: 0,
});
const menuOf = (...meals: MenuMeal[]): MenuPlan => ({ planner: 'test', meals, energy: [] });

describe('keepMenu', () => {
  it('lists what was planned and leaves listed meals as they are', () => {
    const kept = keepMenu(
      withDinner,
      menuOf(served(DINNER, 'X', 9), served({ day: 2, meal: 'snack' }, 'L4', 3)),
    );
    expect(kept.menu).toEqual([
      ...withDinner.menu,
      {
        day: 2,
        meal: 'snack',
        locked: false,
        byHand: false,
        opened: [{ code: 'L4', pouches: 3, why: 'the rule' }],
      },
    ]);
  });

  it('makes a trip that is valid and does not change when kept again', () => {
    const menu = menuOf(served(DINNER, 'X', 9), served(LUNCH, 'Y', 1));
    const kept = keepMenu(trip(), menu);
    expect(Trip.safeParse(kept).success).toBe(true);
    expect(keepMenu(kept, menu)).toEqual(kept);
  });
});

describe('swapPouch', () => {
  it('puts the other lot in the same place and marks the meal as changed by hand', () => {
    expect(listedMeal(swapPouch(withDinner, DINNER, 'L1', 'L9', 2), DINNER)).toEqual({
      ...DINNER,
      locked: false,
      byHand: true,
      opened: [
        { code: 'L9', pouches: 2 },
        { code: 'L2', pouches: 1 },
      ],
    });
  });

  it('adds up when the other lot is at the meal already', () => {
    expect(listedMeal(swapPouch(withDinner, DINNER, 'L1', 'L2', 2), DINNER)?.opened).toEqual([
      { code: 'L2', pouches: 3 },
    ]);
  });

  it('of a lot for itself sets its pouches', () => {
    expect(pouchesListed(swapPouch(withDinner, DINNER, 'L1', 'L1', 2), DINNER, 'L1')).toBe(2);
  });

  it('leaves the other meals alone and the trip it was given unchanged', () => {
    const before = structuredClone(withDinner);
    const after = swapPouch(withDinner, DINNER, 'L1', 'L9', 2);
    expect(listedMeal(after, LUNCH)).toBe(listedMeal(withDinner, LUNCH));
    expect(withDinner).toEqual(before);
  });
});

describe('addPouch, setPouches, removePouch', () => {
  it('adds a new lot at the end and more of one that is there', () => {
    expect(listedMeal(addPouch(withDinner, DINNER, 'L9'), DINNER)?.opened.at(-1)).toEqual({
      code: 'L9',
      pouches: 1,
    });
    expect(pouchesListed(addPouch(withDinner, DINNER, 'L1', 2), DINNER, 'L1')).toBe(4);
  });

  it('adds to a meal that was not listed yet', () => {
    expect(listedMeal(addPouch(trip(), DINNER, 'L9', 2), DINNER)).toEqual({
      ...DINNER,
      locked: false,
      byHand: true,
      opened: [{ code: 'L9', pouches: 2 }],
    });
  });

  it('takes a lot off at none', () => {
    expect(setPouches(withDinner, DINNER, 'L1', 0)).toEqual(removePouch(withDinner, DINNER, 'L1'));
    expect(pouchesListed(setPouches(withDinner, DINNER, 'L1', 5), DINNER, 'L1')).toBe(5);
  });

  it('keeps an emptied meal listed, so that it stays empty', () => {
    const emptied = removePouch(withDinner, LUNCH, 'L3');
    expect(listedMeal(emptied, LUNCH)).toMatchObject({ byHand: true, opened: [] });
  });
});

describe('lockMeal and forgetUnlocked', () => {
  it('planning again keeps the locked meals only, changed by hand or not', () => {
    const locked = lockMeal(addPouch(withDinner, LUNCH, 'L4'), DINNER, true);
    expect(forgetUnlocked(locked).menu).toEqual([listedMeal(locked, DINNER)]);
    expect(forgetUnlocked(lockMeal(locked, DINNER, false)).menu).toEqual([]);
  });

  it('a lock is no change by hand', () => {
    expect(listedMeal(lockMeal(withDinner, DINNER, true), DINNER)).toMatchObject({
      locked: true,
      byHand: false,
    });
  });
});

it('dropMeals drops those named and no others', () => {
  expect(dropMeals(withDinner, [LUNCH, { day: 1, meal: 'snack' }]).menu).toEqual([
    listedMeal(withDinner, DINNER),
  ]);
});
