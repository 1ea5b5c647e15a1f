import { z } from 'zod';
import { say, sayLater, text, type Text } from '../../texts/say.ts';
import { Allergen, CalendarDate, CookAfter, Diet, LotKind, MealKind, ShortText, WaterKind } from './kinds.ts';
import { longList } from './long-list.ts';
import { LotEstimates } from './lot-estimate.ts';

const grams = (what: Text, most: number) =>
  z
    .number({ error: () => say('{what} must be a number of grams', { what: say(what) }) })
    .nonnegative({ error: () => say('{what} must not be negative', { what: say(what) }) })
    .max(most, { error: () => say('{what} must be at most {most} g', { what: say(what), most }) });

export const LotCode = z
  .string()
  .trim()
  .min(1, sayLater('must not be empty'))
  .max(40, sayLater('must be at most 40 characters'))
  .regex(/^[^\p{Cc}\p{Cs}/?#]*$/u, sayLater('must be a single line without / ? #'));

/** What may be said of a lot besides. All of it is optional; kept as one column of the database. */
export const LotDetails = z.strictObject({
  kind: LotKind.optional().describe(
    'What it is on a plate; missing: extra where it suits snacks only, drink where it suits drinks only, else main',
  ),
  pieces: z
    .int(sayLater('must be a whole number of pieces'))
    .min(1, sayLater('must be at least 1'))
    .max(500, sayLater('must be at most 500'))
    .optional()
    .describe('Pieces in one pouch, such as bars; missing: it is shared out by weight'),
  pouchTakesBoilingWater: z
    .boolean()
    .optional()
    .describe('Whether its pouch takes boiling water; missing: it does'),
  eatFromPouch: z.boolean().optional().describe('Whether it can be eaten from its pouch; missing: it can'),
  pouchStands: z.boolean().optional().describe('Whether its pouch stands by itself'),
  cookAfter: CookAfter.optional().describe(
    'What has to be done after its water has gone in, before it is eaten: food that was dried raw has to be cooked',
  ),
  place: ShortText.optional().describe('Where it is kept: a box, a shelf, a freezer'),
  fibreG: grams(text('fibre'), 5000).optional().describe('Fibre of one serving, g'),
  sugarsG: grams(text('sugars'), 5000).optional().describe('Sugars of one serving, g'),
  sodiumMg: z
    .number(sayLater('must be a number of milligrams'))
    .nonnegative(sayLater('must not be negative'))
    .max(100_000, sayLater('must be at most 100000 mg'))
    .optional()
    .describe('Sodium of one serving, mg'),
  contains: z
    .array(Allergen)
    .optional()
    .describe('Allergens that it is known to hold where `allergens` is not stated: nobody knows the others'),
  estimated: LotEstimates.optional().describe('What of the lot nobody has said, so that it is an estimate'),
});
export type LotDetails = z.infer<typeof LotDetails>;

/**
 * Pouches of one sealing that are alike. Everything from `dryWeightG` to `costMinor` is for one serving;
 * `tareG` and `volumeMl` are for one pouch. `pouches` is how many there are to plan with. What nobody has said of it (`StatedLot`) is an
 * estimate, and `estimated` names it.
 */
export const PouchLot = z.strictObject({
  code: LotCode.describe('Unique code of the lot, as written on its pouches'),
  recipe: ShortText.describe('Name of the recipe'),
  mealKinds: z
    .array(MealKind)
    .min(1, sayLater('must name at least one meal: breakfast, lunch, snack, dinner or drink'))
    .describe('Meals this pouch suits'),
  sealedOn: CalendarDate.describe('Date of sealing'),
  bestBefore: CalendarDate.describe('Last day on which the planner may use it'),
  pouches: z
    .int(sayLater('must be a whole number of pouches'))
    .nonnegative(sayLater('must not be negative'))
    .max(100_000, sayLater('must be at most 100000'))
    .describe('Pouches there are'),
  servingsPerPouch: z
    .number(sayLater('must be a number'))
    .positive(sayLater('must be more than 0'))
    .max(100, sayLater('must be at most 100'))
    .describe('Servings in one pouch'),
  dryWeightG: grams(text('dry weight'), 5000)
    .positive(sayLater('dry weight must be more than 0'))
    .describe('Dry weight of one serving, g'),
  energyKcal: z
    .number(sayLater('must be a number of kcal'))
    .nonnegative(sayLater('must not be negative'))
    .max(20_000, sayLater('must be at most 20000 kcal'))
    .describe('Energy of one serving, kcal'),
  proteinG: grams(text('protein'), 5000).optional().describe('Protein of one serving, g'),
  fatG: grams(text('fat'), 5000).optional().describe('Fat of one serving, g'),
  carbohydrateG: grams(text('carbohydrate'), 5000).optional().describe('Carbohydrate of one serving, g'),
  waterMl: z
    .number(sayLater('must be a number of ml'))
    .nonnegative(sayLater('must not be negative'))
    .max(20_000, sayLater('must be at most 20000 ml'))
    .describe('Water to add to one serving, ml'),
  waterKind: WaterKind.describe('Water to add: boiling, hot, cold or none'),
  steepMin: z
    .number(sayLater('must be a number of minutes'))
    .nonnegative(sayLater('must not be negative'))
    .max(1440, sayLater('must be at most 1440 minutes'))
    .describe('Steep time at sea level, min'),
  stirAfterMin: z
    .number(sayLater('must be a number of minutes'))
    .positive(sayLater('must be more than 0'))
    .max(1440, sayLater('must be at most 1440 minutes'))
    .optional()
    .describe('Part of the steep time after which to stir, min'),
  tareG: grams(text('packaging weight'), 2000).describe('Weight of one empty pouch with its absorber, g'),
  volumeMl: z
    .number(sayLater('must be a number of ml'))
    .positive(sayLater('must be more than 0'))
    .max(50_000, sayLater('must be at most 50000 ml'))
    .optional()
    .describe('Outer volume of one sealed pouch, ml'),
  allergens: z
    .array(Allergen)
    .optional()
    .describe(
      'Allergens it holds; an empty list says it holds none, a missing list says nobody has stated them',
    ),
  diets: z.array(Diet).default([]).describe('Diets it is stated to meet'),
  costMinor: z
    .int(sayLater('must be whole minor units, such as cents'))
    .nonnegative(sayLater('must not be negative'))
    .max(100_000_000, sayLater('must be at most 100000000 minor units'))
    .optional()
    .describe('Cost of one serving in minor units of the currency of the settings'),
  ...LotDetails.shape,
  note: z
    .string()
    .trim()
    .max(2000, sayLater('must be at most 2000 characters'))
    .regex(/^(?:[^\p{Cc}\p{Cs}]|[\t\n\r])*$/u, sayLater('must be text without control characters'))
    .default('')
    .describe('Free note'),
});
export type PouchLot = z.infer<typeof PouchLot>;

/** What the planner may draw on: each lot with the pouches free for this trip. */
export const Stock = longList(
  PouchLot,
  100_000,
  sayLater('must have at most {most, number} lots', { most: 100_000 }),
).superRefine((lots, context) => {
  const seen = new Set<string>();
  lots.forEach((lot, index) => {
    if (seen.has(lot.code))
      context.addIssue({
        code: 'custom',
        path: [index, 'code'],
        message: say('"{code}" is used by two lots; give each its own code', { code: lot.code }),
      });
    seen.add(lot.code);
  });
});
export type Stock = z.infer<typeof Stock>;
