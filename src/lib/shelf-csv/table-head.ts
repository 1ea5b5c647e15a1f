import { HEAD_ROWS, type CsvRecord, type TableHead } from './csv-records.ts';
import { plainWords } from './fields.ts';
import { headingMeanings, headingParts } from './headings.ts';
import { readDate, readNumber } from './read-cell.ts';

/** A row of headings has this many cells that name something, at least. */
const LEAST_NAMED = 2;

const filled = ({ cells }: CsvRecord): number => cells.filter((cell) => cell.trim() !== '').length;

/** @returns whether a cell is a figure or a date, as no heading is; a year alone can be part of a title. */
export function isValue(cell: string): boolean {
  const text = cell.trim();
  if (text === '') return false;
  const number = readNumber(text.replace(/^(?:~|≈|ca\.?\s*)/i, ''), 'either');
  if (
    'value' in number &&
    plainWords(number.rest).split(' ').length <= 1 &&
    plainWords(number.rest).length <= 8
  )
    return true;
  return /\d/.test(text) && 'value' in readDate(text, 'day-first');
}

const namesIn = ({ cells }: CsvRecord): number =>
  cells.filter(
    (cell) =>
      cell.trim() !== '' && cell.length < 60 && !isValue(cell) && headingMeanings(cell)[0] !== undefined,
  ).length;

/**
 * Finds the headings of a table: the row, among the first, whose cells name the most columns, together with a line of groups above it
 * ("per serving" over energy and fat) and a line of units below it. Where no row names anything, it is the first with two cells; where
 * that one holds figures, the table has no headings.
 */
export function findHead(records: readonly CsvRecord[]): TableHead {
  const first = records.slice(0, HEAD_ROWS);
  let best: CsvRecord | undefined;
  let most = 0;
  for (const record of first) {
    const values = record.cells.filter(isValue).length;
    const score = namesIn(record) - 2 * values;
    if (score > most && score >= LEAST_NAMED) [best, most] = [record, score];
  }
  if (!best) {
    best = first.find((record) => filled(record) >= 2) ?? first[0];
    if (!best) return { header: [], lastRow: 0, titleRows: [] };
    if (best.cells.filter(isValue).length > 0 && filled(best) >= 2)
      return {
        header: best.cells.map(() => ''),
        lastRow: 0,
        titleRows: first.filter(({ row }) => row < best!.row).map(({ row }) => row),
      };
  }
  const at = first.indexOf(best);
  const above = first[at - 1];
  const below = first[at + 1];
  let header = best.cells.map((cell) => cell.trim());
  let lastRow = best.row;
  let firstRow = best.row;
  if (below && below.row === best.row + 1 && isSecondLine(below, header)) {
    header = joined(header, below.cells, false);
    lastRow = below.row;
  }
  if (above && above.row === best.row - 1 && isGroupLine(above)) {
    header = joined(above.cells, header, true);
    firstRow = above.row;
  }
  return {
    header: header.map((heading) => heading.replace(/\s+/g, ' ').trim()),
    lastRow,
    titleRows: first.filter(({ row }) => row < firstRow).map(({ row }) => row),
  };
}

/** Words of units and groups under headings: nothing where the name of a dish would be. */
function isSecondLine(record: CsvRecord, header: readonly string[]): boolean {
  if (filled(record) === 0 || record.cells.some(isValue)) return false;
  const nameColumn = header.findIndex((heading) => headingMeanings(heading)[0]?.field === 'recipe');
  const cells = record.cells.map((cell) => cell.trim());
  if (nameColumn >= 0 && (cells[nameColumn] ?? '') !== '') return false;
  return cells.every((cell, index) => {
    if (cell === '') return true;
    if (cell.length > 40) return false;
    const { words, unit, per } = headingParts(cell);
    return (
      unit !== undefined ||
      per !== undefined ||
      headingMeanings(cell).length > 0 ||
      (words === '' && index > 0)
    );
  });
}

/** Groups stand over several columns, so that there are fewer of them, and a title stands alone at the left. */
function isGroupLine(record: CsvRecord): boolean {
  const cells = record.cells.map((cell) => cell.trim());
  if (cells.some(isValue) || filled(record) === 0) return false;
  if (filled(record) === 1 && cells[0] !== '') return false;
  return cells.every((cell) => cell.length < 40);
}

/**
 * Joins two lines of headings. A group reaches to the right until the next one.
 *
 * @param spreads the first line holds groups
 */
function joined(upper: readonly string[], lower: readonly string[], spreads: boolean): string[] {
  let group = '';
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, index) => {
    const over = (upper[index] ?? '').trim();
    const under = (lower[index] ?? '').trim();
    if (over !== '') group = over;
    if (!spreads)
      return under === '' || under === over
        ? over
        : over === ''
          ? grouped(group, under)
          : `${over} ${under}`.trim();
    return under === '' ? over : grouped(group, under);
  });
}

/** A heading under a group: alone where it needs none, as "Notes" beside the columns of "per serving". */
function grouped(group: string, heading: string): string {
  if (group === '' || group === heading) return heading;
  const alone = headingMeanings(heading)[0];
  const GROUPED =
    /^(?:dryWeightG|grossWeightG|energyKcal|proteinG|fatG|carbohydrateG|fibreG|sugarsG|sodiumMg|saltG|waterMl|costMinor|oneAllergen|tareG)$/;
  if (alone && !GROUPED.test(alone.field)) {
    // "Weight" over "serving" and "bag": the group says what is measured.
    const together = headingMeanings(`${group} ${heading}`)[0];
    return together &&
      GROUPED.test(together.field) &&
      headingParts(heading).words.split(' ').length === 1 &&
      alone.sure < 1.01 &&
      isBasisWord(heading)
      ? `${group} ${heading}`
      : heading;
  }
  const { per, unit } = headingParts(group);
  const saysWhat =
    (headingMeanings(group)[0]?.sure ?? 0) >= 0.95 ||
    /nutri|nährw|weight|gewicht|allerg|enthält|contains/i.test(group);
  const over = headingMeanings(group)[0];
  const isNutrition = /nutri|nährw/i.test(group);
  // A group of one figure, or of nutrients, ends where something else begins.
  if (
    alone &&
    alone.sure >= 0.95 &&
    ((over && over.sure >= 0.9 && !headingMeanings(group).some(({ field }) => field === alone.field)) ||
      (isNutrition && !NUTRIENT.test(alone.field)))
  )
    return heading;
  // Else it is a title that reaches over the table.
  return per || unit || saysWhat ? `${group} ${heading}` : heading;
}

const NUTRIENT = /^(?:energyKcal|proteinG|fatG|carbohydrateG|fibreG|sugarsG|sodiumMg|saltG)$/;

const isBasisWord = (heading: string): boolean =>
  /^(?:serving|servings|portion|bag|bags|pouch|beutel|pack|g|kg|oz|net|gross|dry|total|each|per .*|pro .*|je .*)$/i.test(
    heading.trim(),
  );
