import { recipeTotals } from '$lib/planning/drying/recipe-totals.ts';
import { batchStage } from '$lib/planning/model/batch.ts';
import type { PageServerLoad } from './$types';

/** Sealed batches that are listed; the older ones are found by their lots. */
const MOST_SEALED = 20;

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const [recipes, batches] = await Promise.all([app.kitchen.recipes.list(), app.kitchen.batches.list()]);
  const lines = batches
    .map(({ id, value }) => ({
      id,
      code: value.code,
      recipe: value.recipe.name,
      cookedOn: value.cookedOn,
      stage: batchStage(value),
      sealedOn: value.sealed?.on,
      lots: value.sealed?.lots ?? [],
      dryer: value.dryer.name,
      hours: value.weighings.at(-1)?.afterH,
    }))
    .sort((a, b) => (a.cookedOn < b.cookedOn ? 1 : a.cookedOn > b.cookedOn ? -1 : a.code < b.code ? -1 : 1));
  const sealed = lines.filter(({ stage }) => stage === 'sealed');
  return {
    recipes: recipes.map(({ id, value }) => {
      const totals = recipeTotals(value);
      return {
        id,
        name: value.name,
        mealKinds: value.mealKinds,
        servings: value.servings,
        servingKcal: totals.energyKcal / value.servings,
        servingCostMinor: totals.unpriced.length === 0 ? totals.costMinor / value.servings : undefined,
        ready: totals.problems.length === 0,
      };
    }),
    underWay: lines.filter(({ stage }) => stage !== 'sealed'),
    sealed: sealed.slice(0, MOST_SEALED),
    sealedCount: sealed.length,
  };
};
