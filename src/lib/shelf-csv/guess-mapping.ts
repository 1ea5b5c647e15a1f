import type { CsvFile } from './csv-records.ts';
import { EXPORT_FIELDS, EXPORT_HEADER, fieldEntry, plainWords } from './fields.ts';
import { guessColumns } from './guess-columns.ts';
import { isExportHeader, type ColumnMapping, type Mapping } from './mapping.ts';
import { readDate, readNumber, type DateOrder, type DecimalMark } from './read-cell.ts';

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

/** A table with most headings of an export is read as an export, for one serving, whatever else is in it. */
const isLikeExport = (header: readonly string[]): boolean =>
  header.filter((heading) => heading.includes(' ') && EXPORT_HEADER.includes(heading)).length >= 5;

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
