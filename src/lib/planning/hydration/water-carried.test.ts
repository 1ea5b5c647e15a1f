import { expect, test } from 'vitest';
import { exampleTrip } from '../../../../tests/support/examples.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import type { TripInput } from '../model/trip.ts';
import { plannedLegs } from '../route/trip-legs.ts';
import { waterCarriedH } from './water-carried.ts';

function carried(changes: Partial<TripInput>) {
  const trip = exampleTrip(changes);
  const resolved = resolveTrip(trip);
  return waterCarriedH(resolved, plannedLegs(trip, resolved, []));
}

test('nothing is carried to a camp with water, and to lunch from the source before it', () => {
  const [day] = carried({ dayCount: 1, days: [{ walkingH: 6, waterEveryH: 2, campWater: 'source' }] });
  // sources after 2 and 4 h; lunch after 3 h
  expect(day).toEqual({ breakfast: 0, lunch: 1, snack: 1, dinner: 0, drink: 0 });
});

test('to a dry camp it is carried from the last source, and on to the next day', () => {
  const days = carried({
    dayCount: 2,
    days: [
      { walkingH: 5, waterEveryH: 2, campWater: 'dry' },
      { walkingH: 6, waterEveryH: 4, campWater: 'source' },
    ],
  });
  expect(days[0]).toMatchObject({ dinner: 1, drink: 1 });
  // breakfast was carried as far as dinner; lunch after 3 h more, before the source of that day
  expect(days[1]).toMatchObject({ breakfast: 1, lunch: 4, dinner: 0 });
});

test('snow at a camp is water', () => {
  const days = carried({ days: [{ walkingH: 5, waterEveryH: 9, campWater: 'snow' }, { walkingH: 5 }] });
  expect(days[0]?.dinner).toBe(0);
  expect(days[1]?.breakfast).toBe(0);
});
