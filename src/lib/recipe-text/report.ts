import type { Allergen } from '../planning/model/allergens.ts';
import { ALLERGENS } from '../planning/model/allergens.ts';
import type { Food } from '../planning/model/composition.ts';
import { energyKcalOf } from '../planning/model/energy-factors.ts';
import type { IngredientLine } from './read-line.ts';
import type { RecipeText } from './read-recipe-text.ts';

/** What a recipe comes to, weights in g. */
export type ReportTotals = {
  readonly rawG: number;
  /** As raw, where the text says nothing of it. */
  readonly cookedG: number;
  readonly waterG: number;
  readonly dryG: number;
  readonly energyKcal: number;
  readonly proteinG: number;
  readonly fatG: number;
  /** Without fibre. */
  readonly carbohydrateG: number;
  readonly fibreG: number;
  /** Of the foods that state it. */
  readonly sodiumMg: number;
};

export type RecipeReport = {
  readonly servings: number | null;
  readonly lines: readonly {
    readonly text: string;
    readonly food: {
      readonly source: string;
      readonly number: string | null;
      readonly name: string;
      readonly kcalPer100g: number;
    } | null;
    readonly grams: { readonly value: number; readonly low: number; readonly high: number } | null;
    readonly settled: boolean;
  }[];
  readonly totals: ReportTotals;
  /** The same of one serving; of the whole where the servings are not known. */
  readonly perServing: ReportTotals;
  readonly allergens: {
    readonly stated: readonly Allergen[];
    /** Foods whose allergens nobody has stated, and lines left to settle. */
    readonly open: readonly string[];
  };
};

/** @returns energy of 100 g as the table states it, else by the EU factors, kcal */
export const kcalPer100G = ({ composition }: Food): number =>
  composition.energyKcal ?? energyKcalOf(composition, 'eu');

const tidy = (value: number, digits = 1): number => Number(value.toFixed(digits));

/** @returns whether a line was understood, food and weight */
export const isSettled = (line: IngredientLine): boolean => line.unsettled === undefined;

function totalsOf(lines: readonly IngredientLine[], factor: number): ReportTotals {
  const sum = (of: (food: Food) => number) =>
    lines.reduce(
      (total, { food, grams }) => total + (food && grams ? (grams.value * factor * of(food)) / 100 : 0),
      0,
    );
  const rawG = sum(() => 100);
  const waterG = sum(({ composition }) => composition.waterG);
  return {
    rawG: tidy(rawG),
    cookedG: tidy(rawG),
    waterG: tidy(waterG),
    dryG: tidy(rawG - waterG),
    energyKcal: tidy(sum(kcalPer100G)),
    proteinG: tidy(sum(({ composition }) => composition.proteinG)),
    fatG: tidy(sum(({ composition }) => composition.fatG)),
    carbohydrateG: tidy(sum(({ composition }) => composition.carbohydrateG)),
    fibreG: tidy(sum(({ composition }) => composition.fibreG)),
    sodiumMg: tidy(
      sum(({ composition }) => composition.sodiumMg ?? 0),
      0,
    ),
  };
}

/**
 * What was understood of a recipe, as data: the contract of `npm run recipe`.
 *
 * @param servings how many are wanted; where the text makes another number, all weights are scaled to it
 */
export function reportOf(recipe: RecipeText, servings?: number): RecipeReport {
  const made = servings ?? recipe.servings;
  const factor = servings !== undefined && recipe.servings !== undefined ? servings / recipe.servings : 1;
  const settled = recipe.lines.filter(isSettled);
  const contained = new Set(settled.flatMap(({ food }) => food?.allergens ?? []));
  const open = recipe.lines.flatMap((line) =>
    !isSettled(line) ? [line.text] : line.food?.allergens === undefined ? [line.food?.name ?? line.text] : [],
  );
  return {
    servings: made ?? null,
    lines: recipe.lines.map((line) => {
      const { food, grams } = line;
      const knows = food !== undefined && line.unsettled !== 'food unsure';
      return {
        text: line.text,
        food: knows
          ? {
              source: food.source,
              number: food.number ?? null,
              name: food.name,
              kcalPer100g: tidy(kcalPer100G(food)),
            }
          : null,
        grams:
          grams && knows
            ? {
                value: tidy(grams.value * factor, 2),
                low: tidy(grams.low * factor, 2),
                high: tidy(grams.high * factor, 2),
              }
            : null,
        settled: isSettled(line),
      };
    }),
    totals: totalsOf(settled, factor),
    perServing: totalsOf(settled, factor / (made ?? 1)),
    allergens: {
      stated: ALLERGENS.filter((allergen) => contained.has(allergen)),
      open: [...new Set(open)],
    },
  };
}
