import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, onTestFinished, test } from 'vitest';
import { checkData } from '../backups/check-data.ts';
import { UserError } from '../errors.ts';
import {
  expectUserError,
  fillEveryTable,
  madeUpLot,
  onEachDatabase,
  openTestApp,
  temporaryFolder,
} from '../test-data.ts';
import { MIGRATIONS } from './migrations.ts';
import { openDatabase, writing } from './open-database.ts';

const FILE = 'ridgelarder.sqlite';

/** A small disk of its own, where this machine lets us have one: only root may, and not everywhere. */
async function smallDisk(bytes: number): Promise<string | undefined> {
  const folder = await mkdtemp(join(tmpdir(), 'ridgelarder-disk-'));
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${bytes},mode=0777`, 'tmpfs', folder], {
      stdio: 'ignore',
    });
  } catch {
    await rm(folder, { recursive: true });
    return undefined;
  }
  onTestFinished(async () => {
    execFileSync('umount', ['--lazy', folder], { stdio: 'ignore' });
    await rm(folder, { recursive: true });
  });
  return folder;
}
const mount = (folder: string, how: string) =>
  execFileSync('mount', ['-o', `remount,${how}`, folder], { stdio: 'ignore' });
const NO_DISK = 'A small disk cannot be made here (mounting a tmpfs needs root), so this is not tried.';

/** Works until the disk is full. @returns how often it worked, and the error that ended it */
async function untilFull(work: (n: number) => Promise<unknown>): Promise<[times: number, error: unknown]> {
  for (let n = 0; n < 10_000; n += 1) {
    const error: unknown = await work(n).then(
      () => undefined,
      (caught: unknown) => caught,
    );
    if (error !== undefined) return [n, error];
  }
  throw new Error('the disk is not full');
}

test('on a full disk every change that was acknowledged stays, the next one is told why it fails, and space lets it go on', async ({
  skip,
}) => {
  const disk = (await smallDisk(1_500_000)) ?? skip(NO_DISK);
  await writeFile(join(disk, 'filler'), Buffer.alloc(200_000));
  const app = await openTestApp(disk);
  const lots = (n: number) => Array.from({ length: 30 }, (_, index) => madeUpLot({ code: `${n}-${index}` }));
  const [times, error] = await untilFull((n) => app.shelf.importLots(lots(n), ''));
  expect(times).toBeGreaterThan(0);
  await expectUserError(Promise.reject(error), 'Unusable', disk, 'disk is full', 'Free some space');
  expect(await app.shelf.listLots()).toHaveLength(times * 30);

  // A copy needs as much space again.
  await expectUserError(app.backups.make('by-hand'), 'Unusable', join(disk, 'backups'), 'disk is full');
  expect(await readdir(join(disk, 'backups')).catch(() => [])).toEqual([]);
  const upload = app.imports.keepUpload('a.csv', new Blob(['x'.repeat(1_000_000)]).stream(), 2_000_000);
  await expectUserError(upload, 'Unusable', join(disk, 'imports'), 'disk is full');
  expect(await readdir(join(disk, 'imports'))).toEqual([]);

  await rm(join(disk, 'filler'));
  await app.shelf.addLot(madeUpLot({ code: 'after' }));
  expect(await app.shelf.listLots()).toHaveLength(times * 30 + 1);
  await app.close();
  const db = await openDatabase(disk);
  await checkData(db, disk);
  expect((await sql`pragma integrity_check`.execute(db)).rows).toEqual([{ integrity_check: 'ok' }]);
  await db.destroy();
});

test('tables are not changed where there is no space for the copy before', async ({ skip }) => {
  const disk = (await smallDisk(600_000)) ?? skip(NO_DISK);
  const migrations = MIGRATIONS as Record<string, (typeof MIGRATIONS)[string]>;
  const later = Object.entries(migrations).slice(1);
  for (const [name] of later) delete migrations[name];
  await openDatabase(disk)
    .then((old) => old.destroy())
    .finally(() => Object.assign(migrations, Object.fromEntries(later)));
  await untilFull((n) => writeFile(join(disk, `filler-${n}`), Buffer.alloc(4096)));
  const before = await readFile(join(disk, FILE));
  await expectUserError(openDatabase(disk), 'Unusable', join(disk, FILE), 'disk is full');
  // Enough to open it, and too little for a copy.
  for (let n = 1; n <= 12; n += 1) await rm(join(disk, `filler-${n}`));
  await expectUserError(openDatabase(disk), 'Unusable', join(disk, 'backups'), 'disk is full');
  expect((await readFile(join(disk, FILE))).equals(before)).toBe(true);
  await rm(join(disk, 'filler-0'));
  for (let n = 13; n < 100; n += 1) await rm(join(disk, `filler-${n}`), { force: true });
  await (await openDatabase(disk)).destroy();
});

test('a disk that can only be read is told as such', async ({ skip }) => {
  const disk = (await smallDisk(2_000_000)) ?? skip(NO_DISK);
  await mkdir(join(disk, 'data'));
  await (await openDatabase(join(disk, 'data'))).destroy();
  mount(disk, 'ro');
  const error: unknown = await openDatabase(join(disk, 'data')).then(
    (db) => db.destroy(),
    (caught: unknown) => caught,
  );
  expect(error).toBeInstanceOf(UserError);
  expect((error as UserError).message).toMatch(/may be written to|Allow writing/);
  expect((error as UserError).message).toContain(join(disk, 'data'));
  await expectUserError(
    openDatabase(join(disk, 'other')),
    'Unusable',
    join(disk, 'other'),
    'RIDGELARDER_DATA',
  );
  mount(disk, 'rw');
  await (await openDatabase(join(disk, 'data'))).destroy();
});

const HOLD = `
  const { DatabaseSync } = require('node:sqlite');
  const db = new DatabaseSync(process.argv[1]);
  db.exec('begin immediate');
  console.log('held');
  setInterval(() => {}, 1000);`;

test('another process that holds the lock for longer than the patience is told as Busy; pages can be read meanwhile', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await app.shelf.addLot(madeUpLot());
  const impatient = await openDatabase(folder, 300);
  const other = spawn(process.execPath, ['-e', HOLD, join(folder, FILE)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await once(other.stdout, 'data');
  const change = writing(impatient, (trx) => trx.deleteFrom('mappings').execute());
  await expectUserError(change, 'Busy', join(folder, FILE), 'Another program is writing', 'Try again');
  expect(await app.shelf.listLots()).toHaveLength(1);
  const waiting = app.shelf.addLot(madeUpLot({ code: 'waits' }));
  other.kill('SIGKILL');
  await waiting;
  await impatient.destroy();
});

test('a file that was cut off, or scribbled on, is told as damaged where it is read, and is left as it is', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await fillEveryTable(app, 600);
  await app.close();
  const sound = await readFile(join(folder, FILE));
  const cut = async (bytes: number) => {
    await writeFile(join(folder, FILE), sound);
    await truncate(join(folder, FILE), bytes);
  };
  const scribble = async (from: number, to: number) => {
    const damaged = Buffer.from(sound);
    damaged.fill(0xa5, from, to);
    await writeFile(join(folder, FILE), damaged);
  };
  for (const spoil of [
    () => cut(Math.floor(sound.length / 8192) * 4096),
    () => cut(5000),
    () => scribble(4096, sound.length),
    () => scribble(100, 4096),
  ]) {
    await spoil();
    const damaged = await readFile(join(folder, FILE));
    const read = async () => {
      const opened = await openTestApp(folder);
      await opened.shelf.listLots();
      await opened.shelf.history('L5');
    };
    await expectUserError(read(), 'Unusable', join(folder, FILE), 'is damaged', 'npm run restore');
    expect((await readFile(join(folder, FILE))).equals(damaged)).toBe(true);
    expect(await readdir(folder)).not.toContain('backups');
  }
});

test('a database that is damaged is not copied', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await fillEveryTable(app, 600);
  await app.close();
  const file = await readFile(join(folder, FILE));
  file.fill(0xa5, Math.floor(file.length / 8192) * 4096, Math.floor(file.length / 8192) * 4096 + 8192);
  await writeFile(join(folder, FILE), file);
  const again = await openTestApp(folder);
  await expectUserError(again.backups.make('by-hand'), 'Unusable', join(folder, FILE), 'is damaged');
  expect(await readdir(join(folder, 'backups'))).toEqual([]);
});

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  test('where a newer version changed the tables meanwhile, the older one changes nothing any more and says so', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    await app.shelf.addLot(madeUpLot());
    const newer = await openTestDatabase(folder);
    await sql`insert into kysely_migration values ('2040-thaw', '2040-01-01T00:00:00.000Z')`.execute(newer);
    await expectUserError(
      app.shelf.addLot(madeUpLot({ code: 'late' })),
      'Unusable',
      'A newer Ridgelarder',
      '2040-thaw',
      'Stop this one',
    );
    expect((await app.shelf.listLots()).map(({ code }) => code)).toEqual(['LENT-01']);
  });
});
