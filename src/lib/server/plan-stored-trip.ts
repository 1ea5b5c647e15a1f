import { keepMenu } from '../planning/menu/edit-menu.ts';
import { withPlanned } from '../planning/model/planned-lot.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { App } from './app.ts';
import { asker } from './asker.ts';
import { digestWith } from './digest.ts';
import { UserError } from './errors.ts';
import { toHttpError } from './to-http-error.ts';
import type { ChangedTrip, StoredTrip } from './trip-repository.ts';
import { planForReaders, tripForReaders } from '../application/for-readers.ts';
import { language, say } from '../texts/say.ts';

/** A stored trip with its plan, and what the plan was made from. */
export type PlannedTrip = {
  readonly stored: StoredTrip;
  /** The shelf, as far as it is free for the trip. */
  readonly stock: Stock;
  /** The same with what the trip plans to buy or to dry: every lot that its plan can name. */
  readonly lots: Stock;
  /** Without what this trip itself taught: a trip is not measured by what came of it. */
  readonly settings: Settings;
  readonly plan: TripPlan;
};

/** @throws UserError `NotFound` */
export async function planStoredTrip(app: App, id: string): Promise<PlannedTrip> {
  const [stored, stock, household] = await Promise.all([
    app.trips.getTrip(id),
    app.shelf.stockFor(id),
    app.settings.get(),
  ]);
  if (!stored)
    throw new UserError('NotFound', say('Trip not found. It may have been deleted; see the list of trips.'));
  const settings = { ...household, learned: household.learned.filter((seen) => seen.tripId !== id) };
  const lots = withPlanned(stock, stored.trip.planned);
  return { stored, stock, lots, settings, plan: await planKept(app, stored.trip, stock, settings) };
}

/** A trip for a page, which may have left or gone by. */
export type PagedTrip = PlannedTrip & { readonly isOver: boolean };
const pagedFor = new WeakMap<object, Promise<PagedTrip>>();

/**
 * The trip that a page shows, planned once for all the parts of it that load at the same time, without what is not for readers where a
 * reader asks. For loading only: what a form changes in the same request has to be planned before.
 *
 * @param locals of the request, which shows one trip
 * @throws HttpError 404
 */
export function plannedForPage(
  locals: { readonly app: App; readonly readsOnly: boolean },
  id: string,
): Promise<PagedTrip> {
  const planned = pagedFor.get(locals) ?? pageTrip(locals, id).catch(toHttpError);
  pagedFor.set(locals, planned);
  return planned;
}

async function pageTrip({ app, readsOnly }: Parameters<typeof plannedForPage>[0], id: string) {
  const { stored, plan, ...from } = await planStoredTrip(app, id);
  const isOver = stored.stage === 'finished' || plan.endDate < app.today();
  return readsOnly
    ? {
        ...from,
        stored: { ...stored, trip: tripForReaders(stored.trip) },
        plan: planForReaders(plan),
        isOver,
      }
    : { ...from, stored, plan, isOver };
}

/** The plans made last, by all that they were made from. One is ended when all have gone who asked for it. */
const madeLast = new Map<
  string,
  { readonly plan: Promise<TripPlan>; readonly end: AbortController; waiting: number }
>();
const MOST_KEPT = 16;

/**
 * What `planTrip` makes, at once where it was made lately: a page of a trip comes with the seven others that a browser keeps, and all show the same plan. What is
 * large is planned in a process of its own.
 */
export async function planKept(
  { apart }: Pick<App, 'apart'>,
  trip: Trip,
  stock: Stock,
  settings: Settings,
): Promise<TripPlan> {
  // Sentences of a plan are in the language around.
  const key = await digestWith([language(), trip, settings], stock);
  const begin = () => {
    const end = new AbortController();
    const plan = apart.do({ kind: 'plan', trip, stock, settings }, { signal: end.signal });
    plan.catch(() => madeLast.get(key)?.plan === plan && madeLast.delete(key));
    return { plan, end, waiting: 0 };
  };
  const made = madeLast.get(key) ?? begin();
  madeLast.delete(key);
  madeLast.set(key, made);
  for (const oldest of madeLast.keys()) if (madeLast.size > MOST_KEPT) madeLast.delete(oldest);
  made.waiting += 1;
  const { signal } = asker();
  const leave = () => {
    made.waiting -= 1;
    if (made.waiting > 0) return;
    if (madeLast.get(key) === made) madeLast.delete(key);
    made.end.abort(signal?.reason);
  };
  if (signal?.aborted) leave();
  signal?.addEventListener('abort', leave, { once: true });
  return made.plan.finally(() => signal?.removeEventListener('abort', leave));
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
  change: (planned: PlannedTrip) => Trip | Promise<Trip>,
): Promise<ChangedTrip> {
  for (let triesLeft = 3; ; triesLeft -= 1) {
    const planned = await planStoredTrip(app, id);
    try {
      return await app.trips.updateTrip(id, await change(planned), planned.stored.version);
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
): Promise<ChangedTrip> {
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
      '"{name}" is packed, so its menu cannot change. First record what came back under After the trip.',
      { name: trip.name },
    );
  if (stage === 'finished')
    return say('"{name}" is finished, so its menu cannot change. To do it again, duplicate it under Group.', {
      name: trip.name,
    });
  return undefined;
}
