/** What British English, in which the texts are written, spells or calls otherwise than American English. */
export const AMERICAN_WORDS: Readonly<Record<string, string>> = {
  aluminium: 'aluminum',
  bin: 'trash',
  burnt: 'burned',
  cancelled: 'canceled',
  centre: 'center',
  centred: 'centered',
  fibre: 'fiber',
  fibres: 'fibers',
  litre: 'liter',
  litres: 'liters',
  minced: 'ground',
  molluscs: 'mollusks',
  moulds: 'molds',
  neighbours: 'neighbors',
  pasteurised: 'pasteurized',
  pasteurising: 'pasteurizing',
  recognised: 'recognized',
  sulphites: 'sulfites',
  tick: 'check',
  ticked: 'checked',
  ticks: 'checks',
  tin: 'can',
  tins: 'cans',
  towards: 'toward',
  vaporising: 'vaporizing',
};

const WORD = new RegExp(String.raw`\b(?:${Object.keys(AMERICAN_WORDS).join('|')})\b`, 'gi');

/** @returns words as American English writes them, small and large as they were. */
export const americanWords = (words: string): string =>
  words.replace(WORD, (british) => {
    const american = AMERICAN_WORDS[british.toLowerCase()] ?? british;
    return /^\p{Lu}/u.test(british) ? `${american.charAt(0).toUpperCase()}${american.slice(1)}` : american;
  });

/** A value, and what a choice begins with; the name of a branch; a tag. */
const [ARGUMENT, BRANCH, TAG] = [/\{\s*\w+\s*(?:\}|,\s*\w+\s*[,}])/y, /[^{}]*[{}]/y, /<\/?\w+>|</y];
const WORDS = /[^{}<]+/y;

/** @returns a text in American English: its words alone, not its values, the names of branches, or tags. */
export function inAmerican(pattern: string): string {
  let said = '';
  let at = 0;
  const take = (expected: RegExp): string => {
    expected.lastIndex = at;
    const found = expected.exec(pattern)?.[0] ?? '';
    at += found.length;
    return found;
  };
  /** Whether words stand here, or the names of branches, from without to within. */
  const within: ('words' | 'branches')[] = ['words'];
  while (at < pattern.length) {
    if (within.at(-1) === 'branches') {
      const branch = take(BRANCH);
      if (branch.endsWith('{')) within.push('words');
      else within.pop();
      said += branch;
    } else if (pattern[at] === '{') {
      const argument = take(ARGUMENT);
      if (argument.endsWith(',')) within.push('branches');
      said += argument;
    } else if (pattern[at] === '}') {
      within.pop();
      said += pattern[at++];
    } else said += take(TAG) || americanWords(take(WORDS));
  }
  return said;
}

/** @returns markdown in American English, but for code and addresses. */
export const markdownInAmerican = (markdown: string): string =>
  markdown.replace(/```[\s\S]*?```|`[^`]*`|\]\([^)]*\)|([^`\]]+)/g, (part, words?: string) =>
    words ? americanWords(words) : part,
  );
