import { z } from 'zod';
import { NUTRIENTS, NUTRIENT_STANDINGS, RANGE_SOURCES } from './words.ts';

const Amount = z.number().nonnegative();

/** A published range, in the unit that it is published in. */
export const NutrientRange = z.strictObject({
  source: z.enum(RANGE_SOURCES),
  unit: z.enum(['share of energy', 'g/kg', 'g']).describe('Shares from 0 to 1'),
  least: Amount.optional(),
  most: Amount.optional(),
});
export type NutrientRange = z.infer<typeof NutrientRange>;

/** What one person eats of one nutrient on a day, as far as the foods state it. */
export const EatenNutrient = z.strictObject({
  nutrient: z.enum(NUTRIENTS),
  amount: Amount.describe('In g, sodium in mg, of the food that states it'),
  statedShare: z.number().min(0).max(1).describe('Energy of the food that states it, of all that is eaten'),
  energyShare: Amount.optional().describe('Its energy, of that of the food that states it'),
  perKg: Amount.optional().describe('g for each kg of body mass, where that is known'),
  range: NutrientRange.optional().describe('Left out: none was found that holds here'),
  standing: z.enum(NUTRIENT_STANDINGS).describe('Beside the range'),
});
export type EatenNutrient = z.infer<typeof EatenNutrient>;

/** What the food of one day brings one person. */
export const EaterNutrition = z.strictObject({
  day: z.int().min(1),
  eater: z.string(),
  eatenKcal: Amount,
  targetKcal: Amount,
  mealShare: Amount.describe(
    'Share of a full day that its meals are; the others are eaten elsewhere or at home',
  ),
  walkingH: Amount,
  long: z.boolean().describe('Walked for so long that carbohydrate and sodium are looked at'),
  hot: z.boolean().describe('Hot enough for the tables of heat'),
  sweatSodiumMg: z
    .strictObject({ value: Amount, low: Amount, high: Amount })
    .optional()
    .describe('Sodium in the sweat of the walk, mg; on long and hot days'),
  nutrients: z.array(EatenNutrient),
});
export type EaterNutrition = z.infer<typeof EaterNutrition>;
