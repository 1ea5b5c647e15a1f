import type { Readable } from 'node:stream';
import { parseArgs } from 'node:util';
import { looksLikeJsonLd, readJsonLd } from '../lib/recipe-text/json-ld.ts';
import { readRecipeText } from '../lib/recipe-text/read-recipe-text.ts';
import { reportOf, type RecipeReport } from '../lib/recipe-text/report.ts';
import { UnreadableFile, decodeText, otherFile, recogniseText } from '../lib/shelf-csv/text-encoding.ts';
import { BadInput, fileSource, sourceBytes, type Source } from './read-inputs.ts';
import { table } from './text-table.ts';

const HELP = `Reads a recipe as people write it: a pasted text, schema.org Recipe JSON-LD, or a saved web page with it.

  npm run --silent recipe -- --text FILE [--servings N] [--format json|text]

  --text      the recipe: a title, "Serves 4", ingredients one a line, the method; - for standard input. Of a web page only its
              JSON-LD is read, and nothing is fetched
  --servings  how many servings are wanted: weights are scaled to them; left out: as the text says
  --format    json: what was understood, as data (this is the usual one);  text: to read
  --help      this text

Exit code 0: every line was understood; 2: lines are left to settle (what was understood is written all the same);
1: the input cannot be used, and standard error says why.
`;

export type Outcome = { readonly exitCode: 0 | 1 | 2; readonly output: string; readonly errors: string };

/** A recipe is shorter than this; a saved page may be longer, bytes. */
const MOST_BYTES = 8_000_000;
const STDIN = '-';
const FORMATS: Readonly<Record<string, (report: RecipeReport) => string>> = {
  json: (report) => `${JSON.stringify(report, null, 2)}\n`,
  text: reportText,
};

/**
 * The command as a function.
 *
 * @param args as `--help` lists them
 * @param stdin what `-` stands for
 */
export async function recipeCommand(args: readonly string[], stdin: Readable): Promise<Outcome> {
  try {
    return await recipeFrom(args, stdin);
  } catch (error) {
    if (error instanceof BadInput) return { exitCode: 1, output: '', errors: `${error.message}\n` };
    throw error;
  }
}

function readOptions(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        text: { type: 'string' },
        servings: { type: 'string' },
        format: { type: 'string', default: 'json' },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    throw new BadInput(`${error instanceof Error ? error.message : String(error)} See --help.`);
  }
}

function servingsOf(stated: string | undefined): number | undefined {
  if (stated === undefined) return undefined;
  const servings = Number(stated);
  if (!(servings > 0 && servings <= 10_000))
    throw new BadInput(`--servings "${stated}" is no number of servings; give one from 1 to 10000`);
  return servings;
}

async function recipeFrom(args: readonly string[], stdin: Readable): Promise<Outcome> {
  const options = readOptions(args);
  if (options.help) return { exitCode: 0, output: HELP, errors: '' };
  const format = FORMATS[options.format];
  if (!format)
    throw new BadInput(
      `--format "${options.format}" is not known; it is one of: ${Object.keys(FORMATS).join(', ')}`,
    );
  const servings = servingsOf(options.servings);
  if (options.text === undefined) throw new BadInput('Name the recipe: --text FILE. See --help.');
  const source: Source =
    options.text === STDIN ? { name: 'standard input', open: () => stdin } : fileSource(options.text);
  const text = await textOf(source);
  const isData = looksLikeJsonLd(text);
  const recipe = isData ? readJsonLd(text) : readRecipeText(text, [], servings);
  if (!recipe)
    throw new BadInput(
      `${source.name}: there is no recipe in its JSON-LD; paste its text into a file instead`,
    );
  if (recipe.lines.length === 0)
    throw new BadInput(`${source.name}: no line of it is an ingredient; put each on a line of its own`);
  const report = reportOf(recipe, servings);
  const left = report.lines.filter(({ settled }) => !settled);
  return {
    exitCode: left.length > 0 ? 2 : 0,
    output: format(report),
    errors: left.map(({ text: line }) => `Left to settle: ${line}\n`).join(''),
  };
}

async function textOf(source: Source): Promise<string> {
  const bytes = await sourceBytes(source);
  if (bytes.length > MOST_BYTES)
    throw new BadInput(`${source.name}: this is larger than 8 MB; is it the right file?`);
  const other = otherFile(bytes);
  if (other !== undefined) throw new BadInput(`${source.name}: ${other}`);
  try {
    const open = async function* () {
      yield bytes;
    };
    const { encoding } = await recogniseText(open);
    let text = '';
    for await (const part of decodeText(open, encoding)) text += part;
    return text;
  } catch (error) {
    if (error instanceof UnreadableFile) throw new BadInput(`${source.name}: ${error.message}`);
    throw error;
  }
}

const grams = (value: number): string => (value < 10 ? value.toFixed(1) : value.toFixed(0));

function reportText({ servings, lines, totals, perServing, allergens }: RecipeReport): string {
  const rows = lines.map(({ text, food, grams: weight, settled }) => [
    settled ? ' ' : '?',
    text,
    weight ? `${grams(weight.value)} g (${grams(weight.low)} to ${grams(weight.high)})` : '-',
    food ? `${food.name}${food.number === null ? '' : ` [${food.number}]`}` : 'not understood',
  ]);
  const of = (name: string, sums: RecipeReport['totals']) => [
    name,
    `${sums.rawG.toFixed(0)} g`,
    `${sums.dryG.toFixed(0)} g dry matter`,
    `${sums.energyKcal.toFixed(0)} kcal`,
    `protein ${sums.proteinG.toFixed(0)} g`,
    `fat ${sums.fatG.toFixed(0)} g`,
    `carbohydrate ${sums.carbohydrateG.toFixed(0)} g`,
    `fibre ${sums.fibreG.toFixed(0)} g`,
    `sodium ${sums.sodiumMg.toFixed(0)} mg`,
  ];
  return `${[
    ...table(rows),
    '',
    ...table([
      of('In all', totals),
      ...(servings === null ? [] : [of(`One of ${servings} servings`, perServing)]),
    ]),
    '',
    `Allergens: ${allergens.stated.length > 0 ? allergens.stated.join(', ') : 'none stated'}`,
    ...(allergens.open.length > 0 ? [`Allergens not stated: ${allergens.open.join('; ')}`] : []),
  ].join('\n')}\n`;
}
