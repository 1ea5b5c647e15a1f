import { join } from 'node:path';
import { BACKUP_FOLDER, DATABASE_FILE } from '../data-folder.ts';
import { copyName } from './copy-names.ts';
import { copySqlite } from './sqlite-copy.ts';

/** Copies a data folder before its tables are changed. @throws UserError `Unusable` where that is not possible */
export async function copyBeforeUpdate(dataFolder: string): Promise<void> {
  const name = copyName(new Date(), 'before-update');
  await copySqlite(join(dataFolder, DATABASE_FILE), join(dataFolder, BACKUP_FOLDER, name));
}
