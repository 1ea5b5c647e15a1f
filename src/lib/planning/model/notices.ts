import { z } from 'zod';
import { Allergen, Diet, FuelKind, MealKind } from './kinds.ts';
import {
  CANISTER_GASES,
  NOTICE_PAGES,
  NOTICE_SEVERITIES,
  type NoticePage,
  type NoticeSeverity,
} from './words.ts';

/*
 * What a plan has to tell the people who follow it: a code with its figures, in the units of the core. `presentation/notice-words.ts` words each code;
 * a new one needs a line here and a line there.
 */

const Day = z.int().min(1);
const Amount = z.number().nonnegative();
const Code = z.string();
const Name = z.string();

const kind = <Params extends z.ZodRawShape>(severity: NoticeSeverity, page: NoticePage, params: Params) => ({
  severity,
  page,
  params: z.strictObject(params),
});

/** Each code with its severity, the page of the trip on which it can be acted on, and its parameters. */
export const NOTICE_KINDS = {
  // menu
  'meal-outside-trip': kind('caution', 'menu', {}),
  'lot-gone': kind('attention', 'menu', {}),
  'lot-past-date': kind('attention', 'menu', { recipe: Name, bestBefore: z.string() }),
  'lot-withdrawn': kind('warning', 'menu', { recipe: Name, reason: z.string() }),
  'too-few-pouches': kind('attention', 'menu', { recipe: Name, wanted: z.int(), free: z.int() }),
  'meal-eaten-elsewhere': kind('caution', 'menu', {}),
  'portion-not-for-eater': kind('attention', 'menu', { recipe: Name }),
  'portions-beyond-pouches': kind('attention', 'menu', { recipe: Name, wanted: Amount, there: Amount }),
  'needs-stove': kind('warning', 'menu', { recipe: Name }),
  'shared-out-anew': kind('check', 'menu', { meals: z.int().positive() }),
  'reserve-short': kind('attention', 'missing', { meals: z.int().positive(), missingKcal: Amount }),
  'cook-groups-proposed': kind('note', 'party', { groups: z.array(z.array(Name)) }),
  hungry: kind('attention', 'missing', { missingKcal: Amount, days: z.array(Day) }),
  'hungry-by-exclusions': kind('attention', 'missing', {
    missingKcal: Amount,
    days: z.array(Day),
    allergens: z.array(Allergen),
    diets: z.array(Diet),
    lots: z.int().positive().describe('Lots that would feed the day but are not for this eater'),
  }),
  'lots-estimated': kind('note', 'menu', { lots: z.array(Code) }),
  'allergens-undeclared': kind('caution', 'missing', { lots: z.array(Code), avoiders: z.array(Name) }),

  'food-to-come': kind('caution', 'missing', { toBuy: z.int(), toDry: z.int() }),

  // route
  'route-without-elevation': kind('check', 'route', {}),

  // energy
  'body-data-limits': kind('note', 'party', {}),
  'minor-in-party': kind('warning', 'party', { ageY: Amount }),
  'older-than-equation': kind('note', 'party', { ageY: Amount, mostY: Amount }),
  'planned-deficit': kind('warning', 'party', {
    share: Amount,
    eaters: z.array(z.strictObject({ eater: Name, bodyG: Amount })),
  }),
  'beyond-walking-equation': kind('note', 'party', { beyondM: Amount }),
  'minor-without-need': kind('attention', 'party', {}),
  'long-day': kind('note', 'party', { hours: Amount }),
  'very-long-day': kind('caution', 'party', { hours: Amount }),

  // altitude
  'ascent-first-night-high': kind('caution', 'party', { altitudeM: z.number() }),
  'ascent-too-fast': kind('caution', 'party', { riseM: Amount, days: z.array(Day) }),
  'ascent-without-rest': kind('caution', 'party', { riseM: Amount, fromDay: Day }),

  // water
  'too-little-water-capacity': kind('attention', 'water', {
    place: z.string(),
    waterMl: Amount,
    capacityMl: Amount,
    toDryCamp: z.boolean(),
  }),

  // heat
  'heat-danger': kind('warning', 'water', {
    airTemperatureC: z.number(),
    category: z.int().min(0).max(5),
    avoid: z.boolean().describe('The table says not to work this hard in this heat'),
  }),
  'heat-walk-too-long': kind('warning', 'water', { workMin: Amount, restMin: Amount, neededH: Amount }),
  'heat-rests': kind('caution', 'water', {
    workMin: Amount,
    restMin: Amount,
    neededH: Amount,
    acclimatised: z.boolean(),
  }),
  'sweat-above-drinking-limit': kind('warning', 'water', { eaters: z.array(Name) }),

  // fuel and stove
  'filter-may-freeze': kind('caution', 'water', { nightC: z.number() }),
  'water-not-treated': kind('warning', 'water', {}),
  'water-without-stove': kind('warning', 'water', { boils: z.boolean(), melts: z.boolean() }),
  'fuel-not-flown': kind('warning', 'water', {}),
  'pouches-swell': kind('note', 'loads', { altitudeM: z.number(), factor: Amount }),
  'no-fuel-container': kind('attention', 'water', { fuel: FuelKind }),
  'cold-for-canister-gas': kind('caution', 'water', {
    gas: z.enum(CANISTER_GASES),
    coldestC: z.number(),
    gasBoilsC: z.number(),
  }),
  'stove-safety': kind('warning', 'water', {}),

  // packs
  'nobody-may-carry': kind('attention', 'loads', { recipe: Name, avoiders: z.array(Name) }),
  'load-noticeable': kind('note', 'loads', { share: Amount, minor: z.boolean() }),
  'load-heavy': kind('caution', 'loads', { share: Amount, minor: z.boolean() }),
  'load-harmful': kind('warning', 'loads', { share: Amount, minor: z.boolean() }),
  'gear-of-minors': kind('note', 'loads', { eaters: z.array(Name) }),
  'food-beyond-container': kind('attention', 'loads', {
    days: z.array(Day),
    foodMl: Amount,
    roomMl: Amount,
  }),
  'over-carry-limit': kind('attention', 'loads', { days: z.array(Day), overG: Amount, when: z.string() }),
} as const;

export type NoticeCode = keyof typeof NOTICE_KINDS;
export type NoticeParams<Code extends NoticeCode> = z.infer<(typeof NOTICE_KINDS)[Code]['params']>;

const AT = {
  day: Day.optional(),
  meal: MealKind.optional(),
  eater: Name.optional(),
  lot: Code.optional(),
};
/** Where in the trip a notice belongs, as far as it belongs anywhere. */
export type NoticeAt = z.infer<z.ZodObject<typeof AT>>;

export type NoticeOf<Code extends NoticeCode> = NoticeAt & {
  readonly code: Code;
  readonly params: NoticeParams<Code>;
  readonly severity: NoticeSeverity;
  readonly page: NoticePage;
};
export type Notice = { [Code in NoticeCode]: NoticeOf<Code> }[NoticeCode];

/** The schema of a notice, with more fields where somebody adds some, such as its text. */
export function noticeSchema<More extends object>(more: z.ZodRawShape): z.ZodType<Notice & More> {
  const [first, ...rest] = Object.entries(NOTICE_KINDS).map(([code, { params }]) =>
    z.strictObject({
      code: z.literal(code),
      params,
      severity: z.enum(NOTICE_SEVERITIES),
      page: z.enum(NOTICE_PAGES),
      ...AT,
      ...more,
    }),
  );
  if (!first) throw new RangeError('there are notices');
  return z.discriminatedUnion('code', [first, ...rest]) as unknown as z.ZodType<Notice & More>;
}

export const Notice = noticeSchema<object>({});

/** A notice with the severity and page of its code: `notice('lot-gone', {}, { day: 2, meal: 'dinner', lot: 'CH-01' })`. */
export function notice<Code extends NoticeCode>(
  code: Code,
  params: NoticeParams<Code>,
  at: NoticeAt = {},
): Notice {
  const { severity, page } = NOTICE_KINDS[code];
  return { code, params, severity, page, ...at } as Notice;
}
