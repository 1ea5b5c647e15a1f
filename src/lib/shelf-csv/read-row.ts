import { doubtsOf } from '../planning/model/plausibility.ts';
import { PouchLot } from '../planning/model/pouch-lot.ts';
import { problemsOf } from '../planning/model/problems.ts';
import { currencyIn } from './currency-words.ts';
import type { CsvRecord } from './csv-records.ts';
import { fieldEntry, LOT_FIELDS, type FieldEntry, type ShelfField } from './fields.ts';
import type { Mapping } from './mapping.ts';
import { readCell, readCurrency, type CellRules, type Reading } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { say } from '../texts/say.ts';

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

type Values = Partial<Record<keyof PouchLot, unknown>>;
/** A row on its way to a lot: its cells as values of the core, and what was found on the way. */
type Draft = {
  readonly cells: readonly string[];
  readonly values: Values;
  readonly problems: RowProblem[];
  readonly warnings: RowProblem[];
};
type Column = {
  readonly entry: FieldEntry;
  readonly header: string;
  readonly index: number;
  readonly rules: CellRules;
  /** What the texts of the column were read as; left out where few come twice. */
  readonly seen?: Map<string, Reading<unknown>>;
};
const MOST_SEEN = 10_000;
const SELDOM_TWICE: readonly FieldEntry['kind'][] = ['text', 'number', 'cost'];

/** Reads the records of one file, from the first to the last: it remembers the codes it has seen. */
export class RowReader {
  readonly #context: RowContext;
  readonly #columns: readonly Column[];
  readonly #columnOf: ReadonlyMap<ShelfField, Column>;
  readonly #withoutColumn: readonly (keyof PouchLot)[];
  readonly #perPouch: readonly (keyof PouchLot)[];
  /** The currency that the heading of the costs names, where it is another one than that of the shelf. */
  readonly #foreignCosts: string | undefined;
  readonly #rowOfCode = new Map<string, number>();

  constructor(context: RowContext) {
    const { mapping, currency } = context;
    this.#context = context;
    this.#columns = mapping.columns.flatMap(({ field, header, unit }, index) => {
      if (!field) return [];
      const entry = fieldEntry(field);
      const column: Column = { entry, header, index, rules: { ...mapping, unit, currency } };
      return [SELDOM_TWICE.includes(entry.kind) ? column : { ...column, seen: new Map() }];
    });
    this.#columnOf = new Map(this.#columns.map((column) => [column.entry.field, column]));
    this.#withoutColumn = LOT_FIELDS.filter((field) => field !== 'code' && !this.#columnOf.has(field));
    this.#perPouch = LOT_FIELDS.filter((field) =>
      mapping.columns.some((column) => column.field === field && column.per === 'pouch'),
    );
    const stated = currencyIn(this.#columnOf.get('costMinor')?.header ?? '');
    const reading = stated === undefined ? undefined : readCurrency(stated, currency);
    this.#foreignCosts = reading && 'reason' in reading ? reading.reason : undefined;
  }

  /** @returns the pouch lot of a record, or the reasons why it is refused */
  read({ row, cells, fault }: CsvRecord): ReadRow {
    const draft: Draft = { cells, values: {}, problems: [], warnings: [] };
    const { problems, warnings } = draft;
    this.#checkShape(draft, fault);
    if (problems.length === 0) {
      this.#readCells(draft);
      this.#impliedByNoWater(draft.values);
      this.#nameWithoutCode(draft);
      this.#fillWhatHasNoColumn(draft);
      this.#divideByServings(draft.values);
      const lot = this.#validLot(draft);
      if (lot && problems.length === 0) {
        this.#rowOfCode.set(lot.code, row);
        return { row, cells, warnings, status: 'lot', lot };
      }
    }
    return { row, cells, warnings, status: 'refused', problems };
  }

  #checkShape({ cells, problems }: Draft, fault: string | undefined): void {
    const whole = { column: '', field: '' };
    const width = this.#context.mapping.columns.length;
    if (fault) problems.push({ ...whole, value: cells.at(-1)?.slice(0, 80) ?? '', reason: fault });
    const extra = cells.length > width ? cells.slice(width).find((cell) => cell.trim() !== '') : undefined;
    if (extra !== undefined)
      problems.push({
        ...whole,
        value: extra,
        reason: say(
          'the row has {cells} cells, the header {width}; a text that holds the delimiter needs quotation marks around it',
          { cells: String(cells.length), width: String(width) },
        ),
      });
  }

  #readCells(draft: Draft): void {
    for (const column of this.#columns) {
      const { field } = column.entry;
      let text = textAt(draft.cells, column);
      if (text === '') {
        const constant = this.#context.mapping.constants[field]?.trim();
        if (!constant) continue;
        draft.warnings.push(
          this.#about(
            field,
            '',
            say('is empty; "{constant}" was taken, as chosen for this file', { constant }),
          ),
        );
        text = constant;
      }
      const reading: Reading<unknown> =
        this.#context.damaged && text.includes('\uFFFD')
          ? { reason: say('holds a character that could not be read; save the file again as UTF-8') }
          : readOften(column, text);
      this.#take(draft, field, text, reading);
    }
    if (this.#foreignCosts && draft.values.costMinor !== undefined)
      draft.problems.push(this.#about('costMinor', this.#textOf(draft, 'costMinor'), this.#foreignCosts));
  }

  /** Where nothing is poured on, nobody states the kind of water or the waiting time. */
  #impliedByNoWater(values: Values): void {
    if (values.waterKind === 'none' && this.#columnOf.has('waterMl')) values.waterMl ??= 0;
    if (values.waterMl !== 0) return;
    if (this.#columnOf.has('waterKind')) values.waterKind ??= 'none';
    if (this.#columnOf.has('steepMin')) values.steepMin ??= 0;
  }

  #nameWithoutCode({ values, warnings }: Draft): void {
    if (values.code !== undefined) return;
    const made = madeCode(values.recipe, values.sealedOn);
    if (made === undefined) return;
    values.code = made;
    if (this.#columnOf.has('code'))
      warnings.push(
        this.#about('code', '', say('is empty; "{made}" was made of recipe and sealing date', { made })),
      );
  }

  /** As it is on the shelf; for a new lot, the value that was given for all rows. */
  #fillWhatHasNoColumn(draft: Draft): void {
    const { mapping, currency, shelf } = this.#context;
    const known = typeof draft.values.code === 'string' ? shelf.get(draft.values.code) : undefined;
    for (const field of this.#withoutColumn) {
      const constant = mapping.constants[field]?.trim();
      if (known) this.#take(draft, field, '', { value: known[field] });
      else if (constant)
        this.#take(
          draft,
          field,
          constant,
          readCell(fieldEntry(field), constant, { ...mapping, unit: undefined, currency }),
        );
    }
  }

  #divideByServings(values: Values): void {
    const { servingsPerPouch } = values;
    if (typeof servingsPerPouch !== 'number' || servingsPerPouch <= 0) return;
    for (const field of this.#perPouch) {
      const perPouch = values[field];
      if (typeof perPouch !== 'number') continue;
      const perServing = perPouch / servingsPerPouch;
      values[field] = field === 'costMinor' ? Math.round(perServing) : Number(perServing.toPrecision(12));
    }
  }

  #validLot(draft: Draft): PouchLot | undefined {
    const { values, problems, warnings } = draft;
    const parsed = PouchLot.safeParse(values, { reportInput: true });
    if (!parsed.success) {
      for (const { field: path, message } of problemsOf(parsed.error)) {
        const field = /^\w+/.exec(path)![0] as keyof PouchLot;
        // A cell that could not be read has its reason already.
        if (problems.some((problem) => problem.field === say(fieldEntry(field).label))) continue;
        const missing = this.#columnOf.has(field) ? say('is empty') : say('has no column in this file');
        problems.push(
          this.#about(field, this.#textOf(draft, field), values[field] === undefined ? missing : message),
        );
      }
      return undefined;
    }
    const lot = parsed.data;
    for (const { field, severity, reason } of doubtsOf(lot))
      (severity === 'refuse' ? problems : warnings).push(
        this.#about(field, this.#textOf(draft, field), reason),
      );

    const earlier = this.#rowOfCode.get(lot.code);
    if (earlier !== undefined) {
      const reason = this.#columnOf.has('code')
        ? say('the code is already used in row {row}; give each lot its own code, or add up their pouches', {
            row: String(earlier),
          })
        : say(
            'row {row} already holds this recipe sealed on this day; add up their pouches, or add a column with codes',
            { row: String(earlier) },
          );
      problems.push(this.#about('code', lot.code, reason));
    }
    return lot;
  }

  #take(
    { values, problems, warnings }: Draft,
    field: ShelfField,
    text: string,
    reading: Reading<unknown>,
  ): void {
    if ('reason' in reading) problems.push(this.#about(field, text, reading.reason));
    else {
      if (reading.doubt) warnings.push(this.#about(field, text, reading.doubt));
      if (field !== 'currency' && reading.value !== undefined) values[field] = reading.value;
    }
  }

  #textOf({ cells }: Draft, field: ShelfField): string {
    const column = this.#columnOf.get(field);
    return column ? textAt(cells, column) : '';
  }

  #about(field: ShelfField, value: string, reason: string): RowProblem {
    return {
      column: this.#columnOf.get(field)?.header ?? '',
      field: say(fieldEntry(field).label),
      value,
      reason,
    };
  }
}

/** Words and dates come again and again: to look up what they were read as saves a quarter of the time of a long file. */
function readOften({ entry, rules, seen }: Column, text: string): Reading<unknown> {
  if (!seen) return readCell(entry, text, rules);
  let reading = seen.get(text);
  if (reading === undefined) {
    reading = readCell(entry, text, rules);
    if (seen.size < MOST_SEEN) seen.set(text, reading);
  }
  return reading;
}

const textAt = (cells: readonly string[], { index }: Column): string => restore((cells[index] ?? '').trim());

/** @returns a code for a lot that has none: always the same for the same recipe and sealing date. */
function madeCode(recipe: unknown, sealedOn: unknown): string | undefined {
  if (typeof recipe !== 'string' || typeof sealedOn !== 'string') return undefined;
  const name = recipe
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .slice(0, 29)
    .replace(/^-|-$/g, '');
  return name === '' ? undefined : `${name}-${sealedOn}`;
}
