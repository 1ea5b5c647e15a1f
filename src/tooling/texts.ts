/*
 * `npm run texts`: what is missing or wrong in the catalogs of `src/lib/texts`, and which words of the sources are not said.
 * `npm run texts -- PART` looks only at sources whose path holds PART.
 */
import { ROOT } from './run.ts';
import { checkTexts } from './check-texts.ts';

const { missing, wrong, looseInMarkup, looseInScript } = await checkTexts(ROOT, process.argv[2]);
const list = (heading: string, lines: readonly string[]) =>
  console.log([`${heading}: ${lines.length}`, ...lines.map((line) => `  ${line}`)].join('\n'));

for (const [language, texts] of Object.entries(missing)) {
  console.log(`Missing in "${language}": ${texts.length}`);
  for (const { source, at } of texts) console.log(`  ${at}\n    ${JSON.stringify(source)}: "",`);
}
list('Wrong', wrong);
list('Words in markup that are not said', looseInMarkup);
list('Strings in scripts that look like words; those for people should be said', looseInScript);
process.exitCode = wrong.length + looseInMarkup.length > 0 ? 1 : 0;
