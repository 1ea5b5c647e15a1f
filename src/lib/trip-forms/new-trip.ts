import { Trip } from '$lib/planning/model/trip.ts';
import { say } from '$lib/texts/say.ts';
import { withoutUndefined, type FormReader } from '$lib/forms/read-form.ts';

/**
 * Reads the short form of a new trip: size of the party, days, start and energy. Eaters get a number for a name until they are given one.
 *
 * @returns the trip, or `undefined` where `read.problems` says what has to be mended
 */
export function readNewTrip(read: FormReader): Trip | undefined {
  const partySize = read.number('partySize');
  const wholeParty = partySize !== undefined && Number.isInteger(partySize) && partySize >= 0;
  if (!wholeParty || partySize < 1 || partySize > 40)
    read.add([
      {
        field: 'partySize',
        message: say('must be a whole number from {least} to {most}', { least: 1, most: 40 }),
      },
    ]);

  const startDate = read.text('startDate');
  const input = withoutUndefined({
    name: read.text('name') ?? (startDate ? say('Hike from {date}', { date: startDate }) : say('Hike')),
    startDate,
    dayCount: read.number('dayCount'),
    energyKcal: read.number('energyKcal'),
    party: Array.from({ length: wholeParty ? Math.min(40, Math.max(1, partySize)) : 1 }, (_, index) => ({
      name: say('Person {number}', { number: index + 1 }),
    })),
  });
  return read.accept(Trip.safeParse(input, { reportInput: true }));
}
