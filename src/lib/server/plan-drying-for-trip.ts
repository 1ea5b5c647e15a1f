import { batchSheet } from '../planning/drying/batch-sheet.ts';
import { batchesBeside, runOf } from '../planning/drying/shared-run.ts';
import type { Run } from '../planning/drying/expect-run.ts';
import { batchStage, type Batch } from '../planning/model/batch.ts';
import type { Kitchen } from '../planning/model/kitchen.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { dryingLines, dryingNeeds } from '../planning/shortfall/drying-lines.ts';
import {
  planDrying,
  type BatchUnderWay,
  type DryingLine,
  type DryingMeans,
  type DryingPlan,
} from '../planning/shortfall/plan-drying.ts';
import { hasLeft } from '../ledger-kinds.ts';
import type { App } from './app.ts';
import type { PagedTrip } from './plan-stored-trip.ts';
import { knownRuns } from './kitchen-repository.ts';
import type { Stored } from './records.ts';

/** A drying plan for a trip, with what its loads and its `toBuy` are for, and how many recipes it could choose from. */
export type TripDrying = {
  readonly drying: DryingPlan;
  readonly lines: readonly DryingLine[];
  readonly recipeCount: number;
};

/** @returns what can be dried for a trip; `undefined` where it lacks nothing and plans to dry nothing, has left or is over */
export async function planDryingIfUseful(
  app: App,
  { stored: { trip, stage }, plan, isOver }: PagedTrip,
): Promise<TripDrying | undefined> {
  const hasWork = plan.shortfall.shopping.length > 0 || plan.coming.some(({ way }) => way === 'dry');
  const isUseful = hasWork && !hasLeft(stage) && !isOver;
  return isUseful ? planDryingForTrip(app, trip, plan) : undefined;
}

/** What can be dried before a trip, first what it plans to dry, then for what it lacks, with recipes, batches and equipment as they are stored now. */
export async function planDryingForTrip(app: App, trip: Trip, plan: TripPlan): Promise<TripDrying> {
  const means = await dryingMeans(app);
  const lines = dryingLines(trip, plan);
  const drying = planDrying({ ...means, needs: dryingNeeds(lines, trip), departure: plan.startDate });
  return { drying, lines, recipeCount: means.recipes.length };
}

/** What there is to dry with, as it is stored now. */
export async function dryingMeans(app: App): Promise<DryingMeans> {
  const [recipes, batches, kitchen] = await Promise.all([
    app.kitchen.recipes.list(),
    app.kitchen.batches.list(),
    app.settings.getKitchen(),
  ]);
  const today = app.today();
  const runs = knownRuns(kitchen, batches, today);
  return {
    recipes: recipes.map(({ id, value }) => ({ id, recipe: value })),
    kitchen,
    runs,
    underWay: batches
      .filter(({ value }) => batchStage(value) !== 'sealed')
      .flatMap((batch, _, open) => underWay(batch, open, kitchen, runs, today) ?? []),
    today,
  };
}

/** @returns `undefined` for a batch that nothing is known of yet: it takes up no tray */
function underWay(
  batch: Stored<Batch>,
  open: readonly Stored<Batch>[],
  kitchen: Kitchen,
  runs: readonly Run[],
  today: string,
): BatchUnderWay | undefined {
  const { id, value } = batch;
  const beside = batchesBeside(batch, open).map((other) => other.value);
  const { totals, load, run, expected, dry, allergens } = batchSheet(value, kitchen, runs, today, beside);
  if (totals.problems.length > 0) return undefined;
  const loaded = batchStage(value) === 'drying';
  return {
    id,
    code: value.code,
    recipe: value.recipe.name,
    dryer: value.dryer.name,
    ...(beside.length > 0 && { run: runOf(batch) }),
    cookedOn: value.cookedOn,
    loaded,
    trays: loaded ? value.trays.length : Math.min(load.traysNeeded, run.freeTrays),
    waterG: expected.waterG,
    hours: expected.run.hours,
    food: {
      mealKinds: value.recipe.mealKinds,
      ...(allergens && { allergens: [...allergens] }),
      diets: [...totals.diets],
    },
    // trays entered too heavy bring no more than was cooked
    energyKcal: Math.min(totals.energyKcal, dry.servingKcal * dry.servings),
  };
}
