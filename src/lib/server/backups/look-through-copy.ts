import { open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { say } from '../../texts/say.ts';
import { DATABASE_FILE } from '../data-folder.ts';
import { openDatabase } from '../database/open-database.ts';
import { UserError } from '../errors.ts';
import { isDamaged } from '../storage-error.ts';
import { checkData } from './check-data.ts';
import { readDataFile } from './data-file.ts';
import { noCopy } from './no-copy.ts';
import { refuseForeignSchema } from './refuse-foreign-schema.ts';
import { copySqlite, refuseUnlessSound } from './sqlite-copy.ts';

/** A file that may be a copy. */
export type CopyToLook = {
  readonly file: string;
  /** What the user calls it. */
  readonly name: string;
  /** A folder of its own, where it is opened. */
  readonly place: string;
  /** Where it is kept when it is well; left out, nowhere. */
  readonly to?: string;
};

/** How a file of SQLite begins (sqlite.org/fileformat.html). */
const SQLITE_HEADER = 'SQLite format 3\0';

/**
 * Looks through a file that may be a copy of all data: what kind of file it is, whether it is whole, ours and of a version that is known, and whether
 * everything in it can be read. It is moved, and then is the database of its place, brought up to date.
 *
 * @throws UserError `Refused` with what is wrong
 */
export async function lookThroughCopy({ file, name, place, to }: CopyToLook): Promise<void> {
  const begin = await beginOf(file);
  const path = join(place, DATABASE_FILE);
  if (begin === SQLITE_HEADER) {
    await rename(file, path);
    await refuseUnlessOurs(path, name);
  } else if (begin.trimStart().startsWith('{')) await readDataFile(file, name, place);
  else throw noCopy(name);
  const db = await openDatabase(place);
  try {
    await checkData(db, name);
  } finally {
    await db.destroy();
  }
  if (to !== undefined) await copySqlite(path, to);
}

async function beginOf(path: string): Promise<string> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(SQLITE_HEADER.length));
    return buffer.toString('latin1', 0, bytesRead);
  } finally {
    await file.close();
  }
}

/** @throws UserError `Refused` where a SQLite file is damaged, of another program, or of a newer version of this one */
async function refuseUnlessOurs(path: string, name: string): Promise<void> {
  try {
    // Before anything else is done with it: a check of the file already runs what its tables say of their columns.
    await refuseForeignSchema(path, name);
    await refuseUnlessSound(path, 'integrity_check');
  } catch (error) {
    if (!isDamaged(error)) throw error;
    throw new UserError(
      'Refused',
      say('"{name}" is damaged, so nothing was changed. Choose another copy.', { name }),
      { cause: error },
    );
  }
}
