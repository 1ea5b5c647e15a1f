import { sql, type RawBuilder, type Transaction } from 'kysely';
import { ROUTES, type EntryKind, type Place, type Stage } from '../ledger-kinds.ts';
import { inParts } from './in-parts.ts';
import type { Tables } from './database/tables.ts';
import { text } from '../texts/say.ts';

/*
 * The ledger says where every pouch went. A place holds what came in minus what went out. The database adds up each lot's entries as they are written
 * (`balances`); whether that is what they add up to is looked at when the program starts, and where data is copied or put back.
 */

/** One line of a lot's history. `tripName` is there where the entry belongs to a trip, even to one deleted since. */
export type LedgerEntry = {
  readonly id: number;
  /** Instant, ISO 8601. */
  readonly at: string;
  readonly kind: EntryKind;
  readonly lotId: number;
  readonly tripId: string | null;
  readonly tripName: string | null;
  readonly fromPlace: Place;
  readonly toPlace: Place;
  readonly pouches: number;
  readonly note: string;
};

/** Note of every entry that came from a note on the trail. */
export const TRAIL_NOTE = text('noted on the trail');

/** A movement to be written. Only `counted` may be negative: pouches that a count found missing. Zero writes nothing. */
export type Movement = {
  readonly kind: EntryKind;
  readonly lotId: number;
  readonly pouches: number;
  readonly tripId?: string;
};

/**
 * Appends movements. The caller has checked that there are enough pouches and told the user where not; here it is
 * made sure.
 *
 * @throws Error where a place would hold less than nothing; the transaction must then be rolled back
 */
export async function append(
  trx: Transaction<Tables>,
  at: string,
  note: string,
  movements: readonly Movement[],
): Promise<void> {
  const entries = movements
    .filter(({ pouches }) => pouches !== 0)
    .map(({ kind, lotId, pouches, tripId }) => {
      const [from, to] = ROUTES[kind];
      const [fromPlace, toPlace]: [Place, Place] =
        kind === 'counted' && pouches < 0 ? [to, from] : [from, to];
      const moved = kind === 'counted' ? Math.abs(pouches) : pouches;
      return { at, kind, lotId, tripId: tripId ?? null, fromPlace, toPlace, pouches: moved, note };
    });
  for await (const part of inParts(entries)) await trx.insertInto('ledger').values(part).execute();

  const drawnOn = new Set(
    entries.filter(({ fromPlace }) => fromPlace !== 'outside').map(({ lotId }) => lotId),
  );
  for await (const lotIds of inParts([...drawnOn])) {
    const overdrawn = await trx
      .selectFrom('ledger')
      .select('lotId')
      .where('lotId', 'in', lotIds)
      .groupBy(['lotId'])
      .having(held('shelf'), '<', 0)
      .union(
        trx
          .selectFrom('ledger')
          .select('lotId')
          .where('lotId', 'in', lotIds)
          .where('tripId', 'is not', null)
          .groupBy(['lotId', 'tripId'])
          .having((eb) => eb.or([eb(held('set-aside'), '<', 0), eb(held('packed'), '<', 0)])),
      )
      .execute();
    if (overdrawn.length > 0)
      throw new Error(
        `the ledger would be overdrawn for the lots ${overdrawn.map(({ lotId }) => lotId).join(', ')}`,
      );
  }
}

/** SQL: pouches that the entries of a group have left in a place; 0 for no entries. Outside is below 0 but where a trip ate them. */
export function held(place: Place): RawBuilder<number> {
  const name = sql.lit(place);
  return sql<number>`cast(coalesce(sum(case ${name}
    when ${sql.ref('ledger.toPlace')} then ${sql.ref('ledger.pouches')}
    when ${sql.ref('ledger.fromPlace')} then -${sql.ref('ledger.pouches')}
    else 0 end), 0) as bigint)`;
}

const broughtBack = sql<number>`cast(coalesce(sum(case ${sql.ref('ledger.kind')}
  when 'brought back' then ${sql.ref('ledger.pouches')} else 0 end), 0) as bigint)`;

/** Where the pouches of a lot are that a trip was promised. */
export type Reservation = {
  readonly tripId: string;
  readonly lotId: number;
  readonly code: string;
  /** At home, for this trip. */
  readonly setAside: number;
  readonly packed: number;
  readonly eaten: number;
  /** Brought back from the trip: on the shelf, or wherever they went from there. */
  readonly broughtBack: number;
};

/** What a trip has been promised, has with it and has eaten, by code. */
export function reservations(trx: Transaction<Tables>, tripId: string): Promise<Reservation[]> {
  return trx
    .selectFrom('ledger')
    .select([
      'ledger.tripId',
      'ledger.lotId',
      // Looked up for what is left of the entries: joined before, PostgreSQL would read all lots for a few of them.
      (eb) => eb.selectFrom('lots').select('lots.code').whereRef('lots.id', '=', 'ledger.lotId').as('code'),
      held('set-aside').as('setAside'),
      held('packed').as('packed'),
      held('outside').as('eaten'),
      broughtBack.as('broughtBack'),
    ])
    .groupBy(['ledger.tripId', 'ledger.lotId'])
    .having((eb) =>
      eb.or(
        [held('set-aside'), held('packed'), held('outside'), broughtBack].map((left) => eb(left, '>', 0)),
      ),
    )
    .where('ledger.tripId', '=', tripId)
    .orderBy('code')
    .$narrowType<{ tripId: string; code: string }>()
    .execute();
}

/** What the entries have left of each lot in each place, added up: what `balances` has to hold. */
export const ledgerBalances = (trx: Transaction<Tables>) =>
  trx
    .selectFrom('ledger')
    .select([
      'lotId',
      held('shelf').as('onShelf'),
      held('set-aside').as('setAside'),
      held('packed').as('packed'),
    ])
    .groupBy('lotId');

/** @returns ids of lots whose balances are not what their entries add up to; there are none unless the database was changed from outside */
export async function wrongBalances(trx: Transaction<Tables>): Promise<number[]> {
  const kept = (column: 'onShelf' | 'setAside' | 'packed') =>
    sql<number>`cast(-${sql.ref(`balances.${column}`)} as bigint)`.as(column);
  const rows = await trx
    .selectFrom(
      ledgerBalances(trx)
        .unionAll((eb) =>
          eb
            .selectFrom('balances')
            .select('lotId')
            .select([kept('onShelf'), kept('setAside'), kept('packed')]),
        )
        .as('places'),
    )
    .select('lotId')
    .groupBy('lotId')
    .having((eb) =>
      eb.or((['onShelf', 'setAside', 'packed'] as const).map((place) => eb(eb.fn.sum(place), '<>', 0))),
    )
    .orderBy('lotId')
    .execute();
  return rows.map(({ lotId }) => lotId);
}

/** Adds up the entries of some lots anew. */
export async function mendBalances(trx: Transaction<Tables>, lotIds: readonly number[]): Promise<void> {
  for await (const part of inParts(lotIds)) {
    await trx.deleteFrom('balances').where('lotId', 'in', part).execute();
    await trx
      .insertInto('balances')
      .columns(['lotId', 'onShelf', 'setAside', 'packed'])
      .expression(ledgerBalances(trx).where('lotId', 'in', part))
      .execute();
  }
}

/**
 * How far a trip has come. Read off the ledger, so that it cannot disagree with where the pouches are; only that it is over is
 * somebody's word. A trip whose last pouch was eaten is still on its way.
 */

export function stageOf(
  finishedAt: string | null,
  lines: readonly Pick<Reservation, 'setAside' | 'packed' | 'eaten'>[],
): Stage {
  if (finishedAt !== null) return 'finished';
  if (lines.some(({ packed }) => packed > 0)) return 'packed';
  if (lines.some(({ setAside }) => setAside > 0)) return 'set aside';
  return lines.some(({ eaten }) => eaten > 0) ? 'packed' : 'open';
}
