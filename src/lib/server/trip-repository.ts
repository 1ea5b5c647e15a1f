import { randomUUID } from 'node:crypto';
import type { Transaction } from 'kysely';
import { Trip } from '../planning/model/trip.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { keepBefore, throwIntoBin } from './bin.ts';
import { UserError } from './errors.ts';
import {
  append,
  held,
  reservations,
  stageOf,
  TRAIL_NOTE,
  type Movement,
  type Reservation,
} from './ledger.ts';
import type { Stage } from '../ledger-kinds.ts';
import { parseStored } from './stored-json.ts';
import { say, sayList, text, type Text } from '../texts/say.ts';

export type PouchCount = { readonly code: string; readonly pouches: number };

/** A trip without its pouches. */
export type ListedTrip = {
  id: string;
  version: number;
  trip: Trip;
  stage: Stage;
  /** Instant, ISO 8601. */
  updatedAt: string;
};

/** `reserved`: what the trip has been promised and still has, set aside at home or packed, as `stage` says. */
export type StoredTrip = ListedTrip & {
  reserved: PouchCount[];
  eaten: PouchCount[];
  broughtBack: PouchCount[];
};

/** `undo`: the id with which the change is undone, see `Bin.putBack`. */
export type ChangedTrip = StoredTrip & { readonly undo: string };

/**
 * Trips, and the pouches promised to them. Every change asks for the version it was made on and raises it.
 */
export class TripRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** All trips, the latest start first. */
  async listTrips(): Promise<ListedTrip[]> {
    const trips = await reading(this.#db, async (trx) => {
      const rows = await tripRows(trx).execute();
      const sums = new Map((await sumsOfUnfinished(trx)).map((sum) => [sum.tripId, sum]));
      return rows.map((row) => {
        const sum = sums.get(row.id);
        return listedTrip(row, sum ? [sum] : []);
      });
    });
    return trips.sort(latestFirst);
  }

  /** Trips that have been promised pouches of a lot and still have them, the latest start first. */
  async tripsWith(code: string): Promise<StoredTrip[]> {
    const trips = await reading(this.#db, async (trx) => {
      const lines = await trx
        .selectFrom('ledger')
        .innerJoin('lots', 'lots.id', 'ledger.lotId')
        .select('ledger.tripId')
        .where('lots.code', '=', code)
        .where('ledger.tripId', 'is not', null)
        .groupBy('ledger.tripId')
        .having((eb) => eb.or([eb(held('set-aside'), '>', 0), eb(held('packed'), '>', 0)]))
        .$narrowType<{ tripId: string }>()
        .execute();
      const found: StoredTrip[] = [];
      for (const { tripId } of lines) {
        const trip = await findTrip(trx, tripId);
        if (trip) found.push(trip.stored);
      }
      return found;
    });
    return trips.sort(latestFirst);
  }

  /** Trips that had planned with a lot that was withdrawn, the latest start first. */
  async tripsWithout(code: string): Promise<ListedTrip[]> {
    return (await this.listTrips()).filter(({ trip }) => trip.withdrawn?.some((lot) => lot.code === code));
  }

  getTrip(id: string): Promise<StoredTrip | undefined> {
    return reading(this.#db, async (trx) => (await findTrip(trx, id))?.stored);
  }

  /** @param trip a valid trip */
  createTrip(trip: Trip): Promise<StoredTrip> {
    const checked = Trip.parse(trip);
    const id = randomUUID();
    return writing(this.#db, async (trx) => {
      await trx
        .insertInto('trips')
        .values({
          id,
          name: checked.name,
          trip: JSON.stringify(checked),
          version: 1,
          updatedAt: this.#now(),
          finishedAt: null,
          afterwards: null,
        })
        .execute();
      return (await takeTrip(trx, id)).stored;
    });
  }

  /**
   * What the trip was before is kept, so that the change can be undone.
   *
   * @throws UserError `NotFound`, `StaleVersion`
   */
  async updateTrip(id: string, trip: Trip, version: number): Promise<ChangedTrip> {
    const checked = Trip.parse(trip);
    let undo = '';
    const stored = await this.#change(id, version, async (trx) => {
      const before = await tripRows(trx).where('id', '=', id).executeTakeFirstOrThrow();
      undo = await keepBefore(trx, this.#now(), id, before, version + 1);
      await trx
        .updateTable('trips')
        .set({ name: checked.name, trip: JSON.stringify(checked) })
        .where('id', '=', id)
        .execute();
    });
    return { ...stored, undo };
  }

  /**
   * Makes a trip a template, for which nothing is set aside, or a template a trip.
   *
   * @throws UserError `NotFound`, `StaleVersion`, `Refused` where pouches are set aside, packed or eaten
   */
  markTemplate(id: string, isTemplate: boolean, version: number): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored }) => {
      if (isTemplate && stored.stage !== 'open')
        throw new UserError(
          'Refused',
          say(
            '"{trip}" has pouches of its own, so it cannot become a template. Release them, or make its copy one.',
            {
              trip: stored.trip.name,
            },
          ),
        );
      const { template: _, ...trip } = stored.trip;
      const marked = isTemplate ? { ...trip, template: true } : trip;
      await trx
        .updateTable('trips')
        .set({ trip: JSON.stringify(marked) })
        .where('id', '=', id)
        .execute();
    });
  }

  /**
   * Deletes a trip into the bin and releases what is set aside for it. The histories of the lots keep its name.
   *
   * @returns the id in the bin
   * @throws UserError `NotFound`, `StaleVersion`, `Refused` while it is packed
   */
  deleteTrip(id: string, version: number): Promise<string> {
    return writing(this.#db, async (trx) => {
      const { stored, lines } = await takeTrip(trx, id, version);
      refuseWhilePacked(stored, text('deleted'));
      await this.#releaseAll(trx, lines);
      const { trip, afterwards } = await trx
        .selectFrom('trips')
        .select(['trip', 'afterwards'])
        .where('id', '=', id)
        .executeTakeFirstOrThrow();
      await trx
        .updateTable('trips')
        .set({ trip: null, afterwards: null, version: version + 1, updatedAt: this.#now() })
        .where('id', '=', id)
        .execute();
      return throwIntoBin(trx, this.#now(), {
        kind: 'trip',
        recordId: id,
        name: stored.trip.name,
        body: JSON.stringify({ trip, afterwards }),
        version: version + 1,
      });
    });
  }

  /**
   * Makes what is set aside for a trip equal to `need`: takes what is lacking from the shelf, releases what is no longer
   * needed; all or nothing.
   *
   * @throws UserError `NotFound`, `StaleVersion`, `Refused` while it is packed or naming each code with too few free
   */
  setAside(id: string, version: number, need: readonly PouchCount[]): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored, lines }) => {
      refuseOnceLeft(stored, text('set aside again'));
      refuseForTemplate(stored);
      const needed = countsByCode(need);
      const promised = new Map(lines.map((line) => [line.code, line]));
      const free = await freePouches(trx, [...needed.keys()]);
      const movements: Movement[] = [];
      const lacking: string[] = [];
      for (const [code, pouches] of needed) {
        const lot = free.get(code);
        const more = pouches - (promised.get(code)?.setAside ?? 0);
        if (more === 0) continue;
        if (!lot) lacking.push(say('"{code}" is on no pouch of the shelf', { code }));
        else if (more > lot.onShelf)
          lacking.push(
            say('"{code}" lacks {lacking}: {more} more are needed, {free} are free', {
              code,
              lacking: String(more - lot.onShelf),
              more: String(more),
              free: String(lot.onShelf),
            }),
          );
        else
          movements.push(
            more > 0
              ? { kind: 'set aside', lotId: lot.id, pouches: more, tripId: id }
              : { kind: 'released', lotId: lot.id, pouches: -more, tripId: id },
          );
      }
      for (const { code, lotId, setAside } of promised.values())
        if (!needed.has(code)) movements.push({ kind: 'released', lotId, pouches: setAside, tripId: id });
      if (lacking.length > 0)
        throw new UserError(
          'Refused',
          say(
            'Nothing was set aside for "{trip}". {lacking}. Plan these meals again, or release pouches of another trip.',
            { trip: stored.trip.name, lacking: lacking.join('; ') },
          ),
        );
      await append(trx, this.#now(), '', movements);
    });
  }

  /** Puts all that is set aside for a trip back on the shelf. @throws UserError `NotFound`, `StaleVersion`, `Refused` */
  release(id: string, version: number): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored, lines }) => {
      refuseOnceLeft(stored, text('released'));
      refuseWhileOpen(stored, text('released'));
      await this.#releaseAll(trx, lines);
    });
  }

  /** Packs all that is set aside for a trip. @throws UserError `NotFound`, `StaleVersion`, `Refused` */
  pack(id: string, version: number): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored, lines }) => {
      refuseOnceLeft(stored, text('packed a second time'));
      refuseWhileOpen(stored, text('packed'));
      refuseUnlessThere(stored);
      const movements = lines.map(({ lotId, setAside }): Movement => ({
        kind: 'packed',
        lotId,
        pouches: setAside,
        tripId: id,
      }));
      await append(trx, this.#now(), '', movements);
    });
  }

  /**
   * Ends a packed trip: what came back goes on the shelf, the rest was eaten, and the trip is finished. Where all of it came back and
   * nothing was ever eaten, the trip was called off and is open again.
   *
   * @param also what has to happen in the same change where the trip is finished by it
   * @throws UserError `NotFound`, `StaleVersion`, `Refused` where more came back than was packed
   */
  bringBack(
    id: string,
    version: number,
    back: readonly PouchCount[],
    also: (trx: Transaction<Tables>, at: string) => Promise<void> = async () => {},
  ): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored, lines }) => {
      if (stored.stage !== 'packed')
        throw new UserError(
          'Refused',
          say('"{trip}" is not packed, so nothing can come back from it.', { trip: stored.trip.name }),
        );
      const brought = countsByCode(back);
      const packedByCode = new Map(lines.map((line) => [line.code, line.packed]));
      const tooMany = [...brought]
        .filter(([code, pouches]) => pouches > (packedByCode.get(code) ?? 0))
        .map(([code, pouches]) =>
          say('"{code}": {back} back, {packed} packed', {
            code,
            back: String(pouches),
            packed: String(packedByCode.get(code) ?? 0),
          }),
        );
      if (tooMany.length > 0)
        throw new UserError(
          'Refused',
          say(
            'More pouches would come back from "{trip}" than were packed. {codes}. Correct these numbers.',
            { trip: stored.trip.name, codes: tooMany.join('; ') },
          ),
        );
      const calledOff = lines.every(
        ({ code, packed, eaten, broughtBack }) =>
          eaten === 0 && broughtBack === 0 && packed === (brought.get(code) ?? 0),
      );
      const movements = lines.flatMap(({ code, lotId, packed }): Movement[] => {
        const returned = brought.get(code) ?? 0;
        return [
          { kind: calledOff ? 'unpacked' : 'brought back', lotId, pouches: returned, tripId: id },
          { kind: 'eaten', lotId, pouches: packed - returned, tripId: id },
        ];
      });
      const at = this.#now();
      await append(trx, at, '', movements);
      if (calledOff) return;
      await trx.updateTable('trips').set({ finishedAt: at }).where('id', '=', id).execute();
      await also(trx, at);
    });
  }

  /**
   * Opens a finished trip again: what was taken as eaten when it was finished is back in the packs, to be accounted for once more. What was
   * noted on the trail stays eaten, and what came home is on the shelf.
   *
   * @param also what has to happen in the same change
   * @throws UserError `NotFound`, `StaleVersion`, `Refused` where it is not finished
   */
  reopen(
    id: string,
    version: number,
    also: (trx: Transaction<Tables>, at: string) => Promise<void> = async () => {},
  ): Promise<StoredTrip> {
    return this.#change(id, version, async (trx, { stored, lines }) => {
      if (stored.stage !== 'finished')
        throw new UserError(
          'Refused',
          say('"{trip}" is not finished, so there is nothing to reopen.', { trip: stored.trip.name }),
        );
      const noted = await notedAsEaten(trx, id);
      const movements = lines.map(({ lotId, eaten }): Movement => ({
        kind: 'reopened',
        lotId,
        pouches: Math.max(0, eaten - (noted.get(lotId) ?? 0)),
        tripId: id,
      }));
      const at = this.#now();
      await append(trx, at, '', movements);
      await trx.updateTable('trips').set({ finishedAt: null }).where('id', '=', id).execute();
      await also(trx, at);
    });
  }

  #change(
    id: string,
    version: number,
    work: (trx: Transaction<Tables>, found: FoundTrip) => Promise<void>,
  ): Promise<StoredTrip> {
    return writing(this.#db, async (trx) => {
      await work(trx, await takeTrip(trx, id, version));
      const row = await trx
        .updateTable('trips')
        .set({ version: version + 1, updatedAt: this.#now() })
        .where('id', '=', id)
        .returningAll()
        .$narrowType<{ trip: string }>()
        .executeTakeFirstOrThrow();
      return storedTrip(row, await reservations(trx, id));
    });
  }

  async #releaseAll(trx: Transaction<Tables>, lines: readonly Reservation[]): Promise<void> {
    const movements = lines.map(({ lotId, setAside, tripId }): Movement => ({
      kind: 'released',
      lotId,
      pouches: setAside,
      tripId,
    }));
    await append(trx, this.#now(), '', movements);
  }
}

type TripRow = Tables['trips'] & { trip: string };

const tripRows = (trx: Transaction<Tables>) =>
  trx.selectFrom('trips').selectAll().where('trip', 'is not', null).$narrowType<{ trip: string }>();

/** A trip, with where its pouches are as the ledger has them. */
type FoundTrip = { readonly stored: StoredTrip; readonly lines: readonly Reservation[] };

/** Within a read or a change: a trip with its pouches. */
export async function findTrip(trx: Transaction<Tables>, id: string): Promise<FoundTrip | undefined> {
  const row = await tripRows(trx).where('id', '=', id).executeTakeFirst();
  if (!row) return undefined;
  const lines = await reservations(trx, id);
  return { stored: storedTrip(row, lines), lines };
}

/** Within a change: stores a changed trip. */
export async function writeTrip(trx: Transaction<Tables>, at: string, id: string, trip: Trip): Promise<void> {
  await trx
    .updateTable('trips')
    .set((eb) => ({ trip: JSON.stringify(Trip.parse(trip)), version: eb('version', '+', 1), updatedAt: at }))
    .where('id', '=', id)
    .execute();
}

async function takeTrip(trx: Transaction<Tables>, id: string, version?: number): Promise<FoundTrip> {
  const found = await findTrip(trx, id);
  if (!found)
    throw new UserError('NotFound', say('Trip not found. It may have been deleted; see the list of trips.'));
  const { stored } = found;
  if (version !== undefined && version !== stored.version)
    throw new UserError(
      'StaleVersion',
      say(
        'The trip "{trip}" was changed elsewhere since this page was opened, so nothing was saved. Open it again and repeat your change there.',
        { trip: stored.trip.name },
      ),
    );
  return found;
}

function storedTrip(row: TripRow, lines: readonly Reservation[]): StoredTrip {
  const counts = (pouchesOf: (line: Reservation) => number) =>
    lines.map((line) => ({ code: line.code, pouches: pouchesOf(line) })).filter(({ pouches }) => pouches > 0);
  return {
    ...listedTrip(row, lines),
    reserved: counts(({ setAside, packed }) => setAside + packed),
    eaten: counts(({ eaten }) => eaten),
    broughtBack: counts(({ broughtBack }) => broughtBack),
  };
}

const listedTrip = (row: TripRow, lines: Parameters<typeof stageOf>[1]): ListedTrip => ({
  id: row.id,
  version: row.version,
  trip: parseStored(Trip, row.trip, () => say('The trip "{name}"', { name: row.name })),
  stage: stageOf(row.finishedAt, lines),
  updatedAt: row.updatedAt,
});

/**
 * What the lots of a trip have left of it, added up. That a trip is over is known without its entries, and those of the others are few; no lot of
 * a trip can be below 0 and hide another.
 */
const sumsOfUnfinished = (trx: Transaction<Tables>) =>
  trx
    .selectFrom('ledger')
    .select([
      'tripId',
      held('set-aside').as('setAside'),
      held('packed').as('packed'),
      held('outside').as('eaten'),
    ])
    .where('tripId', 'in', (eb) =>
      eb
        .selectFrom('trips')
        .select('trips.id')
        .where('trips.finishedAt', 'is', null)
        .where('trips.trip', 'is not', null),
    )
    .groupBy('tripId')
    .execute();

/** Pouches of each lot that notes from the trail moved. */
async function notedAsEaten(trx: Transaction<Tables>, tripId: string): Promise<Map<number, number>> {
  const rows = await trx
    .selectFrom('ledger')
    .select(['lotId', (eb) => eb.fn.sum<number>('pouches').as('pouches')])
    .where('tripId', '=', tripId)
    .where('kind', '=', 'eaten')
    .where('note', '=', TRAIL_NOTE)
    .groupBy('lotId')
    .execute();
  return new Map(rows.map(({ lotId, pouches }) => [lotId, pouches]));
}

async function freePouches(
  trx: Transaction<Tables>,
  codes: readonly string[],
): Promise<Map<string, { id: number; onShelf: number }>> {
  if (codes.length === 0) return new Map();
  const rows = await trx
    .selectFrom('lots')
    .leftJoin('balances', 'balances.lotId', 'lots.id')
    .select((eb) => ['lots.id', 'lots.code', eb.fn.coalesce('balances.onShelf', eb.val(0)).as('onShelf')])
    .where('lots.code', 'in', codes)
    .where('lots.withdrawn', 'is', null)
    .execute();
  return new Map(rows.map(({ code, id, onShelf }) => [code, { id, onShelf }]));
}

/** Adds up lines of the same code, and leaves out those of no pouches. */
function countsByCode(lines: readonly PouchCount[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { code, pouches } of lines) {
    if (!Number.isSafeInteger(pouches) || pouches < 0)
      throw new UserError(
        'Refused',
        say('The number of pouches of "{code}" must be a whole number of at least 0.', { code }),
      );
    if (pouches > 0) counts.set(code, (counts.get(code) ?? 0) + pouches);
  }
  return counts;
}

function refuseWhilePacked({ stage, trip }: StoredTrip, what: Text): void {
  if (stage === 'packed')
    throw new UserError(
      'Refused',
      say('"{trip}" is packed and cannot be {what}. Finish it first, under Afterwards.', {
        trip: trip.name,
        what: say(what),
      }),
    );
}

function refuseOnceLeft(stored: StoredTrip, what: Text): void {
  refuseWhilePacked(stored, what);
  if (stored.stage === 'finished')
    throw new UserError(
      'Refused',
      say('"{trip}" is finished and cannot be {what}. Copy it to walk it once more.', {
        trip: stored.trip.name,
        what: say(what),
      }),
    );
}

/** A template promises no stock. */
function refuseForTemplate({ trip }: StoredTrip): void {
  if (trip.template)
    throw new UserError(
      'Refused',
      say('"{trip}" is a template, so no pouches can be set aside for it. Plan a trip from it first.', {
        trip: trip.name,
      }),
    );
}

function refuseWhileOpen({ stage, trip }: StoredTrip, what: Text): void {
  if (stage === 'open')
    throw new UserError(
      'Refused',
      say('Nothing is set aside for "{trip}", so nothing can be {what}. Set its pouches aside first.', {
        trip: trip.name,
        what: say(what),
      }),
    );
}

/** Packs hold what is there: planned food has to come first, or leave the plan; but for what is bought on the way. */
function refuseUnlessThere({ trip }: StoredTrip): void {
  const used = new Set(trip.menu.flatMap(({ opened }) => opened.map(({ code }) => code)));
  const toCome = (trip.planned ?? []).filter(({ at, lot }) => at === undefined && used.has(lot.code));
  if (toCome.length > 0)
    throw new UserError(
      'Refused',
      say(
        '"{trip}" was not packed: {foods} are not there yet. Tick on the shopping list what was bought, seal what was dried, or take it out of the plan.',
        { trip: trip.name, foods: sayList(toCome.map(({ lot }) => lot.recipe)) },
      ),
    );
}

const latestFirst = (a: ListedTrip, b: ListedTrip): number =>
  compare(b.trip.startDate, a.trip.startDate) || compare(a.trip.name, b.trip.name) || compare(a.id, b.id);

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
