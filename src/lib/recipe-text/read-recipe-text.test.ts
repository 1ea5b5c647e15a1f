import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readRecipeText, servingsOf } from './read-recipe-text.ts';
import { reportOf } from './report.ts';

const textOf = (name: string) =>
  readFileSync(new URL(`../../../tests/support/recipe-texts/${name}.txt`, import.meta.url), 'utf8');

/** Recipes in the styles that people use: servings, lines of the list, lines left to settle, raw weight in g, energy in kcal (weights and energy reckoned over by hand, to a tenth). */
const RECIPES: readonly (readonly [
  name: string,
  servings: number | undefined,
  lines: number,
  left: number,
  rawG: number,
  kcal: number,
])[] = [
  ['01-chili-us', 6, 12, 0, 2920, 3140],
  ['02-uk-bolognese', 4, 14, 0, 2270, 3430],
  ['03-de-linsen', 4, 13, 0, 2270, 1510],
  ['04-mac', 8, 9, 0, 2170, 5590],
  ['05-issue', undefined, 6, 0, 1430, 2570],
  ['06-noheadings', 4, 12, 0, 1600, 2810],
  ['07-oats', 2, 8, 0, 560, 810],
  ['08-dal', 5, 13, 0, 2970, 2710],
  ['09-pancakes', 4, 8, 0, 880, 1840],
  ['10-gulasch', 6, 11, 0, 2780, 2300],
  ['11-shepherd', 4, 10, 0, 2390, 3040],
  ['12-stirfry', 4, 13, 0, 1510, 2280],
  ['13-kaese', 4, 9, 0, 1310, 2980],
  ['14-risotto', 4, 11, 0, 2190, 2200],
  ['15-granola', 12, 9, 0, 740, 3400],
  ['16-tuna', 6, 8, 0, 1980, 4480],
  ['17-minestrone', 8, 20, 1, 3330, 1490],
  ['18-hummus', undefined, 6, 0, 340, 890],
  ['19-amounts-end', 5, 8, 0, 2060, 3560],
  ['20-nasi', 3, 10, 0, 1300, 2330],
  ['21-curry-thai', 4, 11, 1, 1490, 1700],
  ['22-banana', undefined, 9, 0, 880, 2590],
  ['23-porridge', 2, 7, 0, 280, 1100],
  ['24-beef-stew', 8, 14, 0, 3560, 2770],
  ['25-bean-burrito', 4, 7, 0, 1270, 1920],
  ['26-kartoffel', 4, 10, 0, 3530, 2880],
  ['27-quinoa', 4, 9, 0, 1420, 2230],
  ['28-jambalaya', 6, 13, 0, 2940, 3450],
  ['29-lasagne', 7, 15, 0, 3240, 5080],
  ['30-flapjack', 16, 5, 0, 1200, 5250],
  ['31-veg-curry', 4, 12, 2, 1320, 1590],
  ['32-milchreis', 4, 6, 1, 1320, 1650],
  ['33-tofu', 3, 9, 0, 1160, 1510],
  ['34-cornbread', undefined, 8, 0, 720, 2050],
];

describe('recipes as people write them', () => {
  it.each(RECIPES)('%s', (name, servings, lines, left, rawG, kcal) => {
    const recipe = readRecipeText(textOf(name));
    const report = reportOf(recipe);
    expect(recipe.servings).toBe(servings);
    expect(report.lines.map(({ text }) => text)).toHaveLength(lines);
    expect(report.lines.filter(({ settled }) => !settled)).toHaveLength(left);
    expect(Math.abs(report.totals.rawG / rawG - 1)).toBeLessThan(0.1);
    expect(Math.abs(report.totals.energyKcal / kcal - 1)).toBeLessThan(0.1);
  });

  it('lose no line of the list, and take none of the method for one', () => {
    const { lines, method, name } = readRecipeText(textOf('02-uk-bolognese'));
    expect(name).toBe('Spaghetti bolognese');
    expect(lines.map(({ text }) => text)[0]).toBe('500g lean minced beef');
    expect(method).toHaveLength(4);
  });

  it('are taken apart where several lines stand in one', () => {
    const { name, servings, lines, method } = readRecipeText(
      'Dough | Serves: 6 | 1 hr\n2 cups flour, 1 tsp salt, 1 TL Senf\nDirections: knead it.',
    );
    expect([name, servings, method]).toEqual(['Dough', 6, ['knead it.']]);
    expect(lines.map(({ text }) => text)).toEqual(['2 cups flour', '1 tsp salt', '1 TL Senf']);
    expect(readRecipeText('200 g rice\nFry it until soft. Serves 4.').servings).toBe(4);
  });

  it('keep what nobody understands as a line to settle', () => {
    const { lines } = readRecipeText('2 handfuls of glorbnax\n200 g rice\n1 cup vegan feta');
    expect(lines.map(({ unsettled }) => unsettled)).toEqual(['food unknown', undefined, 'food unsure']);
  });
});

describe('servings', () => {
  it.each([
    ['Serves 4', 4],
    ['Serves 4-6', 5],
    ['SERVES: 8', 8],
    ['Servings: 6', 6],
    ['Yield: 6 servings', 6],
    ['Makes 4 portions', 4],
    ['Makes 12', 12],
    ['4 Portionen', 4],
    ['Für 4 Personen', 4],
    ['Für 2-3 Personen:', 2.5],
    ['Zutaten für 6 Portionen', 6],
    ['Feeds six hungry hikers', 6],
    ['For 3', 3],
  ])('%s', (line, servings) => {
    expect(servingsOf(line)).toBe(servings);
  });
  it.each([
    '200 g rice',
    'Makes 1.5 litres',
    'For the sauce',
    '4 tomatoes',
    'Simmer for 20 minutes',
    '2 cups stock',
  ])('%s says none', (line) => {
    expect(servingsOf(line)).toBeUndefined();
  });
});
