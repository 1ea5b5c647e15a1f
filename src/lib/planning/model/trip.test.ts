import { describe, expect, it } from 'vitest';
import { problemsOf } from './problems.ts';
import { Trip } from './trip.ts';

const good = { name: 'ridge walk', startDate: '2027-07-05', dayCount: 3, party: [{ name: 'Ada' }] };
function problems(changes: object): string[] {
  const result = Trip.safeParse({ ...good, ...changes }, { reportInput: true });
  return result.success ? [] : problemsOf(result.error).map(({ field, message }) => `${field}: ${message}`);
}

describe('a trip that cannot be', () => {
  it('is told field by field', () => {
    expect(problems({})).toEqual([]);
    expect(problems({ dayCount: 0 })).toEqual(['dayCount: must be at least 1 day']);
    expect(problems({ dayCount: 400 })[0]).toMatch(/^dayCount: must be at most 90 days/);
    expect(problems({ party: [] })).toEqual(['party: must have at least one eater']);
    expect(problems({ energyKcal: -100 })).toEqual(['energyKcal: must be at least 500 kcal a day']);
    expect(problems({ party: [{ name: 'Ada', energyKcal: -1 }] })).toEqual([
      'party[0].energyKcal: must be at least 500 kcal a day',
    ]);
    expect(problems({ startDate: '2027-02-30' })).toEqual(['startDate: must be a date such as 2026-07-04']);
    expect(problems({ party: [{ name: 'Ada', allergens: ['gluttony'] }] })[0]).toMatch(
      /^party\[0\].allergens\[0\]: must be one of: milk, .*; found "gluttony"$/,
    );
    expect(problems({ dayz: 3 })[0]).toBe(
      '(input): has the unknown field "dayz"; check the spelling or remove it',
    );
    expect(problems({ party: [{ name: 'Ada' }, { name: 'Ada' }] })[0]).toMatch(
      /^party\[1\].name: "Ada" is in the party twice/,
    );
    expect(problems({ days: [{}, {}, {}, {}] })[0]).toMatch(/^days: holds 4 days/);
    expect(problems({ dayCount: 1, firstMeal: 'dinner', lastMeal: 'breakfast' })[0]).toMatch(
      /^lastMeal: is breakfast, before the first meal/,
    );
    expect(problems({ menu: [{ day: 9, meal: 'dinner', opened: [] }] })[0]).toMatch(
      /^menu\[0\].day: is day 9/,
    );
    expect(
      problems({
        menu: [
          {
            day: 1,
            meal: 'dinner',
            opened: [
              { code: 'A', pouches: 1 },
              { code: 'A', pouches: 2 },
            ],
          },
        ],
      })[0],
    ).toMatch(/lists "A" twice at one meal/);
  });

  it('is told where its days do not lie along the route, or a leg is too steep to walk', () => {
    const route = {
      name: 'ridge',
      profile: [
        { distanceM: 0, altitudeM: 0 },
        { distanceM: 9000, altitudeM: 100 },
      ],
      waypoints: [
        { name: 'hut', distanceM: 3000 },
        { name: 'lake', distanceM: 6000 },
      ],
    };
    expect(problems({ route, days: [{ endsAt: 'hut' }, { endsAt: 'lake' }] })).toEqual([]);
    expect(problems({ route, days: [{ endsAt: 'inn' }] })[0]).toMatch(
      /^days\[0\].endsAt: "inn" is no waypoint/,
    );
    expect(problems({ route, days: [{ endsAt: 'lake' }, { endsAt: 'hut' }] })[0]).toMatch(
      /^days\[1\].endsAt: "hut" lies before/,
    );
    expect(problems({ route, days: [{}, {}, { endsAt: 'lake' }] })[0]).toMatch(
      /^days\[2\].endsAt: "lake" is not the end/,
    );
    expect(problems({ days: [{ distanceM: 1000, climbM: 1200 }] })[0]).toMatch(
      /^days\[0\].climbM: and descent together are steeper/,
    );
    expect(problems({ days: [{ climbM: 1200 }] })[0]).toMatch(/^days\[0\].distanceM: is missing/);
  });

  it('names a missing field as missing', () => {
    const result = Trip.safeParse({ dayCount: 3, party: [{}] }, { reportInput: true });
    const messages = result.success ? [] : problemsOf(result.error);
    expect(messages.map(({ field }) => field)).toEqual(['name', 'startDate', 'party[0].name']);
    expect(messages.every(({ message }) => message.includes('is missing'))).toBe(true);
  });
});
