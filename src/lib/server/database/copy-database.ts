import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import { sql, type Transaction } from 'kysely';
import { UserError } from '../errors.ts';
import { held, wrongBalances } from '../ledger.ts';
import type { Place } from '../../ledger-kinds.ts';
import { isOnPostgres } from './migrations.ts';
import { reading, writing, type Database } from './transactions.ts';
import { TABLE_KEYS, type KeptTable, type Tables } from './tables.ts';

/** A lot has 24 columns, and SQLite takes at most 32766 values in one statement (sqlite.org/limits.html). */
const ROWS_AT_ONCE = 1000;
/** A picture may have megabytes. */
const PHOTOS_AT_ONCE = 10;

const NAMES = Object.keys(TABLE_KEYS) as KeptTable[];
const PLACES = ['outside', 'shelf', 'set-aside', 'packed'] as const satisfies Place[];

/** What a database holds, to be compared with another one. */
export type Contents<Name extends KeptTable = KeptTable> = {
  /** Rows by table. */
  readonly rows: Readonly<Record<Name, number>>;
  /** Pouches of all lots, by place; outside is below 0 by as many as came from there. */
  readonly pouches: Readonly<Record<Place, number>>;
  /** Where the pouches of each lot are, as SHA-256. */
  readonly balances: string;
  /** Every row of each table, as SHA-256. */
  readonly digests: Readonly<Record<Name, string>>;
};

export type Row = Readonly<Record<string, string | number | null>>;

/**
 * Copies everything that is stored, from one database to an empty one, of either kind. It lands whole or not at
 * all: before it is kept, it is read back and compared, row by row and pouch by pouch. Whoever changes the first one meanwhile changes nothing of the copy.
 *
 * @returns what both hold
 * @throws UserError `Refused` where the other one is not empty; Error where the copy differs
 */
export function copyDatabase(from: Database, to: Database): Promise<Contents> {
  return reading(from, async (source) => {
    const original = await contentsOf(source);
    return writing(to, async (target) => {
      const { rows } = await contentsOf(target);
      const filled = NAMES.filter((name) => rows[name] > 0);
      if (filled.length > 0)
        throw new UserError(
          'Refused',
          `Nothing was copied, as there is something already: ${filled.map((name) => `${name} (${rows[name]})`).join(', ')}. Copy to an empty folder or database.`,
        );
      await fill(target, source, NAMES, original);
      return original;
    });
  });
}

/**
 * Within a change: copies tables into empty ones, and compares.
 *
 * @param original what the source holds of them
 * @throws Error where the copy differs; the change must then be rolled back
 */
export async function fill<Name extends KeptTable>(
  target: Transaction<Tables>,
  source: Transaction<Tables>,
  names: readonly Name[],
  original: Contents<Name>,
): Promise<void> {
  for (const name of names as readonly KeptTable[])
    for await (const part of rowsOf(source, name)) await target.insertInto(name).values(part).execute();
  if (isOnPostgres(target)) await countOn(target);
  const wrong = differences(names, original, await contentsOf(target, names));
  if ((await wrongBalances(target)).length > 0) wrong.push('the kept counts of the lots');
  if (wrong.length > 0)
    throw new Error(`the copy would differ from the original in ${wrong.join(', ')}; nothing was kept`);
}

/** Counts, sums and digests of what is stored in some tables, the ledger among them, or in all. */
export async function contentsOf(trx: Transaction<Tables>): Promise<Contents>;
export async function contentsOf<Name extends KeptTable>(
  trx: Transaction<Tables>,
  names: readonly Name[],
): Promise<Contents<Name>>;
export async function contentsOf(
  trx: Transaction<Tables>,
  names: readonly KeptTable[] = NAMES,
): Promise<Contents> {
  const counts: [KeptTable, number][] = [];
  const digests: [KeptTable, string][] = [];
  for (const name of names) {
    const hash = createHash('sha256');
    let count = 0;
    for await (const part of rowsOf(trx, name)) {
      count += part.length;
      for (const row of part) hash.update(`${JSON.stringify(Object.entries(row).sort(byName))}\n`);
    }
    counts.push([name, count]);
    digests.push([name, hash.digest('hex')]);
  }
  const pouches = { outside: 0, shelf: 0, 'set-aside': 0, packed: 0 };
  const balances = createHash('sha256');
  const lots = await trx
    .selectFrom('ledger')
    .select('lotId')
    .select(PLACES.map((place) => held(place).as(place)))
    .groupBy('lotId')
    .orderBy('lotId')
    .execute();
  for (const lot of lots) {
    balances.update(`${JSON.stringify([lot.lotId, ...PLACES.map((place) => lot[place])])}\n`);
    for (const place of PLACES) pouches[place] += lot[place];
  }
  return {
    rows: Object.fromEntries(counts) as Contents['rows'],
    pouches,
    balances: balances.digest('hex'),
    digests: Object.fromEntries(digests) as Contents['digests'],
  };
}

const byName = ([one]: [string, unknown], [other]: [string, unknown]) => (one < other ? -1 : 1);

function differences<Name extends KeptTable>(
  names: readonly Name[],
  one: Contents<Name>,
  other: Contents<Name>,
): string[] {
  return [
    ...names.filter(
      (name) => one.rows[name] !== other.rows[name] || one.digests[name] !== other.digests[name],
    ),
    ...PLACES.filter((place) => one.pouches[place] !== other.pouches[place]),
    ...(one.balances === other.balances ? [] : ['the balances of the lots']),
  ];
}

/** All rows of a table in the order of their keys, part by part, so that memory holds no more than one, and other requests are answered between them. */
export async function* rowsOf(trx: Transaction<Tables>, name: KeptTable): AsyncGenerator<Row[]> {
  const key = sql.ref(TABLE_KEYS[name]);
  let last: Row[string] | undefined;
  for (;;) {
    const after = last === undefined ? sql`` : sql`where ${key} > ${last}`;
    const { rows } = await sql<Row>`
      select * from ${sql.table(name)} ${after} order by ${key} limit ${sql.lit(name === 'photos' ? PHOTOS_AT_ONCE : ROWS_AT_ONCE)}`.execute(
      trx,
    );
    if (rows.length === 0) return;
    yield rows;
    await setImmediate();
    last = rows.at(-1)?.[TABLE_KEYS[name]];
  }
}

/** Counters of PostgreSQL do not see keys that were given with their rows. */
async function countOn(trx: Transaction<Tables>): Promise<void> {
  for (const name of NAMES) {
    const key = TABLE_KEYS[name];
    const { rows } = await sql<{ counter: string | null }>`
      select pg_get_serial_sequence(${`"${name}"`}, ${key}) as counter`.execute(trx);
    const counter = rows[0]?.counter;
    if (typeof counter === 'string')
      await sql`select setval(${counter}, max(${sql.ref(key)})) from ${sql.table(name)} having count(*) > 0`.execute(
        trx,
      );
  }
}
