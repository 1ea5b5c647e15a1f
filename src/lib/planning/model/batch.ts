import { z } from 'zod';
import { count, priceMinor, someVolumeMl, someWeightG, weightG } from './amounts.ts';
import { wrong } from './faults.ts';
import { Allergen, CalendarDate, ShortText } from './kinds.ts';
import { AbsorberSize, Dryer, PouchSize } from './kitchen.ts';
import { LotCode } from './pouch-lot.ts';
import { Recipe } from './recipe.ts';
import { TRAY_FEELS } from './words.ts';

const Remark = z
  .string()
  .trim()
  .max(500, wrong('too-long', { most: 500 }))
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, wrong('not-one-line'));

export const TrayFeel = z.enum(TRAY_FEELS);
export type TrayFeel = z.infer<typeof TrayFeel>;

export const Tray = z
  .strictObject({
    tareG: weightG(20_000).default(0).describe('Empty tray, g; 0 where the scale was set to zero with it'),
    loadedG: someWeightG(40_000).describe('Tray with its wet food, g'),
  })
  .refine(({ tareG, loadedG }) => loadedG > tareG, {
    path: ['loadedG'],
    error: wrong('lighter-than-tray'),
  });
export type Tray = z.infer<typeof Tray>;

export const TrayWeighing = z.strictObject({
  grossG: someWeightG(40_000).optional().describe('Tray with its food, g; left out: not weighed this time'),
  feel: TrayFeel.default('not felt'),
});
/** All trays at one moment of the run. */
export const Weighing = z.strictObject({
  afterH: z
    .number(wrong('not-hours'))
    .positive(wrong('not-positive'))
    .max(500, wrong('over', { most: 500, unit: 'h' }))
    .describe('Hours of drying until then'),
  trays: z.array(TrayWeighing),
});
export type Weighing = z.infer<typeof Weighing>;

/** A safety check that the cook has done, by its id in `safety-steps.ts`. */
export const CheckDone = z.strictObject({
  id: z.string().max(60),
  on: CalendarDate,
  readingC: z
    .number(wrong('not-a-temperature'))
    .min(-60, wrong('under', { least: -60, unit: '°C' }))
    .max(130, wrong('hotter-than-moist-food', { most: 130 }))
    .optional(),
  note: Remark.default(''),
});
export type CheckDone = z.infer<typeof CheckDone>;

/** So many pouches of one size with so many servings each. */
export const PouchFill = z.strictObject({
  pouch: PouchSize,
  half: z.boolean().default(false).describe('Half of a pouch that was cut in two'),
  servings: z
    .number(wrong('not-a-number'))
    .positive(wrong('not-positive'))
    .max(100, wrong('over', { most: 100 }))
    .describe('Servings in each'),
  pouches: count(1, 1000),
  absorber: AbsorberSize.optional().describe('Left out: sealed without'),
  absorbers: count(0, 20).default(0).describe('Absorbers in each'),
});
export type PouchFill = z.infer<typeof PouchFill>;

/** What is known of pouches that are sealed already: how many, and what they weigh without the bag. */
export const PouchesByWeight = z.strictObject({
  pouches: PouchFill.shape.pouches,
  netG: someWeightG(5000).describe('Food in each, g'),
  restG: someWeightG(5000).optional().describe('Food in one more pouch with what was left, g'),
  servings: PouchFill.shape.servings.optional().describe('Servings in each; left out: as the recipe says'),
});
export type PouchesByWeight = z.infer<typeof PouchesByWeight>;

/** One cooking that was dried together, from the pot to the sealed pouches. Recipe and dryer are copies: later changes leave it alone. */
export const Batch = z
  .strictObject({
    code: LotCode.max(30, wrong('too-long', { most: 30 })).describe('Its lots are named after it'),
    recipeId: z.string().max(60).optional().describe('The recipe it was made from, where it still exists'),
    recipe: Recipe,
    timesCooked: z
      .number(wrong('not-a-number'))
      .positive(wrong('not-positive'))
      .max(100, wrong('over', { most: 100 }))
      .default(1)
      .describe('How many times the amounts of the recipe'),
    cookedOn: CalendarDate,
    cookedG: someWeightG()
      .optional()
      .describe('All that was cooked, weighed, g; left out: by the cooking yield'),
    dryer: Dryer,
    preFrozen: z.boolean().default(false),
    sharesRunOf: z
      .string()
      .max(60)
      .optional()
      .describe(
        'Id of the batch whose run of the dryer it shares; left out: a run of its own, which others may share',
      ),
    conditionedFrom: CalendarDate.optional().describe(
      'When dehydrated food went into its jar to be conditioned',
    ),
    trays: z
      .array(Tray)
      .max(60, wrong('too-many', { most: 60 }))
      .default([]),
    weighings: z
      .array(Weighing)
      .max(200, wrong('too-many', { most: 200 }))
      .default([]),
    checks: z
      .array(CheckDone)
      .max(100, wrong('too-many', { most: 100 }))
      .default([]),
    energyKwh: z
      .number(wrong('not-kwh'))
      .nonnegative(wrong('negative'))
      .max(1000, wrong('over', { most: 1000, unit: 'kWh' }))
      .optional()
      .describe('Metered electricity of the run, kWh'),
    releasedBecause: Remark.optional().describe(
      'Why food that is not shown to be dry was released all the same',
    ),
    waterActivity: z
      .number(wrong('not-from-0-to-1'))
      .min(0, wrong('not-from-0-to-1'))
      .max(1, wrong('not-from-0-to-1'))
      .optional()
      .describe('Water activity of the dampest piece by a meter, 0 to 1; left out: not measured'),
    packedG: someWeightG()
      .optional()
      .describe('Dry food that goes into pouches, weighed, g; left out: all of it'),
    cup: z
      .strictObject({ volumeMl: someVolumeMl(5000), netG: someWeightG(5000) })
      .optional()
      .describe('A cup of the dry food, weighed'),
    servings: z
      .number(wrong('not-a-number'))
      .positive(wrong('not-positive'))
      .max(1000, wrong('over', { most: 1000 }))
      .optional()
      .describe('Servings that the dry food is divided into; left out: as the recipe says'),
    mostPerPouch: count(1, 100)
      .optional()
      .describe('Most servings in a pouch when proposing; left out: as many as fit'),
    fills: z
      .array(PouchFill)
      .max(40, wrong('too-many', { most: 40 }))
      .optional()
      .describe('Pouches chosen; left out: as proposed'),
    allergens: z
      .array(Allergen)
      .optional()
      .describe('As the cook states them for the label; left out: not stated'),
    bestBefore: CalendarDate.optional().describe('Left out: by the storage table'),
    shopServingMinor: priceMinor().optional(),
    place: ShortText.optional().describe('Where its pouches are kept: a box, a shelf, a freezer'),
    quick: z
      .literal(true)
      .optional()
      .describe('Sealed by the weight of its pouches alone: nobody weighed whether it is dry'),
    sealed: z
      .strictObject({ on: CalendarDate, lots: z.array(LotCode) })
      .optional()
      .describe('When it was sealed, into which lots'),
    note: Remark.default(''),
  })
  .superRefine(({ trays, weighings, dryer }, context) => {
    if (trays.length > dryer.trayCount)
      context.addIssue({
        code: 'custom',
        path: ['trays'],
        message: wrong('more-trays-than-dryer', {
          trays: trays.length,
          dryer: dryer.name,
          most: dryer.trayCount,
        }),
      });
    weighings.forEach(({ afterH, trays: weighed }, at) => {
      const before = weighings[at - 1];
      if (before && afterH <= before.afterH)
        context.addIssue({
          code: 'custom',
          path: ['weighings', at, 'afterH'],
          message: wrong('weighing-not-later', { beforeH: before.afterH }),
        });
      if (weighed.length !== trays.length)
        context.addIssue({
          code: 'custom',
          path: ['weighings', at],
          message: wrong('tray-without-weight'),
        });
      weighed.forEach(({ grossG }, index) => {
        const tray = trays[index];
        if (grossG === undefined || !tray) return;
        const path = ['weighings', at, 'trays', index, 'grossG'];
        if (grossG > tray.loadedG)
          context.addIssue({
            code: 'custom',
            path,
            message: wrong('heavier-than-loaded', { loadedG: tray.loadedG }),
          });
        else if (grossG <= tray.tareG)
          context.addIssue({
            code: 'custom',
            path,
            message: wrong('lighter-than-tray', { tareG: tray.tareG }),
          });
      });
    });
  });
export type Batch = z.infer<typeof Batch>;

export type BatchStage = 'cooking' | 'drying' | 'sealed';
export const batchStage = ({ trays, sealed }: Batch): BatchStage =>
  sealed ? 'sealed' : trays.length > 0 ? 'drying' : 'cooking';
