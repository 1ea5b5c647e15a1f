import { join, resolve } from 'node:path';
import { Kysely, sql, type Dialect } from 'kysely';
import { DEFAULT_MIGRATION_TABLE } from 'kysely/migration';
import { copyBeforeUpdate, copyPostgresBeforeUpdate } from '../backups/copy-before-update.ts';
import { DATABASE_FILE, dataFolder } from '../data-folder.ts';
import { UserError } from '../errors.ts';
import { stillWriting, storageError } from '../storage-error.ts';
import { makeFolder } from '../to-disk.ts';
import { isOnPostgres, migratorOf, MIGRATIONS } from './migrations.ts';
import { HOW_TO_WRITE_IT, postgresDialect } from './postgres-dialect.ts';
import { sqliteDialect } from './sqlite-dialect.ts';
import { changesDone, writeInTurns, type Database } from './transactions.ts';
import { Turns } from './turns.ts';

export { lastChange, reading, writing, type Database } from './transactions.ts';

/** A kind of database, and how to name this one to the user. */
type Store = {
  readonly dialect: Dialect;
  readonly name: string;
  readonly elsewhere: string;
  /** Keeps what is there before its tables are changed. @param change the last one that was made to them */
  readonly beforeUpdate: (db: Database, change: string) => Promise<void>;
};

/**
 * Opens where the data is kept, and brings its tables up to date: `ridgelarder.sqlite` in a folder, both made where they are missing, or a
 * database of PostgreSQL.
 *
 * @param place a folder, or `postgres://…`
 * @param patienceMs how long a change waits for another program that writes, before it fails as Busy
 * @param keeping where there is a database, the data folder that takes a copy of it before its tables are changed
 * @throws UserError `Unusable` or `Busy`, naming the place, without its password, and what to do
 */
export async function openDatabase(
  place: string,
  patienceMs = 10_000,
  keeping = dataFolder(),
): Promise<Database> {
  const store = isAddress(place) ? atAddress(place, patienceMs, keeping) : await inFolder(place, patienceMs);
  const db: Database = new Kysely({ dialect: store.dialect });
  if (isAddress(place)) writeInTurns(db, new Turns(patienceMs, () => stillWriting(store.name)));
  try {
    await bringUpToDate(db, store);
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return db;
}

/** @returns whether a place is the address of a database, such as `postgres://…`, and not a folder */
export const isAddress = (place: string): boolean => /^\w{2,}:\/\//.test(place);

const notPostgres = () =>
  new UserError(
    'Unusable',
    `The database that is named is none of PostgreSQL, and no other can be used. ${HOW_TO_WRITE_IT}`,
  );

/**
 * @returns the address that `DATABASE_URL` names, where it names any
 * @throws UserError `Unusable` where it is none
 */
export function databaseUrl(): string | undefined {
  const url = process.env['DATABASE_URL'] || undefined;
  if (url !== undefined && !isAddress(url)) throw notPostgres();
  return url;
}

async function inFolder(folder: string, patienceMs: number): Promise<Store> {
  const path = resolve(join(folder, DATABASE_FILE));
  try {
    await makeFolder(folder);
  } catch (error) {
    throw storageError(error, resolve(folder));
  }
  return {
    dialect: sqliteDialect(path, patienceMs),
    name: `"${path}"`,
    elsewhere: 'choose another folder with RIDGELARDER_DATA',
    beforeUpdate: () => copyBeforeUpdate(folder),
  };
}

function atAddress(url: string, patienceMs: number, keeping: string): Store {
  if (!/^postgres(ql)?:/.test(url)) throw notPostgres();
  return {
    ...postgresDialect(url, patienceMs),
    elsewhere: 'choose another database with DATABASE_URL',
    beforeUpdate: (db, change) => copyPostgresBeforeUpdate(db, change, keeping),
  };
}

async function bringUpToDate(db: Database, { name, elsewhere, beforeUpdate }: Store): Promise<void> {
  const schema = isOnPostgres(db) ? await usableSchema(db, name) : undefined;
  await refuseNewerTables(db, schema, name, elsewhere);
  const migrator = migratorOf(db, schema);
  const done = (await migrator.getMigrations()).filter(({ executedAt }) => executedAt !== undefined);
  const last = done.at(-1);
  if (last && done.length < Object.keys(MIGRATIONS).length)
    await beforeUpdate(db, last.name).catch((error: unknown) => {
      throw withoutCopy(name, error);
    });
  const { error } = await migrator.migrateToLatest();
  if (error instanceof UserError) throw error;
  if (error)
    throw new UserError(
      'Unusable',
      `The tables of ${name} could not be brought up to date; they were left as they were. Do they belong to another program? Move them away, or ${elsewhere}.`,
      { cause: error },
    );
}

const withoutCopy = (name: string, error: unknown): UserError =>
  new UserError(
    error instanceof UserError ? error.code : 'Unusable',
    `The tables of ${name} are of an earlier version, and were left as they were, since they could not be copied before: ${error instanceof Error ? error.message : String(error)} Start again when that is put right.`,
    { cause: error },
  );

/** @returns the schema in which tables without one are looked for */
async function usableSchema(db: Database, name: string): Promise<string> {
  const { rows } = await sql<{ schema: string | null; encoding: string }>`
    select current_schema() as schema, current_setting('server_encoding') as encoding`.execute(db);
  const { schema, encoding } = rows[0] ?? {};
  if (encoding !== 'UTF8')
    throw new UserError(
      'Unusable',
      `The encoding of ${name} is ${encoding}, which does not hold every letter. Make one with the encoding UTF8 ("createdb --encoding=UTF8 --template=template0 …"), and name it in DATABASE_URL.`,
    );
  if (schema === undefined || schema === null)
    throw new UserError(
      'Unusable',
      `No schema of ${name} can be used. Make the one that search_path names, or let its user use it.`,
    );
  return schema;
}

async function refuseNewerTables(
  db: Database,
  schema: string | undefined,
  where: string,
  elsewhere: string,
): Promise<void> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === DEFAULT_MIGRATION_TABLE && table.schema === schema)) return;
  const done = await changesDone(db).execute();
  const unknown = done.find(({ name }) => !(name in MIGRATIONS));
  if (unknown)
    throw new UserError(
      'Unusable',
      `What is in ${where} was written by a newer Ridgelarder (its change "${unknown.name}" is not known here). Update this one, or ${elsewhere}.`,
    );
}
