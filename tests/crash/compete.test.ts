import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { expectUserError, onEachDatabase, temporaryFolder } from '../../src/lib/server/test-data.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { partVersion } from '../../src/lib/server/settings-repository.ts';
import { exampleLot, exampleTrip } from '../support/examples.ts';
import type { Contest } from './compete.ts';

const PROCESSES = 2;
const POUCHES = 12;
const CODES = ['A', 'B', 'C'];

onEachDatabase(({ openTestApp, openTestDatabase, place, runs }) => {
  test('of pouches that two processes promise to trips at once, none is promised twice and none is lost', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    for (const code of CODES) await app.shelf.addLot(exampleLot({ code, pouches: POUCHES }));
    const tripIds: string[] = [];
    for (const name of ['one', 'two', 'three', 'four'])
      tripIds.push((await app.trips.createTrip(exampleTrip({ name }))).id);
    const [data, url] = await place(folder);
    const changes = runs(1500);

    const outcomes = await Promise.all(
      Array.from({ length: PROCESSES }, async (_, index): Promise<Record<string, number>> => {
        const contest: Contest = { place: url ?? data, seed: 7 + index, changes, tripIds, codes: CODES };
        const program = path.join(import.meta.dirname, 'compete.ts');
        const { stdout } = await promisify(execFile)(process.execPath, [program, JSON.stringify(contest)]);
        return JSON.parse(stdout) as Record<string, number>;
      }),
    );
    console.log(JSON.stringify(outcomes));
    const sum = (key: string) => outcomes.reduce((all, outcome) => all + (outcome[key] ?? 0), 0);
    const done = sum('done');
    // Changes were made, came in each other's way, and were refused where there were too few pouches; nothing else happened.
    expect(done).toBeGreaterThan(changes / 4);
    expect(sum('StaleVersion')).toBeGreaterThan(0);
    expect(sum('Refused')).toBeGreaterThan(0);
    expect(done + sum('StaleVersion') + sum('Refused')).toBe(PROCESSES * changes);

    // Every change raised the version of its trip once.
    const trips = await Promise.all(
      (await app.trips.listTrips()).map(async ({ id }) => (await app.trips.getTrip(id))!),
    );
    expect(trips.reduce((all, { version }) => all + version - 1, 0)).toBe(done);
    const countOf = (code: string, of: 'reserved' | 'eaten') =>
      trips
        .flatMap((trip) => trip[of])
        .reduce((all, line) => all + (line.code === code ? line.pouches : 0), 0);
    for (const lot of await app.shelf.listLots())
      expect(lot.onShelf + countOf(lot.code, 'reserved') + countOf(lot.code, 'eaten'), lot.code).toBe(
        POUCHES,
      );

    // At no moment was there less than nothing anywhere.
    const db = await openTestDatabase(folder);
    const held = new Map<string, number>();
    for (const { lotId, tripId, fromPlace, toPlace, pouches } of await db
      .selectFrom('ledger')
      .selectAll()
      .orderBy('id')
      .execute())
      for (const [where, moved] of [
        [fromPlace, -pouches],
        [toPlace, pouches],
      ] as const) {
        if (where === 'outside') continue;
        const at = `${lotId} ${where} ${where === 'shelf' ? '' : tripId}`;
        held.set(at, (held.get(at) ?? 0) + moved);
        expect(held.get(at), at).toBeGreaterThanOrEqual(0);
      }
  }, 300_000);

  test('of two who save the same part of the settings one is told; other parts stay as their own savers left them', async () => {
    const folder = await temporaryFolder();
    const [one, two] = [await openTestApp(folder), await openTestApp(folder)];
    const usual = defaultSettings();
    const [units, shares] = [['currency', 'unitSystem'], ['hotWaterC']] as const;
    const [ofUnits, ofShares] = [units, shares].map((names) => partVersion(usual, names)) as [string, string];
    await Promise.all([
      one.settings.savePart(units, ofUnits, { ...usual, currency: 'NOK' }),
      two.settings.savePart(shares, ofShares, { ...usual, hotWaterC: 71 }),
    ]);
    expect(await one.settings.get()).toMatchObject({ currency: 'NOK', hotWaterC: 71 });
    await expectUserError(
      two.settings.savePart(units, ofUnits, { ...usual, currency: 'CHF' }),
      'StaleVersion',
      'Someone else saved this section',
    );
    const newer = partVersion(await two.settings.get(), units);
    await two.settings.savePart(units, newer, { ...usual, currency: 'CHF' });
    expect(await one.settings.get()).toMatchObject({ currency: 'CHF', hotWaterC: 71 });

    const kitchen = await one.settings.getKitchen();
    const version = partVersion(kitchen, ['cookDays']);
    const saved = await Promise.allSettled(
      [one, two].map(({ settings }, index) =>
        settings.saveKitchenPart(['cookDays'], version, {
          ...kitchen,
          cookDays: index === 0 ? ['Mon'] : ['Tue'],
        }),
      ),
    );
    expect(saved.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
  });
});
