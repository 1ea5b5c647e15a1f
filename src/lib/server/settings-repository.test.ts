import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { expectUserError, openTestApp, temporaryFolder } from './test-data.ts';

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
  const file = new DatabaseSync(join(folder, 'ridgelarder.sqlite'));
  file.prepare('update settings set settings = ?').run('{"hotWaterC": 400}');
  file.close();
  await expectUserError(
    app.settings.get(),
    'Unusable',
    'The stored settings',
    'hotWaterC must be at most 95',
  );
});
