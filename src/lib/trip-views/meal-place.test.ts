import { describe, expect, it } from 'vitest';
import type { MealOption } from '$lib/planning/menu/meal-options.ts';
import { defaultSettings } from '$lib/planning/model/settings.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { planTrip } from '$lib/planning/plan-trip.ts';
import { narrowed, placeKey, readPlace } from './meal-place.ts';

const trip = Trip.parse({ name: 'T', startDate: '2026-07-04', dayCount: 2, party: [{ name: 'A' }] });
const plan = planTrip(trip, [], defaultSettings());

it('readPlace takes only meals that the trip has', () => {
  expect(readPlace('2-breakfast', plan)).toEqual({
    day: 2,
    meal: 'breakfast',
    group: '1',
    date: '2026-07-05',
  });
  for (const key of ['1-breakfast', '3-lunch', '2-brunch', 'two-lunch', '2-breakfast-1', '', undefined])
    expect(readPlace(key, plan)).toBeUndefined();
});

it('placeKey tells the meals of cook groups apart', () => {
  const party = ['A', 'B'].map((name) => ({ name }));
  const cookGroups = party.map(({ name }) => ({ name: `Tent ${name}`, eaters: [name] }));
  const { menu } = planTrip(Trip.parse({ ...trip, party, cookGroups }), [], defaultSettings());
  const keys = menu.meals.map((meal) => placeKey(meal, menu.groups));
  expect(new Set(keys).size).toBe(keys.length);
  for (const meal of menu.meals)
    expect(readPlace(placeKey(meal, menu.groups), { menu })).toMatchObject({
      day: meal.day,
      meal: meal.meal,
      group: meal.group,
    });
});

describe('narrowed', () => {
  const options = Array.from({ length: 200 }, (_, index): MealOption => ({
    code: `L${index}`,
    recipe: index === 180 ? 'Bean Chilli' : 'Stew',
    bestBefore: '2027-01-01',
    freePouches: 1,
    servingsPerPouch: 1,
    pouchEnergyKcal: 500,
    against: [],
  }));

  it('says how many are not listed', () => {
    expect(narrowed(options, '')).toMatchObject({ unlisted: 150 });
    expect(narrowed(options.slice(0, 3), '')).toEqual({ options: options.slice(0, 3), unlisted: 0 });
  });

  it('finds by code or recipe', () => {
    expect(narrowed(options, ' bean ').options.map(({ code }) => code)).toEqual(['L180']);
    expect(narrowed(options, 'l199').options).toHaveLength(1);
  });
});
