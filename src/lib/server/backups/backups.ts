import { createWriteStream } from 'node:fs';
import { copyFile, readdir, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { sql } from 'kysely';
import { say } from '../../texts/say.ts';
import { BACKUP_FOLDER, DATABASE_FILE } from '../data-folder.ts';
import { copyDatabase } from '../database/copy-database.ts';
import { isOnPostgres } from '../database/migrations.ts';
import { openDatabase, reading, writing, type Database } from '../database/open-database.ts';
import { replaceData } from '../database/replace-data.ts';
import { UserError } from '../errors.ts';
import { wrongBalances } from '../ledger.ts';
import { isConstraint, isDamaged, storageError } from '../storage-error.ts';
import { compareData, type Comparison } from './compare-data.ts';
import { copyName, readCopyName, superfluous, type Copy, type Reason } from './copy-names.ts';
import { writeDataFile } from './data-file.ts';
import { lookThroughCopy, type CopyToLook } from './look-through-copy.ts';
import {
  copySqlite,
  inWorkplace,
  keepAside,
  refuseUnlessSound,
  UNFINISHED,
  WORKPLACE,
} from './sqlite-copy.ts';

export type KeptCopy = Copy & { readonly bytes: number };

/** `structure`: the file itself; `counts`: the numbers of pouches are not what the ledger adds up to, and nobody knows which of the two is right. */
export type Damage = { readonly kind: 'structure' | 'counts'; readonly at: string; readonly message: string };

const DAY_MS = 86_400_000;
const MOST_NAMED = 20;

/** Copies of all data, each a SQLite file in `backups` of the data folder, wherever the data itself is kept. */
export class Backups {
  /** The last copy that should have been made by itself and was not, with the reason. */
  failure: { readonly at: string; readonly message: string } | undefined;
  /** What was found wrong with the data when it was last looked through. */
  damage: Damage | undefined;
  #lookedAt = -Infinity;
  readonly #db: Database;
  readonly #dataFolder: string;
  readonly #folder: string;
  readonly #clock: () => Date;
  readonly #look: (copy: CopyToLook) => Promise<unknown>;

  /** @param look looks through what may be a copy, as `lookThroughCopy` does, which it is where it is left out */
  constructor(
    db: Database,
    dataFolder: string,
    clock: () => Date,
    look: (copy: CopyToLook) => Promise<unknown> = lookThroughCopy,
  ) {
    this.#db = db;
    this.#dataFolder = dataFolder;
    this.#folder = join(dataFolder, BACKUP_FOLDER);
    this.#clock = clock;
    this.#look = look;
  }

  /** Where the copies are. */
  get folder(): string {
    return resolve(this.#folder);
  }

  /** All copies, the newest first. */
  async list(): Promise<KeptCopy[]> {
    const copies: KeptCopy[] = [];
    for (const name of await this.#names()) {
      const copy = readCopyName(name);
      const file = copy && (await stat(join(this.#folder, name)).catch(() => undefined));
      if (file?.isFile()) copies.push({ ...copy!, bytes: file.size });
    }
    return copies.sort((one, other) => (one.at < other.at ? 1 : -1));
  }

  /** Copies everything as it is now. @throws UserError `Unusable` naming file and reason */
  async make(reason: Reason): Promise<Copy> {
    const copy = this.#named(reason);
    await this.#copyTo(join(this.#folder, copy.name));
    return copy;
  }

  /** Looks through all data where that was not done for a day. What is found is said on every page, and nothing is put right by itself. */
  async lookDaily(): Promise<void> {
    const now = this.#clock().getTime();
    if (Math.abs(now - this.#lookedAt) >= DAY_MS)
      await this.look().catch((error: unknown) => console.error(new Date().toISOString(), error));
  }

  /** Looks through all data. */
  async look(): Promise<Damage | undefined> {
    const found = await this.#findDamage();
    this.#lookedAt = this.#clock().getTime();
    this.damage = found && { ...found, at: this.#clock().toISOString() };
    if (this.damage) console.error(`${this.damage.at} the data is damaged: ${this.damage.message}`);
    return this.damage;
  }

  /**
   * Makes the indexes of a SQLite database anew from its tables, and looks through it again. As it was, it is kept aside.
   *
   * @returns the path of what was kept
   * @throws UserError `Refused` where that did not help, and it is as it was; `Unusable` where it cannot be kept aside
   */
  async rebuildIndexes(): Promise<string> {
    const aside = await keepAside(this.#file);
    try {
      await writing(this.#db, (trx) => sql`reindex`.execute(trx));
    } catch (error) {
      throw isDamaged(error) || isConstraint(error) || error instanceof UserError
        ? notByIndexes(error)
        : error;
    }
    if ((await this.look())?.kind === 'structure') throw notByIndexes(this.damage);
    return resolve(aside);
  }

  async #findDamage(): Promise<Pick<Damage, 'kind' | 'message'> | undefined> {
    if (!isOnPostgres(this.#db))
      try {
        await refuseUnlessSound(this.#file, 'integrity_check');
      } catch (error) {
        if (!isDamaged(error)) throw error;
        return { kind: 'structure', message: error instanceof Error ? error.message : String(error) };
      }
    const wrong = await reading(this.#db, async (trx) => {
      const ids = await wrongBalances(trx);
      if (ids.length === 0) return undefined;
      const named = await trx
        .selectFrom('lots')
        .select('code')
        .where('id', 'in', ids.slice(0, MOST_NAMED))
        .orderBy('code')
        .execute();
      return { count: ids.length, codes: named.map(({ code }) => code).join(', ') };
    });
    return (
      wrong && {
        kind: 'counts',
        message: say(
          'The counts of {count, plural, one {# lot} other {# lots}} are not what their history adds up to: {codes}.',
          wrong,
        ),
      }
    );
  }

  get #file(): string {
    return join(this.#dataFolder, DATABASE_FILE);
  }

  /** Makes the copy of the day where the last one is a day old, and clears away what is superfluous. A failure is kept for the page. */
  async makeDaily(): Promise<void> {
    try {
      // One of the future was made when the clock was wrong, and says nothing of today.
      const now = this.#clock().getTime();
      const last = (await this.list()).find(({ reason, at }) => reason === 'daily' && Date.parse(at) <= now);
      if (!last || now - Date.parse(last.at) >= DAY_MS) await this.make('daily');
      await this.thin();
      this.failure = undefined;
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      this.failure = { at: this.#clock().toISOString(), message };
      console.error(`${this.failure.at} no copy was made: ${message}`);
    }
  }

  /** Removes copies that are superfluous beside newer ones, unless the data or the newest copy is damaged, and what an interrupted copy left behind. */
  async thin(): Promise<void> {
    const now = this.#clock();
    const copies = await this.list();
    const gone = superfluous(copies, now);
    if (gone.length > 0 && !this.damage) {
      await this.#refuseBadCopy(copies.find(({ at }) => Date.parse(at) <= now.getTime()));
      for (const { name } of gone) await rm(join(this.#folder, name));
    }
    for (const name of await this.#names()) {
      if (!name.includes(UNFINISHED) && !name.startsWith(WORKPLACE)) continue;
      const left = await stat(join(this.#folder, name)).catch(() => undefined);
      if (left && now.getTime() - left.mtimeMs >= DAY_MS)
        await rm(join(this.#folder, name), { recursive: true, force: true });
    }
  }

  /** @throws UserError `NotFound` */
  async get(name: string): Promise<Copy> {
    const copy = readCopyName(name);
    if (!copy || !(await stat(join(this.#folder, name)).catch(() => undefined)))
      throw new UserError('NotFound', say('Backup not found. See the list of backups.'));
    return copy;
  }

  /** @returns the path of a copy @throws UserError `NotFound` */
  async pathOf(name: string): Promise<string> {
    return join(this.#folder, (await this.get(name)).name);
  }

  /**
   * Makes a file of everything as it is now, which is gone when it has been used.
   *
   * @param kind a SQLite database, or JSON as docs/data-file.md says
   */
  async withFile<Result>(kind: 'sqlite' | 'json', use: (path: string) => Promise<Result>): Promise<Result> {
    return this.#inWorkplace(async (place) => {
      const path = join(place, kind);
      await (kind === 'json' ? writeDataFile(this.#db, path) : this.#copyTo(path));
      return use(path);
    });
  }

  /** What would change if a copy were put back. @throws UserError `NotFound`, or `Refused` where it cannot be used */
  async compare(name: string): Promise<Comparison> {
    return this.#opened(name, (then) => compareData(this.#db, then));
  }

  /**
   * Puts a copy in the place of what is there, whole or not at all. What was there is copied before, when nobody writes any more.
   *
   * @returns the copy of what was there
   * @throws UserError `NotFound`, `Refused` where it cannot be used, `Unusable` where the copy of what is there cannot be made
   */
  async restore(name: string): Promise<Copy> {
    return this.#opened(name, async (then) => {
      const before = this.#named('before-restore');
      await replaceData(then, this.#db, async () => {
        const path = join(this.#folder, before.name);
        await rm(path, { force: true }); // of a try before
        await this.#copyTo(path);
      });
      return before;
    });
  }

  /**
   * Takes a file in among the copies, once it is looked through: its size, what kind of file it is, whether it is whole and of a version that is known, and
   * whether everything in it can be read.
   *
   * @param fileName what the user calls it
   * @param content a SQLite database as it is kept or copied here, or JSON as `withFile` makes it
   * @throws UserError `TooLarge`, `Refused` with what is wrong
   */
  async takeIn(fileName: string, content: AsyncIterable<Uint8Array>, maxBytes = Infinity): Promise<Copy> {
    return this.#inWorkplace(async (place) => {
      const file = join(place, 'file');
      let bytes = 0;
      const counted = async function* () {
        for await (const chunk of content) {
          bytes += chunk.byteLength;
          if (bytes > maxBytes) throw tooLarge(fileName, maxBytes);
          yield chunk;
        }
      };
      await pipeline(counted, createWriteStream(file)).catch((error: unknown) => {
        throw storageError(error, resolve(file));
      });
      const copy = this.#named('uploaded');
      await this.#look({ file, name: fileName, place, to: join(this.#folder, copy.name) });
      return copy;
    });
  }

  /** Old copies are all that there is where the newest one is bad. */
  async #refuseBadCopy(newest: Copy | undefined): Promise<void> {
    if (!newest) return;
    const path = join(this.#folder, newest.name);
    try {
      await refuseUnlessSound(path, 'integrity_check');
    } catch (error) {
      if (!isDamaged(error)) throw error;
      throw new UserError(
        'Unusable',
        say(
          'The newest copy, "{path}", is damaged, so older ones are not cleared away. Check the disk, move that copy away, and make a new one.',
          { path: resolve(path) },
        ),
        { cause: error },
      );
    }
  }

  #named(reason: Reason): Copy {
    return readCopyName(copyName(this.#clock(), reason))!;
  }

  async #copyTo(path: string): Promise<void> {
    if (!isOnPostgres(this.#db)) return copySqlite(this.#file, path);
    await this.#inWorkplace(async (place) => {
      const copy = await openDatabase(place);
      try {
        await copyDatabase(this.#db, copy);
      } finally {
        await copy.destroy();
      }
      await copySqlite(join(place, DATABASE_FILE), path);
    });
  }

  /** Opens a copy of a copy, brought up to date. */
  async #opened<Result>(name: string, use: (db: Database) => Promise<Result>): Promise<Result> {
    const path = await this.pathOf(name);
    return this.#inWorkplace(async (place) => {
      const file = join(place, 'file');
      await copyFile(path, file).catch((error: unknown) => {
        throw storageError(error, resolve(file));
      });
      await this.#look({ file, name, place });
      const db = await openDatabase(place);
      try {
        return await use(db);
      } finally {
        await db.destroy();
      }
    });
  }

  #inWorkplace<Result>(use: (place: string) => Promise<Result>): Promise<Result> {
    return inWorkplace(this.#folder, use);
  }

  #names(): Promise<string[]> {
    return readdir(this.#folder).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      throw storageError(error, resolve(this.#folder));
    });
  }
}

const notByIndexes = (cause: unknown): UserError =>
  new UserError(
    'Refused',
    say('More than the indexes is damaged, so they could not be rebuilt. Put back a copy of the data.'),
    { cause },
  );

const tooLarge = (name: string, maxBytes: number): UserError =>
  new UserError(
    'TooLarge',
    say(
      '"{name}" is larger than {most} MB, the most that a page takes. Put it back with "npm run restore" where Ridgelarder runs.',
      { name, most: Math.floor(maxBytes / 1_000_000) },
    ),
  );
