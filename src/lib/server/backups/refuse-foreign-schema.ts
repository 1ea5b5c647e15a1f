import { rm } from 'node:fs/promises';
import { DatabaseSync } from 'node:sqlite';
import { Kysely } from 'kysely';
import { DEFAULT_MIGRATION_TABLE } from 'kysely/migration';
import { say } from '../../texts/say.ts';
import { migratorOf, MIGRATIONS } from '../database/migrations.ts';
import type { Database } from '../database/open-database.ts';
import { sqliteDialect } from '../database/sqlite-dialect.ts';
import { UserError } from '../errors.ts';
import { fromNewer, noCopy } from './no-copy.ts';

/** A table, index, trigger or view, with the text that makes it. */
type Part = { readonly kind: string; readonly name: string; readonly says: string };

/**
 * A database of SQLite brings its own triggers, views and rules, and whoever reads or changes it runs them: one that never ends would stop the program. Taken are
 * those that the changes of this program make, all of them, and nothing else.
 *
 * @param path of a file that is not trusted, in a folder where others can be made
 * @param name what the user calls it
 * @throws UserError `Refused` where it is of another program or a newer version, naming the part that is not ours or missing; what SQLite says where the file
 *   cannot be read
 */
export async function refuseForeignSchema(path: string, name: string): Promise<void> {
  const changes = Object.keys(MIGRATIONS);
  const latest = await partsAfter(changes.at(-1)!, path);
  const refuseOdd = (parts: readonly Part[], expected: readonly Part[]) => {
    const odd = firstWithout(expected, parts);
    if (odd) throw hasOdd(name, odd);
  };
  const foreign = new DatabaseSync(path, { readOnly: true });
  let done: string[];
  let parts: Part[];
  try {
    parts = partsOf(foreign);
    const list = parts.filter((part) => part.name === DEFAULT_MIGRATION_TABLE);
    if (list.length === 0) throw noCopy(name);
    // Even the list of changes could be a view, or work out its names without end.
    refuseOdd(list, latest);
    done = foreign
      .prepare(`select name from ${DEFAULT_MIGRATION_TABLE} order by name limit 1000`)
      .all()
      .map((row) => String(row['name']));
  } finally {
    foreign.close();
  }
  const last = done.at(-1);
  const newer = done.find((change) => !Object.hasOwn(MIGRATIONS, change));
  if (newer !== undefined) throw fromNewer(name, newer);
  if (last === undefined) throw noCopy(name);
  const expected = last === changes.at(-1) ? latest : await partsAfter(last, path);
  refuseOdd(parts, expected);
  const missing = firstWithout(parts, expected);
  if (missing) throw lacks(name, missing);
}

/** @returns the first of some parts that is not among others */
function firstWithout(others: readonly Part[], parts: readonly Part[]): Part | undefined {
  const known = new Set(others.map(keyOf));
  return parts.find((part) => !known.has(keyOf(part)));
}

const hasOdd = (name: string, { kind, name: part }: Part): UserError =>
  new UserError(
    'Refused',
    say(
      '"{name}" has the {kind} "{part}", which Ridgelarder does not make, so it was not opened. Nothing was changed. Is it the right file?',
      { name, kind, part: part.slice(0, LONGEST_NAMED) },
    ),
  );

/** Without a trigger, what is kept by it would be wrong from then on, and without an index two of one code could be. */
const lacks = (name: string, { kind, name: part }: Part): UserError =>
  new UserError(
    'Refused',
    say(
      '"{name}" lacks the {kind} "{part}", without which counts can go wrong, so it was not opened. Nothing was changed. Choose another copy.',
      { name, kind, part },
    ),
  );

const LONGEST_NAMED = 80;
/** So many parts at least are too many. */
const MOST_PARTS = 1000;
/** More characters than the longest part of ours has. */
const LONGEST_PART = 10_000;

/** @returns what a database consists of after a change of the program; it is made beside a file for that */
async function partsAfter(change: string, beside: string): Promise<Part[]> {
  const path = `${beside}.expected`;
  const db: Database = new Kysely({ dialect: sqliteDialect(path, 0) });
  try {
    const { error } = await migratorOf(db).migrateTo(change);
    if (error) throw error;
  } finally {
    await db.destroy();
  }
  const made = new DatabaseSync(path);
  try {
    return partsOf(made);
  } finally {
    made.close();
    for (const end of ['', '-wal', '-shm']) await rm(`${path}${end}`, { force: true });
  }
}

/** Indexes that SQLite makes for its own rules have no text. */
const partsOf = (database: DatabaseSync): Part[] =>
  database
    .prepare(
      `select type as kind, name, substr(sql, 1, ${LONGEST_PART}) as says from sqlite_master where sql is not null limit ${MOST_PARTS}`,
    )
    .all()
    .map((row) => ({ kind: String(row['kind']), name: String(row['name']), says: String(row['says']) }));

/** Letters, quotation marks and blanks may differ with the version that wrote them. */
const keyOf = ({ kind, name, says }: Part): string =>
  `${kind} ${name} ${says.toLowerCase().replace(/[\s"`[\]]+/g, '')}`;
