import { describe, expect, it } from 'vitest';
import { MASS_G, VOLUME_ML } from '../planning/units/convert.ts';
import { fieldEntry, type ShelfField } from './fields.ts';
import { readCell, type CellRules } from './read-cell.ts';

const RULES: CellRules = { unit: undefined, decimalMark: '.', dateOrder: 'iso', currency: 'EUR' };
const read = (field: ShelfField, text: string, rules: Partial<CellRules> = {}) =>
  readCell(fieldEntry(field), text, { ...RULES, ...rules });
const value = (...args: Parameters<typeof read>) => {
  const reading = read(...args);
  return 'value' in reading ? reading.value : reading;
};
const reason = (...args: Parameters<typeof read>) => {
  const reading = read(...args);
  return 'reason' in reading ? reading.reason : reading;
};

describe('numbers', () => {
  it.each([
    ['120', 120],
    ['120.5', 120.5],
    ['1,200.5', 1200.5],
    ['1 200', 1200],
    ["1'200.5", 1200.5],
    ['1e-7', 1e-7],
    ['-5', -5],
    ['−5', -5],
    ['.5', 0.5],
    ['½', 0.5],
    ['2½', 2.5],
    ['1/4', 0.25],
  ])('reads %j', (text, grams) => expect(value('dryWeightG', text)).toBe(grams));

  it.each([
    ['120,5', 120.5],
    ['1.200,5', 1200.5],
    ['1.200', 1200],
    ['1 200,5', 1200.5],
    ['0,125', 0.125],
  ])('reads %j with a decimal comma', (text, grams) =>
    expect(value('dryWeightG', text, { decimalMark: ',' })).toBe(grams),
  );

  it.each([
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['0,125', 0.125],
    ['1,200.5', 1200.5],
    ['1.200,5', 1200.5],
    ['1,200,300', 1_200_300],
  ])('reads %j where the mark is not known', (text, grams) =>
    expect(value('dryWeightG', text, { decimalMark: 'either' })).toBe(grams),
  );

  it('names what can be read in two ways', () => {
    expect(reason('dryWeightG', '1,200', { decimalMark: 'either' })).toMatch(
      /1\.2 or 1200|1200 or 1\.2.*choose the decimal mark/,
    );
    expect(reason('dryWeightG', '1.200', { decimalMark: 'either' })).toMatch(/choose the decimal mark/);
  });

  it('refuses a mark that does not fit the file', () => {
    expect(reason('dryWeightG', '1,5')).toMatch(/decimal point; check the decimal mark/);
    expect(reason('dryWeightG', '1.5', { decimalMark: ',' })).toMatch(
      /decimal comma; check the decimal mark/,
    );
  });

  it.each(['abc', '12-90', '1/0', '1.2.3', '5 %', '3 of 5', 'Infinity', '0x10'])('refuses %j', (text) =>
    expect(read('dryWeightG', text)).toHaveProperty('reason'),
  );

  it.each([
    ['~420', 'energyKcal', 420],
    ['ca. 380', 'energyKcal', 380],
    ['about 240g', 'dryWeightG', 240],
    ['420?', 'energyKcal', 420],
    ['250-300 ml', 'waterMl', 275],
    ['10 – 15 min', 'steepMin', 15],
  ] as const)('reads %j with a doubt', (text, field, expected) =>
    expect(read(field, text)).toMatchObject({ value: expected, doubt: expect.any(String) as string }),
  );

  it.each([
    ['1 1/2 c.', 'waterMl', 1.5 * VOLUME_ML.cup],
    ['1 cup + 2 tbsp', 'waterMl', VOLUME_ML.cup + 2 * VOLUME_ML.tbsp],
    ['1760 kJ / 420 kcal', 'energyKcal', 420],
    ['1760/420', 'energyKcal', 420],
    ['5 oz (142 g)', 'dryWeightG', 5 * MASS_G.oz],
    ['a dozen', 'pouches', 12],
    ['drei', 'pouches', 3],
    ['12 Stk.', 'pouches', 12],
    ['serves 2', 'servingsPerPouch', 2],
    ['2 Personen', 'servingsPerPouch', 2],
  ] as const)('reads %j', (text, field, expected) => {
    const found = read(field, text);
    expect('value' in found && found.value).toBeCloseTo(expected, 6);
  });

  it.each(['2-3', '12 + 1', 'some', '3 of 5'])('takes no count from %j', (text) =>
    expect(read('pouches', text)).toHaveProperty('reason'),
  );

  it.each(['n/a', '-', '–', '?', 'k. A.', 'unknown', '~'])('reads nothing from %j', (text) =>
    expect(value('energyKcal', text)).toBeUndefined(),
  );

  it('reads what else a cell says', () => {
    expect(read('energyKcal', '1,180 kcal per bag', { decimalMark: '.' })).toMatchObject({
      value: 1180,
      per: 'pouch',
    });
    expect(read('energyKcal', '395 kcal/100g')).toMatchObject({ value: 395, per: '100g' });
    expect(read('dryWeightG', '222 g mit Beutel')).toMatchObject({ value: 222, gross: true });
    expect(read('waterMl', '250 ml boiling')).toMatchObject({ value: 250, waterKind: 'boiling' });
    expect(read('waterMl', 'no water')).toMatchObject({ value: 0, waterKind: 'none' });
    expect(read('dryWeightG', '240 g, 2 servings')).toMatchObject({ value: 240, also: { servings: 2 } });
  });
});

describe('units', () => {
  // 1 oz = 28.349523125 g, 1 US cup = 236.5882365 ml, 1 kcal = 4.184 kJ
  it.each([
    ['dryWeightG', '3.2 oz', 90.718474],
    ['dryWeightG', '0.25kg', 250],
    ['dryWeightG', '1 lb', 453.59237],
    ['energyKcal', '2092 kJ', 500],
    ['energyKcal', '500 Cal', 500],
    ['waterMl', '2 1/4 cups', 532.323532125],
    ['waterMl', '½ cup', 118.29411825],
    ['waterMl', '8 fl. oz.', 236.5882365],
    ['waterMl', '8 oz', 236.5882365],
    ['waterMl', '300 g', 300],
    ['waterMl', '3 dl', 300],
    ['steepMin', '1.5 h', 90],
    ['steepMin', '12 minutes', 12],
    ['servingsPerPouch', '2 servings', 2],
  ] as const)('%s reads %j', (field, text, expected) => expect(value(field, text)).toBeCloseTo(expected, 8));

  it('takes the unit of the column, unless the cell has its own', () => {
    expect(value('dryWeightG', '2', { unit: 'oz' })).toBeCloseTo(56.69904625, 8);
    expect(value('dryWeightG', '2 g', { unit: 'oz' })).toBe(2);
    expect(value('waterMl', '1,5 l', { decimalMark: ',' })).toBe(1500);
  });

  it('refuses a unit that measures something else, and one that it does not know', () => {
    expect(reason('dryWeightG', '2 cups')).toBe('"cups" does not measure this; use g, kg, oz, lb');
    expect(reason('dryWeightG', '2 stone')).toBe('"stone" is not a known unit; use g, kg, oz, lb');
  });
});

describe('dates', () => {
  it.each([
    ['2026-03-04', 'iso'],
    ['2026/3/4', 'month-first'],
    ['20260304', 'iso'],
    ['2026-03-04T00:00:00', 'iso'],
    ['04.03.2026', 'day-first'],
    ['4/3/26', 'day-first'],
    ['03/04/2026', 'month-first'],
    ['3/4/2026 12:30', 'month-first'],
    ['4 Mar 2026', 'iso'],
    ['4. März 2026', 'iso'],
    ['March 4th, 2026', 'iso'],
    ['4 mars 2026', 'iso'],
  ] as const)('reads %j, %s', (text, dateOrder) =>
    expect(value('sealedOn', text, { dateOrder })).toBe('2026-03-04'),
  );

  it('reads what can be read in one way only, whatever the order', () => {
    expect(value('sealedOn', '25/12/2026')).toBe('2026-12-25');
    expect(value('sealedOn', '12/25/2026')).toBe('2026-12-25');
    expect(value('sealedOn', '05.05.2026')).toBe('2026-05-05');
  });

  it('names what can be read in two ways', () => {
    expect(reason('sealedOn', '03/04/2026')).toMatch(/can be 2026-04-03 or 2026-03-04; choose the order/);
  });

  it.each([
    ['2026-02-30', /no day of the calendar/],
    ['31.04.2026', /no day of the calendar/],
    ['14 March', /has no year/],
    ['3.5.', /has no year/],
    ['13/2027', /has no month 13/],
    ['soon', /not a date/],
  ])('refuses %j', (text, message) => expect(reason('sealedOn', text)).toMatch(message));

  it.each([
    ['06/2027', '2027-06-01', '2027-06-30'],
    ['2028-02', '2028-02-01', '2028-02-29'],
    ["Mar '27", '2027-03-01', '2027-03-31'],
    ['März 2027', '2027-03-01', '2027-03-31'],
    ['03/27', '2027-03-01', '2027-03-31'],
    ['2027', '2027-01-01', '2027-12-31'],
    ['Q2 2027', '2027-04-01', '2027-06-30'],
    ['mid May 2027', '2027-05-11', '2027-05-20'],
    ['Ende 2027', '2027-09-01', '2027-12-31'],
    ['autumn 2027', '2027-09-01', '2027-11-30'],
    ['46357', '2026-12-01', '2026-12-01'],
  ])('takes the first of %j for sealing and the last for best-before', (text, first, last) => {
    expect(read('sealedOn', text)).toMatchObject({ value: first, doubt: expect.any(String) as string });
    expect(read('bestBefore', text)).toMatchObject({ value: last, doubt: expect.any(String) as string });
  });

  it.each(['3rd April 2026', 'April 3, 2026', '3. April 2026', 'Fri 3 Apr 2026'])('reads %j', (text) =>
    expect(value('sealedOn', text)).toBe('2026-04-03'),
  );

  it('takes the year that is said for the file', () => {
    expect(value('sealedOn', '14 March', { year: 2026 })).toBe('2026-03-14');
    expect(value('sealedOn', '3.5.', { year: 2026 })).toBe('2026-05-03');
  });

  it('reads how long it keeps where a date would be', () => {
    expect(read('bestBefore', '18 months')).toMatchObject({ keepsMonths: 18 });
    expect(read('bestBefore', '2 Jahre')).toMatchObject({ keepsMonths: 24 });
  });

  it('refuses a month that is none in this order', () => {
    expect(reason('sealedOn', '03/14/2026', { dateOrder: 'day-first' })).toMatch(
      /no month 14; check the order/,
    );
  });
});

describe('lists', () => {
  it.each([
    'lunch; dinner',
    'Lunch, Dinner',
    'lunch/dinner',
    'lunch | dinner',
    'lunch + dinner',
    'lunch and dinner',
    'Mittagessen und Abendessen',
    'déjeuner et dîner',
  ])('reads the meals %j', (text) => expect(value('mealKinds', text)).toEqual(['lunch', 'dinner']));

  it('refuses an unknown meal with the one that is most like it', () => {
    expect(reason('mealKinds', 'diner time')).toMatch(
      /"diner time" is not a known meal.*Known: breakfast, lunch, snack, dinner, drink/,
    );
    expect(reason('mealKinds', 'dinnner')).toMatch(/did you mean dinner\?/);
  });

  it.each([
    ['milk; tree nuts', ['milk', 'nuts']],
    ['Almonds, Soya', ['nuts', 'soy']],
    ['Sellerie und Senf', ['celery', 'mustard']],
    ['cereals with gluten', ['gluten']],
    ['cereals containing gluten', ['gluten']],
    ['shellfish', ['crustaceans', 'molluscs']],
    ['spelt', ['wheat', 'gluten']],
    ['contains egg', ['egg']],
    ['none', []],
    ['keine', []],
    ['?', undefined],
    ['n/a', undefined],
    ['-', undefined],
  ])('reads the allergens %j', (text, expected) => expect(value('allergens', text)).toEqual(expected));

  it('counts traces as contained, and says so', () => {
    expect(read('allergens', 'milk, may contain peanuts')).toEqual({
      value: ['milk', 'peanut'],
      doubt: 'traces are treated as an allergen, to be safe',
    });
  });

  it('never reads an allergen out of its denial', () => {
    for (const text of ['gluten-free', 'dairy free', 'no nuts', 'laktosefrei', 'sans gluten'])
      expect(reason('allergens', text)).toMatch(/says what the food is free of/);
    expect(read('allergens', 'milk, none')).toMatchObject({ value: ['milk'], open: true });
  });

  it('looks into brackets and behind colons', () => {
    expect(value('allergens', 'wheat (may contain milk)')).toEqual(['wheat', 'milk']);
    expect(value('allergens', 'contains: nuts (almonds), egg')).toEqual(['nuts', 'egg']);
    expect(value('allergens', 'Spuren von Nüssen')).toEqual(['nuts']);
  });

  it('refuses an unknown allergen with the one that is most like it', () => {
    expect(read('allergens', 'milk; selery')).toMatchObject({ value: ['milk'], open: true });
    expect(reason('allergens', 'selery')).toMatch(
      /^"selery" is not a known allergen; did you mean celery\? Known: milk, egg, /,
    );
    expect(reason('allergens', 'kryptonite')).toMatch(/^"kryptonite" is not a known allergen\. Known: /);
  });

  it('leaves an unknown diet out with a doubt', () => {
    expect(read('diets', 'Vegetarisch, low salt')).toEqual({
      value: ['vegetarian'],
      doubt: expect.stringMatching(/^left out: "low salt"/) as string,
    });
  });

  it.each([
    ['boiling water', 'boiling'],
    ['heiß', 'hot'],
    ['no water', 'none'],
  ])('reads the kind of water %j', (text, kind) => expect(value('waterKind', text)).toBe(kind));
});

describe('money', () => {
  it.each([
    ['1.85', 'EUR', 185],
    ['€1.85', 'EUR', 185],
    ['1.85 EUR', 'EUR', 185],
    ['$1.85', 'USD', 185],
    ['120', 'JPY', 120],
    ['1.234', 'KWD', 1234],
  ])('reads %j in %s', (text, currency, minor) => expect(value('costMinor', text, { currency })).toBe(minor));

  it('reads a decimal comma', () => expect(value('costMinor', '1,85 €', { decimalMark: ',' })).toBe(185));

  it('rounds to the smallest coin with a doubt', () => {
    expect(read('costMinor', '1.855')).toEqual({
      value: 186,
      doubt: '"1.855" is rounded to the smallest coin of EUR',
    });
  });

  it('refuses another currency', () => {
    expect(reason('costMinor', '$1.85')).toMatch(/"\$" is not EUR, in which this shelf counts/);
    expect(reason('costMinor', 'cheap')).toMatch(/is not EUR/);
    expect(reason('currency', 'USD')).toMatch(/"USD" is not EUR/);
    expect(value('currency', 'eur')).toBe('EUR');
  });
});
