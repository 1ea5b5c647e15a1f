import { openCsv, openRecords, type CsvFile, type CsvRecord } from '../shelf-csv/csv-records.ts';
import { guessMapping } from '../shelf-csv/guess-mapping.ts';
import { mappingProblems } from '../shelf-csv/mapping.ts';
import { findHead } from '../shelf-csv/table-head.ts';
import { UnreadableFile, type ByteSource } from '../shelf-csv/text-encoding.ts';
import { say, text, type Text } from '../texts/say.ts';
import { readWorkbook } from './read-workbook.ts';
import { UnreadableWorkbook, type SheetRows, type WorkbookFault } from './sheet-rows.ts';

const ROWS_AT_ONCE = 1000;
/** Largest workbook, bytes; it is held in memory, as no format of workbooks can be read as it comes in. */
export const MAX_WORKBOOK_BYTES = 30_000_000;

const FAULTS: Readonly<Record<WorkbookFault, Text>> = {
  'too large': text('This workbook is too large to be opened. Save the sheet as CSV and choose that file.'),
  'not a workbook': text(
    'This file is not a workbook that can be opened. Save the sheet as XLSX, ODS or CSV and choose that file.',
  ),
  locked: text('This workbook is locked with a password. Save it without one and choose that file.'),
  'too slow': text('This workbook takes too long to open. Save the sheet as CSV and choose that file.'),
};

/** @returns whether the first bytes are those of a zip archive, as workbooks are. */
const isArchive = (head: Uint8Array): boolean =>
  head[0] === 0x50 && head[1] === 0x4b && head[2] === 3 && head[3] === 4;

/**
 * Opens a table of any kind: a text as `openCsv`, or the sheet of a workbook that looks most like a shelf.
 *
 * @throws UnreadableFile
 */
export async function openTable(source: ByteSource): Promise<CsvFile> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of source()) {
    if (pieces.length === 0 && piece.length >= 4 && !isArchive(piece)) return openCsv(source, findHead);
    pieces.push(piece);
    size += piece.length;
    if (size > MAX_WORKBOOK_BYTES) throw new UnreadableFile(say(FAULTS['too large']));
  }
  const bytes = Buffer.concat(pieces);
  if (!isArchive(bytes)) return openCsv(source, findHead);
  let sheets: SheetRows[];
  try {
    sheets = await readWorkbook(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw new UnreadableFile(say(FAULTS[error.fault]));
    throw error;
  }
  return likeliestSheet(sheets);
}

async function likeliestSheet(sheets: readonly SheetRows[]): Promise<CsvFile> {
  let best: { readonly file: CsvFile; readonly name: string; readonly score: number } | undefined;
  const filled = sheets.filter(({ rows }) => rows.some((row) => row.some((cell) => cell.trim() !== '')));
  for (const { name, rows } of filled) {
    const file = await openRecords(
      () => batches(rows),
      {
        form: { encoding: 'utf-8', damaged: false },
        delimiter: ',',
        forms: { decimalPoint: true },
      },
      findHead,
    );
    const mapping = guessMapping(file);
    const missing = mappingProblems(mapping).length;
    const mapped = mapping.columns.filter(({ field }) => field !== null).length;
    const score = mapped * Math.log(2 + file.sample.length) * (missing === 0 ? 10 : 1);
    if (!best || score > best.score) best = { file, name, score };
  }
  if (!best) throw new UnreadableFile(say('This workbook has no sheet with anything in it.'));
  const { file, name } = best;
  const otherSheets = filled.filter((sheet) => sheet.name !== name).map((sheet) => sheet.name);
  return { ...file, otherSheets };
}

async function* batches(rows: SheetRows['rows']): AsyncGenerator<readonly CsvRecord[]> {
  for (let from = 0; from < rows.length; from += ROWS_AT_ONCE)
    yield rows
      .slice(from, from + ROWS_AT_ONCE)
      .flatMap((cells, index): CsvRecord[] =>
        cells.some((cell) => cell.trim() !== '') ? [{ row: from + index + 1, cells }] : [],
      );
}
