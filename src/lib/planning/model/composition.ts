import { z } from 'zod';
import { say, sayLater, text, type Text } from '../../texts/say.ts';
import { Allergen, Diet, ShortText } from './kinds.ts';
import { COOKING_CLASSES } from './words.ts';

const per100G = (what: Text) =>
  z
    .number({ error: () => say('{what} must be a number of grams', { what: say(what) }) })
    .min(0, { error: () => say('{what} must not be negative', { what: say(what) }) })
    .max(100, { error: () => say('{what} must be at most 100 g in 100 g', { what: say(what) }) });

const milligrams = (what: Text) =>
  z
    .number({ error: () => say('{what} must be a number of milligrams', { what: say(what) }) })
    .min(0, { error: () => say('{what} must not be negative', { what: say(what) }) })
    .max(100_000, { error: () => say('{what} must be at most 100 g in 100 g', { what: say(what) }) });

/** What 100 g of a food as bought, ready to weigh, hold. Ash is what is left of the 100 g. */
export const Composition = z.strictObject({
  waterG: per100G(text('water')).describe('Water, g per 100 g'),
  proteinG: per100G(text('protein')).describe('Protein, g per 100 g'),
  fatG: per100G(text('fat')).describe('Fat, g per 100 g'),
  carbohydrateG: per100G(text('carbohydrate')).describe('Available carbohydrate, without fibre, g per 100 g'),
  fibreG: per100G(text('fibre')).default(0).describe('Dietary fibre, g per 100 g'),
  alcoholG: per100G(text('alcohol')).default(0).describe('Alcohol, g per 100 g'),
  sugarsG: per100G(text('sugars'))
    .optional()
    .describe('Sugars, within the carbohydrate, g per 100 g; left out: not stated'),
  sodiumMg: milligrams(text('sodium')).optional().describe('Sodium, mg per 100 g; left out: not stated'),
  potassiumMg: milligrams(text('potassium'))
    .optional()
    .describe('Potassium, mg per 100 g; left out: not stated'),
  energyKcal: z
    .number(sayLater('energy must be a number of kcal'))
    .min(0, sayLater('energy must not be negative'))
    .max(
      930,
      sayLater('energy must be at most 930 kcal per 100 g, which is a little more than pure fat gives'),
    )
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
    .number(sayLater('must be a number'))
    .positive(sayLater('must be more than 0'))
    .max(25, sayLater('must be at most 25 g/ml'))
    .optional()
    .describe('Weight of one millilitre as it is measured in a cup, g'),
  gPerPiece: z
    .number(sayLater('must be a number'))
    .positive(sayLater('must be more than 0'))
    .max(20_000, sayLater('must be at most 20 kg'))
    .optional()
    .describe('Weight of one piece, g'),
});
export type Food = z.infer<typeof Food>;
