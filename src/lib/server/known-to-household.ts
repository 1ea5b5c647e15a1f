import { dishName, type KnownDish, type KnownToHousehold } from '../planning/model/complete-lot.ts';
import type { Kitchen } from '../planning/model/kitchen.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import type { Recipe } from '../planning/model/recipe.ts';
import { statedOf } from '../planning/model/stated-lot.ts';
import { dryWeightG } from '../planning/drying/mass-balance.ts';
import { recipeTotals } from '../planning/drying/recipe-totals.ts';
import { waterShareOf, waterToAddMl } from '../planning/drying/rehydration.ts';
import type { App } from './app.ts';

/** What lots are estimated from: the recipes and the kitchen of the household, and what was said of the lots on its shelf. */
export async function knownToHousehold(
  { kitchen: kept, settings, today }: Pick<App, 'kitchen' | 'settings' | 'today'>,
  lots: Iterable<PouchLot>,
): Promise<KnownToHousehold> {
  const [stored, kitchen] = await Promise.all([kept.recipes.list(), settings.getKitchen()]);
  // Which dryer a pouch came from is not said: what warm air may have dried keeps less long.
  const isFreezeDried =
    kitchen.dryers.length > 0 && kitchen.dryers.every((dryer) => dryer.process === 'freeze-dried');
  const process = isFreezeDried ? 'freeze-dried' : 'dehydrated';
  const recipes = stored.flatMap(({ value }) => {
    const dish = knownDish(value, kitchen, process);
    return dish ? [[dishName(value.name), dish] as const] : [];
  });
  return {
    recipes: new Map(recipes),
    lots: Map.groupBy(Iterator.from(lots).map(statedOf), ({ recipe }) => dishName(recipe)),
    process,
    storage: kitchen.storage,
    today: today(),
  };
}

/** A serving of a recipe as it would come out of the dryer; `undefined` where the recipe does not come to a dish yet. */
function knownDish(
  recipe: Recipe,
  kitchen: Kitchen,
  process: keyof Kitchen['processes'],
): KnownDish | undefined {
  const totals = recipeTotals(recipe);
  if (totals.problems.length > 0 || totals.energyKcal <= 0) return undefined;
  const figures = kitchen.processes[process];
  const dryG = dryWeightG(totals.cookedG, totals.moisture, figures.residualShare);
  return {
    dryWeightG: dryG / recipe.servings,
    energyKcal: totals.energyKcal / recipe.servings,
    waterMl:
      recipe.waterKind === 'none'
        ? 0
        : waterToAddMl(totals.cookedG - dryG, waterShareOf(recipe, figures).share) / recipe.servings,
    waterKind: recipe.waterKind,
    steepMin: recipe.steepMin,
    mealKinds: recipe.mealKinds,
  };
}
