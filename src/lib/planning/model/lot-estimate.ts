import { z } from 'zod';
import { CalendarDate } from './kinds.ts';

/** What can be estimated of a lot where nobody says it. */
export const ESTIMABLE = [
  'mealKinds',
  'sealedOn',
  'bestBefore',
  'energyKcal',
  'waterMl',
  'waterKind',
  'steepMin',
  'tareG',
] as const;
export type Estimable = (typeof ESTIMABLE)[number];

/** Those of them that people cook and eat by. */
const EATEN_BY = ['energyKcal', 'waterMl', 'waterKind', 'steepMin'] as const satisfies readonly Estimable[];

/** @returns what people cook and eat by that is an estimate of a lot, as a part of what a plan says of it; nothing where all was stated */
export function estimatedOf(lot: { readonly estimated?: Partial<Record<Estimable, unknown>> | undefined }): {
  estimated?: Estimable[];
} {
  const estimated = EATEN_BY.filter((field) => lot.estimated?.[field] !== undefined);
  return estimated.length > 0 ? { estimated } : {};
}

/** What an estimate of a lot rests on, the surest first. */
export const ESTIMATE_BASES = [
  'composition',
  'recipe',
  'similar lots',
  'kind of dish',
  'rule of thumb',
] as const;
export type EstimateBasis = (typeof ESTIMATE_BASES)[number];

const Bound = z.union([z.number(), CalendarDate]);

/** Between what an estimated value may well lie, in its own unit or as dates, and what it rests on. Words have no range. */
export const LotEstimate = z.strictObject({
  low: Bound.optional(),
  high: Bound.optional(),
  from: z.enum(ESTIMATE_BASES),
});
export type LotEstimate = z.infer<typeof LotEstimate>;

export const LotEstimates = z.partialRecord(z.enum(ESTIMABLE), LotEstimate);
export type LotEstimates = z.infer<typeof LotEstimates>;
