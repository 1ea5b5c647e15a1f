import { z } from 'zod';
import { MASS_G, VOLUME_ML } from '../units/convert.ts';
import { minutes, priceMinor, share, weightG } from './amounts.ts';
import { Food } from './composition.ts';
import { ENERGY_FACTORS } from './energy-factors.ts';
import { wrong } from './faults.ts';
import { CalendarDate, MealKind, ShortText, WaterKind } from './kinds.ts';
import { APPETITES, KITCHEN_UNITS, WATER_FINDINGS } from './words.ts';

export const KitchenUnit = z.enum(KITCHEN_UNITS);
export type KitchenUnit = z.infer<typeof KitchenUnit>;

export const Quantity = z.strictObject({
  amount: z
    .number(wrong('not-an-amount'))
    .positive(wrong('not-positive'))
    .max(1_000_000, wrong('over', { most: 1_000_000 })),
  unit: KitchenUnit,
});
export type Quantity = z.infer<typeof Quantity>;

/**
 * Weight of a quantity, g; `undefined` where it is a volume or pieces and the food does not say what one of them weighs.
 */
export function weightOf(
  { amount, unit }: Quantity,
  food: { readonly gPerMl?: number | undefined; readonly gPerPiece?: number | undefined },
): number | undefined {
  if (unit === 'piece') return food.gPerPiece === undefined ? undefined : amount * food.gPerPiece;
  if (unit in MASS_G) return amount * MASS_G[unit as keyof typeof MASS_G];
  return food.gPerMl === undefined
    ? undefined
    : amount * VOLUME_ML[unit as keyof typeof VOLUME_ML] * food.gPerMl;
}

export const Price = z.strictObject({ paidMinor: priceMinor(), paidFor: Quantity });
export type Price = z.infer<typeof Price>;

/** A line of a recipe as somebody wrote it. */
const RecipeLine = z
  .string()
  .trim()
  .min(1, wrong('empty'))
  .max(300, wrong('too-long', { most: 300 }))
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, wrong('not-one-line'));

/** One line of a recipe: so much of a food, with what is known of it copied in, so that a later table does not change a cooked dish. */
export const Ingredient = z
  .strictObject({
    food: Food,
    quantity: Quantity.describe('As bought'),
    trimmedShare: share()
      .positive(wrong('not-positive'))
      .default(1)
      .describe('Trimming yield: what is left after peeling, boning, pitting and draining'),
    price: Price.optional().describe('What was paid for how much'),
    text: RecipeLine.optional().describe('The line of the recipe as it was written'),
  })
  .superRefine(({ food, quantity, price }, context) => {
    const unknown = (path: (string | number)[], unit: KitchenUnit) =>
      context.addIssue({
        code: 'custom',
        path,
        message: unit === 'piece' ? wrong('piece-without-weight') : wrong('volume-without-weight', { unit }),
      });
    if (weightOf(quantity, food) === undefined) unknown(['quantity', 'unit'], quantity.unit);
    if (price && weightOf(price.paidFor, food) === undefined)
      unknown(['price', 'paidFor', 'unit'], price.paidFor.unit);
  });
export type Ingredient = z.infer<typeof Ingredient>;

export const WaterFinding = z.enum(WATER_FINDINGS);
export type WaterFinding = z.infer<typeof WaterFinding>;

export const WaterNote = z.strictObject({
  date: CalendarDate,
  finding: WaterFinding,
  note: z
    .string()
    .trim()
    .max(500, wrong('too-long', { most: 500 }))
    .default(''),
  tripId: z.string().max(64).optional().describe('Trip after which it was said'),
});
export type WaterNote = z.infer<typeof WaterNote>;

/** Whether a serving was enough for those who ate it. */
export const PortionNote = z.strictObject({
  ...WaterNote.omit({ finding: true }).shape,
  finding: z.enum(APPETITES),
});
export type PortionNote = z.infer<typeof PortionNote>;

/** A dish as it is cooked, before it is dried. Amounts are for one cooking; a batch may cook it several times over. */
export const Recipe = z.strictObject({
  name: ShortText.describe('Name of the dish'),
  mealKinds: z.array(MealKind).min(1, wrong('no-meal')).describe('Meals it suits'),
  ingredients: z
    .array(Ingredient)
    .max(100, wrong('too-many', { most: 100 }))
    .default([]),
  toSettle: z
    .array(RecipeLine)
    .max(100, wrong('too-many', { most: 100 }))
    .optional()
    .describe('Lines that nobody has understood yet: what they contain is not known'),
  servings: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(1000, wrong('over', { most: 1000 }))
    .describe('Servings that one cooking gives'),
  cookingYield: z
    .number(wrong('not-a-share'))
    .min(0.1, wrong('under', { least: 10, unit: '%' }))
    .max(5, wrong('over', { most: 500, unit: '%' }))
    .default(1)
    .describe('Weight when cooked over the weight that went into the pot: water lost or taken up'),
  fatDrainedG: weightG().default(0).describe('Fat poured or rinsed off in one cooking, g'),
  energyFactors: z.enum(ENERGY_FACTORS).default('eu').describe('Factors that energy is reckoned by'),
  bulkGPerMl: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(2, wrong('over', { most: 2, unit: 'g/ml' }))
    .default(1)
    .describe('Weight of one millilitre of the cooked dish as it lies on a tray, g'),
  driedRaw: z
    .boolean()
    .default(false)
    .describe('Dried without being cooked first: it has to be cooked after its water has gone in'),
  waterKind: WaterKind.default('boiling'),
  steepMin: minutes()
    .optional()
    .describe('Steep time at sea level, min; left out: usual for the way of drying'),
  stirAfterMin: minutes().optional().describe('When to stir while it steeps, min'),
  waterShare: z
    .number(wrong('not-a-share'))
    .min(0.1, wrong('under', { least: 10, unit: '%' }))
    .max(2, wrong('over', { most: 200, unit: '%' }))
    .optional()
    .describe('Water to add, of the water removed, before any note; left out: usual for the way of drying'),
  waterNotes: z
    .array(WaterNote)
    .max(200, wrong('too-many', { most: 200 }))
    .default([])
    .describe('How the water turned out, oldest first'),
  portionNotes: z
    .array(PortionNote)
    .max(200, wrong('too-many', { most: 200 }))
    .optional()
    .describe('Whether its servings were enough, oldest first'),
  note: z
    .string()
    .trim()
    .max(5000, wrong('too-long', { most: 5000 }))
    .regex(/^(?:[^\p{Cc}\p{Cs}]|[\t\n\r])*$/u, wrong('control-characters'))
    .default('')
    .describe('How it is cooked'),
});
export type Recipe = z.infer<typeof Recipe>;

export const ingredientG = ({ food, quantity }: Ingredient): number => weightOf(quantity, food) ?? 0;

/** What the ingredient of one cooking cost, minor units, not rounded; `undefined` where no price is known. */
export function ingredientCost(ingredient: Ingredient): number | undefined {
  const { price, food } = ingredient;
  const paidForG = price && weightOf(price.paidFor, food);
  return price && paidForG ? (price.paidMinor * ingredientG(ingredient)) / paidForG : undefined;
}

/** Food with at least so much water is plain water, g per 100 g; the leanest broth and melon hold less (rule of thumb; a table of foods would replace it). */
const PLAIN_WATER_G = 99.5;

/** Whether an ingredient is water from the tap: it is neither bought nor priced. */
export const isTapWater = ({ food, price }: Ingredient): boolean =>
  food.composition.waterG >= PLAIN_WATER_G && !price?.paidMinor;
