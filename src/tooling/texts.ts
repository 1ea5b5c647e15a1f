/*
 * `npm run texts`: what is missing or wrong in the catalogs of `src/lib/texts`, and which words of the sources are not said.
 * `npm run texts -- PART` looks only at sources whose path holds PART; with `--brief` it leaves out the long list of the scripts.
 */
import { ROOT } from './run.ts';
import { checkTexts } from './check-texts.ts';

const given = process.argv.slice(2);
const { missing, wrong, reading, looseInMarkup, looseInScript } = await checkTexts(
  ROOT,
  given.find((part) => part !== '--brief'),
);
const list = (heading: string, lines: readonly string[]) =>
  console.log([`${heading}: ${lines.length}`, ...lines.map((line) => `  ${line}`)].join('\n'));

for (const [language, texts] of Object.entries(missing)) {
  console.log(`Missing in "${language}": ${texts.length}`);
  for (const { source, at } of texts) console.log(`  ${at}\n    ${JSON.stringify(source)}: "",`);
}
list('Wrong', wrong);
list('Words in markup that are not said', looseInMarkup);
if (!given.includes('--brief'))
  list('Strings in scripts that look like words; those for people should be said', looseInScript);
console.log(
  `English: ${reading.sentenceTexts} sentence texts of ${reading.averageWords.toFixed(1)} words on average, Flesch–Kincaid grade ${reading.averageGrade.toFixed(1)}; the longest but warnings has ${reading.longestWords} words: ${JSON.stringify(reading.longest)}`,
);
process.exitCode = wrong.length + looseInMarkup.length > 0 ? 1 : 0;
