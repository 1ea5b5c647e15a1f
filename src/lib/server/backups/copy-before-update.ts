import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { Kysely, sql } from 'kysely';
import { BACKUP_FOLDER, DATABASE_FILE } from '../data-folder.ts';
import { contentsOf, rowsOf } from '../database/copy-database.ts';
import { migratorOf } from '../database/migrations.ts';
import { lastChange, reading, type Database } from '../database/transactions.ts';
import { sqliteDialect } from '../database/sqlite-dialect.ts';
import { TABLE_KEYS, type KeptTable } from '../database/tables.ts';
import { copyName } from './copy-names.ts';
import { copySqlite, inWorkplace } from './sqlite-copy.ts';

const pathIn = (dataFolder: string): string =>
  join(dataFolder, BACKUP_FOLDER, copyName(new Date(), 'before-update'));

/** Copies a data folder before its tables are changed. @throws UserError `Unusable` where that is not possible */
export const copyBeforeUpdate = (dataFolder: string): Promise<void> =>
  copySqlite(join(dataFolder, DATABASE_FILE), pathIn(dataFolder));

/**
 * Copies a database of PostgreSQL before its tables are changed, as they are, into a SQLite file in a data folder. Where another process has changed them
 * meanwhile, that one has made a copy.
 *
 * @param change the last one that was made to the tables
 * @throws UserError `Unusable` where that is not possible; Error where the copy would differ
 */
export async function copyPostgresBeforeUpdate(
  db: Database,
  change: string,
  dataFolder: string,
): Promise<void> {
  await inWorkplace(join(dataFolder, BACKUP_FOLDER), async (place) => {
    const file = join(place, DATABASE_FILE);
    const copy: Database = new Kysely({ dialect: sqliteDialect(file, 0) });
    try {
      if (!(await filled(copy, db, change))) return;
    } finally {
      await copy.destroy();
    }
    await copySqlite(file, pathIn(dataFolder));
  });
}

/** @returns whether the tables of `from` are still those of the change; only then they are copied */
async function filled(to: Database, from: Database, change: string): Promise<boolean> {
  const { error } = await migratorOf(to).migrateTo(change);
  if (error) throw error;
  const known = new Set((await to.introspection.getTables()).map(({ name }) => name));
  const names = (Object.keys(TABLE_KEYS) as KeptTable[]).filter((name) => known.has(name));
  return reading(from, async (source) => {
    // Nobody changes the tables while this reads, and what is read is what is there after this, as it comes before the first query.
    await sql`lock table ${sql.join(names.map((name) => sql.table(name)))} in access share mode`.execute(
      source,
    );
    if ((await lastChange(source)) !== change) return false;
    await to.transaction().execute(async (target) => {
      for (const name of names)
        for await (const part of rowsOf(source, name)) await target.insertInto(name).values(part).execute();
      if (!isDeepStrictEqual(await contentsOf(target, names), await contentsOf(source, names)))
        throw new Error('the copy would differ from the original');
    });
    return true;
  });
}
