import { randomUUID } from 'node:crypto';
import type { Transaction } from 'kysely';
import { z } from 'zod';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { Trip } from '../planning/model/trip.ts';
import { UserError } from './errors.ts';
import { reinstateLot } from './reinstate-lot.ts';
import { parseStored } from './stored-json.ts';
import { say } from '../texts/say.ts';

/** So long what was deleted can be put back. */
export const DAYS_IN_BIN = 30;
/** So many changes of a trip are kept to be undone. */
const CHANGES_KEPT = 20;
/** What a deleted or changed trip was, as its row had it. */
const TripBody = z.object({ trip: z.string(), afterwards: z.string().nullable() });
const DAY_MS = 86_400_000;

export type InBin = Pick<Tables['bin'], 'id' | 'kind' | 'name' | 'at'>;

/**
 * Within a change: keeps what is deleted, or what a record was before a change that can be undone, and forgets what has lain there for too long.
 *
 * @param version the version that the deletion or change leaves behind
 * @returns the id in the bin
 */
export async function throwIntoBin(
  trx: Transaction<Tables>,
  at: string,
  thrown: Pick<Tables['bin'], 'kind' | 'recordId' | 'name' | 'body' | 'version'>,
): Promise<string> {
  const oldest = new Date(Date.parse(at) - DAYS_IN_BIN * DAY_MS).toISOString();
  await trx.deleteFrom('bin').where('at', '<', oldest).execute();
  const id = randomUUID();
  await trx
    .insertInto('bin')
    .values({ ...thrown, id, at })
    .execute();
  return id;
}

/** Within a change of a trip: keeps what it was, the last few times. @returns the id with which the change is undone */
export async function keepBefore(
  trx: Transaction<Tables>,
  at: string,
  id: string,
  before: Pick<Tables['trips'], 'name' | 'trip' | 'afterwards'>,
  version: number,
): Promise<string> {
  const { name, trip, afterwards } = before;
  const older = await trx
    .selectFrom('bin')
    .select('id')
    .where('kind', '=', 'trip change')
    .where('recordId', '=', id)
    .orderBy('version', 'desc')
    .offset(CHANGES_KEPT - 1)
    .limit(CHANGES_KEPT)
    .execute();
  if (older.length > 0)
    await trx
      .deleteFrom('bin')
      .where(
        'id',
        'in',
        older.map((row) => row.id),
      )
      .execute();
  const body = JSON.stringify({ trip, afterwards });
  return throwIntoBin(trx, at, { kind: 'trip change', recordId: id, name, body, version });
}

/** What was deleted lately, recipes, batches, foods and trips, and lots that were withdrawn. */
export class Bin {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** The last thrown in comes first. */
  list(): Promise<InBin[]> {
    return reading(this.#db, (trx) =>
      trx
        .selectFrom('bin')
        .select(['id', 'kind', 'name', 'at'])
        .where('kind', '<>', 'trip change')
        .orderBy('at', 'desc')
        .orderBy('id')
        .execute(),
    );
  }

  /** @returns a trip before a change that can still be undone, and as it is now; `undefined` where the id is of something else */
  changedTrip(id: string): Promise<{ readonly before: Trip; readonly now: Trip } | undefined> {
    return reading(this.#db, async (trx) => {
      const row = await trx
        .selectFrom('bin')
        .innerJoin('trips', 'trips.id', 'bin.recordId')
        .select(['bin.body', 'bin.name', 'trips.trip'])
        .where('bin.id', '=', id)
        .where('bin.kind', '=', 'trip change')
        .whereRef('bin.version', '=', 'trips.version')
        .executeTakeFirst();
      return row?.trip ? { before: tripIn(row).trip, now: storedAs(row.trip, row.name) } : undefined;
    });
  }

  /** @returns the id in the bin of a lot that is withdrawn, as long as it can be put back */
  ofLot(code: string): Promise<string | undefined> {
    return reading(this.#db, async (trx) => {
      const lot = await trx.selectFrom('lots').select('id').where('code', '=', code).executeTakeFirst();
      const thrown = await trx
        .selectFrom('bin')
        .select('id')
        .where('kind', '=', 'lot')
        .where('recordId', '=', String(lot?.id))
        .orderBy('at', 'desc')
        .executeTakeFirst();
      return thrown?.id;
    });
  }

  /**
   * Puts back what was deleted, or undoes a change, as long as nothing else was done to it since. Pouches that a deleted trip had set aside stay released.
   *
   * @returns where it is now: its kind and id, of a lot its code; where a change was undone, the id with which that is undone in its turn
   * @throws UserError `NotFound`, `StaleVersion`, or `Conflict` where its name is taken
   */
  putBack(id: string): Promise<Pick<Tables['bin'], 'kind' | 'recordId'> & { readonly undo?: string }> {
    return writing(this.#db, async (trx) => {
      const thrown = await trx.selectFrom('bin').selectAll().where('id', '=', id).executeTakeFirst();
      if (!thrown)
        throw new UserError('NotFound', say('This is no longer in the bin: it was restored, or it expired.'));
      const { kind, recordId, name, body, version } = thrown;
      const changedSince = () =>
        new UserError(
          'StaleVersion',
          say('"{name}" was changed again since, so nothing was put back. Open it and change it by hand.', {
            name,
          }),
        );
      const updatedAt = this.#now();
      if (kind === 'lot') {
        const code = await reinstateLot(trx, updatedAt, Number(recordId));
        await trx.deleteFrom('bin').where('id', '=', id).execute();
        return { kind, recordId: code };
      }
      if (kind === 'trip change') {
        const row = await trx.selectFrom('trips').selectAll().where('id', '=', recordId).executeTakeFirst();
        if (!row?.trip || row.version !== version) throw changedSince();
        const { trip, afterwards } = tripIn(thrown);
        const undo = await keepBefore(trx, updatedAt, recordId, row, version + 1);
        await trx
          .updateTable('trips')
          .set({ name: trip.name, trip: JSON.stringify(trip), afterwards, version: version + 1, updatedAt })
          .where('id', '=', recordId)
          .execute();
        await trx.deleteFrom('bin').where('id', '=', id).execute();
        return { kind, recordId, undo };
      }
      if (kind === 'trip') {
        const row = await trx.selectFrom('trips').selectAll().where('id', '=', recordId).executeTakeFirst();
        if (row?.version !== version) throw changedSince();
        await trx
          .updateTable('trips')
          .set({
            ...parseStored(TripBody, body, () => say('The deleted trip "{name}"', { name })),
            version: version + 1,
            updatedAt,
          })
          .where('id', '=', recordId)
          .execute();
      } else {
        const named = await trx
          .selectFrom('records')
          .select('id')
          .where('kind', '=', kind)
          .where('name', '=', name)
          .where('id', '<>', recordId)
          .executeTakeFirst();
        if (named)
          throw new UserError(
            'Conflict',
            say(
              'There is another {kind, select, recipe {recipe} batch {batch} food {food} other {trip}} called "{name}" now. Rename that one first, then put this back.',
              { kind, name },
            ),
          );
        const row = await trx
          .selectFrom('records')
          .select('version')
          .where('id', '=', recordId)
          .executeTakeFirst();
        if (row && row.version !== version) throw changedSince();
        const fields = { name, body, version: version + 1, updatedAt };
        await (row
          ? trx.updateTable('records').set(fields).where('id', '=', recordId).execute()
          : trx
              .insertInto('records')
              .values({ id: recordId, kind, ...fields })
              .execute());
      }
      await trx.deleteFrom('bin').where('id', '=', id).execute();
      return { kind, recordId };
    });
  }
}

const storedAs = (trip: string, name: string): Trip =>
  parseStored(Trip, trip, () => say('The trip "{name}"', { name }));

function tripIn({ name, body }: { readonly name: string; readonly body: string }) {
  const { trip, afterwards } = parseStored(TripBody, body, () => say('The trip "{name}"', { name }));
  return { trip: storedAs(trip, name), afterwards };
}
