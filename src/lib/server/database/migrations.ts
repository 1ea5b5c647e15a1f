import {
  PostgresAdapter,
  sql,
  type ColumnDefinitionBuilder,
  type Kysely,
  type QueryExecutorProvider,
} from 'kysely';
import { Migrator, type Migration } from 'kysely/migration';
import { lotKeys } from '../../lot-keys.ts';
import type { Tables } from './tables.ts';

/** By name, in the order of the names. What has been released is never edited: a change is a new migration. */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-shelf-ledger-trips': { up: shelfLedgerTrips },
  '0002-lots-stir-and-batch': { up: lotsStirAndBatch },
  '0003-kitchen-records': { up: kitchenRecords },
  '0004-trail-notes': { up: trailNotes },
  '0005-bin': { up: bin },
  '0006-access': { up: access },
  '0007-plan-jobs': { up: planJobs },
  '0008-balances': { up: balances },
  '0009-lot-keys': { up: lotKeyColumns },
  '0010-lot-details': { up: lotDetails },
  '0011-upload-repairs': { up: uploadRepairs },
  '0012-withdrawn-lots': { up: withdrawnLots },
  '0013-note-prices': { up: notePrices },
  '0014-photos': { up: photos },
};

/** @param schema where the tables are, if not where those without one are looked for */
export const migratorOf = (db: Kysely<Tables>, schema?: string): Migrator =>
  new Migrator({
    db,
    provider: { getMigrations: async () => MIGRATIONS },
    ...(schema !== undefined && { migrationTableSchema: schema }),
  });

/** Whether a database is of PostgreSQL. */
export const isOnPostgres = (db: QueryExecutorProvider): boolean =>
  db.getExecutor().adapter instanceof PostgresAdapter;

/**
 * Types of columns where the two databases differ. SQLite compares text byte by byte and has whole numbers of 64 bits; PostgreSQL is
 * told to do the same, whatever the language of its database, so that both sort and count alike.
 */
function columnTypes(db: Kysely<unknown>) {
  return isOnPostgres(db)
    ? {
        text: sql`text collate "C"`,
        whole: 'bigint' as const,
        counter: (column: ColumnDefinitionBuilder) => column.generatedByDefaultAsIdentity().primaryKey(),
      }
    : {
        text: 'text' as const,
        whole: 'integer' as const,
        counter: (column: ColumnDefinitionBuilder) => column.primaryKey().autoIncrement(),
      };
}

const PLACES = sql`('outside', 'shelf', 'set-aside', 'packed')`;

async function shelfLedgerTrips(db: Kysely<unknown>): Promise<void> {
  const { text, whole, counter } = columnTypes(db);
  await db.schema
    .createTable('lots')
    .addColumn('id', whole, counter)
    .addColumn('code', text, (column) => column.notNull().unique())
    .addColumn('recipe', text, (column) => column.notNull())
    .addColumn('mealKinds', text, (column) => column.notNull())
    .addColumn('sealedOn', text, (column) => column.notNull())
    .addColumn('bestBefore', text, (column) => column.notNull())
    .addColumn('servingsPerPouch', 'double precision', (column) => column.notNull())
    .addColumn('dryWeightG', 'double precision', (column) => column.notNull())
    .addColumn('energyKcal', 'double precision', (column) => column.notNull())
    .addColumn('proteinG', 'double precision')
    .addColumn('fatG', 'double precision')
    .addColumn('carbohydrateG', 'double precision')
    .addColumn('waterMl', 'double precision', (column) => column.notNull())
    .addColumn('waterKind', text, (column) => column.notNull())
    .addColumn('steepMin', 'double precision', (column) => column.notNull())
    .addColumn('tareG', 'double precision', (column) => column.notNull())
    .addColumn('volumeMl', 'double precision')
    .addColumn('allergens', text)
    .addColumn('diets', text, (column) => column.notNull())
    .addColumn('costMinor', whole)
    .addColumn('note', text, (column) => column.notNull())
    .addColumn('version', whole, (column) => column.notNull())
    .execute();

  await db.schema
    .createTable('trips')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('trip', text)
    .addColumn('version', whole, (column) => column.notNull())
    .addColumn('updatedAt', text, (column) => column.notNull())
    .execute();

  await db.schema
    .createTable('ledger')
    .addColumn('id', whole, counter)
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('lotId', whole, (column) => column.notNull().references('lots.id'))
    .addColumn('tripId', text, (column) => column.references('trips.id'))
    .addColumn('fromPlace', text, (column) => column.notNull())
    .addColumn('toPlace', text, (column) => column.notNull())
    .addColumn('pouches', whole, (column) => column.notNull())
    .addColumn('note', text, (column) => column.notNull())
    .addCheckConstraint('ledger_pouches', sql`"pouches" > 0`)
    .addCheckConstraint(
      'ledger_places',
      sql`"fromPlace" in ${PLACES} and "toPlace" in ${PLACES} and "fromPlace" <> "toPlace"`,
    )
    .addCheckConstraint(
      'ledger_trip',
      sql`("tripId" is not null) = ("fromPlace" in ('set-aside', 'packed') or "toPlace" in ('set-aside', 'packed'))`,
    )
    .execute();
  // Both hold every column that a balance needs, so sums never read the table itself.
  await db.schema
    .createIndex('ledger_by_lot')
    .on('ledger')
    .columns(['lotId', 'tripId', 'fromPlace', 'toPlace', 'pouches'])
    .execute();
  await db.schema
    .createIndex('ledger_by_trip')
    .on('ledger')
    .columns(['tripId', 'lotId', 'fromPlace', 'toPlace', 'pouches'])
    .where('tripId', 'is not', null)
    .execute();
  await keepFromChanging(db);

  await db.schema
    .createTable('settings')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('settings', text, (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('uploads')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('fileName', text, (column) => column.notNull())
    .addColumn('bytes', whole, (column) => column.notNull())
    .addColumn('keptAt', text, (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('mappings')
    .addColumn('headerSignature', text, (column) => column.primaryKey())
    .addColumn('mapping', text, (column) => column.notNull())
    .execute();
}

/** Lets nobody change or delete what is in the ledger. */
export async function keepFromChanging(db: QueryExecutorProvider): Promise<void> {
  const told = sql.lit('the ledger is only ever appended to');
  if (isOnPostgres(db)) {
    await sql`create function ledger_is_kept() returns trigger language plpgsql
      as $$ begin raise exception using message = ${told}; end $$`.execute(db);
    await sql`create trigger ledger_kept before update or delete or truncate on "ledger"
      for each statement execute function ledger_is_kept()`.execute(db);
  } else
    for (const change of ['update', 'delete'])
      await sql`create trigger ${sql.ref(`ledger_no_${change}`)} before ${sql.raw(change)} on "ledger"
        begin select raise(abort, ${told}); end`.execute(db);
}

async function lotsStirAndBatch(db: Kysely<unknown>): Promise<void> {
  const { text } = columnTypes(db);
  await db.schema.alterTable('lots').addColumn('stirAfterMin', 'double precision').execute();
  await db.schema.alterTable('lots').addColumn('batchId', text).execute();
}

async function kitchenRecords(db: Kysely<unknown>): Promise<void> {
  const { text, whole } = columnTypes(db);
  await db.schema
    .createTable('records')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('body', text, (column) => column.notNull())
    .addColumn('version', whole, (column) => column.notNull())
    .addColumn('updatedAt', text, (column) => column.notNull())
    .addUniqueConstraint('records_name', ['kind', 'name'])
    .execute();
}

async function trailNotes(db: Kysely<unknown>): Promise<void> {
  const { text, whole, counter } = columnTypes(db);
  await db.schema
    .createTable('trailNotes')
    .addColumn('seq', whole, counter)
    .addColumn('id', text, (column) => column.notNull().unique())
    .addColumn('tripId', text, (column) => column.notNull().references('trips.id'))
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('code', text, (column) => column.notNull())
    .addColumn('pouches', whole, (column) => column.notNull())
    .addColumn('servings', 'double precision')
    .addColumn('text', text, (column) => column.notNull())
    .addColumn('outcome', text, (column) => column.notNull())
    .addColumn('message', text, (column) => column.notNull())
    .addColumn('settledAt', text)
    .addColumn('remark', text, (column) => column.notNull())
    .execute();
  await db.schema.createIndex('trailNotes_by_trip').on('trailNotes').columns(['tripId', 'seq']).execute();

  await db.schema.alterTable('trips').addColumn('finishedAt', text).execute();
  await db.schema.alterTable('trips').addColumn('afterwards', text).execute();
  // Trips whose pouches were eaten, with none promised any more, were over before there was a word for it.
  await sql`update "trips" set "finishedAt" = "updatedAt" where "id" in (
    select "tripId" from "ledger" where "tripId" is not null group by "tripId"
    having sum(case when "kind" = 'eaten' then 1 else 0 end) > 0
    and sum(case when "toPlace" in ('set-aside', 'packed') then "pouches" else 0 end)
      = sum(case when "fromPlace" in ('set-aside', 'packed') then "pouches" else 0 end))`.execute(db);
}

async function bin(db: Kysely<unknown>): Promise<void> {
  const { text, whole } = columnTypes(db);
  await db.schema
    .createTable('bin')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('recordId', text, (column) => column.notNull())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('body', text, (column) => column.notNull())
    .addColumn('version', whole, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .execute();
}

async function access(db: Kysely<unknown>): Promise<void> {
  const { text, whole } = columnTypes(db);
  await db.schema
    .createTable('sessions')
    .addColumn('tokenHash', text, (column) => column.primaryKey())
    .addColumn('passphraseId', text, (column) => column.notNull())
    .addColumn('startedAt', text, (column) => column.notNull())
    .addColumn('lastSeenAt', text, (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('readLinks')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('tokenHash', text, (column) => column.notNull().unique())
    .addColumn('forWhom', text, (column) => column.notNull())
    .addColumn('tripId', text, (column) => column.references('trips.id'))
    .addColumn('mayNote', whole, (column) => column.notNull())
    .addColumn('givenAt', text, (column) => column.notNull())
    .addColumn('expiresAt', text, (column) => column.notNull())
    .execute();
}

async function planJobs(db: Kysely<unknown>): Promise<void> {
  const { text, whole } = columnTypes(db);
  await db.schema
    .createTable('planJobs')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('tripId', text)
    .addColumn('asked', text, (column) => column.notNull())
    .addColumn('askedAt', text, (column) => column.notNull())
    .addColumn('waitedAt', text, (column) => column.notNull())
    .addColumn('state', text, (column) => column.notNull())
    .addColumn('claimedBy', text)
    .addColumn('beatAt', text)
    .addColumn('progress', text)
    .addColumn('isStopped', whole, (column) => column.notNull())
    .addColumn('outcome', text)
    .execute();
}

async function balances(db: Kysely<unknown>): Promise<void> {
  const { whole } = columnTypes(db);
  await db.schema
    .createTable('balances')
    .addColumn('lotId', whole, (column) => column.primaryKey())
    .addColumn('onShelf', whole, (column) => column.notNull())
    .addColumn('setAside', whole, (column) => column.notNull())
    .addColumn('packed', whole, (column) => column.notNull())
    .execute();
  const columns = sql`"lotId", "onShelf", "setAside", "packed"`;
  const moved = (place: string, entry = sql``) => sql`case ${sql.lit(place)}
    when ${entry}"toPlace" then ${entry}"pouches" when ${entry}"fromPlace" then -${entry}"pouches" else 0 end`;
  const sums = sql`"lotId", sum(${moved('shelf')}), sum(${moved('set-aside')}), sum(${moved('packed')})`;
  const added = sql`on conflict ("lotId") do update set "onShelf" = "balances"."onShelf" + excluded."onShelf",
    "setAside" = "balances"."setAside" + excluded."setAside", "packed" = "balances"."packed" + excluded."packed"`;
  await sql`insert into "balances" (${columns}) select ${sums} from "ledger" group by "lotId"`.execute(db);
  // By the database itself, so that nothing can enter the ledger without being counted.
  if (isOnPostgres(db)) {
    await sql`create function balances_are_kept() returns trigger language plpgsql as $$ begin
      insert into "balances" (${columns}) select ${sums} from entered group by "lotId" ${added};
      return null; end $$`.execute(db);
    await sql`create trigger ledger_balances after insert on "ledger" referencing new table as entered
      for each statement execute function balances_are_kept()`.execute(db);
  } else {
    const entry = sql`new.`;
    await sql`create trigger "ledger_balances" after insert on "ledger" begin
      insert into "balances" (${columns}) values (new."lotId", ${moved('shelf', entry)},
        ${moved('set-aside', entry)}, ${moved('packed', entry)}) ${added}; end`.execute(db);
  }
}

const LOTS_AT_ONCE = 500;

/** Filled by the functions that every lot that is written goes through. Who changes them fills the columns anew, in a migration of its own. */
async function lotKeyColumns(db: Kysely<unknown>): Promise<void> {
  const { text } = columnTypes(db);
  for (const name of ['searchKey', 'codeKey', 'recipeKey'])
    await db.schema
      .alterTable('lots')
      .addColumn(name, text, (column) => column.notNull().defaultTo(''))
      .execute();
  type Lot = { id: number; code: string; recipe: string; note: string };
  for (let after = 0; ;) {
    const { rows } = await sql<Lot>`select "id", "code", "recipe", "note" from "lots" where "id" > ${after}
      order by "id" limit ${sql.lit(LOTS_AT_ONCE)}`.execute(db);
    const last = rows.at(-1);
    if (!last) break;
    const values = rows.map((lot) => {
      const { searchKey, codeKey, recipeKey } = lotKeys(lot);
      return sql`(${lot.id}, ${searchKey}, ${codeKey}, ${recipeKey})`;
    });
    await sql`update "lots" set "searchKey" = keys.column2, "codeKey" = keys.column3, "recipeKey" = keys.column4
      from (values ${sql.join(values)}) as keys where "lots"."id" = cast(keys.column1 as bigint)`.execute(db);
    after = last.id;
  }
  await db.schema
    .createIndex('lots_by_best_before')
    .on('lots')
    .columns(['bestBefore', 'codeKey', 'code'])
    .execute();
}

async function lotDetails(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('lots').addColumn('details', columnTypes(db).text).execute();
}

async function uploadRepairs(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('uploads').addColumn('repairs', columnTypes(db).text).execute();
}

async function withdrawnLots(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('lots').addColumn('withdrawn', columnTypes(db).text).execute();
}

async function notePrices(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('trailNotes').addColumn('paidMinor', columnTypes(db).whole).execute();
}

async function photos(db: Kysely<unknown>): Promise<void> {
  const { text, whole } = columnTypes(db);
  await db.schema
    .createTable('photos')
    .addColumn('id', text, (column) => column.primaryKey())
    .addColumn('mediaType', text, (column) => column.notNull())
    .addColumn('width', whole, (column) => column.notNull())
    .addColumn('height', whole, (column) => column.notNull())
    .addColumn('base64', text, (column) => column.notNull())
    .addColumn('keptAt', text, (column) => column.notNull())
    .execute();
}
