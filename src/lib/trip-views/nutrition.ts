import type { EaterNutrition } from '../planning/model/nutrition.ts';
import { RANGE_SOURCES, type RangeSource } from '../planning/model/words.ts';

/** The days of one person. */
export type NutritionOf = { readonly eater: string; readonly days: readonly EaterNutrition[] };

export type NutritionView = {
  readonly people: readonly NutritionOf[];
  /** Of the ranges that are shown. */
  readonly sources: readonly RangeSource[];
  /** Whether sodium in sweat is shown. */
  readonly hasSweat: boolean;
};

/** What each person's days bring, sorted for the page. */
export function nutritionView(nutrition: readonly EaterNutrition[]): NutritionView {
  const used = new Set(
    nutrition.flatMap(({ nutrients }) => nutrients.flatMap(({ range }) => (range ? [range.source] : []))),
  );
  return {
    people: [...Map.groupBy(nutrition, ({ eater }) => eater)].map(([eater, days]) => ({ eater, days })),
    sources: RANGE_SOURCES.filter((source) => used.has(source)),
    hasSweat: nutrition.some(({ sweatSodiumMg }) => sweatSodiumMg !== undefined),
  };
}
