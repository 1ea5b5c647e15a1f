import type { Transaction } from 'kysely';
import { withoutMark } from '../planning/menu/withdraw-lot.ts';
import { Trip } from '../planning/model/trip.ts';
import { say } from '../texts/say.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { append } from './ledger.ts';
import { parseStored } from './stored-json.ts';

/**
 * Within a change: puts a withdrawn lot back on the shelf, with the pouches that were taken off. What else was changed of it since stays, and so do the menus of trips: whoever wants it there again plans again.
 *
 * @param lotId the id of the lot, as the bin has it
 * @returns its code
 * @throws UserError `NotFound` where it is not withdrawn any more
 */
export async function reinstateLot(trx: Transaction<Tables>, at: string, lotId: number): Promise<string> {
  const lot = await trx
    .selectFrom('lots')
    .select(['code', 'version'])
    .where('id', '=', lotId)
    .where('withdrawn', 'is not', null)
    .executeTakeFirst();
  if (!lot) throw new UserError('NotFound', say('This lot is not withdrawn any more.'));
  const moved = await trx
    .selectFrom('ledger')
    .select(['kind', (eb) => eb.fn.sum<number>('pouches').as('pouches')])
    .where('lotId', '=', lotId)
    .where('kind', 'in', ['withdrawn', 'reinstated'])
    .groupBy('kind')
    .execute();
  const pouches = moved.reduce(
    (sum, row) => sum + (row.kind === 'withdrawn' ? row.pouches : -row.pouches),
    0,
  );
  await append(trx, at, '', [{ kind: 'reinstated', lotId, pouches }]);
  await trx
    .updateTable('lots')
    .set({ withdrawn: null, version: lot.version + 1 })
    .where('id', '=', lotId)
    .execute();
  await unmark(trx, at, lot.code);
  return lot.code;
}

async function unmark(trx: Transaction<Tables>, at: string, code: string): Promise<void> {
  const rows = await trx
    .selectFrom('trips')
    .select(['id', 'name', 'trip', 'version'])
    .where('trip', 'is not', null)
    .$narrowType<{ trip: string }>()
    .execute();
  for (const { id, name, trip: json, version } of rows) {
    const trip = parseStored(Trip, json, () => say('The trip "{name}"', { name }));
    if (!trip.withdrawn?.some((lot) => lot.code === code)) continue;
    await trx
      .updateTable('trips')
      .set({ trip: JSON.stringify(withoutMark(trip, code)), version: version + 1, updatedAt: at })
      .where('id', '=', id)
      .execute();
  }
}
