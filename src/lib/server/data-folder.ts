import { chmod, mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { isMainThread } from 'node:worker_threads';

/** Where everything is kept: `RIDGELARDER_DATA`, or `data` where the program was started. */
export const dataFolder = (): string => process.env['RIDGELARDER_DATA'] || 'data';

/** The file of a data folder that holds everything. */
export const DATABASE_FILE = 'ridgelarder.sqlite';

/** Within a data folder: the copies. */
export const BACKUP_FOLDER = 'backups';

/**
 * Keeps a data folder to its owner: folders 700, files 600, and so what is made from now on. What belongs to somebody else, or lies where there are no such
 * rights, is left as it is.
 */
export async function keepToOwner(folder: string): Promise<void> {
  if (isMainThread) process.umask(0o077);
  await mkdir(folder, { recursive: true, mode: 0o700 }).catch(() => undefined);
  const inside = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  await chmod(folder, 0o700).catch(() => undefined);
  for (const entry of inside)
    if (entry.isFile() || entry.isDirectory())
      await chmod(join(entry.parentPath, entry.name), entry.isFile() ? 0o600 : 0o700).catch(() => undefined);
}
