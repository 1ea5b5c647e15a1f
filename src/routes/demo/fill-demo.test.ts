import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { openApp, type App } from '$lib/server/app.ts';
import { recipeTotals } from '$lib/planning/drying/recipe-totals.ts';
import { speaking } from '$lib/server/language-of-request.ts';
import { fillDemo } from './fill-demo.ts';

let folder: string;
let app: App;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'demo-'));
  app = await openApp(folder);
});
afterEach(async () => {
  await app.close();
  await rm(folder, { recursive: true });
});

it('fills an empty shelf and plans a trip from it', async () => {
  const { stored, searchFailed } = await fillDemo(app);
  expect(searchFailed).toBe(false);
  const lots = await app.shelf.listLots();
  expect(lots.length).toBeGreaterThanOrEqual(20);
  expect(lots.every(({ onShelf, setAside }) => onShelf > 0 && setAside === 0)).toBe(true);
  expect(await app.trips.getTrip(stored.id)).toMatchObject({ stage: 'open', trip: { dayCount: 5 } });
});

it('names all of it in the language of whoever asks', async () => {
  await speaking('de', () => fillDemo(app));
  const recipes = (await app.shelf.listLots()).map(({ recipe }) => recipe);
  expect(recipes).toContain('Rote-Linsen-Dal mit Reis');
  expect(recipes).not.toContain('Red lentil dal with rice');
  for (const { value } of await app.kitchen.recipes.list()) expect(recipes).toContain(value.name);
  expect((await app.trips.listTrips())[0]).toMatchObject({ trip: { name: 'Fünf Tage über den Grat' } });
});

it('does not mix with a shelf that is in use, and says so', async () => {
  await fillDemo(app);
  const before = await app.shelf.listLots();
  await expect(fillDemo(app)).rejects.toMatchObject({
    code: 'Refused',
    message: expect.stringContaining('already has lots'),
  });
  expect(await app.shelf.listLots()).toEqual(before);
  expect(await app.trips.listTrips()).toHaveLength(1);
});

it('brings recipes that can be cooked at once', async () => {
  await fillDemo(app);
  const recipes = await app.kitchen.recipes.list();
  expect(recipes.length).toBeGreaterThanOrEqual(3);
  for (const { value } of recipes) {
    const totals = recipeTotals(value);
    expect(totals).toMatchObject({ problems: [], doubts: [], unpriced: [], allergensUnstated: [] });
    // dishes as one cooks them: not soup, not dust
    expect(totals.moisture).toBeGreaterThan(0.5);
    expect(totals.moisture).toBeLessThan(0.85);
  }
});
