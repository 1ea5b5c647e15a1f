import { toCore } from '../planning/units/convert.ts';
import { moneyToMinor } from '../presentation/money.ts';
import { signsOf } from './currency-words.ts';
import { plainWords, type ColumnUnit, type FieldEntry } from './fields.ts';
import type { Basis } from './headings.ts';
import { isUnit, unitCalled } from './unit-words.ts';
import {
  ALLERGEN_VOCABULARY,
  allergensNamed,
  COOK_AFTER_VOCABULARY,
  DIET_VOCABULARY,
  KIND_VOCABULARY,
  markOf,
  MEAL_VOCABULARY,
  saysNone,
  saysNothing,
  WATER_VOCABULARY,
  type Vocabulary,
} from './vocabulary.ts';
import { say } from '../texts/say.ts';

/** `either`: the file does not show which; what can be read in two ways is refused by name. */
export type DecimalMark = '.' | ',' | 'either';
/** `iso`: year-month-day; other dates are read as far as they can be read in one way only. */
export type DateOrder = 'iso' | 'day-first' | 'month-first';

/**
 * What a cell says, with a doubt worth a warning; or the reason why it cannot be read. `undefined`: it says nothing. A cell may say more than its
 * value: for what the value is, that it was weighed with its packaging, that not all allergens are listed, the kind of the water.
 */
export type Reading<T> =
  | {
      readonly value: T;
      readonly doubt?: string;
      readonly per?: Basis;
      readonly gross?: true;
      readonly open?: true;
      readonly waterKind?: string;
      /** How many pouches or servings the cell tells besides a weight, or what each weighs, g. */
      readonly also?: { readonly pouches?: number; readonly servings?: number; readonly pouchG?: number };
      /** The value is a time from the sealing on, months. */
      readonly keepsMonths?: number;
    }
  | { readonly reason: string; readonly isYearMissing?: true };

export type CellRules = {
  readonly unit: ColumnUnit | undefined;
  readonly decimalMark: DecimalMark;
  readonly dateOrder: DateOrder;
  /** The year of dates that are written without one. */
  readonly year?: number | undefined;
  /** ISO 4217 code in which the shelf counts. */
  readonly currency: string;
};

/** No list of allergens is longer. What is, would be searched for numbers and words like known ones at length. */
const LONGEST_CELL = 1000;

/** Reads one cell that is not empty for the field of its column. Costs are for what the column says, not yet per serving. */
export function readCell(
  entry: Pick<FieldEntry, 'kind' | 'units'> & { readonly field?: FieldEntry['field'] },
  text: string,
  rules: CellRules,
): Reading<unknown> {
  if (entry.kind === 'text') return { value: text };
  return readPlain(entry, text.length > LONGEST_CELL ? text : text.replace(/\s+/g, ' ').trim(), rules);
}

/** As `readCell`, of a text with single blanks. */
function readPlain(
  entry: Pick<FieldEntry, 'kind' | 'units'> & { readonly field?: FieldEntry['field'] },
  text: string,
  rules: CellRules,
): Reading<unknown> {
  if (entry.kind !== 'allergens' && saysNothing(text)) return { value: undefined };
  if (text.length > LONGEST_CELL)
    return {
      reason: say('"{beginning}…" is longer than {most} characters. Is it in the right column?', {
        beginning: text.slice(0, 20),
        most: String(LONGEST_CELL),
      }),
    };
  switch (entry.kind) {
    case 'text':
      return { value: text };
    case 'number':
      return entry.field === 'waterMl' ? readWater(text, entry.units, rules) : readAmount(text, entry, rules);
    case 'date':
      return readDate(text, rules.dateOrder, {
        side: entry.field === 'bestBefore' ? 'end' : 'start',
        year: rules.year,
      });
    case 'meals':
      return readList(text, MEAL_VOCABULARY);
    case 'water kind':
      return readWaterKind(text);
    case 'allergens':
      return readAllergens(text);
    case 'diets':
      return readDiets(text);
    case 'cost':
      return readCost(text, rules.decimalMark, rules.currency);
    case 'currency':
      return readCurrency(text, rules.currency);
    case 'lot kind':
      return readWord(text, KIND_VOCABULARY);
    case 'cook after':
      return readWord(text, COOK_AFTER_VOCABULARY);
    case 'yes or no':
    case 'diet mark': {
      const mark = markOf(text);
      if (mark === 'yes' || mark === 'no') return { value: mark === 'yes' };
      return { reason: say('"{text}" is neither yes nor no', { text }) };
    }
    case 'allergen mark': {
      const mark = markOf(text);
      if (mark === undefined) return { reason: say('"{text}" is neither yes nor no', { text }) };
      return mark === 'traces'
        ? { value: true, doubt: say('traces are treated as an allergen, to be safe') }
        : { value: mark === 'yes' };
    }
  }
}

// numbers

const PLAIN_NUMBER = /^\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
/** A sign and a number with its marks. Groups of three may be parted by a blank or an apostrophe. */
const NUMBER = /^([+-]?)\s*(\d{1,3}(?:[ '’\u00a0\u202f]\d{3})+(?:[.,]\d+)?(?!\d)|\d[\d.,]*|[.,]\d+)/;
/** Nobody measures in smaller parts; "1760/420" are kilojoules and kilocalories. */
const LARGEST_PARTS = 32;
const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)/;

const COUNTED =
  /^(?:(?:full |whole |ganze )?(?:servings?|serves|srv|svgs?|portions?|portionen|port|people|persons?|ppl|pax|personen|pers|pouch|pouches|bags?|baggies|packs?|packets?|pkts?|sachets?|beutel|btl|tuten?|packungen|packchen|pck|stuck|stk|pcs|pieces?|units?|x|left|ubrig|noch da|each|no|mal))+$/;

/** In front of a number, or behind it: the number is not exact. */
const ABOUT_BEFORE =
  /^(?:~|≈|∼|\+\/-|±|ca\.?|circa|c\.|approx(?:\.|imately)?|about|around|roughly|abt\.?|est\.?|etwa|ungef(?:ä|ae)hr|rund|gut|knapp|max\.?|up to|bis zu|bis|serves|feeds|für|for|à|a|@|=|je)\s*(?=[\d.,½¼¾⅓⅔]|one|two)/i;
const ABOUT_AFTER =
  / ?(?:\?{1,3}|ish|-ish|approx\.?|or so|-? ?ungef\.?|geschätzt|\(?(?:est|approx|ca|geschätzt|guess|estimate|estimated)\.?\)?)$/i;
const EXACT_BEFORE = /^(?:serves|feeds|für|for|à|a|@|=|je)\s/i;

/** Words for small counts, which people write out. */
const WORDS_FOR: Readonly<Record<string, number>> = {
  half: 0.5,
  'a half': 0.5,
  one: 1,
  a: 1,
  two: 2,
  couple: 2,
  'a couple': 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  dozen: 12,
  'a dozen': 12,
  'half a dozen': 6,
  'half dozen': 6,
  halb: 0.5,
  halbe: 0.5,
  ein: 1,
  eine: 1,
  eins: 1,
  einer: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  funf: 5,
  sechs: 6,
  sieben: 7,
  acht: 8,
  neun: 9,
  zehn: 10,
  elf: 11,
  zwolf: 12,
  'ein dutzend': 12,
  dutzend: 12,
  'ein halbes dutzend': 6,
};

const PER_AFTER: readonly (readonly [Basis, RegExp])[] = [
  ['100g', /^(?:per|pro|je|in|auf)? ?100 ?(?:g|gr|gramm?)$/],
  ['serving', /^(?:per |pro |je |a |p )?(?:serving|serve|srv|portion|port|person|pers|p|head|kopf)$/],
  [
    'pouch',
    /^(?:(?:per |pro |je |a |in |im )(?:bag|pouch|pack|packet|sachet|beutel|tute|packung|pkg)|bag|pouch|beutel)$/,
  ],
];
const GROSS_AFTER =
  /^(?:gross|brutto|(?:incl|including|inkl|with|mit|w)(?: the)? (?:bag|pouch|packaging|beutel|tute|verpackung))$/;
const NET_AFTER =
  /^(?:net|netto|dry|trocken|ohne beutel|without bag|excl bag|food|inhalt|liquid|flussig|fl)$/;

type Rules = Pick<CellRules, 'unit' | 'decimalMark'>;

/** @returns a number in the unit of the core. A unit in the cell wins over that of the column. */
function readAmount(
  text: string,
  { units, field }: Pick<FieldEntry, 'units'> & { readonly field?: FieldEntry['field'] },
  rules: Rules,
): Reading<number> {
  // "1760 / 420" would be a fraction otherwise.
  const energy = units?.includes('kcal') ? inTwoUnits(text, units, rules) : undefined;
  if (energy) return energy;
  const whole = readQuantity(text, units, rules);
  if ('value' in whole) return whole;
  return (
    (field === 'dryWeightG' || field === 'grossWeightG' || field === 'pouches'
      ? countAndWeight(text, field, rules)
      : undefined) ??
    inTwoUnits(text, units, rules) ??
    summed(text, units, rules) ??
    (field === undefined || !RANGED[field] ? undefined : readRange(text, units, rules, RANGED[field])) ??
    whole
  );
}

const MASSES: readonly ColumnUnit[] = ['g', 'kg', 'oz', 'lb'];

/** "240 g, 2 servings" and "250 g (for 2)" in a column of weights, "6 bags of 120 g" in one of counts. */
function countAndWeight(
  text: string,
  field: 'dryWeightG' | 'grossWeightG' | 'pouches',
  rules: Rules,
): Reading<number> | undefined {
  if (field === 'pouches') {
    const parts =
      /^(\d{1,3}) ?(?:(?:x|×|bags?|pouches|beutel|packs?|stk\.?|stück) )?(?:à|a|@|of|je|x|×|each|mit) ?(\d[^,;]*)$/i.exec(
        text.trim(),
      );
    const weight = parts && readQuantity(parts[2]!, MASSES, { ...rules, unit: undefined });
    return parts && weight && 'value' in weight && /\p{L}/u.test(parts[2]!)
      ? { value: Number(parts[1]), also: { pouchG: weight.value } }
      : undefined;
  }
  const parts = /^([^,;(/]+)[,;(/] ?(?:for |serves |für |reicht für )?([^,;()/ ][^,;()/]*)\)?$/i.exec(
    text.trim().replace(/(?<=\d),(?=\d)/g, '\u0001'),
  );
  if (!parts) return undefined;
  const [one, other] = [parts[1]!, parts[2]!].map((part) => part.replaceAll('\u0001', ',').trim()) as [
    string,
    string,
  ];
  const weightFirst = /\d\s*(?:g|gr|grams?|kg|oz|lbs?)\b/i.test(one);
  const weight = readQuantity(weightFirst ? one : other, MASSES, { ...rules, unit: undefined });
  const count =
    /^(\d+(?:[.,]5)?)\s*(?:servings?|portions?|portionen|port\.?|people|persons?|personen|pers\.?|p\.?)?$/i.exec(
      weightFirst ? other : one,
    );
  if ('reason' in weight || !count || (!weightFirst && !/\d\s*(?:g|gr|grams?|kg|oz|lbs?)\b/i.test(other)))
    return undefined;
  return { value: weight.value, also: { servings: Number(count[1]!.replace(',', '.')) } };
}

/** Of "250 to 300" the middle is taken, of a waiting time the end: food that waits longer is done. Counts are never taken from a range. */
const RANGED: Partial<Record<FieldEntry['field'], 'middle' | 'end'>> = {
  dryWeightG: 'middle',
  grossWeightG: 'middle',
  energyKcal: 'middle',
  waterMl: 'middle',
  proteinG: 'middle',
  fatG: 'middle',
  carbohydrateG: 'middle',
  steepMin: 'end',
  tareG: 'middle',
  volumeMl: 'middle',
};

function readRange(
  text: string,
  units: readonly ColumnUnit[] | undefined,
  rules: Rules,
  taken: 'middle' | 'end',
): Reading<number> | undefined {
  const at = / ?(?:-|–|—|(?<= )(?:to|bis|or|oder) ) ?(?=\d)/i.exec(text);
  if (!at || at.index === 0) return undefined;
  const parts = ['', text.slice(0, at.index), text.slice(at.index + at[0].length)];
  if (!/\d/.test(parts[1]!)) return undefined;
  const high = readQuantity(parts[2]!, units, rules);
  // "10 – 15 min": the unit stands behind both.
  const unit = /\p{L}.*/u.exec(parts[2]!)?.[0] ?? '';
  const low = readQuantity(
    /\p{L}/u.test(parts[1]!.replace(ABOUT_BEFORE, '')) ? parts[1]! : `${parts[1]} ${unit}`,
    units,
    rules,
  );
  if ('reason' in low || 'reason' in high || low.value >= high.value || high.value > 3 * low.value)
    return undefined;
  const value = taken === 'end' ? high.value : Number(((low.value + high.value) / 2).toPrecision(6));
  return {
    ...high,
    value,
    doubt:
      taken === 'end'
        ? say('"{text}" is a range; its end was taken', { text })
        : say('"{text}" is a range; its middle was taken', { text }),
  };
}

/** "1760 kJ / 420 kcal", "5 oz (142 g)": the same twice. */
function inTwoUnits(
  text: string,
  units: readonly ColumnUnit[] | undefined,
  rules: Rules,
): Reading<number> | undefined {
  if (!units) return undefined;
  const parts = /^([^/(|]+)[/(|] ?([^/()| ][^/()|]*)\)?$/.exec(text);
  if (!parts) return undefined;
  const [one, other] = [readQuantity(parts[1]!, units, rules), readQuantity(parts[2]!, units, rules)];
  if ('reason' in one) return undefined;
  if ('reason' in other) return undefined;
  const [plainOne, plainOther] = [
    readNumber(parts[1]!.trim(), rules.decimalMark),
    readNumber(parts[2]!.trim(), rules.decimalMark),
  ];
  // "1760 / 420" under "kJ / kcal".
  if (
    units.includes('kcal') &&
    'value' in plainOne &&
    'value' in plainOther &&
    plainOne.rest.trim() === '' &&
    plainOther.rest.trim() === ''
  ) {
    const [less, more] = [
      Math.min(plainOne.value, plainOther.value),
      Math.max(plainOne.value, plainOther.value),
    ];
    return Math.abs(more / less / 4.184 - 1) < 0.04 ? { value: less } : undefined;
  }
  if (Math.abs(one.value - other.value) > 0.06 * Math.max(one.value, other.value)) return undefined;
  return units.includes('kcal') && /kcal/i.test(parts[2]!) ? other : one;
}

/** "1 cup + 2 tbsp". */
function summed(
  text: string,
  units: readonly ColumnUnit[] | undefined,
  rules: Rules,
): Reading<number> | undefined {
  if (!units) return undefined;
  const parts = text
    .split(/\+|&|\bplus\b|\band\b|\bund\b/i)
    .map((part) => part.trim())
    .filter(Boolean);
  if (parts.length !== 2 || parts.some((part) => !/\d\s*\p{L}|[½¼¾⅓⅔]\s*\p{L}/u.test(part))) return undefined;
  const [one, other] = parts.map((part) => readQuantity(part, units, rules));
  if (!one || !other || 'reason' in one || 'reason' in other) return undefined;
  return { value: Number((one.value + other.value).toPrecision(12)) };
}

function readQuantity(
  given: string,
  units: readonly ColumnUnit[] | undefined,
  rules: Rules,
): Reading<number> {
  let text = given.trim();
  let isAbout = false;
  const before = ABOUT_BEFORE.exec(text);
  if (before) {
    isAbout = !EXACT_BEFORE.test(text);
    text = text.slice(before[0].length);
  }
  const after = ABOUT_AFTER.exec(text);
  if (after && after.index > 0 && /\d/.test(text.slice(0, after.index))) {
    isAbout = true;
    text = text.slice(0, after.index);
  }
  const read = exactQuantity(text, units, rules);
  if ('reason' in read) return text === given.trim() ? read : exactQuantity(given.trim(), units, rules);
  return isAbout ? { ...read, doubt: say('"{text}" is not exact', { text: given }) } : read;
}

function exactQuantity(
  text: string,
  units: readonly ColumnUnit[] | undefined,
  rules: Rules,
): Reading<number> {
  const read = numberInWords(text) ?? readNumber(text, rules.decimalMark);
  if ('reason' in read) return read;
  const { value } = read;
  const after = read.rest.trim();
  // A sign without a letter is no unit, and not nothing.
  const words = /[%°\p{Sc}]/u.test(after) ? after : plainWords(after.replace(/^[x×]\s*$/i, ''));
  if (!units)
    return words === '' || COUNTED.test(words.replaceAll(' per ', ' ').replace(/^per /, ''))
      ? { value }
      : { reason: say('"{text}" is not a number alone; remove "{after}"', { text, after }) };
  const unit = rules.unit ?? units[0]!;
  const inUnit = (
    cellUnit: ColumnUnit,
    said: Omit<Extract<Reading<number>, { value: number }>, 'value'> = {},
  ) => ({
    ...said,
    // Twelve digits hold what was written and drop the binary dust of the conversion.
    value: cellUnit === units[0] ? value : Number((value * unitsIn(cellUnit, units[0]!)).toPrecision(12)),
  });
  if (words === '') return inUnit(unit);
  const cellUnit = unitCalled(words, units);
  if (cellUnit) return inUnit(cellUnit);
  for (const [said, rest] of unitsAhead(words, units)) {
    if (NET_AFTER.test(rest)) return inUnit(said ?? unit);
    if (GROSS_AFTER.test(rest)) return inUnit(said ?? unit, { gross: true });
    const basis = PER_AFTER.find(([, pattern]) => pattern.test(rest));
    if (basis) return inUnit(said ?? unit, { per: basis[0] });
    if (said && /^(?:each|jeweils)$/.test(rest)) return inUnit(said);
  }
  return {
    reason: isUnit(words)
      ? say('"{after}" does not measure this; use {units}', { after, units: units.join(', ') })
      : say('"{after}" is not a known unit; use {units}', { after, units: units.join(', ') }),
  };
}

/** The words after a number, with and without a unit at their beginning. */
function unitsAhead(
  words: string,
  units: readonly ColumnUnit[],
): (readonly [ColumnUnit | undefined, string])[] {
  const list = words.split(' ');
  const found: (readonly [ColumnUnit | undefined, string])[] = [[undefined, words]];
  for (const length of [2, 1]) {
    const unit = list.length > length ? unitCalled(list.slice(0, length).join(' '), units) : undefined;
    if (unit) found.push([unit, list.slice(length).join(' ')]);
  }
  return found;
}

/** What the core has no unit for. Days as parts of a month of 30.44 days, the mean of the Gregorian calendar. */
const OTHER_UNITS: Partial<Record<ColumnUnit, number>> = {
  mg: 0.001,
  month: 1,
  year: 12,
  week: 7 / 30.44,
  day: 1 / 30.44,
};

/** How many of one unit another one is. */
function unitsIn(unit: ColumnUnit, core: ColumnUnit): number {
  const size = (of: ColumnUnit): number => OTHER_UNITS[of] ?? toCore(1, of as Parameters<typeof toCore>[1]);
  return size(unit) / size(core);
}

function numberInWords(text: string): NumberAndRest | undefined {
  if (!/^\p{L}/u.test(text)) return undefined;
  const words = text.trim().split(/\s+/);
  for (let length = Math.min(3, words.length); length > 0; length--) {
    const value = WORDS_FOR[plainWords(words.slice(0, length).join(' '))];
    if (value !== undefined) return { value, rest: words.slice(length).join(' ') };
  }
  return undefined;
}

/** Water, with its kind where the cell says it: "250 ml boiling", "1 1/2 c. hot", "none". */
function readWater(text: string, units: readonly ColumnUnit[] | undefined, rules: Rules): Reading<number> {
  const kind = WATER_VOCABULARY.meaning(text)?.[0];
  if (kind === 'none') return { value: 0, waterKind: kind };
  const whole = readAmount(text, { ...(units && { units }), field: 'waterMl' }, rules);
  if ('value' in whole) return whole;
  const words = text
    .trim()
    .replace(/[;()]|,(?!\d)/g, ' ')
    .split(/\s+/)
    .filter((word) => !/^(?:water|wasser|of|add|with|eau|mit)$/i.test(word));
  for (const fromEnd of [true, false])
    for (let length = Math.min(3, words.length - 1); length > 0; length--) {
      const said = fromEnd ? words.slice(-length) : words.slice(0, length);
      const rest = fromEnd ? words.slice(0, -length) : words.slice(length);
      const found = WATER_VOCABULARY.meaning(said.join(' '))?.[0];
      if (found === undefined || said.every((word) => /^[chC]\.?$/.test(word))) continue;
      const amount = readAmount(rest.join(' '), { ...(units && { units }), field: 'waterMl' }, rules);
      if ('value' in amount) return { ...amount, waterKind: found };
    }
  const bare = words.join(' ');
  const amount =
    bare === text ? whole : readAmount(bare, { ...(units && { units }), field: 'waterMl' }, rules);
  return 'value' in amount ? amount : whole;
}

function readWord<T extends string>(text: string, words: Vocabulary<T>): Reading<string> {
  const meant = words.meaning(text);
  return meant ? { value: meant[0]! } : { reason: words.unknown(text) };
}

type NumberAndRest = { readonly value: number; readonly rest: string } | { readonly reason: string };

export function readNumber(text: string, mark: DecimalMark): NumberAndRest {
  if (mark === '.' && PLAIN_NUMBER.test(text)) return { value: Number(text), rest: '' };
  const plain = text
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize('NFKD').replace('\u2044', '/')}`)
    .replace(/[\u2212\u2013]/g, '-')
    .replaceAll('\u2044', '/')
    .trim();
  const fraction = FRACTION.exec(plain);
  if (fraction && Number(fraction[3]) <= LARGEST_PARTS && Number(fraction[2]) <= 99) {
    const [read, whole = '0', above, below] = fraction;
    if (Number(below) === 0) return { reason: say('"{text}" divides by zero', { text }) };
    return { value: Number(whole) + Number(above) / Number(below), rest: plain.slice(read.length) };
  }
  if (PLAIN_NUMBER.test(plain) && /[eE]/.test(plain)) return { value: Number(plain), rest: '' };
  const number = NUMBER.exec(plain);
  if (!number) return { reason: say('"{text}" is not a number', { text }) };
  const [read, sign = '', digits = ''] = number;
  const rest = plain.slice(read.length);
  if (/^\s*[-–+\d]/.test(rest)) return { reason: say('"{text}" is not one single number', { text }) };
  const value = valueOf(digits, mark);
  if (typeof value === 'string') return { reason: value };
  return { value: sign === '-' ? -value : value, rest };
}

const GROUPED_BY = {
  ',': /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/,
  '.': /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d*)?$/,
} as const;
const DECIMALS_AFTER = { '.': /^\d*(?:\.\d*)?$/, ',': /^\d*(?:,\d*)?$/ } as const;

/** @returns the number that digits with their marks stand for, or the reason why that cannot be told. */
function valueOf(written: string, mark: DecimalMark): number | string {
  const digits = written.replace(/[ '’\u00a0\u202f]/g, '');
  const as = (decimal: '.' | ','): number | undefined => {
    const grouping = decimal === '.' ? ',' : '.';
    if (!DECIMALS_AFTER[decimal].test(digits) && !GROUPED_BY[grouping].test(digits)) return undefined;
    return Number(digits.replaceAll(grouping, '').replace(decimal, '.'));
  };
  if (mark !== 'either') {
    return (
      as(mark) ??
      say(
        '"{text}" is not a number with a decimal {mark, select, point {point} other {comma}}; check the decimal mark chosen for this file',
        { text: written, mark: mark === '.' ? 'point' : 'comma' },
      )
    );
  }
  const [point, comma] = [as('.'), as(',')];
  if (point !== undefined && comma !== undefined && point !== comma)
    return say('"{text}" can be read as {point} or {comma}; choose the decimal mark of this file', {
      text: written,
      point: String(point),
      comma: String(comma),
    });
  return point ?? comma ?? say('"{text}" is not a number', { text: written });
}

// dates

const MONTHS = [
  ['jan', 'january', 'januar', 'janner', 'janvier', 'janv'],
  ['feb', 'february', 'februar', 'fevrier', 'fevr', 'fev'],
  ['mar', 'march', 'marz', 'mrz', 'mars'],
  ['apr', 'april', 'avril', 'avr'],
  ['may', 'mai'],
  ['jun', 'june', 'juni', 'juin'],
  ['jul', 'july', 'juli', 'juillet', 'juil'],
  ['aug', 'august', 'aout'],
  ['sep', 'sept', 'september', 'septembre'],
  ['oct', 'october', 'okt', 'oktober', 'octobre'],
  ['nov', 'november', 'novembre'],
  ['dec', 'december', 'dez', 'dezember', 'decembre'],
];
const monthCalled = (word: string): number => MONTHS.findIndex((names) => names.includes(word)) + 1;

type DateRules = {
  /** Which end of a month or year is meant where the day is left out: food was sealed at its beginning, and keeps to its end. */
  readonly side?: 'start' | 'end';
  readonly year?: number | undefined;
};

/**
 * @returns an ISO 8601 date. A day and a month that can change places are named, not guessed. Without a day, it is the first of the month or year, or
 *   the last: "best before end" of a month or year (Regulation (EU) 1169/2011, Annex X).
 */
export function readDate(
  given: string,
  order: DateOrder,
  { side = 'start', year }: DateRules = {},
): Reading<string> {
  const text = given.replace(/\s+/g, ' ').trim();
  const date = text
    .replace(/(?<![T\s])[T\s]+\d{1,2}:\d{2}.*$/, '')
    .replace(
      /^(?:~|≈|ca\.?|circa|c\.|about|approx\.?|around|etwa|ungefähr|bb[ed]?|exp\.?|mhd|am|on|vom|the|by|bis) ?:? ?(?=[\p{L}\d'’])/iu,
      '',
    )
    .replace(/ ?(?:\?{1,3}|ish|or so|approx\.?)$/i, '')
    .trim();
  const about =
    date === text || /^(?:am|on|vom|the|by|bis|bb[ed]?|exp|mhd)\b/i.test(text)
      ? undefined
      : say('"{text}" is not exact', { text });
  const read = dateIn(text, date, order, side, year);
  return about && 'value' in read && !read.doubt ? { ...read, doubt: about } : read;
}

function dateIn(
  text: string,
  date: string,
  order: DateOrder,
  side: 'start' | 'end',
  year: number | undefined,
): Reading<string> {
  const iso =
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(date) ?? /^((?:19|20)\d\d)(\d\d)(\d\d)$/.exec(date);
  if (iso) return existing(text, Number(iso[1]), Number(iso[2]), Number(iso[3]));

  const numeric = /^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+['’]?(\d{4}|\d{2})$/.exec(date);
  if (numeric) {
    const [first, second, ofYear] = [Number(numeric[1]), Number(numeric[2]), fullYear(numeric[3]!)];
    if (order === 'day-first') return existing(text, ofYear, second, first);
    if (order === 'month-first') return existing(text, ofYear, first, second);
    // Day, month and year parted by points is how dates are written where the day comes first.
    if (first > 12 || first === second || /^\d+\.\s?\d+\./.test(date))
      return existing(text, ofYear, second, first);
    if (second > 12) return existing(text, ofYear, first, second);
    return {
      reason: say('"{text}" can be {one} or {other}; choose the order of day and month of this file', {
        text,
        one: isoDate(ofYear, second, first),
        other: isoDate(ofYear, first, second),
      }),
    };
  }

  const yearAlone = /^(?:19|20)\d\d$/.exec(date);
  if (yearAlone) return wholeSpan(text, Number(date), 1, 12, side);
  const yearMonth = /^((?:19|20)\d\d)(?: ?[-/.] ?| )(\d{1,2})$/.exec(date);
  if (yearMonth) return monthOf(text, Number(yearMonth[1]), Number(yearMonth[2]), side);
  const monthYear =
    /^(\d{1,2})(?: ?[-/.] ?| )['’]?((?:19|20)\d\d)$/.exec(date) ??
    /^(\d{1,2})(?: ?[-/.] ?| )?['’](\d\d)$/.exec(date);
  if (monthYear) return monthOf(text, fullYear(monthYear[2]!), Number(monthYear[1]), side);
  const shortMonthYear = /^(\d{1,2})[-/](\d\d)$/.exec(date);
  // 03/26 with a second part that no month has; a day of that number would leave the year out.
  if (
    shortMonthYear &&
    Number(shortMonthYear[1]) <= 12 &&
    Number(shortMonthYear[2]) > 12 &&
    year === undefined
  )
    return isLikelyYear(Number(shortMonthYear[2]))
      ? monthOf(text, fullYear(shortMonthYear[2]!), Number(shortMonthYear[1]), side)
      : yearless(text);
  const noYear = /^(\d{1,2})[-/. ]+(\d{1,2})\.?$/.exec(date);
  if (noYear) {
    if (year === undefined) return yearless(text);
    return dateIn(
      text,
      `${noYear[1]}${/\./.test(date) ? '.' : '/'}${noYear[2]}${/\./.test(date) ? '.' : '/'}${year}`,
      order,
      side,
      undefined,
    );
  }
  const quarter =
    /^(?:q([1-4])(?: ?[-/] ?| )?((?:19|20)\d\d|\d\d)|((?:19|20)\d\d)(?: ?[-/] ?| )?q([1-4]))$/i.exec(date);
  if (quarter) {
    const number = Number(quarter[1] ?? quarter[4]);
    return wholeSpan(text, fullYear(quarter[2] ?? quarter[3]!), 3 * number - 2, 3 * number, side);
  }

  const words = plainWords(date.replace(/['’](?=\d\d\b)/g, ' 20'))
    .split(' ')
    .filter((word) => !DAY_NAMES.has(word) && !/^(?:of|the|vom|den|der|im|in|about)$/.test(word));
  const part = PARTS_OF_TIME[words[0] ?? ''];
  if (part && words.length > 1) words.shift();
  if (part && /^(?:of|des|vom)$/.test(words[0] ?? '')) words.shift();
  const month = words.map(monthCalled).find((found) => found > 0);
  const numbers = words.filter((word) => /^\d+(?:st|nd|rd|th|er)?$/.test(word));
  if (part && !month && words.length === 1 && /^(?:19|20)\d\d$/.test(words[0]!)) {
    const [from, to] = part === 'start' ? [1, 4] : part === 'middle' ? [5, 8] : [9, 12];
    return wholeSpan(text, Number(words[0]), from, to, side);
  }
  const season = SEASONS[words[0] ?? ''];
  if (season && words.length === 2 && /^(?:(?:19|20)\d\d|\d\d)$/.test(words[1]!))
    return wholeSpan(text, fullYear(words[1]!), season[0], season[1], side);
  if (month && words.length === 2 && numbers.length === 1) {
    const number = Number.parseInt(numbers[0]!, 10);
    const isFirst = /^\d/.test(words[0]!);
    if (/^(?:19|20)\d\d$/.test(numbers[0]!)) return monthOf(text, number, month, side, part);
    // "Mar 26" ends in a year, "26 Mar" and "March 3" have none; 32 and more is no day.
    if (!isFirst && numbers[0]!.length === 2 && isLikelyYear(number) && year === undefined)
      return monthOf(text, 2000 + number, month, side, part);
    if (number > 31) return monthOf(text, fullYear(numbers[0]!), month, side, part);
    return year === undefined ? yearless(text) : existing(text, year, month, number);
  }
  if (month && words.length === 1)
    return year === undefined ? yearless(text) : monthOf(text, year, month, side, part);
  if (month && words.length === 3 && numbers.length === 2) {
    // "2026 Mar 14": a number of four digits is the year, wherever it stands.
    const years = numbers.filter((number) => /^\d{4}$/.test(number));
    const [day, of] =
      years.length === 1 && numbers[0] === years[0] ? [numbers[1]!, numbers[0]] : [numbers[0]!, numbers[1]!];
    return existing(text, fullYear(of!.replace(/\D/g, '')), month, Number.parseInt(day ?? '', 10));
  }
  const serial = /^\d{5}(?:\.0+)?$/.exec(date);
  if (serial && Number(date) >= 40_000 && Number(date) < 60_000)
    return {
      value: new Date(Date.UTC(1899, 11, 30) + Math.floor(Number(date)) * 86_400_000)
        .toISOString()
        .slice(0, 10),
      doubt: say('"{text}" was taken for a day as spreadsheets count them', { text }),
    };
  const keeps = readQuantity(
    date.replace(/^(?:\+|for|for about|keeps|lasts|hält)\s*/i, ''),
    ['month', 'year', 'week', 'day'],
    {
      unit: undefined,
      decimalMark: 'either',
    },
  );
  if (side === 'end' && 'value' in keeps && /\p{L}/u.test(date))
    return { value: '', keepsMonths: keeps.value };
  return { reason: say('"{text}" is not a date; write one such as 2026-07-04', { text }) };
}

/** Two digits that are a year of a shelf rather than a day of a month: from 2019 to 2039, where no day of that number is meant by anybody. */
const isLikelyYear = (number: number): boolean => number >= 19 && number <= 39;

const yearless = (text: string): Reading<string> => ({
  reason: say('"{text}" has no year; say once for the file which year is meant', { text }),
  isYearMissing: true,
});

const DAY_NAMES = new Set(
  'mon monday tue tues tuesday wed wednesday thu thur thurs thursday fri friday sat saturday sun sunday montag dienstag mittwoch donnerstag freitag samstag sonnabend sonntag mo di mi do fr sa so'.split(
    ' ',
  ),
);
const PARTS_OF_TIME: Readonly<Record<string, 'start' | 'middle' | 'end'>> = {
  early: 'start',
  start: 'start',
  beginning: 'start',
  anfang: 'start',
  mid: 'middle',
  middle: 'middle',
  mitte: 'middle',
  late: 'end',
  end: 'end',
  ende: 'end',
};
/** Meteorological seasons; winter is that which begins the year. */
const SEASONS: Readonly<Record<string, readonly [number, number]>> = {
  spring: [3, 5],
  fruhling: [3, 5],
  fruhjahr: [3, 5],
  summer: [6, 8],
  sommer: [6, 8],
  autumn: [9, 11],
  fall: [9, 11],
  herbst: [9, 11],
};

const lastDay = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate();

function monthOf(
  text: string,
  year: number,
  month: number,
  side: 'start' | 'end',
  part?: 'start' | 'middle' | 'end',
): Reading<string> {
  if (month < 1 || month > 12) return existing(text, year, month, 1);
  if (!part) return wholeSpan(text, year, month, month, side);
  const days: Record<typeof part, readonly [number, number]> = {
    start: [1, 10],
    middle: [11, 20],
    end: [21, lastDay(year, month)],
  };
  return {
    value: isoDate(year, month, days[part][side === 'start' ? 0 : 1]),
    doubt: say('"{text}" has no day', { text }),
  };
}

function wholeSpan(
  text: string,
  year: number,
  from: number,
  to: number,
  side: 'start' | 'end',
): Reading<string> {
  const value = side === 'start' ? isoDate(year, from, 1) : isoDate(year, to, lastDay(year, to));
  return {
    value,
    doubt:
      side === 'start'
        ? say('"{text}" has no day; the first was taken, {value}', { text, value })
        : say('"{text}" has no day; the last was taken, {value}', { text, value }),
  };
}

const isoDate = (year: number, month: number, day: number): string =>
  `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

const fullYear = (text: string): number => (text.length === 2 ? 2000 + Number(text) : Number(text));

function existing(text: string, year: number, month: number, day: number): Reading<string> {
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day)
    return { value: date.toISOString().slice(0, 10) };
  return {
    reason:
      month > 12
        ? say('"{text}" has no month {month}; check the order of day and month chosen for this file', {
            text,
            month: String(month),
          })
        : say('"{text}" is no day of the calendar', { text }),
  };
}

// words

const parts = (text: string): string[] =>
  text
    .split(/[;,/|+&\n]|\s(?:and|und|et)\s/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');

function readList<T extends string>(text: string, words: Vocabulary<T>): Reading<T[]> {
  const found = new Set<T>();
  for (const part of parts(text)) {
    const meant = words.meaning(part);
    if (!meant) return { reason: words.unknown(part) };
    meant.forEach((code) => found.add(code));
  }
  return { value: [...found] };
}

function readWaterKind(text: string): Reading<string> {
  const meant = WATER_VOCABULARY.meaning(text.replace(/(?<!\s)\s+(?:water|wasser)$/i, ''));
  return meant ? { value: meant[0]! } : { reason: WATER_VOCABULARY.unknown(text) };
}

/** Words before a list of allergens: that they are in it, or may be. */
const CONTAINS = /^(?:allergens?|allergene|allergènes?|contains?|enthält|contient|zutaten mit)\b\s*/i;
const MAY_CONTAIN =
  /^(?:may (?:also )?(?:contain|be present)(?: traces(?: of)?)?|kann (?:auch )?(?:spuren von|enthalten)?|(?:enthält )?spuren(?: von)?|peut contenir(?: des traces(?: de| d['’])?)?|(?:contient des )?traces? (?:éventuelles? )?(?:de|d['’])|(?:contains? )?traces?(?: of)?)(?=\s|$|(?<=['’]))\s*/i;
/** The same after it. */
const AFTER = /\s(?:enthalten|möglich|possible|possibles)$/i;
const SAYS_FREE =
  /(?:^|\s)(?:no|not|without|free|ohne|kein|keine|keinen|nicht|frei|sans|pas|non)(?:\s|$)|\w(?:-free|frei)(?:\s|$)/i;

/** The names in a cell of allergens: brackets, colons and full stops part them as commas do. */
const allergenParts = (text: string): string[] =>
  text
    .split(/[;,/|+&\n():.[\]]|\s(?:and|und|et|or|oder|ou|sowie)\s/i)
    .map((part) => part.trim())
    .filter((part) => /[\p{L}\p{N}]/u.test(part));
/** That it is only a trace, after a name; and that it is not sure, before one. */
const TRACES_AFTER = /\s?(?:traces?|spuren(?: enthalten)?|may contain)\.?$/i;
const MAYBE = /^(?:maybe|possibly|evtl|eventuell|traces of)(?:\.?\s+|\.?$)/i;

/**
 * What may be in it counts as being in it: nobody who avoids it is served it. Where a part cannot be read, the list stays open: what it does not name is
 * then not known, and the lot is served to nobody who avoids anything.
 */
function readAllergens(text: string): Reading<string[] | undefined> {
  if (saysNothing(text)) return { value: undefined };
  if (saysNone(text)) return { value: [] };
  const found = new Set<string>();
  const unread: string[] = [];
  let traces = false;
  let open = false;
  // What stands in brackets or behind a colon is looked at like the rest: "wheat (may contain milk)".
  for (const part of allergenParts(text)) {
    if (OTHERS_OPEN.has(plainWords(part))) {
      open = true;
      continue;
    }
    if (SAYS_FREE.test(part)) {
      unread.push(
        say('"{text}" says what the food is free of. List what it contains, or write "none"', { text: part }),
      );
      continue;
    }
    const isTraces = MAY_CONTAIN.test(part) || TRACES_AFTER.test(part) || MAYBE.test(part);
    traces ||= isTraces;
    const bare = part
      .replace(MAYBE, '')
      .replace(MAY_CONTAIN.test(part) ? MAY_CONTAIN : CONTAINS, '')
      .replace(/^(?:with|mit|incl(?:uding)?|inkl)\.?(?:\s+|$)/i, '')
      .replace(AFTER, '')
      .replace(TRACES_AFTER, '')
      .trim();
    if (bare === '') continue;
    const meant = allergensNamed(bare);
    if (!meant)
      unread.push(
        saysNone(bare)
          ? say('"{text}" lists allergens and says "{bare}"; write one or the other', { text, bare })
          : ALLERGEN_VOCABULARY.unknown(bare),
      );
    else meant.forEach((code) => found.add(code));
  }
  if (found.size === 0 && !open)
    // "allergens:" alone lists nothing, and does not say that there are none
    return { reason: unread.length > 0 ? unread.join('; ') : ALLERGEN_VOCABULARY.unknown(text) };
  const doubts = [...unread, ...(traces ? [say('traces are treated as an allergen, to be safe')] : [])];
  return {
    value: [...found],
    ...((open || unread.length > 0) && { open: true }),
    ...(doubts.length > 0 && { doubt: doubts.join('; ') }),
  };
}

/** How an export writes that a list of allergens is not all. */
export const OPEN_LIST = 'others not declared';
const OTHERS_OPEN = new Set([
  OPEN_LIST,
  'others not known',
  'rest unknown',
  'others unknown',
  'andere nicht bekannt',
  'rest unbekannt',
]);

/** A diet that is not known is left out with a warning: the pouch is then offered to fewer people, not to more. */
function readDiets(text: string): Reading<string[]> {
  if (saysNothing(text) || saysNone(text)) return { value: [] };
  const found = new Set<string>();
  const left: string[] = [];
  for (const part of parts(text)) {
    const meant = DIET_VOCABULARY.meaning(part);
    if (meant) meant.forEach((code) => found.add(code));
    else left.push(DIET_VOCABULARY.unknown(part));
  }
  return {
    value: [...found],
    ...(left.length > 0 && { doubt: say('left out: {what}', { what: left.join('; ') }) }),
  };
}

// money

/** @returns the currency, when it is that of the shelf. */
export function readCurrency(text: string, currency: string): Reading<string> {
  return signsOf(currency).has(text.trim().toUpperCase())
    ? { value: currency }
    : {
        reason: say(
          '"{text}" is not {currency}, in which this shelf counts; convert the cost, or change the currency in the settings',
          { text, currency },
        ),
      };
}

/** @returns an amount in minor units; a fraction of the smallest coin is rounded with a doubt. */
function readCost(text: string, mark: DecimalMark, currency: string): Reading<number> {
  const begins = text.search(/[\d.,+\u2212-]/);
  const start = begins < 0 ? text.length : begins;
  const end = Math.max(start, text.search(/[\d.,][^\d.,]*$/) + 1);
  for (const sign of [text.slice(0, start).trim(), text.slice(end).trim()]) {
    const read = sign === '' ? undefined : readCurrency(sign, currency);
    if (read && 'reason' in read) return read;
  }
  const read = readNumber(text.slice(start, end), mark);
  if ('reason' in read) return read;
  if (read.rest.trim() !== '') return { reason: say('"{text}" is not an amount of money', { text }) };
  const minor = moneyToMinor(read.value, currency);
  const exact = Math.abs(moneyToMinor(read.value * 1000, currency) - minor * 1000) < 1;
  return exact
    ? { value: minor }
    : {
        value: minor,
        doubt: say('"{text}" is rounded to the smallest coin of {currency}', { text, currency }),
      };
}
