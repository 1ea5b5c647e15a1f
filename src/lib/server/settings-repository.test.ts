import { expect, test } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { expectUserError, onEachDatabase, temporaryFolder } from './test-data.ts';

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
    await expect(app.settings.save({ ...defaultSettings(), currency: 'euros' })).rejects.toThrow('ISO 4217');
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
});
