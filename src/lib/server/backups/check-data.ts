import { Afterwards } from '../../planning/model/afterwards.ts';
import { say } from '../../texts/say.ts';
import { sql } from 'kysely';
import { reading, type Database } from '../database/open-database.ts';
import { DATA_TABLES, WITH_VERSIONS } from '../database/replace-data.ts';
import { UserError } from '../errors.ts';
import { KitchenRepository } from '../kitchen-repository.ts';
import { held } from '../ledger.ts';
import { SettingsRepository } from '../settings-repository.ts';
import { ShelfRepository } from '../shelf-repository.ts';
import { parseStored } from '../stored-json.ts';
import { TripRepository } from '../trip-repository.ts';

const never = () => '';
/** More changes than any record sees. Versions go on from those of a copy that is put back, and have to stay whole numbers. */
const MOST_VERSION = 2 ** 40;
/** SQLite keeps 64 bits of a whole number, and its driver hands over none that JavaScript cannot. */
const MOST_WHOLE = Number.MAX_SAFE_INTEGER;

/**
 * Reads everything of a SQLite database as the pages do, and adds up its ledger.
 *
 * @param name what the user calls it
 * @throws UserError `Refused` with the first thing that is wrong
 */
export async function checkData(db: Database, name: string): Promise<void> {
  const refuse = (problem: string) =>
    new UserError(
      'Refused',
      say('"{name}" cannot be used: {problem} Nothing was changed. Choose another copy.', { name, problem }),
    );
  const columnsOf = new Map(
    (await db.introspection.getTables()).map(({ name: of, columns }) => [of, columns]),
  );
  await reading(db, async (trx) => {
    for (const table of DATA_TABLES) {
      const tooLarge = (columnsOf.get(table) ?? []).map(
        (column) =>
          sql<boolean>`typeof(${sql.ref(column.name)}) = 'integer' and ${sql.ref(column.name)} not between ${-MOST_WHOLE} and ${MOST_WHOLE}`,
      );
      const odd = await trx
        .selectFrom(table)
        .select(sql`1`.as('found'))
        .where((eb) => eb.or(tooLarge))
        .executeTakeFirst();
      if (odd)
        throw refuse(say('its table {table} has a whole number too large to calculate with.', { table }));
    }
    for (const table of WITH_VERSIONS) {
      const odd = await trx
        .selectFrom(table)
        .select(sql`1`.as('found'))
        .where((eb) => eb.or([eb('version', '<', 0), eb('version', '>', MOST_VERSION)]))
        .executeTakeFirst();
      if (odd)
        throw refuse(say('its table {table} has a version that no count of changes reaches.', { table }));
    }
  });
  try {
    await readAll(db);
  } catch (error) {
    throw error instanceof UserError ? refuse(error.message) : error;
  }
  await reading(db, async (trx) => {
    const { rows: loose } = await sql<{ table: string }>`pragma foreign_key_check`.execute(trx);
    if (loose[0]) throw refuse(say('its table {table} refers to what is not there.', loose[0]));
    const overdrawn = await trx
      .selectFrom('ledger')
      .innerJoin('lots', 'lots.id', 'ledger.lotId')
      .select('lots.code')
      .groupBy(['ledger.lotId', 'ledger.tripId'])
      .having((eb) => eb.or([held('set-aside'), held('packed')].map((left) => eb(left, '<', 0))))
      .union(
        trx
          .selectFrom('ledger')
          .innerJoin('lots', 'lots.id', 'ledger.lotId')
          .select('lots.code')
          .groupBy('ledger.lotId')
          .having(held('shelf'), '<', 0),
      )
      .executeTakeFirst();
    if (overdrawn) throw refuse(say('its ledger takes more of the lot "{code}" than there was.', overdrawn));
  });
}

async function readAll(db: Database): Promise<void> {
  const kitchen = new KitchenRepository(db, never);
  const settings = new SettingsRepository(db);
  await new ShelfRepository(db, never).listLots();
  await new TripRepository(db, never).listTrips();
  for (const records of [kitchen.recipes, kitchen.batches, kitchen.foods]) await records.list();
  await settings.get();
  await settings.getKitchen();
  const said = await reading(db, (trx) =>
    trx.selectFrom('trips').select(['name', 'afterwards']).where('afterwards', 'is not', null).execute(),
  );
  for (const { name, afterwards } of said)
    parseStored(Afterwards, afterwards ?? '', () => say('Feedback on the trip "{name}"', { name }));
}
