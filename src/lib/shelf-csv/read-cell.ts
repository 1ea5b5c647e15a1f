import { toCore } from '../planning/units/convert.ts';
import { moneyToMinor } from '../planning/units/money.ts';
import { signsOf } from './currency-words.ts';
import { plainWords, type ColumnUnit, type FieldEntry } from './fields.ts';
import { isUnit, unitCalled } from './unit-words.ts';
import {
  ALLERGEN_VOCABULARY,
  allergensNamed,
  DIET_VOCABULARY,
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

/** What a cell says, with a doubt worth a warning; or the reason why it cannot be read. `undefined`: it says nothing. */
export type Reading<T> = { readonly value: T; readonly doubt?: string } | { readonly reason: string };

export type CellRules = {
  readonly unit: ColumnUnit | undefined;
  readonly decimalMark: DecimalMark;
  readonly dateOrder: DateOrder;
  /** ISO 4217 code in which the shelf counts. */
  readonly currency: string;
};

/** No list of allergens is longer. What is, would be searched for numbers and words like known ones at length. */
const LONGEST_CELL = 1000;

/** Reads one cell that is not empty for the field of its column. Costs are for what the column says, not yet per serving. */
export function readCell(
  entry: Pick<FieldEntry, 'kind' | 'units'>,
  text: string,
  rules: CellRules,
): Reading<unknown> {
  if (entry.kind === 'text') return { value: text };
  if (text.length > LONGEST_CELL)
    return {
      reason: say('"{beginning}…" is longer than {most} characters; is it in the right column?', {
        beginning: text.slice(0, 20),
        most: String(LONGEST_CELL),
      }),
    };
  switch (entry.kind) {
    case 'number':
      return readQuantity(text, entry.units, rules.unit, rules.decimalMark);
    case 'date':
      return readDate(text, rules.dateOrder);
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
  }
}

// numbers

const PLAIN_NUMBER = /^\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
/** A sign and a number with its marks. Groups of three may be parted by a blank or an apostrophe. */
const NUMBER = /^([+-]?)\s*(\d{1,3}(?:[ '’\u00a0\u202f]\d{3})+(?:[.,]\d+)?(?!\d)|\d[\d.,]*|[.,]\d+)/;
const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)/;

const COUNTED =
  /^(?:servings?|portions?|portionen|pouch|pouches|bags?|packs?|packets?|sachets?|beutel|stuck|pcs|pieces?|x)$/;

/** @returns a number in the unit of the core. A unit in the cell wins over that of the column. */
function readQuantity(
  text: string,
  units: readonly ColumnUnit[] | undefined,
  columnUnit: ColumnUnit | undefined,
  mark: DecimalMark,
): Reading<number> {
  const read = readNumber(text, mark);
  if ('reason' in read) return read;
  const { value } = read;
  const after = read.rest.trim();
  if (!units)
    return after === '' || COUNTED.test(plainWords(after))
      ? { value }
      : { reason: say('"{text}" is not a number alone; remove "{after}"', { text, after }) };
  const cellUnit = after === '' ? undefined : unitCalled(plainWords(after), units);
  if (after !== '' && !cellUnit)
    return {
      reason: isUnit(plainWords(after))
        ? say('"{after}" does not measure this; use {units}', { after, units: units.join(', ') })
        : say('"{after}" is not a known unit; use {units}', { after, units: units.join(', ') }),
    };
  const unit = cellUnit ?? columnUnit ?? units[0]!;
  // Twelve digits hold what was written and drop the binary dust of the conversion.
  return { value: unit === units[0] ? value : Number(toCore(value, unit).toPrecision(12)) };
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
  if (fraction) {
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

/** @returns an ISO 8601 date. A day and a month that can change places are named, not guessed. */
export function readDate(text: string, order: DateOrder): Reading<string> {
  const date = text.replace(/(?<![T\s])[T\s]+\d{1,2}:\d{2}.*$/, '');
  const iso =
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(date) ?? /^((?:19|20)\d\d)(\d\d)(\d\d)$/.exec(date);
  if (iso) return existing(text, Number(iso[1]), Number(iso[2]), Number(iso[3]));

  const numeric = /^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4}|\d{2})$/.exec(date);
  if (numeric) {
    const [first, second, year] = [Number(numeric[1]), Number(numeric[2]), fullYear(numeric[3]!)];
    if (order === 'day-first') return existing(text, year, second, first);
    if (order === 'month-first') return existing(text, year, first, second);
    if (first > 12 || first === second) return existing(text, year, second, first);
    if (second > 12) return existing(text, year, first, second);
    return {
      reason: say('"{text}" can be {one} or {other}; choose the order of day and month of this file', {
        text,
        one: isoDate(year, second, first),
        other: isoDate(year, first, second),
      }),
    };
  }

  const words = plainWords(date).split(' ');
  const month = words.map(monthCalled).find((found) => found > 0);
  const numbers = words.filter((word) => /^\d+(?:st|nd|rd|th|er)?$/.test(word));
  if (month && words.length === 3 && numbers.length === 2) {
    const [first, second] = numbers as [string, string];
    const yearFirst = first.length === 4;
    return existing(
      text,
      fullYear(yearFirst ? first : second),
      month,
      parseInt(yearFirst ? second : first, 10),
    );
  }
  if (/^\d{5}$/.test(date))
    return {
      reason: say(
        '"{text}" is the number of a day inside a spreadsheet; format the column as a date, such as 2026-07-04, and save again',
        { text },
      ),
    };
  if (/^\d{1,2}[-/.]\d{4}$|^\d{4}-\d{1,2}$/.test(date))
    return { reason: say('"{text}" has no day; write a date such as 2026-07-04', { text }) };
  return { reason: say('"{text}" is not a date; write one such as 2026-07-04', { text }) };
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

/** What may be in it counts as being in it: nobody who avoids it is served it. */
function readAllergens(text: string): Reading<string[] | undefined> {
  if (saysNothing(text)) return { value: undefined };
  if (saysNone(text)) return { value: [] };
  const found = new Set<string>();
  let traces = false;
  for (const part of allergenParts(text)) {
    if (SAYS_FREE.test(part))
      return {
        reason: say('"{text}" says what is not in it; list what it holds, or write "none"', { text: part }),
      };
    const isTraces = MAY_CONTAIN.test(part);
    traces ||= isTraces;
    const bare = part
      .replace(isTraces ? MAY_CONTAIN : CONTAINS, '')
      .replace(AFTER, '')
      .trim();
    if (bare === '') continue;
    const meant = allergensNamed(bare);
    if (!meant)
      return {
        reason: saysNone(bare)
          ? say('"{text}" lists allergens and says "{bare}"; write one or the other', { text, bare })
          : ALLERGEN_VOCABULARY.unknown(bare),
      };
    meant.forEach((code) => found.add(code));
  }
  // "allergens:" alone lists nothing, and does not say that there are none
  if (found.size === 0) return { reason: ALLERGEN_VOCABULARY.unknown(text) };
  return {
    value: [...found],
    ...(traces && { doubt: say('traces count as contained, to be on the safe side') }),
  };
}

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
