import { z } from 'zod';
import type { Problem } from '../planning/model/problems.ts';
import { MEAL_WORDS, WATER_WORDS } from '../planning/model/words.ts';
import { closest } from './closest.ts';
import { currencyIn } from './currency-words.ts';
import type { CsvFile } from './csv-records.ts';
import {
  EXPORT_HEADER,
  fieldEntry,
  plainWords,
  SAME_FOR_ALL,
  SHELF_FIELDS,
  type ColumnUnit,
  type FieldEntry,
  type ShelfField,
} from './fields.ts';
import { readCell, readDate, readNumber, type DateOrder, type DecimalMark } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { unitCalled } from './unit-words.ts';
import { MEAL_VOCABULARY, WATER_VOCABULARY } from './vocabulary.ts';
import { withoutReason } from './write-shelf-csv.ts';
import { say, sayList, sayWithin } from '../texts/say.ts';

const FieldName = z.enum(SHELF_FIELDS.map(({ field }) => field));
const Unit = z.enum([...new Set(SHELF_FIELDS.flatMap(({ units }) => units ?? []))]);

export const ColumnMapping = z.strictObject({
  header: z.string(),
  /** `null`: the column is passed over. */
  field: FieldName.nullable(),
  unit: Unit.optional(),
  per: z.enum(['serving', 'pouch']).optional(),
});
export type ColumnMapping = z.infer<typeof ColumnMapping>;

/** How the columns of a file become the fields of pouch lots. It is remembered for files with the same header. */
export const Mapping = z.strictObject({
  columns: z.array(ColumnMapping),
  decimalMark: z.enum(['.', ',', 'either']),
  dateOrder: z.enum(['iso', 'day-first', 'month-first']),
  /** What holds where a field has no column or its cell is empty, as text that is read like a cell. */
  constants: z.partialRecord(FieldName, z.string().max(200)),
});
export type Mapping = z.infer<typeof Mapping>;

/** @returns what files with the same columns in the same order have in common. */
export function headerSignature(header: readonly string[]): string {
  return withoutReason(header).map(plainWords).join('|');
}

/** @returns whether this is the header of an exported file, which can be read without asking. */
export function isExportHeader(header: readonly string[]): boolean {
  return startsWith(header, EXPORT_HEADER);
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

/** @returns the most likely mapping of a file, by its headings and its first rows. What they leave open stays open. */
export function guessMapping({ header, sample }: Pick<CsvFile, 'header' | 'sample'>): Mapping {
  const columns = guessColumns(header);
  if (isExportHeader(header)) return { columns, decimalMark: '.', dateOrder: 'iso', constants: {} };

  const cellsOf = (wanted: (entry: FieldEntry) => boolean) =>
    sample.flatMap(({ cells }) =>
      columns.flatMap(({ field }, index) =>
        field && wanted(fieldEntry(field)) && cells[index]?.trim() ? [cells[index].trim()] : [],
      ),
    );
  const mapped = new Set(columns.map(({ field }) => field));
  return {
    columns,
    decimalMark: guessDecimalMark(cellsOf(({ kind }) => kind === 'number' || kind === 'cost')),
    dateOrder: guessDateOrder(cellsOf(({ kind }) => kind === 'date')),
    constants: Object.fromEntries(
      SAME_FOR_ALL.flatMap(({ field, sameForAll }) =>
        sameForAll && !mapped.has(field) ? [[field, sameForAll]] : [],
      ),
    ),
  };
}

/** @returns what has to be settled before the file can be read: `field` is `columns[3].field`, `constants.steepMin` or the field itself. */
export function mappingProblems(mapping: Mapping): Problem[] {
  const problems: Problem[] = [];
  const columnOf = new Map<ShelfField, string>();
  mapping.columns.forEach(({ field, header }, index) => {
    if (!field) return;
    const earlier = columnOf.get(field);
    if (earlier !== undefined)
      problems.push({
        field: `columns[${index}].field`,
        message: say('"{header}" and "{earlier}" cannot both be {field}; choose one of them', {
          header,
          earlier,
          field: sayWithin(fieldEntry(field).label),
        }),
      });
    else columnOf.set(field, header);
  });
  for (const entry of SHELF_FIELDS) {
    const constant = mapping.constants[entry.field]?.trim();
    if (constant) {
      if (entry.sameForAll === undefined)
        problems.push({
          field: `constants.${entry.field}`,
          message: say('{field} cannot be the same for all rows; give it a column', {
            field: say(entry.label),
          }),
        });
      const read = readCell(entry, constant, { ...mapping, unit: undefined, currency: 'XXX' });
      if ('reason' in read) problems.push({ field: `constants.${entry.field}`, message: read.reason });
    } else if (entry.required && !columnOf.has(entry.field)) {
      problems.push(
        entry.sameForAll === undefined
          ? {
              field: entry.field,
              message: say('no column holds the {field}; choose the one that does', {
                field: sayWithin(entry.label),
              }),
            }
          : {
              field: `constants.${entry.field}`,
              message: say(
                'no column holds {field}; choose the one that does, or give one value for all rows',
                { field: sayWithin(entry.label) },
              ),
            },
      );
    }
  }
  return problems;
}

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

type Heading = {
  readonly words: string;
  readonly unit?: ColumnUnit | undefined;
  readonly per?: 'serving' | 'pouch' | undefined;
};

const PER = [
  { per: 'serving', at: /(?:^| )(?:(?:per|each|a|je|pro|par) )?(?:serving|portion|person|personne)$/ },
  {
    per: 'pouch',
    at: /(?:^| )(?:(?:per|each|a|je|pro|par) )?(?:pouch|bag|packet|package|pack|sachet|beutel|tute)$/,
  },
] as const;
const ALL_UNITS = Unit.options;

/** Takes the currency off a heading, and "per pouch" and the unit off its end: "energy kJ per pouch" is energy, kJ, pouch. */
export function readHeading(heading: string): Heading {
  let words = plainWords(heading.replace(currencyIn(heading) ?? '', ''));
  let unit: ColumnUnit | undefined;
  let per: Heading['per'];
  for (;;) {
    const found = PER.find(({ at }) => at.test(words));
    const last = /(?:^| )(fl oz|fluid ounces?|\S+)$/.exec(words);
    const lastUnit = last ? unitCalled(last[1]!, ALL_UNITS) : undefined;
    if (found && !per) {
      per = found.per;
      words = words.replace(found.at, '');
    } else if (lastUnit && !unit) {
      unit = lastUnit;
      words = words.slice(0, last!.index).replace(/ in$/, '');
    } else return { words, unit, per };
  }
}

const NAMES = new Map<string, FieldEntry>();
for (const entry of SHELF_FIELDS)
  for (const name of [entry.heading, ...entry.alsoCalled]) NAMES.set(plainWords(name), entry);

/** A heading that is nothing but a unit of energy or time says what it measures all the same. */
const NAMED_BY_UNIT: Partial<Record<ColumnUnit, ShelfField>> = {
  kcal: 'energyKcal',
  kJ: 'energyKcal',
  min: 'steepMin',
};

function guessColumn(header: string, sure: boolean): ColumnMapping {
  const whole = NAMES.get(plainWords(header));
  const { words, unit, per } = readHeading(header);
  const alone = words === '' && unit ? NAMED_BY_UNIT[unit] : undefined;
  const near = sure || words.length < 5 ? undefined : closest(words, NAMES.keys(), 1);
  const entry =
    whole ?? NAMES.get(words) ?? (alone && fieldEntry(alone)) ?? (near ? NAMES.get(near) : undefined);
  if (!entry) return { header, field: null };
  const own = unit && entry.units ? unitCalled(plainWords(unit), entry.units) : undefined;
  return {
    header,
    field: entry.field,
    ...(entry.units && { unit: own ?? entry.units[0] }),
    ...(entry.perServing && { per: per ?? 'serving' }),
  };
}

/** Each field goes to one column: first by the headings that are known, then by those that are a letter off. */
function guessColumns(header: readonly string[]): ColumnMapping[] {
  const columns: ColumnMapping[] = header.map((heading) => ({ header: heading, field: null }));
  const taken = new Set<ShelfField>();
  for (const sure of [true, false])
    header.forEach((heading, index) => {
      if (columns[index]!.field) return;
      const guess = guessColumn(heading, sure);
      if (!guess.field || taken.has(guess.field)) return;
      taken.add(guess.field);
      columns[index] = guess;
    });
  return columns;
}

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
  const numeric = cells.filter((cell) => /^\d{1,2}[-/. ]+\d{1,2}[-/. ]+(?:\d{2}|\d{4})\b/.test(cell));
  const misfits = (order: DateOrder) => numeric.filter((cell) => 'reason' in readDate(cell, order)).length;
  const [dayFirst, monthFirst] = [misfits('day-first'), misfits('month-first')];
  if (dayFirst === monthFirst) return 'iso';
  return dayFirst < monthFirst ? 'day-first' : 'month-first';
}
