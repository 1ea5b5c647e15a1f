import type { Transaction } from 'kysely';
import type { PlannedLot } from '../planning/model/planned-lot.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { putInPlace } from '../planning/shortfall/take-in.ts';
import { Trip } from '../planning/model/trip.ts';
import { keep, sayKept } from '../texts/keep.ts';
import { say, text } from '../texts/say.ts';
import { writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { append } from './ledger.ts';
import { parseStored } from './stored-json.ts';
import { sealLot } from './shelf-repository.ts';
import { findTrip, writeTrip, type StoredTrip } from './trip-repository.ts';

const MOST_BAGS = 1000;

/** Planned food that comes. */
export class PlannedLots {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** @throws UserError `NotFound`, `Refused` where the trip does not plan to buy it, or has left */
  bought(tripId: string, what: Bought): Promise<void> {
    return writing(this.#db, async (trx) => {
      const stored = (await findTrip(trx, tripId))?.stored;
      if (!stored)
        throw new UserError(
          'NotFound',
          say('There is no such trip; the list of trips shows those there are.'),
        );
      const at = this.#now();
      const misfit = await takeBought(trx, at, at.slice(0, 10), stored, what);
      if (misfit !== undefined) throw new UserError('Refused', sayKept(misfit));
    });
  }
}

/** Bought food that has come. */
export type Bought = {
  readonly code: string;
  /** Bags that it fills. */
  readonly pouches: number;
  /** Whether the label was read and lists the allergens that were planned with. */
  readonly labelRead: boolean;
  /** Paid for all of it, minor units; left out: not entered. */
  readonly paidMinor?: number | undefined;
};

/**
 * Within a change: bought food goes on the shelf under a code of its own and takes the place of what was planned. Until somebody has read its label, its
 * allergens are not declared.
 *
 * @param at instant, ISO 8601
 * @param today calendar date
 * @returns why it does not fit the trip, for the user and to be kept; `undefined` where it does
 */
export async function takeBought(
  trx: Transaction<Tables>,
  at: string,
  today: string,
  stored: StoredTrip,
  { code, pouches, labelRead, paidMinor }: Bought,
): Promise<string | undefined> {
  const { id, stage, trip } = stored;
  const planned = trip.planned?.find(({ way, lot }) => way === 'buy' && lot.code === code);
  if (!planned)
    return keep(
      text(
        '"{trip}" does not plan to buy "{code}". It may be on the shelf already, or out of the plan. Add it to the shelf by hand if it is not.',
      ),
      { trip: trip.name, code },
    );
  if (!Number.isSafeInteger(pouches) || pouches < 1 || pouches > MOST_BAGS)
    return keep(text('must be a whole number from 1 to {most}'), { most: MOST_BAGS });
  const isOnTheWay = stage === 'packed' && planned.at !== undefined;
  if ((stage === 'packed' && !isOnTheWay) || stage === 'finished')
    return keep(
      text('"{trip}" has left, so nothing more can be bought for it. Add the food to the shelf by hand.'),
      {
        trip: trip.name,
      },
    );
  const lot = boughtLot(planned, await freeLotCode(trx), pouches, today, labelRead, paidMinor);
  await sealLot(trx, at, lot, say('bought for "{trip}"', { trip: trip.name }), null);
  await writeTrip(trx, at, id, putInPlace(trip, code, { code: lot.code, pouches }));
  if (stage === 'set aside') await setAsideAlso(trx, at, id, lot.code, pouches);
  if (isOnTheWay) await packAlso(trx, at, id, lot.code, pouches);
  return undefined;
}

function boughtLot(
  { lot }: PlannedLot,
  code: string,
  pouches: number,
  today: string,
  labelRead: boolean,
  paidMinor: number | undefined,
): PouchLot {
  const { allergens, estimated, ...rest } = lot;
  const { sealedOn: _, ...guessed } = estimated ?? {};
  return {
    ...rest,
    code,
    pouches,
    bought: true,
    ...(paidMinor !== undefined && { costMinor: Math.round(paidMinor / (pouches * lot.servingsPerPouch)) }),
    sealedOn: today,
    ...(labelRead ? allergens && { allergens } : allergens?.length && { contains: allergens }),
    ...(Object.keys(guessed).length > 0 && { estimated: guessed }),
  };
}

/**
 * Within a change: pouches of a batch take the place of those that trips plan to dry of the same dish, the earliest departure first. Pouches with another
 * number of servings do not; they are on the shelf for whoever plans with them.
 */
export async function takeDried(
  trx: Transaction<Tables>,
  at: string,
  lots: readonly PouchLot[],
): Promise<void> {
  const rows = await trx
    .selectFrom('trips')
    .select(['id', 'name', 'trip'])
    .where('trip', 'is not', null)
    .where('finishedAt', 'is', null)
    .$narrowType<{ trip: string }>()
    .execute();
  const trips = rows
    .map(({ id, name, trip }) => ({
      id,
      trip: parseStored(Trip, trip, () => say('The trip "{name}"', { name })),
    }))
    .filter(({ trip }) => trip.planned?.some(({ way }) => way === 'dry'))
    .sort((a, b) => (a.trip.startDate < b.trip.startDate ? -1 : 1));
  for (const lot of lots) {
    let free = lot.pouches;
    for (const entry of trips) {
      const planned = entry.trip.planned?.find(
        (own) =>
          own.way === 'dry' &&
          own.lot.recipe === lot.recipe &&
          own.lot.servingsPerPouch === lot.servingsPerPouch,
      );
      const pouches = Math.min(free, planned?.lot.pouches ?? 0);
      if (!planned || pouches === 0) continue;
      free -= pouches;
      entry.trip = putInPlace(entry.trip, planned.lot.code, { code: lot.code, pouches });
      await writeTrip(trx, at, entry.id, entry.trip);
      const stage = (await findTrip(trx, entry.id))?.stored.stage;
      if (stage === 'set aside') await setAsideAlso(trx, at, entry.id, lot.code, pouches);
    }
  }
}

/** A code that no lot has: B001, B002 and so on. */
async function freeLotCode(trx: Transaction<Tables>): Promise<string> {
  const rows = await trx.selectFrom('lots').select('code').where('code', 'like', 'B%').execute();
  const taken = new Set(rows.map(({ code }) => code));
  for (let number = 1; ; number += 1) {
    const code = `B${String(number).padStart(3, '0')}`;
    if (!taken.has(code)) return code;
  }
}

/** What is bought on the way goes into the packs. */
async function packAlso(
  trx: Transaction<Tables>,
  at: string,
  tripId: string,
  code: string,
  pouches: number,
): Promise<void> {
  const { id: lotId } = await trx
    .selectFrom('lots')
    .select('id')
    .where('code', '=', code)
    .executeTakeFirstOrThrow();
  await append(trx, at, '', [
    { kind: 'set aside', lotId, pouches, tripId },
    { kind: 'packed', lotId, pouches, tripId },
  ]);
}

/** What comes for a trip that has its pouches set aside is set aside with them, as far as its menu opens it. */
async function setAsideAlso(
  trx: Transaction<Tables>,
  at: string,
  tripId: string,
  code: string,
  most: number,
): Promise<void> {
  const found = await findTrip(trx, tripId);
  const lot = await trx.selectFrom('lots').select('id').where('code', '=', code).executeTakeFirst();
  const wanted = (found?.stored.trip.menu ?? [])
    .flatMap(({ opened }) => opened)
    .reduce((sum, row) => sum + (row.code === code ? row.pouches : 0), 0);
  if (!lot || wanted === 0) return;
  await append(trx, at, '', [{ kind: 'set aside', lotId: lot.id, pouches: Math.min(wanted, most), tripId }]);
}
