import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as sleep } from 'node:timers/promises';
import { Kysely } from 'kysely';
import { Migrator } from 'kysely/migration';
import { randomFrom, type Random } from '../../src/lib/planning/optimiser/random.ts';
import { Backups } from '../../src/lib/server/backups/backups.ts';
import { checkData } from '../../src/lib/server/backups/check-data.ts';
import { readCopyName } from '../../src/lib/server/backups/copy-names.ts';
import { DATABASE_FILE } from '../../src/lib/server/data-folder.ts';
import { MIGRATIONS } from '../../src/lib/server/database/migrations.ts';
import { openDatabase, reading, type Database } from '../../src/lib/server/database/open-database.ts';
import { sqliteDialect } from '../../src/lib/server/database/sqlite-dialect.ts';
import { wrongBalances } from '../../src/lib/server/ledger.ts';
import { ShelfRepository } from '../../src/lib/server/shelf-repository.ts';
import { TripRepository } from '../../src/lib/server/trip-repository.ts';
import { exampleLot } from '../support/examples.ts';
import type { Disk } from './kept-by-disk.ts';
import { NEW, type Said, type Task } from './protocol.ts';
import { stored } from './trip-model.ts';

const WORKER = path.join(import.meta.dirname, 'worker.ts');
/** In this order; a folder lives through all of them. */
const KINDS = ['change', 'change', 'copy', 'change', 'update', 'restore'] as const;
const LONGEST_MS: Readonly<Record<Task['kind'], number>> = {
  change: 600,
  update: 250,
  copy: 300,
  restore: 300,
};
const now = () => new Date().toISOString();

export type Counts = {
  rounds: number;
  acknowledged: number;
  inFlight: number;
  landed: number;
  changes: number;
};

/**
 * Kills a process that changes a data folder, again and again, at moments that a seed chooses, and looks each time at what it left.
 *
 * @param told hears how it goes
 * @param disk lets the power fail with each of these kills: what was not synced may be lost
 * @returns how much was looked at
 * @throws Error naming seed, round and what was lost, half there or wrong
 */
export async function crashRounds(
  rounds: number,
  seed: number,
  told: (line: string) => void,
  disk?: Disk,
): Promise<Counts> {
  const counts: Counts = { rounds: 0, acknowledged: 0, inFlight: 0, landed: 0, changes: 0 };
  let larder = await Larder.make(counts, disk);
  try {
    for (let round = 0; round < rounds; round += 1) {
      const kind = KINDS[round % KINDS.length]!;
      const random = randomFrom(seed * 1000 + round);
      try {
        if (kind === 'update') await killWhileUpdating(random, counts, disk);
        else await larder.round(kind, `${round}`, random);
      } catch (error) {
        throw new Error(
          `seed ${seed}, round ${round} (${kind}): ${error instanceof Error ? error.message : String(error)}`,
          {
            cause: error,
          },
        );
      }
      counts.rounds += 1;
      told(`round ${round + 1} of ${rounds}, ${kind}: ${JSON.stringify(counts)}`);
      if (kind === 'restore') {
        await larder.remove();
        larder = await Larder.make(counts, disk);
      }
    }
  } finally {
    await larder.remove();
  }
  return counts;
}

/** Starts a worker and kills it so long after it says `from`. Every other time that the power fails, some of what was not synced is there all the same. @returns all that it said */
async function killed(
  task: Task,
  from: 'ready' | 'opening',
  afterMs: number,
  random: Random,
  disk: Disk | undefined,
): Promise<Said[]> {
  const env = { ...process.env, ...(await disk?.begin(task.folder)) };
  const worker = spawn(process.execPath, [WORKER, JSON.stringify(task)], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = once(worker, 'close');
  let complaint = '';
  worker.stderr.on('data', (text) => (complaint += String(text)));
  const lines: Said[] = [];
  let isEnding = false;
  for await (const line of createInterface({ input: worker.stdout })) {
    // The last line may be cut off in its middle: then it was not said.
    const said = parsed(line);
    if (!said) continue;
    lines.push(said);
    if (!said[from] || isEnding) continue;
    isEnding = true;
    void sleep(afterMs).then(() => worker.kill('SIGKILL'));
  }
  const [code, signal] = (await ended) as [number | null, string | null];
  if (signal !== 'SIGKILL' && !(task.kind === 'update' && code === 0))
    throw new Error(`the worker ended by itself (${code ?? signal}): ${complaint}`);
  await disk?.fail(task.folder, random() < 0.5 ? random : undefined);
  return lines;
}

function parsed(line: string): Said | undefined {
  try {
    return JSON.parse(line) as Said;
  } catch {
    return undefined;
  }
}

const same = (what: string, found: unknown, expected: readonly unknown[]) => {
  if (!expected.includes(found))
    throw new Error(`${what} is ${String(found)}, and should be ${expected.map(String).join(' or ')}`);
};

/** A data folder with all that was ever acknowledged in it. */
class Larder {
  readonly folder: string;
  readonly #counts: Counts;
  readonly #disk: Disk | undefined;
  /** What is known of each thing by its name: acknowledged, or left behind by a change in flight. */
  readonly #known = new Map<string, string>();

  private constructor(folder: string, counts: Counts, disk: Disk | undefined) {
    this.folder = folder;
    this.#counts = counts;
    this.#disk = disk;
  }

  /** With a disk, the first process finds an empty folder, so that the making of the database is among what may be lost. */
  static async make(counts: Counts, disk: Disk | undefined): Promise<Larder> {
    const larder = new Larder(await mkdtemp(path.join(tmpdir(), 'ridgelarder-crash-')), counts, disk);
    if (!disk) await (await openDatabase(larder.folder)).destroy();
    return larder;
  }

  remove(): Promise<void> {
    return rm(this.folder, { recursive: true, force: true });
  }

  async round(kind: 'change' | 'copy' | 'restore', name: string, random: Random): Promise<void> {
    const copies = kind === 'restore' ? await this.#twoCopies() : [];
    const task: Task = { folder: this.folder, kind, seed: Math.floor(random() * 2 ** 31), name, copies };
    const lines = await killed(task, 'ready', random() * LONGEST_MS[kind], random, this.#disk);
    const inFlight = new Map<string, string>();
    let atCopy: ReadonlyMap<string, string> = this.#known;
    const copied: [name: string, known: ReadonlyMap<string, string>][] = [];
    for (const { begun, done, of, expected, copied: copy } of lines) {
      if (begun === 'copy') atCopy = new Map(this.#known);
      else if (begun !== undefined) inFlight.set(begun, expected ?? '');
      if (copy !== undefined) copied.push([copy, atCopy]);
      if (done === undefined) continue;
      this.#known.set(done, expected ?? inFlight.get(done) ?? '');
      inFlight.delete(of ?? done);
      this.#counts.acknowledged += 1;
    }
    this.#counts.inFlight += inFlight.size;

    refuseUnlessSound(path.join(this.folder, DATABASE_FILE));
    const db = await openDatabase(this.folder);
    try {
      await checkData(db, 'what is left');
      if (kind === 'restore') await this.#checkPutBack(db, inFlight);
      else {
        const things = await found(db);
        for (const [key, was] of things) this.#compare(key, was, inFlight);
        for (const key of this.#known.keys()) if (!things.has(key)) throw new Error(`${key} is lost`);
      }
    } finally {
      await db.destroy();
    }
    for (const file of await readdir(path.join(this.folder, 'backups')).catch(() => []))
      if (readCopyName(file)) refuseUnlessSound(path.join(this.folder, 'backups', file));
    const left = await readdir(path.join(this.folder, 'backups')).catch((): string[] => []);
    for (const [file, known] of copied) {
      if (!left.includes(file)) throw new Error(`the copy ${file} is lost`);
      await this.#checkCopy(file, known);
    }
  }

  /** What is found of a thing is what was acknowledged, or the whole of what was in flight. */
  #compare(key: string, was: string, inFlight: Map<string, string>): void {
    const known = this.#known.get(key);
    let next = inFlight.get(key);
    if (known === undefined && next === undefined && key.startsWith(`${NEW} `)) {
      next = inFlight.get(NEW);
      inFlight.delete(NEW);
    }
    same(
      key,
      was,
      [known, next].filter((expected) => expected !== undefined),
    );
    if (was === next && was !== known) this.#counts.landed += 1;
    this.#known.set(key, was);
  }

  /** A copy holds at least what was acknowledged before it was begun. */
  async #checkCopy(file: string, known: ReadonlyMap<string, string>): Promise<void> {
    const copy = new DatabaseSync(path.join(this.folder, 'backups', file), { readOnly: true });
    const names = new Set(
      copy
        .prepare('select headerSignature from mappings')
        .all()
        .map((row) => `mapping ${String(row['headerSignature'])}`),
    );
    copy.close();
    for (const key of known.keys())
      if (key.startsWith('mapping ') && !names.has(key)) throw new Error(`${key} is not in the copy ${file}`);
  }

  /** One copy as it is now, and one of an almost empty place. */
  async #twoCopies(): Promise<string[]> {
    const db = await openDatabase(this.folder);
    const backups = new Backups(db, this.folder, () => new Date());
    const { name: full } = await backups.make('by-hand');
    const other = await mkdtemp(path.join(tmpdir(), 'ridgelarder-crash-'));
    try {
      const small = await openDatabase(other);
      await new ShelfRepository(small, now).addLot(exampleLot({ code: 'ALONE' }));
      const file = await new Backups(small, other, () => new Date()).withFile('sqlite', (file) =>
        readFile(file),
      );
      await small.destroy();
      const { name } = await backups.takeIn('other', new Blob([file]).stream());
      return [name, full];
    } finally {
      await db.destroy();
      await rm(other, { recursive: true, force: true });
    }
  }

  async #checkPutBack(db: Database, inFlight: ReadonlyMap<string, string>): Promise<void> {
    const backups = new Backups(db, this.folder, () => new Date());
    const [last, next] = [this.#known.get('data'), inFlight.get('data')];
    const all = (await backups.list()).filter(({ reason }) => reason !== 'before-restore');
    const full = all.find(({ reason }) => reason === 'by-hand')?.name;
    const isNow = async (name: string) => {
      const { kinds, settingsDiffer } = await backups.compare(name);
      return (
        !settingsDiffer &&
        kinds.every(({ onlyNow, onlyThen, changed }) => onlyNow.count + onlyThen.count + changed.count === 0)
      );
    };
    for (const name of [last ?? full, next]) if (name !== undefined && (await isNow(name))) return;
    throw new Error('what is there is neither the copy that was put back nor the one before');
  }
}

/** What is in a data folder, by the names and in the words of the worker. */
async function found(db: Database): Promise<Map<string, string>> {
  same('lots whose kept counts are wrong', (await reading(db, wrongBalances)).length, [0]);
  const things = new Map<string, string>();
  const lots = await new ShelfRepository(db, now).listLots();
  const repository = new TripRepository(db, now);
  const trips = await Promise.all(
    (await repository.listTrips()).map(async ({ id }) => (await repository.getTrip(id))!),
  );
  const gone = new Map<string, number>();
  for (const { reserved, eaten } of trips)
    for (const { code, pouches } of [...reserved, ...eaten]) gone.set(code, (gone.get(code) ?? 0) + pouches);
  for (const { id, ...trip } of trips) things.set(`trip ${id}`, stored({ id, ...trip }));

  const lists = Map.groupBy(
    lots.filter(({ code }) => code.startsWith('I')),
    ({ code }) => code.slice(0, code.lastIndexOf('-') + 1),
  );
  for (const [name, rows] of lists)
    things.set(`lots ${name}`, `${rows.length} ${rows.reduce((sum, { onShelf }) => sum + onShelf, 0)}`);
  // What came in less what went out: on the shelf, and with the trips.
  for (const { code, onShelf } of lots)
    if (code.startsWith('T')) things.set(`stock ${code}`, String(onShelf + (gone.get(code) ?? 0)));

  const batches = await db
    .selectFrom('records')
    .select(['name', 'body'])
    .where('kind', '=', 'batch')
    .execute();
  for (const { name, body } of batches) {
    const sealed = lots.filter(({ code }) => code.startsWith(`${name}-`)).length;
    things.set(`batch ${name}`, `${JSON.parse(body).sealed ? 'sealed' : 'open'} ${sealed}`);
  }
  const mappings = await db.selectFrom('mappings').select('headerSignature').execute();
  for (const { headerSignature } of mappings) things.set(`mapping ${headerSignature}`, 'there');
  return things;
}

function refuseUnlessSound(file: string): void {
  const database = new DatabaseSync(file);
  try {
    same(`integrity of ${file}`, database.prepare('pragma integrity_check').get()?.['integrity_check'], [
      'ok',
    ]);
    same(`loose references in ${file}`, database.prepare('pragma foreign_key_check').all().length, [0]);
  } finally {
    database.close();
  }
}

const OLD_LOT = `insert into lots (code, recipe, "mealKinds", "sealedOn", "bestBefore", "servingsPerPouch", "dryWeightG", "energyKcal",
  "waterMl", "waterKind", "steepMin", "tareG", diets, note, version)
  values (?, 'r', '["dinner"]', '2026-01-10', '2027-07-10', 1, 100, 400, 300, 'boiling', 5, 10, '[]', '', 1)`;

/** A file of an earlier version is killed while its tables are brought up to date: they are as before or as after, and the rows as they were. */
async function killWhileUpdating(random: Random, counts: Counts, disk: Disk | undefined): Promise<void> {
  const folder = await mkdtemp(path.join(tmpdir(), 'ridgelarder-crash-'));
  const file = path.join(folder, DATABASE_FILE);
  try {
    const names = Object.keys(MIGRATIONS);
    const known = 1 + Math.floor(random() * (names.length - 1));
    const db = new Kysely({ dialect: sqliteDialect(file, 0) });
    await new Migrator({ db, provider: { getMigrations: async () => MIGRATIONS } }).migrateTo(
      names[known - 1]!,
    );
    await db.destroy();
    const old = new DatabaseSync(file);
    old.exec('begin');
    for (let n = 0; n < 1000; n += 1) old.prepare(OLD_LOT).run(`OLD-${n}`);
    old.exec(
      `insert into ledger ("at", "kind", "lotId", "fromPlace", "toPlace", "pouches", "note") select '', 'sealed', id, 'outside', 'shelf', 3, '' from lots; commit`,
    );
    old.close();
    const rows = (of: string) => {
      const database = new DatabaseSync(of);
      const all = [
        database.prepare('select code, note from lots order by id').all(),
        database.prepare('select * from ledger order by id').all(),
      ];
      const done = database.prepare('select count(*) as n from kysely_migration').get()?.['n'];
      database.close();
      return { all: JSON.stringify(all), done: Number(done) };
    };
    const before = rows(file);
    for (let tries = 1 + Math.floor(random() * 3); tries > 0; tries -= 1) {
      const task: Task = { folder, kind: 'update', seed: 0, name: '' };
      const lines = await killed(task, 'opening', random() * LONGEST_MS.update, random, disk);
      if (!lines.some(({ ready }) => ready)) counts.inFlight += 1;
    }
    refuseUnlessSound(file);
    const after = rows(file);
    same('what the tables hold', after.all, [before.all]);
    same('changes of the tables', after.done, [known, names.length]);
    if (after.done > known) counts.changes += 1;
    const copies = existsSync(path.join(folder, 'backups'))
      ? await readdir(path.join(folder, 'backups'))
      : [];
    const whole = copies
      .filter((name) => readCopyName(name))
      .map((name) => path.join(folder, 'backups', name));
    if (after.done > known) same('copies before the change', whole.length > 0, [true]);
    for (const copy of whole) {
      refuseUnlessSound(copy);
      same('what the copy holds', rows(copy).all, [before.all]);
      same('changes in the copy', rows(copy).done, [known]);
    }
    const opened = await openDatabase(folder);
    await checkData(opened, 'what was brought up to date').finally(() => opened.destroy());
    same('what the tables hold at last', rows(file).all, [before.all]);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
