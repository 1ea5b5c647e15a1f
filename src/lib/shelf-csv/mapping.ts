import { z } from 'zod';
import type { Problem } from '../presentation/problems.ts';
import { MEAL_WORDS, WATER_WORDS } from '../presentation/code-words.ts';
import type { CsvFile } from './csv-records.ts';
import {
  EARLIER_COLUMNS,
  EXPORT_HEADER,
  fieldEntry,
  plainWords,
  SAME_FOR_ALL,
  SHELF_FIELDS,
  withoutReason,
  type FieldEntry,
  type ShelfField,
} from './fields.ts';
import { BASES } from './headings.ts';
import { readCell } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { MEAL_VOCABULARY, WATER_VOCABULARY } from './vocabulary.ts';
import { say, sayList, sayWithin } from '../texts/say.ts';

const FieldName = z.enum(SHELF_FIELDS.map(({ field }) => field));
const Unit = z.enum([...new Set(SHELF_FIELDS.flatMap(({ units }) => units ?? []))]);

export const ColumnMapping = z.strictObject({
  header: z.string(),
  /** `null`: the column is passed over. */
  field: FieldName.nullable(),
  /** Left out where nothing tells it: such a column is asked about, and not read until then. */
  unit: Unit.optional(),
  /** For what its figures are stated; left out where nothing tells it. */
  per: z.enum(BASES).optional(),
  /** The allergens, or the diet, that a column of yes and no is about. */
  of: z.string().max(200).optional(),
  /** Servings that may be those of one pouch or of all of a row: not read until somebody says which. */
  open: z.literal(true).optional(),
});
export type ColumnMapping = z.infer<typeof ColumnMapping>;

/** How the columns of a file become the fields of pouch lots. It is remembered for files with the same header. */
export const Mapping = z.strictObject({
  columns: z.array(ColumnMapping),
  decimalMark: z.enum(['.', ',', 'either']),
  dateOrder: z.enum(['iso', 'day-first', 'month-first']),
  /** What holds where a field has no column or its cell is empty, as text that is read like a cell. */
  constants: z.partialRecord(FieldName, z.string().max(200)),
  /** The year of dates that are written without one. */
  year: z.int().min(1990).max(2100).optional(),
  /** Whoever made the table says that what its columns of yes and no do not name is not in the food. */
  allergensComplete: z.literal(true).optional(),
});
export type Mapping = z.infer<typeof Mapping>;

/** @returns what files with the same columns in the same order have in common. */
export function headerSignature(header: readonly string[]): string {
  return withoutReason(header).map(plainWords).join('|');
}

/** @returns whether this is the header of an exported file, of this version or an earlier one, which can be read without asking. */
export function isExportHeader(header: readonly string[]): boolean {
  for (let count = EXPORT_HEADER.length; count >= EARLIER_COLUMNS; count -= 1)
    if (startsWith(header, EXPORT_HEADER.slice(0, count))) return true;
  return false;
}

/** @returns the mapping of an earlier file, where it is one for this header. */
export function rememberedMapping(header: readonly string[], remembered: unknown): Mapping | undefined {
  const { data } = Mapping.safeParse(remembered);
  if (!data || !startsWith(header, withoutReason(data.columns.map((column) => column.header))))
    return undefined;
  return {
    ...data,
    columns: header.map((heading, index) => data.columns[index] ?? { header: heading, field: null }),
  };
}

/** A header may be followed by the reasons of an earlier refusal, and by nothing else. */
function startsWith(header: readonly string[], known: readonly string[]): boolean {
  const own = withoutReason(header);
  return own.length === known.length && own.every((heading, index) => heading === known[index]);
}

/** @returns what has to be settled before the file can be read: `field` is `columns[3].field`, `constants.steepMin` or the field itself. */
export function mappingProblems(mapping: Mapping): Problem[] {
  const problems: Problem[] = [];
  const mapped = new Set(mapping.columns.map(({ field }) => field));
  const earlier = new Map<ShelfField, string>();
  mapping.columns.forEach(({ field, header }, index) => {
    if (!field) return;
    const other = earlier.get(field);
    if (other !== undefined && ONCE.includes(field))
      problems.push({
        field: `columns[${index}].field`,
        message: say('"{header}" and "{earlier}" cannot both be {field}; choose one of them', {
          header,
          earlier: other,
          field: sayWithin(fieldEntry(field).label),
        }),
      });
    earlier.set(field, header);
  });
  for (const entry of SHELF_FIELDS) {
    const constant = mapping.constants[entry.field]?.trim();
    if (constant) {
      if (!entry.sameForAll)
        problems.push({
          field: `constants.${entry.field}`,
          message: say('{field} cannot be the same for all rows; give it a column', {
            field: say(entry.label),
          }),
        });
      const read = readCell(entry, constant, { ...mapping, unit: undefined, currency: 'XXX' });
      if ('reason' in read) problems.push({ field: `constants.${entry.field}`, message: read.reason });
    } else if (entry.required && !mapped.has(entry.field) && !IS_WORKED_OUT[entry.field]?.(mapped)) {
      problems.push(
        entry.sameForAll
          ? {
              field: `constants.${entry.field}`,
              message: say('no column contains {field}; choose one, or set one value for all rows', {
                field: sayWithin(entry.label),
              }),
            }
          : {
              field: entry.field,
              message: say('no column contains the {field}; choose one', {
                field: sayWithin(entry.label),
              }),
            },
      );
    }
  }
  return problems;
}

/** What one column has to say; of figures, dates, lists and remarks, two are read together. */
const ONCE: readonly ShelfField[] = [
  'code',
  'recipe',
  'pouches',
  'servingsPerPouch',
  'mealKinds',
  'waterKind',
  'kind',
  'place',
  'currency',
];

/** Required fields that something else can stand for. */
const IS_WORKED_OUT: Partial<Record<ShelfField, (mapped: ReadonlySet<ShelfField | null>) => boolean>> = {
  dryWeightG: (mapped) => mapped.has('grossWeightG'),
  // A pouch of the weight of one serving is taken for one.
  servingsPerPouch: (mapped) => mapped.has('dryWeightG') || mapped.has('grossWeightG'),
};

/** Cells of a column that cannot be read as its field: how many of the first rows, and why the first of them. */
export type ColumnTrouble = { readonly cells: number; readonly reason: string };

/** @returns for each column what its first rows hold that cannot be read; `undefined` where all can. */
export function columnTroubles(
  { sample }: Pick<CsvFile, 'sample'>,
  mapping: Mapping,
  currency: string,
): (ColumnTrouble | undefined)[] {
  return mapping.columns.map(({ field, unit }, index) => {
    if (!field) return undefined;
    const reasons = sample.flatMap(({ cells }) => {
      const text = restore((cells[index] ?? '').trim());
      const reading =
        text === '' ? undefined : readCell(fieldEntry(field), text, { ...mapping, unit, currency });
      return reading && 'reason' in reading ? [reading.reason] : [];
    });
    return reasons[0] === undefined ? undefined : { cells: reasons.length, reason: reasons[0] };
  });
}

/** @returns what is taken for every row because the file has no column for it, as a person reads it: "Packaging: 15 g". */
export function sameForAllRows({ columns, constants }: Mapping): string[] {
  const mapped = new Set(columns.map(({ field }) => field));
  return SAME_FOR_ALL.flatMap((entry) => {
    const text = constants[entry.field]?.trim();
    return text && !mapped.has(entry.field) ? [`${say(entry.label)}: ${saidConstant(entry, text)}`] : [];
  });
}

/** Codes are said in the language around, figures with the unit that they are taken in; other texts stay as they were typed. */
function saidConstant({ kind, units }: FieldEntry, text: string): string {
  const meant =
    kind === 'meals'
      ? MEAL_VOCABULARY.meaning(text)
      : kind === 'water kind'
        ? WATER_VOCABULARY.meaning(text)
        : undefined;
  const words = { ...MEAL_WORDS, ...WATER_WORDS };
  if (meant) return sayList(meant.map((code) => say(words[code])));
  return units && /[\d½¼¾]$/.test(text) ? `${text} ${units[0]}` : text;
}
