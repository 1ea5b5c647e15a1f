import type { z } from 'zod';
import type {
  BARRIERS,
  FAT_CLASSES,
  KITCHEN_UNITS,
  MainMeal,
  MealKind,
  PROCESSES,
  WaterKind,
} from './words.ts';

/*
 * What can be wrong with an input: a code with its params. Schemas give one as the message of an issue (`wrong`), `faultsOf` reads it back, and
 * `presentation/fault-words.ts` words it.
 */

type None = Readonly<Record<never, never>>;

/** Units of bounds, as they are shown. `/d` is "a day"; `minor` are minor units of money. */
export type BoundUnit =
  | 'g'
  | 'kg'
  | 'mg'
  | 'ml'
  | 'l'
  | 'mm'
  | 'cm²'
  | 'm'
  | 'm/d'
  | 'km'
  | 'km/d'
  | '°C'
  | '%'
  | 'g/ml'
  | 'W'
  | 'kWh'
  | 'kcal'
  | 'kcal/d'
  | 'min'
  | 'h'
  | 'd'
  | 'years'
  | 'meals'
  | 'points'
  | 'minor';

/** The type of value that a schema asks for where it says no more. */
export const VALUE_TYPES = ['string', 'number', 'int', 'boolean', 'array', 'object', 'other'] as const;
export type ValueType = (typeof VALUE_TYPES)[number];

/** Each code with its params. */
export type FaultParams = {
  // single values
  'not-json': { readonly fault: string };
  'not-of-type': { readonly type: ValueType };
  'not-of-form': None;
  'unknown-fields': { readonly count: number; readonly fields: readonly string[] };
  'not-one-of': { readonly known: readonly string[]; readonly found?: string };
  /** Nothing is there, and it `must` be something. */
  missing: { readonly must: Fault };
  under: { readonly least: number; readonly unit?: BoundUnit };
  over: { readonly most: number; readonly unit?: BoundUnit };
  negative: None;
  'not-positive': None;
  'too-short': None;
  'too-long': { readonly most: number };
  'too-few': { readonly least: number };
  'too-many': { readonly most: number };
  empty: None;
  'not-filled-in': None;
  'not-one-line': None;
  'control-characters': None;
  'not-a-code': None;
  'not-a-currency': None;
  'not-a-date': None;
  'not-a-uuid': None;
  'not-an-instant': None;
  'not-a-number': None;
  'not-a-weight': None;
  'not-a-volume': None;
  'not-a-distance': None;
  'not-an-altitude': None;
  'not-a-height': None;
  'not-a-temperature': None;
  'not-an-area': None;
  'not-a-depth': None;
  'not-a-power': None;
  'not-a-share': None;
  'not-a-factor': None;
  'not-an-amount': None;
  'not-from-0-to-1': None;
  'not-grams': None;
  'not-milligrams': None;
  'not-millilitres': None;
  'not-kcal': None;
  'not-kwh': None;
  'not-minutes': None;
  'not-hours': None;
  'not-months': None;
  'not-years': None;
  'not-points': None;
  'not-minor-units': None;
  'not-whole': None;
  'not-whole-within': { readonly least: number; readonly most: number };
  'not-whole-days': None;
  'not-whole-meals': None;
  'not-whole-pieces': None;
  'not-whole-pouches': None;

  // lots and foods
  'no-meal': None;
  'over-whole': None;
  'richer-than-fat': { readonly most: number };
  'best-before-sealing': { readonly bestBefore: string; readonly sealedOn: string };
  'lot-richer-than-fat': { readonly kcalPerG: number };
  'no-energy': None;
  'little-energy': { readonly kcalPerG: number };
  'energy-unlike-parts': { readonly statedKcal: number; readonly byPartsKcal: number };
  'parts-over-dry-weight': { readonly partsG: number; readonly dryG: number };
  'much-water': { readonly waterMl: number; readonly dryG: number };
  'water-of-no-kind': { readonly waterMl: number };
  'no-water': { readonly waterKind: WaterKind };
  'stir-outside-wait': { readonly stirMin: number; readonly waitMin: number };
  'code-twice': { readonly lot: string };
  'place-twice': { readonly place: string };

  // recipes, batches and equipment
  'piece-without-weight': None;
  'volume-without-weight': { readonly unit: (typeof KITCHEN_UNITS)[number] };
  'lighter-than-tray': { readonly tareG?: number };
  'heavier-than-loaded': { readonly loadedG: number };
  'more-trays-than-dryer': { readonly trays: number; readonly dryer: string; readonly most: number };
  'weighing-not-later': { readonly beforeH: number };
  'tray-without-weight': None;
  'hotter-than-moist-food': { readonly most: number };
  'no-weekday': None;
  'listed-twice': { readonly name: string };
  'storage-rule-twice': {
    readonly process: (typeof PROCESSES)[number];
    readonly fatClass: (typeof FAT_CLASSES)[number];
    readonly barrier: (typeof BARRIERS)[number];
    readonly absorber: boolean;
  };

  // settings
  'not-a-whole': None;
  'no-size': None;
  'no-fuel-burnt': None;

  // trips
  'no-eater': None;
  'eater-twice': { readonly name: string };
  'child-too-small': { readonly least: number };
  'trip-too-long': { readonly most: number };
  'more-days-than-trip': { readonly days: number; readonly most: number };
  'last-meal-before-first': { readonly last: MainMeal; readonly first: MainMeal };
  'group-twice': { readonly name: string };
  'not-in-party': { readonly name: string };
  'in-two-groups': { readonly name: string };
  'in-no-group': { readonly name: string };
  'day-after-trip': { readonly day: number; readonly most: number };
  'meal-twice': { readonly day: number; readonly meal: MealKind };
  'lot-twice-at-meal': { readonly lot: string };
  'lighter-than-empty': None;
  'heavier-than-before': None;
  'no-hours-walked': None;
  'left-over-without-servings': None;
  'too-many-notes': { readonly most: number };

  // routes
  'leg-without-length': None;
  'leg-too-steep': None;
  'point-not-further': None;
  'waypoint-twice': { readonly name: string };
  'beyond-route': { readonly endM: number };
  'no-such-waypoint': { readonly place: string };
  'day-ends-before-last': { readonly place: string };
  'last-day-ends-early': { readonly place: string };
};

export type FaultCode = keyof FaultParams;
export type FaultOf<Code extends FaultCode> = { readonly code: Code; readonly params: FaultParams[Code] };
export type Fault = { [Code in FaultCode]: FaultOf<Code> }[FaultCode];

/** What is wrong with one field of an input. */
export type FieldFault = Fault & {
  readonly field: string;
  /** Nothing is there; a form says so of an empty field, and no more. */
  readonly missing?: true;
};

/** How the message of an issue begins that is a fault. */
const MARK = 'fault:';

/** A fault as the message of a schema: `z.number().max(80_000, wrong('over', { most: 80, unit: 'kg' }))`. */
export function wrong<Code extends FaultCode>(
  code: Code,
  ...[params]: Record<never, never> extends FaultParams[Code] ? [FaultParams[Code]?] : [FaultParams[Code]]
): string {
  return MARK + JSON.stringify({ code, params: params ?? {} });
}

const fault = <Code extends FaultCode>(code: Code, params: FaultParams[Code]): Fault =>
  ({ code, params }) as Fault;

/** `['party', 0, 'name']` → `party[0].name`; the whole input is `(input)`. */
export function fieldPath(path: readonly PropertyKey[]): string {
  const joined = path.map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('');
  return joined.replace(/^\./, '') || '(input)';
}

/** So many faults of one input are named at most; whoever mends them sees the others then. */
export const MOST_FAULTS = 100;
/** What was found is quoted up to so many characters, and so many unknown fields are named. */
const MOST_QUOTED = 80;
const MOST_FIELDS_NAMED = 10;

/** What an input is shown as: an object could say of itself what it is as text. */
const shown = (input: unknown): string =>
  typeof input === 'object' && input !== null ? (Array.isArray(input) ? '[…]' : '{…}') : String(input);
const quoted = (found: string): string =>
  found.length > MOST_QUOTED ? `${found.slice(0, MOST_QUOTED)}…` : found;

/** What is wrong where a schema does not say it. */
function usualFault(issue: z.core.$ZodIssue): Fault {
  switch (issue.code) {
    case 'invalid_type':
      return fault('not-of-type', {
        type: VALUE_TYPES.find((type) => type === issue.expected) ?? 'other',
      });
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int'
        ? fault('under', { least: Number(issue.minimum) })
        : fault('too-short', {});
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int'
        ? fault('over', { most: Number(issue.maximum) })
        : fault(issue.origin === 'string' ? 'too-long' : 'too-many', { most: Number(issue.maximum) });
    default:
      return fault('not-of-form', {});
  }
}

function faultOf(issue: z.core.$ZodIssue): Fault {
  const stated = issue.message.startsWith(MARK)
    ? (JSON.parse(issue.message.slice(MARK.length)) as Fault)
    : undefined;
  switch (issue.code) {
    case 'unrecognized_keys':
      return fault('unknown-fields', {
        count: issue.keys.length,
        fields: issue.keys.slice(0, MOST_FIELDS_NAMED).map(quoted),
      });
    case 'invalid_value':
      return fault('not-one-of', {
        known: issue.values.map(String),
        ...(issue.input !== undefined && { found: quoted(shown(issue.input)) }),
      });
    case 'invalid_type':
      return issue.input === undefined
        ? fault('missing', { must: stated ?? usualFault(issue) })
        : (stated ?? usualFault(issue));
    default:
      return stated ?? usualFault(issue);
  }
}

function isMissing(issue: z.core.$ZodIssue): boolean {
  if (issue.code === 'custom') return issue.params?.['missing'] === true;
  const byItsValue = ['invalid_type', 'invalid_value', 'invalid_format'].includes(issue.code);
  return byItsValue && (issue.input === undefined || issue.input === '');
}

/**
 * The faults of a failed `safeParse(input, { reportInput: true })`, one per issue, in the order of the fields, at most `MOST_FAULTS`.
 *
 * @example faultsOf(error) // [{ field: 'party[0].name', code: 'empty', params: {} }]
 */
export function faultsOf(error: z.ZodError): FieldFault[] {
  return error.issues.slice(0, MOST_FAULTS).map((issue) => ({
    field: fieldPath(issue.path),
    ...faultOf(issue),
    ...(isMissing(issue) && { missing: true }),
  }));
}
