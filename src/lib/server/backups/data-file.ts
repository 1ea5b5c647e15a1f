import { createReadStream, createWriteStream } from 'node:fs';
import { join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { Kysely, sql, type Transaction } from 'kysely';
import { lotKeys } from '../../lot-keys.ts';
import { parseJson } from '../../parse-json.ts';
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
import { jsonMembers, NotMembers, type Member } from './json-members.ts';
import { fromNewer } from './no-copy.ts';

/* All data as one JSON file, see docs/data-file.md. */

const FORMAT = 'ridgelarder-data';
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
 * Makes a database from a JSON file of `writeDataFile`, of this version or an earlier one. It is read row by row, twice: first to see of which version it is.
 *
 * @param name what the user calls the file
 * @param folder an empty one, in which the database is made; its tables are those of the file
 * @throws UserError `Refused` with what in the file is wrong
 */
export async function readDataFile(path: string, name: string, folder: string): Promise<void> {
  const members = () => membersOf(path, (problem, cause) => refused(name, problem, cause));
  const tables = await tablesStated(members(), name);
  const db: Database = new Kysely({ dialect: sqliteDialect(join(folder, DATABASE_FILE), 0) });
  try {
    const { error } = await migratorOf(db).migrateTo(tables);
    if (error) throw error;
    const known = new Map((await db.introspection.getTables()).map((table) => [table.name, table.columns]));
    const missing = new Set<string>(DATA_TABLES.filter((table) => known.has(table)));
    let place = '';
    try {
      await db.transaction().execute(async (trx) => {
        // Tables may stand in any order, also before those that they refer to.
        await sql`pragma defer_foreign_keys = on`.execute(trx);
        for await (const { key, index, value } of members()) {
          if (isHeader(key)) continue;
          place = key;
          const table = DATA_TABLES.find((other) => other === key);
          const columns = known.get(key);
          if (!table || !columns) throw refused(name, say('{field} is not known', { field: key }));
          missing.delete(table);
          if (index === undefined) continue;
          place = `${key}[${index}]`;
          const row = closedRow(table, value(), columns, place, (problem) => refused(name, problem));
          await trx.insertInto(table).values(row).execute();
        }
        place = '';
        for (const table of missing) throw refused(name, say('it lacks {field}', { field: table }));
      });
    } catch (error) {
      if (error instanceof UserError) throw error;
      throw refused(name, `${place} ${error instanceof Error ? error.message : String(error)}`.trim(), error);
    }
  } finally {
    await db.destroy();
  }
}

const isHeader = (key: string): boolean => key === 'format' || key === 'tables';

type Read = Pick<Member, 'key' | 'index'> & { readonly value: () => unknown };

/** The members of a file, each read when it is asked for. A table has to be a list. */
async function* membersOf(
  path: string,
  wrong: (problem: string, cause?: unknown) => UserError,
): AsyncGenerator<Read> {
  try {
    for await (const { key, index, text } of jsonMembers(createReadStream(path, 'utf8'))) {
      const at = index === undefined ? key : `${key}[${index}]`;
      const isList = text === undefined || index !== undefined;
      if (isList === isHeader(key))
        throw wrong(
          say('{place} has something else under {field} than belongs there', { place: FORMAT, field: key }),
        );
      const value = () => {
        const read = text === undefined ? { value: undefined } : parseJson(text);
        if ('fault' in read) throw wrong(`${at} ${read.fault}`);
        return read.value;
      };
      yield { key, value, ...(index !== undefined && { index }) };
    }
  } catch (error) {
    throw error instanceof NotMembers ? wrong(`${error.at} ${error.message}`.trim(), error) : error;
  }
}

/** @returns the last change of the tables that a file is of */
async function tablesStated(members: AsyncIterable<Read>, name: string): Promise<string> {
  const header = new Map<string, unknown>();
  for await (const { key, value } of members) {
    if (isHeader(key)) header.set(key, value());
    if (header.size === 2) break;
  }
  const tables = header.get('tables');
  for (const field of ['format', 'tables'])
    if (!header.has(field)) throw refused(name, say('it lacks {field}', { field }));
  if (header.get('format') !== FORMAT || typeof tables !== 'string')
    throw refused(name, say('{field} is not known', { field: 'format' }));
  if (!Object.hasOwn(MIGRATIONS, tables)) throw fromNewer(name, tables);
  return tables;
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

type Column = { readonly name: string; readonly dataType: string; readonly isNullable: boolean };

function closedRow(
  table: DataTable,
  given: unknown,
  columns: readonly Column[],
  place: string,
  wrong: (problem: string) => UserError,
): Row {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw wrong(say('{place} is no row of a table', { place }));
  const row = given as Readonly<Record<string, unknown>>;
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
