import { EventEmitter } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { addPouch, listedMeal, lockMeal, removePouch, type MealPlace } from '../planning/menu/edit-menu.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { PouchLot } from '../planning/model/pouch-lot.ts';
import { Trip } from '../planning/model/trip.ts';
import { openApp, type App } from './app.ts';
import { createPlannedTrip } from './plan-meals.ts';
import { askedBy } from './asker.ts';
import { changeMenu, planKept, planStoredTrip } from './plan-stored-trip.ts';
import { useLanguage } from '../texts/say.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner', group: '1' };
const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 2,
  firstMeal: 'dinner',
  lastMeal: 'breakfast',
  party: [{ name: 'Ada' }],
});
const lot = (code: string, meal: 'dinner' | 'breakfast', bestBefore: string): PouchLot =>
  PouchLot.parse({
    code,
    recipe: `Recipe ${code}`,
    mealKinds: [meal],
    sealedOn: '2026-01-10',
    bestBefore,
    pouches: 2,
    servingsPerPouch: 1,
    dryWeightG: 150,
    energyKcal: 700,
    waterMl: 300,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 14,
    allergens: [],
  });

let folder: string;
let app: App;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'plan-stored-trip-'));
  app = await openApp(folder);
});
afterEach(async () => {
  await app.close();
  await rm(folder, { recursive: true });
});
const fillShelf = async () => {
  await app.shelf.addLot(lot('D1', 'dinner', '2026-12-01'));
  await app.shelf.addLot(lot('D2', 'dinner', '2027-02-01'));
  await app.shelf.addLot(lot('B1', 'breakfast', '2026-12-01'));
};
const dinnerOf = async (id: string) =>
  (await planStoredTrip(app, id)).plan.menu.meals
    .find(({ day, meal }) => day === DINNER.day && meal === DINNER.meal)
    ?.opened.map(({ code, pouches }) => [code, pouches]);

it('a plan goes on as long as one of those who asked for it waits, and is ended when all have gone', async () => {
  const plans: AbortSignal[] = [];
  const apart = {
    do: (_task: unknown, { signal }: { signal: AbortSignal }) => {
      plans.push(signal);
      return new Promise((_, reject) =>
        signal.addEventListener('abort', () => reject(signal.reason as Error)),
      );
    },
  } as unknown as App['apart'];
  const sockets = Array.from({ length: 3 }, () => Object.assign(new EventEmitter(), { destroyed: false }));
  type Heard = (typeof sockets)[number];
  const ask = (socket: Heard) =>
    askedBy(socket, false, () => planKept({ apart }, TRIP, [], defaultSettings())).catch(
      (error: unknown) => error,
    );
  const [one, other, third] = sockets as [Heard, Heard, Heard];
  const asked = [ask(one), ask(other)];
  await vi.waitFor(() => expect(plans).toHaveLength(1));
  one.emit('close');
  expect(plans.map(({ aborted }) => aborted)).toEqual([false]);
  other.emit('close');
  expect(plans.map(({ aborted }) => aborted)).toEqual([true]);
  for (const answer of await Promise.all(asked)) expect(answer).toMatchObject({ code: 'Busy' });
  const again = ask(third);
  await vi.waitFor(() => expect(plans).toHaveLength(2));
  expect(plans.map(({ aborted }) => aborted)).toEqual([true, false]);
  third.emit('close');
  expect(await again).toMatchObject({ code: 'Busy' });
});

it('an empty shelf stores no menu, so that the first pouches are planned as soon as they are there', async () => {
  const { id, trip } = (await createPlannedTrip(app, TRIP)).stored;
  expect(trip.menu).toEqual([]);
  await fillShelf();
  expect((await dinnerOf(id))?.[0]?.[0]).toBe('D1');
});

it('a change of one meal leaves the others alone, also when the shelf has something better by then', async () => {
  await fillShelf();
  const { id } = (await createPlannedTrip(app, TRIP)).stored;
  const before = await dinnerOf(id);
  await app.shelf.addLot(lot('D0', 'dinner', '2026-07-10'));
  await changeMenu(app, id, (trip) => removePouch(trip, { ...DINNER, day: 2, meal: 'breakfast' }, 'B1'));
  expect(await dinnerOf(id)).toEqual(before);
});

it('changes made at the same time all land', async () => {
  await fillShelf();
  const { id } = (await createPlannedTrip(app, TRIP)).stored;
  await Promise.all([
    changeMenu(app, id, (trip) => lockMeal(trip, DINNER, true)),
    changeMenu(app, id, (trip) => addPouch(trip, { ...DINNER, meal: 'drink' }, 'D2')),
  ]);
  const { stored } = await planStoredTrip(app, id);
  expect(listedMeal(stored.trip, DINNER)?.locked).toBe(true);
  expect(listedMeal(stored.trip, { ...DINNER, meal: 'drink' })?.opened).toContainEqual({
    code: 'D2',
    pouches: 1,
  });
});

it('a packed trip is planned with what is packed, and its menu stands', async () => {
  await fillShelf();
  const { id } = (await createPlannedTrip(app, TRIP)).stored;
  const { plan, stored } = await planStoredTrip(app, id);
  await app.trips.setAside(id, stored.version, [
    { code: 'D1', pouches: 2 },
    { code: 'B1', pouches: 1 },
  ]);
  await app.trips.pack(id, stored.version + 1);
  expect((await planStoredTrip(app, id)).plan).toEqual(plan);
  await expect(changeMenu(app, id, (trip) => trip)).rejects.toMatchObject({ code: 'Refused' });
});

it('an unknown trip is not found', async () => {
  await expect(planStoredTrip(app, 'nowhere')).rejects.toMatchObject({ code: 'NotFound' });
});

it('plans once for what stays the same, and anew for a changed shelf or another language', async () => {
  await app.shelf.importLots([lot('D1', 'dinner', '2027-01-01'), lot('B1', 'breakfast', '2027-01-01')], 'x');
  const { stored } = await createPlannedTrip(app, TRIP);
  const { plan } = await planStoredTrip(app, stored.id);
  expect((await planStoredTrip(app, stored.id)).plan).toBe(plan);

  useLanguage(() => 'de');
  const german = (await planStoredTrip(app, stored.id)).plan;
  useLanguage(() => 'en');
  expect(german).not.toBe(plan);

  await app.shelf.importLots([lot('D2', 'dinner', '2026-12-01')], 'x');
  const { plan: after, stock } = await planStoredTrip(app, stored.id);
  expect(after).not.toBe(plan);
  expect(stock.map(({ code }) => code)).toContain('D2');
});
