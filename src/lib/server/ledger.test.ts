import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { App } from './app.ts';
import { writing } from './database/open-database.ts';
import { UserError, type UserErrorCode } from './errors.ts';
import { append } from './ledger.ts';
import { lotFields } from './lot-row.ts';
import { madeUpLot, madeUpTrip, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestApp, openTestDatabase, runs }) => {
  const madeUpTripRow = (id: string) => ({
    ...{ id, name: id, trip: null, version: 1, updatedAt: '' },
    ...{ finishedAt: null, afterwards: null },
  });

  describe('a place never holds less than nothing', () => {
    test.each([
      ['the shelf', [{ kind: 'discarded', lotId: 1, pouches: 4 }]],
      ['the shelf by a count', [{ kind: 'counted', lotId: 1, pouches: -4 }]],
      [
        'what is set aside for another trip',
        [
          { kind: 'set aside', lotId: 1, pouches: 1, tripId: 'a' },
          { kind: 'packed', lotId: 1, pouches: 1, tripId: 'b' },
        ],
      ],
      [
        'what another trip packed',
        [
          { kind: 'set aside', lotId: 1, pouches: 1, tripId: 'a' },
          { kind: 'packed', lotId: 1, pouches: 1, tripId: 'a' },
          { kind: 'eaten', lotId: 1, pouches: 1, tripId: 'b' },
        ],
      ],
      ['the shelf of another lot', [{ kind: 'discarded', lotId: 2, pouches: 1 }]],
    ] as const)('%s', async (_, movements) => {
      const db = await openTestDatabase();
      await writing(db, async (trx) => {
        await trx
          .insertInto('lots')
          .values(['L', 'M'].map((code) => ({ ...lotFields(madeUpLot({ code })), version: 1 })))
          .execute();
        await trx
          .insertInto('trips')
          .values(['a', 'b'].map((id) => madeUpTripRow(id)))
          .execute();
        await append(trx, '', '', [{ kind: 'sealed', lotId: 1, pouches: 3 }]);
      });
      await expect(writing(db, (trx) => append(trx, '', '', movements))).rejects.toThrow('overdrawn');
      expect(await db.selectFrom('ledger').select(['kind', 'pouches']).execute()).toEqual([
        { kind: 'sealed', pouches: 3 },
      ]);
    });
  });

  test('counts that somebody has changed in the database are put right from the ledger', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    for (const code of ['A', 'B', 'C']) await app.shelf.addLot(madeUpLot({ code, pouches: 6 }));
    const before = await app.shelf.listLots();
    const db = await openTestDatabase(folder);
    await db.updateTable('balances').set({ onShelf: 9 }).where('lotId', '=', 1).execute();
    await db.deleteFrom('balances').where('lotId', '=', 2).execute();
    await db.insertInto('balances').values({ lotId: 99, onShelf: 1, setAside: 0, packed: 0 }).execute();
    expect(await app.shelf.listLots()).not.toEqual(before);
    expect(await app.shelf.mendCounts()).toBe(3);
    expect(await app.shelf.listLots()).toEqual(before);
    expect(await app.shelf.mendCounts()).toBe(0);
  });

  /*
   * Random days of a household against a shelf that is kept in the head: the same requests must be granted, the same
   * refused, and every pouch must be where the model has it.
   */

  type ModelTrip = {
    id: string;
    version: number;
    setAside: Map<number, number>;
    packed: Map<number, number>;
    isFinished: boolean;
  };
  class Model {
    /** Lots by number; a code changes, the number does not. */
    lots: { code: string; version: number; onShelf: number; ever: number }[] = [];
    trips: ModelTrip[] = [];

    setAside(lot: number): number {
      return this.trips.reduce((sum, trip) => sum + (trip.setAside.get(lot) ?? 0), 0);
    }
    packed(lot: number): number {
      return this.trips.reduce((sum, trip) => sum + (trip.packed.get(lot) ?? 0), 0);
    }
    byCode(code: string): number {
      return this.lots.findIndex((lot) => lot.code === code);
    }
  }

  const isEmpty = (counts: Map<number, number>) => counts.size === 0;
  const withoutZeros = (counts: [number, number][]) => new Map(counts.filter(([, pouches]) => pouches > 0));

  /** Does a thing to the model and returns what to ask of the app, with the error that the model expects. */
  type Step = { expected: UserErrorCode | undefined; ask: (app: App) => Promise<unknown> };
  type Operation = (model: Model) => Step | undefined;

  const granted = (ask: Step['ask']): Step => ({ expected: undefined, ask });
  const refused = (expected: UserErrorCode, ask: Step['ask']): Step => ({ expected, ask });

  const CODES = ['A', 'B', 'C', 'D'];
  const code = fc.constantFrom(...CODES);
  const pouches = fc.nat({ max: 6 });
  const tripIndex = fc.nat({ max: 2 });
  const counts = fc.uniqueArray(fc.record({ code, pouches }), {
    selector: (line) => line.code,
    maxLength: 4,
  });

  const add = fc.record({ code, pouches }).map(({ code, pouches }): Operation => (model) => {
    const ask = (app: App) => app.shelf.addLot(madeUpLot({ code, pouches }));
    if (model.byCode(code) >= 0) return refused('Conflict', ask);
    model.lots.push({ code, version: 1, onShelf: pouches, ever: pouches });
    return granted(ask);
  });

  const count = fc.record({ code, pouches }).map(({ code, pouches }): Operation => (model) => {
    const ask = (app: App) => app.shelf.countLot(code, pouches, '');
    const lot = model.byCode(code);
    if (lot < 0) return refused('NotFound', ask);
    if (pouches < model.setAside(lot)) return refused('Refused', ask);
    const onShelf = pouches - model.setAside(lot);
    model.lots[lot]!.ever += onShelf - model.lots[lot]!.onShelf;
    model.lots[lot]!.onShelf = onShelf;
    return granted(ask);
  });

  const discard = fc
    .record({ code, pouches: fc.integer({ min: 1, max: 4 }) })
    .map(({ code, pouches }): Operation => (model) => {
      const ask = (app: App) => app.shelf.discardPouches(code, pouches, '');
      const lot = model.lots[model.byCode(code)];
      if (!lot) return refused('NotFound', ask);
      if (pouches > lot.onShelf) return refused('Refused', ask);
      lot.onShelf -= pouches;
      lot.ever -= pouches;
      return granted(ask);
    });

  const rename = fc
    .record({ from: code, to: code, stale: fc.boolean() })
    .map(({ from, to, stale }): Operation => (model) => {
      const lot = model.lots[model.byCode(from)];
      const version = (lot?.version ?? 1) - (stale ? 1 : 0);
      const ask = (app: App) =>
        app.shelf.updateLot(from, madeUpLot({ code: to, note: `was ${from}` }), version);
      if (!lot) return refused('NotFound', ask);
      if (stale) return refused('StaleVersion', ask);
      if (from !== to && model.byCode(to) >= 0) return refused('Conflict', ask);
      lot.code = to;
      lot.version += 1;
      return granted(ask);
    });

  const importRows = counts.map((rows): Operation => (model) => {
    const ask = (app: App) =>
      app.shelf.importLots(
        rows.map((row) => madeUpLot({ ...row, note: 'imported' })),
        '',
      );
    if (rows.some((row) => row.pouches < model.setAside(model.byCode(row.code))))
      return refused('Refused', ask);
    for (const { code, pouches } of rows) {
      const index = model.byCode(code);
      const lot = model.lots[index];
      if (!lot) model.lots.push({ code, version: 1, onShelf: pouches, ever: pouches });
      else {
        const onShelf = pouches - model.setAside(index);
        lot.ever += onShelf - lot.onShelf;
        lot.onShelf = onShelf;
      }
    }
    return granted(async (app) => {
      await ask(app);
      for (const lot of model.lots) lot.version = (await app.shelf.getLot(lot.code))!.version;
    });
  });

  const onTrip = (work: (model: Model, trip: ModelTrip, version: number) => Step) =>
    fc
      .record({ index: tripIndex, stale: fc.integer({ min: 0, max: 5 }).map((n) => n === 0) })
      .map(({ index, stale }): Operation => (model) => {
        const trip = model.trips[index];
        if (!trip) return undefined;
        const version = stale ? trip.version - 1 : trip.version;
        const before = structuredClone({ lots: model.lots, trips: model.trips });
        const step = work(model, trip, version);
        if (!stale) return step;
        Object.assign(model, before);
        return refused('StaleVersion', step.ask);
      });

  const addTrip = fc.constant<Operation>((model) => {
    if (model.trips.length >= 3) return undefined;
    return granted(async (app) => {
      const { id } = await app.trips.createTrip(madeUpTrip());
      model.trips.push({ id, version: 1, setAside: new Map(), packed: new Map(), isFinished: false });
    });
  });

  const setAside = counts.chain((need) =>
    onTrip((model, trip, version) => {
      const ask = (app: App) => app.trips.setAside(trip.id, version, need);
      if (!isEmpty(trip.packed) || trip.isFinished) return refused('Refused', ask);
      const wanted = need
        .filter(({ pouches }) => pouches > 0)
        .map(({ code, pouches }) => [model.byCode(code), pouches] as [number, number]);
      const free = (lot: number) => (model.lots[lot]?.onShelf ?? 0) + (trip.setAside.get(lot) ?? 0);
      if (wanted.some(([lot, pouches]) => pouches > free(lot))) return refused('Refused', ask);
      for (const [lot, pouches] of trip.setAside) model.lots[lot]!.onShelf += pouches;
      for (const [lot, pouches] of wanted) model.lots[lot]!.onShelf -= pouches;
      trip.setAside = new Map(wanted);
      trip.version += 1;
      return granted(ask);
    }),
  );

  function releaseAll(model: Model, trip: ModelTrip): void {
    for (const [lot, pouches] of trip.setAside) model.lots[lot]!.onShelf += pouches;
    trip.setAside = new Map();
  }

  const release = onTrip((model, trip, version) => {
    const ask = (app: App) => app.trips.release(trip.id, version);
    if (isEmpty(trip.setAside)) return refused('Refused', ask);
    releaseAll(model, trip);
    trip.version += 1;
    return granted(ask);
  });

  const pack = onTrip((_, trip, version) => {
    const ask = (app: App) => app.trips.pack(trip.id, version);
    if (isEmpty(trip.setAside)) return refused('Refused', ask);
    [trip.packed, trip.setAside] = [trip.setAside, new Map()];
    trip.version += 1;
    return granted(ask);
  });

  const bringBack = counts.chain((back) =>
    onTrip((model, trip, version) => {
      const ask = (app: App) => app.trips.bringBack(trip.id, version, back);
      const returned = withoutZeros(back.map(({ code, pouches }) => [model.byCode(code), pouches]));
      if (
        isEmpty(trip.packed) ||
        [...returned].some(([lot, pouches]) => pouches > (trip.packed.get(lot) ?? 0))
      )
        return refused('Refused', ask);
      for (const [lot, pouches] of trip.packed) {
        model.lots[lot]!.onShelf += returned.get(lot) ?? 0;
        model.lots[lot]!.ever -= pouches - (returned.get(lot) ?? 0);
      }
      trip.isFinished = [...trip.packed].some(([lot, pouches]) => pouches > (returned.get(lot) ?? 0));
      trip.packed = new Map();
      trip.version += 1;
      return granted(ask);
    }),
  );

  const deleteTrip = onTrip((model, trip, version) => {
    const ask = (app: App) => app.trips.deleteTrip(trip.id, version);
    if (!isEmpty(trip.packed)) return refused('Refused', ask);
    releaseAll(model, trip);
    model.trips = model.trips.filter(({ id }) => id !== trip.id);
    return granted(ask);
  });

  async function expectSame(app: App, model: Model): Promise<void> {
    const lots = await app.shelf.listLots();
    const expected = model.lots.map(({ code, onShelf }, lot) => {
      const [setAside, packed] = [model.setAside(lot), model.packed(lot)];
      return { code, pouches: onShelf + setAside, onShelf, setAside, packed };
    });
    expect(
      lots.map(({ code, pouches, onShelf, setAside, packed }) => ({
        code,
        pouches,
        onShelf,
        setAside,
        packed,
      })),
    ).toEqual(expected.sort((a, b) => (a.code < b.code ? -1 : 1)));
    for (const { code, ever } of model.lots) {
      const lot = lots.find((one) => one.code === code)!;
      expect(Math.min(lot.onShelf, lot.setAside, lot.packed)).toBeGreaterThanOrEqual(0);
      // Over all places, outside included, pouches only move: what is here is what came in less what went out.
      const fromOutside = (await app.shelf.history(code)).reduce(
        (sum, { fromPlace, toPlace, pouches }) =>
          sum + (fromPlace === 'outside' ? pouches : toPlace === 'outside' ? -pouches : 0),
        0,
      );
      expect(lot.onShelf + lot.setAside + lot.packed).toBe(fromOutside);
      expect(fromOutside).toBe(ever);
    }
    // What is kept beside the ledger is what its entries add up to, and the list of trips has come as far as each of them.
    expect(await app.shelf.mendCounts()).toBe(0);
    const listed = new Map((await app.trips.listTrips()).map(({ id, stage }) => [id, stage]));
    for (const trip of model.trips) {
      const stored = (await app.trips.getTrip(trip.id))!;
      expect(listed.get(trip.id)).toBe(stored.stage);
      const promised = [...(isEmpty(trip.packed) ? trip.setAside : trip.packed)].map(([lot, pouches]) => ({
        code: model.lots[lot]!.code,
        pouches,
      }));
      expect(stored.version).toBe(trip.version);
      expect(stored.stage).toBe(
        trip.isFinished
          ? 'finished'
          : !isEmpty(trip.packed)
            ? 'packed'
            : !isEmpty(trip.setAside)
              ? 'set aside'
              : 'open',
      );
      expect(stored.reserved).toEqual(promised.sort((a, b) => (a.code < b.code ? -1 : 1)));
    }
  }

  test('any sequence of changes leaves every pouch where it should be, after reopening too', async () => {
    const operations = fc.array(
      fc.oneof(
        { weight: 3, arbitrary: add },
        { weight: 2, arbitrary: addTrip },
        { weight: 5, arbitrary: setAside },
        { weight: 3, arbitrary: pack },
        { weight: 3, arbitrary: bringBack },
        { weight: 1, arbitrary: release },
        { weight: 1, arbitrary: deleteTrip },
        { weight: 1, arbitrary: count },
        { weight: 1, arbitrary: discard },
        { weight: 1, arbitrary: rename },
        { weight: 2, arbitrary: importRows },
      ),
      { minLength: 10, maxLength: 40, size: 'max' },
    );
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(operations, async (sequence) => {
        const folder = await temporaryFolder();
        const model = new Model();
        let app = await openTestApp(folder);
        for (const operation of sequence) {
          const step = operation(model);
          if (!step) continue;
          const outcome = await step.ask(app).then(
            () => undefined,
            (error: unknown) => {
              if (error instanceof UserError) return error.code;
              throw error;
            },
          );
          expect(outcome).toBe(step.expected);
          seen.add(outcome ?? 'granted');
          await expectSame(app, model);
        }
        await app.close();
        app = await openTestApp(folder);
        await expectSame(app, model);
        await app.close();
      }),
      { numRuns: runs(30) },
    );
    expect([...seen].sort()).toEqual(['Conflict', 'NotFound', 'Refused', 'StaleVersion', 'granted']);
  }, 60_000);
});
