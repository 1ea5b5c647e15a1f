import type { Transaction } from 'kysely';
import type { z } from 'zod';
import { defaultKitchen, Kitchen } from '../planning/model/kitchen.ts';
import type { Observation } from '../planning/model/observation.ts';
import { defaultSettings, Settings, SettingsFields } from '../planning/model/settings.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { digestOf } from './digest.ts';
import { UserError } from './errors.ts';
import { parseStored } from './stored-json.ts';
import { say } from '../texts/say.ts';

const HOUSEHOLD = 'household';
const KITCHEN = 'kitchen';
/** A row of its own, so that saving a form takes nothing of it away. */
const LEARNED = 'learned';
const { learned: Learned } = SettingsFields.shape;
const MOST_LEARNED = 2000;

export class SettingsRepository {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** @returns the stored settings, or the defaults where none were saved yet, with what was learned from trips */
  get(): Promise<Settings> {
    return reading(this.#db, async (trx) => {
      const settings = await read(
        trx,
        HOUSEHOLD,
        Settings,
        () => say('The stored settings'),
        defaultSettings,
      );
      return { ...settings, learned: await readLearned(trx) };
    });
  }

  /**
   * What was learned is no entry of a form: it stays as it is stored.
   *
   * @param settings valid settings
   */
  async save(settings: Settings): Promise<void> {
    const { learned: _learned, ...entered } = Settings.parse(settings);
    await writing(this.#db, (trx) => write(trx, HOUSEHOLD, entered));
  }

  /**
   * Saves some of the settings, where these are still as they were.
   *
   * @param version what `partVersion` said of them
   * @throws UserError `StaleVersion` where somebody else saved them meanwhile
   */
  async savePart(names: readonly (keyof Settings)[], version: string, settings: Settings): Promise<void> {
    await writing(this.#db, async (trx) => {
      const stored = await read(trx, HOUSEHOLD, Settings, () => say('The stored settings'), defaultSettings);
      const { learned: _learned, ...entered } = Settings.parse(changed(stored, names, version, settings));
      await write(trx, HOUSEHOLD, entered);
    });
  }

  /** Forgets what was learned for one figure. @param isOfFigure tells its observations */
  async learn(observation: Observation): Promise<void> {
    await writing(this.#db, async (trx) => {
      await write(trx, LEARNED, [...(await readLearned(trx)), observation].slice(-MOST_LEARNED));
    });
  }

  async forget(isOfFigure: (observation: Observation) => boolean): Promise<void> {
    await writing(this.#db, async (trx) => {
      await write(
        trx,
        LEARNED,
        (await readLearned(trx)).filter((one) => !isOfFigure(one)),
      );
    });
  }

  /** @returns the equipment and figures of the kitchen, or the usual ones where none were saved yet */
  getKitchen(): Promise<Kitchen> {
    return reading(this.#db, readKitchen);
  }

  /**
   * Keeps the usual equipment as it is named now, where none was saved yet: from a first batch on, runs are found by the name of their dryer.
   *
   * @param kitchen as `getKitchen` gave it
   */
  async keepKitchen(kitchen: Kitchen): Promise<void> {
    await writing(this.#db, async (trx) => {
      if (!(await isStored(trx, KITCHEN))) await write(trx, KITCHEN, Kitchen.parse(kitchen));
    });
  }

  /** Saves some of the equipment, as `savePart` does. @throws UserError `StaleVersion` */
  async saveKitchenPart(names: readonly (keyof Kitchen)[], version: string, kitchen: Kitchen): Promise<void> {
    await writing(this.#db, async (trx) => {
      const stored = await readKitchen(trx);
      await write(trx, KITCHEN, Kitchen.parse(changed(stored, names, version, kitchen)));
    });
  }

  /** @param kitchen a valid kitchen */
  async saveKitchen(kitchen: Kitchen): Promise<void> {
    await writing(this.#db, (trx) => write(trx, KITCHEN, Kitchen.parse(kitchen)));
  }
}

/** What tells a part of the settings or of the equipment from any other state of it. */
export function partVersion<Whole extends object>(whole: Whole, names: readonly (keyof Whole)[]): string {
  const part = names.map((name) => whole[name]);
  return digestOf(part).slice(0, 16);
}

function changed<Whole extends object>(
  stored: Whole,
  names: readonly (keyof Whole)[],
  version: string,
  entered: Whole,
): Whole {
  if (partVersion(stored, names) !== version)
    throw new UserError(
      'StaleVersion',
      say('Someone else saved this section while you were editing. Your changes are not saved yet.'),
    );
  return { ...stored, ...Object.fromEntries(names.map((name) => [name, entered[name]])) };
}

/** Within a change: puts what a trip taught in the place of what it taught before. The oldest make room where there are too many. */
export async function replaceObservations(
  trx: Transaction<Tables>,
  tripId: string,
  observations: readonly Observation[],
): Promise<void> {
  const others = (await readLearned(trx)).filter((one) => one.tripId !== tripId);
  await write(trx, LEARNED, [...others, ...observations].slice(-MOST_LEARNED));
}

const readLearned = (trx: Transaction<Tables>): Promise<Observation[]> =>
  read(
    trx,
    LEARNED,
    Learned,
    () => say('Values learned from trips'),
    () => [],
  );

const readKitchen = (trx: Transaction<Tables>): Promise<Kitchen> =>
  read(
    trx,
    KITCHEN,
    Kitchen,
    () => say('The stored equipment'),
    // Batches that were begun before the equipment was kept with the first of them have the English names.
    async () => ((await hasBatches(trx)) ? defaultKitchen((name) => name) : defaultKitchen()),
  );

async function hasBatches(trx: Transaction<Tables>): Promise<boolean> {
  const batch = await trx
    .selectFrom('records')
    .select('id')
    .where('kind', '=', 'batch')
    .limit(1)
    .executeTakeFirst();
  return batch !== undefined;
}

async function isStored(trx: Transaction<Tables>, id: string): Promise<boolean> {
  const row = await trx.selectFrom('settings').select('id').where('id', '=', id).executeTakeFirst();
  return row !== undefined;
}

async function read<Schema extends z.ZodType>(
  trx: Transaction<Tables>,
  id: string,
  schema: Schema,
  what: () => string,
  usual: () => z.output<Schema> | Promise<z.output<Schema>>,
): Promise<z.output<Schema>> {
  const row = await trx.selectFrom('settings').select('settings').where('id', '=', id).executeTakeFirst();
  return row ? parseStored(schema, row.settings, what) : usual();
}

async function write(trx: Transaction<Tables>, id: string, value: object): Promise<void> {
  const json = JSON.stringify(value);
  await trx
    .insertInto('settings')
    .values({ id, settings: json })
    .onConflict((conflict) => conflict.column('id').doUpdateSet({ settings: json }))
    .execute();
}
