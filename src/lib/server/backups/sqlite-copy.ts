import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, rename, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { backup, DatabaseSync } from 'node:sqlite';
import { Worker } from 'node:worker_threads';
import { isDamaged, storageError } from '../storage-error.ts';
import { fileToDisk, folderToDisk, makeFolder } from '../to-disk.ts';

/** All pages at once: page by page, each change meanwhile would make it begin again. */
const ALL_PAGES = 2 ** 31 - 1;
const BUSY_TIMEOUT_MS = 10_000;
/** How the name of a copy ends until it is whole. */
export const UNFINISHED = '.unfinished';
/** How the name of a folder begins in which something is made, and which is gone afterwards. */
export const WORKPLACE = 'opened-';

/** Gives some work a folder of its own among the copies. @throws UserError `Unusable` where none can be made; what `use` throws */
export async function inWorkplace<Result>(
  copies: string,
  use: (place: string) => Promise<Result>,
): Promise<Result> {
  let place: string;
  try {
    await makeFolder(copies);
    place = await mkdtemp(join(copies, WORKPLACE));
  } catch (error) {
    throw storageError(error, resolve(copies));
  }
  try {
    return await use(place);
  } finally {
    await rm(place, { recursive: true, force: true }).catch(() => {});
  }
}

/**
 * Copies a SQLite database, in use or not, as it is at one moment, into a file of its own, but for who is let in. That file is there whole, looked through and on the disk, or not at all.
 *
 * @param to a file that is not there yet; its folder is made where it is missing
 * @throws UserError `Unusable` naming the copy where the disk does not take it, or the database where that is damaged
 */
export async function copySqlite(from: string, to: string): Promise<void> {
  const unfinished = `${to}.${randomUUID()}${UNFINISHED}`;
  try {
    await makeFolder(dirname(to));
    const source = new DatabaseSync(from, { timeout: BUSY_TIMEOUT_MS });
    try {
      await backup(source, unfinished, { rate: ALL_PAGES });
    } finally {
      source.close();
    }
    const copy = new DatabaseSync(unfinished);
    try {
      copy.exec('pragma journal_mode = delete'); // one file, with nothing beside it
      forgetWhoIsLetIn(copy);
    } finally {
      copy.close();
    }
    await refuseUnlessSound(unfinished, 'integrity_check');
    await fileToDisk(unfinished);
    await rename(unfinished, to);
    await folderToDisk(dirname(to));
  } catch (error) {
    for (const left of [unfinished, `${unfinished}-journal`]) await rm(left, { force: true }).catch(() => {});
    throw storageError(error, resolve(isDamaged(error) ? from : to));
  }
}

/** Keeps a SQLite database as it is, damage and all. @throws UserError `Unusable` where the disk does not take it */
export async function keepAside(from: string): Promise<string> {
  const aside = `${from}.damaged-${new Date().toISOString().replace(/[-:.]/g, '')}`;
  try {
    const source = new DatabaseSync(from, { timeout: BUSY_TIMEOUT_MS, readOnly: true });
    try {
      await backup(source, aside, { rate: ALL_PAGES });
    } finally {
      source.close();
    }
    await fileToDisk(aside);
    await folderToDisk(dirname(aside));
  } catch (error) {
    await rm(aside, { force: true }).catch(() => {});
    throw storageError(error, resolve(aside));
  }
  return aside;
}

/** What belongs to a place and not to its data: it is not put back, and a copy that is carried elsewhere need not hold it. */
const OF_THE_PLACE = ['sessions', 'readLinks', 'uploads', 'planJobs'];

function forgetWhoIsLetIn(copy: DatabaseSync): void {
  copy.exec('pragma secure_delete = on');
  const known = copy.prepare("select name from sqlite_master where type = 'table'").all();
  for (const { name } of known)
    if (OF_THE_PLACE.includes(String(name))) copy.exec(`delete from "${String(name)}"`);
}

/**
 * Looks through a SQLite file in a thread of its own, as a large one takes seconds. As text, so that it is the same from the sources and from the build, and
 * needs no file to be found.
 */
const LOOK_THROUGH = `
  const { parentPort, workerData: { path, check } } = require('node:worker_threads');
  const { DatabaseSync } = require('node:sqlite');
  try {
    const database = new DatabaseSync(path);
    try {
      const rows = database.prepare('pragma ' + check).all();
      parentPort.postMessage({ found: rows.map((row) => String(Object.values(row)[0])) });
    } finally {
      database.close();
    }
  } catch ({ message, errcode }) {
    parentPort.postMessage({ message, errcode });
  }`;

type Looked = { readonly found: readonly string[] } | { readonly message: string; readonly errcode?: number };

/** @throws Error that `isDamaged` knows, with what is wrong; what SQLite says where it cannot be read */
export async function refuseUnlessSound(
  path: string,
  check: 'quick_check' | 'integrity_check',
): Promise<void> {
  const thread = new Worker(LOOK_THROUGH, { eval: true, workerData: { path, check } });
  const late = AbortSignal.timeout(LONGEST_LOOK_MS);
  const [looked] = await (once(thread, 'message', { signal: late }) as Promise<[Looked]>).finally(
    () => void thread.terminate(),
  );
  const { message, errcode } =
    'found' in looked ? { message: looked.found.join('; '), errcode: SQLITE_CORRUPT } : looked;
  if (message !== 'ok') throw Object.assign(new Error(message), { errcode });
}

/** A database of gigabytes takes minutes; what takes longer was made to. */
const LONGEST_LOOK_MS = 30 * 60_000;
/** Primary result code of SQLite for a damaged database (sqlite.org/rescode.html). */
const SQLITE_CORRUPT = 11;
