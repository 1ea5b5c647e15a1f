import { createWriteStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { Kysely, type Transaction } from 'kysely';
import { z } from 'zod';
import { lotKeys } from '../../lot-keys.ts';
import { problemsOf } from '../../presentation/problems.ts';
import { say } from '../../texts/say.ts';
import { rowsOf, type Row } from '../database/copy-database.ts';
import { migratorOf, MIGRATIONS } from '../database/migrations.ts';
import { DATABASE_FILE } from '../data-folder.ts';
import { reading, type Database } from '../database/open-database.ts';
import { DATA_TABLES } from '../database/replace-data.ts';
import { sqliteDialect } from '../database/sqlite-dialect.ts';
import type { Tables } from '../database/tables.ts';
import { UserError } from '../errors.ts';
import { storageError } from '../storage-error.ts';

/* All data as one JSON file, see docs/data-file.md. */

const FORMAT = 'ridgelarder-data';
/** It is read whole, and takes some seven times its size in memory. */
const LARGEST_BYTES = 200_000_000;
type DataTable = (typeof DATA_TABLES)[number];

/** Columns that hold JSON. In the file it stands as such, not as text. */
const JSON_COLUMNS: Readonly<Partial<Record<DataTable, readonly string[]>>> = {
  lots: ['mealKinds', 'allergens', 'diets'],
  trips: ['trip', 'afterwards'],
  settings: ['settings'],
  records: ['body'],
  bin: ['body'],
  mappings: ['mapping'],
};
/** Columns of lots that are made from others. They are not in the file, where they could only contradict those. */
const MADE_COLUMNS = new Set(Object.keys(lotKeys({ code: '', recipe: '', note: '' })));
const isMade = (table: DataTable, column: string) => table === 'lots' && MADE_COLUMNS.has(column);
const isJson = (table: DataTable, column: string) => JSON_COLUMNS[table]?.includes(column) ?? false;

const DataFile = z.strictObject({
  format: z.literal(FORMAT),
  tables: z.string(),
  ...Object.fromEntries(
    DATA_TABLES.map((table) => [table, z.array(z.record(z.string(), z.unknown())).optional()]),
  ),
});
type DataFile = { readonly tables: string } & Readonly<
  Partial<Record<DataTable, readonly Record<string, unknown>[]>>
>;

/**
 * Writes all data into a JSON file, one line for each row, as it is at one moment. The same data is the same file, to the byte.
 *
 * @throws UserError `Unusable` where the disk does not take it, or what is stored is no JSON where it should be
 */
export async function writeDataFile(db: Database, path: string): Promise<void> {
  try {
    await reading(db, (trx) => pipeline(lines(trx), createWriteStream(path)));
  } catch (error) {
    throw storageError(error, resolve(path));
  }
}

async function* lines(trx: Transaction<Tables>): AsyncGenerator<string> {
  const tables = Object.keys(MIGRATIONS).toSorted().at(-1);
  yield `{\n"format": ${JSON.stringify(FORMAT)},\n"tables": ${JSON.stringify(tables)}`;
  for (const table of DATA_TABLES) {
    yield `,\n${JSON.stringify(table)}: [`;
    let before = '\n';
    for await (const part of rowsOf(trx, table))
      for (const row of part) {
        yield `${before}${JSON.stringify(opened(table, row))}`;
        before = ',\n';
      }
    yield '\n]';
  }
  yield '\n}\n';
}

/** A row with what is JSON in it as such, its columns by name: their order differs with the age of a database. */
function opened(table: DataTable, row: Row): Record<string, unknown> {
  const open = (column: string, value: Row[string]): unknown => {
    if (value === null || !isJson(table, column)) return value;
    try {
      return JSON.parse(String(value));
    } catch (error) {
      throw new UserError(
        'Unusable',
        say('{column} of {row} in the table {table} is not JSON, so nothing was saved. Restore a backup.', {
          column,
          row: String(Object.values(row)[0]),
          table,
        }),
        { cause: error },
      );
    }
  };
  return Object.fromEntries(
    Object.entries(row)
      .filter(([column]) => !isMade(table, column))
      .toSorted(([one], [other]) => (one < other ? -1 : 1))
      .map(([column, value]) => [column, open(column, value)]),
  );
}

/**
 * Makes a database from a JSON file of `writeDataFile`, of this version or an earlier one.
 *
 * @param name what the user calls the file
 * @param folder an empty one, in which the database is made; its tables are those of the file
 * @throws UserError `Refused` with what in the file is wrong, `TooLarge`
 */
export async function readDataFile(path: string, name: string, folder: string): Promise<void> {
  if ((await stat(path)).size > LARGEST_BYTES)
    throw new UserError(
      'TooLarge',
      say(
        '"{name}" is larger than {most} MB, the most that a file of JSON may be, as it is read whole. Put back a copy as a SQLite database, which may be of any size.',
        { name, most: LARGEST_BYTES / 1_000_000 },
      ),
    );
  const data = parse(await readFile(path, 'utf8'), name);
  const db: Database = new Kysely({ dialect: sqliteDialect(join(folder, DATABASE_FILE), 0) });
  try {
    const { error } = await migratorOf(db).migrateTo(data.tables);
    if (error) throw error;
    const known = new Map((await db.introspection.getTables()).map((table) => [table.name, table.columns]));
    await db.transaction().execute(async (trx) => {
      for (const table of DATA_TABLES) {
        const columns = known.get(table);
        if (!columns) continue; // it came with a later version
        const rows = data[table];
        if (!rows) throw refused(name, say('it lacks {field}', { field: table }));
        for (const [index, row] of rows.entries()) {
          const place = `${table}[${index}]`;
          const closed = closedRow(table, row, columns, place, (problem) => refused(name, problem));
          try {
            await trx.insertInto(table).values(closed).execute();
          } catch (error) {
            throw refused(name, `${place} ${error instanceof Error ? error.message : String(error)}`, error);
          }
        }
      }
    });
  } finally {
    await db.destroy();
  }
}

const refused = (name: string, problem: string, cause?: unknown): UserError =>
  new UserError(
    'Refused',
    say('"{name}" cannot be taken in: {problem}. Nothing was changed. Is it whole, and as it was written?', {
      name,
      problem,
    }),
    { cause },
  );

function parse(text: string, name: string): DataFile {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw refused(name, error instanceof Error ? error.message : String(error), error);
  }
  const parsed = DataFile.safeParse(value, { reportInput: true });
  if (!parsed.success) {
    const [problem] = problemsOf(parsed.error);
    throw refused(name, `${problem?.field} ${problem?.message}`.trim(), parsed.error);
  }
  const data = parsed.data as unknown as DataFile;
  if (!Object.hasOwn(MIGRATIONS, data.tables)) throw fromNewer(name, data.tables);
  return data;
}

/** @param change the one that is not known here */
export const fromNewer = (name: string, change: string): UserError =>
  new UserError(
    'Refused',
    say(
      '"{name}" was written by a newer Ridgelarder (its change "{change}" is not known here), so nothing was taken from it. Update this one first.',
      { name, change },
    ),
  );

type Column = { readonly name: string; readonly dataType: string; readonly isNullable: boolean };

function closedRow(
  table: DataTable,
  row: Readonly<Record<string, unknown>>,
  columns: readonly Column[],
  place: string,
  wrong: (problem: string) => UserError,
): Row {
  const inFile = columns.filter(({ name }) => !isMade(table, name));
  const unknown = Object.keys(row).find((name) => !inFile.some((column) => column.name === name));
  if (unknown !== undefined)
    throw wrong(say('{place} has {field}, which is not known', { place, field: unknown }));
  const closed = Object.fromEntries(
    inFile.map(({ name, dataType, isNullable }): [string, Row[string]] => {
      const value = row[name];
      if (value === undefined) throw wrong(say('{place} lacks {field}', { place, field: name }));
      if (value === null && isNullable) return [name, null];
      if (isJson(table, name)) return [name, JSON.stringify(value)];
      const fits =
        dataType.toLowerCase() === 'text'
          ? typeof value === 'string'
          : dataType.toLowerCase() === 'integer'
            ? Number.isSafeInteger(value)
            : typeof value === 'number';
      if (!fits)
        throw wrong(
          say('{place} has something else under {field} than belongs there', { place, field: name }),
        );
      return [name, value as Row[string]];
    }),
  );
  if (inFile.length === columns.length) return closed;
  const [code, recipe, note] = ['code', 'recipe', 'note'].map((name) => String(row[name]));
  return { ...closed, ...lotKeys({ code: code!, recipe: recipe!, note: note! }) };
}
