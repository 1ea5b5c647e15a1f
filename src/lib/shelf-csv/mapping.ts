import { z } from 'zod';
import type { Problem } from '../presentation/problems.ts';
import { MEAL_WORDS, WATER_WORDS } from '../presentation/code-words.ts';
import type { CsvFile } from './csv-records.ts';
import {
  EARLIER_COLUMNS,
  EXPORT_FIELDS,
  EXPORT_HEADER,
  fieldEntry,
  plainWords,
  SAME_FOR_ALL,
  SHELF_FIELDS,
  type FieldEntry,
  type ShelfField,
} from './fields.ts';
import { guessColumns } from './guess-columns.ts';
import { BASES } from './headings.ts';
import { readCell, readDate, readNumber, type DateOrder, type DecimalMark } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { MEAL_VOCABULARY, WATER_VOCABULARY } from './vocabulary.ts';
import { withoutReason } from './write-shelf-csv.ts';
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
  return startsWith(header, EXPORT_HEADER) || startsWith(header, EXPORT_HEADER.slice(0, EARLIER_COLUMNS));
}

/** A table with most headings of an export is read as an export, for one serving, whatever else is in it. */
const isLikeExport = (header: readonly string[]): boolean =>
  header.filter((heading) => heading.includes(' ') && EXPORT_HEADER.includes(heading)).length >= 5;

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

/** @returns the most likely mapping of a file, by its headings and its first rows. What they leave open stays open. */
export function guessMapping({
  header,
  sample,
  forms,
}: Pick<CsvFile, 'header' | 'sample'> & Partial<Pick<CsvFile, 'forms'>>): Mapping {
  if (isExportHeader(header) || isLikeExport(header))
    return {
      columns: exportColumns(header, sample),
      decimalMark: isExportHeader(header) ? '.' : markOfFile(header, sample, forms),
      dateOrder: isExportHeader(header) ? 'iso' : orderOfFile(header, sample, forms),
      constants: {},
    };
  const rules = {
    decimalMark: markOfFile(header, sample, forms),
    dateOrder: orderOfFile(header, sample, forms),
  };
  return { columns: guessColumns(header, sample, rules), ...rules, constants: {} };
}

function exportColumns(header: readonly string[], sample: CsvFile['sample']): ColumnMapping[] {
  const others = guessColumns(header, sample, { decimalMark: '.', dateOrder: 'iso' });
  const taken = new Set(header);
  return header.map((heading, index) => {
    const entry = EXPORT_FIELDS.find((known) => known.heading === heading);
    const guess = others[index]!;
    if (!entry)
      return guess.field && taken.has(fieldEntry(guess.field).heading ?? '')
        ? { header: heading, field: null }
        : guess;
    return {
      header: heading,
      field: entry.field,
      ...(entry.units && { unit: entry.units[0]! }),
      ...(entry.perServing && { per: 'serving' as const }),
    };
  });
}

const allCells = (sample: CsvFile['sample']): string[] =>
  sample.flatMap(({ cells }) => cells.map((cell) => cell.trim()).filter((cell) => cell !== ''));

/** What is written with letters and marks of a date is no number. */
const isNumeric = (cell: string): boolean =>
  /^[~≈]?[\d.,'’\s]+(?:\p{L}{1,5}\.?)?$/u.test(cell) && !/^\d{1,2}\.\s?\d{1,2}\.?(?:\s?\d{2,4})?$/.test(cell);

function markOfFile(
  header: readonly string[],
  sample: CsvFile['sample'],
  forms?: CsvFile['forms'],
): DecimalMark {
  if (forms?.decimalPoint) return '.';
  const guessed = guessDecimalMark(allCells(sample).filter(isNumeric));
  if (guessed !== 'either') return guessed;
  // Tables in German and French have a comma; those in English a point.
  const language = languageOf(header, sample);
  return language === 'de' ? ',' : language === 'en' ? '.' : 'either';
}

function orderOfFile(
  header: readonly string[],
  sample: CsvFile['sample'],
  forms: CsvFile['forms'] | undefined,
): DateOrder {
  const guessed = guessDateOrder(allCells(sample));
  if (guessed !== 'iso') return guessed;
  if (forms?.decimalComma || languageOf(header, sample) === 'de') return 'day-first';
  const words = plainWords([...header, ...allCells(sample)].join(' '));
  // Ounces and cups are American, British households weigh in grams.
  if (/(?:^| )(?:oz|ounces|lbs?|cups?|fl oz)(?: |$)/.test(words)) return 'month-first';
  if (
    /(?:^| )(?:bbe|fibre|litres?|mince|courgettes?|aubergines?|tea time|pudding|brekkie|veggie|grammes)(?: |$)|£/.test(
      words,
    ) ||
    allCells(sample).some((cell) => cell.includes('£'))
  )
    return 'day-first';
  return 'iso';
}

const GERMAN =
  /(?:^| )(?:gericht|gewicht|anzahl|beutel|portionen|portion|datum|haltbar|mhd|wasser|kalorien|rezept|mahlzeit|eiweiss|fett|kohlenhydrate|bemerkung|notiz|versiegelt|verpackt|abgefullt|inhalt|menge|stuck|und|mit|fur|lagerort|zutaten|energie|brennwert|frühstück|fruhstuck|abendessen)(?: |$)/;
const ENGLISH =
  /(?:^| )(?:weight|bags?|pouches|servings?|date|water|calories|recipe|meal|protein|fat|carbs|notes?|sealed|packed|best|dish|name|qty|count|with|and|for|food|breakfast|dinner)(?: |$)/;

function languageOf(header: readonly string[], sample: CsvFile['sample']): 'de' | 'en' | undefined {
  const heads = plainWords(header.join(' '));
  const [german, english] = [GERMAN.test(heads), ENGLISH.test(heads)];
  if (german !== english) return german ? 'de' : 'en';
  const words = plainWords(
    sample
      .slice(0, 30)
      .map(({ cells }) => cells.join(' '))
      .join(' '),
  );
  const [germanCells, englishCells] = [GERMAN.test(words), ENGLISH.test(words)];
  return germanCells === englishCells ? undefined : germanCells ? 'de' : 'en';
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

// guessing

/** Each number that can be read with one of the two marks only is a vote. */
export function guessDecimalMark(cells: readonly string[]): DecimalMark {
  const votes = { '.': 0, ',': 0 };
  for (const cell of cells) {
    const number = cell.replace(/^[^\d.,]+/, '');
    if (!/[.,]/.test(number)) continue;
    const [point, comma] = (['.', ','] as const).map((mark) => 'value' in readNumber(number, mark));
    if (point !== comma) votes[point ? '.' : ',']++;
  }
  if (votes['.'] === votes[',']) return 'either';
  return votes['.'] > votes[','] ? '.' : ',';
}

function guessDateOrder(cells: readonly string[]): DateOrder {
  const numeric = cells.filter((cell) => /^\d{1,2}[-/. ]+\d{1,2}[-/. ]+['’]?(?:\d{4}|\d{2})$/.test(cell));
  if (numeric.length > 0 && numeric.every((cell) => /^\d{1,2}\.\s?\d{1,2}\./.test(cell))) return 'day-first';
  const misfits = (order: DateOrder) => numeric.filter((cell) => 'reason' in readDate(cell, order)).length;
  const [dayFirst, monthFirst] = [misfits('day-first'), misfits('month-first')];
  if (dayFirst === monthFirst) return 'iso';
  return dayFirst < monthFirst ? 'day-first' : 'month-first';
}
