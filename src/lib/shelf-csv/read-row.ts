import { doubtsOf } from '../planning/model/plausibility.ts';
import { PouchLot } from '../planning/model/pouch-lot.ts';
import { problemsOf } from '../planning/model/problems.ts';
import { currencyIn } from './currency-words.ts';
import type { CsvRecord } from './csv-records.ts';
import { fieldEntry, SHELF_FIELDS, type ShelfField } from './fields.ts';
import type { Mapping } from './mapping.ts';
import { readCell, readCurrency, type CellRules } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';

/** What is wrong or odd about one cell. `column`: its heading in the file, '' where there is none. */
export type RowProblem = {
  readonly column: string;
  readonly field: string;
  readonly value: string;
  readonly reason: string;
};

export type ReadRow = {
  readonly row: number;
  readonly cells: readonly string[];
  readonly warnings: readonly RowProblem[];
} & (
  | { readonly status: 'lot'; readonly lot: PouchLot }
  | { readonly status: 'refused'; readonly problems: readonly RowProblem[] }
);

export type RowContext = {
  readonly mapping: Mapping;
  /** ISO 4217 code in which the shelf counts. */
  readonly currency: string;
  /** Some of the file's characters could not be decoded and are U+FFFD. */
  readonly damaged: boolean;
  /** The lots on the shelf by their code: what the file has no column for stays as it is there. */
  readonly shelf: ReadonlyMap<string, PouchLot>;
};

/**
 * Makes a reader for the records of one file, from the first to the last: it remembers the codes it has seen.
 *
 * @returns a function from a record to its pouch lot, or to the reasons why it is refused
 */
export function rowReader({ mapping, currency, damaged, shelf }: RowContext): (record: CsvRecord) => ReadRow {
  const { columns, constants } = mapping;
  const rowOfCode = new Map<string, number>();
  const columnOf = new Map<ShelfField, string>();
  for (const { field, header } of columns) if (field) columnOf.set(field, header);
  const withoutColumn = SHELF_FIELDS.filter(
    ({ field }) => !columnOf.has(field) && field !== 'currency' && field !== 'code',
  ).map(({ field }) => field as keyof PouchLot);
  const rules: CellRules[] = columns.map(({ unit }) => ({ ...mapping, unit, currency }));
  const constantRules: CellRules = { ...mapping, unit: undefined, currency };
  const costIn = currencyIn(columns.find(({ field }) => field === 'costMinor')?.header ?? '');

  return ({ row, cells, fault }) => {
    const problems: RowProblem[] = [];
    const warnings: RowProblem[] = [];
    const about = (field: ShelfField, value: string, reason: string): RowProblem => ({
      column: columnOf.get(field) ?? '',
      field: fieldEntry(field).label,
      value,
      reason,
    });
    const texts = new Map<ShelfField, string>();
    const refused = (): ReadRow => ({ row, cells, warnings, status: 'refused', problems });

    if (fault)
      problems.push({ column: '', field: '', value: cells.at(-1)?.slice(0, 80) ?? '', reason: fault });
    const extra = cells.slice(columns.length).filter((cell) => cell.trim() !== '');
    if (extra.length > 0)
      problems.push({
        column: '',
        field: '',
        value: extra[0]!,
        reason: `the row has ${cells.length} cells, the header ${columns.length}; a text that holds the delimiter needs quotation marks around it`,
      });
    if (problems.length > 0) return refused();

    // The cells of the mapped columns, as values of the core.
    const values: Partial<Record<ShelfField, unknown>> = {};
    columns.forEach(({ field, header }, index) => {
      if (!field) return;
      const entry = fieldEntry(field);
      let text = restore((cells[index] ?? '').trim());
      texts.set(field, text);
      if (damaged && text.includes('\uFFFD')) {
        problems.push(
          about(field, text, 'holds a character that could not be read; save the file again as UTF-8'),
        );
        return;
      }
      if (text === '') {
        const constant = constants[field]?.trim();
        if (!constant) return;
        warnings.push(about(field, '', `is empty; "${constant}" was taken, as chosen for this file`));
        text = constant;
      }
      const reading = readCell(entry, text, rules[index]!);
      if ('reason' in reading)
        problems.push({ column: header, field: entry.label, value: text, reason: reading.reason });
      else {
        values[field] = reading.value;
        if (reading.doubt) warnings.push(about(field, text, reading.doubt));
      }
    });
    if (values.costMinor !== undefined && costIn) {
      const reading = readCurrency(costIn, currency);
      if ('reason' in reading)
        problems.push(about('costMinor', texts.get('costMinor') ?? '', reading.reason));
    }
    // Where nothing is poured on, nobody states the kind of water or the waiting time.
    if (values.waterKind === 'none' && columnOf.has('waterMl')) values.waterMl ??= 0;
    if (values.waterMl === 0) {
      if (columnOf.has('waterKind')) values.waterKind ??= 'none';
      if (columnOf.has('steepMin')) values.steepMin ??= 0;
    }

    if (values.code === undefined) {
      const made = madeCode(values.recipe, values.sealedOn);
      if (made) {
        values.code = made;
        if (columnOf.has('code'))
          warnings.push(about('code', '', `is empty; "${made}" was made of recipe and sealing date`));
      }
    }

    // What the file has no column for: as on the shelf, else the same for all rows.
    const known = typeof values.code === 'string' ? shelf.get(values.code) : undefined;
    for (const field of withoutColumn) {
      const constant = constants[field]?.trim();
      if (known) values[field] = known[field];
      else if (constant) {
        const reading = readCell(fieldEntry(field), constant, constantRules);
        if ('reason' in reading) problems.push(about(field, constant, reading.reason));
        else values[field] = reading.value;
      }
    }

    const servings = values.servingsPerPouch;
    for (const { field, per } of columns)
      if (
        field &&
        per === 'pouch' &&
        typeof values[field] === 'number' &&
        typeof servings === 'number' &&
        servings > 0
      )
        values[field] =
          field === 'costMinor'
            ? Math.round(values[field] / servings)
            : Number((values[field] / servings).toPrecision(12));

    const { currency: _, ...fields } = values;
    const parsed = PouchLot.safeParse(withoutUndefined(fields), { reportInput: true });
    if (!parsed.success) {
      for (const { field, message } of problemsOf(parsed.error)) {
        const name = /^\w+/.exec(field)![0] as ShelfField;
        const named = fieldEntry(name).label;
        if (problems.some((problem) => problem.field === named)) continue;
        const value = texts.get(name) ?? '';
        const missing = values[name] === undefined;
        problems.push(
          about(
            name,
            value,
            missing ? (columnOf.has(name) ? 'is empty' : 'has no column in this file') : message,
          ),
        );
      }
      return refused();
    }
    const lot = parsed.data;
    for (const { field, severity, reason } of doubtsOf(lot))
      (severity === 'refuse' ? problems : warnings).push(about(field, texts.get(field) ?? '', reason));

    const earlier = rowOfCode.get(lot.code);
    if (earlier !== undefined)
      problems.push(
        about(
          'code',
          lot.code,
          columnOf.has('code')
            ? `the code is already used in row ${earlier}; give each lot its own code, or add up their pouches`
            : `row ${earlier} already holds this recipe sealed on this day; add up their pouches, or add a column with codes`,
        ),
      );
    if (problems.length > 0) return refused();
    rowOfCode.set(lot.code, row);
    return { row, cells, warnings, status: 'lot', lot };
  };
}

/** @returns a code for a lot that has none: always the same for the same recipe and sealing date. */
function madeCode(recipe: unknown, sealedOn: unknown): string | undefined {
  if (typeof recipe !== 'string' || typeof sealedOn !== 'string') return undefined;
  const name = recipe
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .slice(0, 29)
    .replace(/^-+|-+$/g, '');
  return name === '' ? undefined : `${name}-${sealedOn}`;
}

function withoutUndefined(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
