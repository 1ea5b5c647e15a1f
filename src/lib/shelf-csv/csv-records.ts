import Papa from 'papaparse';
import {
  decodeText,
  recogniseText,
  UnreadableFile,
  type ByteSource,
  type TextForm,
} from './text-encoding.ts';
import { say } from '../texts/say.ts';

export const DELIMITERS = [',', ';', '\t'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

/** `row` counts as a spreadsheet does: the first row of the file is 1. `fault`: its quotation marks are broken. */
export type CsvRecord = { readonly row: number; readonly cells: readonly string[]; readonly fault?: string };

export type CsvFile = {
  readonly form: TextForm;
  readonly delimiter: Delimiter;
  /** What its form says of how numbers in it are written. */
  readonly forms: { readonly decimalComma?: boolean; readonly decimalPoint?: boolean };
  /** Sheets of the same workbook that are not read. */
  readonly otherSheets?: readonly string[];
  /** Headings joined where they take two lines; all empty where the table has none. */
  readonly header: readonly string[];
  /** The first records, to guess from. */
  readonly sample: readonly CsvRecord[];
  /** Rows above the headings that hold something: titles. */
  readonly titleRows: readonly number[];
  /** What stands over the headings last; '' where nothing does. */
  readonly title: string;
  /** All records below the header but the blank ones, in batches, from the beginning at each call. */
  records(): AsyncGenerator<readonly CsvRecord[]>;
};

/** Where the headings of a table are. */
export type TableHead = {
  readonly header: readonly string[];
  /** Row of the last line of headings; 0 where the table has none. */
  readonly lastRow: number;
  /** Rows above it that are no headings: titles of the sheet. */
  readonly titleRows: readonly number[];
};
export type HeadFinder = (first: readonly CsvRecord[]) => TableHead;

/** How far down headings are looked for. */
export const HEAD_ROWS = 40;

const HEAD_CHARACTERS = 64 * 1024;
const SAMPLE_RECORDS = 500;
/** Far more than any table of ours, or of a spreadsheet that somebody keeps, has. */
const MOST_COLUMNS = 1000;
/** No lot is longer; what is, comes from a quotation mark that is never closed. */
const MAX_RECORD_CHARACTERS = 1_000_000;

type Dialect = { readonly delimiter: Delimiter; readonly newline: '\n' | '\r'; readonly skip: number };

/**
 * Opens a CSV file (RFC 4180) of any encoding and delimiter that `recogniseText` and `dialectOf` know.
 *
 * @param findHead finds the headings among the first rows; left out, the first row with at least two cells that hold something
 *
 * @throws UnreadableFile when it is empty, no text, or has no row below the header.
 */
export async function openCsv(source: ByteSource, findHead: HeadFinder = firstOfTwoCells): Promise<CsvFile> {
  const form = await recogniseText(source);
  const dialect = dialectOf(await firstText(source, form));
  const records = () => readRecords(source, form, dialect);

  return openRecords(
    records,
    {
      form,
      delimiter: dialect.delimiter,
      forms: { decimalComma: dialect.delimiter === ';' },
    },
    findHead,
  );
}

/** Titles above a table have one cell: the header is the first row with at least two that hold something. */
const firstOfTwoCells: HeadFinder = (first) => {
  // A table of one column has no such row.
  const header = first.find((record) => filledCells(record) >= 2) ?? first[0]!;
  return {
    header: header.cells.map((cell) => cell.trim()),
    lastRow: header.row,
    titleRows: first.filter(({ row }) => row < header.row).map(({ row }) => row),
  };
};

const filledCells = (record: CsvRecord): number => record.cells.filter((cell) => cell.trim() !== '').length;

/**
 * Opens a table whose cells are known already.
 *
 * @param records all its rows but the blank ones, from the beginning at each call
 * @throws UnreadableFile when it has no row below the header
 */
export async function openRecords(
  records: () => AsyncIterable<readonly CsvRecord[]>,
  about: Pick<CsvFile, 'form' | 'delimiter' | 'forms' | 'otherSheets'>,
  findHead: HeadFinder,
): Promise<CsvFile> {
  const first: CsvRecord[] = [];
  for await (const batch of records()) {
    for (const record of batch) first.push(record);
    if (first.length >= SAMPLE_RECORDS + HEAD_ROWS) break;
  }
  if (first.length === 0)
    throw new UnreadableFile(
      say('The file has only blank rows. Choose a CSV file with a header row and at least one row of data.'),
    );
  const { header, lastRow, titleRows } = findHead(first);
  if (header.length > MOST_COLUMNS)
    throw new UnreadableFile(
      say('The table has more than {most, number} columns. Remove those you do not need.', {
        most: MOST_COLUMNS,
      }),
    );
  const isBelow = ({ row }: CsvRecord): boolean => row > lastRow && !titleRows.includes(row);
  return {
    ...about,
    header,
    titleRows,
    title:
      first
        .findLast(({ row }) => row === titleRows.at(-1))
        ?.cells.find((cell) => cell.trim() !== '')
        ?.trim() ?? '',
    sample: first.filter(isBelow).slice(0, SAMPLE_RECORDS),
    async *records() {
      for await (const batch of records()) yield batch.filter(isBelow);
    },
  };
}

async function firstText(source: ByteSource, form: TextForm): Promise<string> {
  let text = '';
  for await (const piece of decodeText(source, form.encoding)) {
    text += piece;
    if (text.length >= HEAD_CHARACTERS) break;
  }
  return text;
}

/** Some spreadsheets write `sep=;` above the table. */
function dialectOf(head: string): Dialect {
  const newline = head.includes('\n') ? '\n' : '\r';
  const stated = /^sep=([,;\t])\r?[\n\r]/i.exec(head);
  if (stated) return { delimiter: stated[1] as Delimiter, newline, skip: stated[0].length };
  return { delimiter: likeliestDelimiter(head, newline), newline, skip: 0 };
}

/** The delimiter by which the most rows have the same number of cells: titles, notes and decimal commas part rows unevenly. */
function likeliestDelimiter(head: string, newline: '\n' | '\r'): Delimiter {
  let best: { readonly delimiter: Delimiter; readonly even: number } | undefined;
  for (const delimiter of ['\t', ';', ','] as const) {
    const { data } = Papa.parse<string[]>(head, {
      delimiter,
      newline,
      preview: HEAD_ROWS,
      skipEmptyLines: 'greedy',
    });
    const widths = Map.groupBy(data, (cells) => cells.length);
    let even = 0;
    for (const [width, rows] of widths)
      if (width > 1) even = Math.max(even, (rows.length / data.length) * (1 - 1 / (2 * width)));
    if (!best || even > best.even + 1e-9) best = { delimiter, even };
  }
  return best && best.even > 0 ? best.delimiter : ',';
}

/*
 * Papa's own streams push; a shelf is pulled, so that whoever reads sets the pace and can stop. This loop does what those
 * streams do with Papa's parser: parse what is there but for the last, perhaps unfinished record, and keep that for the next piece.
 */
async function* readRecords(
  source: ByteSource,
  form: TextForm,
  { delimiter, newline, skip }: Dialect,
): AsyncGenerator<readonly CsvRecord[]> {
  const parser = new Papa.Parser({ delimiter, newline });
  let row = 0;
  let pending = '';
  let toSkip = skip;

  const take = (last: boolean): CsvRecord[] => {
    const { data, errors, meta } = parser.parse(pending, 0, !last) as Papa.ParseResult<string[]>;
    pending = pending.slice(meta.cursor);
    const faults = new Map(errors.map((error) => [error.row, error.code]));
    const records: CsvRecord[] = [];
    data.forEach((cells, index) => {
      row++;
      // Lines may end in CR LF; the parser is told LF, so that files that mix the two stay whole.
      if (newline === '\n' && cells.at(-1)?.endsWith('\r'))
        cells[cells.length - 1] = cells.at(-1)!.slice(0, -1);
      if (cells.every((cell) => cell.trim() === '')) return;
      const code = faults.get(index);
      records.push(code ? { row, cells, fault: faultText(code) } : { row, cells });
    });
    return records;
  };

  for await (const piece of decodeText(source, form.encoding)) {
    pending += piece;
    if (toSkip > 0 && pending.length >= toSkip) {
      pending = pending.slice(toSkip);
      toSkip = 0;
    }
    if (toSkip > 0) continue;
    const records = take(false);
    if (pending.length > MAX_RECORD_CHARACTERS)
      throw new UnreadableFile(
        say(
          'Row {row} does not end within {most, number} characters. A quotation mark in it is probably never closed; close or remove it.',
          { row: String(row + 1), most: MAX_RECORD_CHARACTERS },
        ),
      );
    if (records.length > 0) yield records;
  }
  const records = take(true);
  if (records.length > 0) yield records;
}

function faultText(code: string): string {
  return code === 'MissingQuotes'
    ? say(
        'an opening quotation mark has no closing one, so the rows below were read as part of this cell. Close it or remove it',
      )
    : say(
        'a quotation mark inside a quoted text is not doubled, so the cells cannot be told apart; write "" for each " in the text',
      );
}
