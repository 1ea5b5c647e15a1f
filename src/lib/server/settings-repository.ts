import type { z } from 'zod';
import { defaultKitchen, Kitchen } from '../planning/model/kitchen.ts';
import { defaultSettings, Settings } from '../planning/model/settings.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import { parseStored } from './stored-json.ts';

const HOUSEHOLD = 'household';
const KITCHEN = 'kitchen';

export class SettingsRepository {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** @returns the stored settings, or the defaults where none were saved yet */
  get(): Promise<Settings> {
    return this.#read(HOUSEHOLD, Settings, 'The stored settings', defaultSettings);
  }

  /** @param settings valid settings */
  async save(settings: Settings): Promise<void> {
    await this.#write(HOUSEHOLD, Settings.parse(settings));
  }

  /** @returns the equipment and figures of the kitchen, or the usual ones where none were saved yet */
  getKitchen(): Promise<Kitchen> {
    return this.#read(KITCHEN, Kitchen, 'The stored equipment', defaultKitchen);
  }

  /** @param kitchen a valid kitchen */
  async saveKitchen(kitchen: Kitchen): Promise<void> {
    await this.#write(KITCHEN, Kitchen.parse(kitchen));
  }

  async #read<Schema extends z.ZodType>(
    id: string,
    schema: Schema,
    what: string,
    usual: () => z.output<Schema>,
  ): Promise<z.output<Schema>> {
    const row = await reading(this.#db, (trx) =>
      trx.selectFrom('settings').select('settings').where('id', '=', id).executeTakeFirst(),
    );
    return row ? parseStored(schema, row.settings, what) : usual();
  }

  async #write(id: string, settings: Settings | Kitchen): Promise<void> {
    const json = JSON.stringify(settings);
    await writing(this.#db, (trx) =>
      trx
        .insertInto('settings')
        .values({ id, settings: json })
        .onConflict((conflict) => conflict.column('id').doUpdateSet({ settings: json }))
        .execute(),
    );
  }
}
