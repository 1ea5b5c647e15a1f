import { IntlMessageFormat, type Formatters } from 'intl-messageformat';

/** The languages of the program, each by its own name. English is the language of the sources. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;
export type Language = keyof typeof LANGUAGES;

/** A language's texts, found by the English ones. */
export type Catalog = Readonly<Record<string, string>>;

declare const marked: unique symbol;
/** An English text that stands in a table and is said later. */
export type Text = string & { readonly [marked]: true };

export type Values = Readonly<Record<string, string | number>>;

/** A literal text, or one marked by `text`: nothing that is put together at run time can be looked up. */
type Sayable<Source extends string> = Source extends Text ? Source : string extends Source ? never : Source;

const catalogs: { [language in Language]?: Catalog } = { en: {} };
const formats = new Map<string, IntlMessageFormat>();
let languageNow: () => Language = () => 'en';

/** @returns whether the program has that language. */
export const isLanguage = (value: unknown): value is Language =>
  typeof value === 'string' && Object.hasOwn(LANGUAGES, value);

/**
 * Sets where the language comes from: on the server the request, in a browser the page, in a thread the task. Like the locale of `Intl`, it is
 * around everything that is said instead of being handed through every function.
 */
export function useLanguage(source: () => Language): void {
  languageNow = source;
}

/** Gives a language its texts. Until then it says the English ones. */
export function useCatalog(language: Language, catalog: Catalog): void {
  catalogs[language] = catalog;
  formats.clear();
}

/** @returns the language in which things are said here and now. */
export function language(): Language {
  return languageNow();
}

/** Marks a text of a table, so that it is found for translation. `say` says it. */
export const text = <const Source extends string>(source: Source) => source as Source & Text;

/**
 * Says a text in the language around: `say('{count, plural, one {# pouch} other {# pouches}} left', { count })`.
 *
 * @param source English, as an ICU MessageFormat pattern; it is also the key of the translation. Numbers by `#` and `{n, number}` have at most one decimal;
 *   what needs other digits, or a unit, is handed in as text.
 * @throws FormatError where a value is missing
 * @see https://unicode-org.github.io/icu/userguide/format_parse/messages/
 */
export function say<const Source extends string>(source: Sayable<Source>, values?: Values): string {
  const pattern = patternOf(source);
  return /[{']/.test(pattern) ? String(formatOf(pattern, true).format(values)) : pattern;
}

/** Words of a said text, and the tag that marks them, if any. */
export type RichText = readonly { readonly words: string; readonly tag?: string }[];

/**
 * Says a text with marked parts, for `<Rich>`: `sayRich('See <link>the method</link> of {name}.', { name })`. The text alone marks; a value that looks like a tag, or
 * like a pattern, is words.
 *
 * @throws as `say`; SyntaxError where a tag is not closed
 */
export function sayRich<const Source extends string>(source: Sayable<Source>, values?: Values): RichText {
  const pattern = patternOf(source);
  const marks = Array.from(pattern.matchAll(TAG), ([, tag = '']) => [
    tag,
    (words: readonly unknown[]) => ({ words: words.join(''), tag }),
  ]);
  return formatOf(pattern, false)
    .formatToParts<RichText[number]>({ ...values, ...Object.fromEntries(marks) })
    .map(({ value }) => (typeof value === 'string' ? { words: value } : value));
}

const TAG = /<(\w+)>/g;

const patternOf = (source: string): string => catalogs[languageNow()]?.[source] || source;

function formatOf(pattern: string, ignoreTag: boolean): IntlMessageFormat {
  const spoken = languageNow();
  const key = `${spoken}${ignoreTag}\n${pattern}`;
  let format = formats.get(key);
  if (!format)
    formats.set(key, (format = new IntlMessageFormat(pattern, spoken, undefined, { ignoreTag, formatters })));
  return format;
}

/** Says the label of a field in the middle of a sentence: small in English, as it is where nouns are written large. */
export function sayWithin(label: Text): string {
  const said = say(label);
  return languageNow() === 'en' ? said.toLowerCase() : said;
}

const numberFormats = new Map<string, Intl.NumberFormat>();

/** @returns the number as it is written in the language around. */
export function sayNumber(value: number, options: Intl.NumberFormatOptions = {}): string {
  return numberFormat(languageNow(), options).format(value);
}

/** @returns "a, b and c" in the language around. */
export function sayList(
  items: readonly string[],
  type: 'conjunction' | 'disjunction' = 'conjunction',
): string {
  return new Intl.ListFormat(languageNow() === 'en' ? 'en-GB' : languageNow(), { type }).format(items);
}

function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale}\n${JSON.stringify(options)}`;
  let format = numberFormats.get(key);
  if (!format) numberFormats.set(key, (format = new Intl.NumberFormat(locale, options)));
  return format;
}

const pluralRules = new Map<string, Intl.PluralRules>();

/** Making the rules takes a hundred times longer than saying a text with them. */
function pluralRulesOf(locale: string, options: Intl.PluralRulesOptions | undefined): Intl.PluralRules {
  const key = `${locale}\n${options?.type}`;
  let rules = pluralRules.get(key);
  if (!rules) pluralRules.set(key, (rules = new Intl.PluralRules(locale, options)));
  return rules;
}

const formatters: Formatters = {
  getNumberFormat: (locales, options) =>
    numberFormat(String(locales), { maximumFractionDigits: 1, ...options }),
  getDateTimeFormat: (...given) => new Intl.DateTimeFormat(...given),
  getPluralRules: (locales, options) => pluralRulesOf(String(locales), options),
};
