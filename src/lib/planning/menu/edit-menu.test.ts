import { describe, expect, it } from 'vitest';
import { exampleLot, exampleMeal, exampleMenu, ONE_GROUP } from '../../../../tests/support/examples.ts';
import { Trip, type TripInput } from '../model/trip.ts';
import {
  addPouch,
  dropMeals,
  eatElsewhere,
  forgetUnlocked,
  keepMenu,
  listedMeal,
  lockDish,
  lockMeal,
  lockPlate,
  pouchesListed,
  removePouch,
  setPortion,
  setPouches,
  swapPouch,
  type MealPlace,
} from './edit-menu.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner', group: ONE_GROUP };
const LUNCH: MealPlace = { day: 2, meal: 'lunch', group: ONE_GROUP };

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

const menuOf = exampleMenu;
const served = (at: MealPlace, code: string, pouches: number) =>
  exampleMeal([{ code, pouches }], {
    ...at,
    portions: [
      {
        eater: 'A',
        code,
        role: 'main',
        style: 'shared pot',
        servings: 1.5,
        energyKcal: 900,
        waterMl: 525,
      },
    ],
  });

describe('keepMenu', () => {
  it('lists what was planned with its portions, and leaves listed meals as they are', () => {
    const SNACK: MealPlace = { day: 2, meal: 'snack', group: ONE_GROUP };
    const kept = keepMenu(withDinner, menuOf(served(DINNER, 'X', 9), served(SNACK, 'L4', 3)));
    expect(kept.menu.map(({ day, meal }) => [day, meal])).toEqual([
      [1, 'dinner'],
      [2, 'snack'],
      [2, 'lunch'],
    ]);
    expect(listedMeal(kept, DINNER)).toEqual(listedMeal(withDinner, DINNER));
    expect(listedMeal(kept, SNACK)).toEqual({
      ...SNACK,
      locked: false,
      byHand: false,
      opened: [{ code: 'L4', pouches: 3, role: 'main', style: 'shared pot', reason: { code: 'oldest' } }],
      portions: [{ eater: 'A', code: 'L4', servings: 1.5, style: 'shared pot' }],
    });
  });

  it('makes a trip that is valid and does not change when kept again', () => {
    const menu = menuOf(served(DINNER, 'X', 9), served(LUNCH, 'Y', 1));
    const kept = keepMenu(trip(), menu);
    expect(Trip.safeParse(kept).success).toBe(true);
    expect(keepMenu(kept, menu)).toEqual(kept);
  });

  it('gives a meal of before, which has no group, to the only one', () => {
    const { group: _, ...at } = DINNER;
    const before = trip([{ ...at, opened: [{ code: 'L1', pouches: 2, why: 'first to expire' }] }]);
    expect(keepMenu(before, menuOf(served(DINNER, 'X', 9))).menu).toEqual([
      { ...before.menu[0], group: ONE_GROUP },
    ]);
  });
});

describe('portions', () => {
  const planned = keepMenu(trip(), menuOf(served(DINNER, 'L1', 2)));
  const portionsOf = (changed: Trip) =>
    listedMeal(changed, DINNER)?.portions?.map(({ eater, code, servings }) => [eater, code, servings]);

  it('are changed by hand, added, and taken off', () => {
    const less = setPortion(planned, DINNER, { eater: 'A', code: 'L1' }, 1);
    expect(portionsOf(less)).toEqual([['A', 'L1', 1]]);
    expect(listedMeal(less, DINNER)?.byHand).toBe(true);
    const two = setPortion(less, DINNER, { eater: 'B', code: 'L1', style: 'shared pot' }, 0.5);
    expect(portionsOf(two)).toEqual([
      ['A', 'L1', 1],
      ['B', 'L1', 0.5],
    ]);
    expect(portionsOf(setPortion(two, DINNER, { eater: 'A', code: 'L1' }, 0))).toEqual([['B', 'L1', 0.5]]);
  });

  it('of a lot whose pouches change are shared out anew, and the others stay', () => {
    const both = setPouches(setPortion(planned, DINNER, { eater: 'B', code: 'L2' }, 1), DINNER, 'L2', 1);
    const own = {
      ...both,
      menu: both.menu.map((meal) => ({
        ...meal,
        opened: meal.opened.map((lot) => ({ ...lot, style: 'own pouch' as const })),
      })),
    };
    expect(portionsOf(setPouches(own, DINNER, 'L1', 1))).toEqual([]);
    expect(portionsOf(setPouches(planned, DINNER, 'L1', 1))).toEqual([]);
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

describe('locks', () => {
  const STOCK = ['L1', 'L2', 'L3'].map((code) => exampleLot({ code, servingsPerPouch: 1 }));

  it('planning again keeps the locked meals only, changed by hand or not', () => {
    const locked = lockMeal(addPouch(withDinner, LUNCH, 'L4'), DINNER, true);
    expect(forgetUnlocked(locked, STOCK).menu).toEqual([listedMeal(locked, DINNER)]);
    expect(forgetUnlocked(lockMeal(locked, DINNER, false), STOCK).menu).toEqual([]);
  });

  it('a lock is no change by hand', () => {
    expect(listedMeal(lockMeal(withDinner, DINNER, true), DINNER)).toMatchObject({
      locked: true,
      byHand: false,
    });
  });

  it('of a dish keeps it with its portions, and leaves the rest of the meal to the planner', () => {
    const planned = keepMenu(trip(), menuOf(served(DINNER, 'L1', 2)));
    const two = addPouch(planned, DINNER, 'L2');
    const withPortions = setPortion(
      setPortion(two, DINNER, { eater: 'A', code: 'L1' }, 1),
      DINNER,
      { eater: 'B', code: 'L2' },
      1,
    );
    const kept = forgetUnlocked(lockDish(withPortions, DINNER, ['L2'], true), STOCK).menu;
    expect(kept).toMatchObject([
      {
        toFill: true,
        opened: [{ code: 'L2', pouches: 1, locked: true }],
        portions: [{ eater: 'B', code: 'L2', servings: 1 }],
      },
    ]);
    expect(
      forgetUnlocked(lockDish(lockDish(withPortions, DINNER, ['L2'], true), DINNER, ['L2'], false), STOCK)
        .menu,
    ).toEqual([]);
  });

  it('of a plate keeps the pouches of its eater; of a pot, the whole pot', () => {
    const own = {
      ...exampleMeal([{ code: 'L1', pouches: 3, style: 'own pouch' }], { eaters: ['A', 'B'] }),
      portions: [
        {
          eater: 'A',
          code: 'L1',
          role: 'main',
          style: 'own pouch',
          servings: 0.5,
          energyKcal: 1,
          waterMl: 1,
        },
        { eater: 'B', code: 'L1', role: 'main', style: 'own pouch', servings: 2, energyKcal: 1, waterMl: 1 },
      ] as const,
    };
    const planned = keepMenu(trip(), menuOf({ ...own, portions: [...own.portions] }));
    const plates = lockPlate(planned, DINNER, 'A', true);
    expect(forgetUnlocked(plates, STOCK).menu).toMatchObject([
      { toFill: true, opened: [{ code: 'L1', pouches: 1 }], portions: [{ eater: 'A', servings: 0.5 }] },
    ]);
    expect(forgetUnlocked(lockPlate(plates, DINNER, 'A', false), STOCK).menu).toEqual([]);
    const pot = keepMenu(trip(), menuOf(served(DINNER, 'L1', 2)));
    expect(forgetUnlocked(lockPlate(pot, DINNER, 'A', true), STOCK).menu).toMatchObject([
      { toFill: true, opened: [{ code: 'L1', pouches: 2 }], portions: [{ eater: 'A' }] },
    ]);
  });

  it('outlive that the menu is kept again, while the rest of the meal comes from the planner', () => {
    const planned = keepMenu(trip(), menuOf(served(DINNER, 'L1', 2)));
    const open = forgetUnlocked(lockPlate(planned, DINNER, 'A', true), STOCK);
    const again = keepMenu(
      open,
      menuOf(exampleMeal([{ code: 'L1', pouches: 2 }, { code: 'L2' }], { ...DINNER, lockedPlates: ['A'] })),
    );
    expect(listedMeal(again, DINNER)).toMatchObject({
      lockedPlates: ['A'],
      opened: [{ code: 'L1' }, { code: 'L2' }],
    });
    expect(listedMeal(again, DINNER)).not.toHaveProperty('toFill');
  });
});

it('dropMeals drops those named and no others', () => {
  const [dinner, ...others] = withDinner.menu;
  expect(dropMeals(withDinner, others).menu).toEqual([dinner]);
});

describe('eatElsewhere', () => {
  const gone = eatElsewhere(withDinner, DINNER, true);

  it('frees the pouches of the meal, and of no other', () => {
    expect(gone.menu.map(({ day, meal }) => [day, meal])).toEqual([[2, 'lunch']]);
    expect(gone.mealRules).toEqual([{ days: [1], meals: ['dinner'], elsewhere: 'everyone' }]);
    expect(Trip.safeParse(gone).success).toBe(true);
  });

  it('is taken back by a line of its own, which stands once, after the lines that it overrides', () => {
    const back = eatElsewhere(eatElsewhere(gone, DINNER, false), DINNER, false);
    expect(back.mealRules).toEqual([{ days: [1], meals: ['dinner'], elsewhere: 'no one' }]);
    const hut: Trip = { ...withDinner, mealRules: [{ meals: ['dinner'], elsewhere: 'everyone' }] };
    expect(eatElsewhere(hut, DINNER, false).mealRules).toEqual([
      { meals: ['dinner'], elsewhere: 'everyone' },
      { days: [1], meals: ['dinner'], elsewhere: 'no one' },
    ]);
  });
});
