import { join } from 'node:path';
import { localDate } from '../dates.ts';
import { AttemptLimit } from './access/attempt-limit.ts';
import { Passphrase } from './access/passphrase.ts';
import { ReadLinkRepository } from './access/read-link-repository.ts';
import { SessionRepository } from './access/session-repository.ts';
import { Apart } from './apart/apart.ts';
import { AfterwardsRepository } from './afterwards-repository.ts';
import { Backups } from './backups/backups.ts';
import { Bin } from './bin.ts';
import { dataFolder, keepToOwner } from './data-folder.ts';
import { databaseUrl, lastChange, openDatabase } from './database/open-database.ts';
import { ImportRepository } from './import-repository.ts';
import { Incoming } from './incoming.ts';
import { KitchenRepository } from './kitchen-repository.ts';
import { MenuSearches } from './menu-searches.ts';
import { PhotoRepository } from './photo-repository.ts';
import { PlanJobs } from './plan-jobs.ts';
import { PlannedLots } from './planned-lots.ts';
import { SettingsRepository } from './settings-repository.ts';
import { ShelfRepository } from './shelf-repository.ts';
import { TrailNoteRepository } from './trail-note-repository.ts';
import { TripRepository } from './trip-repository.ts';

/** All that is kept in one data folder or database, and what looks for menus from it. */
export type App = {
  readonly shelf: ShelfRepository;
  readonly trips: TripRepository;
  readonly trailNotes: TrailNoteRepository;
  readonly planned: PlannedLots;
  readonly afterwards: AfterwardsRepository;
  readonly settings: SettingsRepository;
  readonly kitchen: KitchenRepository;
  readonly photos: PhotoRepository;
  readonly bin: Bin;
  readonly backups: Backups;
  readonly imports: ImportRepository;
  readonly menus: MenuSearches;
  /** What is read and planned in processes of its own. */
  readonly apart: Apart;
  /** What is being sent. */
  readonly incoming: Incoming;
  /** Who is let in. */
  readonly access: {
    readonly passphrase: Passphrase;
    readonly sessions: SessionRepository;
    readonly links: ReadLinkRepository;
    readonly attempts: AttemptLimit;
  };
  /** @returns the last change that was made to the tables; asks the database @throws as its driver, where it does not answer */
  schema(): Promise<string>;
  /** @returns the calendar date where the program runs, ISO 8601 */
  today(): string;
  close(): Promise<void>;
};

/** A copy of gigabytes takes minutes to look through; what takes longer was made to. */
const LONGEST_LOOK_MS = 30 * 60_000;

/**
 * Opens a data folder, which is made where it is missing.
 *
 * @param url a database of PostgreSQL that holds everything but uploaded files; left out, the folder holds all
 * @throws UserError `Unusable` or `Busy`, naming the file or database and what to do
 */
export async function openApp(
  folder: string,
  clock: () => Date = () => new Date(),
  url?: string,
): Promise<App> {
  const db = await openDatabase(url ?? folder, undefined, folder);
  const now = () => clock().toISOString();
  const menus = new MenuSearches(new PlanJobs(db, clock));
  const apart = new Apart();
  const trips = new TripRepository(db, now);
  return {
    shelf: new ShelfRepository(db, now),
    trips,
    trailNotes: new TrailNoteRepository(db, now),
    planned: new PlannedLots(db, now),
    afterwards: new AfterwardsRepository(db, trips),
    settings: new SettingsRepository(db),
    kitchen: new KitchenRepository(db, now),
    photos: new PhotoRepository(db, now),
    bin: new Bin(db, now),
    backups: new Backups(db, folder, clock, (copy) =>
      apart.do({ kind: 'copy', ...copy }, { taskMs: LONGEST_LOOK_MS }),
    ),
    imports: new ImportRepository(db, join(folder, 'imports'), clock),
    menus,
    apart,
    incoming: new Incoming(join(folder, 'incoming')),
    access: {
      passphrase: new Passphrase(folder),
      sessions: new SessionRepository(db, now),
      links: new ReadLinkRepository(db, now),
      attempts: new AttemptLimit(() => clock().getTime()),
    },
    schema: () => lastChange(db),
    today: () => localDate(clock()),
    close: async () => {
      apart.close();
      await menus.close();
      await db.destroy();
    },
  };
}

let opened: Promise<App> | undefined;

/**
 * The data folder of this program: `RIDGELARDER_DATA`, or `data` where it was started; with the database that `DATABASE_URL` names, if any.
 * Opened once; a failure is tried again at the next call, so that it can be put right without a restart.
 */
export function app(): Promise<App> {
  const open = async () => {
    await keepToOwner(dataFolder());
    return copyingDaily(await openApp(dataFolder(), undefined, databaseUrl()));
  };
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

/** How often it is looked whether the copy of the day is due. */
const LOOK_MS = 3_600_000;

/** The same app, looking through its data and making a copy of it each day until it is closed. */
function copyingDaily(app: App): App {
  const lookAndCopy = async () => {
    await app.backups.lookDaily();
    await app.backups.makeDaily();
  };
  let copying = lookAndCopy();
  void app.incoming.clear(new Date());
  const timer = setInterval(() => {
    copying = copying.then(lookAndCopy);
  }, LOOK_MS).unref();
  const close = async () => {
    clearInterval(timer);
    await copying;
    await app.close();
  };
  return { ...app, close };
}

/** Closes what `app` opened, if it did. */
export async function closeApp(): Promise<void> {
  const open = await opened?.catch(() => undefined);
  await open?.close();
}
