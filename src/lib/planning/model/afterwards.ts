import { z } from 'zod';
import { say, sayLater } from '../../texts/say.ts';
import { AppetiteAnswer } from './observation.ts';
import { LotCode } from './pouch-lot.ts';
import { WaterFinding } from './recipe.ts';
import { ShortText } from './kinds.ts';

const grossG = z
  .number(sayLater('must be a weight'))
  .nonnegative(sayLater('must not be negative'))
  .max(20_000, sayLater('must be at most 20 kg'));

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
    if (afterG > beforeG)
      fail('afterG', say('is more than before the trip; weigh again, or correct the weight before'));
    // a scale for packs shows 5 g or so
    if (afterG < tareG - 10)
      fail(
        'afterG',
        say('is less than the container weighs when empty; weigh again, with cap and lid as before'),
      );
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
          .number(sayLater('must be a number'))
          .positive(sayLater('must be more than 0'))
          .max(1000, sayLater('must be at most 1000'))
          .describe('Servings of opened pouches that were thrown away'),
      }),
    )
    .max(600)
    .default([]),
  water: z
    .array(z.strictObject({ recipe: ShortText, finding: WaterFinding }))
    .max(600)
    .default([]),
  fuel: z.array(WeighedContainer).max(100).default([]),
  walkedH: z
    .array(
      z
        .number(sayLater('must be a number of hours'))
        .positive(sayLater('must be more than 0; leave a day of rest empty'))
        .max(24, sayLater('must be at most 24 hours'))
        .nullable(),
    )
    .max(90)
    .default([])
    .describe('Hours walked with rests, day by day; null where nobody looked'),
});
export type Afterwards = z.infer<typeof Afterwards>;
