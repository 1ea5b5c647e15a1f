import { dryWeightG } from '../planning/drying/mass-balance.ts';
import {
  recipeTotals,
  scaleParts,
  scaleStated,
  type Parts,
  type RecipeTotals,
  type Stated,
} from '../planning/drying/recipe-totals.ts';
import { waterShareOf, type WaterShare } from '../planning/drying/rehydration.ts';
import type { Kitchen, Process } from '../planning/model/kitchen.ts';
import { ingredientCost, ingredientG, type Recipe } from '../planning/model/recipe.ts';
import type { NoticeSeverity } from '../planning/model/words.ts';
import type { UnitSystem } from '../presentation/show.ts';
import { fatText, recipeProblemText } from '../presentation/batch-words.ts';
import { compositionDoubtText } from '../presentation/composition-words.ts';
import { say } from '../texts/say.ts';
import { scaledAmount } from './batch.ts';

/** One column of the table of what a recipe comes to. */
export type RecipeColumn = {
  readonly heading: string;
  /** Whether it is of 100 g, as labels are. */
  readonly isPer100G: boolean;
  readonly weightG: number;
  readonly parts: Parts;
  readonly stated: Stated;
  readonly energyKcal: number;
  readonly costMinor: number;
};

export type IngredientLine = {
  readonly food: string;
  readonly source: string;
  /** As it was entered. */
  readonly stated: string;
  /** As bought, g. */
  readonly boughtG: number;
  readonly costMinor: number | undefined;
};

export type RecipeView = {
  readonly totals: RecipeTotals;
  /** What keeps it from being calculated with, and what to look at. */
  readonly notices: readonly { readonly severity: NoticeSeverity; readonly text: string }[];
  /** One cooking, a serving, 100 g as cooked, 100 g dried. */
  readonly columns: readonly RecipeColumn[];
  readonly ingredients: readonly IngredientLine[];
  readonly water: WaterShare;
  readonly process: Process;
};

/**
 * A recipe sorted for its page.
 *
 * @param process the way of drying whose residual moisture and water stand for the dry figures
 * @param units those of the reader
 */
export function recipeView(
  recipe: Recipe,
  kitchen: Kitchen,
  process: Process,
  units: UnitSystem,
): RecipeView {
  const totals = recipeTotals(recipe);
  const figures = kitchen.processes[process];
  const column = (heading: string, weightG: number, share: number, isPer100G = false): RecipeColumn => ({
    heading,
    isPer100G,
    weightG,
    parts: scaleParts(totals.parts, share),
    stated: scaleStated(totals.stated, share),
    energyKcal: totals.energyKcal * share,
    costMinor: totals.costMinor * share,
  });
  const dryG = dryWeightG(totals.cookedG, totals.moisture, figures.residualShare);
  const dried = column(say('100 g dried'), 100, dryG > 0 ? 100 / dryG : 0, true);
  return {
    totals,
    notices: noticesOf(totals, units),
    columns: [
      column(say('one cooking'), totals.cookedG, 1),
      column(say('a serving'), totals.cookedG / recipe.servings, 1 / recipe.servings),
      column(say('100 g cooked'), 100, totals.cookedG > 0 ? 100 / totals.cookedG : 0, true),
      { ...dried, parts: { ...dried.parts, waterG: dryG > 0 ? 100 * figures.residualShare : 0 } },
    ],
    ingredients: recipe.ingredients.map((ingredient) => ({
      food: ingredient.food.name,
      source:
        ingredient.food.number === undefined
          ? ingredient.food.source
          : `${ingredient.food.source}, ${ingredient.food.number}`,
      boughtG: ingredientG(ingredient),
      costMinor: ingredientCost(ingredient),
      stated: scaledAmount(ingredient, 1),
    })),
    water: waterShareOf(recipe, figures),
    process,
  };
}

function noticesOf(totals: RecipeTotals, units: UnitSystem): RecipeView['notices'] {
  const { fatClass, parts, solidsG } = totals;
  return [
    ...totals.problems.map((problem) => ({
      severity: 'attention' as const,
      text: recipeProblemText(problem, units),
    })),
    ...(fatClass === 'fatty' && solidsG > 0
      ? [{ severity: 'caution' as const, text: fatText({ share: parts.fatG / solidsG }) }]
      : []),
    ...totals.doubts.map(({ food, doubt }) => ({
      severity: 'check' as const,
      text: `${food}: ${compositionDoubtText(doubt)}.`,
    })),
  ];
}
