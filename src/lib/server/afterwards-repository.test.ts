import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { Afterwards } from '../planning/model/afterwards.ts';
import { Recipe } from '../planning/model/recipe.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import { finishStoredTrip } from './finish-stored-trip.ts';
import type { App } from './app.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  const clock = () => new Date('2026-07-08T12:00:00');
  const SAID = Afterwards.parse({
    appetites: [{ eater: 'Ada', answer: 'too little' }],
    leftOver: [{ code: 'A', servings: 0.5 }],
    water: [
      { recipe: 'Lentil stew', finding: 'too dry' },
      { recipe: 'bought soup', finding: 'just right' },
    ],
    portions: [{ recipe: 'Lentil stew', answer: 'too little' }],
    tastes: [{ recipe: 'Lentil stew', eater: 'Ada', answer: 'liked' }],
    fuel: [{ label: 'small canister', tareG: 95, beforeG: 195, afterG: 150 }],
    walkedH: [5, null, 4],
  });

  async function packedTrip(folder?: string) {
    const app = await openTestApp(folder, clock);
    await app.kitchen.recipes.create(
      Recipe.parse({ name: 'Lentil stew', mealKinds: ['dinner'], servings: 4 }),
    );
    await app.kitchen.recipes.create(Recipe.parse({ name: 'Other', mealKinds: ['dinner'], servings: 4 }));
    await app.shelf.addLot(madeUpLot({ code: 'A', pouches: 9 }));
    const opened = [{ code: 'A', pouches: 2 }];
    const meals = [1, 2].map((day) => ({ day, meal: 'dinner' as const, opened }));
    const { id } = await app.trips.createTrip(madeUpTrip({ menu: meals }));
    await app.trips.setAside(id, 1, [{ code: 'A', pouches: 4 }]);
    await app.trips.pack(id, 2);
    return { app, id };
  }
  const places = async (app: App) => {
    const lot = await app.shelf.getLot('A');
    return [lot?.onShelf, lot?.setAside, lot?.packed];
  };
  const waterNotes = async (app: App) =>
    (await app.kitchen.recipes.list()).map(({ value }) => {
      expect(value.portionNotes ?? []).toHaveLength(value.waterNotes.length);
      return [value.name, value.waterNotes.length];
    });

  describe('finishing a trip', () => {
    test('moves the pouches, keeps what was said, and teaches', async () => {
      const { app, id } = await packedTrip();
      const finished = await finishStoredTrip(app, id, 3, [{ code: 'A', pouches: 1 }], SAID);
      expect(finished).toMatchObject({ stage: 'finished', version: 4, eaten: [{ code: 'A', pouches: 3 }] });
      expect(await places(app)).toEqual([6, 0, 0]);
      expect(await app.afterwards.get(id)).toEqual(SAID);
      const { learned } = await app.settings.get();
      const of = { tripId: id, trip: 'Three lakes', date: '2026-07-08' };
      expect(learned).toMatchObject([
        { ...of, kind: 'appetite', eater: 'Ada', answer: 'too little', ofOwnFigure: false },
        { ...of, kind: 'taste', eater: 'Ada', dish: 'Lentil stew', answer: 'liked' },
        { ...of, kind: 'fuel', fuel: 'canister-gas', efficiency: 0.5, burntG: 45 },
      ]);
      expect(await waterNotes(app)).toEqual([
        ['Lentil stew', 1],
        ['Other', 0],
      ]);
    });

    test('as often as it is opened again and finished, it teaches once', async () => {
      const { app, id } = await packedTrip();
      await finishStoredTrip(app, id, 3, [], SAID);
      const once = await app.settings.get();
      expect(await app.afterwards.reopen(id, 4)).toMatchObject({
        stage: 'packed',
        reserved: [{ code: 'A', pouches: 4 }],
        eaten: [],
      });
      expect((await app.settings.get()).learned).toEqual([]);
      expect((await waterNotes(app))[0]).toEqual(['Lentil stew', 0]);
      expect(await app.afterwards.get(id)).toEqual(SAID);
      await finishStoredTrip(app, id, 5, [], SAID);
      expect(await app.settings.get()).toEqual(once);
      expect((await waterNotes(app))[0]).toEqual(['Lentil stew', 1]);
      expect(await places(app)).toEqual([5, 0, 0]);
    });

    test('what was noted on the trail stays eaten when it is opened again', async () => {
      const { app, id } = await packedTrip();
      const at = '2026-07-05T18:00:00Z';
      const noted = { kind: 'eaten', code: 'A', pouches: 1, text: '' } as const;
      await app.trailNotes.enter(id, [{ id: randomUUID(), at, ...noted }]);
      await finishStoredTrip(app, id, 4, [{ code: 'A', pouches: 1 }], SAID);
      const again = await app.afterwards.reopen(id, 5);
      expect(again).toMatchObject({
        reserved: [{ code: 'A', pouches: 2 }],
        eaten: [{ code: 'A', pouches: 1 }],
        broughtBack: [{ code: 'A', pouches: 1 }],
      });
      expect(await places(app)).toEqual([6, 0, 2]);
      await expectUserError(app.afterwards.reopen(id, 6), 'Refused', 'is not finished');
    });

    test('where too much would come home, nothing is kept at all', async () => {
      const { app, id } = await packedTrip();
      await expectUserError(
        finishStoredTrip(app, id, 3, [{ code: 'A', pouches: 5 }], SAID),
        'Refused',
        '5 back',
      );
      await expectUserError(finishStoredTrip(app, id, 2, [], SAID), 'StaleVersion');
      expect(await app.afterwards.get(id)).toBeUndefined();
      expect((await app.settings.get()).learned).toEqual([]);
      expect((await waterNotes(app))[0]).toEqual(['Lentil stew', 0]);
      expect(await places(app)).toEqual([5, 0, 4]);
    });

    test('a trip that was called off teaches nothing', async () => {
      const { app, id } = await packedTrip();
      expect(await finishStoredTrip(app, id, 3, [{ code: 'A', pouches: 4 }], SAID)).toMatchObject({
        stage: 'open',
      });
      expect((await app.settings.get()).learned).toEqual([]);
      expect(await app.afterwards.get(id)).toBeUndefined();
    });

    test('of a deleted trip the answers are gone from its row', async () => {
      const folder = await temporaryFolder();
      const { app, id } = await packedTrip(folder);
      await finishStoredTrip(app, id, 3, [], SAID);
      await app.trips.deleteTrip(id, 4);
      const database = await openTestDatabase(folder);
      expect(await database.selectFrom('trips').select(['trip', 'afterwards']).execute()).toEqual([
        { trip: null, afterwards: null },
      ]);
    });
  });

  test('opening a trip again leaves recipes alone that only mention it', async () => {
    const { app, id } = await packedTrip();
    await app.kitchen.recipes.create(
      Recipe.parse({ name: 'Mentions it', mealKinds: ['dinner'], servings: 4, note: `as on ${id}` }),
    );
    const finished = await finishStoredTrip(app, id, 3, [], SAID);
    await app.afterwards.reopen(id, finished.version);
    const versions = (await app.kitchen.recipes.list()).map(({ value, version }) => [value.name, version]);
    expect(versions).toEqual([
      ['Lentil stew', 3],
      ['Mentions it', 1],
      ['Other', 1],
    ]);
    expect((await waterNotes(app)).every(([, count]) => count === 0)).toBe(true);
  });

  describe('what was learned', () => {
    test('is planned with on every trip but the one that taught it', async () => {
      const { app, id } = await packedTrip();
      const planned = async (trip: string) => {
        const { plan, settings } = await planStoredTrip(app, trip);
        return { plan, learned: settings.learned.map(({ kind }) => kind) };
      };
      const before = await planned(id);
      await finishStoredTrip(app, id, 3, [], SAID);
      const after = await planned(id);
      expect(after.learned).toEqual([]);
      expect(after.plan.notices).toEqual(before.plan.notices);
      expect(after.plan.demand).toEqual(before.plan.demand);
      const next = await app.trips.createTrip(madeUpTrip());
      expect((await planned(next.id)).learned).toEqual(['appetite', 'taste', 'fuel']);
    });

    test('is not touched by saving the settings, and is forgotten figure by figure', async () => {
      const { app, id } = await packedTrip();
      await finishStoredTrip(app, id, 3, [], SAID);
      const settings = await app.settings.get();
      await app.settings.save({ ...settings, currency: 'USD', learned: [] });
      expect(await app.settings.get()).toEqual({ ...settings, currency: 'USD' });
      await app.settings.forget((one) => one.kind === 'appetite' && one.eater === 'Ada');
      expect((await app.settings.get()).learned.map(({ kind }) => kind)).toEqual(['taste', 'fuel']);
    });
  });
});
