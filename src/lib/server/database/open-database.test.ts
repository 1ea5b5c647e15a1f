import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { lotKeys } from '../../lot-keys.ts';
import { wrongBalances } from '../ledger.ts';
import { lotFields } from '../lot-row.ts';
import { expectUserError, madeUpLot, onEachDatabase, temporaryFolder } from '../test-data.ts';
import { MIGRATIONS } from './migrations.ts';
import { openDatabase, reading, writing } from './open-database.ts';

const FILE = 'ridgelarder.sqlite';

/** Root may write anywhere, so a test of permissions gives its rights up for a moment. */
async function withoutRootRights<Result>(work: () => Promise<Result>): Promise<Result> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(65534);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}

test('a new folder is made, and the file is kept safe against power cuts and half-written data', async () => {
  const folder = join(await temporaryFolder(), 'deep', 'down');
  const db = await openDatabase(folder);
  const pragma = async (name: string) =>
    Object.values((await sql`pragma ${sql.raw(name)}`.execute(db)).rows[0] as object)[0] as unknown;
  expect(await pragma('journal_mode')).toBe('wal');
  expect(await pragma('synchronous')).toBe(2);
  expect(await pragma('foreign_keys')).toBe(1);
  expect(await pragma('busy_timeout')).toBeGreaterThan(0);
  await db.destroy();
  expect(await readdir(folder)).toEqual([FILE]);
});

test('opening again changes nothing', async () => {
  const folder = await temporaryFolder();
  await (await openDatabase(folder)).destroy();
  const before = await readFile(join(folder, FILE));
  await (await openDatabase(folder)).destroy();
  expect((await readFile(join(folder, FILE))).equals(before)).toBe(true);
});

test('a file that is no database is refused and left alone', async () => {
  const folder = await temporaryFolder();
  const text = 'dear diary, '.repeat(1000);
  await writeFile(join(folder, FILE), text);
  await expectUserError(openDatabase(folder), 'Unusable', join(folder, FILE), 'not a database', 'copy');
  expect(await readFile(join(folder, FILE), 'utf8')).toBe(text);
});

test("another program's database is refused and left alone", async () => {
  const folder = await temporaryFolder();
  const other = new DatabaseSync(join(folder, FILE));
  other.exec("create table lots (paddock text); insert into lots values ('north')");
  other.close();
  await expectUserError(openDatabase(folder), 'Unusable', join(folder, FILE), 'another program');
  const again = new DatabaseSync(join(folder, FILE));
  expect(again.prepare('select paddock from lots').get()).toMatchObject({ paddock: 'north' });
  again.close();
});

test('a folder that may not be written to is named', async () => {
  const outer = await temporaryFolder();
  await chmod(outer, 0o755);
  const folder = join(outer, 'closed');
  await mkdir(folder, { mode: 0o555 });
  await withoutRootRights(async () => {
    await expectUserError(
      openDatabase(folder),
      'Unusable',
      join(folder, FILE),
      'may be written to',
      'RIDGELARDER_DATA',
    );
    await expectUserError(
      openDatabase(join(folder, 'inner')),
      'Unusable',
      join(folder, 'inner'),
      'Allow writing',
    );
  });
});

test('a file that may only be read can be read, and each change is told why it fails', async () => {
  const folder = await temporaryFolder();
  await (await openDatabase(folder)).destroy();
  await chmod(folder, 0o777);
  await chmod(join(folder, FILE), 0o444);
  await withoutRootRights(async () => {
    const db = await openDatabase(folder);
    expect(await db.selectFrom('lots').selectAll().execute()).toEqual([]);
    const change = writing(db, (trx) =>
      trx.insertInto('settings').values({ id: 'a', settings: '' }).execute(),
    );
    await expectUserError(change, 'Unusable', join(folder, FILE), 'Allow writing');
    await db.destroy();
  });
});

test('a path that leads through a file is named', async () => {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'shelf'), '');
  await expectUserError(openDatabase(join(folder, 'shelf')), 'Unusable', join(folder, 'shelf'), 'is a file');
  await expectUserError(
    openDatabase(join(folder, 'shelf', 'data')),
    'Unusable',
    'below a file where a folder is needed',
  );
});

test('a full disk is told as such, and the change is gone whole', async () => {
  const db = await openDatabase(await temporaryFolder());
  await sql`pragma max_page_count = 40`.execute(db);
  const much = writing(db, async (trx) => {
    for (let n = 0; n < 100; n += 1)
      await trx
        .insertInto('mappings')
        .values({ headerSignature: `${n}`, mapping: 'x'.repeat(10_000) })
        .execute();
  });
  await expectUserError(much, 'Unusable', 'disk is full', 'nothing of the last change was kept');
  expect(await db.selectFrom('mappings').selectAll().execute()).toEqual([]);
  await db.destroy();
});

test('a change waits for another one to end, and gives up as Busy when that takes too long', async () => {
  const folder = await temporaryFolder();
  const slow = await openDatabase(folder);
  const quick = await openDatabase(folder, 150);
  const add = (db: typeof slow, id: string) =>
    writing(db, (trx) => trx.insertInto('settings').values({ id, settings: '' }).execute());
  const [started, finished] = [Promise.withResolvers<void>(), Promise.withResolvers<void>()];
  const held = writing(slow, async (trx) => {
    await trx.insertInto('settings').values({ id: 'slow', settings: '' }).execute();
    started.resolve();
    await finished.promise;
  });
  await started.promise;
  await expectUserError(add(quick, 'first'), 'Busy', folder, 'Try again');

  const waiting = add(quick, 'second');
  setTimeout(finished.resolve, 50);
  await Promise.all([held, waiting]);
  const ids = await quick.selectFrom('settings').select('id').orderBy('id').execute();
  expect(ids).toEqual([{ id: 'second' }, { id: 'slow' }]);
  await Promise.all([slow.destroy(), quick.destroy()]);
});

test('while one program changes, it reads what was before; its other changes wait their turn or give up as Busy', async () => {
  const folder = await temporaryFolder();
  const db = await openDatabase(folder, 150);
  const ids = () => reading(db, (trx) => trx.selectFrom('settings').select('id').orderBy('id').execute());
  const add = (id: string, until?: Promise<void>) =>
    writing(db, async (trx) => {
      await trx.insertInto('settings').values({ id, settings: '' }).execute();
      await until;
    });
  const finished = Promise.withResolvers<void>();
  const held = add('1 slow', finished.promise);
  await expectUserError(add('impatient'), 'Busy', folder, 'Try again');

  const waiting = [add('2 quick'), add('3 quick')];
  expect(await ids()).toEqual([]);
  finished.resolve();
  await Promise.all([held, ...waiting]);
  expect((await ids()).map(({ id }) => id)).toEqual(['1 slow', '2 quick', '3 quick']);
  await db.destroy();
  expect(await readdir(folder)).toEqual([FILE]);
});

test('rows can be streamed', async () => {
  const db = await openDatabase(await temporaryFolder());
  await db
    .insertInto('settings')
    .values([
      { id: 'a', settings: '' },
      { id: 'b', settings: '' },
    ])
    .execute();
  const ids: string[] = [];
  for await (const { id } of db.selectFrom('settings').select('id').orderBy('id').stream()) ids.push(id);
  expect(ids).toEqual(['a', 'b']);
  await db.destroy();
});

onEachDatabase(({ name, openTestDatabase }) => {
  /** How a test's database is named to the user. */
  const named = name === 'SQLite' ? FILE : 'PostgreSQL at 127.0.0.1';

  test('many may open a new one at once', async () => {
    const folder = await temporaryFolder();
    const all = await Promise.all(Array.from({ length: 6 }, () => openTestDatabase(folder)));
    for (const db of all) expect(await db.selectFrom('lots').selectAll().execute()).toEqual([]);
  });

  test('the ledger cannot be rewritten, not even past the repositories', async () => {
    const db = await openTestDatabase();
    await db
      .insertInto('lots')
      .values({ id: 1, ...lotFields(madeUpLot()), version: 1, batchId: null })
      .execute();
    const entry = {
      at: '',
      kind: 'sealed',
      lotId: 1,
      tripId: null,
      fromPlace: 'outside',
      toPlace: 'shelf',
      pouches: 3,
      note: '',
    } as const;
    await db.insertInto('ledger').values(entry).execute();
    await expect(db.updateTable('ledger').set({ pouches: 9 }).execute()).rejects.toThrow(
      'only ever appended to',
    );
    await expect(db.deleteFrom('ledger').execute()).rejects.toThrow('only ever appended to');
    for (const wrong of [
      { pouches: 0 },
      { pouches: -1 },
      { toPlace: 'outside' as const },
      { toPlace: 'set-aside' as const },
      { toPlace: 'attic' as 'shelf' },
      { lotId: 2 },
      { tripId: 'no such trip', toPlace: 'set-aside' as const },
    ])
      await expect(
        db
          .insertInto('ledger')
          .values({ ...entry, ...wrong })
          .execute(),
        JSON.stringify(wrong),
      ).rejects.toThrow('constraint');
    expect(await db.selectFrom('ledger').select('pouches').execute()).toEqual([{ pouches: 3 }]);
  });

  test('text is sorted by its bytes, whatever the language of the database, and numbers come back as they were', async () => {
    const db = await openTestDatabase();
    const texts = ['', ' ', '-', '10', '9', 'B', 'Z', 'a', 'b', 'ß', 'ä', 'ﬀ', '🥾'];
    const bytes = (text: string) => Buffer.from(text);
    texts.sort((one, other) => Buffer.compare(bytes(one), bytes(other)));
    const numbers = [0.1, 1 / 3, 1e-9, 5e-324, 123_456.789, Number.MAX_SAFE_INTEGER];
    for (const [index, code] of texts.toReversed().entries())
      await db
        .insertInto('lots')
        .values({
          ...lotFields(madeUpLot({ code, energyKcal: numbers[index % numbers.length]! })),
          version: Number.MAX_SAFE_INTEGER - index,
          batchId: null,
        })
        .execute();
    const rows = await db
      .selectFrom('lots')
      .select(['code', 'energyKcal', 'version'])
      .orderBy('code')
      .execute();
    expect(rows).toEqual(
      texts
        .toReversed()
        .map((code, index) => ({
          code,
          energyKcal: numbers[index % numbers.length],
          version: Number.MAX_SAFE_INTEGER - index,
        }))
        .toReversed(),
    );
    const { smaller } = await db
      .selectFrom('lots')
      .select((eb) => eb.fn.countAll<number>().as('smaller'))
      .where('code', '<', 'a')
      .executeTakeFirstOrThrow();
    expect(smaller).toBe(texts.indexOf('a'));
  });

  test('reading sees one state throughout, and does not wait for a change', async () => {
    const folder = await temporaryFolder();
    const [reader, writer] = [await openTestDatabase(folder), await openTestDatabase(folder)];
    const counts = await reading(reader, async (trx) => {
      const count = async () => (await trx.selectFrom('settings').select('id').execute()).length;
      const before = await count();
      await writing(writer, (change) =>
        change.insertInto('settings').values({ id: 'new', settings: '' }).execute(),
      );
      return [before, await count()];
    });
    expect(counts).toEqual([0, 0]);
    expect(await reader.selectFrom('settings').select('id').execute()).toEqual([{ id: 'new' }]);
  });

  test('a migration that fails in its middle leaves everything as it was, and says so', async () => {
    const folder = await temporaryFolder();
    await openTestDatabase(folder);
    const migrations = MIGRATIONS as Record<string, (typeof MIGRATIONS)[string]>;
    migrations['9999-broken'] = {
      up: async (db) => {
        await sql`create table half_done (id integer)`.execute(db);
        await sql`insert into no_such_table values (1)`.execute(db);
      },
    };
    try {
      await expectUserError(openTestDatabase(folder), 'Unusable', named, 'could not be brought up to date');
    } finally {
      delete migrations['9999-broken'];
    }
    const db = await openTestDatabase(folder);
    const tables = await db.introspection.getTables();
    expect(tables.map(({ name }) => name)).not.toContain('half_done');
  });

  test('what has the first tables is brought up to date, and keeps its lots', async () => {
    const folder = await temporaryFolder();
    const migrations = MIGRATIONS as Record<string, (typeof MIGRATIONS)[string]>;
    const later = Object.entries(migrations).slice(1);
    for (const [name] of later) delete migrations[name];
    try {
      const old = await openTestDatabase(folder);
      await sql`insert into lots values (1, 'A', 'r', '[]', '', '', 1, 1, 1, null, null, null, 1, 'none', 0, 1, null, null, '[]', null, 'mine', 7)`.execute(
        old,
      );
    } finally {
      Object.assign(migrations, Object.fromEntries(later));
    }
    const db = await openTestDatabase(folder);
    expect(await db.selectFrom('lots').selectAll().execute()).toMatchObject([
      {
        code: 'A',
        note: 'mine',
        version: 7,
        stirAfterMin: null,
        batchId: null,
        withdrawn: null,
        ...lotKeys({ code: 'A', recipe: 'r', note: 'mine' }),
      },
    ]);
  });

  test('of what is from before trips could be finished, those that were eaten and over are', async () => {
    const folder = await temporaryFolder();
    const migrations = MIGRATIONS as Record<string, (typeof MIGRATIONS)[string]>;
    const later = Object.entries(migrations).filter(([name]) => name >= '0004');
    for (const [name] of later) delete migrations[name];
    const old = await openTestDatabase(folder).finally(() =>
      Object.assign(migrations, Object.fromEntries(later)),
    );
    await sql`insert into lots values (1, 'A', 'r', '[]', '', '', 1, 1, 1, null, null, null, 1, 'none', 0, 1, null, null, '[]', null, '', 1, null, null)`.execute(
      old,
    );
    for (const id of ['over', 'called off', 'again', 'on the way', 'new'])
      await sql`insert into trips values (${id}, '', null, 1, '2026-08-01T10:00:00.000Z')`.execute(old);
    const move = (tripId: string, kind: string, from: string, to: string) =>
      sql`insert into ledger ("at", "kind", "lotId", "tripId", "fromPlace", "toPlace", "pouches", "note")\n      values ('', ${kind}, 1, ${tripId}, ${from}, ${to}, 2, '')`.execute(
        old,
      );
    for (const id of ['over', 'called off', 'again', 'on the way']) {
      await move(id, 'set aside', 'shelf', 'set-aside');
      await move(id, 'packed', 'set-aside', 'packed');
    }
    await move('over', 'eaten', 'packed', 'outside');
    await move('called off', 'brought back', 'packed', 'shelf');
    await move('again', 'eaten', 'packed', 'outside');
    await move('again', 'set aside', 'shelf', 'set-aside');

    const db = await openTestDatabase(folder);
    const finished = await db.selectFrom('trips').select(['id', 'finishedAt']).orderBy('id').execute();
    expect(finished.filter(({ finishedAt }) => finishedAt !== null)).toEqual([
      { id: 'over', finishedAt: '2026-08-01T10:00:00.000Z' },
    ]);
    // And its ledger is added up.
    expect(await db.selectFrom('balances').selectAll().execute()).toEqual([
      { lotId: 1, onShelf: -8, setAside: 2, packed: 2 },
    ]);
    expect(await reading(db, wrongBalances)).toEqual([]);
  });

  test('what has newer tables is refused and left alone', async () => {
    const folder = await temporaryFolder();
    const db = await openTestDatabase(folder);
    await sql`insert into kysely_migration values ('2040-thaw', '2040-01-01T00:00:00.000Z')`.execute(db);
    await expectUserError(
      openTestDatabase(folder),
      'Unusable',
      named,
      'newer Ridgelarder',
      '2040-thaw',
      'choose another',
    );
  });
});
