import type { Transaction } from 'kysely';
import { withdrawFrom, withdrawOnTheWay, type WithdrawnLot } from '../planning/menu/withdraw-lot.ts';
import { throwIntoBin } from './bin.ts';
import type { Tables } from './database/tables.ts';
import { append, type Movement, type Reservation } from './ledger.ts';
import { findTrip, writeTrip } from './trip-repository.ts';

/**
 * Within a change: withdraws a suspect lot. What is set aside or packed comes back on paper, and all that is on the shelf leaves it, each by an entry of its own. Trips that
 * are over stay as they were.
 *
 * @returns the trips that had planned with it, by their ids
 */
export async function withdrawLot(
  trx: Transaction<Tables>,
  at: string,
  { id: lotId, version }: { readonly id: number; readonly version: number },
  lot: WithdrawnLot,
): Promise<string[]> {
  const affected: string[] = [];
  const trips = await trx
    .selectFrom('trips')
    .select('id')
    .where('trip', 'is not', null)
    .where('finishedAt', 'is', null)
    .orderBy('id')
    .execute();
  for (const { id } of trips) {
    const found = await findTrip(trx, id);
    if (!found) continue;
    const { trip, stage } = found.stored;
    const line = found.lines.find((other) => other.lotId === lotId);
    const isListed = trip.menu.some(({ opened }) => opened.some(({ code }) => code === lot.code));
    if (!isListed && !line?.setAside && !line?.packed) continue;
    affected.push(id);
    if (line) await append(trx, at, lot.reason, backFrom(line));
    await writeTrip(
      trx,
      at,
      id,
      stage === 'packed' ? withdrawOnTheWay(trip, lot, line?.eaten ?? 0) : withdrawFrom(trip, lot, []),
    );
  }
  const { onShelf } = (await trx
    .selectFrom('balances')
    .select('onShelf')
    .where('lotId', '=', lotId)
    .executeTakeFirst()) ?? { onShelf: 0 };
  await append(trx, at, lot.reason, [{ kind: 'withdrawn', lotId, pouches: onShelf }]);
  await trx
    .updateTable('lots')
    .set({ withdrawn: lot.reason, version: version + 1 })
    .where('id', '=', lotId)
    .execute();
  await throwIntoBin(trx, at, {
    kind: 'lot',
    recordId: String(lotId),
    name: `${lot.code} ${lot.recipe}`,
    body: JSON.stringify({ reason: lot.reason }),
    version: version + 1,
  });
  return affected;
}

const backFrom = ({ lotId, tripId, setAside, packed }: Reservation): Movement[] => [
  { kind: 'released', lotId, pouches: setAside, tripId },
  { kind: 'unpacked', lotId, pouches: packed, tripId },
];
