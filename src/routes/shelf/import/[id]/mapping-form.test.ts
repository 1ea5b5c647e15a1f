import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { guessMapping } from '$lib/shelf-csv/guess-mapping.ts';
import { describe, expect, it } from 'vitest';
import { mappingFields, readMapping } from './mapping-form.ts';

const HEADER = ['Recipe', 'Dry weight (oz)', 'kJ per pouch', 'Lid colour'];
const SAMPLE = [{ row: 2, cells: ['Stew', '3.5', '4200', 'red'] }];
const guessed = guessMapping({ header: HEADER, sample: SAMPLE });

function reader(fields: Entered): FormReader {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of values) form.append(name, value);
  return new FormReader(form, 'metric');
}

describe('the form of a mapping', () => {
  it('gives back what it was filled with', () => {
    expect(readMapping(reader(mappingFields(guessed)), HEADER)).toEqual(guessed);
  });

  it('takes a column for something else, with the unit of that', () => {
    const mapping = readMapping(
      reader({ ...mappingFields(guessed), 'columns[1].field': ['steepMin'] }),
      HEADER,
    );
    expect(mapping?.columns[1]).toEqual({ header: 'Dry weight (oz)', field: 'steepMin', unit: 'min' });
  });

  it('leaves a column out', () => {
    const mapping = readMapping(reader({ ...mappingFields(guessed), 'columns[0].field': [''] }), HEADER);
    expect(mapping?.columns[0]).toEqual({ header: 'Recipe', field: null });
  });

  it('keeps values for all rows, and drops those that were emptied', () => {
    const fields = { ...mappingFields(guessed), 'constants.steepMin': ['1 h'], 'constants.tareG': [' '] };
    expect(readMapping(reader(fields), HEADER)?.constants).toEqual({
      ...guessed.constants,
      steepMin: '1 h',
      tareG: undefined,
    });
  });

  it('refuses what its selects do not offer', () => {
    const read = reader({ ...mappingFields(guessed), decimalMark: ['!'] });
    expect(readMapping(read, HEADER)).toBeUndefined();
    expect(read.problems).toMatchObject([{ field: 'decimalMark' }]);
  });
});
