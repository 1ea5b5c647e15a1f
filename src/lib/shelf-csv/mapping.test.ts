import { describe, expect, it } from 'vitest';
import { german } from '../texts/de.ts';
import { useCatalog, useLanguage } from '../texts/say.ts';
import { EXPORT_HEADER, SHELF_FIELDS } from './fields.ts';
import {
  guessMapping,
  headerSignature,
  isExportHeader,
  mappingProblems,
  rememberedMapping,
  sameForAllRows,
  type Mapping,
} from './mapping.ts';

const guess = (header: readonly string[], ...rows: string[][]): Mapping =>
  guessMapping({ header, sample: rows.map((cells, index) => ({ row: index + 2, cells })) });
const column = (heading: string) => {
  const { header: _, ...rest } = guess([heading]).columns[0]!;
  return rest;
};

describe('guessMapping', () => {
  it('knows every heading of an export, in order and without a question', () => {
    const mapping = guess(EXPORT_HEADER);
    expect(mapping.columns.map(({ field }) => field)).toEqual(SHELF_FIELDS.map(({ field }) => field));
    expect(mapping).toMatchObject({ decimalMark: '.', dateOrder: 'iso', constants: {} });
    expect(mappingProblems(mapping)).toEqual([]);
  });

  it.each([
    ['Dry weight (oz)', { field: 'dryWeightG', unit: 'oz', per: 'serving' }],
    ['energy kJ per pouch', { field: 'energyKcal', unit: 'kJ', per: 'pouch' }],
    ['Energy per pouch (kJ)', { field: 'energyKcal', unit: 'kJ', per: 'pouch' }],
    ['water [cups]', { field: 'waterMl', unit: 'cup', per: 'serving' }],
    ['Water to add, fl. oz. per serving', { field: 'waterMl', unit: 'fl oz', per: 'serving' }],
    ['Water (oz)', { field: 'waterMl', unit: 'fl oz', per: 'serving' }],
    ['kcal', { field: 'energyKcal', unit: 'kcal', per: 'serving' }],
    ['Calories/serving', { field: 'energyKcal', unit: 'kcal', per: 'serving' }],
    ['Soak time (hours)', { field: 'steepMin', unit: 'h' }],
    ['Servings per pouch', { field: 'servingsPerPouch' }],
    ['Servings', { field: 'servingsPerPouch' }],
    ['Number of pouches', { field: 'pouches' }],
    ['Best-before date', { field: 'bestBefore' }],
    ['MHD', { field: 'bestBefore' }],
    ['Trockengewicht in g pro Beutel', { field: 'dryWeightG', unit: 'g', per: 'pouch' }],
    ['Eiweiß', { field: 'proteinG', unit: 'g', per: 'serving' }],
    ['Matières grasses (g)', { field: 'fatG', unit: 'g', per: 'serving' }],
    ['Pouch weight (g)', { field: 'tareG', unit: 'g' }],
    ['Recipee', { field: 'recipe' }],
    ['Price (EUR)', { field: 'costMinor', per: 'serving' }],
    ['Cost per pouch, $', { field: 'costMinor', per: 'pouch' }],
    ['colour of the lid', { field: null }],
  ])('reads the heading %j', (heading, expected) => expect(column(heading)).toEqual(expected));

  it('gives a field to one column only, the better known one', () => {
    const { columns } = guess(['Recipee', 'Recipe', 'Energy kcal', 'Energy kJ']);
    expect(columns.map(({ field }) => field)).toEqual([null, 'recipe', 'energyKcal', null]);
  });

  it('sees the decimal mark and the order of dates', () => {
    const header = ['Recipe', 'Weight', 'Sealed'];
    expect(guess(header, ['a', '1,5', '13.2.2026'])).toMatchObject({
      decimalMark: ',',
      dateOrder: 'day-first',
    });
    expect(guess(header, ['a', '1.5', '2/13/2026'], ['b', '1,200', '1/2/2026'])).toMatchObject({
      decimalMark: '.',
      dateOrder: 'month-first',
    });
    expect(guess(header, ['a', '1', '2026-02-13'])).toMatchObject({
      decimalMark: 'either',
      dateOrder: 'iso',
    });
  });

  it('does not guess where nothing shows it', () => {
    expect(guess(['Weight', 'Sealed'], ['1,200', '1/2/2026'])).toMatchObject({
      decimalMark: 'either',
      dateOrder: 'iso',
    });
  });

  it('proposes usual values for what has no column', () => {
    expect(guess(['Recipe', 'Meal']).constants).toEqual({
      servingsPerPouch: '1',
      waterKind: 'boiling',
      steepMin: '15',
      tareG: '14',
    });
  });
});

it('what is the same for all rows is said in the language around', () => {
  const mapping: Mapping = {
    ...guess(['Recipe']),
    constants: { mealKinds: 'dinner', waterKind: 'boiling', steepMin: '12', tareG: '14' },
  };
  expect(sameForAllRows(mapping)).toEqual([
    'Meals: dinner',
    'Water kind: boiling',
    'Steep time: 12 min',
    'Packaging: 14 g',
  ]);
  useCatalog('de', german);
  useLanguage(() => 'de');
  try {
    expect(sameForAllRows(mapping)).toEqual([
      'Mahlzeiten: Abendessen',
      'Art des Wassers: kochend',
      'Quellzeit: 12 min',
      'Verpackung: 14 g',
    ]);
  } finally {
    useLanguage(() => 'en');
  }
});

describe('mappingProblems', () => {
  const whole = guess(EXPORT_HEADER);

  it('asks for what no column holds', () => {
    const without = (field: string): Mapping => ({
      ...whole,
      columns: whole.columns.map((entry) => (entry.field === field ? { ...entry, field: null } : entry)),
    });
    expect(mappingProblems(without('recipe'))).toEqual([
      { field: 'recipe', message: 'no column holds the recipe; choose the one that does' },
    ]);
    expect(mappingProblems(without('waterKind'))).toMatchObject([{ field: 'constants.waterKind' }]);
    expect(mappingProblems(without('code'))).toEqual([]);
    expect(mappingProblems(without('allergens'))).toEqual([]);
    expect(mappingProblems({ ...without('waterKind'), constants: { waterKind: 'hot' } })).toEqual([]);
  });

  it('refuses one field from two columns', () => {
    const columns = whole.columns.map((entry) =>
      entry.field === 'note' ? { ...entry, field: 'recipe' as const } : entry,
    );
    expect(mappingProblems({ ...whole, columns })).toEqual([
      {
        field: `columns[${columns.length - 1}].field`,
        message: '"note" and "recipe" cannot both be recipe; choose one of them',
      },
    ]);
  });

  it('refuses a value for all rows that cannot be read, or that cannot be the same for all', () => {
    expect(
      mappingProblems({ ...whole, constants: { steepMin: 'long', code: 'A' } }).map(({ field }) => field),
    ).toEqual(['constants.code', 'constants.steepMin']);
  });
});

describe('what is remembered', () => {
  const header = ['Lot', 'Rezept', 'kcal'];
  const mapping = guess(header);

  it('fits the same header, also with the reasons of an earlier refusal', () => {
    expect(rememberedMapping(header, JSON.parse(JSON.stringify(mapping)))).toEqual(mapping);
    const mended = rememberedMapping([...header, 'reason'], mapping);
    expect(mended?.columns.map(({ field }) => field)).toEqual(['code', 'recipe', 'energyKcal', null]);
    expect(headerSignature([...header, 'reason'])).toBe(headerSignature(header));
    expect(isExportHeader([...EXPORT_HEADER, 'reason'])).toBe(true);
  });

  it('does not fit another header or another form', () => {
    expect(rememberedMapping([...header, 'note'], mapping)).toBeUndefined();
    expect(rememberedMapping(header, { columns: 'all' })).toBeUndefined();
    expect(rememberedMapping(header, undefined)).toBeUndefined();
    expect(isExportHeader(header)).toBe(false);
  });
});
