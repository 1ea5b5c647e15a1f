import { expect, test } from 'vitest';
import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { differences } from '$lib/forms/differences.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { daysInWords, readDays } from './day-list.ts';
import { ruleInWords } from './meal-fields.ts';
import { readTrip, TRIP_WORDS, tripFields } from './trip-fields.ts';

const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 4,
  party: [{ name: 'Ada', tastes: [{ food: 'mushroom', taste: 'never' }] }, { name: 'Ben' }, { name: 'Cas' }],
  cookGroups: [
    { name: 'Tent', eaters: ['Ada', 'Ben'], potMl: 900 },
    { name: 'Bivy', eaters: ['Cas'] },
  ],
  mealRules: [{ days: [3], meals: ['dinner'], elsewhere: ['Ben'] }],
});

function read(change: Entered) {
  const form = new FormData();
  for (const [name, values] of Object.entries({ ...tripFields(TRIP, 'metric'), ...change }))
    for (const value of values) form.append(name, value);
  const reader = new FormReader(form, 'metric');
  return { trip: readTrip(reader, TRIP)?.trip, problems: reader.problems };
}

test.each([
  ['2', [2]],
  ['2, 4-6', [2, 4, 5, 6]],
  ['4 – 6 2;2', [2, 4, 5, 6]],
  ['Rest days', 'rest days'],
])('days as they are typed: %s', (typed, days) => {
  expect(readDays(typed)).toEqual(days);
});

test.each(['0', '6-4', 'monday', '3.5', '91', '2-'])('%s is no list of days', (typed) => {
  expect(readDays(typed)).toEqual({ problem: expect.stringContaining('is not a day of the trip') });
});

test('days are written as they are typed', () => {
  expect(daysInWords([6, 2, 4, 5])).toBe('2, 4-6');
  expect(daysInWords(undefined)).toBe('');
});

test('tastes are one per line, whatever commas a dish has', () => {
  expect(
    read({ 'party[1].tastes.gladly': ['Rice, peas\r\n\r\n  lentil dal '] }).trip?.party[1]?.tastes,
  ).toEqual([
    { food: 'Rice, peas', taste: 'gladly' },
    { food: 'lentil dal', taste: 'gladly' },
  ]);
});

test('a cook group keeps its pot when somebody joins it, and one that nobody is in goes', () => {
  expect(read({ 'party[2].cookGroup': ['Tent'] }).trip?.cookGroups).toEqual([
    { name: 'Tent', eaters: ['Ada', 'Ben', 'Cas'], potMl: 900 },
  ]);
});

test('where no one has a cook group, all cook together', () => {
  const none = { 'party[0].cookGroup': [''], 'party[1].cookGroup': [''], 'party[2].cookGroup': [''] };
  expect(read(none).trip?.cookGroups).toBeUndefined();
});

test.each<[string, Entered, string, string]>([
  ['an eater without a group', { 'party[1].cookGroup': [''] }, 'party[1].cookGroup', 'name a cook group'],
  [
    'a taste too long',
    { 'party[1].tastes.rather not': ['x'.repeat(121)] },
    'party[1].tastes.rather not',
    '120',
  ],
  ['a group name too long', { 'party[0].cookGroup': ['x'.repeat(121)] }, 'party[0].cookGroup', '120'],
  ['somebody who is gone', { 'mealRules[0].elsewhere': ['Ida'] }, 'mealRules[0].elsewhere', '"Ida" is not'],
  [
    'a line that says nothing',
    { 'mealRules[0].elsewhere': [] },
    'mealRules[0].stop',
    'say what is different',
  ],
  ['no days', { 'mealRules[0].days': ['soon'] }, 'mealRules[0].days', 'is not a day'],
  ['half a meal', { reserveMeals: ['1.5'] }, 'reserveMeals', 'whole number'],
])('%s is refused at its field', (_, change, field, message) => {
  const { trip, problems } = read(change);
  expect(trip).toBeUndefined();
  expect(problems).toContainEqual({ field, message: expect.stringContaining(message) });
});

test('a problem is said at its line, though an earlier one is removed', () => {
  const { problems } = read({
    'mealRules[0].remove': ['on'],
    'mealRules[1].days': ['2'],
    'mealRules[1].stop': ['in passing'],
  });
  expect(problems).toEqual([{ field: 'mealRules[1].stop', message: expect.any(String) }]);
});

test('a rule is said in a line', () => {
  expect(ruleInWords({ days: [3], meals: ['dinner'], elsewhere: 'everyone' })).toBe(
    'day 3, dinner: everyone eats elsewhere',
  );
  expect(ruleInWords({ days: 'rest days', meals: ['breakfast'], dish: 'Pancakes' })).toBe(
    'rest days, breakfast: Pancakes',
  );
  expect(ruleInWords({ stop: 'no stove' })).toBe('every day: without a stove');
});

test('what somebody else changed is said in words', () => {
  const theirs = tripFields({ ...TRIP, servingStyle: 'own pouch' }, 'metric');
  const mine = {
    ...tripFields(TRIP, 'metric'),
    'party[0].portion': ['child'],
    'mealRules[0].stop': ['no stop'],
  };
  expect(differences(mine, theirs, TRIP_WORDS)).toEqual([
    { label: 'Serving style', mine: '–', theirs: 'own pouch' },
    { label: 'Other meals, line 1, stop', mine: 'without a stop', theirs: '–' },
    { label: 'Person 1, portion from a pot', mine: 'child', theirs: '–' },
  ]);
});
