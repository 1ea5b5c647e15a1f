import { createHash } from 'node:crypto';
import { planTrip } from '../planning/plan-trip.ts';
import { keepMenu } from '../planning/menu/edit-menu.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { App } from './app.ts';
import { UserError } from './errors.ts';
import type { StoredTrip } from './trip-repository.ts';
import { language, say } from '../texts/say.ts';

/** A stored trip with its plan, and what the plan was made from. */
export type PlannedTrip = {
  readonly stored: StoredTrip;
  readonly stock: Stock;
  readonly settings: Settings;
  readonly plan: TripPlan;
};

/** @throws UserError `NotFound` */
export async function planStoredTrip(app: App, id: string): Promise<PlannedTrip> {
  const [stored, stock, settings] = await Promise.all([
    app.trips.getTrip(id),
    app.shelf.stockFor(id),
    app.settings.get(),
  ]);
  if (!stored)
    throw new UserError(
      'NotFound',
      say('There is no such trip. It may have been deleted; the list of trips shows those there are.'),
    );
  return { stored, stock, settings, plan: planOf(stored.trip, stock, settings) };
}

/** The plans made last, by all that they were made from. A page of a trip comes with the seven others that a browser keeps, and all show the same plan. */
const madeLast = new Map<string, TripPlan>();
const MOST_KEPT = 8;

function planOf(...from: Parameters<typeof planTrip>): TripPlan {
  // Sentences of a plan are in the language around.
  const key = createHash('sha256')
    .update(JSON.stringify([language(), ...from]))
    .digest('base64');
  const plan = madeLast.get(key) ?? planTrip(...from);
  madeLast.delete(key);
  madeLast.set(key, plan);
  for (const oldest of madeLast.keys()) if (madeLast.size > MOST_KEPT) madeLast.delete(oldest);
  return plan;
}

/**
 * Changes a stored trip as it is stored now; when somebody else saves in between, the change is made once more on what they saved.
 *
 * @param change returns the changed trip
 * @throws UserError `NotFound`; what `change` throws
 */
export async function changeTrip(
  app: App,
  id: string,
  change: (planned: PlannedTrip) => Trip,
): Promise<StoredTrip> {
  for (let triesLeft = 3; ; triesLeft -= 1) {
    const planned = await planStoredTrip(app, id);
    try {
      return await app.trips.updateTrip(id, change(planned), planned.stored.version);
    } catch (error) {
      if (triesLeft > 0 && error instanceof UserError && error.code === 'StaleVersion') continue;
      throw error;
    }
  }
}

/**
 * Changes the menu of a stored trip, with every meal of its plan listed.
 *
 * @param change returns the changed trip
 * @throws UserError `NotFound`; `Refused` while the trip is packed; what `change` throws
 */
export function changeMenu(
  app: App,
  id: string,
  change: (trip: Trip, planned: PlannedTrip) => Trip,
): Promise<StoredTrip> {
  return changeTrip(app, id, (planned) => {
    const { stored, plan } = planned;
    refuseWhilePacked(stored);
    return change(keepMenu(stored.trip, plan.menu), planned);
  });
}

/** @throws UserError `Refused` where the trip is packed or finished: its menu is, or was, in the packs */
export function refuseWhilePacked(stored: StoredTrip): void {
  const reason = packedWords(stored);
  if (reason !== undefined) throw new UserError('Refused', reason);
}

/** @returns why the menu stays as it is, and what to do; `undefined` where it may change. */
export function packedWords({ stage, trip }: StoredTrip): string | undefined {
  if (stage === 'packed')
    return say(
      '"{name}" is packed, so its menu stays as it is. Say first, under Afterwards, what came back.',
      { name: trip.name },
    );
  if (stage === 'finished')
    return say(
      '"{name}" is finished, so its menu stays as it was. Duplicate the trip, under Party, to walk it once more.',
      { name: trip.name },
    );
  return undefined;
}
