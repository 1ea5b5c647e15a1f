import { createReadStream } from 'node:fs';
import { copyFile, rename, stat } from 'node:fs/promises';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { Backups } from '../lib/server/backups/backups.ts';
import type { Comparison } from '../lib/server/backups/compare-data.ts';
import { refuseUnlessSound } from '../lib/server/backups/sqlite-copy.ts';
import { dataFolder, DATABASE_FILE } from '../lib/server/data-folder.ts';
import { databaseUrl, openDatabase, type Database } from '../lib/server/database/open-database.ts';
import { UserError } from '../lib/server/errors.ts';
import { isDamaged, storageError } from '../lib/server/storage-error.ts';
import type { CommandResult } from './copy-data-command.ts';

const BACKUP_HELP = `Copies all data while Ridgelarder runs or not.

  npm run --silent backup [-- --to FILE]

  --to FILE   a file that is not there yet: NAME.sqlite for a database in one file, NAME.json for JSON (docs/data-file.md);
              left out, the copy is put among those in the folder "backups" of the data folder
  --help      this text

The data folder is ./data, or the one that RIDGELARDER_DATA names, with the database of DATABASE_URL where that is set.
Exit code 0: copied; 2: it could not be copied, and standard error says why.
`;

const RESTORE_HELP = `Puts a copy of all data in the place of what is there, whole or not at all. What is there is copied before.

  npm run --silent restore -- --from FILE [--yes] [--move-damaged]

  --from FILE      a copy: of the folder "backups", downloaded, or exported as JSON
  --yes            does it; without, it only says what would change
  --move-damaged   where the database that is there is damaged and cannot be opened: moves it aside and begins with an empty one
  --help           this text

The data folder is ./data, or the one that RIDGELARDER_DATA names, with the database of DATABASE_URL where that is set.
Ridgelarder may run meanwhile, but not with --move-damaged. Exit code 0: done; 2: nothing was changed, and standard error says why.
`;

/** The command behind `npm run backup`. @param args what stands behind the `--` */
export function backupCommand(args: readonly string[]): Promise<CommandResult> {
  return telling(async () => {
    const { to, help } = options(args, { to: { type: 'string' }, help: { type: 'boolean' } });
    if (help) return BACKUP_HELP;
    const kind =
      to === undefined || /\.sqlite$/i.test(String(to))
        ? 'sqlite'
        : /\.json$/i.test(String(to))
          ? 'json'
          : undefined;
    if (!kind) throw new UserError('Refused', `"${to}" is neither NAME.sqlite nor NAME.json. See --help.`);
    return withBackups(false, async (backups) => {
      if (typeof to !== 'string') {
        const { name } = await backups.make('by-hand');
        return `Copied to ${path.join(backups.folder, name)}\n`;
      }
      if (await stat(to).catch(() => undefined))
        throw new UserError('Refused', `"${to}" is there already. Name another file, or move that one away.`);
      await backups.withFile(kind, (file) =>
        copyFile(file, to).catch((error: unknown) => {
          throw storageError(error, path.resolve(to));
        }),
      );
      return `Copied to ${path.resolve(to)}\n`;
    });
  });
}

/** The command behind `npm run restore`. @param args what stands behind the `--` */
export function restoreCommand(args: readonly string[]): Promise<CommandResult> {
  return telling(async () => {
    const given = options(args, {
      from: { type: 'string' },
      yes: { type: 'boolean' },
      'move-damaged': { type: 'boolean' },
      help: { type: 'boolean' },
    });
    if (given.help) return RESTORE_HELP;
    const { from } = given;
    if (typeof from !== 'string') throw new UserError('Refused', 'Name a copy, with --from. See --help.');
    if (!(await stat(from).catch(() => undefined)))
      throw new UserError('NotFound', `There is no file "${path.resolve(from)}".`);
    return withBackups(given['move-damaged'] === true, async (backups, moved) => {
      const { name } = await backups.takeIn(path.basename(from), createReadStream(from));
      const told = `${moved}${inWords(await backups.compare(name))}`;
      if (!given.yes)
        return `${told}\nNothing was changed. To do it, say --yes; the copy is taken in as ${path.join(backups.folder, name)}\n`;
      const before = await backups.restore(name);
      return `${told}\nDone. What was there before is in ${path.join(backups.folder, before.name)}\n`;
    });
  });
}

async function withBackups(
  mayMove: boolean,
  work: (backups: Backups, moved: string) => Promise<string>,
): Promise<string> {
  const folder = dataFolder();
  const url = databaseUrl();
  let moved = '';
  const db = await openSound(folder, url).catch(async (error: unknown) => {
    const isMovable = error instanceof UserError && isDamaged(error.cause) && url === undefined;
    if (!isMovable) throw error;
    if (!mayMove)
      throw new UserError(
        'Unusable',
        `${error.message} "npm run restore -- --from FILE --move-damaged" moves it aside.`,
      );
    moved = await moveAside(folder);
    return openDatabase(folder);
  });
  try {
    return await work(new Backups(db, folder, () => new Date()), moved);
  } finally {
    await db.destroy();
  }
}

/** Some damage shows only where it is read, so a file is looked through as well. */
async function openSound(folder: string, url: string | undefined): Promise<Database> {
  const db = await openDatabase(url ?? folder, undefined, folder);
  if (url !== undefined) return db;
  const file = path.resolve(folder, DATABASE_FILE);
  try {
    await refuseUnlessSound(file, 'quick_check');
    return db;
  } catch (error) {
    await db.destroy();
    throw storageError(error, file);
  }
}

/** What is damaged may still hold what no copy has, so it is kept. @returns what to tell of it */
async function moveAside(folder: string): Promise<string> {
  const file = path.resolve(folder, DATABASE_FILE);
  const aside = `${file}.damaged-${new Date().toISOString().replace(/[-:.]/g, '')}`;
  for (const end of ['', '-wal', '-shm'])
    await rename(`${file}${end}`, `${aside}${end}`).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOENT') throw storageError(error, file);
    });
  return `The damaged database is now ${aside}\n`;
}

function inWords({ kinds, pouches, settingsDiffer }: Comparison): string {
  const column = (text: string | number) => String(text).padStart(12);
  const lines = kinds.map(
    ({ kind, now, then, onlyNow, onlyThen, changed }) =>
      kind.padEnd(16) + [now, then, onlyNow.count, onlyThen.count, changed.count].map(column).join(''),
  );
  const names = kinds.flatMap(({ kind, onlyNow, onlyThen }) => [
    ...(onlyNow.names.length > 0 ? [`only now, ${kind}: ${onlyNow.names.join(', ')}`] : []),
    ...(onlyThen.names.length > 0 ? [`only in the copy, ${kind}: ${onlyThen.names.join(', ')}`] : []),
  ]);
  return [
    ' '.repeat(16) + ['now', 'in the copy', 'only now', 'only copy', 'differ'].map(column).join(''),
    ...lines,
    `pouches at home ${column(pouches.now.atHome)}${column(pouches.then.atHome)}`,
    `pouches packed  ${column(pouches.now.packed)}${column(pouches.then.packed)}`,
    ...(settingsDiffer ? ['Settings, equipment or learned figures differ.'] : []),
    ...names,
    '',
  ].join('\n');
}

async function telling(work: () => Promise<string>): Promise<CommandResult> {
  try {
    return { exitCode: 0, output: await work(), errors: '' };
  } catch (error) {
    if (error instanceof UserError) return { exitCode: 2, output: '', errors: `${error.message}\n` };
    throw error;
  }
}

function options<const Known extends NonNullable<Parameters<typeof parseArgs>[0]>['options']>(
  args: readonly string[],
  known: Known,
) {
  try {
    return parseArgs({ args: [...args], options: known }).values as Readonly<
      Record<string, string | boolean | undefined>
    >;
  } catch (error) {
    throw new UserError('Refused', `${error instanceof Error ? error.message : String(error)} See --help.`);
  }
}
