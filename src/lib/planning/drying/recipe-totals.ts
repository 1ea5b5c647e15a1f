import type { Allergen } from '../model/allergens.ts';
import { ALLERGENS } from '../model/allergens.ts';
import { compositionDoubts, type CompositionDoubt } from '../model/composition-doubts.ts';
import { DIETS, dietsMet, type Diet } from '../model/diets.ts';
import { energyKcalOf } from '../model/energy-factors.ts';
import type { FatClass } from '../model/kitchen.ts';
import { FAT_CLASSES } from '../model/words.ts';
import { ingredientCost, ingredientG, isTapWater, type Ingredient, type Recipe } from '../model/recipe.ts';

/** Grams of what a food is made of. All but the water is dry matter. */
export type Parts = {
  readonly waterG: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly fibreG: number;
  readonly ashG: number;
};

/** What is known of a dish only where all of its ingredients state it: sugars within the carbohydrate, g, and sodium, mg. */
export type Stated = { readonly sugarsG: number | undefined; readonly sodiumMg: number | undefined };

/** What keeps a dish from being calculated. Weights are of one cooking. */
export type RecipeProblem =
  | { readonly field: 'ingredients'; readonly code: 'no-ingredients' | 'no-dry-matter' }
  | { readonly field: 'fatDrainedG'; readonly code: 'more-fat-drained-than-there-is'; readonly fatG: number }
  | {
      readonly field: 'cookingYield' | 'cookedG';
      readonly code: 'lighter-than-dry-matter';
      readonly cookedG: number;
      readonly solidsG: number;
    };

export type RecipeTotals = {
  /** Ingredients as bought, g. */
  readonly boughtG: number;
  /** What goes into the pot, g. */
  readonly trimmedG: number;
  /** The cooked dish, g. */
  readonly cookedG: number;
  readonly parts: Parts;
  readonly stated: Stated;
  readonly solidsG: number;
  /** Water over all, share. */
  readonly moisture: number;
  readonly energyKcal: number;
  readonly fatClass: FatClass;
  /** Known costs, minor units, not rounded. */
  readonly costMinor: number;
  /** Ingredients without a price. */
  readonly unpriced: readonly string[];
  readonly allergens: readonly Allergen[];
  /** Ingredients whose allergens nobody has stated. */
  readonly allergensUnstated: readonly string[];
  /** Diets that every ingredient meets. */
  readonly diets: readonly Diet[];
  /** Rows of composition that look unsound. */
  readonly doubts: readonly { readonly food: string; readonly doubt: CompositionDoubt }[];
  /** What has to be corrected before the dish can be calculated with. */
  readonly problems: readonly RecipeProblem[];
};

/** Sums of weights differ by so much, share. */
const ROUNDING = 1e-9;
/** Fat in the dry matter up to which food counts as lean, and as middling (common practice). */
export const FAT_LIMITS = [0.1, 0.25] as const;

export function fatClassOf({ fatG }: Pick<Parts, 'fatG'>, solidsG: number): FatClass {
  const fatShare = solidsG > 0 ? fatG / solidsG : 0;
  return FAT_CLASSES[FAT_LIMITS.filter((limit) => fatShare > limit).length] ?? 'fatty';
}

/** Each name once, though a food may stand in several lines. */
const namesOf = (ingredients: readonly Ingredient[]): string[] => [
  ...new Set(ingredients.map(({ food }) => food.name)),
];

/** @returns all parts times a factor. */
export function scaleParts(parts: Parts, factor: number): Parts {
  return {
    waterG: parts.waterG * factor,
    proteinG: parts.proteinG * factor,
    fatG: parts.fatG * factor,
    carbohydrateG: parts.carbohydrateG * factor,
    fibreG: parts.fibreG * factor,
    ashG: parts.ashG * factor,
  };
}

/** @returns both times a factor; what is not known stays so. */
export const scaleStated = ({ sugarsG, sodiumMg }: Stated, factor: number): Stated => ({
  sugarsG: sugarsG === undefined ? undefined : sugarsG * factor,
  sodiumMg: sodiumMg === undefined ? undefined : sodiumMg * factor,
});

/**
 * What a recipe comes to: weights, parts, energy, cost, allergens.
 *
 * Cooking takes water up or away and pours fat off; all other dry matter stays in the pot. Alcohol is taken as gone with the water. Energy is that of the
 * parts by the recipe's factors (EU: Regulation (EU) 1169/2011, Annex XIV; Atwater: 21 CFR 101.9(c)(1)).
 *
 * @param timesCooked how many times the amounts
 * @param weighedG the cooked dish as it was weighed, g; left out: by the cooking yield
 */
export function recipeTotals(recipe: Recipe, timesCooked = 1, weighedG?: number): RecipeTotals {
  const { ingredients } = recipe;
  const sum = (of: (ingredient: Ingredient) => number) =>
    timesCooked * ingredients.reduce((total, ingredient) => total + of(ingredient), 0);
  const trimmedG = (ingredient: Ingredient) => ingredientG(ingredient) * ingredient.trimmedShare;
  const part = (of: (composition: Ingredient['food']['composition']) => number) =>
    sum((ingredient) => (trimmedG(ingredient) * of(ingredient.food.composition)) / 100);

  /** Water from the tap has no label. A line that nobody has understood may hold anything. */
  const known = (of: 'sugarsG' | 'sodiumMg') =>
    (recipe.toSettle ?? []).length === 0 &&
    ingredients.every((line) => isTapWater(line) || line.food.composition[of] !== undefined)
      ? part((composition) => composition[of] ?? 0)
      : undefined;
  const potG = sum(trimmedG);
  const drainedG = recipe.fatDrainedG * timesCooked;
  const fatBeforeG = part(({ fatG }) => fatG);
  const solids = {
    proteinG: part(({ proteinG }) => proteinG),
    fatG: Math.max(0, fatBeforeG - drainedG),
    carbohydrateG: part(({ carbohydrateG }) => carbohydrateG),
    fibreG: part(({ fibreG }) => fibreG),
    ashG: part((row) =>
      Math.max(0, 100 - row.waterG - row.proteinG - row.fatG - row.carbohydrateG - row.fibreG - row.alcoholG),
    ),
  };
  const solidsG = Object.values(solids).reduce((total, grams) => total + grams, 0);
  const cookedG = weighedG ?? Math.max(0, potG - drainedG) * recipe.cookingYield;

  const problems: RecipeProblem[] = [];
  if (ingredients.length === 0) problems.push({ field: 'ingredients', code: 'no-ingredients' });
  else if (solidsG <= 0) problems.push({ field: 'ingredients', code: 'no-dry-matter' });
  if (drainedG > fatBeforeG + 1e-9)
    problems.push({
      field: 'fatDrainedG',
      code: 'more-fat-drained-than-there-is',
      fatG: fatBeforeG / timesCooked,
    });
  if (ingredients.length > 0 && cookedG < solidsG * (1 - ROUNDING))
    problems.push({
      field: weighedG === undefined ? 'cookingYield' : 'cookedG',
      code: 'lighter-than-dry-matter',
      cookedG,
      solidsG,
    });

  const contained = new Set(ingredients.flatMap(({ food }) => food.allergens ?? []));
  return {
    boughtG: sum(ingredientG),
    trimmedG: potG,
    cookedG,
    parts: { waterG: Math.max(0, cookedG - solidsG), ...solids },
    stated: { sugarsG: known('sugarsG'), sodiumMg: known('sodiumMg') },
    solidsG,
    moisture: cookedG > 0 ? Math.max(0, 1 - solidsG / cookedG) : 0,
    energyKcal: energyKcalOf({ ...solids, alcoholG: 0 }, recipe.energyFactors),
    fatClass: fatClassOf(solids, solidsG),
    costMinor: sum((ingredient) => ingredientCost(ingredient) ?? 0),
    unpriced: namesOf(ingredients.filter((line) => ingredientCost(line) === undefined && !isTapWater(line))),
    allergens: ALLERGENS.filter((allergen) => contained.has(allergen)),
    // A line that nobody has understood may contain anything.
    allergensUnstated: [
      ...namesOf(ingredients.filter(({ food }) => food.allergens === undefined)),
      ...(recipe.toSettle ?? []),
    ],
    diets:
      ingredients.length > 0 && (recipe.toSettle ?? []).length === 0
        ? DIETS.filter((diet) => ingredients.every(({ food }) => dietsMet(food.diets).has(diet)))
        : [],
    // A row with its number is as the published table has it, whose energy is by factors of its own.
    doubts: ingredients.flatMap(({ food }) =>
      food.number === undefined
        ? compositionDoubts(food.composition).map((doubt) => ({ food: food.name, doubt }))
        : [],
    ),
    problems,
  };
}
