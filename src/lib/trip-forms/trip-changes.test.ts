import { expect, it } from 'vitest';
import { Trip } from '$lib/planning/model/trip.ts';
import { changesInWords } from './trip-changes.ts';

const TRIP = Trip.parse({
  name: 'Two days',
  startDate: '2026-07-04',
  dayCount: 2,
  party: [{ name: 'Ada' }, { name: 'Ben' }],
  menu: [
    { day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 2 }] },
    { day: 2, meal: 'breakfast', opened: [{ code: 'B1', pouches: 1 }] },
  ],
});
const changed = (other: Partial<Trip>) => changesInWords(TRIP, Trip.parse({ ...TRIP, ...other }), 'metric');

it('names the fields that differ as their form does', () => {
  expect(changed({ name: 'Three days', days: [{ walkingH: 7 }, {}] })).toBe('Name; Day 1, walking');
});

it('names the meals that differ, with those that came or went', () => {
  const [dinner, breakfast] = TRIP.menu;
  expect(changed({ menu: [{ ...dinner!, opened: [{ code: 'D1', pouches: 3 }] }] })).toBe(
    'day 1, dinner; day 2, breakfast',
  );
  expect(changed({ menu: [{ ...dinner!, locked: true }, breakfast!] })).toBe('day 1, dinner');
});

it('takes another reason for the same pouches for no change', () => {
  const menu = TRIP.menu.map((meal) => ({
    ...meal,
    opened: meal.opened.map((lot) => ({ ...lot, why: 'another reason' })),
  }));
  expect(changed({ menu: menu })).toBe('');
});

it('counts what is too much to name', () => {
  const party = TRIP.party.map((eater) => ({ ...eater, energyKcal: 2500, maxLoadG: 12_000 }));
  expect(changed({ party })).toBe('4 fields');
});

it('says that the route or the containers are others', () => {
  const started = [{ label: 'A', fuel: 'canister-gas', grossG: 300, tareG: 150 }];
  expect(changed({ stove: { ...TRIP.stove, started } as never })).toBe('part-full containers');
});

it('says nothing of the same trip', () => {
  expect(changed({})).toBe('');
});
