import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { statedOf, type StatedLot } from '../planning/model/stated-lot.ts';
import type { CsvFile } from './csv-records.ts';
import { fieldEntry, LOT_FIELDS, type LotField } from './fields.ts';
import type { Mapping } from './mapping.ts';
import { RowReader, type ReadRow, type RowProblem } from './read-row.ts';
import type { NoLot } from './sort-rows.ts';
import { say } from '../texts/say.ts';

/** A lot at home, with the pouches of it that are promised to trips. */
export type LotAtHome = PouchLot & { readonly setAside: number };

/** What the import will do with a row. */
export type JudgedRow = Pick<ReadRow, 'row' | 'cells' | 'warnings'> &
  (
    | { readonly fate: 'new'; readonly lot: StatedLot }
    | { readonly fate: 'unchanged'; readonly lot: StatedLot }
    | {
        readonly fate: 'changed';
        readonly lot: StatedLot;
        readonly before: StatedLot;
        readonly changed: readonly LotField[];
      }
    | { readonly fate: 'question'; readonly problems: readonly RowProblem[] }
    | { readonly fate: 'refused'; readonly problems: readonly RowProblem[] }
    | { readonly fate: 'skipped'; readonly why: NoLot }
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
  const stated = new Map(shelf.entries().map(([code, lot]) => [code, statedOf(lot)]));
  const reader = new RowReader({
    mapping,
    currency,
    damaged: file.form.damaged,
    title: file.title,
    shelf: stated,
  });
  for await (const batch of file.records())
    yield batch.map((record) => judge(reader.read(record), mapping, shelf));
}

function judge(read: ReadRow, mapping: Mapping, shelf: ReadonlyMap<string, LotAtHome>): JudgedRow {
  const { row, cells, warnings } = read;
  if (read.status === 'skipped') return { row, cells, warnings, fate: 'skipped', why: read.why };
  if (read.status !== 'lot') return { row, cells, warnings, fate: read.status, problems: read.problems };
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
  const stated = statedOf(before);
  const changed = LOT_FIELDS.filter(
    (field) =>
      !same(lot[field], stated[field]) ||
      (field === 'allergens' && lot.allergensOpen !== stated.allergensOpen),
  );
  return changed.length > 0
    ? { row, cells, warnings, fate: 'changed', lot, before: stated, changed }
    : { row, cells, warnings, fate: 'unchanged', lot };
}

const same = (a: unknown, b: unknown): boolean =>
  a === b ||
  (Array.isArray(a) &&
    Array.isArray(b) &&
    a.length === b.length &&
    a.every((entry, index) => entry === b[index]));

export const PREVIEW_FILTERS = [
  'all',
  'new',
  'changed',
  'unchanged',
  'question',
  'refused',
  'warned',
  'skipped',
] as const;
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
  const counts = { all: 0, new: 0, changed: 0, unchanged: 0, question: 0, refused: 0, warned: 0, skipped: 0 };
  const rows: JudgedRow[] = [];
  for await (const batch of judged)
    for (const row of batch) {
      const warned = row.warnings.length > 0 && (row.fate === 'new' || row.fate === 'changed');
      const isRow = row.fate !== 'skipped';
      if ((show === 'all' && isRow) || row.fate === show || (show === 'warned' && warned)) {
        if (counts[show] >= from && rows.length < size) rows.push(row);
      }
      if (isRow) counts.all++;
      counts[row.fate]++;
      if (warned) counts.warned++;
    }
  return { counts, rows };
}
