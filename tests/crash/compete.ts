/* A process that promises, releases and packs pouches of a few lots for a few trips, as quickly as it can, while others do the same. */
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { openDatabase } from '../../src/lib/server/database/open-database.ts';
import { UserError } from '../../src/lib/server/errors.ts';
import { TripRepository } from '../../src/lib/server/trip-repository.ts';

export type Contest = {
  readonly place: string;
  readonly seed: number;
  readonly changes: number;
  readonly tripIds: readonly string[];
  readonly codes: readonly string[];
};

const { place, seed, changes, tripIds, codes } = JSON.parse(process.argv[2] ?? '') as Contest;
const random = randomFrom(seed);
const upTo = (most: number) => Math.floor(random() * (most + 1));
const db = await openDatabase(place, 60_000);
const trips = new TripRepository(db, () => new Date().toISOString());
/** How often a change was made, or refused and why. */
const told: Record<string, number> = {};

for (let n = 0; n < changes; n += 1) {
  const trip = await trips.getTrip(tripIds[upTo(tripIds.length - 1)] ?? '');
  if (!trip) throw new Error('a trip is gone');
  const { id, version, stage, reserved } = trip;
  const some = (most: number) => codes.map((code) => ({ code, pouches: upTo(most) }));
  const change = () => {
    if (stage === 'packed') return trips.bringBack(id, version, upTo(9) === 0 ? [] : reserved);
    if (stage === 'finished') return trips.reopen(id, version);
    if (stage === 'open') return trips.setAside(id, version, some(5));
    return [
      () => trips.setAside(id, version, some(5)),
      () => trips.release(id, version),
      () => trips.pack(id, version),
    ][upTo(2)]!();
  };
  const outcome = await change().then(
    () => 'done',
    (error: unknown) => {
      if (!(error instanceof UserError)) throw error;
      return error.code;
    },
  );
  told[outcome] = (told[outcome] ?? 0) + 1;
}
await db.destroy();
console.log(JSON.stringify(told));
