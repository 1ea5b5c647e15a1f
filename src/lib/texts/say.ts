import { language, type Language } from './languages.ts';
import { pluralOf, sayNumber } from './locale.ts';
import {
  formatMessage,
  parseMessage,
  type Conventions,
  type Message,
  type Part,
  type Values,
} from './message-format.ts';

export { isLanguage, language, LANGUAGES, useLanguage, type Language } from './languages.ts';
export { sayList, sayNumber, sayPercent, withUnit } from './locale.ts';
export type { Values } from './message-format.ts';

/** A language's texts, found by the English ones. */
export type Catalog = Readonly<Record<string, string>>;

declare const marked: unique symbol;
/** An English text that stands in a table and is said later. */
export type Text = string & { readonly [marked]: true };

/** A literal text, or one marked by `text`: nothing that is put together at run time can be looked up. */
type Sayable<Source extends string> = Source extends Text ? Source : string extends Source ? never : Source;

/** Finds a language's text by the English one. */
export type Translate = (source: string) => string | undefined;

const translations: { [language in Language]?: Translate } = {};
/** Gives a language its texts. Until then it says the English ones. */
export function useCatalog(language: Language, texts: Catalog | Translate): void {
  translations[language] = typeof texts === 'function' ? texts : (source) => texts[source];
}

/** Marks a text of a table, so that it is found for translation. `say` says it. */
export const text = <const Source extends string>(source: Source) => source as Source & Text;

/**
 * Says a text in the language around: `say('{count, plural, one {# pouch} other {# pouches}} left', { count })`.
 *
 * @param source English, as an ICU MessageFormat pattern; it is also the key of the translation. Numbers by `#` and `{n, number}` have at most one decimal;
 *   what needs other digits, or a unit, is handed in as text.
 * @throws RangeError where a value is missing
 * @see https://unicode-org.github.io/icu/userguide/format_parse/messages/
 */
export function say<const Source extends string>(source: Sayable<Source>, values: Values = {}): string {
  const pattern = patternOf(source);
  if (!/[{']/.test(pattern)) return pattern;
  return formatMessage(messageOf(pattern, false), values, CONVENTIONS)
    .map(({ words }) => words)
    .join('');
}

/** Words of a said text, and the tag that marks them, if any. */
export type RichText = readonly Part[];

/**
 * Says a text with marked parts, for `<Rich>`: `sayRich('See <link>the method</link> of {name}.', { name })`. The text alone marks; a value that looks like a tag, or
 * like a pattern, is words.
 *
 * @throws as `say`; SyntaxError where a tag is not closed
 */
export function sayRich<const Source extends string>(source: Sayable<Source>, values: Values = {}): RichText {
  return formatMessage(messageOf(patternOf(source), true), values, CONVENTIONS);
}

const patternOf = (source: string): string => translations[language()]?.(source) || source;

const messages = { marked: new Map<string, Message>(), bare: new Map<string, Message>() };

function messageOf(pattern: string, tags: boolean): Message {
  const read = messages[tags ? 'marked' : 'bare'];
  let message = read.get(pattern);
  if (!message) read.set(pattern, (message = parseMessage(pattern, tags)));
  return message;
}

/** Says the label of a field in the middle of a sentence: small in English, as it is where nouns are written large. */
export function sayWithin(label: Text): string {
  const said = say(label);
  return language() === 'de' ? said : said.toLowerCase();
}

const CONVENTIONS: Conventions = {
  writeNumber: (value) => sayNumber(value, { maximumFractionDigits: 1 }),
  pluralOf,
};
