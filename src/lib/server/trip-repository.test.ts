import { spawn } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import type { App } from './app.ts';
import type { UserError } from './errors.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestApp, openTestDatabase, place }) => {
  async function appWithShelf(): Promise<App> {
    const app = await openTestApp();
    await app.shelf.importLots(
      [madeUpLot({ code: 'A', pouches: 5 }), madeUpLot({ code: 'B', pouches: 3 })],
      '',
    );
    return app;
  }

  const places = async (app: App, code: string) => {
    const lot = await app.shelf.getLot(code);
    return [lot?.onShelf, lot?.setAside, lot?.packed];
  };

  describe('keeping trips', () => {
    test('a trip comes back as it was entered', async () => {
      const app = await openTestApp(undefined, () => new Date('2026-05-01T08:00:00.000Z'));
      const trip = madeUpTrip({
        energyKcal: 3200,
        days: [{ walkingH: 5.5, campWater: 'dry' }],
        menu: [{ day: 1, meal: 'dinner', locked: true, opened: [{ code: 'A', pouches: 2 }] }],
      });
      const stored = await app.trips.createTrip(trip);
      expect(stored).toEqual({
        id: stored.id,
        version: 1,
        trip,
        stage: 'open',
        reserved: [],
        eaten: [],
        broughtBack: [],
        updatedAt: '2026-05-01T08:00:00.000Z',
      });
      expect(await app.trips.getTrip(stored.id)).toEqual(stored);
      expect(await app.trips.getTrip('none')).toBeUndefined();
    });

    test('a template promises no pouches, and a trip that has some becomes none', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      const template = await app.trips.markTemplate(id, true, 1);
      expect(template.trip.template).toBe(true);
      await expectUserError(
        app.trips.setAside(id, 2, [{ code: 'A', pouches: 1 }]),
        'Refused',
        'is a template',
      );
      expect(await places(app, 'A')).toEqual([5, 0, 0]);
      const trip = await app.trips.markTemplate(id, false, 2);
      expect(trip.trip).toEqual(madeUpTrip());
      await app.trips.setAside(id, 3, [{ code: 'A', pouches: 1 }]);
      await expectUserError(app.trips.markTemplate(id, true, 4), 'Refused', 'pouches of its own');
    });

    test('trips are listed with the latest start first, each as far as its own pouches', async () => {
      const app = await appWithShelf();
      const make = (name: string, startDate: string) => app.trips.createTrip(madeUpTrip({ name, startDate }));
      const early = await make('Early', '2026-04-01');
      await make('Late B', '2026-09-01');
      const late = await make('Late A', '2026-09-01');
      await app.trips.setAside(early.id, 1, [{ code: 'B', pouches: 1 }]);
      await app.trips.setAside(late.id, 1, [
        { code: 'B', pouches: 2 },
        { code: 'A', pouches: 1 },
      ]);
      await app.trips.pack(early.id, 2);
      const listed = async () => (await app.trips.listTrips()).map(({ trip, stage }) => [trip.name, stage]);
      expect(await listed()).toEqual([
        ['Late A', 'set aside'],
        ['Late B', 'open'],
        ['Early', 'packed'],
      ]);
      await app.trips.bringBack(early.id, 3, []);
      expect((await listed()).at(-1)).toEqual(['Early', 'finished']);
    });

    test('a lot names the trips that still have pouches of it, the latest start first', async () => {
      const app = await appWithShelf();
      const make = async (name: string, startDate: string, pouches: number) => {
        const { id } = await app.trips.createTrip(madeUpTrip({ name, startDate }));
        await app.trips.setAside(id, 1, [{ code: 'B', pouches }]);
        return id;
      };
      await app.trips.release(await make('Released', '2026-09-02', 1), 2);
      await app.trips.deleteTrip(await make('Deleted', '2026-09-03', 1), 2);
      await app.trips.pack(await make('Early', '2026-04-01', 1), 2);
      await make('Late', '2026-09-01', 2);
      expect((await app.trips.tripsWith('B')).map(({ trip, reserved }) => [trip.name, reserved])).toEqual([
        ['Late', [{ code: 'B', pouches: 2 }]],
        ['Early', [{ code: 'B', pouches: 1 }]],
      ]);
      expect(await app.trips.tripsWith('A')).toEqual([]);
    });

    test('a change raises the version, and a change of an older version is refused', async () => {
      const app = await openTestApp();
      const { id } = await app.trips.createTrip(madeUpTrip());
      const changed = await app.trips.updateTrip(id, madeUpTrip({ name: 'Four lakes' }), 1);
      expect(changed).toMatchObject({ version: 2, trip: { name: 'Four lakes' } });
      await expectUserError(
        app.trips.updateTrip(id, madeUpTrip({ name: 'Five' }), 1),
        'StaleVersion',
        '"Four lakes"',
        'nothing was saved',
      );
      const { undo, ...stored } = changed;
      expect(undo).toBeTypeOf('string');
      expect(await app.trips.getTrip(id)).toEqual(stored);
    });

    test('every change asks for the current version', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      const { version } = await app.trips.setAside(id, 1, [{ code: 'A', pouches: 1 }]);
      await expectUserError(app.trips.setAside(id, 1, []), 'StaleVersion');
      await expectUserError(app.trips.release(id, 1), 'StaleVersion');
      await expectUserError(app.trips.pack(id, 1), 'StaleVersion');
      await expectUserError(app.trips.deleteTrip(id, 1), 'StaleVersion');
      await app.trips.pack(id, version);
      await expectUserError(app.trips.bringBack(id, version, []), 'StaleVersion');
      expect(await places(app, 'A')).toEqual([4, 0, 1]);
    });

    test('a deleted trip is gone, and nothing can be done with it', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await app.trips.setAside(id, 1, [{ code: 'A', pouches: 2 }]);
      await app.trips.deleteTrip(id, 2);
      expect(await app.trips.getTrip(id)).toBeUndefined();
      expect(await app.trips.listTrips()).toEqual([]);
      expect(await places(app, 'A')).toEqual([5, 0, 0]);
      for (const work of [
        () => app.trips.updateTrip(id, madeUpTrip(), 3),
        () => app.trips.setAside(id, 3, []),
        () => app.trips.release(id, 3),
        () => app.trips.pack(id, 3),
        () => app.trips.bringBack(id, 3, []),
        () => app.trips.deleteTrip(id, 3),
      ])
        await expectUserError(work(), 'NotFound', 'Trip not found');
    });

    test('of a deleted trip only the name is kept', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      const { id } = await app.trips.createTrip(madeUpTrip({ party: [{ name: 'Someone private' }] }));
      await app.trips.deleteTrip(id, 1);
      const database = await openTestDatabase(folder);
      expect(await database.selectFrom('trips').select(['name', 'trip']).execute()).toEqual([
        { name: 'Three lakes', trip: null },
      ]);
    });

    test.each([
      ['{"name": "cut o', 'it is not JSON'],
      [
        '{"name": "Old", "startDate": "2026-07-04", "dayCount": 0, "party": []}',
        'dayCount must be at least 1 day',
      ],
    ])('a trip that was spoilt on disk is named: %s', async (json, problem) => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      const { id } = await app.trips.createTrip(madeUpTrip());
      const database = await openTestDatabase(folder);
      await database.updateTable('trips').set({ trip: json }).execute();
      await expectUserError(app.trips.getTrip(id), 'Unusable', 'The trip "Three lakes"', problem);
    });

    test('what is no valid trip is not stored', async () => {
      const app = await openTestApp();
      await expect((async () => app.trips.createTrip({ ...madeUpTrip(), dayCount: 400 }))()).rejects.toThrow(
        'dayCount',
      );
      expect(await app.trips.listTrips()).toEqual([]);
    });
  });

  describe('setting aside', () => {
    test('what is set aside becomes what is needed, more or less than before', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      const first = await app.trips.setAside(id, 1, [
        { code: 'A', pouches: 4 },
        { code: 'B', pouches: 1 },
      ]);
      expect(first).toMatchObject({
        version: 2,
        stage: 'set aside',
        reserved: [
          { code: 'A', pouches: 4 },
          { code: 'B', pouches: 1 },
        ],
      });
      const second = await app.trips.setAside(id, 2, [
        { code: 'A', pouches: 2 },
        { code: 'A', pouches: 3 },
        { code: 'B', pouches: 0 },
      ]);
      expect(second).toMatchObject({ version: 3, reserved: [{ code: 'A', pouches: 5 }] });
      expect(await places(app, 'A')).toEqual([0, 5, 0]);
      expect(await places(app, 'B')).toEqual([3, 0, 0]);
      const third = await app.trips.setAside(id, 3, [{ code: 'A', pouches: 1 }]);
      expect(third.reserved).toEqual([{ code: 'A', pouches: 1 }]);
      expect((await app.shelf.history('A')).map(({ kind, pouches }) => [kind, pouches])).toEqual([
        ['released', 4],
        ['set aside', 1],
        ['set aside', 4],
        ['imported', 5],
      ]);
      expect(await app.trips.setAside(id, 4, [])).toMatchObject({ stage: 'open', reserved: [] });
    });

    test('where too few are free, each code is named and nothing is set aside', async () => {
      const app = await appWithShelf();
      await app.shelf.addLot(madeUpLot({ code: 'C', pouches: 9 }));
      const other = await app.trips.createTrip(madeUpTrip({ name: 'Other' }));
      await app.trips.setAside(other.id, 1, [{ code: 'A', pouches: 4 }]);
      const { id } = await app.trips.createTrip(madeUpTrip());
      await app.trips.setAside(id, 1, [{ code: 'B', pouches: 1 }]);
      const need = [
        { code: 'A', pouches: 3 },
        { code: 'B', pouches: 4 },
        { code: 'C', pouches: 9 },
        { code: 'D', pouches: 1 },
      ];
      await expectUserError(
        app.trips.setAside(id, 2, need),
        'Refused',
        '"A" lacks 2: 3 more are needed, 1 are free',
        '"B" lacks 1: 3 more are needed, 2 are free',
        '"D" is on no pouch of the shelf',
      );
      expect(await app.trips.getTrip(id)).toMatchObject({
        version: 2,
        reserved: [{ code: 'B', pouches: 1 }],
      });
      expect(await places(app, 'C')).toEqual([9, 0, 0]);
    });

    test.each([-1, 0.5, Number.NaN])('%d is no number of pouches', async (pouches) => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await expectUserError(
        app.trips.setAside(id, 1, [{ code: 'A', pouches }]),
        'Refused',
        '"A"',
        'whole number',
      );
    });

    test('releasing gives all back, and asks for something to release', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await expectUserError(app.trips.release(id, 1), 'Refused', 'Nothing is set aside');
      await app.trips.setAside(id, 1, [
        { code: 'A', pouches: 4 },
        { code: 'B', pouches: 1 },
      ]);
      expect(await app.trips.release(id, 2)).toMatchObject({ version: 3, stage: 'open', reserved: [] });
      expect(await places(app, 'A')).toEqual([5, 0, 0]);
      expect(await places(app, 'B')).toEqual([3, 0, 0]);
    });
  });

  describe('packing and coming back', () => {
    async function packedTrip() {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await app.trips.setAside(id, 1, [
        { code: 'A', pouches: 4 },
        { code: 'B', pouches: 3 },
      ]);
      return { app, id, packed: await app.trips.pack(id, 2) };
    }

    test('packing takes all that is set aside from home', async () => {
      const { app, packed } = await packedTrip();
      expect(packed).toMatchObject({
        version: 3,
        stage: 'packed',
        reserved: [
          { code: 'A', pouches: 4 },
          { code: 'B', pouches: 3 },
        ],
      });
      expect(await places(app, 'A')).toEqual([1, 0, 4]);
      expect(await app.shelf.getLot('B')).toMatchObject({ pouches: 0 });
    });

    test('nothing can be packed where nothing is set aside', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await expectUserError(app.trips.pack(id, 1), 'Refused', 'Nothing is set aside');
    });

    test('a packed trip can be edited, but not packed, set aside, released or deleted', async () => {
      const { app, id } = await packedTrip();
      await expectUserError(app.trips.pack(id, 3), 'Refused', 'is packed');
      await expectUserError(app.trips.setAside(id, 3, []), 'Refused', 'is packed');
      await expectUserError(app.trips.release(id, 3), 'Refused', 'is packed');
      await expectUserError(app.trips.deleteTrip(id, 3), 'Refused', 'is packed and cannot be deleted');
      expect(await app.trips.updateTrip(id, madeUpTrip({ name: 'On the way' }), 3)).toMatchObject({
        stage: 'packed',
      });
    });

    test('what comes back is on the shelf again, the rest is eaten', async () => {
      const { app, id } = await packedTrip();
      const back = await app.trips.bringBack(id, 3, [{ code: 'A', pouches: 1 }]);
      expect(back).toMatchObject({
        version: 4,
        stage: 'finished',
        reserved: [],
        eaten: [
          { code: 'A', pouches: 3 },
          { code: 'B', pouches: 3 },
        ],
        broughtBack: [{ code: 'A', pouches: 1 }],
      });
      expect(await places(app, 'A')).toEqual([2, 0, 0]);
      expect(await places(app, 'B')).toEqual([0, 0, 0]);
      const moves = async (code: string) =>
        (await app.shelf.history(code))
          .slice(0, -3)
          .map(({ kind, fromPlace, toPlace, pouches }) => [kind, fromPlace, toPlace, pouches]);
      expect(await moves('A')).toEqual([
        ['eaten', 'packed', 'outside', 3],
        ['brought back', 'packed', 'shelf', 1],
      ]);
      expect(await moves('B')).toEqual([['eaten', 'packed', 'outside', 3]]);
      await app.trips.deleteTrip(id, 4);
    });

    test('a trip from which everything comes back was called off, and is open again', async () => {
      const { app, id } = await packedTrip();
      const all = [
        { code: 'A', pouches: 4 },
        { code: 'B', pouches: 3 },
      ];
      expect(await app.trips.bringBack(id, 3, all)).toMatchObject({ stage: 'open', broughtBack: [] });
      expect(await places(app, 'A')).toEqual([5, 0, 0]);
      expect(await app.trips.setAside(id, 4, all)).toMatchObject({ stage: 'set aside' });
    });

    test('a finished trip keeps the stock that its menu was made from, and nothing is promised to it any more', async () => {
      const { app, id } = await packedTrip();
      await app.trips.bringBack(id, 3, [{ code: 'A', pouches: 1 }]);
      const other = await app.trips.createTrip(madeUpTrip());
      await app.trips.setAside(other.id, 1, [{ code: 'A', pouches: 2 }]);
      const stock = async (of: string | undefined) =>
        (await app.shelf.stockFor(of)).map(({ code, pouches }) => [code, pouches]);
      expect(await stock(id)).toEqual([
        ['A', 4],
        ['B', 3],
      ]);
      expect(await stock(undefined)).toEqual([
        ['A', 0],
        ['B', 0],
      ]);
      for (const work of [
        () => app.trips.setAside(id, 4, []),
        () => app.trips.release(id, 4),
        () => app.trips.pack(id, 4),
        () => app.trips.bringBack(id, 4, []),
      ])
        await expectUserError(work(), 'Refused');
    });

    test('no more can come back than was packed, and only from a packed trip', async () => {
      const { app, id } = await packedTrip();
      const back = [
        { code: 'A', pouches: 5 },
        { code: 'B', pouches: 3 },
        { code: 'Z', pouches: 1 },
      ];
      await expectUserError(
        app.trips.bringBack(id, 3, back),
        'Refused',
        '"A": 5 back, 4 packed',
        '"Z": 1 back, 0 packed',
      );
      expect(await places(app, 'A')).toEqual([1, 0, 4]);
      await app.trips.bringBack(id, 3, []);
      await expectUserError(app.trips.bringBack(id, 4, []), 'Refused', 'is not packed');
    });
  });

  describe('trips that race for the same pouches', () => {
    const POUCHES = 20;

    async function sharedShelf() {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      await app.shelf.addLot(madeUpLot({ code: 'A', pouches: POUCHES }));
      await app.shelf.addLot(madeUpLot({ code: 'B', pouches: POUCHES }));
      return { folder, app };
    }

    test('through two connections, no pouch is promised twice and none is left while somebody wants it', async () => {
      const { folder, app } = await sharedShelf();
      const apps = [app, await openTestApp(folder)];
      const trips = await Promise.all(Array.from({ length: 16 }, () => app.trips.createTrip(madeUpTrip())));
      const outcomes = await Promise.allSettled(
        trips.map(({ id }, n) =>
          apps[n % 2]!.trips.setAside(id, 1, [
            { code: 'A', pouches: 3 },
            { code: 'B', pouches: 2 },
          ]),
        ),
      );
      const refused = outcomes.filter(({ status }) => status === 'rejected') as PromiseRejectedResult[];
      expect(refused).toHaveLength(10);
      for (const { reason } of refused) {
        expect(reason).toMatchObject({ code: 'Refused' });
        expect((reason as UserError).message).toContain('2 are free');
      }
      expect(await places(app, 'A')).toEqual([2, 18, 0]);
      expect(await places(app, 'B')).toEqual([8, 12, 0]);
      const stored = await apps[1]!.trips.listTrips();
      expect(stored.filter(({ stage }) => stage === 'set aside')).toHaveLength(6);
    });

    test('one trip that is set aside from two windows at once keeps one of the two', async () => {
      const { folder, app } = await sharedShelf();
      const other = await openTestApp(folder);
      const { id } = await app.trips.createTrip(madeUpTrip());
      const outcomes = await Promise.allSettled([
        app.trips.setAside(id, 1, [{ code: 'A', pouches: 7 }]),
        other.trips.setAside(id, 1, [{ code: 'B', pouches: 7 }]),
      ]);
      expect(outcomes.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
      expect((await app.trips.getTrip(id))?.reserved).toHaveLength(1);
    });

    test('through programs that run side by side, no pouch is promised twice', async () => {
      const { folder, app } = await sharedShelf();
      const [, url] = await place(folder);
      const trips = await Promise.all(Array.from({ length: 60 }, () => app.trips.createTrip(madeUpTrip())));
      const script = `
      const { openApp } = await import(${JSON.stringify(new URL('./app.ts', import.meta.url).href)});
      const [folder, url, ...ids] = process.argv.slice(1);
      const app = await openApp(folder, undefined, url || undefined);
      let got = 0;
      for (const id of ids)
        await app.trips.setAside(id, 1, [{ code: 'A', pouches: 1 }]).then(() => (got += 1), (error) => {
          if (error.code !== 'Refused') throw error;
        });
      await app.close();
      process.stdout.write(String(got));
    `;
      const ids = trips.map(({ id }) => id);
      const got = await Promise.all(
        [ids.slice(0, 30), ids.slice(30)].map(
          (mine) =>
            new Promise<number>((resolve, reject) => {
              const child = spawn(process.execPath, [
                '--input-type=module',
                '-e',
                script,
                folder,
                url ?? '',
                ...mine,
              ]);
              let [out, err] = ['', ''];
              child.stdout.on('data', (text) => (out += text));
              child.stderr.on('data', (text) => (err += text));
              child.on('close', (exitCode) =>
                exitCode === 0 ? resolve(Number(out)) : reject(new Error(err)),
              );
            }),
        ),
      );
      expect(got[0]! + got[1]!).toBe(POUCHES);
      expect(await places(app, 'A')).toEqual([0, POUCHES, 0]);
    }, 30_000);
  });
});
