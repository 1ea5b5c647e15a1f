import type { Entered, FormReader } from '$lib/forms/read-form.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { SAME_FOR_ALL, SHELF_FIELDS } from '$lib/shelf-csv/fields.ts';
import { BASES } from '$lib/shelf-csv/headings.ts';
import { Mapping } from '$lib/shelf-csv/mapping.ts';

/** @returns what the form of a mapping is filled with. */
export function mappingFields({
  columns,
  decimalMark,
  dateOrder,
  constants,
  year,
  allergensComplete,
}: Mapping): Entered {
  const entered: Record<string, string[]> = {
    decimalMark: [decimalMark],
    dateOrder: [dateOrder],
    year: [year === undefined ? '' : String(year)],
    allergensComplete: [allergensComplete ? 'yes' : ''],
  };
  columns.forEach(({ field, unit, per, of }, index) => {
    entered[`columns[${index}].field`] = [field ?? ''];
    entered[`columns[${index}].unit`] = [unit ?? ''];
    entered[`columns[${index}].per`] = [per ?? ''];
    entered[`columns[${index}].of`] = [of ?? ''];
  });
  for (const { field } of SAME_FOR_ALL) entered[`constants.${field}`] = [constants[field] ?? ''];
  return entered;
}

/**
 * Reads the form of a mapping. A unit that does not go with the chosen field becomes the first of that field; one that was left open stays so.
 *
 * @returns the mapping, or `undefined` where `read.problems` says what has to be mended
 */
export function readMapping(read: FormReader, header: readonly string[]): Mapping | undefined {
  const columns = header.map((heading, index) => {
    const chosen = read.text(`columns[${index}].field`);
    const entry = SHELF_FIELDS.find(({ field }) => field === chosen);
    if (!entry) return { header: heading, field: null };
    const unit = read.text(`columns[${index}].unit`);
    const per = BASES.find((known) => known === read.text(`columns[${index}].per`));
    const of = read.text(`columns[${index}].of`);
    const isOfAll = entry.field === 'servingsPerPouch' && per === 'lot';
    return {
      header: heading,
      field: entry.field,
      ...(entry.units &&
        unit !== undefined && { unit: entry.units.find((known) => known === unit) ?? entry.units[0] }),
      ...(per && (entry.perServing || isOfAll) && { per }),
      ...(of && (entry.kind === 'allergen mark' || entry.kind === 'diet mark') && { of }),
    };
  });
  const constants = SAME_FOR_ALL.map(({ field }) => [field, read.text(`constants.${field}`)]).filter(
    ([, text]) => text !== undefined,
  );
  const parsed = Mapping.safeParse(
    {
      columns,
      decimalMark: read.text('decimalMark'),
      dateOrder: read.text('dateOrder'),
      constants: Object.fromEntries(constants),
      ...(read.text('year') !== undefined && { year: Number(read.text('year')) }),
      ...(read.text('allergensComplete') === 'yes' && { allergensComplete: true }),
    },
    { reportInput: true },
  );
  if (!parsed.success) read.add(problemsOf(parsed.error));
  return parsed.data;
}
