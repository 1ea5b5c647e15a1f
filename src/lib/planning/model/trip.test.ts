import { describe, expect, it } from 'vitest';
import { faultsOf } from './faults.ts';
import { Trip } from './trip.ts';

const good = { name: 'ridge walk', startDate: '2027-07-05', dayCount: 3, party: [{ name: 'Ada' }] };
function faults(changes: object): string[] {
  const result = Trip.safeParse({ ...good, ...changes }, { reportInput: true });
  return result.success
    ? []
    : faultsOf(result.error).map(({ field, code, params }) => `${field}: ${code} ${JSON.stringify(params)}`);
}

describe('a trip that cannot be', () => {
  it('is told field by field', () => {
    expect(faults({})).toEqual([]);
    expect(faults({ dayCount: 0 })).toEqual(['dayCount: under {"least":1,"unit":"d"}']);
    expect(faults({ dayCount: 400 })[0]).toBe('dayCount: trip-too-long {"most":90}');
    expect(faults({ party: [] })).toEqual(['party: no-eater {}']);
    expect(faults({ energyKcal: -100 })).toEqual(['energyKcal: under {"least":500,"unit":"kcal/d"}']);
    expect(faults({ party: [{ name: 'Ada', energyKcal: -1 }] })).toEqual([
      'party[0].energyKcal: under {"least":500,"unit":"kcal/d"}',
    ]);
    expect(faults({ startDate: '2027-02-30' })).toEqual(['startDate: not-a-date {}']);
    expect(faults({ party: [{ name: 'Ada', allergens: ['gluttony'] }] })[0]).toMatch(
      /^party\[0\].allergens\[0\]: not-one-of \{"known":\["milk",.*\],"found":"gluttony"\}$/,
    );
    expect(faults({ dayz: 3 })[0]).toBe('(input): unknown-fields {"count":1,"fields":["dayz"]}');
    expect(faults({ party: [{ name: 'Ada' }, { name: 'Ada' }] })[0]).toMatch(/^party\[1\].name: eater-twice/);
    expect(faults({ days: [{}, {}, {}, {}] })[0]).toMatch(/^days: more-days-than-trip .*4/);
    expect(faults({ dayCount: 1, firstMeal: 'dinner', lastMeal: 'breakfast' })[0]).toMatch(
      /^lastMeal: last-meal-before-first {"last":"breakfast","first":"dinner"}/,
    );
    expect(faults({ menu: [{ day: 9, meal: 'dinner', opened: [] }] })[0]).toMatch(
      /^menu\[0\].day: day-after-trip .*9/,
    );
    expect(
      faults({
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
    ).toMatch(/lot-twice-at-meal {"lot":"A"}/);
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
    expect(faults({ route, days: [{ endsAt: 'hut' }, { endsAt: 'lake' }] })).toEqual([]);
    expect(faults({ route, days: [{ endsAt: 'inn' }] })[0]).toMatch(
      /^days\[0\].endsAt: no-such-waypoint {"place":"inn"}/,
    );
    expect(faults({ route, days: [{ endsAt: 'lake' }, { endsAt: 'hut' }] })[0]).toMatch(
      /^days\[1\].endsAt: day-ends-before-last/,
    );
    expect(faults({ route, days: [{}, {}, { endsAt: 'lake' }] })[0]).toMatch(
      /^days\[2\].endsAt: last-day-ends-early/,
    );
    expect(faults({ days: [{ distanceM: 1000, climbM: 1200 }] })[0]).toMatch(
      /^days\[0\].climbM: leg-too-steep/,
    );
    expect(faults({ days: [{ climbM: 1200 }] })[0]).toMatch(/^days\[0\].distanceM: leg-without-length/);
  });

  it('names a missing field as missing', () => {
    const result = Trip.safeParse({ dayCount: 3, party: [{}] }, { reportInput: true });
    const missing = result.success ? [] : faultsOf(result.error);
    expect(missing.map(({ field }) => field)).toEqual(['name', 'startDate', 'party[0].name']);
    expect(missing.every(({ code, missing }) => code === 'missing' && missing === true)).toBe(true);
  });
});
