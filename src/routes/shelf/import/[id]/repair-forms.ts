import type { FormReader } from '$lib/forms/read-form.ts';
import { columnQuestions, type ColumnQuestion } from '$lib/shelf-csv/column-questions.ts';
import type { CsvFile } from '$lib/shelf-csv/csv-records.ts';
import type { ColumnUnit } from '$lib/shelf-csv/fields.ts';
import type { Basis } from '$lib/shelf-csv/headings.ts';
import { Mapping } from '$lib/shelf-csv/mapping.ts';
import { cellKey, type Repairs } from '$lib/shelf-csv/repairs.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { say, text, type Text } from '$lib/texts/say.ts';

/** A question about a whole column, as a form asks it; without options it is answered by a figure. */
export type AskedQuestion = {
  readonly name: string;
  readonly column: string;
  readonly question: string;
  readonly options?: readonly { readonly value: string; readonly label: string }[];
};

const ANSWER_WORDS: Readonly<Record<string, Text>> = {
  serving: text('one serving'),
  pouch: text('a whole pouch'),
  '100g': text('100 g'),
  lot: text('all pouches of the row'),
  'day-first': text('day first: 31.12.2026'),
  'month-first': text('month first: 12/31/2026'),
  '.': text('a decimal point: 1.5'),
  ',': text('a decimal comma: 1,5'),
  yes: text('yes, every one'),
  no: text('no, there may be others'),
};

/** Of whole columns, each question once: dates and marks are the same in all of them. */
export function questionsOf(file: CsvFile, mapping: Mapping): AskedQuestion[] {
  const asked = new Map<string, AskedQuestion>();
  for (const question of columnQuestions(file, mapping)) {
    const name = nameOf(question, mapping);
    if (name === undefined || asked.has(name)) continue;
    asked.set(name, {
      name,
      column: question.column,
      question: question.question,
      ...(question.answers.length > 0 && {
        options: question.answers.map((value) => ({
          value,
          label: ANSWER_WORDS[value] ? say(ANSWER_WORDS[value]) : value,
        })),
      }),
    });
  }
  return [...asked.values()];
}

function nameOf({ about, column, field }: ColumnQuestion, mapping: Mapping): string | undefined {
  const index = mapping.columns.findIndex((known) => known.header === column && known.field === field);
  switch (about) {
    case 'basis':
      return `per.${index}`;
    case 'unit':
      return `unit.${index}`;
    case 'date order':
      return 'dateOrder';
    case 'decimal mark':
      return 'decimalMark';
    case 'year':
      return 'year';
    case 'other allergens':
      return 'allergensComplete';
    case 'servings':
      return 'constants.servingsPerPouch';
    case 'count':
      return 'constants.pouches';
    case 'weight':
      return undefined;
  }
}

/** @returns the mapping with what was answered; `undefined` where `read.problems` says what cannot be taken */
export function readAnswers(read: FormReader, mapping: Mapping): Mapping | undefined {
  const columns = mapping.columns.map((column, index) => {
    const per = read.text(`per.${index}`) as Basis | undefined;
    const unit = read.text(`unit.${index}`) as ColumnUnit | undefined;
    if (per === undefined && unit === undefined) return column;
    const { open: _, ...settled } = column;
    // Servings of one pouch are what is read where nothing else is said.
    const isOfPouch = column.field === 'servingsPerPouch' && per === 'pouch';
    return { ...settled, ...(per && !isOfPouch && { per }), ...(unit && { unit }) };
  });
  const year = read.text('year');
  const parsed = Mapping.safeParse(
    {
      ...mapping,
      columns,
      decimalMark: read.text('decimalMark') ?? mapping.decimalMark,
      dateOrder: read.text('dateOrder') ?? mapping.dateOrder,
      ...(year !== undefined && { year: Number(year) }),
      ...(read.text('allergensComplete') === 'yes' && { allergensComplete: true }),
      constants: {
        ...mapping.constants,
        ...constant(read, 'servingsPerPouch'),
        ...constant(read, 'pouches'),
      },
    },
    { reportInput: true },
  );
  if (!parsed.success) read.add(problemsOf(parsed.error));
  return parsed.data;
}

function constant(read: FormReader, field: 'servingsPerPouch' | 'pouches'): Mapping['constants'] {
  const value = read.text(`constants.${field}`);
  return value === undefined ? {} : { [field]: value };
}

/** Reads `cell.ROW.COLUMN` with what was there before in `was.ROW.COLUMN`, `everywhere.ROW.COLUMN`, and `leaveOut` with a row. */
export function readRepairs(form: FormData): Repairs {
  const cells: Repairs['cells'] = {};
  const everywhere: Repairs['everywhere'] = [];
  for (const [name, value] of form) {
    const [, row, column] = /^cell\.(\d+)\.(\d+)$/.exec(name) ?? [];
    if (row === undefined || column === undefined || typeof value !== 'string') continue;
    const was = form.get(`was.${row}.${column}`);
    const to = value.trim().slice(0, 2000);
    if (to === was) continue;
    if (form.has(`everywhere.${row}.${column}`) && typeof was === 'string')
      everywhere.push({ column: Number(column), from: was, to });
    else cells[cellKey(Number(row), Number(column))] = to;
  }
  const leftOut = form.getAll('leaveOut').flatMap((row) => (/^\d+$/.test(String(row)) ? [Number(row)] : []));
  return { cells, everywhere, leftOut };
}
