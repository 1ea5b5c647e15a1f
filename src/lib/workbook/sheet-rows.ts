import { readOds } from 'hucre/ods';
import { readXlsx } from 'hucre/xlsx';
import { unpackedSize } from './unpacked-size.ts';

/** The cells of a sheet as texts, row by row; the first row of the sheet is the first of the list. */
export type SheetRows = { readonly name: string; readonly rows: readonly (readonly string[])[] };

/** Why a workbook is not read. */
export type WorkbookFault = 'too large' | 'not a workbook' | 'locked' | 'too slow';
export class UnreadableWorkbook extends Error {
  override name = 'UnreadableWorkbook';
  readonly fault: WorkbookFault;
  constructor(fault: WorkbookFault) {
    super(fault);
    this.fault = fault;
  }
}

/** What is unpacked at most, bytes: a shelf of 100,000 lots has some 60 MB. */
export const MAX_UNPACKED_BYTES = 150_000_000;
const MAX_ROWS = 200_000;
const MAX_SHEETS = 40;

/**
 * Reads the sheets of a workbook, Office Open XML (ISO/IEC 29500) or OpenDocument (ISO/IEC 26300). Formulas are what they were last worked out to; dates are
 * texts such as 2026-07-04, whatever they are shown as; a text over several merged rows stands in each of them.
 *
 * @throws UnreadableWorkbook where it is none, or unpacks to more than `MAX_UNPACKED_BYTES`
 */
export async function sheetRows(bytes: Uint8Array): Promise<SheetRows[]> {
  const size = unpackedSize(bytes);
  if (size === undefined) throw new UnreadableWorkbook('not a workbook');
  if (size > MAX_UNPACKED_BYTES) throw new UnreadableWorkbook('too large');
  // The directory of an archive has the names of its entries as they are.
  const isOds =
    Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes('xl/workbook') === false;
  const book = await (isOds ? readOds : readXlsx)(bytes, {
    maxRows: MAX_ROWS,
    sheets: (info, index) => index < MAX_SHEETS && !info.hidden && !info.veryHidden,
  }).catch((error: unknown) => {
    throw new UnreadableWorkbook(/encrypt|password/i.test(String(error)) ? 'locked' : 'not a workbook');
  });
  return book.sheets.map(({ name, rows, merges = [] }) => {
    const texts = rows.map((row) => row.map(cellText));
    for (const { startRow, endRow, startCol, endCol } of merges) {
      const text = texts[startRow]?.[startCol] ?? '';
      // What is merged over several columns is a title or a group of headings.
      if (startCol !== endCol || typeof rows[startRow]?.[startCol] !== 'string') continue;
      for (let row = startRow + 1; row <= endRow && row < texts.length; row++) texts[row]![startCol] = text;
    }
    return { name, rows: texts };
  });
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (value instanceof Date)
    return Number.isNaN(value.getTime()) ? '' : value.toISOString().replace(/T00:00:00.*$/, '');
  // Twelve digits hold what was typed and drop the binary dust of what was worked out.
  if (typeof value === 'number') return Number.isFinite(value) ? String(Number(value.toPrecision(12))) : '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  // Beside numbers with a point, "1,5 l" can only be a decimal comma.
  if (typeof value === 'string') return value.replace(/(?<![\d.,])(\d{1,4}),(\d{1,2})(?![\d.,])/g, '$1.$2');
  return '';
}
