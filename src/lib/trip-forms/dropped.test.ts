import { expect, it } from 'vitest';
import { defaultSettings } from '$lib/planning/model/settings.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { dropped } from './dropped.ts';

const TRIP = Trip.parse({
  name: 'T',
  startDate: '2026-07-04',
  dayCount: 3,
  party: [{ name: 'A' }],
  menu: [
    { day: 1, meal: 'lunch', opened: [] },
    { day: 2, meal: 'dinner', opened: [{ code: 'L1', pouches: 1 }] },
    { day: 3, meal: 'breakfast', locked: true, byHand: true, opened: [{ code: 'L1', pouches: 2 }] },
  ],
});

it('a trip that stays as it is drops nothing', () => {
  expect(dropped({ trip: TRIP, droppedDays: [] }, TRIP.menu, defaultSettings())).toEqual({
    meals: [],
    words: [],
  });
});

it('fewer days and a later first meal drop the meals outside, and say what would be missed', () => {
  const trip = Trip.parse({ ...TRIP, menu: [], dayCount: 2, firstMeal: 'dinner', lastMeal: 'dinner' });
  expect(dropped({ trip, droppedDays: [3] }, TRIP.menu, defaultSettings())).toEqual({
    meals: [TRIP.menu[0], TRIP.menu[2]],
    words: ['day 3, breakfast (locked, chosen by hand): 2 pouches', 'day 3: its conditions'],
  });
});
