import { matchFood, searchFoods } from '$lib/foods/find-food.ts';
import type { Food } from '$lib/planning/model/composition.ts';
import type { Ingredient } from '$lib/planning/model/recipe.ts';
import { looksLikeJsonLd, readJsonLd } from '$lib/recipe-text/json-ld.ts';
import { readLine, type IngredientLine, type Unsettled } from '$lib/recipe-text/read-line.ts';
import { readRecipeText, type RecipeText } from '$lib/recipe-text/read-recipe-text.ts';
import type { Grams } from '$lib/recipe-text/weigh.ts';

/** What a line of a pasted recipe was taken for, as the page shows it. */
export type PastedLine = {
  readonly text: string;
  readonly food: string | undefined;
  readonly foods: readonly string[];
  readonly grams: Grams | undefined;
  /** What was corrected by hand. */
  readonly chosenFood: string;
  readonly typedGrams: string;
  readonly unsettled: Unsettled | undefined;
};

/** Fields of one line, as they were sent. */
export type LineFields = { readonly text: string; readonly food: string; readonly grams: string };

/** Choices offered for a line. */
const MOST_CHOICES = 8;

/** @returns the recipe of a pasted text, of JSON-LD, or of a saved page */
export function readPasted(pasted: string, own: readonly Food[], servings?: number): RecipeText | undefined {
  return looksLikeJsonLd(pasted) ? readJsonLd(pasted, own) : readRecipeText(pasted, own, servings);
}

/** Foods are looked for by so many words of a line. */
const MOST_WORDS = 8;

function choicesFor(line: IngredientLine, foods: readonly Food[]): string[] {
  const words = line.foodText.split(/[\s,()]+/).filter((word) => word.length > 2);
  const found = [
    ...(line.food ? [line.food] : []),
    ...searchFoods(foods, line.foodText, MOST_CHOICES),
    ...words.slice(0, MOST_WORDS).flatMap((word) => searchFoods(foods, word, 3)),
  ];
  return [...new Set(found.map(({ name }) => name))].slice(0, MOST_CHOICES);
}

/** A line with what was corrected by hand: another food, other grams. */
export function corrected(
  { text: written, food: chosen, grams: typed }: LineFields,
  foods: readonly Food[],
  own: readonly Food[],
  servings: number | undefined,
): IngredientLine {
  const line = readLine(written, own, servings);
  const food =
    chosen === '' ? undefined : (foods.find(({ name }) => name === chosen) ?? matchFood(chosen, own)?.food);
  const number = Number(typed.trim().replace(',', '.'));
  const grams = typed.trim() !== '' && number > 0 ? { value: number, low: number, high: number } : undefined;
  if (!food && !grams) return line;
  const { unsettled, ...rest } = line;
  const next = { ...rest, ...(food && { food }), ...(grams && { grams }) };
  const isUnsure = !food && (unsettled === 'food unknown' || unsettled === 'food unsure');
  if (isUnsure) return { ...next, unsettled };
  return next.grams ? next : { ...next, unsettled: unsettled === 'weight unknown' ? unsettled : 'no amount' };
}

/** @returns a line as the page shows it */
export function pastedLine(line: IngredientLine, fields: LineFields, foods: readonly Food[]): PastedLine {
  return {
    text: fields.text,
    food: line.food?.name,
    foods: choicesFor(line, foods),
    grams: line.grams,
    chosenFood: fields.food,
    typedGrams: fields.grams,
    unsettled: line.unsettled,
  };
}

/** Less than this counts as a trace: an amount of a recipe has to be more than nothing, g. */
const LEAST_G = 0.01;

/**
 * The ingredients of lines that are settled, and what is left of the others.
 *
 * @param factor by which weights are scaled
 */
export function ingredientsOf(
  lines: readonly IngredientLine[],
  factor = 1,
): { ingredients: Ingredient[]; toSettle: string[] } {
  const ingredients: Ingredient[] = [];
  const toSettle: string[] = [];
  for (const { text: written, food, grams, unsettled } of lines) {
    const line = written.slice(0, 300);
    if (!food || !grams || unsettled) toSettle.push(line);
    else
      ingredients.push({
        food,
        quantity: { amount: Number(Math.max(LEAST_G, grams.value * factor).toPrecision(6)), unit: 'g' },
        trimmedShare: 1,
        text: line,
      });
  }
  return { ingredients, toSettle };
}

export const SCALES = ['servings', 'litres', 'trays'] as const;
export type Scale = (typeof SCALES)[number];

/**
 * By how much a recipe is scaled to a number of servings, litres of the cooked dish, or full trays.
 *
 * @param gPerMl weight of one ml of the dish
 * @param trayG food that a tray takes, g
 * @returns 1 where nothing can be said
 */
export function scaleFactor(
  lines: readonly IngredientLine[],
  to: { readonly scale: Scale; readonly amount: number | undefined },
  { servings, gPerMl, trayG }: { servings: number; gPerMl: number; trayG: number },
): number {
  const { scale, amount } = to;
  if (amount === undefined || !(amount > 0)) return 1;
  if (scale === 'servings') return amount / servings;
  const rawG = lines.reduce((sum, { grams, unsettled }) => sum + (unsettled ? 0 : (grams?.value ?? 0)), 0);
  if (rawG <= 0) return 1;
  return (scale === 'litres' ? amount * 1000 * gPerMl : amount * trayG) / rawG;
}
