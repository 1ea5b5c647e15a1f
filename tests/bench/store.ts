/*
 * What a club costs: a hundred households on one shelf, with a ledger of a million entries, in one SQLite file and in a PostgreSQL that is started here with
 * its usual settings, on the same disk. Both keep what was committed through a power cut. Beside the time stands what the processor spent of it in this
 * process, without what PostgreSQL spends in its own.
 */
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { openApp, type App } from '../../src/lib/server/app.ts';
import { openDatabase, writing } from '../../src/lib/server/database/open-database.ts';
import { lotFields } from '../../src/lib/server/lot-row.ts';
import { UserError } from '../../src/lib/server/errors.ts';
import { ALL_LOTS, type ShelfQuery } from '../../src/lib/shelf-view.ts';
import { findPostgres, startPostgres } from '../../src/tooling/postgres.ts';
import { instance } from './instances.ts';

const HOUSEHOLDS = 100;
const LOTS = HOUSEHOLDS * 100;
const TRIPS = HOUSEHOLDS * 10;
/** Of a shelf that is looked through without being sent. */
const MANY_LOTS = 100_000;
const SEALED = 100;
/** Set aside, packed, eaten, by one trip after the other; and once sealed. */
const ENTRIES_PER_LOT = 100;
const TODAY = '2026-06-01';
const AT = `${TODAY}T12:00:00.000Z`;

const CHANGES = 200;
const READS = 5;
const CLIENTS = 8;
const PROCESSES = 4;

type Place = { readonly folder: string; readonly url?: string };
type Figures = Record<string, string>;

const lots = () =>
  instance({ eaters: 4, days: 5, lots: LOTS }, 1).stock.map((lot, n) => ({ ...lot, code: `L${n}` }));
const trip = (name: string) =>
  Trip.parse({ name, startDate: '2026-07-04', dayCount: 3, party: [{ name: 'Ada' }] });

function* entries() {
  const entry = { at: AT, tripId: null as string | null, note: '' };
  for (let lotId = 1; lotId <= LOTS; lotId++) {
    yield {
      ...entry,
      kind: 'sealed',
      lotId,
      fromPlace: 'outside',
      toPlace: 'shelf',
      pouches: SEALED,
    } as const;
    for (let n = 0; n < (ENTRIES_PER_LOT - 1) / 3; n++) {
      const ofTrip = { ...entry, lotId, tripId: `trip ${(lotId + n) % TRIPS}`, pouches: 1 };
      yield { ...ofTrip, kind: 'set aside', fromPlace: 'shelf', toPlace: 'set-aside' } as const;
      yield { ...ofTrip, kind: 'packed', fromPlace: 'set-aside', toPlace: 'packed' } as const;
      yield { ...ofTrip, kind: 'eaten', fromPlace: 'packed', toPlace: 'outside' } as const;
    }
  }
}

async function fill({ folder, url }: Place): Promise<void> {
  const db = await openDatabase(url ?? folder);
  await writing(db, async (trx) => {
    const rows = lots().map((lot, n) => ({ id: n + 1, ...lotFields(lot), version: 1, batchId: null }));
    for (let n = 0; n < LOTS; n += 500)
      await trx
        .insertInto('lots')
        .values(rows.slice(n, n + 500))
        .execute();
    for (let n = 0; n < TRIPS; n++)
      await trx
        .insertInto('trips')
        .values({
          ...{ id: `trip ${n}`, name: `${n}`, trip: JSON.stringify(trip(`${n}`)), version: 1, updatedAt: AT },
          // One in ten is still on its way, with all its entries.
          ...{ finishedAt: n % 10 === 0 ? null : AT, afterwards: null },
        })
        .execute();
    const batch = [];
    for (const entry of entries()) {
      batch.push(entry);
      if (batch.length < 2000) continue;
      await trx.insertInto('ledger').values(batch.splice(0)).execute();
    }
    if (batch.length > 0) await trx.insertInto('ledger').values(batch).execute();
  });
  if (url !== undefined) {
    // As autovacuum does by and by; and keys that were given with their rows are not seen by the counter.
    await sql`select setval(pg_get_serial_sequence('lots', 'id'), ${LOTS})`.execute(db);
    await sql`vacuum analyze`.execute(db);
  }
  await db.destroy();
}

const randomCode = () => `L${Math.floor(Math.random() * LOTS)}`;

/** One household: sets a pouch aside for a trip of its own and puts it back, over and over. @returns changes that were refused as Busy */
async function change(app: App, changes: number): Promise<number> {
  let stored = await app.trips.createTrip(trip(randomUUID()));
  let busy = 0;
  for (let n = 0; n < changes; n += 2)
    try {
      stored = await app.trips.setAside(stored.id, stored.version, [{ code: randomCode(), pouches: 1 }]);
      stored = await app.trips.release(stored.id, stored.version);
    } catch (error) {
      if (!(error instanceof UserError) || error.code !== 'Busy') throw error;
      busy += 2;
      stored = (await app.trips.getTrip(stored.id))!;
    }
  return busy;
}

async function seconds(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
}

async function median(work: () => Promise<unknown>): Promise<string> {
  const times: number[] = [];
  const before = process.cpuUsage();
  for (let n = 0; n < READS; n++) times.push(await seconds(work));
  const { user, system } = process.cpuUsage(before);
  const shown = (ms: number) => (ms < 10 ? ms.toFixed(1) : ms.toFixed(0));
  const ms = times.sort((a, b) => a - b)[Math.floor(READS / 2)]! * 1000;
  return `${shown(ms)} ms (${shown((user + system) / 1000 / READS)})`;
}

/** A program of its own that makes changes. @returns changes that were refused as Busy */
function inProcess({ folder, url }: Place): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [import.meta.filename, 'change', folder, url ?? ''], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let out = '';
    child.stdout.on('data', (text) => (out += text));
    child.on('close', (code) =>
      code === 0 ? resolve(Number(out)) : reject(new Error(`ended with ${code}`)),
    );
  });
}

async function measure(place: Place): Promise<Figures> {
  const figures: Figures = {};
  const filling = await seconds(() => fill(place));
  figures['a million entries written in one change'] = `${filling.toFixed(0)} s`;
  const app = await openApp(place.folder, undefined, place.url);
  const perSecond = (changes: number, time: number, busy: number) =>
    `${(changes / time).toFixed(0)}/s${busy > 0 ? `, ${busy} of ${changes} busy` : ''}`;
  let busy = 0;

  figures[`the shelf of ${LOTS} lots`] = await median(() => app.shelf.listLots());
  figures['a page of it'] = await median(() => app.shelf.look(ALL_LOTS, TODAY));
  figures['one lot'] = await median(() => app.shelf.getLot(randomCode()));
  figures['history of one lot'] = await median(() => app.shelf.history(randomCode()));
  figures[`the list of ${TRIPS} trips`] = await median(() => app.trips.listTrips());
  figures['one trip'] = await median(() => app.trips.getTrip(`trip ${Math.floor(Math.random() * TRIPS)}`));

  await change(app, 20);
  const alone = await seconds(async () => (busy = await change(app, CHANGES)));
  figures['changes, one after the other'] = perSecond(CHANGES, alone, busy);
  const together = await seconds(async () => {
    const each = await Promise.all(Array.from({ length: CLIENTS }, () => change(app, CHANGES / 2)));
    busy = each.reduce((sum, one) => sum + one, 0);
  });
  figures[`changes, ${CLIENTS} at a time in one process`] = perSecond(
    (CLIENTS * CHANGES) / 2,
    together,
    busy,
  );
  const apart = await seconds(async () => {
    const each = await Promise.all(Array.from({ length: PROCESSES }, () => inProcess(place)));
    busy = each.reduce((sum, one) => sum + one, 0);
  });
  figures[`changes, ${PROCESSES} processes with ${CLIENTS} each (starting them included)`] = perSecond(
    (PROCESSES * CLIENTS * CHANGES) / 4,
    apart,
    busy,
  );
  figures['the shelf, read during those changes'] = await (async () => {
    const changing = Promise.all(Array.from({ length: CLIENTS }, () => change(app, CHANGES / 2)));
    const time = await median(() => app.shelf.listLots());
    await changing;
    return time;
  })();
  figures['size'] = `${((await sizeOf(place)) / 1e6).toFixed(0)} MB`;
  if (place.url !== undefined) {
    const hasty = await openApp(
      place.folder,
      undefined,
      `${place.url}?options=-c%20synchronous_commit%3Doff`,
    );
    const time = await seconds(() => change(hasty, CHANGES));
    figures['for comparison: one after the other, without waiting for the disk'] = perSecond(
      CHANGES,
      time,
      0,
    );
    await hasty.close();
  }

  await app.shelf.importLots(
    instance({ eaters: 1, days: 1, lots: MANY_LOTS - LOTS }, 1).stock.map((lot, n) => ({
      ...lot,
      code: `M${n}`,
    })),
    '',
  );
  figures[`a page of ${MANY_LOTS} lots`] = await median(() => app.shelf.look(ALL_LOTS, TODAY));
  const looks: readonly (readonly [what: string, query: Partial<ShelfQuery>])[] = [
    ['its last page', { page: 1_000_000 }],
    ['what holds "recipe 12" in it', { search: 'recipe 12' }],
    ['dinners without milk in it, by energy', { meal: 'dinner', without: ['milk'], sort: 'kcalPer100G' }],
  ];
  for (const [what, query] of looks)
    figures[what] = await median(() => app.shelf.look({ ...ALL_LOTS, ...query }, TODAY));
  await app.close();
  return figures;
}

async function sizeOf({ folder, url }: Place): Promise<number> {
  if (url === undefined) return (await stat(join(folder, 'ridgelarder.sqlite'))).size;
  const db = await openDatabase(url);
  const { rows } = await sql<{ bytes: number }>`select pg_database_size(current_database()) as bytes`.execute(
    db,
  );
  await db.destroy();
  return rows[0]!.bytes;
}

const [command, folder, url] = process.argv.slice(2);
if (command === 'change' && folder !== undefined) {
  const app = await openApp(folder, undefined, url || undefined);
  const each = await Promise.all(Array.from({ length: CLIENTS }, () => change(app, CHANGES / 4)));
  process.stdout.write(String(each.reduce((sum, one) => sum + one, 0)));
  await app.close();
} else {
  const data = await mkdtemp(join(tmpdir(), 'ridgelarder-bench-'));
  const bin = findPostgres();
  const postgres = bin === undefined ? undefined : await startPostgres(bin, true);
  if (!postgres)
    console.log(
      'There is no PostgreSQL on this machine (POSTGRES_BIN names its programs), so only SQLite is measured.',
    );
  console.log(`load average at the beginning: ${loadavg()[0]!.toFixed(1)}`);
  const measured: [string, Figures][] = [['SQLite', await measure({ folder: data })]];
  if (postgres) measured.push(['PostgreSQL', await measure({ folder: data, url: postgres.url })]);
  await postgres?.stop();
  await rm(data, { recursive: true });
  console.log(`load average at the end: ${loadavg()[0]!.toFixed(1)}\n`);
  console.log(
    `| | ${measured.map(([name]) => name).join(' | ')} |\n| --- |${measured.map(() => ' ---: |').join('')}`,
  );
  for (const what of new Set(measured.flatMap(([, figures]) => Object.keys(figures))))
    console.log(`| ${what} | ${measured.map(([, figures]) => figures[what] ?? '–').join(' | ')} |`);
}
