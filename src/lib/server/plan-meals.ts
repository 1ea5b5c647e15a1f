import type { FoundMenu } from '../menu-search/find-menu.ts';
import type { Searched } from '../menu-search/search-state.ts';
import { planWithMenu, standingMenu } from '../menu-search/standing-menu.ts';
import { forgetUnlocked, keepMenu, listedMeal } from '../planning/menu/edit-menu.ts';
import { buildMenuModel } from '../planning/menu/menu-model.ts';
import type { Effort } from '../planning/optimiser/search-menu.ts';
import { withPlanned } from '../planning/model/planned-lot.ts';
import { planTrip } from '../planning/plan-trip.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { App } from './app.ts';
import { UserError } from './errors.ts';
import { choiceReason, type Choice, type Given } from './menu-searches.ts';
import { packedWords, planStoredTrip, refuseWhilePacked, type PlannedTrip } from './plan-stored-trip.ts';
import type { ChangedTrip, StoredTrip } from './trip-repository.ts';
import { say } from '../texts/say.ts';

/** A trip with its whole menu listed. */
export type PlannedMeals = {
  readonly trip: Trip;
  /** Left out where nothing was looked for: there is nothing to choose, or the search could not be run. */
  readonly found?: FoundMenu;
  /** The search could not be run, and the meals are planned first expired, first out. */
  readonly searchFailed: boolean;
};

/**
 * Plans the meals that are not locked anew and lists the whole menu, so that a later change of one meal leaves the others alone.
 * A menu without a single pouch is not listed: it is planned at every look until the shelf has something for it.
 *
 * @param id the trip, where it is stored already
 * @throws UserError `Refused` while another search for this trip runs
 */
export async function planMeals(
  app: App,
  id: string | undefined,
  given: Given,
  effort: Effort = 'quick',
): Promise<PlannedMeals> {
  if (!withPlanned(given.stock, given.trip.planned).some(({ pouches }) => pouches > 0))
    return { trip: planByExpiry(given), searchFailed: false };
  try {
    const found = await app.menus.search(id, given, effort);
    return { trip: found.trip, found, searchFailed: false };
  } catch (caught) {
    if (caught instanceof UserError) throw caught;
    logFailure(caught);
    return { trip: planByExpiry(given), searchFailed: true };
  }
}

function planByExpiry({ trip, stock, settings }: Given): Trip {
  const open = forgetUnlocked(trip, stock);
  const plan = planTrip(open, stock, settings);
  return plan.totals.pouches > 0 ? keepMenu(open, plan.menu) : open;
}

/** Stores a new trip with its first menu. */
export async function createPlannedTrip(
  app: App,
  newTrip: Trip,
): Promise<{ stored: StoredTrip; searchFailed: boolean }> {
  const [stock, settings] = await Promise.all([app.shelf.stockFor(undefined), app.settings.get()]);
  const given = { trip: { ...newTrip, menu: [] }, stock, settings };
  const { trip, found, searchFailed } = await planMeals(app, undefined, given);
  const stored = await app.trips.createTrip(trip);
  if (found) app.menus.keep(stored.id, given, found);
  return { stored, searchFailed };
}

/**
 * Plans the meals of a stored trip that are not locked anew.
 *
 * @throws UserError `NotFound`; `Refused` while it is packed or another search for it runs; `StaleVersion` where somebody changed it meanwhile
 */
export async function planStoredMeals(
  app: App,
  id: string,
): Promise<PlannedMeals & { readonly undo: string }> {
  const planned = await planStoredTrip(app, id);
  refuseWhilePacked(planned.stored);
  const meals = await planMeals(app, id, givenOf(planned));
  const { undo } = await saveMenu(app, planned.stored, meals.trip);
  return { ...meals, undo };
}

/**
 * Looks for a better menu than the one that stands, takes it if there is one, and compares it with others.
 *
 * @throws UserError `NotFound`; `Refused` where there is nothing to look for, another search runs, or it cannot be run; `StaleVersion` where somebody changed the trip meanwhile
 */
export async function searchBetter(
  app: App,
  id: string,
  effort: Effort,
): Promise<Searched & { readonly undo?: string }> {
  const planned = await planStoredTrip(app, id);
  refuseWithObstacle(planned);
  const { stored, plan, stock, settings } = planned;
  const found = await app.menus.search(id, givenOf(planned), effort).catch(toRefusal);
  const standing = standingMenu(stored.trip, plan, stock, settings, found.problem);
  const isListed = plan.menu.meals.every((meal) => listedMeal(stored.trip, meal));
  const isAsGood =
    standing.problem === found.problem &&
    standing.broken.length === 0 &&
    standing.score.points <= found.score.points + 1e-6;
  const saved = !isAsGood || !isListed ? await saveMenu(app, stored, found.trip) : undefined;
  if (!found.stopped) await compareMenus(app, id).catch(ignoreRefusal);
  const after = isAsGood ? standing.score.points : found.score.points;
  const best = app.menus.known(id, givenOf(planned))?.found?.points ?? after;
  return {
    before: standing.score.points,
    after,
    stays: isAsGood,
    stopped: found.stopped,
    elapsedMs: found.elapsedMs,
    ...(saved && { undo: saved.undo }),
    betterInComparison: best < after - 0.05 ? best : undefined,
  };
}

/** Compares the menu that stands with others. @throws UserError as `searchBetter` does */
export async function compareMenus(app: App, id: string): Promise<void> {
  const planned = await planStoredTrip(app, id);
  refuseWithObstacle(planned);
  await app.menus.compare(id, givenOf(planned), standingOfStored(app, planned)).catch(toRefusal);
}

/** The menu of a stored trip, scored; by the problem of the last search where that still is the problem. */
export function standingOfStored(app: App, planned: PlannedTrip) {
  const { stored, plan, stock, settings } = planned;
  const known = app.menus.known(stored.id, givenOf(planned));
  return standingMenu(stored.trip, plan, stock, settings, known?.problem);
}

/**
 * Puts one of the menus on the table that the last comparison named. Locked meals stay.
 *
 * @throws UserError `NotFound`; `Refused` while the trip is packed, or where the menus were compared for another trip, shelf or settings; `StaleVersion`
 */
export async function takeChoice(
  app: App,
  id: string,
  name: string | undefined,
): Promise<{ readonly name: Choice['name']; readonly undo: string }> {
  const planned = await planStoredTrip(app, id);
  const { stored, stock, settings } = planned;
  refuseWhilePacked(stored);
  const known = app.menus.known(id, givenOf(planned));
  const choice = known?.compared?.choices.find((other) => other.name === name);
  if (!known || !choice)
    throw new UserError(
      'Refused',
      say(
        'These menus were made for the trip, the shelf or the settings as they were before. Compare again, then choose.',
      ),
    );
  const model = buildMenuModel(known.problem);
  const plan = planWithMenu(stored.trip, stock, settings, {
    model,
    menu: choice.menu,
    reason: choiceReason(choice.name),
  });
  const { undo } = await saveMenu(app, stored, keepMenu(forgetUnlocked(stored.trip, stock), plan.menu));
  return { name: choice.name, undo };
}

/** @returns why no menu can be looked for, in words; `undefined` where one can. */
export function obstacleOf({ stored, lots, plan }: PlannedTrip): string | undefined {
  const packed = packedWords(stored);
  if (packed !== undefined) return packed;
  if (plan.menu.meals.every(({ locked }) => locked))
    return say('Every meal of this trip is locked. Under Menu, unlock the meals that may change.');
  if (!lots.some(({ pouches }) => pouches > 0))
    return say(
      'No pouches are free for this trip. Add pouches to the shelf, or release some from another trip.',
    );
  return undefined;
}

export const givenOf = ({ stored, stock, settings }: PlannedTrip): Given => ({
  trip: stored.trip,
  stock,
  settings,
});

function refuseWithObstacle(planned: PlannedTrip): void {
  const obstacle = obstacleOf(planned);
  if (obstacle) throw new UserError('Refused', obstacle);
}

async function saveMenu(app: App, stored: StoredTrip, trip: Trip): Promise<ChangedTrip> {
  return app.trips.updateTrip(stored.id, trip, stored.version).catch((caught: unknown) => {
    if (!(caught instanceof UserError) || caught.code !== 'StaleVersion') throw caught;
    throw new UserError(
      'StaleVersion',
      say(
        '"{name}" was changed elsewhere during the search. That change was kept; the new menu was not. Search again to fit the menu to it.',
        { name: stored.trip.name },
      ),
    );
  });
}

function toRefusal(caught: unknown): never {
  if (caught instanceof UserError) throw caught;
  logFailure(caught);
  throw new UserError(
    'Refused',
    say(
      "The search could not run on this machine, so the menu has not changed. The program's log shows why; restarting it may help.",
    ),
  );
}

/** The search is done; a comparison that is stopped or fails can be asked for again. */
function ignoreRefusal(caught: unknown): void {
  if (!(caught instanceof UserError)) throw caught;
}

function logFailure(caught: unknown): void {
  console.error(`${new Date().toISOString()} the search for a menu could not be run:`, caught);
}
