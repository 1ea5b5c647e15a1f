import { sql, type Transaction } from 'kysely';
import { contentsOf, fill } from './copy-database.ts';
import { isOnPostgres, keepFromChanging } from './migrations.ts';
import { reading, writing, type Database } from './open-database.ts';
import type { KeptTable, Tables } from './tables.ts';

/** The data itself. Who is let in, and uploads that wait for their import, belong to a place and stay in it. */
export const DATA_TABLES = [
  'lots',
  'trips',
  'ledger',
  'trailNotes',
  'settings',
  'records',
  'bin',
  'photos',
  'mappings',
] as const satisfies KeptTable[];

/** Tables whose rows count their changes. */
export const WITH_VERSIONS = ['lots', 'trips', 'records', 'bin'] as const;

/**
 * Puts the data of one database in the place of another's, in one change: it lands whole, compared row by row and pouch by pouch, or not at all.
 * Versions go on above those that were there, so that no page opened before can be saved over what came. Links to trips that are gone with it go too.
 *
 * @param before what has to be done when nobody else writes any more and nothing is changed yet; on PostgreSQL it may be done more than once
 * @throws what `before` throws; Error where the copy would differ; UserError as `writing`
 */
export function replaceData(from: Database, to: Database, before: () => Promise<void>): Promise<void> {
  return reading(from, async (source) => {
    const original = await contentsOf(source, DATA_TABLES);
    await writing(to, async (target) => {
      await before();
      // Whatever the copy counted to: added to that, versions would double with each copy that also holds something new.
      const version = 1 + (await highestVersion(target));
      const links = await target.selectFrom('readLinks').selectAll().execute();
      await target.deleteFrom('readLinks').execute();
      await unlockLedger(target);
      for (const name of DATA_TABLES.toReversed()) await target.deleteFrom(name).execute();
      await fill(target, source, DATA_TABLES, original);
      await lockLedger(target);
      for (const name of WITH_VERSIONS)
        await target.updateTable(name).set({ version }).where('version', '<', version).execute();
      const trips = new Set((await target.selectFrom('trips').select('id').execute()).map(({ id }) => id));
      for (const link of links)
        if (link.tripId === null || trips.has(link.tripId))
          await target.insertInto('readLinks').values(link).execute();
    });
  });
}

async function highestVersion(trx: Transaction<Tables>): Promise<number> {
  let highest = 0;
  for (const name of WITH_VERSIONS) {
    const row = await trx
      .selectFrom(name)
      .select((eb) => eb.fn.max('version').as('highest'))
      .executeTakeFirst();
    highest = Math.max(highest, row?.highest ?? 0);
  }
  return highest;
}

/** The ledger is only ever appended to, but where all of it is replaced. Balances begin again at nothing then. */
async function unlockLedger(trx: Transaction<Tables>): Promise<void> {
  await trx.deleteFrom('balances').execute();
  if (isOnPostgres(trx)) await sql`alter table "ledger" disable trigger ledger_kept`.execute(trx);
  else
    for (const change of ['update', 'delete'])
      await sql`drop trigger ${sql.ref(`ledger_no_${change}`)}`.execute(trx);
}

async function lockLedger(trx: Transaction<Tables>): Promise<void> {
  if (isOnPostgres(trx)) await sql`alter table "ledger" enable trigger ledger_kept`.execute(trx);
  else await keepFromChanging(trx);
}
