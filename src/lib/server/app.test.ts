import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { app, closeApp } from './app.ts';
import { expectUserError, madeUpLot, openTestApp, temporaryFolder } from './test-data.ts';

afterEach(async () => {
  vi.unstubAllEnvs();
  await closeApp();
});

test('one app is opened, in the folder of RIDGELARDER_DATA; a failure is tried again', async () => {
  const folder = join(await temporaryFolder(), 'data');
  vi.stubEnv('RIDGELARDER_DATA', folder);
  await writeFile(folder, 'in the way');
  await expectUserError(app(), 'Unusable', folder, 'RIDGELARDER_DATA');
  await rm(folder);

  const [first, second] = await Promise.all([app(), app()]);
  expect(first).toBe(second);
  await first.shelf.addLot(madeUpLot());
  const other = await openTestApp(folder);
  expect(await other.shelf.listLots()).toHaveLength(1);
});

test('today is the date where the program runs, not that of Greenwich', async () => {
  const lateInTheEvening = new Date(2026, 2, 9, 23, 59);
  const earlyInTheMorning = new Date(2026, 10, 25, 0, 1);
  expect((await openTestApp(undefined, () => lateInTheEvening)).today()).toBe('2026-03-09');
  expect((await openTestApp(undefined, () => earlyInTheMorning)).today()).toBe('2026-11-25');
});
