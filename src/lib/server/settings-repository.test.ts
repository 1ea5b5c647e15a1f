import { afterEach, expect, test } from 'vitest';
import { exampleBatch } from '../../../tests/support/kitchen-examples.ts';
import { translationInto } from '../texts/catalogs.ts';
import { useCatalog, useLanguage } from '../texts/say.ts';
import { defaultKitchen } from '../planning/model/kitchen.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { expectUserError, onEachDatabase, temporaryFolder } from './test-data.ts';

afterEach(() => useLanguage(() => 'en'));

onEachDatabase(({ openTestApp, openTestDatabase }) => {
  test('the defaults hold until settings are saved, and the last ones saved from then on', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    expect(await app.settings.get()).toEqual(defaultSettings());
    const first = { ...defaultSettings(), unitSystem: 'us' as const, currency: 'USD' };
    const second = { ...first, staples: [] };
    await app.settings.save(first);
    expect(await app.settings.get()).toEqual(first);
    await app.settings.save(second);
    const other = await openTestApp(folder);
    expect(await other.settings.get()).toEqual(second);
  });

  test('what is no valid setting is not stored', async () => {
    const app = await openTestApp();
    await expect(app.settings.save({ ...defaultSettings(), currency: 'euros' })).rejects.toThrow(
      'not-a-currency',
    );
    expect(await app.settings.get()).toEqual(defaultSettings());
  });

  test('settings that were spoilt on disk are named', async () => {
    const folder = await temporaryFolder();
    const app = await openTestApp(folder);
    await app.settings.save(defaultSettings());
    const database = await openTestDatabase(folder);
    await database.updateTable('settings').set({ settings: '{"hotWaterC": 400}' }).execute();
    await expectUserError(
      app.settings.get(),
      'Unusable',
      'The stored settings',
      'hotWaterC must be at most 95',
    );
  });

  test('usual equipment is named in the language of whoever begins the first batch, and stays so', async () => {
    useCatalog('de', translationInto('de'));
    const app = await openTestApp();
    const dryers = async () => (await app.settings.getKitchen()).dryers.map(({ name }) => name);
    expect(await dryers()).toEqual(['freeze dryer', 'dehydrator', 'large freeze dryer']);
    useLanguage(() => 'de');
    await app.settings.keepKitchen(await app.settings.getKitchen());
    useLanguage(() => 'en');
    expect(await dryers()).toEqual(['Gefriertrockner', 'Dörrgerät', 'großer Gefriertrockner']);
    await app.settings.keepKitchen(defaultKitchen());
    expect(await dryers()).toEqual(['Gefriertrockner', 'Dörrgerät', 'großer Gefriertrockner']);
  });

  test('a batch that was begun before the equipment was kept leaves it its English names', async () => {
    useCatalog('de', translationInto('de'));
    const app = await openTestApp();
    await app.kitchen.batches.create(exampleBatch());
    useLanguage(() => 'de');
    expect((await app.settings.getKitchen()).dryers[0]?.name).toBe('freeze dryer');
  });
});
