import { z } from 'zod';
import { sayLater } from '../../texts/say.ts';

/** Body data, for those who would rather have their need estimated than enter it. */
export const Body = z.strictObject({
  sex: z.enum(['male', 'female']).describe('Sex as the equations use it'),
  ageY: z
    .number(sayLater('must be a number of years'))
    .min(
      3,
      sayLater('must be at least 3 years; for a smaller child ask a professional and enter a daily figure'),
    )
    .max(100, sayLater('must be at most 100 years'))
    .describe('Age, years'),
  heightM: z
    .number(sayLater('must be a height'))
    .min(0.8, sayLater('must be at least 0.8 m'))
    .max(2.4, sayLater('must be at most 2.4 m'))
    .describe('Height, m'),
  massG: z
    .number(sayLater('must be a weight'))
    .min(10_000, sayLater('must be at least 10 kg'))
    .max(250_000, sayLater('must be at most 250 kg'))
    .describe('Body mass without clothes and pack, g'),
});
export type Body = z.infer<typeof Body>;
