import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { Kysely, type Transaction } from 'kysely';
import { DEFAULT_MIGRATION_TABLE, Migrator } from 'kysely/migration';
import { UserError } from '../errors.ts';
import { storageError } from '../storage-error.ts';
import { MIGRATIONS } from './migrations.ts';
import { sqliteDialect } from './sqlite-dialect.ts';
import type { Tables } from './tables.ts';

export type Database = Kysely<Tables>;

/**
 * Opens `ridgelarder.sqlite` in a folder, both made where they are missing, and brings its tables up to date.
 *
 * @param patienceMs how long a change waits for another program that writes, before it fails as Busy
 * @throws UserError `Unusable` or `Busy`, naming the file and what to do
 */
export async function openDatabase(folder: string, patienceMs = 10_000): Promise<Database> {
  const path = resolve(join(folder, 'ridgelarder.sqlite'));
  try {
    await mkdir(folder, { recursive: true });
  } catch (error) {
    throw storageError(error, resolve(folder));
  }
  const db: Database = new Kysely({ dialect: sqliteDialect(path, patienceMs) });
  try {
    await refuseNewerTables(db, path);
    const { error } = await new Migrator({
      db,
      provider: { getMigrations: async () => MIGRATIONS },
    }).migrateToLatest();
    if (error instanceof UserError) throw error;
    if (error)
      throw new UserError(
        'Unusable',
        `The tables of "${path}" could not be brought up to date; the file was left as it was. Is it the file of another program? Move it away, or choose another folder with RIDGELARDER_DATA.`,
        { cause: error },
      );
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return db;
}

async function refuseNewerTables(db: Database, path: string): Promise<void> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some(({ name }) => name === DEFAULT_MIGRATION_TABLE)) return;
  const done = await db
    .withTables<{ [DEFAULT_MIGRATION_TABLE]: { name: string } }>()
    .selectFrom(DEFAULT_MIGRATION_TABLE)
    .select('name')
    .execute();
  const unknown = done.find(({ name }) => !(name in MIGRATIONS));
  if (unknown)
    throw new UserError(
      'Unusable',
      `"${path}" was written by a newer Ridgelarder (its change "${unknown.name}" is not known here). Update this one, or choose another folder with RIDGELARDER_DATA.`,
    );
}

/** Runs several queries on one and the same state of the database. */
export function reading<Result>(
  db: Database,
  work: (trx: Transaction<Tables>) => Promise<Result>,
): Promise<Result> {
  return db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(work);
}

/** Runs a change that lands whole or not at all, alone among all that write to the file. */
export function writing<Result>(
  db: Database,
  work: (trx: Transaction<Tables>) => Promise<Result>,
): Promise<Result> {
  return db.transaction().setIsolationLevel('serializable').execute(work);
}
