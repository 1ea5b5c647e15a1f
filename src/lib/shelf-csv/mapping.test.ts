import { describe, expect, it } from 'vitest';
import { translationInto } from '../texts/catalogs.ts';
import { useCatalog, useLanguage } from '../texts/say.ts';
import { EARLIER_COLUMNS, EXPORT_FIELDS, EXPORT_HEADER } from './fields.ts';
import { guessMapping } from './guess-mapping.ts';
import {
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
    expect(mapping.columns.map(({ field }) => field)).toEqual(EXPORT_FIELDS.map(({ field }) => field));
    expect(mapping).toMatchObject({ decimalMark: '.', dateOrder: 'iso', constants: {} });
    expect(mappingProblems(mapping)).toEqual([]);
    expect(isExportHeader(EXPORT_HEADER.slice(0, EARLIER_COLUMNS))).toBe(true);
  });

  it.each([
    ['Dry weight (oz)', { field: 'dryWeightG', unit: 'oz', per: 'pouch' }],
    ['energy kJ per pouch', { field: 'energyKcal', unit: 'kJ', per: 'pouch' }],
    ['Energy per pouch (kJ)', { field: 'energyKcal', unit: 'kJ', per: 'pouch' }],
    ['water [cups]', { field: 'waterMl', unit: 'cup', per: 'pouch' }],
    ['Water to add, fl. oz. per serving', { field: 'waterMl', unit: 'fl oz', per: 'serving' }],
    ['Water (oz)', { field: 'waterMl', unit: 'fl oz', per: 'pouch' }],
    ['kcal', { field: 'energyKcal', unit: 'kcal' }],
    ['Calories/serving', { field: 'energyKcal', unit: 'kcal', per: 'serving' }],
    ['Soak time (hours)', { field: 'steepMin', unit: 'h' }],
    ['water kind', { field: 'waterKind' }],
    ['water type', { field: 'waterKind' }],
    ['steep min', { field: 'steepMin', unit: 'min' }],
    ['rehydration min', { field: 'steepMin', unit: 'min' }],
    ['rehydration time (min)', { field: 'steepMin', unit: 'min' }],
    ['lot code', { field: 'code' }],
    ['Servings per pouch', { field: 'servingsPerPouch' }],
    ['Servings', { field: 'servingsPerPouch' }],
    ['Number of pouches', { field: 'pouches' }],
    ['Best-before date', { field: 'bestBefore' }],
    ['Inhalt (g)', { field: 'dryWeightG', unit: 'g', per: 'pouch' }],
    ['Pouch size (g)', { field: 'dryWeightG', unit: 'g', per: 'pouch' }],
    ['# on hand', { field: 'pouches' }],
    ['Serv/bag', { field: 'servingsPerPouch' }],
    ['Rehydrate (ml)', { field: 'waterMl', unit: 'ml', per: 'pouch' }],
    ['Rehydrate', { field: 'steepMin', unit: 'min' }],
    ['Amt', { field: 'pouches' }],
    ['MHD', { field: 'bestBefore' }],
    ['Trockengewicht in g pro Beutel', { field: 'dryWeightG', unit: 'g', per: 'pouch' }],
    ['Eiweiß', { field: 'proteinG', unit: 'g' }],
    ['Matières grasses (g)', { field: 'fatG', unit: 'g' }],
    ['Pouch weight (g)', { field: 'dryWeightG', unit: 'g', per: 'pouch' }],
    ['Empty pouch weight (g)', { field: 'tareG', unit: 'g' }],
    ['Portionsgewicht in g', { field: 'dryWeightG', unit: 'g', per: 'serving' }],
    ['Gewicht mit Beutel', { field: 'grossWeightG', unit: 'g', per: 'pouch' }],
    ['Brennwert kJ/100 g', { field: 'energyKcal', unit: 'kJ', per: '100g' }],
    ['Milk?', { field: 'oneAllergen', of: 'milk' }],
    ['gluten-free', { field: null }],
    ['Fresh weight (g)', { field: null }],
    ['Water removed', { field: null }],
    ['Total weight', { field: null }],
    ['Recipee', { field: 'recipe' }],
    ['Price (EUR)', { field: 'costMinor' }],
    ['Cost per pouch, $', { field: 'costMinor', per: 'pouch' }],
    ['colour of the lid', { field: null }],
  ])('reads the heading %j', (heading, expected) => expect(column(heading)).toEqual(expected));

  it('gives a name to one column only, the better known one, and reads one figure from two', () => {
    const { columns } = guess(['Recipee', 'Recipe', 'Energy kcal', 'Energy kJ']);
    expect(columns.map(({ field }) => field)).toEqual([null, 'recipe', 'energyKcal', 'energyKcal']);
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
    expect(guess(header, ['a', '1', '2026-02-13'])).toMatchObject({ dateOrder: 'iso' });
  });

  it('does not guess the order of dates where nothing shows it', () => {
    expect(guess(['Weight', 'Sealed'], ['1,200', '1/2/2026'])).toMatchObject({ dateOrder: 'iso' });
    expect(guess(['Weight (oz)', 'Sealed'], ['4.1', '1/2/2026'])).toMatchObject({ dateOrder: 'month-first' });
    expect(guess(['Gewicht', 'Versiegelt'], ['1,2', '1/2/2026'])).toMatchObject({ dateOrder: 'day-first' });
  });

  const rows = (servings: string, ...weights: string[]) =>
    weights.map((weight, row) => [`Dish ${row}`, weight, servings]);
  it('tells the weight of a pouch from that of a serving where the figures do, and asks where they do not', () => {
    const per = (...weights: string[]) =>
      guess(['Dish', 'Weight (g)', 'Servings'], ...rows('2', ...weights)).columns[1]!.per;
    expect(per('260', '245', '280', '232')).toBe('pouch');
    expect(per('140', '150', '135', '146')).toBeUndefined();
    expect(
      guess(['Dish', 'Weight (g)', 'Servings'], ['a', '118', '4'], ['b', '126', '3'], ['c', '109', '5'])
        .columns[1]!.per,
    ).toBe('serving');
  });

  it('takes a size in portions for the servings', () => {
    const { columns } = guess(
      ['Name', 'Inhalt', 'Portionsgröße'],
      ['Suppe', '45 g', '1 Portion'],
      ['Reis', '150 g', '2 Portionen'],
      ['Müsli', '100g', '1'],
    );
    expect(columns.map(({ field }) => field)).toEqual(['recipe', 'dryWeightG', 'servingsPerPouch']);
  });

  it('tells the weight of all pouches from that of one by how many there are', () => {
    const { columns } = guess(
      ['Dish', 'Bags', 'Dry g', 'g per bag', 'Servings per bag'],
      ['Pasta', '8', '860', '107.5', '2'],
      ['Beans', '9', '540', '60', '1'],
      ['Berries', '10', '230', '23', '1'],
    );
    expect(columns.map(({ per }) => per)).toEqual([undefined, undefined, 'lot', 'pouch', undefined]);
  });

  it('gives no value to what has no column', () => {
    expect(guess(['Recipe', 'Meal']).constants).toEqual({});
  });
});

it('what is the same for all rows is said in the language around', () => {
  const mapping: Mapping = {
    ...guess(['Recipe']),
    constants: { mealKinds: 'dinner', waterKind: 'boiling', steepMin: '12', tareG: '14' },
  };
  expect(sameForAllRows(mapping)).toEqual([
    'Meals: dinner',
    'Water type: boiling',
    'Rehydration time: 12 min',
    'Packaging: 14 g',
  ]);
  useCatalog('de', translationInto('de'));
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
      { field: 'recipe', message: 'no column contains the recipe; choose one' },
    ]);
    expect(mappingProblems(without('pouches'))).toMatchObject([{ field: 'constants.pouches' }]);
    expect(mappingProblems(without('waterKind'))).toEqual([]);
    expect(mappingProblems(without('code'))).toEqual([]);
    expect(mappingProblems(without('allergens'))).toEqual([]);
    expect(mappingProblems({ ...without('pouches'), constants: { pouches: '1' } })).toEqual([]);
  });

  it('refuses one field from two columns', () => {
    const columns = whole.columns.map((entry) =>
      entry.field === 'note' ? { ...entry, field: 'recipe' as const } : entry,
    );
    expect(mappingProblems({ ...whole, columns })).toEqual([
      {
        field: `columns[${EARLIER_COLUMNS - 1}].field`,
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
