/*
 * Tables of pouches as households keep them, invented, each with the lots that a person reads in it, worked out by hand. None has the headings of an export. A
 * lot is taken in wrongly where it says anything that the person does not read there.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readTable, type ReadTable } from '../../src/lib/shelf-csv/read-table.ts';
import { openTable } from '../../src/lib/workbook/open-table.ts';

const FOLDER = import.meta.dirname;

type Lot = Readonly<Record<string, unknown>>;
/**
 * `lots` by their row. A field that is `{ maybe: value }` is so, or left open and asked about; `skipped` are the rows that are no lots; `open` are real rows that no one can take
 * without asking, since the table does not say enough.
 */
export type Expected = {
  readonly lots: Readonly<Record<string, Lot>>;
  readonly skipped: readonly number[];
  readonly open: readonly number[];
};

export type Compared = {
  readonly table: string;
  readonly rows: number;
  readonly taken: number;
  readonly wrong: readonly string[];
  readonly questions: number;
};

/** Rounding of what people write, and of the conversion of units. */
const SAME_WITHIN = 0.002;
/** What the reader says of its own: a code where there is none, remarks with what could not be taken, empty lists. */
const OWN = ['code', 'note', 'diets'];

export const TABLES = readdirSync(FOLDER)
  .filter((name) => /\.(?:csv|tsv|txt|xlsx|ods)$/.test(name))
  .sort();

export async function readEveryday(name: string): Promise<{ read: ReadTable; expected: Expected }> {
  const bytes = readFileSync(join(FOLDER, name));
  const file = await openTable(async function* () {
    yield bytes;
  });
  const expected = JSON.parse(readFileSync(join(FOLDER, `${name}.json`), 'utf8')) as Expected;
  return { read: await readTable(file), expected };
}

export function compare(
  table: string,
  { rows, skipped, questions }: ReadTable,
  expected: Expected,
): Compared {
  const wrong: string[] = [];
  const real = new Set([...Object.keys(expected.lots).map(Number), ...expected.open]);
  for (const { line, status, lot } of rows) {
    const wanted = expected.lots[line];
    if (status !== 'new') continue;
    if (!wanted) {
      wrong.push(`row ${line} was taken: ${JSON.stringify(lot)}`);
      continue;
    }
    for (const [field, value] of Object.entries(lot)) {
      if (OWN.includes(field) && !(field in wanted)) continue;
      if (!(field in wanted)) wrong.push(`row ${line}: ${field} ${JSON.stringify(value)} is not said there`);
      else if (!same(value, wanted[field]))
        wrong.push(`row ${line}: ${field} ${JSON.stringify(value)}, not ${JSON.stringify(wanted[field])}`);
    }
    for (const [field, value] of Object.entries(wanted))
      if (!(field in lot) && !isMaybe(value))
        wrong.push(`row ${line}: ${field} ${JSON.stringify(value)} was not taken`);
  }
  for (const { line } of skipped) if (real.has(line)) wrong.push(`row ${line} was passed over`);
  for (const line of expected.skipped)
    if (!skipped.some((row) => row.line === line)) wrong.push(`row ${line} was not passed over`);
  const taken = rows.filter(({ status, line }) => status === 'new' && line in expected.lots).length;
  return { table, rows: real.size, taken, wrong, questions: questions.length };
}

const isMaybe = (wanted: unknown): wanted is { readonly maybe: unknown } =>
  typeof wanted === 'object' && wanted !== null && 'maybe' in wanted;

function same(value: unknown, wanted: unknown): boolean {
  if (isMaybe(wanted)) return same(value, wanted.maybe);
  if (typeof value === 'number' && typeof wanted === 'number')
    return Math.abs(value - wanted) <= SAME_WITHIN * Math.max(1, Math.abs(wanted));
  if (Array.isArray(value) && Array.isArray(wanted))
    return (
      value.length === wanted.length &&
      value
        .map(String)
        .sort()
        .every((entry, index) => entry === wanted.map(String).sort()[index])
    );
  return value === wanted;
}
