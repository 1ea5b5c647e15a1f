import { describe, expect, it } from 'vitest';
import type { Food } from '../planning/model/composition.ts';
import { kitchenFoods } from './kitchen-foods.ts';
import { findFood, searchFoods } from './find-food.ts';

const foods: Food[] = [
  'Split peas',
  'peas, green',
  'Peas, green, frozen',
  'Pea soup',
  'PEAS, GREEN',
  'Chickpeas',
  'Crème fraîche',
].map((name) => ({ ...kitchenFoods().foods[0]!, name }));
const names = (found: readonly Food[]) => found.map(({ name }) => name);

describe('findFood', () => {
  it('finds the very name before one that differs in case', () => {
    expect(findFood(foods, 'PEAS, GREEN')).toBe(foods[4]);
    expect(findFood(foods, '  Peas, Green ')).toBe(foods[1]);
    expect(findFood(foods, 'Peas')).toBeUndefined();
  });
});

describe('searchFoods', () => {
  it('ranks the start of the name first, then words, then what is inside a word', () => {
    expect(names(searchFoods(foods, 'peas', 10))).toEqual([
      'peas, green',
      'PEAS, GREEN',
      'Peas, green, frozen',
      'Pea soup',
      'Split peas',
      'Chickpeas',
    ]);
  });

  it('wants all words, in any order', () => {
    expect(names(searchFoods(foods, 'frozen peas', 10))).toEqual(['Peas, green, frozen']);
    expect(searchFoods(foods, 'peas carrots', 10)).toEqual([]);
    expect(names(searchFoods(kitchenFoods().foods, 'red lentils', 1))).toEqual(['Lentils, pink, raw']);
  });

  it('passes over accents, case and an English plural', () => {
    expect(names(searchFoods(foods, 'CREME', 10))).toEqual(['Crème fraîche']);
    expect(names(searchFoods(kitchenFoods().foods, 'onions', 1))).toEqual(['Onions, raw']);
    expect(names(searchFoods(kitchenFoods().foods, 'potatoes', 1))).toEqual(['Potato, flesh and skin, raw']);
  });

  it('gives no more than the limit, and nothing for no words', () => {
    expect(searchFoods(foods, 'peas', 2)).toHaveLength(2);
    expect(searchFoods(foods, ' , ', 10)).toEqual([]);
  });

  it('depends on nothing but names and their order', () => {
    const [first, second] = [searchFoods(foods, 'pea', 10), searchFoods([...foods].reverse(), 'pea', 10)];
    expect(names(first).map((name) => name.toLowerCase())).toEqual(
      names(second).map((name) => name.toLowerCase()),
    );
  });
});
