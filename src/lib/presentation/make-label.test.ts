import { expect, it } from 'vitest';
import { exampleLot } from '../../../tests/support/examples.ts';
import { makeLabel } from './make-label.ts';

it('says what is in the pouch and what to do with it', () => {
  const lot = exampleLot({
    proteinG: 31,
    stirAfterMin: 6,
    allergens: ['milk', 'nuts'],
    diets: ['vegetarian', 'no-pork'],
  });
  expect(makeLabel(lot, 'metric')).toEqual({
    name: 'bean stew',
    code: 'D1',
    servings: '2 servings',
    isShared: true,
    water: { kind: 'boiling water', pouch: '700 ml (3 cups)', serving: '350 ml (1 1/2 cups)' },
    steep: 'wait 6 min, stir, wait 4 min more',
    energy: { pouch: '1,200 kcal', serving: '600 kcal' },
    protein: '31 g',
    netWeight: '300 g',
    allergens: 'Contains: milk, tree nuts.',
    diets: ['vegetarian', 'no pork'],
    sealedOn: '2026-05-01',
    bestBefore: '2028-05-01',
    absorber: 'Remove the oxygen absorber before pouring water.',
    caution:
      'Puffed up, torn, damp or smells wrong? Do not taste it; throw it away. Once wet, eat right away.',
  });
});

it('sends food into a bowl whose pouch takes no boiling water or is no plate', () => {
  const bowl = (lot: Parameters<typeof exampleLot>[0]) => makeLabel(exampleLot(lot), 'metric').bowl;
  expect(bowl({ pouchTakesBoilingWater: false })).toBe('Pour into a bowl');
  expect(bowl({ eatFromPouch: false })).toBe('Pour into a bowl');
  expect(bowl({ pouchTakesBoilingWater: false, waterKind: 'cold' })).toBeUndefined();
  expect(bowl({ eatFromPouch: false, mealKinds: ['drink'] })).toBeUndefined();
  expect(bowl({ pouchStands: true })).toBeUndefined();
});

it('says that nobody measured how dry it is', () => {
  expect(makeLabel(exampleLot({ weighedDry: false }), 'metric').unweighed).toContain('NOT MEASURED');
  expect(makeLabel(exampleLot({ weighedDry: true }), 'metric').unweighed).toBeUndefined();
});

it('puts the unit system of the house first', () => {
  const { water, netWeight, protein } = makeLabel(exampleLot({ proteinG: 31 }), 'us');
  expect(water).toMatchObject({ pouch: '3 cups (700 ml)', serving: '1 1/2 cups (350 ml)' });
  expect([netWeight, protein]).toEqual(['10.6 oz', '1.1 oz']);
});

it('counts servings', () => {
  const servings = (servingsPerPouch: number) =>
    makeLabel(exampleLot({ servingsPerPouch }), 'metric').servings;
  expect([1, 0.5, 1.5, 4 / 3].map(servings)).toEqual([
    '1 serving',
    '0.5 servings',
    '1.5 servings',
    '1.33 servings',
  ]);
});

it('asks for no water and no wait where none is added', () => {
  const bar = makeLabel(exampleLot({ waterKind: 'none', waterMl: 0 }), 'metric');
  expect(bar).toMatchObject({ water: undefined, steep: undefined });
  expect(bar.absorber).toBe('Remove the oxygen absorber before eating.');
  expect(bar.caution).not.toContain('wet');
});

it.each([
  [undefined, 'Allergens NOT DECLARED: not for anyone who avoids an allergen.'],
  [[], 'None of the 15 listed allergens, according to the cook.'],
  [['wheat'], 'Contains: wheat (gluten).'],
  [['gluten', 'celery'], 'Contains: cereals containing gluten (may be wheat), celery.'],
  [['wheat', 'gluten'], 'Contains: wheat, cereals containing gluten.'],
])('tells the allergens %j', (allergens, text) => {
  const { allergens: _, ...unstated } = exampleLot();
  expect(makeLabel(allergens ? exampleLot({ allergens }) : unstated, 'metric').allergens).toBe(text);
});
