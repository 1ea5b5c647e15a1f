import { z } from 'zod';
import { ALLERGENS } from './allergens.ts';
import { DIETS } from './diets.ts';
import { wrong } from './faults.ts';
import {
  COOK_AFTER,
  DAY_KINDS,
  FUEL_KINDS,
  LOT_KINDS,
  MAIN_MEALS,
  MEAL_KINDS,
  MEAL_STOPS,
  PORTION_SIZES,
  SERVING_STYLES,
  TASTES,
  WATER_KINDS,
} from './words.ts';

/* Schemas of the codes and of single values; the codes and their words are beside them, without zod, for pages that only show them. */

export const MealKind = z.enum(MEAL_KINDS);
export const MainMeal = z.enum(MAIN_MEALS);
export const WaterKind = z.enum(WATER_KINDS);
export const FuelKind = z.enum(FUEL_KINDS);
export const LotKind = z.enum(LOT_KINDS);
export const CookAfter = z.enum(COOK_AFTER);
export const ServingStyle = z.enum(SERVING_STYLES);
export const DayKind = z.enum(DAY_KINDS);
export const MealStop = z.enum(MEAL_STOPS);
export const PortionSize = z.enum(PORTION_SIZES);
export const Taste = z.enum(TASTES);
export const Allergen = z.enum(ALLERGENS);
export const Diet = z.enum(DIETS);

/** An ISO 8601 calendar date, `2026-11-25`. */
export const CalendarDate = z.iso.date(wrong('not-a-date'));

/** A name that a person typed: trimmed, one line, not empty. */
export const ShortText = z
  .string()
  .trim()
  .min(1, wrong('empty'))
  .max(120, wrong('too-long', { most: 120 }))
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, wrong('not-one-line'));
