import { beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { MenuFinder } from '../menu-search/find-menu.ts';
import { listedMeal, lockMeal, setPouches, type MealPlace } from '../planning/menu/edit-menu.ts';
import type { App } from './app.ts';
import {
  compareMenus,
  createPlannedTrip,
  givenOf,
  obstacleOf,
  planStoredMeals,
  searchBetter,
  standingOfStored,
  takeChoice,
} from './plan-meals.ts';
import { changeMenu, changeTrip, planStoredTrip } from './plan-stored-trip.ts';
import { expectUserError, madeUpLot, madeUpTrip, openTestApp } from './test-data.ts';

const DINNER: MealPlace = { day: 1, meal: 'dinner', group: '1' };
const TRIP = madeUpTrip({ dayCount: 2, firstMeal: 'dinner', lastMeal: 'breakfast' });
const lot = (code: string, meal: 'dinner' | 'breakfast', energyKcal: number, bestBefore = '2027-02-01') =>
  madeUpLot({
    code,
    recipe: `Recipe ${code}`,
    mealKinds: [meal],
    servingsPerPouch: 1,
    energyKcal,
    bestBefore,
  });

let app: App;
beforeEach(async () => {
  app = await openTestApp();
});
/** D1 expires first and is far too small for a dinner; two of D2 fit. */
const fillShelf = async () => {
  await app.shelf.addLot({ ...lot('D1', 'dinner', 150, '2026-08-01'), pouches: 1 });
  await app.shelf.addLot(lot('D2', 'dinner', 875));
  await app.shelf.addLot(lot('B1', 'breakfast', 550));
};
const create = async (trip = TRIP) => (await createPlannedTrip(app, trip)).stored;
const dinnerOf = async (id: string) =>
  (await planStoredTrip(app, id)).plan.menu.meals
    .find(({ day, meal }) => day === DINNER.day && meal === DINNER.meal)
    ?.opened.map(({ code, pouches }) => [code, pouches]);
/** Changes the trip behind the back of a search, once it runs. */
const changedMeanwhile = async (id: string) => {
  await vi.waitFor(async () => expect(await app.menus.running(id)).toBeDefined(), { interval: 1 });
  await changeTrip(app, id, ({ stored }) => ({ ...stored.trip, name: 'Renamed meanwhile' }));
};
/** An app whose searches fail as where threads cannot be started. */
const withoutThreads = (): App => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  vi.spyOn(MenuFinder.prototype, 'find').mockRejectedValue(new Error('no thread can be started'));
  onTestFinished(() => void vi.restoreAllMocks());
  return app;
};

describe('a new trip', () => {
  it('is stored with its whole first menu, the best one', async () => {
    await fillShelf();
    const { trip, id } = await create();
    expect(trip.menu.map(({ day, meal }) => `${day} ${meal}`).sort()).toEqual([
      '1 dinner',
      '1 drink',
      '2 breakfast',
    ]);
    expect(listedMeal(trip, DINNER)?.opened[0]).toMatchObject({
      code: 'D2',
      reason: { code: expect.any(String) },
    });
    const planned = await planStoredTrip(app, id);
    expect(planned.stored.trip).toEqual(trip);
    expect(app.menus.known(id, givenOf(planned))?.bound).toBeLessThanOrEqual(
      standingOfStored(app, planned).score.points + 1e-6,
    );
  });

  it('is planned first expired, first out, and says so, where no search can be run', async () => {
    await fillShelf();
    const { stored, searchFailed } = await createPlannedTrip(withoutThreads(), TRIP);
    expect(searchFailed).toBe(true);
    expect(listedMeal(stored.trip, DINNER)?.opened.map(({ code }) => code)).toContain('D2');
    expect(stored.trip.menu).toHaveLength(3);
  });
});

describe('planning again', () => {
  it('keeps the locked meals and plans the others from what the shelf has now', async () => {
    await fillShelf();
    const { id } = await create();
    await changeMenu(app, id, (trip) => lockMeal(setPouches(trip, DINNER, 'D1', 1), DINNER, true));
    const locked = await dinnerOf(id);
    await planStoredMeals(app, id);
    expect(await dinnerOf(id)).toEqual(locked);
    await changeMenu(app, id, (trip) => lockMeal(trip, DINNER, false));
    await planStoredMeals(app, id);
    expect(await dinnerOf(id)).toEqual([['D2', 2]]);
  });

  it('loses nothing of what somebody changes meanwhile', async () => {
    await fillShelf();
    const { id } = await create();
    const [planned] = await Promise.allSettled([planStoredMeals(app, id), changedMeanwhile(id)]);
    await expectUserError(
      planned.status === 'rejected' ? Promise.reject(planned.reason as Error) : Promise.resolve(),
      'StaleVersion',
      'Search again',
    );
    expect((await planStoredTrip(app, id)).stored.trip.name).toBe('Renamed meanwhile');
    await planStoredMeals(app, id);
  });

  it('is refused while another search for the trip runs', async () => {
    await fillShelf();
    const { id } = await create();
    const first = searchBetter(app, id, 'quick');
    await vi.waitFor(async () => expect(await app.menus.running(id)).toBeDefined(), { interval: 1 });
    await expectUserError(planStoredMeals(app, id), 'Refused', 'has been running', 'try again');
    await first;
    expect(await app.menus.running(id)).toBeUndefined();
  });
});

describe('a search for a better menu', () => {
  it('takes what is better than a menu made by hand, and compares it with others', async () => {
    await fillShelf();
    const { id } = await create();
    await changeMenu(app, id, (trip) => setPouches(trip, DINNER, 'D2', 4));
    const searched = await searchBetter(app, id, 'quick');
    expect(searched.after).toBeLessThan(searched.before);
    expect(searched).toMatchObject({ stays: false, stopped: false });
    expect(await dinnerOf(id)).toEqual([['D2', 2]]);
    const known = app.menus.known(id, givenOf(await planStoredTrip(app, id)));
    expect(known?.compared?.choices.map(({ name }) => name)).toEqual([
      'best found',
      'lightest',
      'most varied',
      'oldest first',
      'simplest at the stove',
      'one dish for all',
      'own pouches',
    ]);
  });

  it('leaves a menu that is as good', async () => {
    await fillShelf();
    const { id, version } = await create();
    expect(await searchBetter(app, id, 'quick')).toMatchObject({ stays: true });
    expect((await planStoredTrip(app, id)).stored.version).toBe(version);
  });

  it('ends when it is stopped, with the best so far', async () => {
    await fillShelf();
    const { id } = await create();
    const search = searchBetter(app, id, 'thorough');
    await vi.waitFor(async () => expect(await app.menus.running(id)).toBeDefined(), { interval: 1 });
    expect(await app.menus.stop(id)).toBe(true);
    expect(await search).toMatchObject({ stopped: true });
    expect(await app.menus.stop(id)).toBe(false);
    expect(await dinnerOf(id)).toBeDefined();
  });

  it('leaves the menu as it is where it cannot be run', async () => {
    await fillShelf();
    const stored = await create();
    await expectUserError(searchBetter(withoutThreads(), stored.id, 'quick'), 'Refused', 'has not changed');
    expect((await planStoredTrip(app, stored.id)).stored).toEqual(stored);
  });

  it('says what is in the way', async () => {
    const { id } = await create();
    const obstacle = async () => obstacleOf(await planStoredTrip(app, id));
    expect(await obstacle()).toContain('No pouches are free');
    await expectUserError(compareMenus(app, id), 'Refused', 'No pouches are free');
    await fillShelf();
    expect(await obstacle()).toBeUndefined();
    await planStoredMeals(app, id);
    await changeMenu(app, id, (trip) =>
      trip.menu.reduce(
        (all, meal) => lockMeal(all, { ...DINNER, day: meal.day, meal: meal.meal }, true),
        trip,
      ),
    );
    expect(await obstacle()).toContain('Every meal of this trip is locked');
    const { version } = (await planStoredTrip(app, id)).stored;
    await app.trips.setAside(id, version, [{ code: 'D2', pouches: 1 }]);
    await app.trips.pack(id, version + 1);
    expect(await obstacle()).toContain('is packed');
    await expectUserError(planStoredMeals(app, id), 'Refused', 'is packed');
  });
});

describe('another menu', () => {
  it('is taken by name, with the locked meals as they are', async () => {
    await fillShelf();
    const { id } = await create();
    await changeMenu(app, id, (trip) => lockMeal(setPouches(trip, DINNER, 'D2', 2), DINNER, true));
    await compareMenus(app, id);
    await takeChoice(app, id, 'lightest');
    expect(await dinnerOf(id)).toEqual([['D2', 2]]);
    const { trip } = (await planStoredTrip(app, id)).stored;
    expect(listedMeal(trip, { ...DINNER, day: 2, meal: 'breakfast' })?.opened[0]?.reason).toEqual({
      code: 'of a choice',
      choice: 'lightest',
    });
  });

  it('is refused when the shelf has changed since, or the name is none', async () => {
    await fillShelf();
    const { id } = await create();
    await compareMenus(app, id);
    await expectUserError(takeChoice(app, id, 'cheapest'), 'Refused', 'Compare again');
    await app.shelf.addLot(lot('D3', 'dinner', 900));
    await expectUserError(takeChoice(app, id, 'lightest'), 'Refused', 'Compare again');
  });
});

it('remembers the last trips only', async () => {
  await fillShelf();
  const { id } = await create();
  const given = givenOf(await planStoredTrip(app, id));
  const found = await app.menus.search(undefined, given, 'quick');
  for (let trip = 0; trip < 20; trip += 1) app.menus.keep(`trip ${trip}`, given, found);
  expect(app.menus.known(id, given)).toBeUndefined();
  expect(app.menus.known('trip 0', given)).toBeDefined();
});
