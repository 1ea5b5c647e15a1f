import { z } from 'zod';
import { sayLater, text, type Text } from '../../texts/say.ts';

/** The meals of a day, in the order in which they are eaten. */
export const MEAL_KINDS = ['breakfast', 'lunch', 'snack', 'dinner', 'drink'] as const;
export const MealKind = z.enum(MEAL_KINDS);
export type MealKind = z.infer<typeof MealKind>;
/** How each meal is called. */
export const MEAL_WORDS: Readonly<Record<MealKind, Text>> = {
  breakfast: text('breakfast'),
  lunch: text('lunch'),
  snack: text('snack'),
  dinner: text('dinner'),
  drink: text('drink'),
};

/** The meals a trip can begin or end with. A snack goes with lunch, a drink with dinner. */
export const MAIN_MEALS = ['breakfast', 'lunch', 'dinner'] as const;
export const MainMeal = z.enum(MAIN_MEALS);
export type MainMeal = z.infer<typeof MainMeal>;

/** What is poured on a serving: boiling, hot (below the boil), cold, or nothing at all. */
export const WATER_KINDS = ['boiling', 'hot', 'cold', 'none'] as const;
export const WaterKind = z.enum(WATER_KINDS);
export type WaterKind = z.infer<typeof WaterKind>;
/** How the water of each kind is called. */
export const WATER_WORDS: Readonly<Record<WaterKind, Text>> = {
  boiling: text('boiling'),
  hot: text('hot'),
  cold: text('cold'),
  none: text('none'),
};

export const FUEL_KINDS = ['canister-gas', 'naphtha', 'kerosene', 'ethanol'] as const;
export const FuelKind = z.enum(FUEL_KINDS);
export type FuelKind = z.infer<typeof FuelKind>;

/** An ISO 8601 calendar date, `2026-11-25`. */
export const CalendarDate = z.iso.date(sayLater('must be a date such as 2026-07-04'));

/** A name that a person typed: trimmed, one line, not empty. */
export const ShortText = z
  .string()
  .trim()
  .min(1, sayLater('must not be empty'))
  .max(120, sayLater('must be at most 120 characters'))
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, sayLater('must be a single line'));
