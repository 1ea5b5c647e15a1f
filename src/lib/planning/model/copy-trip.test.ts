import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { copyTrip, nextStart } from './copy-trip.ts';

describe('the start of a copy', () => {
  it.each([
    ['2027-07-05', '2027-01-01', '2027-07-05'],
    ['2027-07-05', '2027-07-05', '2027-07-05'],
    // a Monday in July, and the Mondays of the years after
    ['2027-07-05', '2027-09-01', '2028-07-03'],
    ['2027-07-05', '2029-01-01', '2029-07-02'],
  ])('of a trip from %s is, on %s, %s', (start, today, expected) =>
    expect(nextStart(start, today)).toBe(expected),
  );
});

describe('a copy', () => {
  const trip = exampleTrip({
    template: true,
    startDate: '2027-02-26',
    resupplies: [{ place: 'Mill', kind: 'box', day: 2, postBy: '2027-02-20' }],
    planned: [{ way: 'buy', lot: exampleLot({ code: '+1' }) }],
    stove: { started: [{ label: 'half', fuel: 'canister-gas', grossG: 300, tareG: 150 }] },
    menu: [{ day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 1 }] }],
  });

  it('on the same day is the trip without its menu', () => {
    const { template: _, ...same } = trip;
    expect(copyTrip(trip, '2027-02-26')).toEqual({ ...same, menu: [] });
  });

  it('in another year moves the dates of boxes, and leaves behind what was of that time', () => {
    const copy = copyTrip(trip, '2028-02-25');
    expect(copy).toMatchObject({ startDate: '2028-02-25', party: trip.party, stove: { started: [] } });
    expect(copy.resupplies?.[0]?.postBy).toBe('2028-02-19');
    expect([copy.planned, copy.template]).toEqual([undefined, undefined]);
  });
});
