import type { CsvFile } from './csv-records.ts';
import { fieldEntry, type ShelfField } from './fields.ts';
import type { Mapping } from './mapping.ts';
import { readCell } from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { EU_ALLERGENS } from './read-row.ts';
import { say, sayWithin } from '../texts/say.ts';

/** Something that concerns a whole column and that neither its heading nor its cells tell. */
export type ColumnQuestion = {
  /** Its heading; '' where there is no column for it. */
  readonly column: string;
  readonly field: ShelfField;
  readonly about:
    | 'basis'
    | 'unit'
    | 'date order'
    | 'decimal mark'
    | 'year'
    | 'other allergens'
    | 'servings'
    | 'count'
    | 'weight';
  readonly question: string;
  /** What it may be, as a mapping says it. */
  readonly answers: readonly string[];
};

/** @returns what a person has to be asked about whole columns, each once. */
export function columnQuestions(
  { header, sample }: Pick<CsvFile, 'header' | 'sample'>,
  mapping: Mapping,
): ColumnQuestion[] {
  const questions: ColumnQuestion[] = [];
  const cellsAt = (index: number): string[] =>
    sample.map(({ cells }) => restore((cells[index] ?? '').trim())).filter((cell) => cell !== '');
  const has = (field: ShelfField): boolean => mapping.columns.some((column) => column.field === field);
  const servingsAt = mapping.columns.findIndex(({ field }) => field === 'servingsPerPouch');
  const isSingle = servingsAt >= 0 && cellsAt(servingsAt).every((cell) => /^1(?:[.,]0+)?\b/.test(cell));

  mapping.columns.forEach(({ field, unit, per, open }, index) => {
    if (!field) return;
    const entry = fieldEntry(field);
    const column = header[index] ?? '';
    const cells = cellsAt(index);
    if (cells.length === 0) return;
    const what = sayWithin(entry.label);
    const readings = cells.map((cell) => readCell(entry, cell, { ...mapping, unit, currency: 'XXX' }));
    if (entry.units && unit === undefined && cells.some((cell) => !/\p{L}{1,}/u.test(cell)))
      questions.push({
        column,
        field,
        about: 'unit',
        question: say('In which unit is {what}?', { what }),
        answers: entry.units,
      });
    if (entry.perServing && per === undefined && !isSingle)
      questions.push({
        column,
        field,
        about: 'basis',
        question: say('Is {what} for one serving or for a whole pouch?', { what }),
        answers: ['serving', 'pouch', field === 'dryWeightG' || field === 'grossWeightG' ? 'lot' : '100g'],
      });
    if (open)
      questions.push({
        column,
        field,
        about: 'basis',
        question: say('Are these the servings of one pouch or of all pouches of the row?'),
        answers: ['pouch', 'lot'],
      });
    if (entry.kind === 'date') {
      if (readings.some((reading) => 'reason' in reading && reading.isYearMissing))
        questions.push({
          column,
          field,
          about: 'year',
          question: say('Which year do the dates without one mean?'),
          answers: [],
        });
      if (mapping.dateOrder === 'iso' && cells.some((cell) => isTwoDates(cell, mapping)))
        questions.push({
          column,
          field,
          about: 'date order',
          question: say('Which comes first in its dates, the day or the month?'),
          answers: ['day-first', 'month-first'],
        });
    }
    if (entry.kind === 'number' && mapping.decimalMark === 'either') {
      const isAmbiguous = (cell: string): boolean =>
        /\d[.,]\d{3}(?!\d)/.test(cell) &&
        'reason' in readCell(entry, cell, { ...mapping, unit, currency: 'XXX' });
      if (cells.some(isAmbiguous))
        questions.push({
          column,
          field,
          about: 'decimal mark',
          question: say('Is the mark in its numbers a decimal mark, or does it group thousands?'),
          answers: ['.', ','],
        });
    }
  });
  const asked = new Set(
    mapping.columns.flatMap(({ field, of }) => (field === 'oneAllergen' ? (of ?? '').split(' ') : [])),
  );
  if (
    has('oneAllergen') &&
    !has('allergens') &&
    !mapping.allergensComplete &&
    !EU_ALLERGENS.every((code) => asked.has(code))
  )
    questions.push({
      column: mapping.columns
        .filter(({ field }) => field === 'oneAllergen')
        .map((column) => column.header)
        .join(', '),
      field: 'oneAllergen',
      about: 'other allergens',
      question: say(
        'Do these columns name every allergen that is in the food? Until then the others count as not declared.',
      ),
      answers: ['yes', 'no'],
    });
  if (!has('servingsPerPouch') && !mapping.constants.servingsPerPouch)
    questions.push({
      column: '',
      field: 'servingsPerPouch',
      about: 'servings',
      question: say('How many servings are in one pouch? Small pouches were taken for one.'),
      answers: [],
    });
  if (!has('dryWeightG') && !has('grossWeightG'))
    questions.push({
      column: '',
      field: 'dryWeightG',
      about: 'weight',
      question: say('How much does the food of a serving or of a pouch weigh?'),
      answers: [],
    });
  if (!has('pouches') && !mapping.constants.pouches)
    questions.push({
      column: '',
      field: 'pouches',
      about: 'count',
      question: say('How many pouches does each row describe?'),
      answers: [],
    });
  return questions;
}

function isTwoDates(cell: string, mapping: Mapping): boolean {
  const entry = fieldEntry('sealedOn');
  const read = (dateOrder: Mapping['dateOrder']) =>
    readCell(entry, cell, { ...mapping, dateOrder, unit: undefined, currency: 'XXX' });
  return 'reason' in read('iso') && 'value' in read('day-first') && 'value' in read('month-first');
}
