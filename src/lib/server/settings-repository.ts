import { defaultSettings, Settings } from '../planning/model/settings.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import { parseStored } from './stored-json.ts';

const HOUSEHOLD = 'household';

export class SettingsRepository {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** @returns the stored settings, or the defaults where none were saved yet */
  async get(): Promise<Settings> {
    const row = await reading(this.#db, (trx) =>
      trx.selectFrom('settings').select('settings').where('id', '=', HOUSEHOLD).executeTakeFirst(),
    );
    return row ? parseStored(Settings, row.settings, 'The stored settings') : defaultSettings();
  }

  /** @param settings valid settings */
  async save(settings: Settings): Promise<void> {
    const json = JSON.stringify(Settings.parse(settings));
    await writing(this.#db, (trx) =>
      trx
        .insertInto('settings')
        .values({ id: HOUSEHOLD, settings: json })
        .onConflict((conflict) => conflict.column('id').doUpdateSet({ settings: json }))
        .execute(),
    );
  }
}
