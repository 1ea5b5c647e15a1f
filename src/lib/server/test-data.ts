import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect } from 'vitest';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { Trip, type TripInput } from '../planning/model/trip.ts';
import { openApp, type App } from './app.ts';
import { UserError, type UserErrorCode } from './errors.ts';

/* For the tests of this folder: real files in a folder of their own, gone after each test. */

const folders: string[] = [];
const apps: App[] = [];

afterEach(async () => {
  await Promise.all(apps.splice(0).map((app) => app.close()));
  await Promise.all(folders.splice(0).map((folder) => rm(folder, { recursive: true, force: true })));
});

export async function temporaryFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ridgelarder-test-'));
  folders.push(folder);
  return folder;
}

/** Opens a data folder, a new one where none is given; closed after the test. */
export async function openTestApp(folder?: string, clock?: () => Date): Promise<App> {
  const app = await openApp(folder ?? (await temporaryFolder()), clock);
  apps.push(app);
  return app;
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
