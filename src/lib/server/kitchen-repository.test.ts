import { describe, expect, it } from 'vitest';
import { Batch } from '../planning/model/batch.ts';
import { defaultKitchen } from '../planning/model/kitchen.ts';
import { Recipe } from '../planning/model/recipe.ts';
import { knownRuns } from './kitchen-repository.ts';
import { expectUserError, madeUpLot, onEachDatabase } from './test-data.ts';

onEachDatabase(({ openTestApp }) => {
  const recipe = (name = 'Lentil stew'): Recipe =>
    Recipe.parse({
      name,
      mealKinds: ['dinner'],
      servings: 4,
      ingredients: [
        {
          food: {
            name: 'lentils',
            source: 'test',
            allergens: [],
            composition: { waterG: 10, proteinG: 24, fatG: 1, carbohydrateG: 50, fibreG: 12 },
          },
          quantity: { amount: 400, unit: 'g' },
        },
      ],
      cookingYield: 3,
    });
  const batch = (code = 'B1'): Batch =>
    Batch.parse({
      code,
      recipe: recipe(),
      cookedOn: '2026-06-01',
      dryer: defaultKitchen().dryers[0],
      trays: [{ loadedG: 600 }, { loadedG: 600 }],
    });

  describe('recipes', () => {
    it('are kept by name, changed on the version that was read, and deleted', async () => {
      const { kitchen } = await openTestApp();
      const { id, version } = await kitchen.recipes.create(recipe());
      await kitchen.recipes.create(recipe('Apple oats'));
      expect((await kitchen.recipes.list()).map(({ value }) => value.name)).toEqual([
        'Apple oats',
        'Lentil stew',
      ]);
      await expectUserError(
        kitchen.recipes.create(recipe()),
        'Conflict',
        'another recipe called "Lentil stew"',
      );

      const changed = await kitchen.recipes.update(id, recipe('Lentil soup'), version);
      expect(changed).toMatchObject({ version: 2, value: { name: 'Lentil soup' } });
      await expectUserError(
        kitchen.recipes.update(id, recipe(), version),
        'StaleVersion',
        'changed elsewhere',
      );
      await expectUserError(
        kitchen.recipes.update(id, recipe('Apple oats'), 2),
        'Conflict',
        'another recipe',
      );
      await kitchen.recipes.delete(id, 2);
      expect(await kitchen.recipes.get(id)).toBeUndefined();
      await expectUserError(kitchen.recipes.delete(id, 2), 'NotFound', 'no such recipe');
    });

    it('are not mixed with records of another kind', async () => {
      const { kitchen } = await openTestApp();
      const { id } = await kitchen.recipes.create(recipe('B1'));
      await kitchen.batches.create(batch('B1'));
      expect(await kitchen.batches.get(id)).toBeUndefined();
      expect(await kitchen.recipes.list()).toHaveLength(1);
    });
  });

  describe('foods', () => {
    it('are taken in by name: new ones added, known ones replaced', async () => {
      const { kitchen } = await openTestApp();
      const [lentils] = recipe().ingredients;
      const food = lentils!.food;
      expect(await kitchen.foods.putAll([food, { ...food, name: 'beans' }])).toEqual({
        added: 2,
        replaced: 0,
      });
      expect(await kitchen.foods.putAll([{ ...food, source: 'packet' }])).toEqual({ added: 0, replaced: 1 });
      const stored = await kitchen.foods.list();
      expect(stored.map(({ value, version }) => [value.name, value.source, version])).toEqual([
        ['beans', 'test', 1],
        ['lentils', 'packet', 2],
      ]);
    });
  });

  describe('sealBatch', () => {
    it('puts the lots on the shelf and closes the batch, once', async () => {
      const { kitchen, shelf } = await openTestApp();
      const stored = await kitchen.batches.create(batch());
      const sealed = await kitchen.sealBatch(
        stored,
        [madeUpLot({ code: 'B1-1', pouches: 3 }), madeUpLot({ code: 'B1-2', pouches: 1 })],
        '2026-06-03',
      );
      expect(sealed.value.sealed).toEqual({ on: '2026-06-03', lots: ['B1-1', 'B1-2'] });
      expect(await shelf.getLot('B1-1')).toMatchObject({ onShelf: 3 });
      expect(await shelf.history('B1-1')).toMatchObject([{ kind: 'sealed', pouches: 3, note: 'batch B1' }]);
      await expectUserError(
        kitchen.sealBatch(sealed, [madeUpLot({ code: 'B1-3' })], '2026-06-03'),
        'Refused',
        'sealed on 2026-06-03 already',
      );
    });

    it('writes nothing where one of the codes is taken, or the batch was changed meanwhile', async () => {
      const { kitchen, shelf } = await openTestApp();
      const stored = await kitchen.batches.create(batch());
      await shelf.addLot(madeUpLot({ code: 'B1-2' }));
      const lots = [madeUpLot({ code: 'B1-1' }), madeUpLot({ code: 'B1-2' })];
      await expectUserError(kitchen.sealBatch(stored, lots, '2026-06-03'), 'Conflict', '"B1-2" is taken');
      expect(await shelf.getLot('B1-1')).toBeUndefined();
      expect(await kitchen.batches.get(stored.id)).toEqual(stored);

      await kitchen.batches.update(stored.id, { ...stored.value, note: 'changed' }, stored.version);
      await expectUserError(
        kitchen.sealBatch(stored, lots.slice(0, 1), '2026-06-03'),
        'StaleVersion',
        'changed',
      );
      expect(await shelf.getLot('B1-1')).toBeUndefined();
    });
  });

  it('knows the runs noted by hand and those of sealed batches', () => {
    const run = {
      date: '2026-01-01',
      dryer: 'freeze dryer',
      preFrozen: true,
      waterRemovedG: 2000,
      hours: 24,
    };
    const kitchen = { ...defaultKitchen(), runs: [run] };
    const weighed: Batch = {
      ...batch(),
      energyKwh: 20,
      weighings: [{ afterH: 22, trays: [1, 2].map(() => ({ grossG: 190, feel: 'dry through' as const })) }],
    };
    const stored = (value: Batch) => ({ id: 'x', version: 1, updatedAt: '', value });
    expect(knownRuns(kitchen, [stored(weighed)], '2026-06-03')).toEqual([run]);
    const sealed = { ...weighed, sealed: { on: '2026-06-03', lots: ['B1'] } };
    expect(knownRuns(kitchen, [stored(sealed)], '2026-06-03')).toEqual([
      run,
      { dryer: 'freeze dryer', preFrozen: false, waterRemovedG: 820, hours: 22, energyKwh: 20 },
    ]);
    // two batches in one run are one run, known once both are sealed
    const { energyKwh: _, ...unmetered } = sealed;
    const second = { ...stored({ ...unmetered, sharesRunOf: 'x' }), id: 'y' };
    expect(knownRuns(kitchen, [stored(sealed), second], '2026-06-03')).toEqual([
      run,
      { dryer: 'freeze dryer', preFrozen: false, waterRemovedG: 1640, hours: 22, energyKwh: 20 },
    ]);
    const { sealed: __, ...open } = second.value;
    expect(knownRuns(kitchen, [stored(sealed), { ...second, value: open }], '2026-06-03')).toEqual([run]);
  });
});
