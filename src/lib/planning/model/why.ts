import { z } from 'zod';
import { DAY_KINDS } from './words.ts';

/** Values that stand in for what nobody entered, and are not published but usual; worded in `presentation/why-words.ts`. */
export const USUAL_VALUES = [
  'first meal',
  'last meal',
  'energy',
  'carry limit',
  'carry limit of an adult',
  'base weight',
  'base weight of an adult',
  'base weight of a minor',
  'bag of a child',
  'bottles',
  'bottle of a minor',
  'range',
  'deficit',
  'acclimatised',
  'treatment',
  'serving style',
  'reserve meals',
  'party factor',
  'rests',
  'walking hours',
  'camp altitude',
  'air temperature',
  'water temperature',
  'humidity',
  'sun',
  'wind',
  'terrain',
  'camp water',
  'water on the way',
  'fuel',
  'gas',
  'pot',
  'water in a pot',
  'fuel reserve',
  'efficiency of canister-gas',
  'efficiency of naphtha',
  'efficiency of kerosene',
  'efficiency of ethanol',
] as const;
export type UsualValue = (typeof USUAL_VALUES)[number];

/** Why a value holds that nobody entered. */
export const Why = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('usual'), of: z.enum(USUAL_VALUES) }),
  z.strictObject({ code: z.enum(['signposts', 'carry limit of a minor', 'only dinner', 'entered']) }),
  z.strictObject({ code: z.literal('kind of day'), kind: z.enum(DAY_KINDS) }),
  z.strictObject({ code: z.literal('appetite learned'), eater: z.string(), trips: z.int().positive() }),
  z.strictObject({ code: z.enum(['pace learned', 'efficiency learned']), trips: z.int().positive() }),
  z.strictObject({ code: z.literal('measured'), runs: z.int().positive() }),
]);
export type Why = z.infer<typeof Why>;
