import { expect, it } from 'vitest';
import type { EatenNutrient } from '../planning/model/nutrition.ts';
import { comparedText, nutrientText, rangeText, standingText, statedText } from './nutrition-words.ts';

const protein: EatenNutrient = {
  nutrient: 'protein',
  amount: 92.4,
  statedShare: 1,
  energyShare: 0.184,
  perKg: 1.32,
  range: { source: 'ACSM 2009', unit: 'g/kg', least: 1.2, most: 1.7 },
  standing: 'within',
};

it('an amount has no false digits', () => {
  expect(nutrientText('protein', 92.4)).toBe('92 g');
  expect(nutrientText('sodium', 2313)).toBe('2,310 mg');
});

it('what is eaten is said in the unit of its range', () => {
  expect(comparedText(protein)).toBe('1.3 g/kg');
  expect(standingText(protein)).toBe('within 1.2 to 1.7 g/kg');
  const share = {
    ...protein,
    range: { source: 'IOM 2005', unit: 'share of energy', least: 0.1, most: 0.35 },
  } as const;
  expect([comparedText(share), standingText({ ...share, standing: 'above' })]).toEqual([
    '18% of energy',
    'above 10 to 35%',
  ]);
  const grams = { ...protein, range: { source: 'IOM 2006', unit: 'g', least: 350, most: 450 } } as const;
  expect([comparedText(grams), rangeText(grams.range)]).toEqual([undefined, '350 to 450 g']);
  expect(rangeText({ source: 'IOM 2006', unit: 'g', least: 15 })).toBe('at least 15 g');
});

it('how much of the food states it is told where that is not all', () => {
  expect(statedText(protein)).toBeUndefined();
  expect(statedText({ ...protein, statedShare: 0.6 })).toBe('stated by 60% of the food');
  const { range: _, ...without } = protein;
  expect(standingText({ ...without, standing: 'no range' })).toBeUndefined();
});
