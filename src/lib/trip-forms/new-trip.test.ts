import { describe, expect, it } from 'vitest';
import { FormReader } from '$lib/forms/read-form.ts';
import { exampleTrip } from '../../../tests/support/examples.ts';
import { groupsOf, readNewTrip, readStart } from './new-trip.ts';

function reader(fields: Record<string, string>): FormReader {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  return new FormReader(form, 'metric');
}
const GOOD = { partySize: '4', dayCount: '5', startDate: '2026-07-04', energyKcal: '3200' };

describe('readNewTrip', () => {
  it('makes a trip of party size, days, start and energy alone', () => {
    expect(readNewTrip(reader(GOOD))).toMatchObject({
      name: 'Hike from 2026-07-04',
      dayCount: 5,
      energyKcal: 3200,
      party: [{ name: 'Person 1' }, { name: 'Person 2' }, { name: 'Person 3' }, { name: 'Person 4' }],
      menu: [],
    });
  });

  it('does without the energy, which has a default', () => {
    expect(readNewTrip(reader({ ...GOOD, energyKcal: '' }))?.energyKcal).toBeUndefined();
  });

  it.each<[string, Record<string, string>, string]>([
    ['a party of none', { partySize: '0' }, 'partySize'],
    ['a party left out', { partySize: '' }, 'partySize'],
    ['a crowd', { partySize: '41' }, 'partySize'],
    ['half an eater', { partySize: '1.5' }, 'partySize'],
    ['400 days', { dayCount: '400' }, 'dayCount'],
    ['negative calories', { energyKcal: '-1' }, 'energyKcal'],
    ['no date', { startDate: '' }, 'startDate'],
  ])('refuses %s', (_, change, field) => {
    const read = reader({ ...GOOD, ...change });
    expect(readNewTrip(read)).toBeUndefined();
    expect(read.problems.map((problem) => problem.field)).toEqual([field]);
  });
});

describe('a group of before', () => {
  const party = [
    { name: 'Ada', allergens: ['milk' as const] },
    { name: 'Bo', maxLoadG: 9000 },
  ];
  const cookGroups = [{ name: 'North', eaters: ['Ada', 'Bo'] }];
  const trips = [
    { id: 'new', trip: exampleTrip({ name: 'Ridge', party, cookGroups }) },
    { id: 'old', trip: exampleTrip({ name: 'Lakes', party: [{ name: 'Bo' }, { name: 'Ada' }] }) },
    { id: 'other', trip: exampleTrip({ name: 'Coast', party: [{ name: 'Cy' }] }) },
  ];
  const groups = groupsOf(trips);

  it('is listed once, as it was last', () =>
    expect(groups.map(({ tripId, tripName }) => [tripId, tripName])).toEqual([
      ['new', 'Ridge'],
      ['other', 'Coast'],
    ]));

  it('comes with all that is known of its people, whatever number is entered', () =>
    expect(readNewTrip(reader({ ...GOOD, partySize: '', group: 'new' }), groups)).toMatchObject({
      dayCount: 5,
      party: [
        { name: 'Ada', allergens: ['milk'] },
        { name: 'Bo', maxLoadG: 9000 },
      ],
      cookGroups,
    }));

  it('that is gone is refused, not replaced by strangers', () => {
    const read = reader({ ...GOOD, group: 'gone' });
    expect(readNewTrip(read, groups)).toBeUndefined();
    expect(read.problems.map(({ field }) => field)).toEqual(['group']);
  });
});

it('the start of a copy has to be a date', () => {
  expect(readStart(reader({ copyStart: '2027-07-05' }))).toBe('2027-07-05');
  const read = reader({ copyStart: 'soon' });
  expect(readStart(read)).toBeUndefined();
  expect(read.problems).toMatchObject([{ field: 'copyStart' }]);
});
