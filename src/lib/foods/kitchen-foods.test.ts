import { describe, expect, it } from 'vitest';
import { ALLERGENS, type Allergen } from '../planning/model/allergens.ts';
import type { Food } from '../planning/model/composition.ts';
import { dietsMet } from '../planning/model/diets.ts';
import { keyOf, kitchenFoods } from './kitchen-foods.ts';
import { RULE_OF_THUMB } from './rule-of-thumb-foods.ts';

const { foods, names } = kitchenFoods();
const called = (name: string) => names.find((known) => known.name === name)!.food;
const namesWhere = (test: (food: Food) => boolean) => foods.filter(test).map(({ name }) => name);
/** Whether somebody who avoids it could be served the food. */
const claimsToBeWithout = (food: Food, allergen: Allergen) =>
  food.allergens !== undefined && !food.allergens.includes(allergen);

describe('names of cooks', () => {
  it('mean one food each', () => {
    const byKey = new Map<string, Food>();
    const twice = names.filter(({ words, food }) => {
      const was = byKey.get(keyOf(words));
      byKey.set(keyOf(words), food);
      return was !== undefined && was !== food;
    });
    expect(twice.map(({ name }) => name)).toEqual([]);
  });
});

describe('allergens', () => {
  /** Sources: FALCPA 2004 and FASTER Act 2021; Regulation (EU) 1169/2011, Annex II. */
  it.each(ALLERGENS)('%s is in at least one of the foods', (allergen) => {
    expect(namesWhere((food) => food.allergens?.includes(allergen) ?? false)).not.toEqual([]);
  });

  it('with wheat stand a cereal with gluten', () => {
    expect(
      namesWhere((food) => (food.allergens?.includes('wheat') && claimsToBeWithout(food, 'gluten')) ?? false),
    ).toEqual([]);
  });

  it.each<[Allergen, RegExp, RegExp?]>([
    [
      'milk',
      /milk|cheese|butter\b|cream|yogurt|yoghurt|whey|queso|casein|quark|halloumi|paneer|mascarpone/i,
      /coconut|milkfish|peanut butter|cocoa butter|almond butter|cashew butter|sesame butter|fruit butters|sunflower seed butter|cream of tartar|soymilk|nutmeg butter|butterbur|butternut|butterhead|butterfish|creamed|bread and butter|soy cream|soybean, curd|beans?,.*butter/i,
    ],
    ['egg', /\beggs?\b/i, /eggplant|egg roll|made without egg/i],
    [
      'wheat',
      /wheat|\bpasta\b|macaroni|spaghetti|couscous|bulgur|semolina|farina|spelt|triticale|noodles|bread|flour tortilla/i,
      /buckwheat|pasta, corn|rice noodles|cellophane|sweetbread|breadfruit|breadnut|squash, winter, spaghetti|non-wheat/i,
    ],
    ['gluten', /\boats?\b|\boat\b|barley|\brye\b|wheat|\bbeer\b|malt\b/i, /buckwheat|beerwurst|goat/i],
    ['soy', /soy|tofu|tempeh|miso\b|edamame|natto/i],
    [
      'nuts',
      /almond|hazelnut|walnut|cashew|pecan|pistachio|macadamia|brazilnut|pine nut|chestnut|hickory|beechnut|pilinut|ginkgo|praline|nougat/i,
      /waterchestnut|chestnut mushroom/i,
    ],
    ['peanut', /peanut/i],
    ['sesame', /sesame|tahini|hummus|halavah/i],
    ['fish', /^fish|\btuna\b|salmon|anchov|sardine|\bcod\b/i, /fish oil/i],
    ['crustaceans', /^crustaceans|shrimp|\bcrab\b|lobster|prawn/i],
    [
      'molluscs',
      /^mollusks|mussel|squid|clam\b|oyster|scallop/i,
      /mushroom|vegetable oyster|emu|ostrich|squash, summer, scallop|potatoes, scalloped/i,
    ],
    ['celery', /celery|celeriac/i],
    ['mustard', /mustard/i],
    ['lupin', /lupin/i],
    ['sulphites', /wine\b|sulfured|golden seedless/i],
  ])('food named after %s never claims to be without it', (allergen, pattern, but) => {
    expect(
      namesWhere(
        (food) => pattern.test(food.name) && !but?.test(food.name) && claimsToBeWithout(food, allergen),
      ),
    ).toEqual([]);
  });

  it('are left open where makers differ', () => {
    for (const name of [
      'white bread',
      'dark chocolate',
      'stock cube',
      'chicken stock',
      'curry powder',
      'chilli powder',
      'mayonnaise',
      'ketchup',
      'sausage',
      'ham',
      'bacon',
      'tuna',
      'curry paste',
      'baking powder',
      'potato flakes',
      'salted peanut',
      'worcestershire sauce',
    ])
      expect(called(name).allergens, name).toBeUndefined();
  });

  it('are stated for what is one plain food', () => {
    for (const name of [
      'rice',
      'onion',
      'red lentil',
      'tomato paste',
      'salt',
      'olive oil',
      'minced beef',
      'chicken breast',
    ])
      expect(called(name).allergens, name).toEqual([]);
    expect(called('flour').allergens).toEqual(['wheat', 'gluten']);
    expect(called('egg noodle').allergens).toEqual(['wheat', 'gluten', 'egg']);
    expect(called('butter').allergens).toEqual(['milk']);
    expect(called('soy sauce').allergens).toEqual(['soy', 'wheat', 'gluten']);
  });
});

describe('diets', () => {
  it('claim nothing against what a food contains, and nothing that only a cook can state', () => {
    const animal: Allergen[] = ['fish', 'crustaceans', 'molluscs'];
    const MEAT =
      /beef|pork|veal|lamb|chicken|turkey|duck|goose|sausage|bacon|\bham\b|meat,|\blard\b|tallow|gelatin|anchov/i;
    expect(
      namesWhere((food) => {
        const met = dietsMet(food.diets);
        const has = (codes: readonly Allergen[]) => codes.some((code) => food.allergens?.includes(code));
        return (
          (met.has('vegan') && has(['milk', 'egg', ...animal])) ||
          (met.has('vegan') &&
            /honey(?!dew)|milk(?!fish)|cheese|\beggs?\b(?!plant)/i.test(food.name) &&
            !/soymilk|coconut|without milk|made without egg/i.test(food.name)) ||
          (met.has('vegetarian') && (food.cookingClass.endsWith('meat') || has(animal))) ||
          (met.has('vegetarian') &&
            MEAT.test(food.name) &&
            !/meatless|horse ?radish|lambsquarters|jackfruit|cornsalad|coconut meat|without|goosefoot|gooseberries|duck, whole, fresh|egg|vegetarian/i.test(
              food.name,
            )) ||
          (met.has('no-pork') &&
            /pork|bacon|\bham\b|\blard\b|salami|boar/i.test(food.name) &&
            !/meatless|peas|graham/i.test(food.name)) ||
          (met.has('no-beef') && /beef|veal|bison|tallow/i.test(food.name) && !/mutton/i.test(food.name)) ||
          (met.has('no-alcohol') && food.composition.alcoholG > 0) ||
          met.has('halal') ||
          met.has('kosher')
        );
      }),
    ).toEqual([]);
  });
});

describe('how to cook it', () => {
  it('stands at raw meat, fish and eggs, and not at what is cooked', () => {
    const isRaw = (food: Food) =>
      kitchenFoods()
        .groups.get(food)
        ?.match(/Beef|Pork|Poultry|Lamb|Finfish/) && /\braw\b/.test(food.name);
    expect(namesWhere((food) => Boolean(isRaw(food)) && food.cookingClass === 'other')).toEqual([]);
    expect(called('egg').cookingClass).toBe('egg');
    expect(called('minced beef').cookingClass).toBe('minced meat');
    expect(called('chicken breast').cookingClass).toBe('poultry');
    expect(called('cooked chicken').cookingClass).toBe('other');
    expect(called('tuna').cookingClass).toBe('other');
  });
});

it('round figures of our own say so', () => {
  const own = foods.filter(({ number }) => number === undefined);
  expect(own.length).toBeGreaterThan(40);
  expect(new Set(own.map(({ source }) => source))).toEqual(new Set([RULE_OF_THUMB]));
});
