import type { Season, SeasonLeg } from '../planning/season/plan-season.ts';
import type { MealKind } from '../planning/model/words.ts';
import type { PlannedRun } from '../planning/shortfall/plan-drying.ts';

/** A trip of the season as its page shows it. */
export type SeasonRow = {
  readonly id: string;
  readonly name: string;
  readonly startDate: string;
  readonly endDate: string;
  /** Pouches and servings from the shelf. */
  readonly pouches: number;
  readonly toBuy: number;
  readonly toDry: number;
  readonly missingKcal: number;
  readonly missingServings: number;
  /** Energy that the dryers can still bring in time, kcal. */
  readonly dryingKcal: number;
  readonly dishes: readonly { readonly recipe: string; readonly pouches: number }[];
  readonly lacks: SeasonLeg['lacks'];
};

export type SeasonView = {
  readonly rows: readonly SeasonRow[];
  readonly total: Pick<
    SeasonRow,
    'pouches' | 'toBuy' | 'toDry' | 'missingKcal' | 'missingServings' | 'dryingKcal'
  >;
  readonly short: readonly {
    readonly meal: MealKind;
    readonly missingKcal: number;
    readonly missingServings: number;
  }[];
  readonly runs: readonly {
    readonly trip: string;
    readonly run: Pick<
      PlannedRun,
      'dryer' | 'cookOn' | 'readyOn' | 'hours' | 'trays' | 'trayCount' | 'joins'
    >;
    readonly loads: readonly string[];
  }[];
  readonly left: { readonly lots: number; readonly pouches: number; readonly servings: number };
};

/** @returns all trips of a season side by side, and what they come to together */
export function seasonView({ legs, short, runs, left }: Season): SeasonView {
  const rows = legs.map(rowOf);
  const total = (of: (row: SeasonRow) => number) => rows.reduce((sum, row) => sum + of(row), 0);
  const there = left.filter(({ pouches }) => pouches > 0);
  return {
    rows,
    total: {
      pouches: total(({ pouches }) => pouches),
      toBuy: total(({ toBuy }) => toBuy),
      toDry: total(({ toDry }) => toDry),
      missingKcal: total(({ missingKcal }) => missingKcal),
      missingServings: total(({ missingServings }) => missingServings),
      dryingKcal: total(({ dryingKcal }) => dryingKcal),
    },
    short,
    runs: runs.map(({ leg, run: { loads, dryer, cookOn, readyOn, hours, trays, trayCount, joins } }) => ({
      trip: legs[leg]?.plan.tripName ?? '',
      run: { dryer, cookOn, readyOn, hours, trays, trayCount, joins },
      loads: loads.map(({ recipe }) => recipe),
    })),
    left: {
      lots: there.length,
      pouches: there.reduce((sum, { pouches }) => sum + pouches, 0),
      servings: there.reduce((sum, { pouches, servingsPerPouch }) => sum + pouches * servingsPerPouch, 0),
    },
  };
}

function rowOf({ id, plan, takes, lacks, drying }: SeasonLeg): SeasonRow {
  const byRecipe = Map.groupBy(takes, ({ recipe }) => recipe);
  const pouchesOf = (rows: readonly { readonly pouches: number }[]) =>
    rows.reduce((sum, { pouches }) => sum + pouches, 0);
  const coming = (way: 'buy' | 'dry') =>
    pouchesOf(plan.coming.filter((lot) => lot.way === way).map(({ needed }) => ({ pouches: needed })));
  const shares = [...drying.runs.flatMap(({ loads }) => loads), ...drying.underWay].flatMap(
    (load) => load.shares,
  );
  return {
    id,
    name: plan.tripName,
    startDate: plan.startDate,
    endDate: plan.endDate,
    pouches: pouchesOf(takes),
    toBuy: coming('buy'),
    toDry: coming('dry'),
    missingKcal: plan.shortfall.missingKcal,
    missingServings: plan.shortfall.missingServings,
    dryingKcal: shares.reduce((sum, { energyKcal }) => sum + energyKcal, 0),
    dishes: [...byRecipe]
      .map(([recipe, rows]) => ({ recipe, pouches: pouchesOf(rows) }))
      .sort((a, b) => (a.recipe < b.recipe ? -1 : 1)),
    lacks,
  };
}
