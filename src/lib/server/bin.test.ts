import { expect, it } from 'vitest';
import { exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import { DAYS_IN_BIN } from './bin.ts';
import { expectUserError, madeUpTrip, onEachDatabase } from './test-data.ts';

onEachDatabase(({ openTestApp }) => {
  it('puts a deleted recipe back, once, under its own id', async () => {
    const app = await openTestApp();
    const recipe = exampleRecipe();
    const stored = await app.kitchen.recipes.create(recipe);
    const binId = await app.kitchen.recipes.delete(stored.id, stored.version);
    expect(await app.bin.list()).toMatchObject([{ id: binId, kind: 'recipe', name: recipe.name }]);
    expect(await app.bin.putBack(binId)).toEqual({ kind: 'recipe', recordId: stored.id });
    expect((await app.kitchen.recipes.get(stored.id))?.value).toEqual(recipe);
    expect(await app.bin.list()).toEqual([]);
    await expectUserError(app.bin.putBack(binId), 'NotFound', 'no longer in the bin');
  });

  it('does not put back over a recipe that took its name meanwhile', async () => {
    const app = await openTestApp();
    const stored = await app.kitchen.recipes.create(exampleRecipe());
    const binId = await app.kitchen.recipes.delete(stored.id, stored.version);
    await app.kitchen.recipes.create(exampleRecipe());
    await expectUserError(app.bin.putBack(binId), 'Conflict', 'Rename that one first');
    expect(await app.bin.list()).toHaveLength(1);
  });

  it('undoes a change, unless something else was changed since', async () => {
    const { kitchen, bin } = await openTestApp();
    const before = exampleRecipe();
    const { id, version } = await kitchen.recipes.create(before);
    const after = { ...before, ingredients: [] };
    await bin.putBack(await kitchen.recipes.updateUndoably(id, after, version));
    expect(await kitchen.recipes.get(id)).toMatchObject({ value: before, version: version + 2 });

    const binId = await kitchen.recipes.updateUndoably(id, after, version + 2);
    await kitchen.recipes.update(id, { ...after, note: 'newer' }, version + 3);
    await expectUserError(bin.putBack(binId), 'StaleVersion', 'changed again since');
    expect((await kitchen.recipes.get(id))?.value.note).toBe('newer');
  });

  it('undoes a change of a trip, and that in its turn, and never over a later change', async () => {
    const { trips, bin } = await openTestApp();
    const { id, version, trip } = await trips.createTrip(madeUpTrip());
    const renamed = { ...trip, name: 'Another name' };
    const { undo } = await trips.updateTrip(id, renamed, version);
    expect(await bin.changedTrip(undo)).toEqual({ before: trip, now: renamed });
    expect(await bin.list()).toEqual([]);

    const undone = await bin.putBack(undo);
    expect(undone).toMatchObject({ kind: 'trip change', recordId: id });
    expect(await trips.getTrip(id)).toMatchObject({ trip, version: version + 2 });
    await bin.putBack(undone.undo ?? '');
    expect((await trips.getTrip(id))?.trip.name).toBe('Another name');

    const second = await trips.updateTrip(id, trip, version + 3);
    await trips.updateTrip(id, renamed, version + 4);
    expect(await bin.changedTrip(second.undo)).toBeUndefined();
    await expectUserError(bin.putBack(second.undo), 'StaleVersion', 'changed again since');
  });

  it('keeps the last few states of a trip and no more', async () => {
    const { trips, bin } = await openTestApp();
    const { id, version, trip } = await trips.createTrip(madeUpTrip());
    const undos: string[] = [];
    for (let step = 0; step < 25; step += 1)
      undos.push((await trips.updateTrip(id, { ...trip, name: `Name ${step}` }, version + step)).undo);
    await expectUserError(bin.putBack(undos[4] ?? ''), 'NotFound', 'no longer in the bin');
    await expectUserError(bin.putBack(undos[5] ?? ''), 'StaleVersion', 'changed again since');
    await bin.putBack(undos[24] ?? '');
    expect((await trips.getTrip(id))?.trip.name).toBe('Name 23');
  });

  it('puts a deleted trip back with its menu', async () => {
    const app = await openTestApp();
    const { id, version, trip } = await app.trips.createTrip(madeUpTrip());
    await app.bin.putBack(await app.trips.deleteTrip(id, version));
    expect(await app.trips.getTrip(id)).toMatchObject({ trip, stage: 'open', version: version + 2 });
  });

  it('forgets what has lain there for too long', async () => {
    let now = new Date('2026-06-01T10:00:00Z');
    const { kitchen, bin } = await openTestApp(undefined, () => now);
    const throwAway = async (name: string) => {
      const { id, version } = await kitchen.recipes.create(exampleRecipe({ name }));
      await kitchen.recipes.delete(id, version);
    };
    await throwAway('old');
    now = new Date(now.getTime() + (DAYS_IN_BIN + 1) * 86_400_000);
    await throwAway('new');
    expect((await bin.list()).map(({ name }) => name)).toEqual(['new']);
  });
});
