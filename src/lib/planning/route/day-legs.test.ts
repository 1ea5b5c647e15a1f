import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gable, hills } from '../../../../tests/support/synthetic-track.ts';
import { Route, WALKING_TIME_METHODS } from '../model/route.ts';
import { dayLegs } from './day-legs.ts';
import { climbAndDescent } from './make-profile.ts';
import { RouteError } from './route-error.ts';
import type { Pace } from '../model/resolve-trip.ts';
import { routeErrorText } from '../../presentation/route-words.ts';

const routeOver = (
  lengthM: number,
  altitudeM: (m: number) => number,
  waypoints: Route['waypoints'] = [],
): Route =>
  Route.parse({
    name: 'Ridge',
    profile: Array.from({ length: lengthM / 50 + 1 }, (_, i) => ({
      distanceM: 50 * i,
      altitudeM: altitudeM(50 * i),
    })),
    waypoints,
  });
const place = (name: string, distanceM: number, water = false, struck = false) => ({
  name,
  distanceM,
  water,
  struck,
});
const pace = (method: Pace['method'] = 'din-33466'): Pace => ({ method, partyFactor: 1.1, restShare: 0.2 });

/** 1200 m up over 20 km, 1200 m down over 20 km. */
const mountain = routeOver(40_000, gable(1200, 40_000, 600), [
  place('Meadow Camp', 10_000),
  place('Reed Spring', 4000, true),
  place('Summit Camp', 20_000),
  place('Thin Spring', 15_000, true, true),
  place('Lake Camp', 30_000, true),
  place('Gate', 39_900),
]);

function refusal(endsAt: (string | undefined)[], dayCount = 4, route = mountain): RouteError {
  try {
    dayLegs(route, dayCount, endsAt, pace());
  } catch (error) {
    if (error instanceof RouteError) return error;
    throw error;
  }
  throw new Error('was split');
}

describe('a route split at waypoints', () => {
  const legs = dayLegs(mountain, 4, ['Meadow Camp', 'Summit Camp', 'Lake Camp', undefined], pace());

  it('has a leg for each day with its figures', () => {
    expect(legs.map(({ day, fromM, toM, endsAt }) => [day, fromM, toM, endsAt])).toEqual([
      [1, 0, 10_000, 'Meadow Camp'],
      [2, 10_000, 20_000, 'Summit Camp'],
      [3, 20_000, 30_000, 'Lake Camp'],
      [4, 30_000, 40_000, undefined],
    ]);
    expect(legs[1]).toMatchObject({
      distanceM: 10_000,
      climbM: expect.closeTo(600, 6),
      descentM: 0,
      highestM: 1800,
      campAltitudeM: 1800,
      grades: [
        {
          lengthM: expect.closeTo(10_000, 6),
          grade: expect.closeTo(0.06, 6),
          altitudeM: expect.closeTo(1500, 6),
        },
      ],
      // The larger of 2.5 h for the way and 2 h for the height, and half the other.
      movingH: expect.closeTo(3.5 * 1.1, 6),
      walkingH: expect.closeTo(3.5 * 1.1 * 1.2, 6),
    });
    expect(legs[2]).toMatchObject({
      climbM: 0,
      descentM: expect.closeTo(600, 6),
      highestM: 1800,
      campAltitudeM: expect.closeTo(1200, 6),
    });
  });

  it('has its water sources in time, also those it only touches', () => {
    expect(legs.map(({ sources }) => sources.map(({ name, atM, struck }) => [name, atM, struck]))).toEqual([
      [['Reed Spring', 4000, false]],
      [['Thin Spring', 5000, true]],
      [['Lake Camp', 10_000, false]],
      [['Lake Camp', 0, false]],
    ]);
    expect(legs[0]?.sources[0]?.atH).toBeCloseTo(0.4 * (legs[0]?.walkingH ?? NaN), 6);
    expect(legs[2]?.sources[0]?.atH).toBeCloseTo(legs[2]?.walkingH ?? NaN, 9);
    expect(legs[3]?.sources[0]?.atH).toBe(0);
  });

  it('has a source near a camp on the leg to it and on the leg from it', () => {
    const route = routeOver(10_000, () => 500, [
      place('Camp', 5000),
      place('Before', 4930, true),
      place('After', 5100, true),
      place('Too far', 5101, true),
    ]);
    const [to, from] = dayLegs(route, 2, ['Camp'], pace());
    expect(to?.sources.map(({ name, atM }) => [name, atM])).toEqual([
      ['Before', 5000],
      ['After', 5000],
    ]);
    expect(from?.sources.map(({ name, atM }) => [name, atM])).toEqual([
      ['Before', 0],
      ['After', 0],
      ['Too far', 101],
    ]);
    expect(to?.sources[1]?.atH).toBeCloseTo(to?.walkingH ?? NaN, 9);
  });

  it('has a day of rest where two days end at the same place', () => {
    const [, rest, after] = dayLegs(mountain, 3, ['Summit Camp', 'Summit Camp'], pace());
    expect(rest).toEqual({
      day: 2,
      fromM: 20_000,
      toM: 20_000,
      distanceM: 0,
      climbM: 0,
      descentM: 0,
      highestM: 1800,
      campAltitudeM: 1800,
      grades: [],
      movingH: 0,
      walkingH: 0,
      sources: [],
      endsAt: 'Summit Camp',
    });
    expect(after?.distanceM).toBe(20_000);
    const lake = dayLegs(mountain, 3, ['Lake Camp', 'Lake Camp'], pace())[1];
    expect(lake?.sources).toEqual([{ name: 'Lake Camp', atM: 0, atH: 0, struck: false }]);
  });

  it('ends at its end, for which a place close by may be chosen', () => {
    const [, last] = dayLegs(mountain, 2, ['Summit Camp', 'Gate'], pace());
    expect(last).toMatchObject({ toM: 40_000, endsAt: 'Gate' });
  });

  it('may be a single day', () => {
    expect(dayLegs(mountain, 1, [], pace())).toEqual([
      expect.objectContaining({
        day: 1,
        fromM: 0,
        toM: 40_000,
        climbM: expect.closeTo(1200, 6),
        highestM: 1800,
      }),
    ]);
  });
});

describe('days without a choice', () => {
  it.each(WALKING_TIME_METHODS)('walk the same hours, by %s', (method) => {
    const legs = dayLegs(mountain, 5, [undefined, undefined, 'Summit Camp'], pace(method));
    const [a, b, c, d, e] = legs.map(({ walkingH }) => walkingH);
    expect(legs.map(({ endsAt }) => endsAt)).toEqual([
      undefined,
      undefined,
      'Summit Camp',
      undefined,
      undefined,
    ]);
    expect(legs[2]?.toM).toBe(20_000);
    for (const [one, other] of [
      [a, b],
      [b, c],
      [d, e],
    ])
      expect(one).toBeCloseTo(other ?? NaN, 2);
  });

  it('stay where they are between two ends at the same place', () => {
    const legs = dayLegs(mountain, 4, ['Summit Camp', undefined, 'Summit Camp'], pace());
    expect(legs.map(({ distanceM }) => distanceM)).toEqual([20_000, 0, 0, 20_000]);
  });
});

describe('every split', () => {
  it('covers the route once, with its climb and descent, in pieces that have them too', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 14 }),
        fc.constantFrom(...WALKING_TIME_METHODS),
        fc.integer({ min: 20, max: 300 }),
        fc.array(fc.integer({ min: 0, max: 30_000 }), { maxLength: 14 }),
        (dayCount, method, heightM, stops) => {
          const camps = stops.toSorted((a, b) => a - b).slice(0, dayCount - 1);
          const route = routeOver(
            30_000,
            hills(heightM, 2700),
            camps.map((distanceM, i) => place(`Camp ${i}`, distanceM)),
          );
          const endsAt = camps.map((_, i) => (i % 3 === 1 ? undefined : `Camp ${i}`));
          const legs = dayLegs(route, dayCount, endsAt, pace(method));
          const sum = (pick: (leg: (typeof legs)[number]) => number) =>
            legs.reduce((total, leg) => total + pick(leg), 0);
          const whole = climbAndDescent(route.profile);
          expect(legs.length).toBe(dayCount);
          expect(sum((leg) => leg.distanceM)).toBeCloseTo(30_000, 6);
          expect(sum((leg) => leg.climbM)).toBeCloseTo(whole.climbM, 4);
          expect(sum((leg) => leg.descentM)).toBeCloseTo(whole.descentM, 4);
          for (const { grades, climbM, distanceM, walkingH, sources } of legs) {
            expect(grades.reduce((total, piece) => total + piece.lengthM, 0)).toBeCloseTo(distanceM, 6);
            expect(
              grades.reduce((total, piece) => total + Math.max(0, piece.lengthM * piece.grade), 0),
            ).toBeCloseTo(climbM, 6);
            for (const { atH } of sources) expect(atH).toBeLessThanOrEqual(walkingH + 1e-9);
          }
        },
      ),
      { seed: 1, numRuns: 60 },
    );
  });

  it('takes a hand-made profile without its small ups and downs', () => {
    const rough = routeOver(10_000, (m) => 1000 + (m % 100 === 0 ? 0 : 6));
    expect(dayLegs(rough, 2, [], pace()).map(({ climbM }) => Math.round(climbM))).toEqual([0, 0]);
  });
});

describe('refused, naming the day:', () => {
  it('an unknown place', () => {
    const error = refusal(['Meadow Camp', 'Nowhere']);
    expect(routeErrorText(error)).toMatch(
      /^Day 2: the route has no waypoint "Nowhere"\. Choose one of: "Meadow Camp", "Reed Spring", /,
    );
    expect(error.where.day).toBe(2);
    expect(
      routeErrorText(
        refusal(
          ['Hut'],
          2,
          routeOver(1000, () => 0),
        ),
      ),
    ).toBe('Day 1: the route has no waypoint "Hut", nor any other. Leave the end of the day open.');
  });

  it('a place behind the day before', () => {
    expect(routeErrorText(refusal(['Summit Camp', undefined, 'Meadow Camp']))).toBe(
      'Day 3: "Meadow Camp" is 10.0 km (6.2 mi) along the route, before 20.0 km (12.4 mi), where day 1 ends. Choose a place farther along, or the same one for a rest day.',
    );
  });

  it('a last day that does not reach the end', () => {
    expect(routeErrorText(refusal(['Meadow Camp', 'Summit Camp'], 2))).toMatch(
      /^Day 2: the last day ends at the end of the route, 40\.0 km \(24\.9 mi\) along it, but "Summit Camp" lies at 20\.0 km \(12\.4 mi\)\. Leave/,
    );
  });

  it('more ends than days', () => {
    expect(routeErrorText(refusal(['Meadow Camp', 'Summit Camp', undefined], 2))).toBe(
      '3 ends of days are chosen, but the trip has only 2 days. Remove some, or add days.',
    );
  });
});

describe('days of rest and short days', () => {
  const hoursOf = (shares: number[], endsAt: (string | undefined)[] = []) =>
    dayLegs(mountain, 4, endsAt, pace(), shares).map(({ walkingH }) => walkingH);

  it('walk nothing and half of what the others walk, and all of the way is walked', () => {
    const [first = 0, rest, short = 0, last = 0] = hoursOf([1, 0, 0.5, 1]);
    expect(rest).toBe(0);
    expect(short / first).toBeCloseTo(0.5, 2);
    expect(last / first).toBeCloseTo(1, 2);
    expect(dayLegs(mountain, 4, [], pace(), [1, 0, 0.5, 1]).at(-1)?.toM).toBe(40_000);
  });

  it('walk to a place that was chosen for their end', () => {
    const [, rest = 0] = hoursOf([1, 0, 1, 1], ['Meadow Camp', 'Summit Camp']);
    expect(rest).toBeGreaterThan(1);
  });

  it('may come last, and walk evenly where all of them would rest', () => {
    expect(hoursOf([1, 1, 1, 0]).at(-1)).toBe(0);
    const all = hoursOf([0, 0, 0, 0]);
    const even = hoursOf([1, 1, 1, 1]);
    expect(all).toEqual(even);
  });
});
