import type { Transaction } from 'kysely';
import type { DishNotes } from '../application/finish-trip.ts';
import { Afterwards } from '../planning/model/afterwards.ts';
import { Recipe } from '../planning/model/recipe.ts';
import { reading, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { replaceObservations } from './settings-repository.ts';
import { parseStored } from './stored-json.ts';
import type { PouchCount, StoredTrip, TripRepository } from './trip-repository.ts';
import { say } from '../texts/say.ts';

/** What was said of trips when they were finished, and what each taught. */
export class AfterwardsRepository {
  readonly #db: Database;
  readonly #trips: TripRepository;

  constructor(db: Database, trips: TripRepository) {
    this.#db = db;
    this.#trips = trips;
  }

  /** @returns what was said of a trip when it was last finished; `undefined` where nothing was */
  async get(tripId: string): Promise<Afterwards | undefined> {
    const row = await reading(this.#db, (trx) =>
      trx.selectFrom('trips').select(['name', 'afterwards']).where('id', '=', tripId).executeTakeFirst(),
    );
    const { name, afterwards } = row ?? {};
    return afterwards
      ? parseStored(Afterwards, afterwards, () => say('Feedback on the trip "{name}"', { name: name ?? '' }))
      : undefined;
  }

  /**
   * Finishes a trip with what was said of it, in one change: pouches, answers, learned figures and notes on recipes.
   *
   * @param learned what the trip teaches
   * @param notes names that the kitchen does not have are passed over
   * @throws as `TripRepository.bringBack`
   */
  finish(
    { id, version }: Pick<StoredTrip, 'id' | 'version'>,
    back: readonly PouchCount[],
    said: Afterwards,
    learned: Parameters<typeof replaceObservations>[2],
    notes: DishNotes,
  ): Promise<StoredTrip> {
    return this.#trips.bringBack(id, version, back, async (trx, at) => {
      await trx
        .updateTable('trips')
        .set({ afterwards: JSON.stringify(said) })
        .where('id', '=', id)
        .execute();
      await replaceObservations(trx, id, learned);
      await replaceDishNotes(trx, at, id, notes);
    });
  }

  /** Opens a finished trip again, in one change with what it taught: that is taken back, what was said stays to be corrected. @throws as `TripRepository.reopen` */
  reopen(id: string, version: number): Promise<StoredTrip> {
    return this.#trips.reopen(id, version, async (trx, at) => {
      await replaceObservations(trx, id, []);
      await replaceDishNotes(trx, at, id, NO_NOTES);
    });
  }
}

/** The most notes that a recipe keeps; the oldest make room. */
const MOST_NOTES = 200;
const NO_NOTES: DishNotes = { water: new Map(), portion: new Map() };

/** @returns the notes without those of a trip, and with its new one; `undefined` where nothing changes. */
function replaced<Note extends { readonly tripId?: string | undefined }>(
  notes: readonly Note[],
  tripId: string,
  note: Note | undefined,
): Note[] | undefined {
  const others = notes.filter((other) => other.tripId !== tripId);
  if (!note && others.length === notes.length) return undefined;
  return [...others, ...(note ? [note] : [])].slice(-MOST_NOTES);
}

async function replaceDishNotes(
  trx: Transaction<Tables>,
  at: string,
  tripId: string,
  notes: DishNotes,
): Promise<void> {
  const rows = await trx.selectFrom('records').selectAll().where('kind', '=', 'recipe').execute();
  for (const row of rows) {
    const recipe = parseStored(Recipe, row.body, () => say('The recipe "{name}"', { name: row.name }));
    const waterNotes = replaced(recipe.waterNotes, tripId, notes.water.get(row.name));
    const portionNotes = replaced(recipe.portionNotes ?? [], tripId, notes.portion.get(row.name));
    if (!waterNotes && !portionNotes) continue;
    const changed = { ...recipe, ...(waterNotes && { waterNotes }), ...(portionNotes && { portionNotes }) };
    await trx
      .updateTable('records')
      .set({ body: JSON.stringify(changed), version: row.version + 1, updatedAt: at })
      .where('id', '=', row.id)
      .execute();
  }
}
