import { describe, expect, test } from 'vitest';
import { Stock } from '../planning/model/pouch-lot.ts';
import type { App } from './app.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  const FULL_LOT = madeUpLot({
    code: 'Käse 7"%',
    mealKinds: ['lunch', 'dinner'],
    proteinG: 22.25,
    fatG: 0,
    carbohydrateG: 60.1,
    volumeMl: 410,
    allergens: ['milk', 'celery'],
    costMinor: 385,
    note: "two lines\nand a quote's end",
  });

  /** Sets aside some pouches of a lot for a new trip. */
  async function promise(app: App, code: string, pouches: number) {
    const { id, version } = await app.trips.createTrip(madeUpTrip());
    return app.trips.setAside(id, version, [{ code, pouches }]);
  }

  describe('adding and reading', () => {
    test('a lot comes back as it was, with its places', async () => {
      const app = await openTestApp();
      const places = { version: 1, onShelf: 6, setAside: 0, packed: 0 };
      expect(await app.shelf.addLot(FULL_LOT)).toStrictEqual({ ...FULL_LOT, ...places });
      expect(await app.shelf.getLot(FULL_LOT.code)).toStrictEqual({ ...FULL_LOT, ...places });
    });

    test('what was left out stays left out, and no allergens is not the same as none stated', async () => {
      const app = await openTestApp();
      const unknown = madeUpLot({ code: 'unknown' });
      const none = madeUpLot({ code: 'none', allergens: [] });
      await app.shelf.addLot(unknown);
      await app.shelf.addLot(none);
      expect(await app.shelf.getLot('unknown')).not.toHaveProperty('allergens');
      expect(await app.shelf.getLot('unknown')).not.toHaveProperty('proteinG');
      expect(await app.shelf.getLot('none')).toHaveProperty('allergens', []);
    });

    test('lots are listed by best-before, then code, the empty ones too', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot({ code: 'C', bestBefore: '2027-01-01' }));
      await app.shelf.addLot(madeUpLot({ code: 'B', bestBefore: '2028-01-01', pouches: 0 }));
      await app.shelf.addLot(madeUpLot({ code: 'A', bestBefore: '2028-01-01' }));
      expect((await app.shelf.listLots()).map(({ code, pouches }) => [code, pouches])).toEqual([
        ['C', 6],
        ['A', 6],
        ['B', 0],
      ]);
    });

    test('a code that is taken is refused', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await expectUserError(app.shelf.addLot(madeUpLot({ pouches: 1 })), 'Conflict', '"LENT-01"', 'taken');
      expect(await app.shelf.listLots()).toHaveLength(1);
      expect(await app.shelf.history('LENT-01')).toHaveLength(1);
    });

    test('of several lots all are added or none', async () => {
      const app = await openTestApp();
      await app.shelf.addLots([madeUpLot({ code: 'A' }), madeUpLot({ code: 'B', pouches: 2 })]);
      const again = [madeUpLot({ code: 'C' }), madeUpLot({ code: 'B' })];
      await expectUserError(app.shelf.addLots(again), 'Conflict', '"B"', 'taken');
      expect([...(await app.shelf.codes())].sort()).toEqual(['A', 'B']);
      expect((await app.shelf.getLot('B'))?.onShelf).toBe(2);
    });

    test('lots are found by what their recipe is called', async () => {
      const app = await openTestApp();
      await app.shelf.addLots([
        madeUpLot({ code: 'A', recipe: 'Crème soup' }),
        madeUpLot({ code: 'B', recipe: 'creme SOUP' }),
        madeUpLot({ code: 'C', recipe: 'Soup' }),
      ]);
      expect((await app.shelf.lotsCalled(['CREME soup'])).map(({ code }) => code)).toEqual(['B', 'A']);
      expect(await app.shelf.lotsCalled([])).toEqual([]);
    });

    test('what is eaten at home leaves the shelf, once and no more than is free', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await promise(app, 'LENT-01', 4);
      const seen = (await app.shelf.history('LENT-01'))[0]?.id ?? 0;
      expect(await app.shelf.eatAtHome('LENT-01', 1, 'good', seen)).toMatchObject({
        onShelf: 1,
        setAside: 4,
      });
      expect((await app.shelf.history('LENT-01'))[0]).toMatchObject({
        kind: 'eaten at home',
        fromPlace: 'shelf',
        toPlace: 'outside',
        pouches: 1,
        tripId: null,
        note: 'good',
      });
      await expectUserError(app.shelf.eatAtHome('LENT-01', 1, '', seen), 'StaleVersion', 'none was entered');
      await expectUserError(
        app.shelf.eatAtHome('LENT-01', 2, ''),
        'Refused',
        'has only 1 on the shelf',
        '4 are set',
      );
      await expectUserError(app.shelf.eatAtHome('gone', 1, ''), 'NotFound', '"gone"');
    });

    test('a lot that is not there', async () => {
      const app = await openTestApp();
      expect(await app.shelf.getLot('gone')).toBeUndefined();
      await expectUserError(app.shelf.history('gone'), 'NotFound', '"gone"');
      await expectUserError(app.shelf.countLot('gone', 1, ''), 'NotFound', '"gone"');
      await expectUserError(app.shelf.discardPouches('gone', 1, ''), 'NotFound', '"gone"');
      await expectUserError(app.shelf.updateLot('gone', madeUpLot(), 1), 'NotFound', '"gone"');
    });

    test('a lot whose lists were spoilt on disk is named', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      await app.shelf.addLot(madeUpLot());
      const database = await openTestDatabase(folder);
      await database.updateTable('lots').set({ diets: '["paleolithic"]' }).execute();
      await expectUserError(app.shelf.listLots(), 'Unusable', '"LENT-01"', 'paleolithic');
    });
  });

  describe('updating', () => {
    test('every field but the count is changed, and the version rises', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      const changed = await app.shelf.updateLot('LENT-01', { ...FULL_LOT, pouches: 99 }, 1);
      expect(changed).toStrictEqual({
        ...FULL_LOT,
        pouches: 6,
        version: 2,
        onShelf: 6,
        setAside: 0,
        packed: 0,
      });
      const { allergens: _, ...without } = FULL_LOT;
      expect(await app.shelf.updateLot(FULL_LOT.code, without, 2)).not.toHaveProperty('allergens');
    });

    test('a version that is no longer the current one is refused', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await app.shelf.updateLot('LENT-01', madeUpLot({ note: 'first' }), 1);
      await expectUserError(
        app.shelf.updateLot('LENT-01', madeUpLot({ note: 'second' }), 1),
        'StaleVersion',
        '"LENT-01"',
        'nothing was saved',
      );
      expect(await app.shelf.getLot('LENT-01')).toMatchObject({ note: 'first', version: 2 });
    });

    test('of two who save at once, one is told', async () => {
      const folder = await temporaryFolder();
      const [a, b] = [await openTestApp(folder), await openTestApp(folder)];
      await a.shelf.addLot(madeUpLot());
      const outcomes = await Promise.allSettled(
        [a, b].map((app, n) => app.shelf.updateLot('LENT-01', madeUpLot({ note: `${n}` }), 1)),
      );
      expect(outcomes.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    });

    test('a new code keeps the history, and reaches the menus of trips', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      const menu = [
        {
          day: 1,
          meal: 'dinner' as const,
          locked: true,
          opened: [
            { code: 'RICE-1', pouches: 1 },
            { code: 'LENT-01', pouches: 2 },
          ],
        },
        { day: 2, meal: 'dinner' as const, opened: [{ code: 'RICE-1', pouches: 2 }] },
      ];
      const touched = await app.trips.createTrip(madeUpTrip({ menu }));
      const other = await app.trips.createTrip(madeUpTrip({ menu: [menu[1]!] }));
      await app.trips.setAside(touched.id, 1, [{ code: 'LENT-01', pouches: 2 }]);

      await app.shelf.updateLot('LENT-01', madeUpLot({ code: 'LENT-A' }), 1);

      expect((await app.shelf.history('LENT-A')).map(({ kind }) => kind)).toEqual(['set aside', 'sealed']);
      expect(await app.shelf.getLot('LENT-01')).toBeUndefined();
      const after = await app.trips.getTrip(touched.id);
      expect(after?.trip.menu.map(({ opened }) => opened)).toEqual([
        [
          { code: 'RICE-1', pouches: 1 },
          { code: 'LENT-A', pouches: 2 },
        ],
        [{ code: 'RICE-1', pouches: 2 }],
      ]);
      expect(after?.trip.menu[0]).toMatchObject({ locked: true });
      expect(after?.reserved).toEqual([{ code: 'LENT-A', pouches: 2 }]);
      expect(after?.version).toBe(3);
      expect(await app.trips.getTrip(other.id)).toEqual(other);
    });

    test('a menu that names old and new code adds them up', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      const opened = [
        { code: 'LENT-A', pouches: 1 },
        { code: 'LENT-01', pouches: 2 },
      ];
      const { id } = await app.trips.createTrip(madeUpTrip({ menu: [{ day: 1, meal: 'dinner', opened }] }));
      await app.shelf.updateLot('LENT-01', madeUpLot({ code: 'LENT-A' }), 1);
      expect((await app.trips.getTrip(id))?.trip.menu[0]?.opened).toEqual([{ code: 'LENT-A', pouches: 3 }]);
    });

    test('a new code is refused where a menu could not hold it, or where it is taken; then nothing changes', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await app.shelf.addLot(madeUpLot({ code: 'RICE-1' }));
      const opened = [
        { code: 'LENT-A', pouches: 600 },
        { code: 'LENT-01', pouches: 600 },
      ];
      const trip = await app.trips.createTrip(madeUpTrip({ menu: [{ day: 1, meal: 'dinner', opened }] }));
      await expectUserError(
        app.shelf.updateLot('LENT-01', madeUpLot({ code: 'LENT-A' }), 1),
        'Refused',
        'Three lakes',
      );
      await expectUserError(
        app.shelf.updateLot('LENT-01', madeUpLot({ code: 'RICE-1' }), 1),
        'Conflict',
        '"RICE-1"',
      );
      expect(await app.trips.getTrip(trip.id)).toEqual(trip);
      expect(await app.shelf.getLot('LENT-01')).toMatchObject({ version: 1 });
    });
  });

  describe('counting and discarding', () => {
    test('a count writes the difference, up or down, and nothing where it agrees', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      expect(await app.shelf.countLot('LENT-01', 4, 'two were lent')).toMatchObject({
        pouches: 4,
        version: 1,
      });
      expect(await app.shelf.countLot('LENT-01', 9, 'found in the cellar')).toMatchObject({ pouches: 9 });
      expect(await app.shelf.countLot('LENT-01', 9, 'again')).toMatchObject({ pouches: 9 });
      const history = await app.shelf.history('LENT-01');
      expect(
        history.map(({ kind, fromPlace, toPlace, pouches, note }) => [
          kind,
          fromPlace,
          toPlace,
          pouches,
          note,
        ]),
      ).toEqual([
        ['counted', 'outside', 'shelf', 5, 'found in the cellar'],
        ['counted', 'shelf', 'outside', 2, 'two were lent'],
        ['sealed', 'outside', 'shelf', 6, ''],
      ]);
    });

    test('a count includes what is set aside, and cannot go below it', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await promise(app, 'LENT-01', 4);
      expect(await app.shelf.countLot('LENT-01', 5, '')).toMatchObject({
        pouches: 5,
        onShelf: 1,
        setAside: 4,
      });
      await expectUserError(app.shelf.countLot('LENT-01', 3, ''), 'Refused', '"LENT-01"', '4 are set aside');
      expect(await app.shelf.getLot('LENT-01')).toMatchObject({ pouches: 5 });
    });

    test('only free pouches can be discarded', async () => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await promise(app, 'LENT-01', 4);
      await expectUserError(
        app.shelf.discardPouches('LENT-01', 3, ''),
        'Refused',
        'has only 2 on the shelf',
        '4 are set aside',
      );
      expect(await app.shelf.discardPouches('LENT-01', 2, 'a leak')).toMatchObject({
        pouches: 4,
        onShelf: 0,
      });
      expect((await app.shelf.history('LENT-01'))[0]).toMatchObject({
        kind: 'discarded',
        pouches: 2,
        note: 'a leak',
      });
    });

    test.each([-1, 1.5, Number.NaN, Infinity])('%d is no number of pouches', async (pouches) => {
      const app = await openTestApp();
      await app.shelf.addLot(madeUpLot());
      await expectUserError(
        (async () => app.shelf.countLot('LENT-01', pouches, ''))(),
        'Refused',
        'whole number',
      );
      await expectUserError(
        (async () => app.shelf.discardPouches('LENT-01', pouches, ''))(),
        'Refused',
        'whole number',
      );
      expect(await app.shelf.getLot('LENT-01')).toMatchObject({ pouches: 6 });
    });
  });

  test('the history tells when, and for which trip, even after the trip is deleted', async () => {
    const instants = ['2026-05-01T08:00:00.000Z', '2026-05-02T08:00:00.000Z'];
    let now = instants[0]!;
    const app = await openTestApp(undefined, () => new Date(now));
    await app.shelf.addLot(madeUpLot(), 'a good batch');
    now = instants[1]!;
    const trip = await promise(app, 'LENT-01', 2);
    await app.trips.deleteTrip(trip.id, trip.version);
    expect(await app.shelf.history('LENT-01')).toEqual([
      expect.objectContaining({
        kind: 'released',
        at: instants[1],
        tripId: trip.id,
        tripName: 'Three lakes',
        pouches: 2,
      }),
      expect.objectContaining({
        kind: 'set aside',
        at: instants[1],
        tripId: trip.id,
        tripName: 'Three lakes',
        pouches: 2,
      }),
      expect.objectContaining({
        kind: 'sealed',
        at: instants[0],
        tripId: null,
        tripName: null,
        note: 'a good batch',
      }),
    ]);
  });

  describe('importing', () => {
    /** More rows than go into one statement, so that parts and their seams are met. */
    const ROWS = Array.from({ length: 450 }, (_, n) =>
      madeUpLot({ code: `L-${n}`, pouches: n % 4, note: `row ${n}` }),
    );
    const entryCount = async (app: App) =>
      (await Promise.all(ROWS.map(({ code }) => app.shelf.history(code)))).flat().length;

    test('new, changed and unchanged rows are told apart', async () => {
      const app = await openTestApp();
      expect(await app.shelf.importLots(ROWS.slice(0, 300), 'first.csv')).toEqual({
        added: 300,
        changed: 0,
        unchanged: 0,
      });
      const rows = ROWS.map((row, n) =>
        n === 7 ? { ...row, recipe: 'Other' } : n === 9 ? { ...row, pouches: 8 } : row,
      );
      expect(await app.shelf.importLots(rows, 'second.csv')).toEqual({
        added: 150,
        changed: 2,
        unchanged: 298,
      });
      for (const row of rows) expect(await app.shelf.getLot(row.code)).toMatchObject(row);
      expect(await app.shelf.getLot('L-7')).toMatchObject({ version: 2 });
      expect(await app.shelf.getLot('L-9')).toMatchObject({ version: 1 });
      expect(
        (await app.shelf.history('L-9')).map(({ kind, pouches, note }) => [kind, pouches, note]),
      ).toEqual([
        ['counted', 7, 'second.csv'],
        ['imported', 1, 'first.csv'],
      ]);
    });

    test('the same rows twice write nothing', async () => {
      const app = await openTestApp();
      await app.shelf.importLots(ROWS, 'shelf.csv');
      const [lots, entries] = [await app.shelf.listLots(), await entryCount(app)];
      expect(await app.shelf.importLots(ROWS, 'shelf.csv')).toEqual({ added: 0, changed: 0, unchanged: 450 });
      expect(await app.shelf.listLots()).toEqual(lots);
      expect(await entryCount(app)).toBe(entries);
      expect(entries).toBe(ROWS.filter(({ pouches }) => pouches > 0).length);
    });

    test('no rows are no import', async () => {
      const app = await openTestApp();
      expect(await app.shelf.importLots([], 'empty.csv')).toEqual({ added: 0, changed: 0, unchanged: 0 });
    });

    test('the count of a row is what is at home; below what is set aside the whole import is refused', async () => {
      const app = await openTestApp();
      await app.shelf.importLots(ROWS, 'shelf.csv');
      await promise(app, 'L-447', 3);
      expect(await app.shelf.importLots(ROWS, 'shelf.csv')).toMatchObject({ changed: 0 });
      const rows = [
        madeUpLot({ code: 'new' }),
        ...ROWS.map((row) => ({ ...row, pouches: Math.min(row.pouches, 2) })),
      ];
      await expectUserError(
        app.shelf.importLots(rows, 'shelf.csv'),
        'Refused',
        'Nothing was imported',
        '"L-447"',
        '3 are set aside',
      );
      expect(await app.shelf.getLot('new')).toBeUndefined();
      expect(await app.shelf.getLot('L-443')).toMatchObject({ pouches: 3 });
    });

    test('a code that comes twice is refused by name', async () => {
      const app = await openTestApp();
      const rows = [
        ...ROWS,
        madeUpLot({ code: 'L-3' }),
        madeUpLot({ code: 'L-5' }),
        madeUpLot({ code: 'L-5' }),
      ];
      await expectUserError(app.shelf.importLots(rows, ''), 'Conflict', '"L-3", "L-5"', 'more than once');
      expect(await app.shelf.listLots()).toEqual([]);
    });

    test.each([
      ['among the lots', { ...madeUpLot({ code: 'broken' }), sealedOn: null as unknown as string }],
      ['in the ledger', madeUpLot({ code: 'broken', pouches: -3 })],
    ])('a failure in the middle, %s, leaves nothing of the import behind', async (_, broken) => {
      const app = await openTestApp();
      await app.shelf.importLots(ROWS.slice(0, 10), 'before.csv');
      const before = await app.shelf.listLots();
      const rows = [
        ...ROWS.slice(0, 5).map((row) => ({ ...row, recipe: 'changed' })),
        ...ROWS.slice(10, 430),
        broken,
        ...ROWS.slice(430),
      ];
      await expect(app.shelf.importLots(rows, 'broken.csv')).rejects.toThrow('constraint');
      expect(await app.shelf.listLots()).toEqual(before);
      expect(await app.shelf.importLots(ROWS, 'mended.csv')).toEqual({
        added: 440,
        changed: 0,
        unchanged: 10,
      });
    });
  });

  test('the stock of a trip is what is free and what is promised to it, set aside or packed', async () => {
    const app = await openTestApp();
    await app.shelf.importLots([madeUpLot({ code: 'A', pouches: 5 }), FULL_LOT], '');
    const mine = await promise(app, 'A', 2);
    await promise(app, 'A', 1);
    const counts = async (tripId?: string) =>
      (await app.shelf.stockFor(tripId)).map(({ code, pouches }) => [code, pouches]);
    expect(await counts()).toEqual([
      ['A', 2],
      [FULL_LOT.code, 6],
    ]);
    expect(await counts(mine.id)).toEqual([
      ['A', 4],
      [FULL_LOT.code, 6],
    ]);
    await app.trips.pack(mine.id, mine.version);
    expect(await counts(mine.id)).toEqual([
      ['A', 4],
      [FULL_LOT.code, 6],
    ]);
    expect(await counts()).toEqual([
      ['A', 2],
      [FULL_LOT.code, 6],
    ]);
    const stock = await app.shelf.stockFor(mine.id);
    expect(Stock.parse(stock)).toEqual(stock);
    expect(stock[1]).toStrictEqual(FULL_LOT);
  });
});
