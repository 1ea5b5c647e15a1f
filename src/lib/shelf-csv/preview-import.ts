import type { PouchLot } from '../planning/model/pouch-lot.ts';
import type { CsvFile } from './csv-records.ts';
import { fieldEntry, LOT_FIELDS } from './fields.ts';
import type { Mapping } from './mapping.ts';
import { RowReader, type ReadRow, type RowProblem } from './read-row.ts';
import { say } from '../texts/say.ts';

/** A lot at home, with the pouches of it that are promised to trips. */
export type LotAtHome = PouchLot & { readonly setAside: number };

/** What the import will do with a row. */
export type JudgedRow = Pick<ReadRow, 'row' | 'cells' | 'warnings'> &
  (
    | { readonly fate: 'new' | 'unchanged'; readonly lot: PouchLot }
    | {
        readonly fate: 'changed';
        readonly lot: PouchLot;
        readonly before: PouchLot;
        readonly changed: readonly (keyof PouchLot)[];
      }
    | { readonly fate: 'refused'; readonly problems: readonly RowProblem[] }
  );
export type Fate = JudgedRow['fate'];

export type ImportContext = {
  readonly mapping: Mapping;
  /** ISO 4217 code in which the shelf counts. */
  readonly currency: string;
  readonly shelf: ReadonlyMap<string, LotAtHome>;
};

/** Reads a file from top to bottom and says what becomes of each row, batch by batch. */
export async function* judgeRows(
  file: CsvFile,
  { mapping, currency, shelf }: ImportContext,
): AsyncGenerator<readonly JudgedRow[]> {
  const reader = new RowReader({ mapping, currency, damaged: file.form.damaged, shelf });
  for await (const batch of file.records())
    yield batch.map((record) => judge(reader.read(record), mapping, shelf));
}

function judge(read: ReadRow, mapping: Mapping, shelf: ReadonlyMap<string, LotAtHome>): JudgedRow {
  const { row, cells, warnings } = read;
  if (read.status === 'refused') return { row, cells, warnings, fate: 'refused', problems: read.problems };
  const { lot } = read;
  const before = shelf.get(lot.code);
  if (!before) return { row, cells, warnings, fate: 'new', lot };
  if (lot.pouches < before.setAside) {
    const column = mapping.columns.find(({ field }) => field === 'pouches')?.header ?? '';
    const reason = say(
      '{count} pouches of this lot are set aside for trips; release some there first, or correct the count',
      { count: String(before.setAside) },
    );
    return {
      row,
      cells,
      warnings,
      fate: 'refused',
      problems: [{ column, field: say(fieldEntry('pouches').label), value: String(lot.pouches), reason }],
    };
  }
  const changed = LOT_FIELDS.filter((field) => !same(lot[field], before[field]));
  return changed.length > 0
    ? { row, cells, warnings, fate: 'changed', lot, before, changed }
    : { row, cells, warnings, fate: 'unchanged', lot };
}

const same = (a: unknown, b: unknown): boolean =>
  a === b ||
  (Array.isArray(a) &&
    Array.isArray(b) &&
    a.length === b.length &&
    a.every((entry, index) => entry === b[index]));

export const PREVIEW_FILTERS = ['all', 'new', 'changed', 'unchanged', 'refused', 'warned'] as const;
export type PreviewFilter = (typeof PREVIEW_FILTERS)[number];

export type ImportPreview = {
  readonly counts: Readonly<Record<PreviewFilter, number>>;
  readonly rows: readonly JudgedRow[];
};

/** Counts all rows and keeps those of one page: `size` rows of the filter, after the first `from` of them. */
export async function previewImport(
  judged: AsyncIterable<readonly JudgedRow[]>,
  { show, from, size }: { readonly show: PreviewFilter; readonly from: number; readonly size: number },
): Promise<ImportPreview> {
  const counts = { all: 0, new: 0, changed: 0, unchanged: 0, refused: 0, warned: 0 };
  const rows: JudgedRow[] = [];
  for await (const batch of judged)
    for (const row of batch) {
      const warned = row.warnings.length > 0 && row.fate !== 'refused';
      if (show === 'all' || row.fate === show || (show === 'warned' && warned)) {
        if (counts[show] >= from && rows.length < size) rows.push(row);
      }
      counts.all++;
      counts[row.fate]++;
      if (warned) counts.warned++;
    }
  return { counts, rows };
}
