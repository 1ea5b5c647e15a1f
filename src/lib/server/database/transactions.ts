import { setTimeout as sleep } from 'node:timers/promises';
import { sql, type Kysely, type Transaction } from 'kysely';
import { DEFAULT_MIGRATION_LOCK_TABLE, DEFAULT_MIGRATION_TABLE } from 'kysely/migration';
import { say } from '../../texts/say.ts';
import { UserError } from '../errors.ts';
import { isOnPostgres, MIGRATIONS } from './migrations.ts';
import { isConflict } from './postgres-error.ts';
import type { Tables } from './tables.ts';
import type { Turns } from './turns.ts';

export type Database = Kysely<Tables>;

type MigrationTable = { [DEFAULT_MIGRATION_TABLE]: { name: string } };

/** @returns the name of the last change that was made to the tables */
export async function lastChange(db: Database): Promise<string> {
  const { name } = await changesDone(db).orderBy('name', 'desc').limit(1).executeTakeFirstOrThrow();
  return name;
}

/** The changes that were made to the tables. */
export const changesDone = (db: Database) =>
  db.withTables<MigrationTable>().selectFrom(DEFAULT_MIGRATION_TABLE).select('name');

/** Runs several queries on one and the same state of the database. */
export function reading<Result>(
  db: Database,
  work: (trx: Transaction<Tables>) => Promise<Result>,
): Promise<Result> {
  return db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(work);
}

/** Turns to write of those who share a pool of connections: who waits for its turn holds none, so that reading goes on. */
const turnsToWrite = new WeakMap<Database, Turns>();

/** Lets changes of this database wait for each other. */
export const writeInTurns = (db: Database, turns: Turns): void => void turnsToWrite.set(db, turns);

const MOST_TRIES = 10;
const LONGEST_PAUSE_MS = 50;

/**
 * Runs a change that lands whole or not at all, alone among all that write. Where something else came in the way of it, it is made once more from its beginning.
 *
 * @param work changes nothing but the database, or sets what it changes anew at each try
 * @throws UserError `Busy` where others write for too long or kept coming in the way; what `work` throws
 */
export async function writing<Result>(
  db: Database,
  work: (trx: Transaction<Tables>) => Promise<Result>,
): Promise<Result> {
  const endTurn = await turnsToWrite.get(db)?.take();
  try {
    for (let tried = 0; tried < MOST_TRIES; tried += 1) {
      try {
        return await db
          .transaction()
          .setIsolationLevel('serializable')
          .execute(async (trx) => {
            if (isOnPostgres(trx)) await takeTurnAmongProcesses(trx);
            await refuseTablesOfNewer(trx);
            return work(trx);
          });
      } catch (error) {
        if (!isConflict(error)) throw error;
        await sleep(Math.random() * LONGEST_PAUSE_MS);
      }
    }
  } finally {
    endTurn?.();
  }
  throw new UserError(
    'Busy',
    'Others kept changing the same things at the same time, so nothing was changed. Try again in a moment.',
  );
}

/** A newer program may have changed the tables while this one runs, and does not know what this one would write into them. */
async function refuseTablesOfNewer(trx: Transaction<Tables>): Promise<void> {
  const change = await lastChange(trx);
  if (!(change in MIGRATIONS))
    throw new UserError(
      'Unusable',
      say(
        'A newer Ridgelarder has changed the tables while this one was running (its change "{change}" is not known here), so nothing was changed. Stop this one, and start the newer one.',
        { change },
      ),
    );
}

/**
 * Waits for the changes of other processes, in the order of coming. What a change reads is what is there after this, as `lock table` comes before the first
 * query. The table is one that nothing is done with otherwise, so that cleaning up inside PostgreSQL needs no turn.
 */
async function takeTurnAmongProcesses(trx: Transaction<Tables>): Promise<void> {
  await sql`lock table ${sql.table(DEFAULT_MIGRATION_LOCK_TABLE)} in exclusive mode`.execute(trx);
}
