import { describe, expect, it } from 'vitest';
import { foodOfIfctRow, ifctFoods } from './ifct.ts';

const { foods, refused } = await ifctFoods();
const ofCode = (code: string) => foods.find(({ source }) => source.endsWith(` ${code}`))!;

describe('ifctFoods', () => {
  it('takes every row but the one whose alcohol is not stated', () => {
    expect(foods).toHaveLength(541);
    expect(new Set(foods.map(({ name }) => name)).size).toBe(541);
    expect(refused).toEqual([{ code: 'K001', reason: expect.stringContaining('alcohol') as string }]);
  });

  it('reads the table once', () => expect(ifctFoods()).toBe(ifctFoods()));

  it('names a food after its row, and takes its energy over from kJ', () => {
    expect(ofCode('A018')).toMatchObject({
      name: 'Wheat flour, refined (IFCT A018)',
      source: 'Indian Food Composition Tables 2017, ICMR-NIN, A018',
      composition: { waterG: 11.34, proteinG: 10.36, alcoholG: 0 },
      diets: ['vegan', 'no-alcohol'],
    });
    expect(ofCode('A018').composition.energyKcal).toBeCloseTo(1472 / 4.184, 8);
  });

  it('states no allergens', () => {
    expect(foods.filter(({ allergens }) => allergens !== undefined)).toEqual([]);
  });

  it('states no energy for oils, for which the table has none, and rounds 100.01 g of fat to 100', () => {
    expect(ofCode('T002').composition).toEqual({
      waterG: 0,
      proteinG: 0,
      fatG: 100,
      carbohydrateG: 0,
      fibreG: 0,
      alcoholG: 0,
    });
    expect(foods.filter(({ composition }) => composition.energyKcal === undefined)).toHaveLength(14);
  });

  it.each([
    ['N003', 'poultry', ['no-pork', 'no-beef', 'no-alcohol']],
    ['P010', 'fish', ['no-pork', 'no-beef', 'no-alcohol']],
    ['R003', 'fish', ['no-pork', 'no-beef', 'no-alcohol']],
    ['M001', 'egg', ['vegetarian', 'no-alcohol']],
    ['M004', 'other', ['vegetarian', 'no-alcohol']],
    ['O001', 'whole meat', ['no-pork', 'no-beef', 'no-alcohol']],
    ['O025', 'whole meat', ['no-pork', 'no-alcohol']],
    ['O045', 'whole meat', ['no-pork', 'no-alcohol']],
    ['O050', 'whole meat', ['no-beef', 'no-alcohol']],
    ['O008', 'minced meat', ['no-pork', 'no-beef', 'no-alcohol']],
    ['O063', 'minced meat', ['no-pork', 'no-beef', 'no-alcohol']],
    ['L003', 'other', ['vegetarian', 'no-alcohol']],
    ['T013', 'other', ['vegetarian', 'no-alcohol']],
    ['T012', 'other', ['vegan', 'no-alcohol']],
  ])('%s is cooked as %s and meets %j', (code, cookingClass, diets) => {
    expect(ofCode(code)).toMatchObject({ cookingClass, diets });
  });
});

describe('foodOfIfctRow', () => {
  const row = {
    code: 'X001',
    name: 'Thing',
    grup: 'Fruits',
    water: '80',
    protcnt: '1',
    fatce: '1',
    choavldf: '15',
    fibtg: '2',
    enerc: '330',
  };
  const read = (changed: Partial<typeof row>) =>
    foodOfIfctRow(new Map(Object.entries({ ...row, ...changed })));

  it('refuses a row without a figure that is needed, saying which', () => {
    expect(read({ water: '' })).toEqual({ reason: 'the table does not state its water' });
    expect(read({ fatce: '112' })).toEqual({
      reason: 'composition.fatG: must be at most 100 g in 100 g',
    });
    expect(read({ protcnt: 'n' })).toHaveProperty('reason', expect.stringContaining('composition.proteinG'));
  });

  it('claims nothing for a group that it does not know', () => {
    expect(read({ grup: 'Insects' })).toMatchObject({ diets: [], cookingClass: 'other' });
  });
});
