import { join } from 'node:path';
import { localDate } from '../dates.ts';
import { AfterwardsRepository } from './afterwards-repository.ts';
import { Bin } from './bin.ts';
import { openDatabase } from './database/open-database.ts';
import { ImportRepository } from './import-repository.ts';
import { KitchenRepository } from './kitchen-repository.ts';
import { MenuSearches } from './menu-searches.ts';
import { SettingsRepository } from './settings-repository.ts';
import { ShelfRepository } from './shelf-repository.ts';
import { TrailNoteRepository } from './trail-note-repository.ts';
import { TripRepository } from './trip-repository.ts';

/** All that is kept in one data folder, and what looks for menus from it. */
export type App = {
  readonly shelf: ShelfRepository;
  readonly trips: TripRepository;
  readonly trailNotes: TrailNoteRepository;
  readonly afterwards: AfterwardsRepository;
  readonly settings: SettingsRepository;
  readonly kitchen: KitchenRepository;
  readonly bin: Bin;
  readonly imports: ImportRepository;
  readonly menus: MenuSearches;
  /** @returns the calendar date where the program runs, ISO 8601 */
  today(): string;
  close(): Promise<void>;
};

/**
 * Opens a data folder, which is made where it is missing.
 *
 * @throws UserError `Unusable` or `Busy`, naming the file and what to do
 */
export async function openApp(folder: string, clock: () => Date = () => new Date()): Promise<App> {
  const db = await openDatabase(folder);
  const now = () => clock().toISOString();
  const menus = new MenuSearches();
  const trips = new TripRepository(db, now);
  return {
    shelf: new ShelfRepository(db, now),
    trips,
    trailNotes: new TrailNoteRepository(db, now),
    afterwards: new AfterwardsRepository(db, trips),
    settings: new SettingsRepository(db),
    kitchen: new KitchenRepository(db, now),
    bin: new Bin(db, now),
    imports: new ImportRepository(db, join(folder, 'imports'), clock),
    menus,
    today: () => localDate(clock()),
    close: async () => {
      await menus.close();
      await db.destroy();
    },
  };
}

let opened: Promise<App> | undefined;

/**
 * The data folder of this program: `RIDGELARDER_DATA`, or `data` where it was started. Opened once; a failure is tried
 * again at the next call, so that a folder can be put right without a restart.
 */
export function app(): Promise<App> {
  opened ??= openApp(process.env['RIDGELARDER_DATA'] || 'data').catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

/** Closes what `app` opened, if it did. */
export async function closeApp(): Promise<void> {
  const open = await opened?.catch(() => undefined);
  await open?.close();
}
