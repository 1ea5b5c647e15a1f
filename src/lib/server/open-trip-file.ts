import { readFile } from 'node:fs/promises';
import type { Trip } from '../planning/model/trip.ts';
import type { JsonFile } from '../read-json-file.ts';
import { otherFile } from '../shelf-csv/text-encoding.ts';
import type { App } from './app.ts';
import { UserError } from './errors.ts';
import { createPlannedTrip } from './plan-meals.ts';
import type { StoredTrip } from './trip-repository.ts';
import { say, sayNumber } from '../texts/say.ts';

/** A trip with the longest route, party and menu takes some 0.5 MB. */
export const LARGEST_TRIP_FILE_BYTES = 1_000_000;

/** A trip from a file as it is stored now. */
export type OpenedTrip = { readonly stored: StoredTrip; readonly searchFailed: boolean };

/**
 * Stores the trip of a file, as `trip.json` of a trip gives it. A menu in it stays as it is, whatever is on this shelf; one that lists no meal is planned.
 *
 * @param again it may be there already
 * @returns the trip, or what is wrong with the file
 * @throws UserError `TooLarge`, `Conflict` where there is a trip of that name and time
 */
export async function openTripFile(
  app: App,
  file: { readonly path: string; readonly bytes: number },
  again = false,
): Promise<JsonFile<OpenedTrip>> {
  if (file.bytes > LARGEST_TRIP_FILE_BYTES)
    throw new UserError(
      'TooLarge',
      say('The file is larger than {most} MB, and no trip is. Is it the right file?', {
        most: sayNumber(LARGEST_TRIP_FILE_BYTES / 1_000_000),
      }),
    );
  const bytes = await readFile(file.path);
  const other = otherFile(bytes);
  if (other !== undefined)
    return {
      fault: say('this is {what}, not the file of a trip; unpack it, or choose another', { what: other }),
    };
  const read = await app.apart.do({ kind: 'trip file', source: bytes });
  if (!('value' in read)) return read;
  const { value: trip } = read;
  if (!again) await refuseTwice(app, trip);
  return {
    value:
      trip.menu.length > 0
        ? { stored: await app.trips.createTrip(trip), searchFailed: false }
        : await createPlannedTrip(app, trip),
  };
}

async function refuseTwice({ trips }: App, { name, startDate, dayCount }: Trip): Promise<void> {
  const there = (await trips.listTrips()).some(
    ({ trip }) => trip.name === name && trip.startDate === startDate && trip.dayCount === dayCount,
  );
  if (there)
    throw new UserError(
      'Conflict',
      say(
        'there is a trip "{name}" from {date} already. To open this file as another trip, tick “Open it again”',
        { name, date: startDate },
      ),
    );
}
