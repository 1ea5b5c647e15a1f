import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterEach, describe, expect, inject } from 'vitest';
import { exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import { PNG } from '../../../tests/support/pictures.ts';
import { stripPicture, type Picture } from '../photos/strip-picture.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { Trip, type TripInput } from '../planning/model/trip.ts';
import { openApp, type App } from './app.ts';
import { openDatabase, type Database } from './database/open-database.ts';
import { UserError, type UserErrorCode } from './errors.ts';

/* For the tests of this folder: real files and databases of their own, gone after each test. */

const folders: string[] = [];
const apps: App[] = [];
const databases: Database[] = [];
/** Schemas of PostgreSQL by the data folder that they stand for. */
const schemas = new Map<string, string>();

afterEach(async () => {
  await Promise.all(apps.splice(0).map((app) => app.close()));
  await Promise.all(databases.splice(0).map((database) => database.destroy()));
  await Promise.all(folders.splice(0).map((folder) => rm(folder, { recursive: true, force: true })));
  for (const schema of schemas.values()) await postgres.query(`drop schema ${schema} cascade`);
  schemas.clear();
});

export async function temporaryFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ridgelarder-test-'));
  folders.push(folder);
  return folder;
}

/** Opens a data folder, a new one where none is given; closed after the test. */
export const openTestApp = (folder?: string, clock?: () => Date): Promise<App> =>
  ON_SQLITE.openTestApp(folder, clock);

/** Where the tests of repositories keep their data: in the folders that they name, or on PostgreSQL in a schema for each. */
export class TestDatabase {
  readonly name: string;
  readonly isAbsent: boolean;
  /** How many of the usual runs of a random test there is time for. */
  readonly runs: (usual: number) => number;
  readonly #urlFor: (folder: string) => Promise<string | undefined>;

  constructor(
    name: string,
    isAbsent: boolean,
    runsShare: number,
    urlFor: (folder: string) => Promise<string | undefined>,
  ) {
    this.name = name;
    this.isAbsent = isAbsent;
    this.runs = (usual) => Math.ceil(usual * runsShare);
    this.#urlFor = urlFor;
  }

  /** Opens what stands for a data folder, a new one where none is given; closed after the test. */
  openTestApp = async (folder?: string, clock?: () => Date): Promise<App> => {
    const [data, url] = await this.place(folder);
    const app = await openApp(data, clock, url);
    apps.push(app);
    return app;
  };

  /** The same without what is above the database. */
  openTestDatabase = async (folder?: string, patienceMs?: number): Promise<Database> => {
    const [data, url] = await this.place(folder);
    const database = await openDatabase(url ?? data, patienceMs, data);
    databases.push(database);
    return database;
  };

  /** @returns the folder, and the address that stands for it, if any */
  place = async (folder?: string): Promise<[folder: string, url: string | undefined]> => {
    const data = folder ?? (await temporaryFolder());
    return [data, await this.#urlFor(data)];
  };
}

const postgresUrl = inject('postgresUrl');

const postgres = new pg.Pool({ connectionString: postgresUrl, max: 1, allowExitOnIdle: true });

const ON_SQLITE = new TestDatabase('SQLite', false, 1, async () => undefined);
const ON_POSTGRES = new TestDatabase('PostgreSQL', postgresUrl === undefined, 0.3, async (folder) => {
  let schema = schemas.get(folder);
  if (schema === undefined) {
    schema = `test_${randomUUID().replaceAll('-', '')}`;
    schemas.set(folder, schema);
  }
  await postgres.query(`create schema if not exists ${schema}`);
  return `${postgresUrl}?options=-c%20search_path%3D${schema}`;
});

/** Runs tests on PostgreSQL; they are skipped where it is not installed. */
export function onPostgres(tests: (database: TestDatabase) => void): void {
  describe.skipIf(ON_POSTGRES.isAbsent)('on PostgreSQL', () => tests(ON_POSTGRES));
}

/** Runs tests on each database there is. */
export function onEachDatabase(tests: (database: TestDatabase) => void): void {
  describe('on SQLite', () => tests(ON_SQLITE));
  onPostgres(tests);
}

export function madeUpLot(fields: Partial<PouchLot> = {}): PouchLot {
  return {
    code: 'LENT-01',
    recipe: 'Lentil stew',
    mealKinds: ['dinner'],
    sealedOn: '2026-01-10',
    bestBefore: '2027-07-10',
    pouches: 6,
    servingsPerPouch: 2,
    dryWeightG: 112.5,
    energyKcal: 480,
    waterMl: 320,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 16,
    diets: ['vegan'],
    note: '',
    ...fields,
  };
}

export function madeUpTrip(fields: Partial<TripInput> = {}): Trip {
  return Trip.parse({
    name: 'Three lakes',
    startDate: '2026-07-04',
    dayCount: 3,
    party: [{ name: 'Ada' }],
    ...fields,
  });
}

/** Puts something into every table, with what is easily lost on the way. */
export async function fillEveryTable(
  { shelf, trips, trailNotes, settings, kitchen, photos, imports, access }: App,
  lotCount = 2300,
): Promise<void> {
  const lots = Array.from({ length: lotCount }, (_, n) => madeUpLot({ code: `L${n}`, pouches: n % 7 }));
  await shelf.importLots(lots, 'first');
  await shelf.addLot(
    madeUpLot({ code: 'Käse 7"%', dryWeightG: 0.1 + 0.2, costMinor: 99, note: "it's\nnew 🥾" }),
  );
  const { id } = await trips.createTrip(madeUpTrip());
  await trips.setAside(id, 1, [{ code: 'Käse 7"%', pouches: 4 }]);
  await trips.pack(id, 2);
  await trailNotes.enter(id, [
    { id: 'n1', at: '2026-07-05T18:30:00Z', kind: 'eaten', code: 'Käse 7"%', pouches: 1, text: '' },
  ]);
  const other = await trips.createTrip(madeUpTrip({ name: 'Nowhere' }));
  await trips.setAside(other.id, 1, [{ code: 'L6', pouches: 2 }]);
  await settings.save({ ...defaultSettings(), currency: 'CHF' });
  await kitchen.recipes.create(exampleRecipe());
  const thrown = await kitchen.recipes.create({ ...exampleRecipe(), name: 'Thrown away' });
  await kitchen.recipes.delete(thrown.id, thrown.version);
  await photos.keep({ kind: 'lot', code: 'L1' }, stripPicture(PNG) as Picture);
  await imports.rememberMapping('a;b', { a: 'code' });
  await imports.keepUpload('a.csv', new Blob(['a']).stream(), 10);
  await access.sessions.start('a');
  await access.links.give({ forWhom: 'Ada', tripId: id, mayNote: true, days: 3 });
}

/** Expects a UserError of a kind whose message holds every one of some texts. */
export async function expectUserError(
  work: Promise<unknown>,
  code: UserErrorCode,
  ...texts: string[]
): Promise<void> {
  const caught: unknown = await work.then(
    () => 'nothing was thrown',
    (error: unknown) => error,
  );
  expect(caught).toBeInstanceOf(UserError);
  expect(caught).toMatchObject({ code });
  for (const text of texts) expect((caught as UserError).message).toContain(text);
}
