import type { Pace } from '../model/resolve-trip.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WALKING_TIME_METHODS } from '../model/route.ts';
import { effortAlong, effortBetween, hoursInto, methodHours, walkingHours } from './walking-time.ts';

const profile = [
  { distanceM: 0, altitudeM: 600 },
  { distanceM: 4000, altitudeM: 1200 },
  { distanceM: 10_000, altitudeM: 900 },
];
const pace = (method: Pace['method'], partyFactor = 1, restShare = 0): Pace => ({
  method,
  partyFactor,
  restShare,
});

/** A profile from steps of way and rise, up to ±60 %. */
const profiles = fc
  .array(
    fc.record({
      wayM: fc.integer({ min: 10, max: 3000 }),
      grade: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    }),
    {
      minLength: 1,
      maxLength: 20,
    },
  )
  .map((steps) => {
    const points = [{ distanceM: 0, altitudeM: 1000 }];
    for (const { wayM, grade } of steps) {
      const last = points.at(-1) ?? { distanceM: 0, altitudeM: 0 };
      points.push({ distanceM: last.distanceM + wayM, altitudeM: last.altitudeM + grade * wayM });
    }
    return points;
  });

describe('effort', () => {
  it('adds up along the profile and is held to its ends', () => {
    const effort = effortAlong(profile);
    expect(effort(0)).toEqual({ distanceM: 0, climbM: 0, descentM: 0, toblerH: 0 });
    expect(effort(1000)).toMatchObject({ distanceM: 1000, climbM: 150, descentM: 0 });
    expect(effort(7000)).toMatchObject({ distanceM: 7000, climbM: 600, descentM: 150 });
    expect(effort(99_999)).toEqual(effort(10_000));
    expect(effort(-5)).toEqual(effort(0));
    expect(effortBetween(effort(1000), effort(7000))).toMatchObject({
      distanceM: 6000,
      climbM: 450,
      descentM: 150,
    });
  });
});

describe('walking time', () => {
  it('is multiplied by the party, and rests come on top', () => {
    const leg = effortAlong(profile)(10_000);
    const alone = methodHours(leg, 'din-33466');
    expect(walkingHours(leg, pace('din-33466', 1.2, 0.25))).toEqual({
      movingH: expect.closeTo(alone * 1.2, 9),
      walkingH: expect.closeTo(alone * 1.5, 9),
    });
  });

  it.each(WALKING_TIME_METHODS)(
    'by %s never falls along a leg and ends with the time of the leg',
    (method) => {
      fc.assert(
        fc.property(profiles, (points) => {
          const endM = points.at(-1)?.distanceM ?? 0;
          const along = effortAlong(points);
          const leg = along(endM);
          const hours = Array.from({ length: 41 }, (_, i) =>
            hoursInto(along((endM * i) / 40), leg, pace(method, 1.1, 0.2)),
          );
          expect(hours[0]).toBe(0);
          hours.forEach((h, i) => expect(h).toBeGreaterThanOrEqual(hours[i - 1] ?? 0));
          expect(hours.at(-1)).toBeCloseTo(walkingHours(leg, pace(method, 1.1, 0.2)).walkingH, 9);
        }),
        { seed: 1 },
      );
    },
  );

  it.each(WALKING_TIME_METHODS)('by %s is never less with more climb or more way', (method) => {
    const positive = fc.double({ min: 0, max: 3000, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, positive, (distanceM, climbM, descentM, more) => {
        const effort = { distanceM: 5 * distanceM, climbM, descentM, toblerH: 0 };
        const hours = methodHours(effort, method);
        expect(methodHours({ ...effort, climbM: climbM + more }, method)).toBeGreaterThanOrEqual(hours);
        expect(methodHours({ ...effort, distanceM: effort.distanceM + more }, method)).toBeGreaterThanOrEqual(
          hours,
        );
      }),
      { seed: 1 },
    );
  });

  it('of no way is none', () => {
    const nowhere = { distanceM: 0, climbM: 0, descentM: 0, toblerH: 0 };
    for (const method of WALKING_TIME_METHODS) {
      expect(walkingHours(nowhere, pace(method))).toEqual({ movingH: 0, walkingH: 0 });
      expect(hoursInto(nowhere, nowhere, pace(method))).toBe(0);
    }
  });
});
