import { z } from 'zod';

/** Why a dish stands at a meal: a code with what goes into its words. Stored with trips and sent with plans. */
export const REASON_CODES = [
  'by hand',
  'as listed',
  'fixed dish',
  'oldest',
  'oldest for all',
  'oldest for some',
  'least cost',
  'no other',
  'as good',
  'next best',
  'best found',
  'of a choice',
  'fills the day',
  'from an older menu',
] as const;
export const Reason = z.strictObject({
  code: z.enum(REASON_CODES),
  /** Another lot or recipe that the reason names. */
  lot: z.string().optional(),
  recipe: z.string().optional(),
  /** People that the reason names. */
  eaters: z.array(z.string()).optional(),
  /** What the next best would cost more, points, and of which kind. */
  points: z.number().optional(),
  cost: z.string().optional(),
  /** The choice of menu that it is of. */
  choice: z.string().optional(),
});
export type Reason = z.infer<typeof Reason>;
