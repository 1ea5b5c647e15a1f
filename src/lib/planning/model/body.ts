import { z } from 'zod';
import { sayLater } from '../../texts/say.ts';

/** All that the equations of energy need of a body. */
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

/** What is known of a body: mass and age set loads and water, all four together the need for energy. */
export const BodyData = Body.partial();
export type BodyData = z.infer<typeof BodyData>;

/** @returns the body that the equations need, where all of it is known */
export function wholeBody(data: BodyData | undefined): Body | undefined {
  const { sex, ageY, heightM, massG } = data ?? {};
  return sex !== undefined && ageY !== undefined && heightM !== undefined && massG !== undefined
    ? { sex, ageY, heightM, massG }
    : undefined;
}
