import type { Readable } from 'node:stream';
import { parseArgs } from 'node:util';
import { speaking } from '../lib/server/language-of-request.ts';
import type { StatedLot } from '../lib/planning/model/stated-lot.ts';
import { readTable, type ReadTable } from '../lib/shelf-csv/read-table.ts';
import { UnreadableFile } from '../lib/shelf-csv/text-encoding.ts';
import { problemText, shelfCsv } from '../lib/shelf-csv/write-shelf-csv.ts';
import { isLanguage, LANGUAGES } from '../lib/texts/say.ts';
import { openTable } from '../lib/workbook/open-table.ts';
import { BadInput, fileSource, sourceBytes, type Source } from './read-inputs.ts';
import { table as textTable } from './text-table.ts';

const HELP = `Says what an import would take of a table of pouches, as it is proposed. Nothing is written anywhere.

  npm run --silent shelf -- --read FILE [--format json|csv|text] [--currency CODE] [--language en|en-US|de|fr]

  --read      the table: CSV, TSV, XLSX or ODS; - for standard input
  --format    json: rows, what was skipped, and what has to be asked about whole columns (this is the usual one)
              csv:  the rows that would come in, as the shelf's own export; what is not known is empty
              text: to read
  --currency  ISO 4217 code in which costs are counted; left out: that of the file, else EUR
  --language  of what is said about rows and columns: en (this is the usual one), en-US, de or fr
  --help      this text

Exit code 0: the table could be read; 2: it could not, and standard error says why.
`;

const STDIN = '-';
const FORMATS: Readonly<Record<string, (table: ReadTable, currency: string) => string>> = {
  json: ({ rows, skipped, questions, columns }) =>
    `${JSON.stringify({ rows, skipped, questions, columns }, null, 2)}\n`,
  csv: ({ rows }, currency) =>
    [
      ...shelfCsv(
        rows.flatMap(({ status, lot }) => (status === 'new' ? [lot as StatedLot] : [])),
        currency,
      ),
    ].join(''),
  text: shelfText,
};

export type Outcome = { readonly exitCode: 0 | 2; readonly output: string; readonly errors: string };

/**
 * The command as a function.
 *
 * @param args as `--help` lists them
 * @param stdin what `-` stands for
 * @returns what goes to standard output and standard error, and the exit code: 2 where the table cannot be read
 */
export async function shelfCommand(args: readonly string[], stdin: Readable): Promise<Outcome> {
  try {
    return { exitCode: 0, output: await shelfFrom(args, stdin), errors: '' };
  } catch (error) {
    if (error instanceof BadInput) return { exitCode: 2, output: '', errors: `${error.message}\n` };
    throw error;
  }
}

function readOptions(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        read: { type: 'string' },
        format: { type: 'string', default: 'json' },
        currency: { type: 'string' },
        language: { type: 'string', default: 'en' },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    throw new BadInput(`${error instanceof Error ? error.message : String(error)} See --help.`);
  }
}

async function shelfFrom(args: readonly string[], stdin: Readable): Promise<string> {
  const { read, format, currency, language, help } = readOptions(args);
  if (help) return HELP;
  if (read === undefined) throw new BadInput('--read FILE is missing. See --help.');
  const write = FORMATS[format];
  if (!write)
    throw new BadInput(`--format "${format}" is not known; it is one of: ${Object.keys(FORMATS).join(', ')}`);
  if (!isLanguage(language))
    throw new BadInput(
      `--language "${language}" is not known; it is one of: ${Object.keys(LANGUAGES).join(', ')}`,
    );
  if (currency !== undefined && !Intl.supportedValuesOf('currency').includes(currency))
    throw new BadInput(`--currency "${currency}" is not a code of ISO 4217, such as EUR`);
  const source: Source = read === STDIN ? { name: 'standard input', open: () => stdin } : fileSource(read);
  const bytes = await sourceBytes(source);
  return speaking(language, async () => {
    try {
      const file = await openTable(async function* () {
        yield bytes;
      });
      return write(await readTable(file, { currency }), currency ?? 'EUR');
    } catch (error) {
      throw error instanceof UnreadableFile ? new BadInput(`${source.name}: ${error.message}`) : error;
    }
  });
}

function shelfText({ rows, skipped, questions, columns }: ReadTable): string {
  const counts = Map.groupBy(rows, ({ status }) => status);
  const count = (status: 'new' | 'question' | 'refused') => counts.get(status)?.length ?? 0;
  const lines = [
    `${count('new')} rows come in, ${count('question')} have a question, ${count('refused')} are refused, ${skipped.length} are no lots.`,
    '',
    'Columns:',
    ...columns.map(
      ({ header, field, unit, per, of }) =>
        `  ${header || '(no heading)'}: ${[field ?? 'passed over', unit, per && `per ${per}`, of].filter(Boolean).join(', ')}`,
    ),
    ...(questions.length > 0
      ? [
          '',
          'Questions about columns:',
          ...questions.map(({ column, question }) => `  ${column && `${column}: `}${question}`),
        ]
      : []),
    '',
    ...textTable([
      [
        'line',
        'status',
        'code',
        'recipe',
        'pouches',
        'servings',
        'g',
        'kcal',
        'water ml',
        'sealed',
        'best before',
      ],
      ...rows.map(({ line, status, lot }) => [
        String(line),
        status,
        ...[
          lot.code,
          lot.recipe,
          lot.pouches,
          lot.servingsPerPouch,
          lot.dryWeightG,
          lot.energyKcal,
          lot.waterMl,
          lot.sealedOn,
          lot.bestBefore,
        ].map((value) => String(value ?? '')),
      ]),
    ]),
    '',
    ...rows.flatMap(({ line, problems }) =>
      problems.map((problem) => `line ${line}: ${problemText(problem)}`),
    ),
    ...skipped.map(({ line, why }) => `line ${line}: ${why}`),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}
