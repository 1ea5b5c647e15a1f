import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TrailNote } from '../planning/model/trail-note.ts';
import { VERDICTS } from '../planning/model/words.ts';
import type { App } from './app.ts';
import { speaking } from './language-of-request.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase } from './test-data.ts';

onEachDatabase(({ openTestApp, runs }) => {
  const AT = '2026-07-05T18:30:00Z';
  const note = (kind: TrailNote['kind'], code: string, pouches: number, more: Partial<TrailNote> = {}) => ({
    ...{ id: randomUUID(), at: AT, kind, code, pouches, text: '' },
    ...more,
  });

  async function appWithShelf(): Promise<App> {
    const app = await openTestApp();
    await app.shelf.importLots(
      [madeUpLot({ code: 'A', pouches: 5 }), madeUpLot({ code: 'B', pouches: 3 })],
      '',
    );
    return app;
  }

  /** A trip that has packed 4 of 5 pouches of A and all 3 of B. */
  async function packTrip(app: App): Promise<string> {
    const { id } = await app.trips.createTrip(madeUpTrip());
    await app.trips.setAside(id, 1, [
      { code: 'A', pouches: 4 },
      { code: 'B', pouches: 3 },
    ]);
    await app.trips.pack(id, 2);
    return id;
  }

  const places = async (app: App, code: string) => {
    const lot = await app.shelf.getLot(code);
    return [lot?.onShelf, lot?.setAside, lot?.packed];
  };

  describe('notes from the trail', () => {
    test('move what was eaten and brought home, and record what was left over', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      const notes = [
        note('eaten', 'A', 3),
        note('brought home', 'B', 1, { text: 'too salty' }),
        note('left over', 'A', 1, { servings: 0.5 }),
      ];
      expect(await app.trailNotes.enter(id, notes)).toEqual(
        notes.map((one) => ({ id: one.id, outcome: 'entered' })),
      );
      expect(await places(app, 'A')).toEqual([1, 0, 1]);
      expect(await places(app, 'B')).toEqual([1, 0, 2]);
      expect(await app.trips.getTrip(id)).toMatchObject({
        version: 4,
        stage: 'packed',
        eaten: [{ code: 'A', pouches: 3 }],
        broughtBack: [{ code: 'B', pouches: 1 }],
      });
      expect(await app.trailNotes.list(id)).toEqual(
        notes.map((one) => ({ ...one, outcome: 'entered', message: '', remark: '' })),
      );
      expect((await app.shelf.history('A'))[0]).toMatchObject({ kind: 'eaten', note: 'noted on the trail' });
    });

    test('say how a dish was, also after the trip, and move nothing', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      const notes = VERDICTS.map((kind) => note(kind, 'A', 0));
      const entered = notes.map((one) => ({ id: one.id, outcome: 'entered' }));
      expect(await app.trailNotes.enter(id, notes)).toEqual(entered);
      expect(await places(app, 'A')).toEqual([1, 0, 4]);
      expect((await app.trips.getTrip(id))?.version).toBe(3);
      const [unknown] = await app.trailNotes.enter(id, [note('liked', 'nowhere', 0)]);
      expect(unknown).toMatchObject({ outcome: 'conflict' });
    });

    test('that empty the packs and what was left over of it fit in one sending', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      const notes = [
        note('eaten', 'A', 4),
        note('left over', 'A', 0, { servings: 1 }),
        note('brought home', 'B', 3),
        note('left over', 'B', 0, { servings: 1 }),
      ];
      const results = await app.trailNotes.enter(id, notes);
      expect(results.map(({ outcome }) => outcome)).toEqual(notes.map(() => 'entered'));
    });

    test('are taken once, in one request or in several', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      const one = note('eaten', 'A', 1);
      const outcomes = async (notes: TrailNote[]) =>
        (await app.trailNotes.enter(id, notes)).map(({ outcome }) => outcome);
      expect(await outcomes([one, one])).toEqual(['entered', 'known']);
      expect(await outcomes([{ ...one, pouches: 3, text: 'changed' }])).toEqual(['known']);
      expect(await places(app, 'A')).toEqual([1, 0, 3]);
      expect(await app.trailNotes.list(id)).toHaveLength(1);
      expect(await app.trips.getTrip(id)).toMatchObject({ version: 4 });
    });

    test('a trip whose last pouch is eaten is still on its way', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      await app.trailNotes.enter(id, [note('eaten', 'A', 4), note('eaten', 'B', 3)]);
      const stored = await app.trips.getTrip(id);
      expect(stored).toMatchObject({ stage: 'packed', reserved: [] });
      expect((await app.shelf.stockFor(id)).map(({ pouches }) => pouches)).toEqual([5, 3]);
      expect(await app.trips.bringBack(id, 4, [])).toMatchObject({ stage: 'finished' });
    });

    test.each<[string, string, (app: App, id: string) => Promise<unknown>, TrailNote]>([
      ['more than is packed', 'only 4 are left', async () => {}, note('eaten', 'A', 5)],
      ['a code that is on no pouch', 'No pouch of "Z"', async () => {}, note('eaten', 'Z', 1)],
      [
        'left over of such a code',
        'No pouch of "Z"',
        async () => {},
        note('left over', 'Z', 0, { servings: 1 }),
      ],
      [
        'a trip that is finished',
        'was finished before',
        (app, id) => app.trips.bringBack(id, 3, []),
        note('eaten', 'A', 1),
      ],
      [
        'a trip that was deleted',
        'was deleted',
        async (app, id) => {
          await app.trips.bringBack(id, 3, []);
          await app.trips.deleteTrip(id, 4);
        },
        note('brought home', 'A', 1),
      ],
    ])('what does not fit is kept as a conflict and moves nothing: %s', async (_, message, before, one) => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      await before(app, id);
      const standing = await places(app, 'A');
      const fits = note('left over', 'B', 1, { servings: 1 });
      const [conflict] = await app.trailNotes.enter(id, [one, fits]);
      expect(conflict).toMatchObject({ id: one.id, outcome: 'conflict' });
      expect(conflict?.message).toContain(message);
      expect(await places(app, 'A')).toEqual(standing);
      expect((await app.trailNotes.list(id)).map(({ id }) => id)).toEqual([one.id, fits.id]);
      const [toGermans] = await speaking('de', () => app.trailNotes.list(id));
      expect(toGermans?.message).toMatch(/^(?:\d+ Beutel|Von|Die Tour|„)/);
    });

    test('a trip that is not packed yet takes no notes', async () => {
      const app = await appWithShelf();
      const { id } = await app.trips.createTrip(madeUpTrip());
      await app.trips.setAside(id, 1, [{ code: 'A', pouches: 2 }]);
      const [result] = await app.trailNotes.enter(id, [note('eaten', 'A', 1)]);
      expect(result).toMatchObject({ outcome: 'conflict' });
      expect(await places(app, 'A')).toEqual([3, 2, 0]);
    });

    test('conflicts are settled with a remark and stay on record; what was entered is not touched', async () => {
      const app = await appWithShelf();
      const id = await packTrip(app);
      const [bad, good] = [note('eaten', 'Z', 1), note('eaten', 'A', 1)];
      await app.trailNotes.enter(id, [bad, good]);
      await app.trailNotes.settle(id, [bad.id, good.id], 'it was lot A');
      await app.trailNotes.settle(id, [bad.id], 'said again');
      expect(await app.trailNotes.list(id)).toMatchObject([
        { id: bad.id, outcome: 'conflict', remark: 'it was lot A', settledAt: expect.any(String) },
        { id: good.id, outcome: 'entered', remark: '' },
      ]);
    });

    test('conflicts of a deleted trip are listed until they are settled', async () => {
      const app = await appWithShelf();
      const [id, other] = [await packTrip(app), (await app.trips.createTrip(madeUpTrip())).id];
      await app.trips.bringBack(id, 3, []);
      await app.trips.deleteTrip(id, 4);
      const late = note('eaten', 'A', 1);
      await app.trailNotes.enter(id, [late]);
      await app.trailNotes.enter(other, [note('eaten', 'A', 1)]);
      expect(await app.trailNotes.conflictsOfDeleted()).toMatchObject([
        { tripId: id, notes: [{ ...late, outcome: 'conflict' }] },
      ]);
      await app.trailNotes.settle(id, [late.id], '');
      expect(await app.trailNotes.conflictsOfDeleted()).toEqual([]);
    });

    test('there never was such a trip', async () => {
      const app = await openTestApp();
      await expectUserError(
        app.trailNotes.enter('none', [note('eaten', 'A', 1)]),
        'NotFound',
        'no such trip',
      );
      await expectUserError(app.trailNotes.list('none'), 'NotFound');
    });
  });

  /** Notes of which all fit into the packs together, split and shuffled and repeated at will. */
  const fitting = fc
    .array(fc.record({ kind: fc.constantFrom('eaten', 'brought home'), code: fc.constantFrom('A', 'B') }), {
      maxLength: 6,
    })
    .map((list) => {
      const left: Record<string, number> = { A: 4, B: 3 };
      return list
        .filter(({ code }) => (left[code] = (left[code] ?? 0) - 1) >= 0)
        .map(({ kind, code }) => note(kind as TrailNote['kind'], code, 1));
    });
  const deliveries = fitting.chain((notes) =>
    fc.record({
      notes: fc.constant(notes),
      sent: fc.array(fc.shuffledSubarray(notes), { maxLength: 4 }),
      last: fc.shuffledSubarray(notes, { minLength: notes.length }),
    }),
  );

  test('in any order and repeated any number of times, notes end in the same ledger as sent once', async () => {
    await fc.assert(
      fc.asyncProperty(deliveries, async ({ notes, sent, last }) => {
        const [once, often] = [await appWithShelf(), await appWithShelf()];
        const [onceId, oftenId] = [await packTrip(once), await packTrip(often)];
        await once.trailNotes.enter(onceId, notes);
        for (const part of [...sent, last, last]) await often.trailNotes.enter(oftenId, part);
        const stateOf = async (app: App, id: string) => {
          const { eaten, broughtBack, reserved, stage } = (await app.trips.getTrip(id))!;
          const kept = (await app.trailNotes.list(id)).map((one) => one.id).sort();
          return {
            eaten,
            broughtBack,
            reserved,
            stage,
            kept,
            a: await places(app, 'A'),
            b: await places(app, 'B'),
          };
        };
        expect(await stateOf(often, oftenId)).toEqual(await stateOf(once, onceId));
      }),
      { numRuns: runs(25) },
    );
  }, 60_000);

  test('whatever is sent, no pouch is made or lost', async () => {
    const anyNotes = fc.array(
      fc.record({
        kind: fc.constantFrom('eaten', 'brought home'),
        code: fc.constantFrom('A', 'B', 'Z'),
        pouches: fc.integer({ min: 1, max: 5 }),
      }),
      { maxLength: 8 },
    );
    await fc.assert(
      fc.asyncProperty(anyNotes, async (list) => {
        const app = await appWithShelf();
        const id = await packTrip(app);
        const notes = list.map(({ kind, code, pouches }) => note(kind as TrailNote['kind'], code, pouches));
        const results = await app.trailNotes.enter(id, notes);
        expect(results.map((result) => result.id)).toEqual(notes.map((one) => one.id));
        const { eaten } = (await app.trips.getTrip(id))!;
        for (const [code, all] of [
          ['A', 5],
          ['B', 3],
        ] as const) {
          const here = (await places(app, code)).reduce<number>((sum, held) => sum + (held ?? 0), 0);
          expect(here + (eaten.find((line) => line.code === code)?.pouches ?? 0)).toBe(all);
        }
      }),
      { numRuns: runs(25) },
    );
  }, 60_000);
});
