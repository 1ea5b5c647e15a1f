import { describe, expect, it } from 'vitest';
import { legByHand } from './leg-by-hand.ts';
import { RouteError } from './route-error.ts';
import type { Pace } from '../model/resolve-trip.ts';

const pace: Pace = { method: 'din-33466', partyFactor: 1, restShare: 0.5 };

describe('a leg by hand', () => {
  it('climbs first and descends after, equally steep', () => {
    expect(
      legByHand(
        { distanceM: 12_000, climbM: 600, descentM: 300, highestM: 1850, startAltitudeM: 1200 },
        3,
        pace,
      ),
    ).toEqual({
      day: 3,
      fromM: 0,
      toM: 12_000,
      distanceM: 12_000,
      climbM: 600,
      descentM: 300,
      highestM: 1850,
      campAltitudeM: 1500,
      grades: [
        { lengthM: 8000, grade: 0.075, altitudeM: 1500 },
        { lengthM: 4000, grade: -0.075, altitudeM: 1650 },
      ],
      movingH: expect.closeTo(3 + 2.6 / 2, 9),
      walkingH: expect.closeTo(1.5 * (3 + 2.6 / 2), 9),
      sources: [],
      endsAt: undefined,
    });
  });

  it.each([
    ['level', { distanceM: 8000, climbM: 0, descentM: 0, startAltitudeM: 700 }, [0], 700, 700],
    ['up only', { distanceM: 8000, climbM: 800, descentM: 0, startAltitudeM: 700 }, [0.1], 1500, 1500],
    ['down only', { distanceM: 8000, climbM: 0, descentM: 800, startAltitudeM: 1500 }, [-0.1], 700, 1500],
    [
      'known by its top',
      { distanceM: 8000, climbM: 400, descentM: 400, highestM: 2000 },
      [0.1, -0.1],
      1600,
      2000,
    ],
    ['of unknown altitude', { distanceM: 8000, climbM: 100, descentM: 700 }, [0.1, -0.1], 0, 700],
    ['a day of rest', { distanceM: 0, climbM: 0, descentM: 0, startAltitudeM: 900 }, [], 900, 900],
    ['as steep as can be', { distanceM: 500, climbM: 500, descentM: 0, startAltitudeM: 0 }, [1], 500, 500],
  ])('may be %s', (_, typed, grades, campAltitudeM, highestM) => {
    const leg = legByHand(typed, 1, pace);
    expect(leg.grades.map(({ grade }) => grade)).toEqual(grades.map((grade) => expect.closeTo(grade, 9)));
    expect(leg).toMatchObject({ campAltitudeM, highestM, distanceM: typed.distanceM });
    expect(leg.climbM).toBeCloseTo(typed.climbM, 9);
    expect(leg.descentM).toBeCloseTo(typed.descentM, 9);
  });

  it.each([
    [
      { distanceM: -1, climbM: 0, descentM: 0 },
      { code: 'leg-beyond-range', what: 'distance', valueM: -1 },
    ],
    [
      { distanceM: 9000, climbM: NaN, descentM: 0 },
      { code: 'leg-beyond-range', what: 'climb', valueM: NaN },
    ],
    [
      { distanceM: 900, climbM: 800, descentM: 200 },
      { code: 'leg-too-steep', heightM: 1000, distanceM: 900 },
    ],
  ])('is refused with %o', (typed, fault) => {
    expect(() => legByHand(typed, 2, pace)).toThrow(RouteError);
    expect(() => legByHand(typed, 2, pace)).toThrow(expect.objectContaining({ fault, where: { day: 2 } }));
  });
});
