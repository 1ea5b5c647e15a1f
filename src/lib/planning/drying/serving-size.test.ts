import { expect, it } from 'vitest';
import { exampleBatch, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import { defaultKitchen } from '../model/kitchen.ts';
import type { PortionNote } from '../model/recipe.ts';
import { batchSheet } from './batch-sheet.ts';
import { servingSizeOf } from './serving-size.ts';

const said = (...findings: PortionNote['finding'][]): PortionNote[] =>
  findings.map((finding) => ({ date: '2026-08-01', finding, note: '' }));

it('moves a serving by a tenth with each note, within half and double', () => {
  const size = (...findings: PortionNote['finding'][]) =>
    servingSizeOf({ portionNotes: said(...findings) }).size;
  expect(servingSizeOf({}).size).toBe(1);
  expect(size('too little', 'right')).toBeCloseTo(1.1, 9);
  expect(size('too little', 'too much')).toBeCloseTo(0.99, 9);
  expect(size(...Array.from({ length: 20 }, () => 'too little' as const))).toBe(2);
  expect(size(...Array.from({ length: 20 }, () => 'too much' as const))).toBe(0.5);
});

it('makes fewer and larger servings of the next batch, unless its cook says how many', () => {
  const recipe = exampleRecipe({ portionNotes: said('too little') });
  const servings = (changes: Parameters<typeof exampleBatch>[0]) =>
    batchSheet(exampleBatch(changes), defaultKitchen(), [], '2026-09-03').dry.servings;
  expect(servings({})).toBe(11);
  expect(servings({ recipe })).toBe(10);
  expect(servings({ recipe, servings: 12 })).toBe(12);
});
