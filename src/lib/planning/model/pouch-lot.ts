import { z } from 'zod';
import { wrong } from './faults.ts';
import { Allergen, CalendarDate, CookAfter, Diet, LotKind, MealKind, ShortText, WaterKind } from './kinds.ts';
import { longList } from './long-list.ts';
import { LotEstimates } from './lot-estimate.ts';

const grams = (most: number) =>
  z
    .number(wrong('not-grams'))
    .nonnegative(wrong('negative'))
    .max(most, wrong('over', { most, unit: 'g' }));

export const LotCode = z
  .string()
  .trim()
  .min(1, wrong('empty'))
  .max(40, wrong('too-long', { most: 40 }))
  .regex(/^[^\p{Cc}\p{Cs}/?#]*$/u, wrong('not-a-code'));

/** What may be said of a lot besides. All of it is optional; kept as one column of the database. */
export const LotDetails = z.strictObject({
  kind: LotKind.optional().describe(
    'What it is on a plate; missing: extra where it suits snacks only, drink where it suits drinks only, else main',
  ),
  pieces: z
    .int(wrong('not-whole-pieces'))
    .min(1, wrong('under', { least: 1 }))
    .max(500, wrong('over', { most: 500 }))
    .optional()
    .describe('Pieces in one pouch, such as bars; missing: it is shared out by weight'),
  pouchTakesBoilingWater: z
    .boolean()
    .optional()
    .describe('Whether its pouch takes boiling water; missing: it does'),
  eatFromPouch: z.boolean().optional().describe('Whether it can be eaten from its pouch; missing: it can'),
  pouchStands: z.boolean().optional().describe('Whether its pouch stands by itself'),
  weighedDry: z.boolean().optional().describe('Whether scales showed that it is dry; missing: nobody says'),
  cookAfter: CookAfter.optional().describe(
    'What has to be done after its water has gone in, before it is eaten: food that was dried raw has to be cooked',
  ),
  bought: z.boolean().optional().describe('Whether it was bought as it is; missing: made at home'),
  place: ShortText.optional().describe('Where it is kept: a box, a shelf, a freezer'),
  fibreG: grams(5000).optional().describe('Fibre of one serving, g'),
  sugarsG: grams(5000).optional().describe('Sugars of one serving, g'),
  sodiumMg: z
    .number(wrong('not-milligrams'))
    .nonnegative(wrong('negative'))
    .max(100_000, wrong('over', { most: 100_000, unit: 'mg' }))
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
  mealKinds: z.array(MealKind).min(1, wrong('no-meal')).describe('Meals this pouch suits'),
  sealedOn: CalendarDate.describe('Date of sealing'),
  bestBefore: CalendarDate.describe('Last day on which the planner may use it'),
  pouches: z
    .int(wrong('not-whole-pouches'))
    .nonnegative(wrong('negative'))
    .max(100_000, wrong('over', { most: 100_000 }))
    .describe('Pouches there are'),
  servingsPerPouch: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(100, wrong('over', { most: 100 }))
    .describe('Servings in one pouch'),
  dryWeightG: grams(5000).positive(wrong('not-positive')).describe('Dry weight of one serving, g'),
  energyKcal: z
    .number(wrong('not-kcal'))
    .nonnegative(wrong('negative'))
    .max(20_000, wrong('over', { most: 20_000, unit: 'kcal' }))
    .describe('Energy of one serving, kcal'),
  proteinG: grams(5000).optional().describe('Protein of one serving, g'),
  fatG: grams(5000).optional().describe('Fat of one serving, g'),
  carbohydrateG: grams(5000).optional().describe('Carbohydrate of one serving, g'),
  waterMl: z
    .number(wrong('not-millilitres'))
    .nonnegative(wrong('negative'))
    .max(20_000, wrong('over', { most: 20_000, unit: 'ml' }))
    .describe('Water to add to one serving, ml'),
  waterKind: WaterKind.describe('Water to add: boiling, hot, cold or none'),
  steepMin: z
    .number(wrong('not-minutes'))
    .nonnegative(wrong('negative'))
    .max(1440, wrong('over', { most: 1440, unit: 'min' }))
    .describe('Steep time at sea level, min'),
  stirAfterMin: z
    .number(wrong('not-minutes'))
    .positive(wrong('not-positive'))
    .max(1440, wrong('over', { most: 1440, unit: 'min' }))
    .optional()
    .describe('Part of the steep time after which to stir, min'),
  tareG: grams(2000).describe('Weight of one empty pouch with its absorber, g'),
  volumeMl: z
    .number(wrong('not-millilitres'))
    .positive(wrong('not-positive'))
    .max(50_000, wrong('over', { most: 50_000, unit: 'ml' }))
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
    .int(wrong('not-minor-units'))
    .nonnegative(wrong('negative'))
    .max(100_000_000, wrong('over', { most: 100_000_000, unit: 'minor' }))
    .optional()
    .describe('Cost of one serving in minor units of the currency of the settings'),
  ...LotDetails.shape,
  withdrawn: ShortText.optional().describe(
    'Why it must not be eaten; none of its pouches is planned, however many there are',
  ),
  note: z
    .string()
    .trim()
    .max(2000, wrong('too-long', { most: 2000 }))
    .regex(/^(?:[^\p{Cc}\p{Cs}]|[\t\n\r])*$/u, wrong('control-characters'))
    .default('')
    .describe('Free note'),
});
export type PouchLot = z.infer<typeof PouchLot>;

/** What the planner may draw on: each lot with the pouches free for this trip. */
export const Stock = longList(PouchLot, 100_000, wrong('too-many', { most: 100_000 })).superRefine(
  (lots, context) => {
    const seen = new Set<string>();
    lots.forEach((lot, index) => {
      if (seen.has(lot.code))
        context.addIssue({
          code: 'custom',
          path: [index, 'code'],
          message: wrong('code-twice', { lot: lot.code }),
        });
      seen.add(lot.code);
    });
  },
);
export type Stock = z.infer<typeof Stock>;

/** The stock as it may be eaten: without the pouches of lots that are withdrawn. */
export const withoutWithdrawn = (stock: Stock): Stock =>
  stock.some(({ withdrawn }) => withdrawn !== undefined)
    ? stock.map((lot) => (lot.withdrawn === undefined ? lot : { ...lot, pouches: 0 }))
    : stock;
