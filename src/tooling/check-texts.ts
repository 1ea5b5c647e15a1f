import { readFileSync } from 'node:fs';
import { glob } from 'node:fs/promises';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { ALL_LANGUAGES, isEnglish, type Language } from '../lib/texts/languages.ts';
import { readability, type Readability } from './plain-english.ts';
import { findTexts, speakingSources, type SaidText } from './find-texts.ts';

/** What `npm run texts` prints and the test of the catalogs wants empty. */
export type TextProblems = {
  /** Texts that no language but English has, by language: the key with an empty translation to fill in. */
  readonly missing: Readonly<Record<string, readonly SaidText[]>>;
  /** Sentences that say what is wrong where. */
  readonly wrong: readonly string[];
  /** How the English texts read; what breaks the rules of language is among the wrong. */
  readonly reading: Readability;
  /** Words that stand in a source and are not said: those of the markup, and what looks like some in the scripts. */
  readonly looseInMarkup: readonly string[];
  readonly looseInScript: readonly string[];
};

/** @param root the project's folder @param part only sources and catalogs whose path holds it */
export async function checkTexts(root: string, part = ''): Promise<TextProblems> {
  const said: SaidText[] = [];
  const looseInMarkup: string[] = [];
  const looseInScript: string[] = [];
  for (const file of await speakingSources(root)) {
    const found = findTexts(root, file);
    said.push(...found.said);
    if (!file.includes(part)) continue;
    for (const { at, text, inMarkup } of found.loose)
      (inMarkup ? looseInMarkup : looseInScript).push(`${at} ${JSON.stringify(text)}`);
  }
  const wrong = said.flatMap(wrongAtCall);
  const sources = new Set(said.map(({ source }) => source));
  const missing: Record<string, SaidText[]> = {};
  for (const language of ALL_LANGUAGES) {
    if (language === 'en') continue;
    const known = new Map<string, string>();
    for await (const file of glob(`src/lib/texts/${language}/*.json`, { cwd: root }))
      for (const [source, translation] of Object.entries(
        JSON.parse(readFileSync(join(root, file), 'utf8')) as Record<string, string>,
      )) {
        const at = `${file} ${JSON.stringify(source)}`;
        if (known.has(source)) wrong.push(`${at} stands in another catalog too: keep one`);
        known.set(source, translation);
        if (!sources.has(source)) wrong.push(`${at} is said nowhere: delete it`);
        else wrong.push(...wrongTranslation(source, translation, language).map((why) => `${at} ${why}`));
      }
    if (isEnglish(language)) continue;
    missing[language] = said.filter(
      ({ source, at }, index) =>
        !known.get(source) &&
        at.includes(part) &&
        said.findIndex((other) => other.source === source) === index,
    );
  }
  const reading = readability(
    said
      .filter(({ at, source }) => at.includes(part) && patternFault(source) === undefined)
      .map(({ source }) => source),
  );
  wrong.push(...reading.refused);
  return { missing, wrong, reading, looseInMarkup, looseInScript };
}

type Pattern = { readonly names: readonly string[]; readonly tags: readonly string[] };

/** @throws SyntaxError where the text is no MessageFormat pattern */
function patternOf(text: string, language: string): Pattern {
  const names = new Set<string>();
  const collect = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    // Type 0 is a literal, 7 the number sign of a plural, 8 a tag; all others name an argument.
    const { type, value } = node as { type?: number; value?: unknown };
    if (typeof type === 'number' && ![0, 7, 8].includes(type) && typeof value === 'string') names.add(value);
    Object.values(node).forEach(collect);
  };
  const tags = Array.from(text.matchAll(/<(\w+)>/g), ([, tag = '']) => tag).sort();
  collect(new IntlMessageFormat(text, language, undefined, { ignoreTag: tags.length === 0 }).getAst());
  const both = tags.find((tag) => names.has(tag));
  if (both !== undefined) throw new SyntaxError(`${both} is both a tag and a value`);
  return { names: [...names].sort(), tags };
}

function patternFault(source: string): string | undefined {
  try {
    patternOf(source, 'en');
    return undefined;
  } catch (error) {
    return String(error);
  }
}

function wrongAtCall({ source, at, values }: SaidText): string[] {
  const fault = patternFault(source);
  if (fault !== undefined) return [`${at} ${JSON.stringify(source)} is no pattern: ${fault}`];
  const { names } = patternOf(source, 'en');
  if (values === undefined || (values.length === 0 && names.length > 0)) return [];
  const given = [...values].sort();
  return given.join() === names.join()
    ? []
    : [`${at} ${JSON.stringify(source)} is given ${given.join(', ') || 'nothing'}`];
}

function wrongTranslation(source: string, translation: string, language: Language): string[] {
  if (translation === '') return [];
  try {
    const [from, to] = [patternOf(source, 'en'), patternOf(translation, language)];
    if (from.names.join() !== to.names.join())
      return [`names ${to.names.join(', ') || 'no value'} instead of ${from.names.join(', ') || 'none'}`];
    if (from.tags.join() !== to.tags.join())
      return [
        `has the tags ${to.tags.join(', ') || '(none)'} instead of ${from.tags.join(', ') || '(none)'}`,
      ];
    return [];
  } catch (error) {
    return [`is no pattern: ${String(error)}`];
  }
}
