import { describe, expect, it } from 'vitest';
import { exampleLot, ONE_GROUP } from '../../../../tests/support/examples.ts';
import { defaultSettings } from '../model/settings.ts';
import { Trip } from '../model/trip.ts';
import { planTrip } from '../plan-trip.ts';
import type { Outcome, Table } from './by-hand.ts';
import { keepMenu, type MealPlace } from './edit-menu.ts';
import {
  lockDishByHand,
  lockPlateByHand,
  portionsByHand,
  portionStep,
  styleByHand,
  tastesByHand,
} from './plates-by-hand.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner', group: ONE_GROUP };
const STOCK = [
  exampleLot({ code: 'POT', recipe: 'Stew', servingsPerPouch: 4, pouches: 2, allergens: [] }),
  exampleLot({
    code: 'OWN',
    recipe: 'Dal',
    servingsPerPouch: 1,
    pouches: 6,
    bestBefore: '2029-01-01',
    allergens: ['milk'],
  }),
];
const TRIP = Trip.parse({
  name: 'T',
  startDate: '2026-07-04',
  dayCount: 1,
  firstMeal: 'dinner',
  lastMeal: 'dinner',
  servingStyle: 'shared pot',
  energyKcal: 2200,
  party: [{ name: 'Ada' }, { name: 'Ben', allergens: ['milk'] }, { name: 'Cas' }],
});

const tableOf = (trip: Trip): Table => {
  const plan = planTrip(trip, STOCK, defaultSettings());
  return { trip: keepMenu(trip, plan.menu), plan, stock: STOCK };
};
const done = (outcome: Outcome) => {
  if ('refused' in outcome) throw new Error(outcome.refused);
  return { ...outcome, table: tableOf(outcome.trip) };
};
const dinnerOf = ({ plan }: Table) => plan.menu.meals.find(({ meal }) => meal === 'dinner');
const eaten = (table: Table) =>
  Object.fromEntries(dinnerOf(table)?.portions.map(({ eater, servings }) => [eater, servings]) ?? []);

const POT = { code: 'POT', style: 'shared pot' } as const;

describe('portions', () => {
  const table = tableOf(TRIP);

  it('begin as the plan deals them', () => {
    expect(dinnerOf(table)?.opened.map(({ code, style }) => [code, style])).toEqual([['POT', 'shared pot']]);
  });

  it('one gets more, another none, the rest is as it was, and everything follows', () => {
    const before = eaten(table);
    const { table: after, said } = done(
      portionsByHand(
        table,
        DINNER,
        POT,
        new Map([
          ['Ada', 2],
          ['Ben', 0],
          ['Cas', before['Cas'] ?? 0],
        ]),
      ),
    );
    expect(eaten(after)).toEqual({ Ada: 2, Cas: before['Cas'] });
    expect(dinnerOf(after)?.byHand).toBe(true);
    expect(said).toMatch(/servings of Stew are dealt out/);
    const served = Object.values(eaten(after)).reduce((sum, servings) => sum + servings, 0);
    expect(dinnerOf(after)?.leftOverServings).toBeCloseTo(4 - served, 9);
  });

  it('that come to more than the pouches hold are said at once and in the plan', () => {
    const { said, table: after } = done(
      portionsByHand(
        table,
        DINNER,
        POT,
        new Map([
          ['Ada', 3],
          ['Ben', 2],
        ]),
      ),
    );
    expect(said).toMatch(/come to .* servings, its pouches hold 4/);
    expect(after.plan.notices.map(({ code }) => code)).toContain('portions-beyond-pouches');
  });

  it('never put an allergen on a plate', () => {
    const own = tableOf({
      ...TRIP,
      menu: [{ ...table.trip.menu[0]!, opened: [{ code: 'OWN', pouches: 3 }], portions: [] }],
    });
    const refused = portionsByHand(own, DINNER, { code: 'OWN', style: 'own pouch' }, new Map([['Ben', 1]]));
    expect(refused).toEqual({ refused: expect.stringContaining('Dal is not for Ben') });
  });

  it('of a lot that is gone meanwhile are refused', () => {
    expect(portionsByHand(table, { ...DINNER, day: 2 }, POT, new Map())).toHaveProperty('refused');
  });
});

it('portions are dealt in quarters from a pot, in half pouches, and in pieces', () => {
  expect(portionStep({ servingsPerPouch: 4 }, 'main', 'shared pot')).toBe(0.25);
  expect(portionStep({ servingsPerPouch: 1.2 }, 'main', 'own pouch')).toBe(0.6);
  expect(portionStep({ servingsPerPouch: 2 }, 'main', 'own pouch')).toBe(0.5);
  expect(portionStep({ servingsPerPouch: 2, pieces: 8 }, 'extra', 'own pouch')).toBe(0.25);
  expect(portionStep({ servingsPerPouch: 4 }, 'drink', 'own pouch')).toBe(0.5);
});

it('a locked dish and a locked plate are marked so, and unlocked again', () => {
  const table = tableOf(TRIP);
  const dish = done(lockDishByHand(table, DINNER, POT, true));
  expect(dish.said).toBe('Day 1, dinner: Stew locked.');
  expect(dinnerOf(dish.table)?.opened.every(({ locked }) => locked)).toBe(true);
  const open = done(lockDishByHand(dish.table, DINNER, POT, false));
  expect(dinnerOf(open.table)?.opened.some(({ locked }) => locked)).toBe(false);
  const plate = done(lockPlateByHand(table, DINNER, 'Ada', true));
  expect(dinnerOf(plate.table)?.lockedPlates).toEqual(['Ada']);
  expect(dinnerOf(done(lockPlateByHand(plate.table, DINNER, 'Ada', false)).table)?.lockedPlates).toEqual([]);
  expect(lockPlateByHand(table, DINNER, 'Ida', true)).toHaveProperty('refused');
});

it('one meal is served in a style of its own, laid anew, and once only', () => {
  const table = tableOf(TRIP);
  const own = done(styleByHand(table, DINNER, 'own pouch'));
  expect(own.trip.mealRules).toEqual([{ days: [1], meals: ['dinner'], style: 'own pouch' }]);
  expect(dinnerOf(own.table)?.style).toBe('own pouch');
  const mixed = done(styleByHand(own.table, DINNER, 'mixed'));
  expect(mixed.trip.mealRules).toEqual([{ days: [1], meals: ['dinner'], style: 'mixed' }]);
  const again = done(styleByHand(mixed.table, DINNER, undefined));
  expect(again.trip.mealRules).toBeUndefined();
  expect(dinnerOf(again.table)?.style).toBe('shared pot');
});

it('what somebody says to a dish takes the place of what they said before', () => {
  const { trip } = done(
    tastesByHand(
      TRIP,
      'Stew',
      new Map([
        ['Ada', 'never'],
        ['Cas', 'gladly'],
      ]),
    ),
  );
  expect(trip.party.map(({ tastes }) => tastes)).toEqual([
    [{ food: 'Stew', taste: 'never' }],
    undefined,
    [{ food: 'Stew', taste: 'gladly' }],
  ]);
  const back = done(tastesByHand(trip, 'stew', new Map([['Ada', undefined]]))).trip;
  expect(back.party[0]?.tastes).toBeUndefined();
  expect(back.party[2]?.tastes).toHaveLength(1);
});
