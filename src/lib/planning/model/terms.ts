import { z } from 'zod';
import { FuelKind } from './kinds.ts';

/** Levels of physical activity of the energy requirement, from the least to the most active. */
export const ACTIVITY_LEVELS = ['inactive', 'low active', 'active', 'very active'] as const;
export type ActivityLevel = (typeof ACTIVITY_LEVELS)[number];

/** What a line of how a figure came about stands for; worded in `presentation/term-words.ts`. */
export const TERM_CODES = [
  // energy
  'energy as entered',
  'resting',
  'altitude',
  'cold',
  'sleep',
  'camp and pauses',
  'digesting',
  'walking',
  'load on the move',
  'requirement',
  'requirement by walk',
  'requirement and walk',
  'appetite learned',
  // water
  'day at rest',
  'heat off the trail',
  'in the food',
  'hour of walking',
  'hours of walking',
  // fuel
  'water to heat',
  'heat into water',
  'heat into water and pot',
  'heat in fuel',
  'efficiency',
  'efficiency outside',
  // drying
  'water to remove',
  'load of dryer',
  'hours of run',
] as const;

/** One line of how a figure came about. */
export const Term = z.strictObject({
  code: z.enum(TERM_CODES),
  value: z.number(),
  unit: z.string(),
  hours: z.number().optional(),
  ageY: z.number().optional(),
  level: z.enum(ACTIVITY_LEVELS).optional(),
  airC: z.number().optional(),
  wbgtC: z.number().optional(),
  work: z.enum(['easy', 'moderate', 'hard', 'very hard']).optional(),
  fuel: FuelKind.optional(),
  basis: z.enum(['entered', 'learned', 'measured', 'usual']).optional(),
});
export type Term = z.infer<typeof Term>;
