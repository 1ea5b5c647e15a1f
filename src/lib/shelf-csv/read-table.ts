import type { StatedLot } from '../planning/model/stated-lot.ts';
import type { CsvFile } from './csv-records.ts';
import type { ShelfField } from './fields.ts';
import { columnQuestions, type ColumnQuestion } from './column-questions.ts';
import { currencyIn } from './currency-words.ts';
import { guessMapping } from './guess-mapping.ts';
import { mappingProblems, type Mapping } from './mapping.ts';
import { RowReader, type ReadRow, type RowProblem } from './read-row.ts';
import type { NoLot } from './sort-rows.ts';
import { UnreadableFile } from './text-encoding.ts';
import { say, text, type Text } from '../texts/say.ts';

export type TableRow = {
  /** As a spreadsheet counts: the first row of the file is 1. */
  readonly line: number;
  /** `question`: something has to be said before it can be taken in; `refused`: what it says cannot be true. */
  readonly status: 'new' | 'question' | 'refused';
  /** What was read; all that a lot needs where the status is `new`. */
  readonly lot: Partial<StatedLot>;
  readonly problems: readonly RowProblem[];
};

/** What an import would take of a table as it is proposed. */
export type ReadTable = {
  readonly rows: readonly TableRow[];
  readonly skipped: readonly { readonly line: number; readonly why: string }[];
  readonly questions: readonly ColumnQuestion[];
  /** What each column was read as, and for what. */
  readonly columns: Mapping['columns'];
};

export const WHY_NO_LOT: Readonly<Record<NoLot, Text>> = {
  total: text('total of the rows'),
  'headings again': text('headings again'),
  'heading of rows': text('heading over rows'),
  note: text('note beside the table'),
  'another table': text('belongs to another table'),
  title: text('title above the table'),
};

/**
 * Reads a table of pouches as people keep it, without a shelf to compare it with.
 *
 * @param file as `openCsv` or `openTable` gives it
 * @param settings `currency`: ISO 4217 code in which costs are counted; left out, that of the file where it names one, else EUR
 * @throws UnreadableFile when it is no table, or no column can be the name
 */
export async function readTable(
  file: CsvFile,
  { currency }: { readonly currency?: string | undefined } = {},
): Promise<ReadTable> {
  const mapping = guessMapping(file);
  refuseWithoutColumns(file, mapping);
  const reader = new RowReader({
    mapping,
    currency: currency ?? currencyOf(file, mapping) ?? 'EUR',
    damaged: file.form.damaged,
    title: file.title,
    shelf: new Map(),
  });
  const rows: TableRow[] = [];
  const skipped = file.titleRows.map((line) => ({ line, why: say(WHY_NO_LOT.title) }));
  for (const sheet of file.otherSheets ?? [])
    skipped.push({ line: 0, why: say('sheet "{sheet}" was not read', { sheet }) });
  for await (const batch of file.records())
    for (const record of batch) {
      const read = reader.read(record);
      if (read.status === 'skipped') skipped.push({ line: read.row, why: say(WHY_NO_LOT[read.why]) });
      else rows.push(tableRow(read));
    }
  return { rows, skipped, questions: columnQuestions(file, mapping), columns: mapping.columns };
}

function tableRow(read: Exclude<ReadRow, { status: 'skipped' }>): TableRow {
  const { row: line, lot, warnings } = read;
  return read.status === 'lot'
    ? { line, status: 'new', lot, problems: warnings }
    : { line, status: read.status, lot, problems: [...read.problems, ...warnings] };
}

/** Without names there is nothing to ask about. */
function refuseWithoutColumns(file: CsvFile, mapping: Mapping): void {
  const missing = mappingProblems(mapping).filter(({ field }) => field === 'recipe');
  if (missing.length > 0)
    throw new UnreadableFile(
      say('The columns of this file do not make a shelf: {problems}. Its columns are: {columns}.', {
        problems: missing.map(({ message }) => message).join('; '),
        columns: file.header.join(', '),
      }),
    );
}

function currencyOf(file: CsvFile, { columns }: Mapping): string | undefined {
  const at = (field: ShelfField) => columns.findIndex((column) => column.field === field);
  const cells = [at('currency'), at('costMinor')].flatMap((index) =>
    index < 0 ? [] : [file.header[index] ?? '', ...file.sample.map((record) => record.cells[index] ?? '')],
  );
  const signs = new Set(cells.map(currencyIn).filter((sign) => sign !== undefined));
  const [sign] = signs;
  if (signs.size !== 1 || sign === undefined) return undefined;
  return { '€': 'EUR', '£': 'GBP', $: 'USD' }[sign] ?? (/^[A-Z]{3}$/.test(sign) ? sign : undefined);
}
