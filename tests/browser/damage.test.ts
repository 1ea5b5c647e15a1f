/* What the program does where its data is damaged, or gone beside copies of it. */
import { readdirSync, truncateSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';
import { flipInIndex, INDEX_OF_CODES } from '../support/damage.ts';

const page = async (app: BuiltApp, address: string) =>
  (await fetch(app.origin + address, { headers: { accept: 'text/html' } })).text();
const post = (app: BuiltApp, address: string) =>
  fetch(app.origin + address, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html', 'content-type': 'application/x-www-form-urlencoded' },
    redirect: 'manual',
  });
const health = async (app: BuiltApp) => {
  const response = await fetch(`${app.origin}/healthz`);
  return [response.status, ((await response.json()) as { status: string }).status];
};
const copies = (app: BuiltApp) =>
  readdirSync(path.join(app.dataFolder, 'backups')).filter((name) => name.endsWith('.sqlite'));
const database = (app: BuiltApp) => path.join(app.dataFolder, 'ridgelarder.sqlite');

test('one flipped bit in an index is said on every page and to who watches, no copy is made of it, and the index can be rebuilt', async () => {
  const first = await startBuiltApp();
  await fillDemo(first.origin);
  await first.stop(true);
  flipInIndex(database(first), INDEX_OF_CODES, 'D02');

  const app = await startBuiltApp({}, first);
  await expect.poll(() => health(app)).toEqual([503, 'damaged']);
  for (const address of ['/', '/shelf', '/trips', '/settings'])
    expect(await page(app, address), address).toMatch(/the stored data is damaged/);
  const before = copies(app);
  expect((await post(app, '/settings/backups?/make')).status).toBe(500);
  expect(copies(app)).toEqual(before);

  expect(await page(app, '/settings/backups')).toContain('Rebuild indexes');
  expect((await post(app, '/settings/backups?/reindex')).status).toBe(303);
  expect(await health(app)).toEqual([200, 'ok']);
  expect(await page(app, '/shelf')).not.toMatch(/data is damaged/);
  expect(await page(app, '/shelf/D02')).toContain('Bean chilli');
  expect((await post(app, '/settings/backups?/make')).status).toBe(303);
  expect(readdirSync(app.dataFolder).some((name) => name.includes('.damaged-'))).toBe(true);
  await app.stop();
});

test('an empty database beside copies is not started with; it is said how to put one back', async () => {
  const first = await startBuiltApp();
  await fillDemo(first.origin);
  expect((await post(first, '/settings/backups?/make')).status).toBe(303);
  await first.stop(true);
  truncateSync(database(first), 0);
  await expect(startBuiltApp({}, first)).rejects.toThrow('ended before it said where it is');
});
