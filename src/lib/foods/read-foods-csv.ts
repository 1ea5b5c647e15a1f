import { compositionDoubts } from '../planning/model/composition-doubts.ts';
import { Food } from '../planning/model/composition.ts';
import { problemsOf } from '../presentation/problems.ts';
import { openCsv, type CsvRecord } from '../shelf-csv/csv-records.ts';
import type { ColumnUnit } from '../shelf-csv/fields.ts';
import { guessDecimalMark } from '../shelf-csv/guess-mapping.ts';
import { readCell, type DecimalMark, type Reading } from '../shelf-csv/read-cell.ts';
import { restore } from '../shelf-csv/spreadsheet-safe.ts';
import { UnreadableFile } from '../shelf-csv/text-encoding.ts';
import { saysNothing } from '../shelf-csv/vocabulary.ts';
import {
  columnOf,
  COOKING_VOCABULARY,
  FOOD_COLUMNS,
  WRITTEN_COLUMNS,
  type FoodColumn,
  type FoodField,
} from './food-columns.ts';
import { compositionDoubtText } from '../presentation/composition-words.ts';
import { say, sayNumber, sayWithin, type Text } from '../texts/say.ts';

/** `row` counts as a spreadsheet does: the first row of the file is 1. */
export type RowRemark = { readonly row: number; readonly reason: string };

export type FoodsCsv = {
  readonly foods: Food[];
  readonly refused: RowRemark[];
  /** What is odd about rows that were taken. */
  readonly warnings: RowRemark[];
  /** Headings of columns that were not read. */
  readonly passedOver: string[];
};

type Column = {
  readonly index: number;
  readonly header: string;
  readonly unit: ColumnUnit | undefined;
} & Pick<FoodColumn, 'field' | 'kind' | 'units'>;
type Values = Partial<Record<FoodField, unknown>>;

/** What a row is said to come from that names no source. */
const NO_SOURCE = 'own table, source not stated';
/** Energy in kcal and in kJ on one label differ by their own rounded factors (Regulation (EU) 1169/2011, Annex XIV: 17 kJ or 4 kcal, 37 kJ or 9 kcal), by less than this. */
const KCAL_BESIDE_KJ = 0.05;
/** Energy that rounds to the same whole kcal or so, kcal. */
const KCAL_ROUNDING = 2;
/** Far more than any table of foods has. */
const MOST_ROWS = 20_000;
const NEEDED: readonly FoodField[] = ['name', 'proteinG', 'fatG'];

/**
 * Reads a table of foods, per 100 g: name, water, protein, fat, carbohydrate, fibre, alcohol, energy in kcal or kJ, allergens, diets, how to
 * cook it, g per ml, g per piece, source. Encodings, delimiters, decimal marks and words are those of the shelf's CSV.
 *
 * @param bytes the file
 * @param decimalMark where the file does not show which it uses
 * @throws UnreadableFile when it is no CSV file, or has no column for name, protein, fat or carbohydrate
 */
export async function readFoodsCsv(bytes: Uint8Array, decimalMark?: DecimalMark): Promise<FoodsCsv> {
  const file = await openCsv(async function* () {
    yield bytes;
  });
  const columns = columnsOf(file.header);
  refuseWithoutColumns(columns, file.header);
  const mark = decimalMark ?? markOf(file.header, columns, file.sample);

  const foods: Food[] = [];
  const refused: RowRemark[] = [];
  const warnings: RowRemark[] = [];
  const rowOfName = new Map<string, number>();
  let rows = 0;
  for await (const batch of file.records())
    for (const record of batch) {
      const { row } = record;
      if (++rows > MOST_ROWS)
        throw new UnreadableFile(
          say(
            'The table has more than {most, number} rows, the most that is taken at once. Import it in parts.',
            {
              most: MOST_ROWS,
            },
          ),
        );
      const draft = readRow(record, file.header.length, columns, mark, file.form.damaged);
      const food = draft.problems.length === 0 ? foodOf(draft) : undefined;
      const earlier = food && rowOfName.get(food.name);
      if (earlier !== undefined)
        draft.problems.push(
          say('row {row} already has the name "{name}"; give each food its own', {
            row: String(earlier),
            name: food!.name,
          }),
        );
      if (!food || draft.problems.length > 0) {
        refused.push({ row, reason: draft.problems.join('; ') });
        continue;
      }
      rowOfName.set(food.name, row);
      foods.push(food);
      const doubts = food.number === undefined ? compositionDoubts(food.composition) : [];
      for (const reason of [...draft.warnings, ...doubts.map(compositionDoubtText)])
        warnings.push({ row, reason });
    }
  const read = new Set(columns.map(({ index }) => index));
  const passedOver = file.header.filter((heading, index) => heading !== '' && !read.has(index));
  return { foods, refused, warnings, passedOver };
}

/** The first column of each sort is read. */
function columnsOf(header: readonly string[]): Column[] {
  const columns: Column[] = [];
  header.forEach((heading, index) => {
    const known = columnOf(restore(heading));
    if (known && !columns.some(({ field }) => field === known.column.field))
      columns.push({ ...known.column, index, header: heading, unit: known.unit });
  });
  return columns;
}

function refuseWithoutColumns(columns: readonly Column[], header: readonly string[]): void {
  const has = (field: FoodField) => columns.some((column) => column.field === field);
  const missing = NEEDED.filter((field) => !has(field)).map(labelOf);
  if (!has('carbohydrateG') && !has('totalCarbohydrateG')) missing.push(labelOf('carbohydrateG'));
  if (missing.length > 0)
    throw new UnreadableFile(
      say(
        'This table has no column for {missing}. Its columns are: {columns}. Name them {headings}; figures are for 100 g.',
        {
          missing: missing.map(sayWithin).join(', '),
          columns: header.join(', '),
          headings: WRITTEN_COLUMNS.map(({ heading }) => heading).join(', '),
        },
      ),
    );
}

const labelOf = (field: FoodField): Text => FOOD_COLUMNS.find((column) => column.field === field)!.label;

/** In a column of grams in 100 g no figure is grouped, so a mark there is a decimal mark, even in 1,234. */
function markOf(
  header: readonly string[],
  columns: readonly Column[],
  sample: readonly CsvRecord[],
): DecimalMark {
  const written = WRITTEN_COLUMNS.map(({ heading }) => heading);
  if (header.length === written.length && header.every((heading, index) => heading === written[index]))
    return '.';
  const cellsOf = (wanted: (column: Column) => boolean) =>
    columns.filter(wanted).flatMap(({ index }) => sample.map(({ cells }) => (cells[index] ?? '').trim()));
  const guessed = guessDecimalMark(cellsOf(({ kind }) => kind === 'number'));
  if (guessed !== 'either') return guessed;
  const grams = cellsOf(({ units }) => units?.[0] === 'g').join(' ');
  if (grams.includes('.') === grams.includes(',')) return 'either';
  return grams.includes('.') ? '.' : ',';
}

type Draft = { readonly values: Values; readonly problems: string[]; readonly warnings: string[] };

function readRow(
  { cells, fault }: CsvRecord,
  width: number,
  columns: readonly Column[],
  decimalMark: DecimalMark,
  damaged: boolean,
): Draft {
  const draft: Draft = { values: {}, problems: [], warnings: [] };
  if (fault) draft.problems.push(fault);
  if (cells.slice(width).some((cell) => cell.trim() !== ''))
    draft.problems.push(
      say(
        'this row has {cells} cells but the header has {width}. Put quotation marks around any text that contains the delimiter',
        { cells: String(cells.length), width: String(width) },
      ),
    );
  if (draft.problems.length > 0) return draft;
  for (const column of columns) {
    const text = restore((cells[column.index] ?? '').trim());
    if (text === '') continue;
    const reading: Reading<unknown> =
      damaged && text.includes('\uFFFD')
        ? { reason: say('contains a character that could not be read; save the file as UTF-8') }
        : readFoodCell(column, text, decimalMark);
    if ('reason' in reading) draft.problems.push(`${column.header}: ${reading.reason}`);
    else {
      if (reading.doubt) draft.warnings.push(`${column.header}: ${reading.doubt}`);
      if (reading.value !== undefined) draft.values[column.field] = reading.value;
    }
  }
  return draft;
}

const TRACES = /^(?:<.*|tr\.?|traces?|spuren|in spuren)$/i;

function readFoodCell(column: Column, text: string, decimalMark: DecimalMark): Reading<unknown> {
  const { kind, unit, units } = column;
  if (kind === 'cooking class') {
    const meant = COOKING_VOCABULARY.meaning(text);
    return meant ? { value: meant[0] } : { reason: COOKING_VOCABULARY.unknown(text) };
  }
  if (kind === 'number') {
    if (saysNothing(text)) return { value: undefined };
    if (TRACES.test(text)) return { value: 0, doubt: say('"{text}" was taken as 0', { text }) };
  }
  const read = readCell({ kind, ...(units && { units }) }, text, {
    unit,
    decimalMark,
    // Neither dates nor money stand in a table of foods.
    dateOrder: 'iso',
    currency: 'XXX',
  });
  // A food whose list is not all that may be in it would be taken for free of the rest.
  return 'value' in read && read.open ? { reason: read.doubt ?? '' } : read;
}

/** @returns the food of a row whose cells could be read; `undefined` where it is none, with the reasons put to its problems */
function foodOf({ values, problems, warnings }: Draft): Food | undefined {
  const { waterG, proteinG, fatG, fibreG, alcoholG, name, source = NO_SOURCE } = values;
  const { allergens, diets, cookingClass, gPerMl, gPerPiece, number } = values;
  const { sugarsG, sodiumMg, potassiumMg } = values;
  const composition = stated({
    waterG,
    proteinG,
    fatG,
    carbohydrateG: availableCarbohydrate(values, problems, warnings),
    fibreG,
    alcoholG,
    sugarsG,
    sodiumMg,
    potassiumMg,
    energyKcal: oneEnergy(values, warnings),
  });
  const parsed = Food.safeParse(
    stated({ name, composition, source, number, allergens, diets, cookingClass, gPerMl, gPerPiece }),
    { reportInput: true },
  );
  for (const { field: path, message } of parsed.success ? [] : problemsOf(parsed.error)) {
    const field = path.replace('composition.', '') as FoodField;
    const label = say(labelOf(field));
    if (field === 'waterG' && waterG === undefined) problems.push(withoutWater(composition));
    else if (field in values || field in composition) problems.push(`${label}: ${message}`);
    else problems.push(`${label}: ${say('is empty')}`);
  }
  return parsed.success && problems.length === 0 ? parsed.data : undefined;
}

const stated = (values: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

/** What a table calls total carbohydrate or carbohydrate by difference holds the fibre. */
function availableCarbohydrate(values: Values, problems: string[], warnings: string[]): unknown {
  const { carbohydrateG, totalCarbohydrateG: total, fibreG } = values;
  if (carbohydrateG !== undefined || typeof total !== 'number') return carbohydrateG;
  if (typeof fibreG !== 'number') {
    warnings.push(say('total carbohydrate was taken as free of fibre, since no fibre is stated'));
    return total;
  }
  if (fibreG > total)
    problems.push(
      say('{fibre} g of fibre is more than the total carbohydrate of {total} g; check both', {
        total: String(total),
        fibre: String(fibreG),
      }),
    );
  return Number((total - fibreG).toPrecision(12));
}

function oneEnergy({ energyKcal, energyOfKj }: Values, warnings: string[]): unknown {
  if (typeof energyKcal !== 'number' || typeof energyOfKj !== 'number') return energyKcal ?? energyOfKj;
  const apart = Math.abs(energyKcal - energyOfKj);
  if (apart > KCAL_ROUNDING && apart > KCAL_BESIDE_KJ * Math.max(energyKcal, energyOfKj))
    warnings.push(
      say('its energy in kJ is {ofKj} kcal, but it states {stated} kcal; the kcal were taken', {
        ofKj: energyOfKj.toFixed(0),
        stated: String(energyKcal),
      }),
    );
  return energyKcal;
}

function withoutWater(composition: Readonly<Record<string, unknown>>): string {
  const partsG = (['proteinG', 'fatG', 'carbohydrateG', 'fibreG', 'alcoholG'] as const).reduce(
    (sum, part) => sum + (Number(composition[part] ?? 0) || 0),
    0,
  );
  return say(
    'Water: missing. Without it the dry weight cannot be worked out. 100 g minus the other values leaves {rest} g, including ash (salts)',
    { rest: sayNumber(100 - partsG, { minimumFractionDigits: 1, maximumFractionDigits: 1 }) },
  );
}
