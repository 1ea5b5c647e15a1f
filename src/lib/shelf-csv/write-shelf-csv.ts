import Papa from 'papaparse';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { statedOf, type StatedLot } from '../planning/model/stated-lot.ts';
import { moneyFieldValue } from '../presentation/money.ts';
import { EXPORT_FIELDS, EXPORT_HEADER, REASON_HEADING, withoutReason, type LotField } from './fields.ts';
import { OPEN_LIST } from './read-cell.ts';
import type { RowProblem } from './read-row.ts';
import { neutralise, restore } from './spreadsheet-safe.ts';

const LOTS_AT_ONCE = 500;

/**
 * Writes a shelf as CSV that the import reads back to the same shelf: RFC 4180, per serving, in the units of the core. What is
 * an estimate has an empty cell.
 *
 * @param currency ISO 4217 code of the costs
 * @returns the file in pieces
 */
export function* shelfCsv(lots: readonly (PouchLot | StatedLot)[], currency: string): Generator<string> {
  yield csvLines([EXPORT_HEADER]);
  for (let from = 0; from < lots.length; from += LOTS_AT_ONCE)
    yield csvLines(
      lots
        .slice(from, from + LOTS_AT_ONCE)
        .map((lot) =>
          EXPORT_FIELDS.map(({ field }) =>
            neutralise(cellOf(statedOf(lot as PouchLot), field as LotField | 'currency', currency)),
          ),
        ),
    );
}

/** What a refused row needs to be written out again. */
export type RefusedCells = { readonly cells: readonly string[]; readonly problems: readonly RowProblem[] };

/** @returns the header of a file of refused rows: that of their file and `reason`. */
export function refusedHeaderCsv(header: readonly string[]): string {
  return csvLines([[...withoutReason(header), REASON_HEADING].map(neutralise)]);
}

/** @returns refused rows with their own cells and, under `reason`, what was wrong; cells beyond the header follow behind that. */
export function refusedRowsCsv(header: readonly string[], rows: readonly RefusedCells[]): string {
  const width = withoutReason(header).length;
  return csvLines(
    rows.map(({ cells, problems }) => {
      const own = Array.from({ length: width }, (_, index) => cells[index] ?? '');
      const reason = problems.map(problemText).join('; ');
      return [...own.map(restore), reason, ...cells.slice(header.length).map(restore)].map(neutralise);
    }),
  );
}

/** @returns one problem as a line: column, value and reason. */
export function problemText({ column, field, value, reason }: RowProblem): string {
  const name = column || field;
  const shown = value === '' || reason.includes(`"${value}"`) ? '' : ` "${value}"`;
  return name === '' ? reason : `${name}${shown}: ${reason}`;
}

/** @returns what an exported file says about one field of a lot; '' where nothing is stated. */
export function cellOf(lot: StatedLot, field: LotField | 'currency', currency: string): string {
  if (field === 'currency') return lot.costMinor === undefined ? '' : currency;
  if (field === 'costMinor')
    return lot.costMinor === undefined ? '' : moneyFieldValue(lot.costMinor, currency);
  if (field === 'allergens' && lot.allergens?.length === 0) return 'none';
  if (field === 'allergens' && lot.allergensOpen) return [...(lot.allergens ?? []), OPEN_LIST].join('; ');
  const value = lot[field];
  if (value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return Array.isArray(value) ? value.join('; ') : String(value);
}

/** @returns rows as lines of RFC 4180, each ending in CR LF; cells as they are given. */
export const csvLines = (rows: readonly (readonly string[])[]): string =>
  rows.length === 0 ? '' : `${Papa.unparse(rows as string[][], { newline: '\r\n' })}\r\n`;
