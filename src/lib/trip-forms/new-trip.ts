import { Trip } from '$lib/planning/model/trip.ts';
import { CalendarDate } from '$lib/planning/model/kinds.ts';
import { say } from '$lib/texts/say.ts';
import { withoutUndefined, type FormReader } from '$lib/forms/read-form.ts';

/** People of a trip with how they cook, to go on another one. */
export type Group = Pick<Trip, 'party' | 'cookGroups'> & {
  /** The trip that they are of. */
  readonly tripId: string;
  readonly tripName: string;
};

/** The groups of the trips there are, the newest of each: those with the same names are one. */
export function groupsOf(trips: readonly { readonly id: string; readonly trip: Trip }[]): Group[] {
  const found = new Map<string, Group>();
  for (const { id, trip } of trips) {
    const { party, cookGroups } = trip;
    const key = party
      .map(({ name }) => name)
      .sort()
      .join('\n');
    if (!found.has(key)) found.set(key, { tripId: id, tripName: trip.name, party, cookGroups });
  }
  return [...found.values()];
}

/**
 * Reads the short form of a new trip: its people, days, start and energy. People are a number of new ones, numbered until they are given a name, or a group of before.
 *
 * @param groups to choose from
 * @returns the trip, or `undefined` where `read.problems` says what has to be mended
 */
export function readNewTrip(read: FormReader, groups: readonly Group[] = []): Trip | undefined {
  const chosen = read.text('group');
  const group = groups.find(({ tripId }) => tripId === chosen);
  if (chosen !== undefined && !group)
    read.add([{ field: 'group', message: say('this group is gone; choose another') }]);
  const people = group ? { party: group.party, cookGroups: group.cookGroups } : newPeople(read);

  const startDate = read.text('startDate');
  const input = withoutUndefined({
    name: read.text('name') ?? (startDate ? say('Hike from {date}', { date: startDate }) : say('Hike')),
    startDate,
    dayCount: read.number('dayCount'),
    energyKcal: read.number('energyKcal'),
    ...people,
  });
  return read.accept(Trip.safeParse(withoutUndefined(input), { reportInput: true }));
}

/** Reads the day on which a copy begins. */
export function readStart(read: FormReader): string | undefined {
  const startDate = CalendarDate.safeParse(read.text('copyStart') ?? '');
  if (!startDate.success)
    read.add([
      { field: 'copyStart', message: say('enter a date, such as {example}', { example: '2027-07-05' }) },
    ]);
  return startDate.data;
}

function newPeople(read: FormReader): Pick<Trip, 'cookGroups'> & { party: { name: string }[] } {
  const partySize = read.number('partySize');
  const wholeParty = partySize !== undefined && Number.isInteger(partySize) && partySize >= 0;
  if (!wholeParty || partySize < 1 || partySize > 40)
    read.add([
      {
        field: 'partySize',
        message: say('must be a whole number from {least} to {most}', { least: 1, most: 40 }),
      },
    ]);

  return {
    party: Array.from({ length: wholeParty ? Math.min(40, Math.max(1, partySize)) : 1 }, (_, index) => ({
      name: say('Person {number}', { number: index + 1 }),
    })),
  };
}
