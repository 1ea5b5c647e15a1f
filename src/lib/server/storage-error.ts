import { say, text, type Text } from '../texts/say.ts';
import { UserError } from './errors.ts';

const NOT_WRITABLE = text(
  '"{path}" cannot be written. Allow writing to it and to its folder, or choose another folder with RIDGELARDER_DATA.',
);
const DISK_FULL = text(
  '"{path}" cannot grow because the disk is full; nothing of the last change was kept. Free some space and try again.',
);
const DISK_FAILS = text(
  '"{path}" cannot be read or written because the disk reports an error. Check the disk, or choose another folder with RIDGELARDER_DATA.',
);

/** Primary result codes of SQLite (sqlite.org/rescode.html). */
const SQLITE_BUSY = 5;
const SQLITE_CONSTRAINT = 19;
const DAMAGED = [11, 26];
/** Of the extended ones, SQLITE_IOERR_SHMSIZE: there was no space for the file beside the database that every reader needs. */
const NO_SPACE_BESIDE = 4874;
const BY_SQLITE_CODE: Readonly<Record<number, Text>> = {
  8: NOT_WRITABLE,
  10: DISK_FAILS,
  11: text(
    '"{path}" is damaged. Put back a copy of it (npm run restore), or move it away to start with an empty shelf.',
  ),
  13: DISK_FULL,
  14: text(
    '"{path}" cannot be opened. Check that its folder exists and may be written to, or choose another folder with RIDGELARDER_DATA.',
  ),
  26: text(
    '"{path}" is not a database. Put back a copy of the right file (npm run restore), or move it away to start with an empty shelf.',
  ),
};

const BY_SYSTEM_CODE: Readonly<Record<string, Text>> = {
  EACCES: NOT_WRITABLE,
  EPERM: NOT_WRITABLE,
  EROFS: NOT_WRITABLE,
  ENOENT: text('"{path}" cannot be made. Check its path, or choose another folder with RIDGELARDER_DATA.'),
  EEXIST: text(
    '"{path}" is a file where a folder is needed. Move it away, or choose another folder with RIDGELARDER_DATA.',
  ),
  ENOTDIR: text(
    '"{path}" lies below a file where a folder is needed. Move that file away, or choose another folder with RIDGELARDER_DATA.',
  ),
  ENOSPC: DISK_FULL,
  EDQUOT: DISK_FULL,
  EIO: DISK_FAILS,
};

const extendedCode = (error: unknown): number | undefined =>
  error instanceof Error && 'errcode' in error && typeof error.errcode === 'number'
    ? error.errcode
    : undefined;
const sqliteCode = (error: unknown): number | undefined => {
  const code = extendedCode(error);
  return code === undefined ? undefined : code & 0xff;
};

/** Whether SQLite failed only because another connection holds the lock: nothing was done, so it may be tried again. */
export const isBusy = (error: unknown): boolean => sqliteCode(error) === SQLITE_BUSY;

/** Whether SQLite refuses a row that a rule of its table does not allow. */
export const isConstraint = (error: unknown): boolean => sqliteCode(error) === SQLITE_CONSTRAINT;

/** Whether SQLite says that the file itself is wrong. */
export const isDamaged = (error: unknown): boolean => DAMAGED.includes(sqliteCode(error) ?? 0);

/** Another change of this same program takes long. */
export const stillWriting = (name: string): UserError =>
  new UserError(
    'Busy',
    say(
      'Another change to {name} is still being saved, such as an import; nothing else was changed. Try again in a moment.',
      { name },
    ),
  );

/**
 * @param error what SQLite or the file system threw
 * @param path file or folder that was to be used
 * @returns a UserError that names the path and says what to do; any other error as it is
 */
export function storageError(error: unknown, path: string): unknown {
  if (isBusy(error))
    return new UserError(
      'Busy',
      say('Another program is writing to "{path}"; nothing was changed. Try again in a moment.', { path }),
      {
        cause: error,
      },
    );
  const code = sqliteCode(error);
  const systemCode = error instanceof Error && 'code' in error ? String(error.code) : '';
  const bySqlite = extendedCode(error) === NO_SPACE_BESIDE ? DISK_FULL : BY_SQLITE_CODE[code ?? 0];
  const what = code === undefined ? BY_SYSTEM_CODE[systemCode] : bySqlite;
  return what ? new UserError('Unusable', say(what, { path }), { cause: error }) : error;
}
