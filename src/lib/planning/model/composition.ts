import { z } from 'zod';
import { wrong } from './faults.ts';
import { Allergen, Diet, ShortText } from './kinds.ts';
import { COOKING_CLASSES } from './words.ts';

const per100G = () => z.number(wrong('not-grams')).min(0, wrong('negative')).max(100, wrong('over-whole'));

const milligrams = () =>
  z.number(wrong('not-milligrams')).min(0, wrong('negative')).max(100_000, wrong('over-whole'));

/** What 100 g of a food as bought, ready to weigh, hold. Ash is what is left of the 100 g. */
export const Composition = z.strictObject({
  waterG: per100G().describe('Water, g per 100 g'),
  proteinG: per100G().describe('Protein, g per 100 g'),
  fatG: per100G().describe('Fat, g per 100 g'),
  carbohydrateG: per100G().describe('Available carbohydrate, without fibre, g per 100 g'),
  fibreG: per100G().default(0).describe('Dietary fibre, g per 100 g'),
  alcoholG: per100G().default(0).describe('Alcohol, g per 100 g'),
  sugarsG: per100G()
    .optional()
    .describe('Sugars, within the carbohydrate, g per 100 g; left out: not stated'),
  sodiumMg: milligrams().optional().describe('Sodium, mg per 100 g; left out: not stated'),
  potassiumMg: milligrams().optional().describe('Potassium, mg per 100 g; left out: not stated'),
  energyKcal: z
    .number(wrong('not-kcal'))
    .min(0, wrong('negative'))
    .max(930, wrong('richer-than-fat', { most: 930 }))
    .optional()
    .describe('Energy as the table or label states it, kcal per 100 g; left out: by the factors'),
});
export type Composition = z.infer<typeof Composition>;

export const CookingClass = z.enum(COOKING_CLASSES);
export type CookingClass = z.infer<typeof CookingClass>;

/** A food of a composition table, of a label, or of the user's own list. */
export const Food = z.strictObject({
  name: ShortText.describe('Name, unique in its table'),
  composition: Composition,
  source: ShortText.describe('Where the figures come from'),
  number: z.string().trim().max(20).optional().describe('Number of the food in its source'),
  allergens: z
    .array(Allergen)
    .optional()
    .describe('Allergens it holds; an empty list says none, a missing list says nobody has stated them'),
  diets: z.array(Diet).default([]).describe('Diets it meets by its nature'),
  cookingClass: CookingClass.default('other'),
  gPerMl: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(25, wrong('over', { most: 25, unit: 'g/ml' }))
    .optional()
    .describe('Weight of one millilitre as it is measured in a cup, g'),
  gPerPiece: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(20_000, wrong('over', { most: 20, unit: 'kg' }))
    .optional()
    .describe('Weight of one piece, g'),
});
export type Food = z.infer<typeof Food>;
