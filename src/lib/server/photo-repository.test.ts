import { expect, test } from 'vitest';
import { JPEG, PNG } from '../../../tests/support/pictures.ts';
import { Recipe } from '../planning/model/recipe.ts';
import { stripPicture, type Picture } from '../photos/strip-picture.ts';
import type { App } from './app.ts';
import { expectUserError, madeUpLot, onEachDatabase } from './test-data.ts';

const picture = (file: Uint8Array) => stripPicture(file) as Picture;

onEachDatabase(({ openTestApp }) => {
  async function withDish(folder?: string): Promise<{ app: App; id: string }> {
    const app = await openTestApp(folder);
    const recipe = Recipe.parse({ name: 'Chili', mealKinds: ['dinner'], servings: 4 });
    const { id } = await app.kitchen.recipes.create(recipe);
    for (const code of ['A', 'B']) await app.shelf.addLot(madeUpLot({ code, recipe: 'Chili' }));
    return { app, id };
  }

  test('a recipe and a lot keep one picture each; a lot without shows that of its recipe', async () => {
    const { app, id } = await withDish();
    expect(await app.photos.photographed()).toEqual({ lots: {}, recipes: {} });
    await app.photos.keep({ kind: 'recipe', id }, picture(JPEG));
    await app.photos.keep({ kind: 'lot', code: 'A' }, picture(JPEG));
    await app.photos.keep({ kind: 'lot', code: 'A' }, picture(PNG));
    expect(await app.photos.get({ kind: 'lot', code: 'A' })).toMatchObject({
      ...{ mediaType: 'image/png', width: 6, height: 4, bytes: PNG },
    });
    expect((await app.photos.ofLot('A'))?.bytes).toEqual(PNG);
    expect((await app.photos.ofLot('B'))?.bytes).toEqual(JPEG);
    expect(await app.photos.ofLot('C')).toBeUndefined();
    const { lots, recipes } = await app.photos.photographed();
    expect([Object.keys(lots), Object.keys(recipes)]).toEqual([['A'], ['Chili']]);
    expect(await app.photos.markOf(id)).toMatchObject({ width: 6, height: 4 });

    await app.photos.remove({ kind: 'lot', code: 'A' });
    expect((await app.photos.ofLot('A'))?.bytes).toEqual(JPEG);
  });

  test('what is not there has none and takes none', async () => {
    const { app } = await withDish();
    await expectUserError(app.photos.keep({ kind: 'lot', code: 'X' }, picture(PNG)), 'NotFound');
    await expectUserError(app.photos.keep({ kind: 'recipe', id: 'x' }, picture(PNG)), 'NotFound');
    expect(await app.photos.get({ kind: 'recipe', id: 'x' })).toBeUndefined();
  });

  test('a recipe that comes back from the bin has its picture still', async () => {
    const { app, id } = await withDish();
    await app.photos.keep({ kind: 'recipe', id }, picture(JPEG));
    const inBin = await app.kitchen.recipes.delete(id, 1);
    expect(await app.photos.get({ kind: 'recipe', id })).toBeUndefined();
    await app.bin.putBack(inBin);
    expect((await app.photos.get({ kind: 'recipe', id }))?.bytes).toEqual(JPEG);
  });
});
