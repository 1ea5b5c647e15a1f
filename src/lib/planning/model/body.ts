import { z } from 'zod';
import { wrong } from './faults.ts';

/** All that the equations of energy need of a body. */
export const Body = z.strictObject({
  sex: z.enum(['male', 'female']).describe('Sex as the equations use it'),
  ageY: z
    .number(wrong('not-years'))
    .min(3, wrong('child-too-small', { least: 3 }))
    .max(100, wrong('over', { most: 100, unit: 'years' }))
    .describe('Age, years'),
  heightM: z
    .number(wrong('not-a-height'))
    .min(0.8, wrong('under', { least: 0.8, unit: 'm' }))
    .max(2.4, wrong('over', { most: 2.4, unit: 'm' }))
    .describe('Height, m'),
  massG: z
    .number(wrong('not-a-weight'))
    .min(10_000, wrong('under', { least: 10, unit: 'kg' }))
    .max(250_000, wrong('over', { most: 250, unit: 'kg' }))
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
