import { mkdir, readdir, readFile, rm, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setImmediate } from 'node:timers/promises';
import { sql } from 'kysely';
import { afterEach, expect, test, vi } from 'vitest';
import { lotKeys } from '../../lot-keys.ts';
import { defaultSettings } from '../../planning/model/settings.ts';
import { ALL_LOTS } from '../../shelf-view.ts';
import type { App } from '../app.ts';
import { contentsOf, type Contents } from '../database/copy-database.ts';
import { MIGRATIONS } from '../database/migrations.ts';
import { lastChange, openDatabase, reading } from '../database/open-database.ts';
import { DATA_TABLES } from '../database/replace-data.ts';
import {
  expectUserError,
  fillEveryTable,
  madeUpLot,
  madeUpTrip,
  onEachDatabase,
  openTestApp,
  temporaryFolder,
} from '../test-data.ts';
import { isDamaged } from '../storage-error.ts';
import type { Comparison } from './compare-data.ts';
import { Apart } from '../apart/apart.ts';
import { Backups } from './backups.ts';
import { flipInIndex, INDEX_OF_CODES } from '../../../../tests/support/damage.ts';
import { refuseUnlessSound } from './sqlite-copy.ts';

const FILE = 'ridgelarder.sqlite';
const DAY_MS = 86_400_000;

afterEach(() => vi.restoreAllMocks());

/** The data of a file, as what tells it from any other; versions aside where they go on after a restore. */
async function dataOf(app: App): Promise<Contents<(typeof DATA_TABLES)[number]>> {
  return app.backups.withFile('sqlite', async (path) => {
    const folder = await temporaryFolder();
    const bytes = await readFile(path);
    await writeFile(join(folder, FILE), bytes);
    const db = await openDatabase(folder);
    try {
      return await reading(db, (trx) => contentsOf(trx, DATA_TABLES));
    } finally {
      await db.destroy();
    }
  });
}
const exported = (app: App) => app.backups.withFile('json', (path) => readFile(path, 'utf8'));
const found = async (app: App, search: string) =>
  (await app.shelf.look({ ...ALL_LOTS, search }, '2026-06-15')).view.rows.map(({ code }) => code);
const withoutVersions = (json: string) => json.replace(/"version":\d+/g, '"version":0');
const takeIn = (app: App, name: string, bytes: Uint8Array | string, most?: number) =>
  app.backups.takeIn(name, new Blob([bytes as BlobPart]).stream(), most);
const kindOf = ({ kinds }: Comparison, kind: string) => kinds.find((compared) => compared.kind === kind);

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  test('going back and forth many times raises versions a little each time, and does not double them', async () => {
    const app = await openTestApp();
    const { version } = await app.shelf.addLot(madeUpLot());
    for (let times = 0; times < 6; times += 1) {
      await app.shelf.addLot(madeUpLot({ code: `NEW-${times}` }));
      await app.backups.restore((await app.backups.make('by-hand')).name);
    }
    const lot = await app.shelf.getLot(madeUpLot().code);
    expect(lot!.version).toBeGreaterThan(version);
    expect(lot!.version).toBeLessThanOrEqual(version + 6);
  });

  test('a restore drill: everything is as it was, what was there meanwhile is kept, and going back is possible', async () => {
    const app = await openTestApp();
    await fillEveryTable(app, 300);
    const before = withoutVersions(await exported(app));
    const copy = await app.backups.make('by-hand');
    const [packed, open] = (await app.trips.listTrips()).toSorted((a, b) => b.version - a.version);

    await app.shelf.addLot(madeUpLot({ code: 'NEW', pouches: 5 }));
    await app.shelf.discardPouches('L5', 2, 'mice');
    await app.trips.bringBack(packed!.id, packed!.version, []);
    await app.trips.deleteTrip(open!.id, open!.version);
    const later = await app.trips.createTrip(madeUpTrip({ name: 'Later' }));
    await app.access.links.give({ forWhom: 'Bo', tripId: later.id, mayNote: false, days: 3 });
    await app.settings.save({ ...defaultSettings(), currency: 'NOK' });
    const meanwhile = withoutVersions(await exported(app));

    const preview = await app.backups.compare(copy.name);
    expect(kindOf(preview, 'lots')).toMatchObject({
      now: 302,
      then: 301,
      onlyNow: { count: 1, names: ['NEW'] },
      onlyThen: { count: 0 },
      changed: { count: 3, names: ['Käse 7"%', 'L5', 'L6'] },
    });
    expect(kindOf(preview, 'trips')).toMatchObject({
      onlyNow: { count: 1, names: ['Later'] },
      onlyThen: { count: 1, names: [open!.trip.name] },
      changed: { count: 1, names: [packed!.trip.name] },
    });
    expect(kindOf(preview, 'entries')).toMatchObject({ onlyThen: { count: 0 } });
    expect(kindOf(preview, 'entries')!.onlyNow.count).toBeGreaterThan(3);
    expect(preview.settingsDiffer).toBe(true);
    expect(preview.pouches.then.packed - preview.pouches.now.packed).toBe(3);

    const kept = await app.backups.restore(copy.name);
    expect(withoutVersions(await exported(app))).toBe(before);
    expect((await app.trips.getTrip(packed!.id))!.version).toBeGreaterThan(packed!.version);
    // Who is let in stays as it is: a link that was taken back must not open again.
    expect((await app.access.links.list()).map(({ forWhom }) => forWhom)).toEqual(['Ada']);
    await expect(app.shelf.discardPouches('L5', 1, '')).resolves.toMatchObject({ onShelf: 4 });

    await app.backups.restore(kept.name);
    expect(withoutVersions(await exported(app))).toBe(meanwhile);
    expect((await app.backups.list()).map(({ reason }) => reason)).toEqual([
      'before-restore',
      'before-restore',
      'by-hand',
    ]);
  });

  test('after a restore the ledger still cannot be rewritten, and nothing that was opened before can be saved', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    const lot = await app.shelf.addLot(madeUpLot());
    const copy = await app.backups.make('by-hand');
    await app.shelf.updateLot(lot.code, { ...lot, note: 'meanwhile' }, lot.version);
    await app.backups.restore(copy.name);
    for (const version of [lot.version, lot.version + 1])
      await expectUserError(app.shelf.updateLot(lot.code, lot, version), 'StaleVersion');
    const db = await openTestDatabase(folder);
    for (const change of [db.deleteFrom('ledger'), db.updateTable('ledger').set({ pouches: 9 })])
      await expect(change.execute()).rejects.toThrow('only ever appended to');
  });

  test('a restore whose copy of what is there cannot be made changes nothing', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder, () => new Date('2026-11-25T12:00:00.000Z'));
    await app.shelf.addLot(madeUpLot());
    const copy = await app.backups.make('by-hand');
    await app.shelf.addLot(madeUpLot({ code: 'NEW' }));
    // A folder of that name is in the way of the copy.
    await mkdir(join(app.backups.folder, '20261125T120000000Z-before-restore.sqlite', 'full'), {
      recursive: true,
    });
    await expect(app.backups.restore(copy.name)).rejects.toThrow();
    expect((await app.shelf.listLots()).map(({ code }) => code).sort()).toEqual(['LENT-01', 'NEW']);
  });

  test('the export, taken into an empty place and exported again, is the same to the byte', async () => {
    const app = await openTestApp();
    await fillEveryTable(app, 300);
    const json = await exported(app);
    const other = await openTestApp();
    const { name } = await takeIn(other, 'export.json', json);
    await other.backups.restore(name);
    expect(await exported(other)).toBe(json);
    expect(await other.trips.listTrips()).toEqual(await app.trips.listTrips());
    expect(await found(other, 'kase')).toEqual(await found(app, 'kase'));
    expect(await found(app, 'kase')).toEqual(['Käse 7"%']);
    await other.shelf.addLot(madeUpLot({ code: 'goes on' }));
  });

  test('copies and exports say nothing of who is let in', async () => {
    const app = await openTestApp();
    await fillEveryTable(app, 10);
    expect(await exported(app)).not.toMatch(/token|session|passphrase/i);
    const { name } = await app.backups.make('by-hand');
    const copy = new DatabaseSync(await app.backups.pathOf(name), { readOnly: true });
    for (const table of ['sessions', 'readLinks', 'uploads', 'planJobs'])
      expect(copy.prepare(`select count(*) as rows from "${table}"`).get(), table).toEqual({ rows: 0 });
    expect(copy.prepare('select count(*) as rows from lots').get()).toEqual({ rows: 11 });
    copy.close();
  });
});

test('a copy is one file, which can be opened by itself, and is made while others write', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await fillEveryTable(app, 300);
  let isCopying = true;
  const writing = (async () => {
    let written = 0;
    for (; isCopying; written += 1, await setImmediate())
      await app.shelf.addLot(madeUpLot({ code: `W${written}` }));
    return written;
  })();
  const copies = [];
  for (let n = 0; n < 5; n += 1) copies.push(await app.backups.make('by-hand'));
  isCopying = false;
  expect(await writing).toBeGreaterThan(0);
  expect((await readdir(join(folder, 'backups'))).toSorted()).toEqual(
    copies.map(({ name }) => name).toSorted(),
  );
  for (const { name } of copies) {
    const copy = new DatabaseSync(join(folder, 'backups', name), { readOnly: true });
    expect(copy.prepare('pragma integrity_check').get()).toEqual({ integrity_check: 'ok' });
    copy.close();
    expect(kindOf(await app.backups.compare(name), 'lots')!.onlyThen.count).toBe(0);
  }
});

test('a file is looked through beside what else goes on, and what is wrong with it is told', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await fillEveryTable(app, 300);
  const file = join(app.backups.folder, (await app.backups.make('by-hand')).name);
  let wentOn = false;
  void setImmediate().then(() => (wentOn = true));
  await refuseUnlessSound(file, 'integrity_check');
  expect(wentOn).toBe(true);
  const other = join(folder, 'other');
  await writeFile(other, 'no database, but long enough to be looked at as one'.repeat(100));
  await expect(refuseUnlessSound(other, 'quick_check')).rejects.toSatisfy(isDamaged);
  const bytes = await readFile(file);
  await writeFile(other, bytes.fill(0xff, 8192, 20_000));
  await expect(refuseUnlessSound(other, 'integrity_check')).rejects.toSatisfy(isDamaged);
});

test('each day has its copy; old ones are thinned, and what an interrupted one left is cleared away', async () => {
  let now = new Date('2026-01-01T05:00:00.000Z');
  const folder = await temporaryFolder();
  const app = await openTestApp(folder, () => now);
  const backups = join(folder, 'backups');
  for (let hour = 0; hour < 20 * 24; hour += 8) {
    await app.backups.makeDaily();
    now = new Date(now.getTime() + DAY_MS / 3);
  }
  const days = (await app.backups.list()).map(({ at }) => at.slice(0, 10));
  expect(days).toEqual([
    ...Array.from({ length: 7 }, (_, n) => `2026-01-${String(20 - n).padStart(2, '0')}`),
    // The last of each week.
    '2026-01-11',
    '2026-01-04',
  ]);

  const left = ['20260101T050000000Z-daily.sqlite.x.unfinished', 'opened-abc', 'mine.txt'];
  for (const name of left) {
    await writeFile(join(backups, name), '');
    await utimes(join(backups, name), now, new Date(now.getTime() - 2 * DAY_MS));
  }
  await app.backups.thin();
  const names = await readdir(backups);
  expect(names.filter((name) => left.includes(name))).toEqual(['mine.txt']);
});

onEachDatabase(({ openTestApp }) => {
  test('a daily copy that fails is told, and made up for', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    await writeFile(join(folder, 'backups'), 'a file where the folder should be');
    await app.backups.makeDaily();
    expect(app.backups.failure?.message).toContain(join(folder, 'backups'));
    await rm(join(folder, 'backups'));
    await app.backups.makeDaily();
    expect(app.backups.failure).toBeUndefined();
    expect(await app.backups.list()).toHaveLength(1);
  });
});

/** Opens a data folder as an earlier version did. @param last the name of the last change it knew */
async function asOf<Result>(last: string, work: () => Promise<Result>): Promise<Result> {
  const migrations = MIGRATIONS as Record<string, (typeof MIGRATIONS)[string]>;
  const later = Object.entries(migrations).filter(([name]) => name > last);
  for (const [name] of later) delete migrations[name];
  try {
    return await work();
  } finally {
    Object.assign(migrations, Object.fromEntries(later));
  }
}
const OLD_LOT = `insert into lots values (1, 'OLD', 'r', '["dinner"]', '2026-01-10', '2027-07-10', 1, 100, 400, null, null, null, 300, 'boiling', 5, 10, null, null, '[]', null, 'mine', 7)`;

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  const FIRST = '0001-shelf-ledger-trips';
  /** A folder whose tables are those of the first version, with a lot. */
  async function ofFirstVersion() {
    const folder = await temporaryFolder();
    const db = await asOf(FIRST, () => openTestDatabase(folder));
    await sql.raw(OLD_LOT).execute(db);
    return { folder, db };
  }

  test('before tables are changed, what is there is copied, and the copy can be put back later', async () => {
    const { folder } = await ofFirstVersion();
    const app = await openTestApp(folder);
    const [copy, ...others] = await app.backups.list();
    expect(copy).toMatchObject({ reason: 'before-update' });
    expect(others).toEqual([]);
    const kept = new DatabaseSync(join(folder, 'backups', copy!.name), { readOnly: true });
    expect(kept.prepare('select name from kysely_migration').all()).toEqual([{ name: FIRST }]);
    expect(kept.prepare('select code from lots').all()).toEqual([{ code: 'OLD' }]);
    kept.close();

    await app.shelf.addLot(madeUpLot());
    await app.backups.restore(copy!.name);
    expect((await app.shelf.listLots()).map(({ code }) => code)).toEqual(['OLD']);
  });

  test('tables that cannot be copied are not changed, and it is said what to do', async () => {
    const { folder, db } = await ofFirstVersion();
    await writeFile(join(folder, 'backups'), 'in the way');
    await expectUserError(
      openTestApp(folder),
      'Unusable',
      'left as they were',
      join(folder, 'backups'),
      'Move it away',
    );
    expect(await lastChange(db)).toBe(FIRST);
    await rm(join(folder, 'backups'));
    expect((await (await openTestApp(folder)).shelf.listLots()).map(({ code }) => code)).toEqual(['OLD']);
  });

  test('several that begin at the same time with older tables all come to run', async () => {
    const { folder } = await ofFirstVersion();
    const apps = await Promise.all([1, 2, 3].map(() => openTestApp(folder)));
    for (const app of apps) expect((await app.shelf.listLots()).map(({ code }) => code)).toEqual(['OLD']);
    expect((await apps[0]!.backups.list()).map(({ reason }) => reason)).toContain('before-update');
  });
});

test('damage that only an index has is found, nothing is copied or cleared away of it, and it can be rebuilt', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const folder = await temporaryFolder();
  let now = new Date('2026-11-25T12:00:00Z');
  const clock = () => now;
  const first = await openTestApp(folder, clock);
  await fillEveryTable(first, 20);
  for (let day = 0; day < 9; day += 1) {
    await first.backups.make('daily');
    now = new Date(now.getTime() + DAY_MS);
  }
  await first.close();
  flipInIndex(join(folder, FILE), INDEX_OF_CODES, 'L3');

  const app = await openTestApp(folder, clock);
  expect(await app.backups.look()).toMatchObject({ kind: 'structure' });
  await expectUserError(app.backups.make('by-hand'), 'Unusable', 'damaged');
  await app.backups.makeDaily();
  expect(app.backups.failure?.message).toContain('damaged');
  await app.backups.thin();
  expect(await app.backups.list()).toHaveLength(9);

  const aside = await app.backups.rebuildIndexes();
  expect(app.backups.damage).toBeUndefined();
  await expect(refuseUnlessSound(aside, 'integrity_check')).rejects.toSatisfy(isDamaged);
  expect(await app.shelf.getLot('L3')).toBeDefined();
  await app.backups.makeDaily();
  expect(app.backups.failure).toBeUndefined();
  expect((await app.backups.list()).length).toBeLessThan(10);
});

test('old copies stay while the newest one is bad', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const folder = await temporaryFolder();
  let now = new Date('2026-11-25T12:00:00Z');
  const app = await openTestApp(folder, () => now);
  await fillEveryTable(app, 20);
  for (let day = 0; day < 9; day += 1) {
    await app.backups.make('daily');
    now = new Date(now.getTime() + DAY_MS / 2);
  }
  const [newest] = await app.backups.list();
  flipInIndex(join(folder, 'backups', newest!.name), INDEX_OF_CODES, 'L3');
  for (let day = 0; day < 9; day += 1) {
    now = new Date(now.getTime() - 10 * DAY_MS);
    await app.backups.make('by-hand');
  }
  now = new Date('2027-01-01T12:00:00Z');
  await expectUserError(app.backups.thin(), 'Unusable', newest!.name, 'not cleared away');
  expect(await app.backups.list()).toHaveLength(18);
});

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  test('counts that are not what their history adds up to are told, and put right by nobody but the user', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    await app.shelf.addLot(madeUpLot({ code: 'A', pouches: 6 }));
    const db = await openTestDatabase(folder);
    await db.updateTable('balances').set({ onShelf: 9 }).execute();
    expect(await app.backups.look()).toMatchObject({ kind: 'counts', message: expect.stringContaining('A') });
    await app.backups.lookDaily();
    expect((await app.shelf.getLot('A'))?.onShelf).toBe(9);
    await app.shelf.mendCounts();
    expect(await app.backups.look()).toBeUndefined();
    expect((await app.shelf.getLot('A'))?.onShelf).toBe(6);
  });
});

test('one start with a wrong clock deletes no copy, and the next day has its own again', async () => {
  const folder = await temporaryFolder();
  let now = new Date('2026-11-25T12:00:00Z');
  const app = await openTestApp(folder, () => now);
  const copies = async () => (await app.backups.list()).map(({ at }) => at.slice(0, 10));
  for (let day = 0; day < 4; day += 1) {
    await app.backups.makeDaily();
    now = new Date(now.getTime() + DAY_MS);
  }
  const before = await copies();
  now = new Date('2040-01-01T00:00:00Z');
  await app.backups.makeDaily();
  now = new Date('2026-11-29T12:00:00Z');
  await app.backups.makeDaily();
  expect(await copies()).toEqual(['2040-01-01', '2026-11-29', ...before]);
});

test('an export of an earlier version is brought up to date', async () => {
  const folder = await temporaryFolder();
  const older = { format: 'ridgelarder-data', tables: '0001-shelf-ledger-trips' };
  const lot = {
    ...{
      id: 1,
      code: 'OLD',
      recipe: 'r',
      mealKinds: ['dinner'],
      sealedOn: '2026-01-10',
      bestBefore: '2027-07-10',
    },
    ...{
      servingsPerPouch: 1,
      dryWeightG: 100,
      energyKcal: 400,
      proteinG: null,
      fatG: null,
      carbohydrateG: null,
    },
    ...{
      waterMl: 300,
      waterKind: 'boiling',
      steepMin: 5,
      tareG: 10,
      volumeMl: null,
      allergens: null,
      diets: [],
    },
    ...{ costMinor: null, note: 'mine', version: 7 },
  };
  const data = { ...older, lots: [lot], trips: [], ledger: [], settings: [], mappings: [] };
  const app = await openTestApp(folder);
  const { name } = await takeIn(app, 'old.json', JSON.stringify(data));
  await app.backups.restore(name);
  expect(await app.shelf.getLot('OLD')).toMatchObject({ note: 'mine', version: 7, pouches: 0 });
});

test('a file that is no copy is refused before anything is touched, with what is wrong with it', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await fillEveryTable(app, 300);
  const sound = await app.backups.withFile('sqlite', (path) => readFile(path));
  const json = await exported(app);
  const before = await dataOf(app);

  /** The sound file, changed. */
  const changed = async (sql: string) => {
    const path = join(await temporaryFolder(), 'changed.sqlite');
    await writeFile(path, sound);
    const database = new DatabaseSync(path, { defensive: false });
    database.exec(sql);
    database.close();
    return readFile(path);
  };
  const ENDLESS = 'with recursive n(i) as (select 1 union all select i + 1 from n)';
  const cut = join(await temporaryFolder(), 'cut.sqlite');
  await writeFile(cut, sound);
  await truncate(cut, Math.floor(sound.length / 2 / 4096) * 4096);
  const scribbled = Buffer.from(sound);
  for (let at = 8192; at < scribbled.length; at += 4096) scribbled.fill(0xa5, at, at + 200);

  const refused: readonly [name: string, bytes: Uint8Array | string, ...told: string[]][] = [
    ['empty.sqlite', '', 'is not a Ridgelarder backup'],
    ['notes.txt', 'dear diary', 'is not a Ridgelarder backup', 'right file'],
    ['cut.sqlite', await readFile(cut), 'damaged'],
    ['scribbled.sqlite', scribbled, 'damaged'],
    ['header.sqlite', sound.subarray(0, 100), 'damaged'],
    [
      'newer.sqlite',
      await changed(`insert into kysely_migration values ('2040-thaw', '')`),
      'newer',
      '2040-thaw',
    ],
    ['other.sqlite', await changed('drop table kysely_migration'), 'is not a Ridgelarder backup'],
    [
      'trip.sqlite',
      await changed(`update trips set trip = '{}' where trip is not null`),
      'cannot be used',
      'The trip',
    ],
    [
      'ledger.sqlite',
      await changed(
        `insert into ledger ("at", "kind", "lotId", "fromPlace", "toPlace", "pouches", "note") values ('', 'discarded', 1, 'shelf', 'outside', 99, '')`,
      ),
      'takes more of the lot "L0"',
    ],
    [
      'versions.json',
      json.replace(/"version":\d+/, `"version":${Number.MAX_SAFE_INTEGER}`),
      'lots',
      'has a version that no count',
    ],
    [
      'trigger.sqlite',
      await changed(
        `create trigger endless after insert on lots begin insert into settings ${ENDLESS} select i, i from n; end`,
      ),
      'trigger "endless"',
    ],
    [
      'hidden.sqlite',
      await changed(
        `create trigger endless after insert on lots begin insert into settings ${ENDLESS} select i, i from n; end;
         pragma writable_schema = on;
         update sqlite_master set name = 'sqlite_endless', sql = replace(sql, 'trigger endless', 'trigger sqlite_endless') where name = 'endless'`,
      ),
    ],
    [
      'view.sqlite',
      await changed(
        `alter table settings rename to other; create view settings as ${ENDLESS} select i as id, i as settings from n`,
      ),
      'does not make',
    ],
    [
      'generated.sqlite',
      await changed(
        `alter table lots add column odd text generated always as (hex(zeroblob(length(code) * 100000000))) virtual`,
      ),
      'table "lots"',
    ],
    ['virtual.sqlite', await changed(`create virtual table odd using fts5 (words)`), 'table "odd'],
    [
      'crowd.sqlite',
      await changed(
        `begin; ${Array.from({ length: 2000 }, (_, index) => `create table t${index} (x);`).join('')} commit`,
      ),
      'does not make',
    ],
    ['lacks.sqlite', await changed('drop trigger ledger_no_update'), 'lacks', 'trigger "ledger_no_update"'],
    ['keyless.sqlite', await changed(`drop index ledger_by_lot`), 'lacks', 'index "ledger_by_lot"'],
    ['index.sqlite', await changed(`create index odd on lots (hex(zeroblob(length(code))))`), 'index "odd"'],
    [
      'versions.sqlite',
      await changed(`update trips set version = ${2n ** 60n}`),
      'trips',
      'too large to calculate with',
    ],
    [
      'price.sqlite',
      await changed(`update lots set "costMinor" = ${2n ** 60n} where id = 3`),
      'lots',
      'too large to calculate with',
    ],
    [
      'pouches.sqlite',
      await changed(
        `insert into ledger ("at", "kind", "lotId", "fromPlace", "toPlace", "pouches", "note") values ('', 'sealed', 1, 'outside', 'shelf', ${2n ** 60n}, '')`,
      ),
      'ledger',
      'too large to calculate with',
    ],
    [
      'loose.sqlite',
      await changed(`pragma foreign_keys = off; delete from lots where id = 2`),
      'refers to what is not there',
    ],
    ['cut.json', json.slice(0, -500), 'cut.json', 'JSON'],
    ['newer.json', json.replace(/"tables": "[^"]+"/, '"tables": "2040-thaw"'), 'newer', '2040-thaw'],
    ['field.json', json.replace('"code":"L7",', ''), 'lots[7] lacks code'],
    ['kind.json', json.replace('"dryWeightG":112.5', '"dryWeightG":"heavy"'), 'lots[0]', 'dryWeightG'],
    ['twice.json', json.replace('"code":"L7"', '"code":"L8"'), 'lots[8]', 'UNIQUE'],
    ['more.json', json.replace('"code":"L7"', '"code":"L7","extra":1'), 'lots[7]', 'extra'],
    ['list.json', '{"format":"ridgelarder-data"}', 'list.json'],
    ['lacks.json', json.replace(/"bin": \[[^]*?\n\],\n/, ''), 'lacks bin'],
  ];
  for (const [name, bytes, ...told] of refused)
    await expectUserError(takeIn(app, name, bytes), 'Refused', name, ...told);
  await expectUserError(
    takeIn(app, 'large.sqlite', sound, 1_000_000 / 8),
    'TooLarge',
    'large.sqlite',
    'npm run restore',
  );

  expect(await app.backups.list()).toEqual([]);
  expect(await readdir(join(folder, 'backups'))).toEqual([]);
  expect(await dataOf(app)).toEqual(before);
});

test('a file of JSON may have its tables in any order', async () => {
  const app = await openTestApp();
  await fillEveryTable(app, 30);
  const before = await exported(app);
  const turned = Object.fromEntries(Object.entries(JSON.parse(before) as object).toReversed());
  const other = await openTestApp();
  await other.backups.restore((await takeIn(other, 'all.json', JSON.stringify(turned, undefined, 2))).name);
  expect(withoutVersions(await exported(other))).toBe(withoutVersions(before));
});

test('a row of a file of JSON that never ends is refused before it is held in memory', async () => {
  const app = await openTestApp();
  const endless = async function* () {
    yield Buffer.from('{"format":"ridgelarder-data","tables":"0001-shelf-ledger-trips","lots":[{"code":"');
    for (let times = 0; times < 1000; times += 1) yield Buffer.alloc(100_000, 'x');
  };
  await expectUserError(app.backups.takeIn('endless.json', endless()), 'Refused', 'endless.json', 'lots[0]');
});

test('a copy is looked through in a process of its own, which is ended where that takes too long', async () => {
  const folder = await temporaryFolder();
  const source = await openTestApp();
  await fillEveryTable(source, 300);
  const sound = await source.backups.withFile('sqlite', (path) => readFile(path));
  const apart = new Apart({ taskMs: 1 });
  const db = await openDatabase(folder);
  const backups = new Backups(
    db,
    folder,
    () => new Date(),
    (copy) => apart.do({ kind: 'copy', ...copy }),
  );
  await expectUserError(backups.takeIn('x.sqlite', new Blob([sound]).stream()), 'Refused', 'longer than 0 s');
  apart.close();
  await db.destroy();
  expect(await readdir(join(folder, 'backups'))).toEqual([]);
});

test('what is no name of a copy opens nothing', async () => {
  const app = await openTestApp();
  for (const name of ['../ridgelarder.sqlite', 'ridgelarder.sqlite', '20261125T194146123Z-daily.sqlite'])
    await expectUserError(app.backups.pathOf(name), 'NotFound');
});

test('docs/data-file.md names every table and field', async () => {
  const db = await openDatabase(await temporaryFolder());
  const tables = await db.introspection.getTables();
  await db.destroy();
  const documented = new Map(
    (await readFile(new URL('../../../../docs/data-file.md', import.meta.url), 'utf8'))
      .split('\n')
      .map((line) => line.split('|').map((cell) => [...cell.matchAll(/`(\w+)`/g)].map(([, name]) => name)))
      .filter((cells) => cells.length > 3)
      .map(([, table, , fields]) => [table?.[0], fields]),
  );
  for (const name of DATA_TABLES) {
    const columns = tables.find((table) => table.name === name)?.columns.map((column) => column.name) ?? [];
    const made = Object.keys(lotKeys({ code: '', recipe: '', note: '' }));
    const inFile = columns.filter((column) => !made.includes(column));
    expect(documented.get(name), name).toEqual(expect.arrayContaining(inFile));
  }
});
