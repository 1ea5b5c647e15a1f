import type { Food } from '../planning/model/composition.ts';
import { neutralise } from '../shelf-csv/spreadsheet-safe.ts';
import { csvLines } from '../shelf-csv/write-shelf-csv.ts';
import { WRITTEN_COLUMNS, type FoodField } from './food-columns.ts';

/** @returns foods as CSV that `readFoodsCsv` reads back to the same foods: RFC 4180, g and kcal per 100 g, decimal points. */
export function writeFoodsCsv(foods: readonly Food[]): string {
  return csvLines([
    WRITTEN_COLUMNS.map(({ heading }) => heading),
    ...foods.map((food) => WRITTEN_COLUMNS.map(({ field }) => neutralise(cellOf(food, field)))),
  ]);
}

function cellOf(food: Food, field: FoodField): string {
  const values: Partial<Record<FoodField, unknown>> = { ...food, ...food.composition };
  const value = values[field];
  if (Array.isArray(value)) return field === 'allergens' && value.length === 0 ? 'none' : value.join('; ');
  return value === undefined ? '' : String(value);
}
