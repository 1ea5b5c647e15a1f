import { UserError } from './errors.ts';

const ELSEWHERE = 'or choose another folder with RIDGELARDER_DATA';
const NOT_WRITABLE = `cannot be written. Allow writing to it and to its folder, ${ELSEWHERE}.`;
const DISK_FULL =
  'cannot grow because the disk is full; nothing of the last change was kept. Free some space and try again.';
const DISK_FAILS = `cannot be read or written because the disk reports an error. Check the disk, ${ELSEWHERE}.`;

/** Primary result codes of SQLite (sqlite.org/rescode.html). */
const SQLITE_BUSY = 5;
const DAMAGED = [11, 26];
const BY_SQLITE_CODE: Readonly<Record<number, string>> = {
  8: NOT_WRITABLE,
  10: DISK_FAILS,
  11: 'is damaged. Put back a copy of it (npm run restore), or move it away to start with an empty shelf.',
  13: DISK_FULL,
  14: `cannot be opened. Check that its folder exists and may be written to, ${ELSEWHERE}.`,
  26: 'is not a database. Put back a copy of the right file (npm run restore), or move it away to start with an empty shelf.',
};

const BY_SYSTEM_CODE: Readonly<Record<string, string>> = {
  EACCES: NOT_WRITABLE,
  EPERM: NOT_WRITABLE,
  EROFS: NOT_WRITABLE,
  ENOENT: `cannot be made. Check its path, ${ELSEWHERE}.`,
  EEXIST: `is a file where a folder is needed. Move it away, ${ELSEWHERE}.`,
  ENOTDIR: `lies below a file where a folder is needed. Move that file away, ${ELSEWHERE}.`,
  ENOSPC: DISK_FULL,
  EDQUOT: DISK_FULL,
  EIO: DISK_FAILS,
};

const sqliteCode = (error: unknown): number | undefined =>
  error instanceof Error && 'errcode' in error && typeof error.errcode === 'number'
    ? error.errcode & 0xff
    : undefined;

/** Whether SQLite failed only because another connection holds the lock: nothing was done, so it may be tried again. */
export const isBusy = (error: unknown): boolean => sqliteCode(error) === SQLITE_BUSY;

/** Whether SQLite says that the file itself is wrong. */
export const isDamaged = (error: unknown): boolean => DAMAGED.includes(sqliteCode(error) ?? 0);

/** Another change of this same program takes long. */
export const stillWriting = (name: string): UserError =>
  new UserError(
    'Busy',
    `A longer change to ${name} is still being written, such as an import; nothing else was changed. Try again in a moment.`,
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
      `Another program is writing to "${path}"; nothing was changed. Try again in a moment.`,
      {
        cause: error,
      },
    );
  const code = sqliteCode(error);
  const systemCode = error instanceof Error && 'code' in error ? String(error.code) : '';
  const what = code === undefined ? BY_SYSTEM_CODE[systemCode] : BY_SQLITE_CODE[code];
  return what ? new UserError('Unusable', `"${path}" ${what}`, { cause: error }) : error;
}
