import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { demandOf } from '../demand/day-demand.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import { defaultSettings, type Settings } from '../model/settings.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import type { TripInput } from '../model/trip.ts';
import { plannedLegs } from '../route/trip-legs.ts';
import { mealBurdens } from '../stove/meal-burdens.ts';
import { firstExpired } from './first-expired.ts';
import { planMenu } from './plan-menu.ts';

function planned(changes: Partial<TripInput>, stock: PouchLot[], settings: Settings = defaultSettings()) {
  const given = exampleTrip(changes);
  const trip = resolveTrip(given);
  const legs = plannedLegs(given, trip, []);
  const demand = demandOf(trip, legs, () => 0, settings);
  return planMenu(trip, demand, stock, mealBurdens(trip, legs, demand, settings), settings, firstExpired);
}
const openedAt = (result: ReturnType<typeof planned>, day: number, meal: string) =>
  result.menu.meals
    .find((entry) => entry.day === day && entry.meal === meal)
    ?.opened.map(({ code, pouches }) => `${pouches} ${code}`) ?? [];
const oneDinner: Partial<TripInput> = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' };

describe('first expired, first out', () => {
  it('opens the lot that expires first', () => {
    const result = planned(oneDinner, [
      exampleLot({ code: 'late', bestBefore: '2029-01-01' }),
      exampleLot({ code: 'soon', recipe: 'dal', bestBefore: '2027-09-01' }),
    ]);
    expect(openedAt(result, 1, 'dinner')).toEqual(['1 soon']);
  });

  it('opens nothing on the day after its best-before, but on the very day', () => {
    expect(openedAt(planned(oneDinner, [exampleLot({ bestBefore: '2027-07-04' })]), 1, 'dinner')).toEqual([]);
    expect(openedAt(planned(oneDinner, [exampleLot({ bestBefore: '2027-07-05' })]), 1, 'dinner')).toEqual([
      '1 D1',
    ]);
  });

  it('lets a recipe of the day before wait while another one fits, and takes it when nothing else is left', () => {
    const dinners: Partial<TripInput> = { firstMeal: 'dinner' };
    const stew = exampleLot({ bestBefore: '2027-09-01' });
    const two = planned(dinners, [stew, exampleLot({ code: 'dal', recipe: 'dal' })]);
    expect([openedAt(two, 1, 'dinner'), openedAt(two, 2, 'dinner')]).toEqual([['1 D1'], ['2 dal']]);
    const one = planned(dinners, [stew]);
    expect([openedAt(one, 1, 'dinner'), openedAt(one, 2, 'dinner')]).toEqual([['1 D1'], ['2 D1']]);
  });

  it('keeps for the vegetarian what the vegetarian has no substitute for', () => {
    const dinners: Partial<TripInput> = {
      firstMeal: 'dinner',
      party: [{ name: 'Ada' }, { name: 'Bo', diets: ['vegetarian'] }],
    };
    const dal = exampleLot({
      code: 'dal',
      recipe: 'dal',
      diets: ['vegan'],
      servingsPerPouch: 1,
      energyKcal: 700,
      pouches: 2,
      bestBefore: '2027-09-01',
    });
    const result = planned(dinners, [
      dal,
      exampleLot({ code: 'beef', recipe: 'beef pan', servingsPerPouch: 1, energyKcal: 700, pouches: 2 }),
    ]);
    for (const day of [1, 2]) expect(openedAt(result, day, 'dinner').sort()).toEqual(['1 beef', '1 dal']);
    expect(
      result.menu.meals
        .flatMap((meal) => meal.portions)
        .filter((portion) => portion.eater === 'Bo')
        .map(({ code }) => code),
    ).toEqual(['dal', 'dal']);
  });

  it('does not leave a lone eater without a meal because every pouch is too big', () => {
    const result = planned({ ...oneDinner, party: [{ name: 'Ada' }] }, [exampleLot({ servingsPerPouch: 4 })]);
    expect(openedAt(result, 1, 'dinner')).toEqual(['1 D1']);
    expect(result.menu.meals[0]?.leftOverServings).toBeGreaterThan(0);
  });
});

describe('meals that are listed', () => {
  const menu: TripInput['menu'] = [
    { day: 1, meal: 'dinner', locked: true, opened: [{ code: 'D1', pouches: 2 }] },
  ];

  it('stand, with their pouches out of reach of the planner', () => {
    const result = planned({ firstMeal: 'dinner', menu }, [exampleLot({ pouches: 2 })]);
    expect(openedAt(result, 1, 'dinner')).toEqual(['2 D1']);
    expect(openedAt(result, 2, 'dinner')).toEqual([]);
    expect(result.menu.meals[0]?.locked).toBe(true);
  });

  it('say what of them is gone, expired or too few, and serve the rest', () => {
    const gone = planned({ ...oneDinner, menu }, []);
    expect(gone.notices.find((notice) => notice.lot === 'D1')?.code).toBe('lot-gone');
    const old = planned({ ...oneDinner, menu }, [exampleLot({ bestBefore: '2027-07-01' })]);
    expect(old.notices.find((notice) => notice.lot === 'D1')).toMatchObject({
      code: 'lot-past-date',
      params: { bestBefore: '2027-07-01' },
    });
    expect(openedAt(old, 1, 'dinner')).toEqual([]);
    const few = planned({ ...oneDinner, menu }, [exampleLot({ pouches: 1 })]);
    expect(few.notices.find((notice) => notice.lot === 'D1')).toMatchObject({
      code: 'too-few-pouches',
      params: { wanted: 2, free: 1 },
    });
    expect(openedAt(few, 1, 'dinner')).toEqual(['1 D1']);
  });

  it('say so where they lie outside the trip', () => {
    const result = planned(
      { ...oneDinner, menu: [{ day: 1, meal: 'breakfast', opened: [{ code: 'D1', pouches: 1 }] }] },
      [exampleLot({ pouches: 1 })],
    );
    expect(result.notices.some(({ code }) => code === 'meal-outside-trip')).toBe(true);
    expect(openedAt(result, 1, 'dinner')).toEqual(['1 D1']);
  });

  it('serve nobody what they exclude, even by hand', () => {
    const result = planned(
      { ...oneDinner, party: [{ name: 'Ada', allergens: ['milk'] }, { name: 'Bo' }], menu },
      [exampleLot({ allergens: ['milk'] })],
    );
    expect(result.menu.meals[0]?.portions.map((portion) => portion.eater)).toEqual(['Bo']);
  });
});

describe('what is said', () => {
  it('names the allergen wall where it leaves someone short', () => {
    const result = planned({ ...oneDinner, party: [{ name: 'Ada', allergens: ['nuts'] }, { name: 'Bo' }] }, [
      exampleLot({ allergens: ['nuts'] }),
    ]);
    const notice = result.notices.find((entry) => entry.eater === 'Ada');
    expect(notice).toMatchObject({ code: 'hungry-by-exclusions', params: { allergens: ['nuts'], lots: 1 } });
    expect(result.notices.find((entry) => entry.eater === 'Bo')).toBeUndefined();
  });

  it('names lots with unstated allergens where someone avoids one', () => {
    const result = planned({ ...oneDinner, party: [{ name: 'Ada', allergens: ['nuts'] }] }, [
      exampleLot({ allergens: undefined }),
    ]);
    expect(result.notices.find(({ code }) => code === 'allergens-undeclared')?.params).toEqual({
      lots: ['D1'],
      avoiders: ['Ada'],
    });
  });
});
