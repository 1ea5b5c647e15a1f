import type { Transaction } from 'kysely';
import { Afterwards } from '../planning/model/afterwards.ts';
import { Recipe, type WaterNote } from '../planning/model/recipe.ts';
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
   * @param waterNotes by the name of the recipe; names that the kitchen does not have are passed over
   * @throws as `TripRepository.bringBack`
   */
  finish(
    { id, version }: Pick<StoredTrip, 'id' | 'version'>,
    back: readonly PouchCount[],
    said: Afterwards,
    learned: Parameters<typeof replaceObservations>[2],
    waterNotes: ReadonlyMap<string, WaterNote>,
  ): Promise<StoredTrip> {
    return this.#trips.bringBack(id, version, back, async (trx, at) => {
      await trx
        .updateTable('trips')
        .set({ afterwards: JSON.stringify(said) })
        .where('id', '=', id)
        .execute();
      await replaceObservations(trx, id, learned);
      await replaceWaterNotes(trx, at, id, waterNotes);
    });
  }

  /** Opens a finished trip again, in one change with what it taught: that is taken back, what was said stays to be corrected. @throws as `TripRepository.reopen` */
  reopen(id: string, version: number): Promise<StoredTrip> {
    return this.#trips.reopen(id, version, async (trx, at) => {
      await replaceObservations(trx, id, []);
      await replaceWaterNotes(trx, at, id, new Map());
    });
  }
}

/** The most notes that a recipe keeps; the oldest make room. */
const MOST_WATER_NOTES = 200;

async function replaceWaterNotes(
  trx: Transaction<Tables>,
  at: string,
  tripId: string,
  notes: ReadonlyMap<string, WaterNote>,
): Promise<void> {
  const rows = await trx.selectFrom('records').selectAll().where('kind', '=', 'recipe').execute();
  for (const row of rows) {
    const note = notes.get(row.name);
    const recipe = parseStored(Recipe, row.body, () => say('The recipe "{name}"', { name: row.name }));
    const others = recipe.waterNotes.filter((other) => other.tripId !== tripId);
    if (!note && others.length === recipe.waterNotes.length) continue;
    const waterNotes = [...others, ...(note ? [note] : [])].slice(-MOST_WATER_NOTES);
    await trx
      .updateTable('records')
      .set({ body: JSON.stringify({ ...recipe, waterNotes }), version: row.version + 1, updatedAt: at })
      .where('id', '=', row.id)
      .execute();
  }
}
