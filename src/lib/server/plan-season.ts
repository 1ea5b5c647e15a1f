import { addDays } from '../planning/model/calendar.ts';
import { planSeason, type Season } from '../planning/season/plan-season.ts';
import type { Stage } from '../ledger-kinds.ts';
import type { App } from './app.ts';
import { dryingMeans } from './plan-drying-for-trip.ts';
import { planKept } from './plan-stored-trip.ts';

/** So many trips are planned at most, the next ones: one after the other, each from what those before it leave. */
const MOST_PLANNED = 12;

export type StoredSeason = {
  readonly season: Season;
  /** By id, of the trips that are planned. */
  readonly stages: ReadonlyMap<string, Stage>;
  /** How many later trips are left out. */
  readonly leftOut: number;
  readonly recipeCount: number;
};

/** All trips that are ahead and have not left, against what is on the shelf and in the kitchen now. */
export async function planStoredSeason(app: App): Promise<StoredSeason> {
  const [listed, shelf, settings, means] = await Promise.all([
    app.trips.listTrips(),
    app.shelf.stockFor(undefined),
    app.settings.get(),
    dryingMeans(app),
  ]);
  const ahead = listed
    .filter(
      ({ trip, stage }) =>
        (stage === 'open' || stage === 'set aside') &&
        addDays(trip.startDate, trip.dayCount - 1) >= app.today(),
    )
    .sort((a, b) => (a.trip.startDate < b.trip.startDate ? -1 : 1));
  const planned = await Promise.all(
    ahead.slice(0, MOST_PLANNED).map(async ({ id, trip }) => {
      const reserved = (await app.trips.getTrip(id))?.reserved ?? [];
      return { id, trip, reserved };
    }),
  );
  const season = await planSeason(planned, shelf, means, (trip, stock) =>
    planKept(app, trip, stock, settings),
  );
  return {
    season,
    stages: new Map(ahead.map(({ id, stage }) => [id, stage])),
    leftOut: Math.max(0, ahead.length - MOST_PLANNED),
    recipeCount: means.recipes.length,
  };
}
