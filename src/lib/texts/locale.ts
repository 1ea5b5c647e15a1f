/* How the language around writes numbers, shares, money, lists, dates and units. */
import { isEnglish, language, type Language } from './languages.ts';

/** Of the languages whose tag leaves open how dates and lists are written. */
const LOCALES: { readonly [tag in Language]?: string } = { en: 'en-GB' };
const locale = (): string => LOCALES[language()] ?? language();

/** Formats take a hundred times longer to make than to use, so each is made once for each language. */
function made<Format>(make: (locale: string) => Format): () => Format {
  const formats = new Map<string, Format>();
  return () => {
    const tag = locale();
    let format = formats.get(tag);
    if (format === undefined) formats.set(tag, (format = make(tag)));
    return format;
  };
}

const numberFormats = new Map<string, () => Intl.NumberFormat>();

/** @returns the number as it is written in the language around. */
export function sayNumber(value: number, options: Intl.NumberFormatOptions = {}): string {
  const key = JSON.stringify(options);
  let format = numberFormats.get(key);
  if (!format) numberFormats.set(key, (format = made((tag) => new Intl.NumberFormat(tag, options))));
  return format().format(value);
}

/**
 * @param share 1 is the whole
 * @returns "97%", with the blank that some languages put before the sign: `sayPercent(0.125, 1)` is "12.5%"
 */
export const sayPercent = (share: number, digits = 0): string =>
  sayNumber(share + 0, {
    style: 'percent',
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: false,
  });

const beforePercent = made(
  (tag) =>
    new Intl.NumberFormat(tag, { style: 'percent' }).formatToParts(1).find(({ type }) => type === 'literal')
      ?.value ?? '',
);

/** @returns a written number with its unit: "340 ml", "16.8 L", "97%". */
export const withUnit = (figure: string, unit: string): string =>
  `${figure}${unit === '%' ? beforePercent() : ' '}${sayUnit(unit)}`;

/** @returns whether the language writes a comma before decimals. */
export const writesDecimalComma = (): boolean => sayNumber(0.5).includes(',');

/** @returns whether the language writes the day of a date before its month, in figures too. */
export const writesDayFirst = (): boolean => !isEnglish(language());

const lists = {
  conjunction: made((tag) => new Intl.ListFormat(tag, { type: 'conjunction' })),
  disjunction: made((tag) => new Intl.ListFormat(tag, { type: 'disjunction' })),
};

/** @returns "a, b and c" in the language around. */
export const sayList = (items: readonly string[], type: keyof typeof lists = 'conjunction'): string =>
  lists[type]().format(items);

const plurals = {
  cardinal: made((tag) => new Intl.PluralRules(tag)),
  ordinal: made((tag) => new Intl.PluralRules(tag, { type: 'ordinal' })),
};

/** @returns which of a language's plurals goes with a number, as CLDR names them. */
export const pluralOf = (value: number, type: Intl.PluralRuleType): string => plurals[type]().select(value);

/** @returns the sign of a unit: a small l beside figures reads as 1, so English writes the litre large. */
export const sayUnit = (unit: string): string => (unit === 'l' && isEnglish(language()) ? 'L' : unit);

const atNoon = (date: string): Date => new Date(`${date}T12:00:00Z`);
const dateFormat = (options: Intl.DateTimeFormatOptions) =>
  made((tag) => new Intl.DateTimeFormat(tag, options));
const ofDay = { day: 'numeric', month: 'short', timeZone: 'UTC' } as const;
const withWeekdayAndYear = dateFormat({ ...ofDay, weekday: 'short', year: 'numeric' });
const withWeekday = dateFormat({ ...ofDay, weekday: 'short' });
const withYear = dateFormat({ ...ofDay, year: 'numeric' });
const withClock = dateFormat({
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: 'numeric',
  minute: '2-digit',
});

/** @returns a calendar date with its weekday: "Sat, 4 Jul 2026" or "Sat, Jul 4, 2026". */
export const showDate = (date: string): string => withWeekdayAndYear().format(atNoon(date));

/** @returns a calendar date within a trip, where the year goes without saying: "Sat, 4 Jul" or "Sat, Jul 4". */
export const showDay = (date: string): string => withWeekday().format(atNoon(date));

/** @returns the first and last day in one: "4–8 Jul 2026" or "Jul 4 – 8, 2026". */
export const showDates = (first: string, last: string): string =>
  withYear().formatRange(atNoon(first), atNoon(last));

/** @returns an instant by the clock of whoever looks: "Sat, 4 Jul, 18:30" or "Sat, Jul 4, 6:30 PM". @param at ISO 8601 */
export const showInstant = (at: string): string => withClock().format(new Date(at));
