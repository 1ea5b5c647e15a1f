import { expect, it } from 'vitest';
import { defaultSettings } from '$lib/planning/model/settings.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { lostMeals } from './lost-meals.ts';

const TRIP = Trip.parse({
  name: 'T',
  startDate: '2026-07-04',
  dayCount: 3,
  party: [{ name: 'A' }],
  menu: [
    { day: 1, meal: 'lunch', opened: [] },
    { day: 2, meal: 'dinner', opened: [] },
    { day: 3, meal: 'breakfast', opened: [] },
  ],
});

it('a trip that stays as it is loses no meal', () => {
  expect(lostMeals(TRIP, TRIP.menu, defaultSettings())).toEqual([]);
});

it('fewer days and a later first meal lose the meals outside', () => {
  expect(
    lostMeals(
      { ...TRIP, dayCount: 2, firstMeal: 'dinner', lastMeal: 'dinner' },
      TRIP.menu,
      defaultSettings(),
    ),
  ).toEqual([TRIP.menu[0], TRIP.menu[2]]);
});
