import { z } from 'zod';
import { wrong } from './faults.ts';
import { AppetiteAnswer } from './observation.ts';
import { LotCode } from './pouch-lot.ts';
import { WaterFinding } from './recipe.ts';
import { ShortText } from './kinds.ts';
import { LIKINGS } from './words.ts';

const grossG = z
  .number(wrong('not-a-weight'))
  .nonnegative(wrong('negative'))
  .max(20_000, wrong('over', { most: 20, unit: 'kg' }));

/** A canister or bottle on the scale, before the trip and after it. */
export const WeighedContainer = z
  .strictObject({
    label: ShortText,
    tareG: grossG.describe('Weight when empty, g'),
    beforeG: grossG.describe('Weight before the trip, g'),
    afterG: grossG.describe('Weight after it, g'),
  })
  .superRefine(({ tareG, beforeG, afterG }, context) => {
    const fail = (path: string, message: string) =>
      context.addIssue({ code: 'custom', path: [path], message });
    if (afterG > beforeG) fail('afterG', wrong('heavier-than-before'));
    // a scale for packs shows 5 g or so
    if (afterG < tareG - 10) fail('afterG', wrong('lighter-than-empty'));
  });
export type WeighedContainer = z.infer<typeof WeighedContainer>;

/** What a party says of its trip once it is home; everything may be left out. */
export const Afterwards = z.strictObject({
  appetites: z
    .array(z.strictObject({ eater: ShortText, answer: AppetiteAnswer }))
    .max(40)
    .default([]),
  leftOver: z
    .array(
      z.strictObject({
        code: LotCode,
        servings: z
          .number(wrong('not-a-number'))
          .positive(wrong('not-positive'))
          .max(1000, wrong('over', { most: 1000 }))
          .describe('Servings of opened pouches that were thrown away'),
      }),
    )
    .max(600)
    .default([]),
  water: z
    .array(z.strictObject({ recipe: ShortText, finding: WaterFinding }))
    .max(600)
    .default([]),
  portions: z
    .array(z.strictObject({ recipe: ShortText, answer: AppetiteAnswer }))
    .max(600)
    .default([])
    .describe('Whether a serving of a dish was enough'),
  tastes: z
    .array(z.strictObject({ recipe: ShortText, eater: ShortText, answer: z.enum(LIKINGS) }))
    .max(24_000)
    .default([])
    .describe('Who liked a dish and who did not'),
  fuel: z.array(WeighedContainer).max(100).default([]),
  walkedH: z
    .array(
      z
        .number(wrong('not-hours'))
        .positive(wrong('no-hours-walked'))
        .max(24, wrong('over', { most: 24, unit: 'h' }))
        .nullable(),
    )
    .max(90)
    .default([])
    .describe('Hours walked with rests, day by day; null where nobody looked'),
});
export type Afterwards = z.infer<typeof Afterwards>;
