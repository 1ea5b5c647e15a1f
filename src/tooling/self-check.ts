import { accessSync, constants, existsSync, mkdirSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { readCopyName } from '../lib/server/backups/copy-names.ts';
import { BACKUP_FOLDER, DATABASE_FILE } from '../lib/server/data-folder.ts';
import { LOG_KINDS, logKind } from '../lib/server/log.ts';

/** What the program is written for. `npm start` brings its own. */
const LEAST_NODE = 24;

/**
 * Looks before the start at what the program cannot do without, and changes nothing but to make the data folder. Whether the tables are of this version is
 * for whoever opens them to say.
 *
 * @param node version of Node, such as "26.9.0"
 * @returns what is wrong and what to do, for the user; `undefined` where it can start
 */
export function selfCheck(dataFolder: string, node = process.versions.node): string | undefined {
  if (Number.parseInt(node, 10) < LEAST_NODE)
    return `This is Node ${node}; at least ${LEAST_NODE} is needed. Start with "npm start", which brings its own.`;
  if (logKind() === undefined)
    return `RIDGELARDER_LOG is "${process.env['RIDGELARDER_LOG']}". Set it to one of ${LOG_KINDS.join(', ')}, or leave it out for none.`;
  const folder = path.resolve(dataFolder);
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch (error) {
    return `The data folder "${folder}" cannot be written to (${(error as NodeJS.ErrnoException).code}). Give this user the right to, or name another folder in RIDGELARDER_DATA.`;
  }
  const file = path.join(folder, DATABASE_FILE);
  const isMissing = !existsSync(file) || statSync(file).size === 0;
  const newest = isMissing && !process.env['DATABASE_URL'] ? newestCopy(folder) : undefined;
  if (newest !== undefined)
    return `The database "${file}" is ${existsSync(file) ? 'empty' : 'missing'}, but there are copies of it, so nothing was started. Put one back: npm run restore -- --from "${newest}" --yes. To begin with an empty shelf instead, move "${path.dirname(newest)}" away.`;
  const damage = existsSync(file) ? damageOf(file) : undefined;
  return damage === undefined
    ? undefined
    : `The database "${file}" is damaged (${damage}), and was left as it is. Put back a copy of the data: npm run restore`;
}

/** @returns the path of the newest copy in a data folder, if there is any */
function newestCopy(folder: string): string | undefined {
  const copies = path.join(folder, BACKUP_FOLDER);
  if (!existsSync(copies)) return undefined;
  const name = readdirSync(copies)
    .filter((entry) => readCopyName(entry) !== undefined)
    .toSorted()
    .at(-1);
  return name && path.join(copies, name);
}

function damageOf(file: string): string | undefined {
  try {
    const database = new DatabaseSync(file, { readOnly: true });
    try {
      const found = database.prepare('pragma quick_check(1)').get()?.['quick_check'];
      return found === 'ok' ? undefined : String(found);
    } finally {
      database.close();
    }
  } catch (error) {
    const { errcode, message } = error as { errcode?: number; message: string };
    // Another program that has it open is none of our business here.
    return errcode === BUSY ? undefined : message;
  }
}

const BUSY = 5;
