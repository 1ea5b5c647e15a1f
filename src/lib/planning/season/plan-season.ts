import { pouchesThere } from '../menu/plan-menu.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { MEAL_KINDS, type MealKind } from '../model/words.ts';
import { dryingLines, dryingNeeds } from '../shortfall/drying-lines.ts';
import {
  planDrying,
  type BatchUnderWay,
  type DryingLine,
  type DryingMeans,
  type DryingPlan,
  type PlannedRun,
} from '../shortfall/plan-drying.ts';

/** A trip that is ahead, with the pouches that are set aside for it. */
export type SeasonTrip = {
  readonly id: string;
  readonly trip: Trip;
  readonly reserved: readonly { readonly code: string; readonly pouches: number }[];
};

/** What one trip takes once all before it have taken theirs. */
export type SeasonLeg = {
  readonly id: string;
  readonly plan: TripPlan;
  /** From the shelf, by code. */
  readonly takes: readonly { readonly code: string; readonly recipe: string; readonly pouches: number }[];
  /** Pouches that its menu lists and that trips before it take, or that are not there. */
  readonly lacks: readonly { readonly code: string; readonly recipe: string; readonly pouches: number }[];
  readonly drying: DryingPlan;
  /** What the loads of the drying plan are for. */
  readonly lines: readonly DryingLine[];
};

export type Season = {
  /** In the order of their first days. */
  readonly legs: readonly SeasonLeg[];
  /** What all together are short of, meal by meal. */
  readonly short: readonly {
    readonly meal: MealKind;
    readonly missingKcal: number;
    readonly missingServings: number;
  }[];
  /** Runs of all dryers, in the order of their days, each with the place of the trip that it is for. */
  readonly runs: readonly { readonly leg: number; readonly run: PlannedRun }[];
  /** What no trip takes. */
  readonly left: Stock;
};

/**
 * Plans all trips that are ahead against one shelf and one kitchen, in the order of their first days: each takes from what those before it leave, and its runs go into
 * the dryers where theirs do not. What is set aside for a trip is its own.
 *
 * @param shelf lots with the pouches that are free, without what is set aside
 * @param planOf plans one trip with the pouches that it may take
 * @example const season = await planSeason(trips, shelf, means, async (trip, stock) => planTrip(trip, stock, settings));
 */
export async function planSeason(
  trips: readonly SeasonTrip[],
  shelf: Stock,
  means: DryingMeans,
  planOf: (trip: Trip, stock: Stock) => Promise<TripPlan>,
): Promise<Season> {
  const inOrder = [...trips].sort(
    (a, b) =>
      compare(a.trip.startDate, b.trip.startDate) || compare(a.trip.name, b.trip.name) || compare(a.id, b.id),
  );
  const legs: SeasonLeg[] = [];
  let free = shelf;
  let { underWay } = means;
  for (const { id, trip, reserved } of inOrder) {
    const stock = withMore(free, reserved);
    const plan = await planOf(trip, stock);
    const recipes = new Map(stock.map(({ code, recipe }) => [code, recipe]));
    const takes = pouchesThere(plan.menu).map((row) => ({ ...row, recipe: recipes.get(row.code) ?? '' }));
    const lines = dryingLines(trip, plan);
    const drying = planDrying({
      ...means,
      underWay,
      others: legs.flatMap((leg) => leg.drying.runs),
      needs: dryingNeeds(lines, trip),
      departure: trip.startDate,
    });
    legs.push({ id, plan, takes, lacks: lacksOf(plan), drying, lines });
    // What is set aside and not taken stays set aside: it is nobody else's.
    free = leftBy(plan, free, reserved);
    underWay = withoutCredited(underWay, drying);
  }
  return { legs, short: shortOf(legs), runs: runsOf(legs), left: free };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

type Pouches = readonly { readonly code: string; readonly pouches: number }[];
const countsOf = (rows: Pouches) => new Map(rows.map(({ code, pouches }) => [code, pouches]));

function withMore(stock: Stock, own: Pouches): Stock {
  const more = countsOf(own);
  return stock.map((lot) => ({ ...lot, pouches: lot.pouches + (more.get(lot.code) ?? 0) }));
}

/**
 * What a plan leaves of a shelf for others.
 *
 * @param stock with the pouches that are free
 * @param own what is set aside for the trip of the plan, besides these
 */
export function leftBy({ menu }: Pick<TripPlan, 'menu'>, stock: Stock, own: Pouches = []): Stock {
  const [taken, reserved] = [countsOf(pouchesThere(menu)), countsOf(own)];
  return stock.map((lot) => {
    const fromShelf = Math.max(0, (taken.get(lot.code) ?? 0) - (reserved.get(lot.code) ?? 0));
    return { ...lot, pouches: Math.max(0, lot.pouches - fromShelf) };
  });
}

/** What a trip finds once others have taken theirs, the earliest first. @param planOf plans one of them */
export function leftByAll(
  trips: readonly Trip[],
  stock: Stock,
  planOf: (trip: Trip, stock: Stock) => TripPlan,
): Stock {
  const inOrder = [...trips].sort((a, b) => compare(a.startDate, b.startDate));
  return inOrder.reduce((left, trip) => leftBy(planOf(trip, left), left), stock);
}

function lacksOf({ notices }: TripPlan): SeasonLeg['lacks'] {
  const lacks = new Map<string, { code: string; recipe: string; pouches: number }>();
  for (const notice of notices) {
    if (notice.code !== 'too-few-pouches' || notice.lot === undefined) continue;
    const { recipe, wanted, free } = notice.params;
    const before = lacks.get(notice.lot)?.pouches ?? 0;
    lacks.set(notice.lot, { code: notice.lot, recipe, pouches: before + wanted - free });
  }
  return [...lacks.values()].sort((a, b) => compare(a.code, b.code));
}

/** Batches under way hold their dryers for all trips; what one of them will give to a trip is not there for the next. */
const withoutCredited = (underWay: readonly BatchUnderWay[], drying: DryingPlan): BatchUnderWay[] =>
  underWay.map((batch) => {
    const shares = drying.underWay.find(({ id }) => id === batch.id)?.shares ?? [];
    const given = shares.reduce((sum, { energyKcal }) => sum + energyKcal, 0);
    return { ...batch, energyKcal: Math.max(0, batch.energyKcal - given) };
  });

function shortOf(legs: readonly SeasonLeg[]): Season['short'] {
  const missing = legs.flatMap(({ plan }) => plan.shortfall.meals);
  return MEAL_KINDS.flatMap((meal) => {
    const rows = missing.filter((row) => row.meal === meal);
    if (rows.length === 0) return [];
    return [
      {
        meal,
        missingKcal: rows.reduce((sum, row) => sum + row.missingKcal, 0),
        missingServings: rows.reduce((sum, row) => sum + row.missingServings, 0),
      },
    ];
  });
}

const runsOf = (legs: readonly SeasonLeg[]): Season['runs'] =>
  legs
    .flatMap(({ drying }, leg) => drying.runs.map((run) => ({ leg, run })))
    .sort(
      (a, b) =>
        compare(a.run.cookOn, b.run.cookOn) ||
        compare(a.run.dryer, b.run.dryer) ||
        compare(a.run.readyOn, b.run.readyOn),
    );
