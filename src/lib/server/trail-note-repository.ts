import type { Selectable, Transaction } from 'kysely';
import type { TrailNote, TrailNoteResult } from '../planning/model/trail-note.ts';
import { isVerdict } from '../planning/model/words.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { append, reservations, TRAIL_NOTE, type Movement, type Reservation } from './ledger.ts';
import { takeBought, type Bought } from './planned-lots.ts';
import { findTrip, type StoredTrip } from './trip-repository.ts';
import { keep, sayKept } from '../texts/keep.ts';
import { say, text } from '../texts/say.ts';

/** A note as it was kept. */
export type StoredTrailNote = TrailNote & {
  readonly outcome: 'entered' | 'conflict';
  /** Of a conflict: why it did not fit, and what to do. */
  readonly message: string;
  /** Instant at which somebody dealt with the conflict, with what they remarked. */
  readonly settledAt?: string;
  readonly remark: string;
};

/** What was noted on the trail. Every note is kept, and each moves pouches at most once. */
export class TrailNoteRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** The notes of a trip, a deleted one too, in the order of arrival. @throws UserError `NotFound` */
  list(tripId: string): Promise<StoredTrailNote[]> {
    return reading(this.#db, async (trx) => {
      await takeRow(trx, tripId);
      const rows = await trx
        .selectFrom('trailNotes')
        .selectAll()
        .where('tripId', '=', tripId)
        .orderBy('seq')
        .execute();
      return rows.map(storedNote);
    });
  }

  /** Conflicts of deleted trips that nobody has settled, as these trips have no page of their own. */
  conflictsOfDeleted(): Promise<{ readonly tripId: string; readonly notes: StoredTrailNote[] }[]> {
    return reading(this.#db, async (trx) => {
      const rows = await trx
        .selectFrom('trailNotes')
        .innerJoin('trips', 'trips.id', 'trailNotes.tripId')
        .selectAll('trailNotes')
        .where('trips.trip', 'is', null)
        .where('outcome', '=', 'conflict')
        .where('settledAt', 'is', null)
        .orderBy('seq')
        .execute();
      return [...Map.groupBy(rows, (row) => row.tripId)].map(([tripId, ofTrip]) => ({
        tripId,
        notes: ofTrip.map(storedNote),
      }));
    });
  }

  /**
   * Takes notes in, in the order given, all in one change: each that is new is kept, and moves pouches where it fits the trip. One
   * that does not fit is kept as a conflict, for a person to settle.
   *
   * @returns what became of each, in the same order
   * @throws UserError `NotFound` where there never was such a trip
   */
  enter(tripId: string, notes: readonly TrailNote[]): Promise<TrailNoteResult[]> {
    return writing(this.#db, async (trx) => {
      const row = await takeRow(trx, tripId);
      const trip = (await findTrip(trx, tripId))?.stored;
      const lines = new Map((await reservations(trx, tripId)).map((line) => [line.code, { ...line }]));
      const movements: Movement[] = [];
      const results: TrailNoteResult[] = [];
      for (const note of notes) {
        const { id } = note;
        if (await trx.selectFrom('trailNotes').select('id').where('id', '=', id).executeTakeFirst()) {
          results.push({ id, outcome: 'known' });
          continue;
        }
        const line = lines.get(note.code);
        const buying = isBuying(note);
        const message = trip
          ? buying
            ? await this.#buy(trx, tripId, note)
            : misfitOf(note, trip, line)
          : keep(
              text(
                'The trip "{trip}" was deleted, so this note did not change the stock. Correct the count of "{code}" on its page.',
              ),
              { trip: row.name, code: note.code },
            );
        if (message === undefined && line && (note.kind === 'eaten' || note.kind === 'brought home')) {
          const kind = note.kind === 'eaten' ? 'eaten' : 'brought back';
          movements.push({ kind, lotId: line.lotId, pouches: note.pouches, tripId });
          line.packed -= note.pouches;
          line[note.kind === 'eaten' ? 'eaten' : 'broughtBack'] += note.pouches;
        }
        const outcome = message === undefined ? 'entered' : 'conflict';
        await trx
          .insertInto('trailNotes')
          .values({
            ...note,
            tripId,
            servings: note.servings ?? null,
            paidMinor: note.paidMinor ?? null,
            outcome,
            message: message ?? '',
            settledAt: null,
            remark: '',
          })
          .execute();
        results.push({ id, outcome, ...(message !== undefined && { message: sayKept(message) }) });
      }
      await append(trx, this.#now(), TRAIL_NOTE, movements);
      if (movements.length > 0)
        await trx
          .updateTable('trips')
          .set((eb) => ({ version: eb('version', '+', 1), updatedAt: this.#now() }))
          .where('id', '=', tripId)
          .execute();
      return results;
    });
  }

  /** A tick in the shop. The trip is read anew, as the tick before it may have changed it. @returns why it does not fit, to be kept */
  async #buy(trx: Transaction<Tables>, tripId: string, note: TrailNote): Promise<string | undefined> {
    const stored = (await findTrip(trx, tripId))?.stored;
    return stored && takeBought(trx, this.#now(), note.at.slice(0, 10), stored, boughtBy(note));
  }

  /**
   * Declares conflicts dealt with. The notes stay; one that is no open conflict stays as it is.
   *
   * @param ids notes of the trip
   * @throws UserError `NotFound` where there never was such a trip
   */
  settle(tripId: string, ids: readonly string[], remark: string): Promise<void> {
    return writing(this.#db, async (trx) => {
      await takeRow(trx, tripId);
      for (const id of ids)
        await trx
          .updateTable('trailNotes')
          .set({ settledAt: this.#now(), remark })
          .where('tripId', '=', tripId)
          .where('id', '=', id)
          .where('outcome', '=', 'conflict')
          .where('settledAt', 'is', null)
          .execute();
    });
  }
}

const isBuying = ({ kind }: TrailNote): boolean => kind === 'bought' || kind === 'bought, label read';
const boughtBy = ({ kind, code, pouches, paidMinor }: TrailNote): Bought => ({
  code,
  pouches,
  ...(paidMinor !== undefined && { paidMinor }),
  labelRead: kind === 'bought, label read',
});

function storedNote(row: Selectable<Tables['trailNotes']>): StoredTrailNote {
  const { id, at, kind, code, pouches, servings, paidMinor, text, outcome, message, settledAt, remark } = row;
  return {
    ...{ id, at, kind, code, pouches, text, outcome, remark },
    message: sayKept(message),
    ...(servings !== null && { servings }),
    ...(paidMinor !== null && { paidMinor }),
    ...(settledAt !== null && { settledAt }),
  };
}

/** @returns why a note does not fit the trip, and what to do, to be kept; `undefined` where it fits. */
function misfitOf(
  { kind, code, pouches }: TrailNote,
  { trip, stage }: StoredTrip,
  line: Reservation | undefined,
): string | undefined {
  if (!line || line.packed + line.eaten + line.broughtBack === 0)
    return keep(
      text(
        'No pouch of "{code}" was packed for "{trip}". Check the code, and correct the count of the lot that was meant on its page.',
      ),
      { code, trip: trip.name },
    );
  if (kind === 'left over' || isVerdict(kind)) return undefined;
  if (stage === 'finished')
    return keep(
      text(
        '"{trip}" was finished before this note arrived, and all its pouches are accounted for. If they are counted wrongly, open it again under Afterwards.',
      ),
      { trip: trip.name },
    );
  if (stage !== 'packed')
    return keep(
      text(
        '"{trip}" is not packed, so none of its pouches can be {kind, select, eaten {eaten} other {brought home}}. Pack it first, then enter this under Afterwards.',
      ),
      { trip: trip.name, kind },
    );
  if (pouches > line.packed)
    return keep(
      text(
        '{pouches, plural, one {# pouch} other {# pouches}} of "{code}" were noted as {kind, select, eaten {eaten} other {brought home}}, but only {left} are left in the packs. Count them, and enter under Afterwards what came home.',
      ),
      { pouches, code, kind, left: line.packed },
    );
  return undefined;
}

async function takeRow(trx: Transaction<Tables>, tripId: string): Promise<{ name: string; version: number }> {
  const row = await trx
    .selectFrom('trips')
    .select(['name', 'version'])
    .where('id', '=', tripId)
    .executeTakeFirst();
  if (!row)
    throw new UserError('NotFound', say('There is no such trip; the list of trips shows those there are.'));
  return row;
}
