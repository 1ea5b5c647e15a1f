import { fleschKincaid } from 'flesch-kincaid';
import { IntlMessageFormat } from 'intl-messageformat';
import { syllable } from 'syllable';

/** What is known of how the English texts read. */
export type Readability = {
  /** Texts that are whole sentences: those that end with a full stop, a question or an exclamation mark. */
  readonly sentenceTexts: number;
  /** Words of such a text, on average. */
  readonly averageWords: number;
  /** The longest one that is no warning, and its words. */
  readonly longest: string;
  readonly longestWords: number;
  /** Flesch–Kincaid grade of each sentence text, on average; US school years. */
  readonly averageGrade: number;
  /** What is refused, and why: one line each. */
  readonly refused: readonly string[];
};

/** Longest sentence outside of warnings, words. */
const LONGEST_SENTENCE = 25;

/** Words that read as translated or tell too little; what stands behind each is the way out. */
const REFUSED: readonly (readonly [RegExp, string])[] = [
  [/\bmend(?:ed|ing|s)?\b/i, 'fix, correct'],
  [/\breckon\w*/i, 'calculate'],
  [/\btaken for granted\b/i, 'assumed'],
  [/\banew\b/i, 'again'],
  [/\bwho(?:so)?ever\b/i, 'anyone who, the person who'],
  [/\bdeare(?:r|st)\b/i, 'costs more'],
  [/\bleft empty\b/i, 'leave blank to …'],
  [/\busual values?\b/i, 'default'],
  [/\btake care:/i, 'Warning, Caution or Check'],
  [/\beaters?\b/i, 'person, people'],
  [/\bparty\b/i, 'group'],
  [/\bplease look at\b/i, 'check these fields'],
  [/\bput right\b/i, 'correct'],
  [/\b(?:goes|go) before (?:it|them|that|this)\b|\bstands? over\b/i, 'overrides'],
  [/\bstands? (?:in|under|below|beside|here|there)\b/i, 'is'],
  [/\b(?:let|lets) (?:onto|in|through)\b/i, 'can sign in, released, accepted'],
  [/\bgiven out\b|\btaken back\b/i, 'shared, revoked'],
  [/\b(?:some|no)body\b/i, 'someone, no one'],
  [/\bcomes? about\b/i, 'is made up of'],
  [/\bfrom the land\b/i, 'natural water'],
  [/\bmoves it\b/i, 'affects, changes'],
  [/\bmakers?\b/i, 'manufacturer'],
  [/\bpackets?\b/i, 'package'],
  [/\bis said\b/i, 'say who says it'],
  [/\bnote it\b/i, 'save'],
  [/\bbegun\b/i, 'started'],
  [/\bin all(?=[.,;:)]|$)/i, 'total'],
  [/\bat first\b/i, 'to start with'],
  [/\bspirits?\b/i, 'alcohol'],
  [/\bbesides\b|\ball the same\b|\bother way round\b/i, 'leave it out'],
  [/\bstruck\b/i, 'unreliable'],
  [/\bmemory\b/i, 'a source; working space'],
  [/\bcommon practice\b/i, 'rule of thumb'],
  [/^What (?:is|was|has)\b[^?]*$/, 'the noun'],
];
/** Bottles, pouches and trays hold things; nothing else does. */
const HOLDS = /\bholds?\b/i;
const CAPACITY = /\b(?:bottle|pouch|tray|bag|pack)/i;

/** Texts that keep somebody from harm may be longer: nothing is left out of them to save words. */
const SAFETY =
  /Warning:|allerg|botulis|bacteria|germs|unsafe|danger|carbon monoxide|professional|pregnan|seriously ill|treat all|treat every|made safely/i;

type Node = { readonly type: number; readonly value?: string; readonly children?: readonly Node[] } & {
  readonly options?: Readonly<Record<string, { readonly value: readonly Node[] }>>;
};

/** @returns the words of a text without selectors, each value written `X`; of a plural or a choice all branches, or the last. */
function wordsOf(nodes: readonly Node[], branches: 'all' | 'last'): string {
  return nodes
    .map((node) => {
      if (node.type === 0) return node.value ?? '';
      if (node.options) {
        const options = Object.values(node.options);
        return (branches === 'all' ? options : options.slice(-1))
          .map(({ value }) => wordsOf(value, branches))
          .join(' ');
      }
      return node.children ? wordsOf(node.children, branches) : 'X';
    })
    .join('');
}

const sentences = new Intl.Segmenter('en-GB', { granularity: 'sentence' });
const wordList = (text: string): string[] =>
  text.match(/[\p{L}\p{N}'’.,%°/-]*[\p{L}\p{N}][\p{L}\p{N}'’%°/-]*/gu) ?? [];

/**
 * How English texts read, by the US Navy's formula of reading grade (Kincaid, Fishburne, Rogers & Chissom 1975), and which of them break
 * the rules of language.
 *
 * @param sources the texts as they stand in the sources
 * @example readability(['Weigh every tray.']).averageWords // 3
 */
export function readability(sources: Iterable<string>): Readability {
  const refused: string[] = [];
  let [count, words, grades, longestWords, longest] = [0, 0, 0, 0, ''];
  for (const source of new Set(sources)) {
    const nodes = new IntlMessageFormat(source, 'en', undefined, {
      ignoreTag: !/<\w+>/.test(source),
    }).getAst() as unknown as Node[];
    const all = wordsOf(nodes, 'all');
    for (const [pattern, instead] of REFUSED) {
      const found = pattern.exec(all);
      if (found) refused.push(`${JSON.stringify(source)} says "${found[0]}"; better: ${instead}`);
    }
    if (HOLDS.test(all) && !CAPACITY.test(source))
      refused.push(
        `${JSON.stringify(source)} says "hold" of what is no bottle, pouch or tray; better: contains`,
      );
    const text = wordsOf(nodes, 'last').trim();
    if (!/[.?!]["”)]?$/.test(text)) continue;
    const parts = Array.from(sentences.segment(text), ({ segment }) => wordList(segment));
    const inText = parts.flat();
    if (inText.length === 0) continue;
    count += 1;
    words += inText.length;
    grades += fleschKincaid({
      sentence: parts.filter(({ length }) => length > 0).length,
      word: inText.length,
      syllable: inText.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
    });
    if (SAFETY.test(source)) continue;
    if (inText.length > longestWords) [longestWords, longest] = [inText.length, source];
    for (const sentence of parts)
      if (sentence.length > LONGEST_SENTENCE)
        refused.push(`${JSON.stringify(source)} has a sentence of ${sentence.length} words`);
  }
  return {
    sentenceTexts: count,
    averageWords: words / Math.max(count, 1),
    longest,
    longestWords,
    averageGrade: grades / Math.max(count, 1),
    refused,
  };
}
