import { setImmediate } from 'node:timers/promises';
import type { Transaction } from 'kysely';
import type { PouchLot, Stock } from '../planning/model/pouch-lot.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { LotFields, Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { hasLeft } from '../ledger-kinds.ts';
import { inParts, type Watch } from './in-parts.ts';
import {
  append,
  mendBalances,
  reservations,
  stageOf,
  TRAIL_NOTE,
  wrongBalances,
  type LedgerEntry,
  type Movement,
} from './ledger.ts';
import { glanceAtShelf, lookOnShelf, type Glance } from './look-on-shelf.ts';
import { lotFields, lotOf } from './lot-row.ts';
import { sortKey } from '../lot-keys.ts';
import { renameInMenus } from './rename-in-menus.ts';
import { withdrawLot } from './withdraw-lot.ts';
import { shelfRow, type ShelfQuery, type ShelfView } from '../shelf-view.ts';
import { say } from '../texts/say.ts';

/** A lot with where its pouches are. `pouches` is what is at home: `onShelf + setAside`. */
export type ShelfLot = PouchLot & { version: number; onShelf: number; setAside: number; packed: number };

type LotRow = LotFields & { id: number; version: number; onShelf: number; setAside: number; packed: number };

const MOST_NAMED = 20;
const LOTS_AT_ONCE = 1000;
const MOST_CALLED = 500;

/** The pouches at home and their history. `note` goes into the ledger, for the person who reads it later. */
export class ShelfRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** All lots, the one to be eaten first at the top; also those with no pouches left. */
  async listLots(): Promise<ShelfLot[]> {
    return reading(this.#db, (trx) => everyLot(trx, shelfLot));
  }

  /**
   * What somebody looks for on the shelf, however many lots are on it.
   *
   * @param today ISO date, from which best-before is judged
   * @returns the page as `shelfView` would show it, and how many lots there are at all
   */
  look(query: ShelfQuery, today: string): Promise<{ view: ShelfView; allCount: number }> {
    return reading(this.#db, async (trx) => {
      const { ids, ...view } = await lookOnShelf(trx, query, today);
      const rows = (await lotsOf(trx, ids)).map((lot) => shelfRow(lot, today));
      return { view: { ...view, rows }, allCount: await lotCount(trx) };
    });
  }

  /** What is at home, with so many at most of the lots that have to be eaten soon, first of all those to be eaten first. @param today ISO date */
  glance(today: string, most: number): Promise<Glance & { soon: ShelfLot[]; isEmpty: boolean }> {
    return reading(this.#db, async (trx) => {
      const { soonIds, ...glance } = await glanceAtShelf(trx, today, most);
      return { ...glance, soon: await lotsOf(trx, soonIds), isEmpty: (await lotCount(trx)) === 0 };
    });
  }

  /** All lots by their codes. */
  lotsByCode(): Promise<ReadonlyMap<string, ShelfLot>> {
    return reading(
      this.#db,
      async (trx) => new Map((await everyLot(trx, shelfLot)).map((lot) => [lot.code, lot])),
    );
  }

  async getLot(code: string): Promise<ShelfLot | undefined> {
    const row = await reading(this.#db, (trx) => findLot(trx, code));
    return row && shelfLot(row);
  }

  /**
   * Puts a new lot with its pouches on the shelf.
   *
   * @throws UserError `Conflict` where another lot has the code
   */
  addLot(lot: PouchLot, note = ''): Promise<ShelfLot> {
    return writing(this.#db, async (trx) => {
      await sealLot(trx, this.#now(), lot, note, null);
      return shelfLot(await takeLot(trx, lot.code));
    });
  }

  /**
   * Puts new lots with their pouches on the shelf, all of them or none.
   *
   * @throws UserError `Conflict` where another lot has one of the codes
   */
  addLots(lots: readonly PouchLot[]): Promise<void> {
    return writing(this.#db, async (trx) => {
      for (const lot of lots) await sealLot(trx, this.#now(), lot, '', null);
    });
  }

  /** The lots whose recipe is called so, case and accents aside, to estimate others from; the newest first. */
  async lotsCalled(recipes: readonly string[]): Promise<ShelfLot[]> {
    const keys = [...new Set(recipes.map(sortKey))].slice(0, MOST_CALLED);
    if (keys.length === 0) return [];
    const rows = await reading(this.#db, (trx) =>
      lotRows(trx)
        .where('lots.recipeKey', 'in', keys)
        .orderBy('lots.id', 'desc')
        .limit(MOST_CALLED)
        .execute(),
    );
    return rows.map(shelfLot);
  }

  /** The codes of all lots. */
  async codes(): Promise<ReadonlySet<string>> {
    const rows = await reading(this.#db, (trx) => trx.selectFrom('lots').select('code').execute());
    return new Set(rows.map(({ code }) => code));
  }

  /**
   * Changes what is written about a lot, not how many pouches there are. A new code reaches the menus of all trips.
   *
   * @param code the code until now
   * @param version the version that the change was made on
   * @throws UserError `NotFound`, `StaleVersion`, or `Conflict` where another lot has the new code
   */
  updateLot(code: string, lot: PouchLot, version: number): Promise<ShelfLot> {
    return writing(this.#db, async (trx) => {
      const stored = await takeLot(trx, code);
      if (stored.version !== version)
        throw new UserError(
          'StaleVersion',
          say(
            'Lot "{code}" was changed elsewhere since this page was opened, so nothing was saved. Open it again and repeat your change there.',
            { code },
          ),
        );
      if (lot.code !== code) {
        await refuseTakenCode(trx, lot.code);
        await renameInMenus(trx, code, lot.code, this.#now());
      }
      const { withdrawn: _, ...fields } = lotFields(lot);
      await trx
        .updateTable('lots')
        .set({ ...fields, version: version + 1 })
        .where('id', '=', stored.id)
        .execute();
      return shelfLot(await takeLot(trx, lot.code));
    });
  }

  /**
   * Corrects the ledger to what was counted at home, what is set aside included.
   *
   * @throws UserError `NotFound`, or `Refused` where fewer were counted than are set aside
   */
  countLot(code: string, pouchesAtHome: number, note: string): Promise<ShelfLot> {
    refuseUnlessWhole(pouchesAtHome, 0);
    return writing(this.#db, async (trx) => {
      const { id, onShelf, setAside, withdrawn } = await takeLot(trx, code);
      if (withdrawn !== null) throw new UserError('Refused', isWithdrawn(code));
      if (pouchesAtHome < setAside) throw new UserError('Refused', tooFewLeft(code, pouchesAtHome, setAside));
      await append(trx, this.#now(), note, [
        { kind: 'counted', lotId: id, pouches: pouchesAtHome - setAside - onShelf },
      ]);
      return shelfLot(await takeLot(trx, code));
    });
  }

  /**
   * @param lastEntry of the lot's history that was seen; where another one came since, it may be the same pouches
   * @throws UserError `NotFound`, `StaleVersion`, or `Refused` where there are not as many on the shelf and free
   */
  discardPouches(code: string, pouches: number, note: string, lastEntry?: number): Promise<ShelfLot> {
    return this.#takeOff('discarded', code, pouches, note, lastEntry);
  }

  /** Pouches that were eaten without a trip; with the errors of `discardPouches`. */
  eatAtHome(code: string, pouches: number, note: string, lastEntry?: number): Promise<ShelfLot> {
    return this.#takeOff('eaten at home', code, pouches, note, lastEntry);
  }

  #takeOff(
    kind: 'discarded' | 'eaten at home',
    code: string,
    pouches: number,
    note: string,
    lastEntry: number | undefined,
  ): Promise<ShelfLot> {
    refuseUnlessWhole(pouches, 1);
    return writing(this.#db, async (trx) => {
      const { id, onShelf, setAside } = await takeLot(trx, code);
      if (lastEntry !== undefined && lastEntry !== (await lastEntryOf(trx, id)))
        throw new UserError(
          'StaleVersion',
          kind === 'discarded'
            ? say(
                'The pouches of lot "{code}" were changed elsewhere since this page was opened, so none was discarded. Look at the history below. If these pouches are not among them, send this again.',
                { code },
              )
            : say(
                'The pouches of lot "{code}" were changed elsewhere since this page was opened, so none was entered as eaten. Look at the history below. If these pouches are not among them, send this again.',
                { code },
              ),
        );
      if (pouches > onShelf)
        throw new UserError('Refused', tooFewFree(kind, code, pouches, onShelf, setAside));
      await append(trx, this.#now(), note, [{ kind, lotId: id, pouches }]);
      return shelfLot(await takeLot(trx, code));
    });
  }

  /**
   * Withdraws a suspect lot: off the shelf, out of the menu of every trip that is not over, and out of what these were promised. It can be put back from the bin.
   *
   * @returns the trips that had planned with it, by their ids
   * @throws UserError `NotFound`, or `Refused` where it is withdrawn already
   */
  withdraw(code: string, reason: string): Promise<string[]> {
    return writing(this.#db, async (trx) => {
      const { id, version, recipe, withdrawn } = await takeLot(trx, code);
      if (withdrawn !== null)
        throw new UserError('Refused', say('Lot "{code}" is withdrawn already.', { code }));
      return withdrawLot(trx, this.#now(), { id, version }, { code, recipe, reason });
    });
  }

  /**
   * @returns every movement of the lot's pouches, newest first
   * @throws UserError `NotFound`
   */
  history(code: string): Promise<LedgerEntry[]> {
    return reading(this.#db, async (trx) => {
      const { id } = await takeLot(trx, code);
      const entries = await trx
        .selectFrom('ledger')
        .leftJoin('trips', 'trips.id', 'ledger.tripId')
        .selectAll('ledger')
        .select('trips.name as tripName')
        .where('ledger.lotId', '=', id)
        .orderBy('ledger.id', 'desc')
        .execute();
      return entries.map((entry) =>
        entry.note === TRAIL_NOTE ? { ...entry, note: say(TRAIL_NOTE) } : entry,
      );
    });
  }

  /**
   * Takes in rows by their codes, all or none: new lots are added, known ones get the fields and the count of the row.
   * The same rows a second time write nothing.
   *
   * @throws UserError `Conflict` where a code comes twice, `Refused` where a row has fewer pouches than are set aside
   */
  importLots(rows: readonly PouchLot[], note: string): Promise<TakenIn> {
    return writing(this.#db, (trx) => takeInLots(trx, this.#now(), rows, note));
  }

  /**
   * Looks whether the kept counts are what the ledger adds up to, and puts right those that are not, as they are when somebody else has written into
   * the database.
   *
   * @returns how many lots had a wrong count
   */
  async mendCounts(): Promise<number> {
    if ((await reading(this.#db, wrongBalances)).length === 0) return 0;
    return writing(this.#db, async (trx) => {
      const lotIds = await wrongBalances(trx);
      await mendBalances(trx, lotIds);
      return lotIds.length;
    });
  }

  /**
   * What a trip can be planned with: what is free, and what this very trip has been promised, packed or not. What it has eaten or
   * brought back counts too once it is on its way, so that its menu stays what it was, even if a lot was withdrawn since.
   */
  stockFor(tripId: string | undefined): Promise<Stock> {
    return reading(this.#db, async (trx) => {
      const lines = tripId === undefined ? [] : await reservations(trx, tripId);
      const byLot = new Map(lines.map((line) => [line.lotId, line]));
      const trip = await trx
        .selectFrom('trips')
        .select('finishedAt')
        .where('id', '=', tripId ?? '')
        .executeTakeFirst();
      const stage = stageOf(trip?.finishedAt ?? null, lines);
      return everyLot(trx, (row) => {
        const { setAside = 0, packed = 0, eaten = 0, broughtBack = 0 } = byLot.get(row.id) ?? {};
        if (!hasLeft(stage)) return lotOf(row, row.onShelf + setAside + packed);
        const { withdrawn, ...lot } = lotOf(row, setAside + packed + eaten);
        return {
          ...lot,
          pouches: lot.pouches + Math.max(withdrawn === undefined ? row.onShelf : 0, broughtBack),
        };
      });
    });
  }
}

/** Why so many pouches cannot be taken off the shelf. */
function tooFewFree(
  kind: 'discarded' | 'eaten at home',
  code: string,
  pouches: number,
  onShelf: number,
  setAside: number,
): string {
  const counts = { code, onShelf: String(onShelf), pouches: String(pouches) };
  return [
    kind === 'discarded'
      ? say('Lot "{code}" has only {onShelf} on the shelf, so {pouches} cannot be discarded.', counts)
      : say(
          'Lot "{code}" has only {onShelf} on the shelf, so {pouches} cannot have been eaten. Enter a count first.',
          counts,
        ),
    ...(setAside > 0
      ? [
          say('Another {setAside} are set aside for trips: release them there first.', {
            setAside: String(setAside),
          }),
        ]
      : []),
  ].join(' ');
}

/** @returns the id of a lot's newest entry; 0 where it has none */
async function lastEntryOf(trx: Transaction<Tables>, lotId: number): Promise<number> {
  const row = await trx
    .selectFrom('ledger')
    .select((eb) => eb.fn.max('id').as('last'))
    .where('lotId', '=', lotId)
    .executeTakeFirst();
  return row?.last ?? 0;
}

/** How many lots an import added, changed, and found as they are. */
export type TakenIn = { readonly added: number; readonly changed: number; readonly unchanged: number };

/**
 * Within a change: takes in rows as `importLots` does, and with its errors.
 *
 * @param watch hears how many rows are written; stopped, it throws the reason, and the change must be rolled back
 */
export async function takeInLots(
  trx: Transaction<Tables>,
  at: string,
  rows: readonly PouchLot[],
  note: string,
  watch?: Watch,
): Promise<TakenIn> {
  refuseRepeatedCodes(rows);
  const result = { added: 0, changed: 0, unchanged: 0 };
  const tooFew: string[] = [];
  for await (const part of inParts(rows, watch)) {
    const codes = part.map(({ code }) => code);
    const known = new Map(
      (await lotRows(trx).where('lots.code', 'in', codes).execute()).map((row) => [row.code, row]),
    );
    const fields = part
      .map((lot) => stillWithdrawn(lotFields(lot), known.get(lot.code)))
      .filter((row) => differs(row, known.get(row.code)));
    const ids = await writeFields(trx, fields);
    const movements: Movement[] = [];
    for (const { code, pouches } of part) {
      const stored = known.get(code);
      const lotId = stored?.id ?? ids.get(code);
      if (lotId === undefined) throw new Error(`the new lot "${code}" has no id`);
      if (!stored) {
        result.added += 1;
        movements.push({ kind: 'imported', lotId, pouches });
        continue;
      }
      if (pouches < stored.setAside) {
        tooFew.push(tooFewLeft(code, pouches, stored.setAside));
        continue;
      }
      const found = pouches - stored.setAside - stored.onShelf;
      movements.push({ kind: 'counted', lotId, pouches: found });
      if (found !== 0 || ids.has(code)) result.changed += 1;
      else result.unchanged += 1;
    }
    await append(trx, at, note, movements);
  }
  if (tooFew.length > 0) throw new UserError('Refused', `${say('Nothing was imported.')} ${listed(tooFew)}`);
  return result;
}

/**
 * Within a change: puts a new lot with its pouches on the shelf.
 *
 * @param batchId the batch that it was sealed from, where there is one
 * @throws UserError `Conflict` where another lot has the code
 */
export async function sealLot(
  trx: Transaction<Tables>,
  at: string,
  lot: PouchLot,
  note: string,
  batchId: string | null,
): Promise<void> {
  await refuseTakenCode(trx, lot.code);
  const { id } = await trx
    .insertInto('lots')
    .values({ ...lotFields(lot), version: 1, batchId })
    .returning('id')
    .executeTakeFirstOrThrow();
  await append(trx, at, note, [{ kind: 'sealed', lotId: id, pouches: lot.pouches }]);
}

/** Every lot, those to be eaten first at the top, read bit by bit so that other requests are answered meanwhile. */
async function everyLot<Lot>(trx: Transaction<Tables>, turned: (row: LotRow) => Lot): Promise<Lot[]> {
  const order = await trx.selectFrom('lots').select('id').orderBy('bestBefore').orderBy('code').execute();
  const lots = new Map<number, Lot>();
  for (let after = 0; lots.size < order.length; await setImmediate()) {
    const rows = await lotRows(trx)
      .where('lots.id', '>', after)
      .orderBy('lots.id')
      .limit(LOTS_AT_ONCE)
      .execute();
    for (const row of rows) lots.set(row.id, turned(row));
    after = rows.at(-1)?.id ?? Infinity;
  }
  return order.flatMap(({ id }) => lots.get(id) ?? []);
}

const lotRows = (trx: Transaction<Tables>) =>
  trx
    .selectFrom('lots')
    .leftJoin('balances', 'balances.lotId', 'lots.id')
    .selectAll('lots')
    .select((eb) =>
      (['onShelf', 'setAside', 'packed'] as const).map((place) =>
        eb.fn.coalesce(`balances.${place}`, eb.lit(0)).as(place),
      ),
    );

/** Lots by their ids, in the order of these. */
async function lotsOf(trx: Transaction<Tables>, ids: readonly number[]): Promise<ShelfLot[]> {
  if (ids.length === 0) return [];
  const rows = await lotRows(trx).where('lots.id', 'in', ids).execute();
  const byId = new Map(rows.map((row) => [row.id, row]));
  return ids.flatMap((id) => {
    const row = byId.get(id);
    return row ? [shelfLot(row)] : [];
  });
}

async function lotCount(trx: Transaction<Tables>): Promise<number> {
  const { count } = await trx
    .selectFrom('lots')
    .select((eb) => eb.fn.countAll<number>().as('count'))
    .executeTakeFirstOrThrow();
  return count;
}

const findLot = (trx: Transaction<Tables>, code: string): Promise<LotRow | undefined> =>
  lotRows(trx).where('lots.code', '=', code).executeTakeFirst();

async function takeLot(trx: Transaction<Tables>, code: string): Promise<LotRow> {
  const row = await findLot(trx, code);
  if (!row)
    throw new UserError(
      'NotFound',
      say('There is no lot "{code}" on the shelf. Was its code changed?', { code }),
    );
  return row;
}

function shelfLot(row: LotRow): ShelfLot {
  const { version, onShelf, setAside, packed } = row;
  return { ...lotOf(row, onShelf + setAside), version, onShelf, setAside, packed };
}

/** Adds lots, or overwrites the fields of those whose code is known. @returns ids by code */
async function writeFields(
  trx: Transaction<Tables>,
  rows: readonly LotFields[],
): Promise<Map<string, number>> {
  if (rows.length === 0) return new Map();
  const columns = Object.keys(rows[0] ?? {}) as (keyof LotFields)[];
  const written = await trx
    .insertInto('lots')
    .values(rows.map((row) => ({ ...row, version: 1 })))
    .onConflict((conflict) =>
      conflict.column('code').doUpdateSet((eb) => ({
        ...Object.fromEntries(columns.map((column) => [column, eb.ref(`excluded.${column}`)])),
        version: eb('lots.version', '+', 1),
      })),
    )
    .returning(['id', 'code'])
    .execute();
  return new Map(written.map(({ id, code }) => [code, id]));
}

/** No import makes a withdrawn lot one that may be eaten. */
const stillWithdrawn = (row: LotFields, stored: LotRow | undefined): LotFields =>
  stored?.withdrawn ? { ...row, withdrawn: stored.withdrawn } : row;

const differs = (row: LotFields, stored: LotRow | undefined): boolean =>
  !stored || (Object.keys(row) as (keyof LotFields)[]).some((column) => row[column] !== stored[column]);

async function refuseTakenCode(trx: Transaction<Tables>, code: string): Promise<void> {
  if (await trx.selectFrom('lots').select('id').where('code', '=', code).executeTakeFirst())
    throw new UserError(
      'Conflict',
      say('The code "{code}" is taken by another lot. Choose another code, or open that lot and change it.', {
        code,
      }),
    );
}

function refuseRepeatedCodes(rows: readonly PouchLot[]): void {
  const seen = new Set<string>();
  const repeated = new Set<string>();
  for (const { code } of rows) (seen.has(code) ? repeated : seen).add(code);
  if (repeated.size > 0)
    throw new UserError(
      'Conflict',
      say(
        'Nothing was imported. These codes come more than once: {codes}. Give each lot its own code, or join its rows.',
        {
          codes: listed(
            [...repeated].map((code) => `"${code}"`),
            ', ',
          ),
        },
      ),
    );
}

function refuseUnlessWhole(pouches: number, least: number): void {
  if (!Number.isSafeInteger(pouches) || pouches < least)
    throw new UserError(
      'Refused',
      say('The number of pouches must be a whole number of at least {least}.', { least }),
    );
}

const isWithdrawn = (code: string): string =>
  say('Lot "{code}" is withdrawn, so it is not counted. First put it back on the shelf.', { code });

const tooFewLeft = (code: string, pouches: number, setAside: number): string =>
  say(
    'Lot "{code}" would have {pouches} pouches at home, but {setAside} are set aside for trips: release some there first.',
    { code, pouches: String(pouches), setAside: String(setAside) },
  );

const listed = (texts: readonly string[], between = ' '): string =>
  texts.slice(0, MOST_NAMED).join(between) +
  (texts.length > MOST_NAMED
    ? ` ${say('… and {count} more', { count: String(texts.length - MOST_NAMED) })}`
    : '');
