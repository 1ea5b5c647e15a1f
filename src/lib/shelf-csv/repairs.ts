import { z } from 'zod';
import type { CsvFile, CsvRecord } from './csv-records.ts';

/**
 * What a person put right in a table, without changing the file: single cells by their row and column, cells of one column that say the same, and rows
 * that are left out.
 */
export const Repairs = z.strictObject({
  cells: z.record(z.string().regex(/^\d+:\d+$/), z.string().max(2000)).default({}),
  everywhere: z
    .array(
      z.strictObject({ column: z.int().nonnegative(), from: z.string().max(2000), to: z.string().max(2000) }),
    )
    .max(500)
    .default([]),
  leftOut: z.array(z.int().positive()).max(100_000).default([]),
});
export type Repairs = z.infer<typeof Repairs>;

export const NO_REPAIRS: Repairs = { cells: {}, everywhere: [], leftOut: [] };

/** Name of a cell in `cells`. */
export const cellKey = (row: number, column: number): string => `${row}:${column}`;

/** @returns the table as it is with its repairs; the rows that are left out have gone */
export function repaired(file: CsvFile, { cells, everywhere, leftOut }: Repairs): CsvFile {
  const gone = new Set(leftOut);
  const rules = Map.groupBy(everywhere, ({ column }) => column);
  if (gone.size === 0 && rules.size === 0 && Object.keys(cells).length === 0) return file;
  const rows = new Set(Object.keys(cells).map((key) => Number.parseInt(key, 10)));
  const repair = (record: CsvRecord): CsvRecord => {
    if (rules.size === 0 && !rows.has(record.row)) return record;
    const width = Math.max(record.cells.length, file.header.length);
    const changed = Array.from({ length: width }, (_, column) => {
      const cell = record.cells[column] ?? '';
      const own = cells[cellKey(record.row, column)];
      return own ?? rules.get(column)?.find(({ from }) => from === cell.trim())?.to ?? cell;
    });
    return { ...record, cells: changed };
  };
  return {
    ...file,
    sample: file.sample.filter(({ row }) => !gone.has(row)).map(repair),
    async *records() {
      for await (const batch of file.records()) yield batch.filter(({ row }) => !gone.has(row)).map(repair);
    },
  };
}
