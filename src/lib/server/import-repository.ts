import { randomUUID } from 'node:crypto';
import { mkdir, open, readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { Transaction } from 'kysely';
import { z } from 'zod';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { NO_REPAIRS, Repairs } from '../shelf-csv/repairs.ts';
import { UserError } from './errors.ts';
import type { Watch } from './in-parts.ts';
import { RunningWork } from './running-work.ts';
import { takeInLots } from './shelf-repository.ts';
import { storageError } from './storage-error.ts';
import { parseStored } from './stored-json.ts';
import { say, sayNumber } from '../texts/say.ts';

export type Upload = { id: string; fileName: string; path: string; bytes: number; repairs: Repairs };

/** How far the reading or writing of an upload is. */
export type ImportProgress =
  /** `share` of the file that is read. */
  | { readonly phase: 'read'; readonly rows: number; readonly share: number }
  | { readonly phase: 'write'; readonly rows: number; readonly of: number };

/** Uploaded files that wait for their import, and how the columns of files were understood before. */
export class ImportRepository {
  /** What is read and written of uploads now. The import of an upload runs under its id. */
  readonly work = new RunningWork<ImportProgress>();
  readonly #db: Database;
  readonly #folder: string;
  readonly #clock: () => Date;

  constructor(db: Database, folder: string, clock: () => Date) {
    this.#db = db;
    this.#folder = folder;
    this.#clock = clock;
  }

  /**
   * Writes an upload to disk as it comes in.
   *
   * @param maxBytes the most that is taken
   * @throws UserError `TooLarge`, or `Unusable` where the disk does not take it; nothing is kept then
   */
  async keepUpload(
    fileName: string,
    stream: AsyncIterable<Uint8Array>,
    maxBytes: number,
  ): Promise<{ id: string; bytes: number }> {
    const id = randomUUID();
    const path = this.#path(id);
    let bytes = 0;
    const counted = async function* () {
      for await (const chunk of stream) {
        bytes += chunk.byteLength;
        if (bytes > maxBytes) throw tooLarge(fileName, maxBytes);
        yield chunk;
      }
    };
    try {
      await mkdir(this.#folder, { recursive: true });
      // Opened before anything can break off: opened after, it would be made again when it has been removed.
      const file = await open(path, 'wx');
      await pipeline(counted, file.createWriteStream());
      const row = { id, fileName, bytes, keptAt: this.#clock().toISOString(), repairs: null };
      await writing(this.#db, (trx) => trx.insertInto('uploads').values(row).execute());
    } catch (error) {
      await rm(path, { force: true }).catch(() => {});
      throw storageError(error, path);
    }
    return { id, bytes };
  }

  async upload(id: string): Promise<Upload | undefined> {
    const row = await reading(this.#db, (trx) =>
      trx
        .selectFrom('uploads')
        .select(['id', 'fileName', 'bytes', 'repairs'])
        .where('id', '=', id)
        .executeTakeFirst(),
    );
    if (!row) return undefined;
    const repairs =
      row.repairs === null
        ? NO_REPAIRS
        : parseStored(Repairs, row.repairs, () => say('Corrections to a file'));
    return { ...row, repairs, path: this.#path(row.id) };
  }

  /**
   * Keeps what a person corrects in a table, beside what was corrected before.
   *
   * @throws UserError `NotFound` where the upload is gone
   */
  async repair(id: string, more: Repairs): Promise<void> {
    await writing(this.#db, async (trx) => {
      const row = await trx.selectFrom('uploads').select('repairs').where('id', '=', id).executeTakeFirst();
      if (!row) throw uploadIsGone();
      const before =
        row.repairs === null
          ? NO_REPAIRS
          : parseStored(Repairs, row.repairs, () => say('Corrections to a file'));
      const isSame = (one: Repairs['everywhere'][number]) =>
        more.everywhere.some(({ column, from }) => column === one.column && from === one.from);
      const repairs: Repairs = {
        cells: { ...before.cells, ...more.cells },
        everywhere: [...before.everywhere.filter((one) => !isSame(one)), ...more.everywhere],
        leftOut: [...new Set([...before.leftOut, ...more.leftOut])],
      };
      await trx
        .updateTable('uploads')
        .set({ repairs: JSON.stringify(repairs) })
        .where('id', '=', id)
        .execute();
    });
  }

  /**
   * Takes the lots of an upload onto the shelf and removes the upload, both or none of it: no upload is imported twice.
   *
   * @throws UserError as `ShelfRepository.importLots`, or `NotFound` where the upload is gone; the reason of `watch.signal`
   *   where it was stopped
   */
  async importUpload({ id, fileName }: Upload, lots: readonly PouchLot[], watch: Watch): Promise<void> {
    await writing(this.#db, async (trx) => {
      if (!(await forget(trx, id))) throw uploadIsGone();
      await takeInLots(
        trx,
        this.#clock().toISOString(),
        lots,
        say('from "{file}"', { file: fileName }),
        watch,
      );
    });
    // What is left of it is cleared away with other old files.
    await rm(this.#path(id), { force: true }).catch(() => {});
  }

  /** Removes an upload and its file; one that is gone already is no error. */
  async removeUpload(id: string): Promise<void> {
    const removed = await writing(this.#db, (trx) => forget(trx, id));
    if (removed) await rm(this.#path(id), { force: true });
  }

  /** Removes uploads that nobody imported, and files that an interrupted upload left behind. @returns how many files */
  async removeOldUploads(olderThanDays: number): Promise<number> {
    const before = new Date(this.#clock().getTime() - olderThanDays * 86_400_000);
    await writing(this.#db, (trx) =>
      trx.deleteFrom('uploads').where('keptAt', '<', before.toISOString()).execute(),
    );
    const kept = await reading(this.#db, (trx) => trx.selectFrom('uploads').select('id').execute());
    const ids = new Set(kept.map(({ id }) => id));
    await mkdir(this.#folder, { recursive: true });
    let removed = 0;
    for (const name of await readdir(this.#folder)) {
      if (ids.has(name)) continue;
      const file = await stat(this.#path(name)).catch(() => undefined);
      // What is gone was imported or put away meanwhile.
      if (!file || file.mtime >= before) continue;
      await rm(this.#path(name), { force: true });
      removed += 1;
    }
    return removed;
  }

  /** @param headerSignature what tells files of the same columns from others */
  async rememberMapping(headerSignature: string, mapping: unknown): Promise<void> {
    const json = JSON.stringify(mapping);
    await writing(this.#db, (trx) =>
      trx
        .insertInto('mappings')
        .values({ headerSignature, mapping: json })
        .onConflict((conflict) => conflict.column('headerSignature').doUpdateSet({ mapping: json }))
        .execute(),
    );
  }

  /** @returns the mapping as it was remembered; the caller checks its form */
  async mappingFor(headerSignature: string): Promise<unknown> {
    const row = await reading(this.#db, (trx) =>
      trx
        .selectFrom('mappings')
        .select('mapping')
        .where('headerSignature', '=', headerSignature)
        .executeTakeFirst(),
    );
    return row && parseStored(z.unknown(), row.mapping, () => say('A remembered mapping'));
  }

  #path(id: string): string {
    return join(this.#folder, id);
  }
}

/** @returns whether the upload was still there */
async function forget(trx: Transaction<Tables>, id: string): Promise<boolean> {
  const row = await trx.deleteFrom('uploads').where('id', '=', id).returning('id').executeTakeFirst();
  return row !== undefined;
}

export const uploadIsGone = (): UserError =>
  new UserError(
    'NotFound',
    say('This file is no longer here: it was imported or discarded. Choose it again under Shelf, Import.'),
  );

function tooLarge(fileName: string, maxBytes: number): UserError {
  return new UserError(
    'TooLarge',
    say(
      '"{file}" is larger than {most} MB, the most that is taken at once. Is it the right file? A longer list can be imported in parts.',
      { file: fileName, most: sayNumber(maxBytes / 1_000_000, { maximumFractionDigits: 3 }) },
    ),
  );
}
