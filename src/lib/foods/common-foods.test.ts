import { describe, expect, it } from 'vitest';
import { ALLERGENS, type Allergen } from '../planning/model/allergens.ts';
import { compositionDoubts } from '../planning/model/composition-doubts.ts';
import { Food } from '../planning/model/composition.ts';
import { dietsMet } from '../planning/model/diets.ts';
import { COMMON_FOODS } from './common-foods.ts';

const named = (name: string) => COMMON_FOODS.find((food) => food.name === name)!;
const namesWhere = (test: (food: Food) => boolean) => COMMON_FOODS.filter(test).map(({ name }) => name);
const holds = (food: Food, allergen: Allergen) => food.allergens?.includes(allergen) ?? false;

/** Ash, or the acid of vinegar, where it is more than 5 g per 100 g. Source: USDA FoodData Central, memory. */
const ASH_G: Readonly<Record<string, number>> = {
  'Soya mince, textured, dry': 6.2,
  Miso: 12.8,
  'Celery seed': 9.3,
  'Tomatoes, dried': 12.6,
  'Beef, cured and dried': 10.4,
  'Salami, dry': 6,
  'Cod, dried and salted': 18.5,
  'Anchovies, tinned in oil, drained': 11.3,
  'Fish sauce': 20,
  'Milk powder, whole': 6.1,
  'Milk powder, skimmed': 7.9,
  'Parmesan cheese': 6,
  'Feta cheese': 5.2,
  'Cocoa powder': 5.8,
  'Coffee, instant': 8.8,
  'Black pepper, ground': 4.5,
  'Chilli powder': 6,
  'Coriander seed': 6,
  'Cumin seed': 7.6,
  'Ginger, ground': 5.2,
  Paprika: 7.7,
  'Turmeric, ground': 7.1,
  'Basil, dried': 14.9,
  'Oregano, dried': 7.9,
  'Parsley, dried': 11.4,
  'Thyme, dried': 11.7,
  'Yeast, dried': 5.6,
  Salt: 99.8,
  'Curry powder': 7.1,
  'Stock cube': 59,
  'Soy sauce': 15,
  'Wine vinegar': 5.5,
};
const MOST_USUAL_ASH_G = 5;

describe('common foods', () => {
  it('are at least 150, each once', () => {
    const names = COMMON_FOODS.map(({ name }) => name);
    expect(names.length).toBeGreaterThanOrEqual(150);
    expect(new Set(names).size).toBe(names.length);
    expect(Object.keys(ASH_G).filter((name) => !names.includes(name))).toEqual([]);
  });

  it.each(COMMON_FOODS)('$name: is a food without a doubt, and its parts make 100 g', (food) => {
    expect(Food.parse(food)).toEqual(food);
    expect(compositionDoubts(food.composition)).toEqual([]);
    const { waterG, proteinG, fatG, carbohydrateG, fibreG, alcoholG } = food.composition;
    const partsG = waterG + proteinG + fatG + carbohydrateG + fibreG + alcoholG;
    const ashG = ASH_G[food.name];
    if (ashG === undefined) expect(partsG).toBeGreaterThanOrEqual(100 - MOST_USUAL_ASH_G - 0.01);
    else expect(partsG + ashG).toBeGreaterThanOrEqual(96);
    expect(partsG + (ashG ?? 0)).toBeLessThanOrEqual(101);
  });

  /** Sources: FALCPA 2004 and FASTER Act 2021; Regulation (EU) 1169/2011, Annex II. */
  it.each(ALLERGENS)('%s is in at least one of them', (allergen) => {
    expect(namesWhere((food) => holds(food, allergen))).not.toEqual([]);
  });

  it('with wheat hold a cereal with gluten', () => {
    expect(namesWhere((food) => holds(food, 'wheat') && !holds(food, 'gluten'))).toEqual([]);
  });

  it.each<[Allergen, RegExp, RegExp?]>([
    ['milk', /milk|cheese|butter\b|cream|yoghurt/i, /coconut milk|peanut butter|chocolate/i],
    ['egg', /\begg\b/i],
    ['wheat', /wheat|pasta|couscous|bulgur|soy sauce/i, /buckwheat/i],
    ['gluten', /\boat|barley|\brye\b|beer/i, /crispbread/i],
    ['soy', /soy|tofu|tempeh|miso/i],
    ['nuts', /almond|hazelnut|walnut|cashew|pecan|pistachio|macadamia|brazil|pine nut/i],
    ['peanut', /peanut/i],
    ['sesame', /sesame|tahini|hummus/i],
    ['fish', /cod|herring|mackerel|salmon|trout|tuna|sardine|anchov|fish/i],
    ['crustaceans', /prawn|crab/i],
    ['molluscs', /mussel|squid|clam/i],
    ['celery', /celery|celeriac/i],
    ['mustard', /^mustard/i],
    ['lupin', /lupin/i],
    ['sulphites', /wine/i],
  ])('named after %s hold it', (allergen, pattern, but) => {
    const lacking = namesWhere(
      (food) => pattern.test(food.name) && !but?.test(food.name) && !holds(food, allergen),
    );
    expect(lacking).toEqual([]);
  });

  it('whose makers differ state no allergens, so that nobody who avoids one is served them', () => {
    for (const name of ['Bread, white', 'Chocolate, dark', 'Stock cube', 'Curry powder', 'Mayonnaise'])
      expect(named(name).allergens).toBeUndefined();
  });

  it('claim no diet against what they hold, and none that only a cook can state', () => {
    const animal: Allergen[] = ['fish', 'crustaceans', 'molluscs'];
    expect(
      namesWhere((food) => {
        const met = dietsMet(food.diets);
        return (
          (met.has('vegan') && (['milk', 'egg', ...animal] as const).some((code) => holds(food, code))) ||
          (met.has('vegetarian') &&
            (food.cookingClass.endsWith('meat') || animal.some((code) => holds(food, code)))) ||
          (met.has('no-alcohol') && food.composition.alcoholG > 0) ||
          met.has('halal') ||
          met.has('kosher')
        );
      }),
    ).toEqual([]);
    expect(dietsMet(named('Bacon, raw').diets).has('no-pork')).toBe(false);
    expect(dietsMet(named('Beef mince, browned').diets).has('no-beef')).toBe(false);
    expect(dietsMet(named('Gelatine').diets)).toEqual(new Set(['no-alcohol']));
  });

  it('that are raw meat, fish or egg say how to cook them, cooked and tinned ones do not', () => {
    expect(namesWhere((food) => /, raw$/.test(food.name) && food.cookingClass === 'other')).toEqual([]);
    expect(
      namesWhere(
        (food) => /tinned|cooked|boiled|roasted|browned/.test(food.name) && food.cookingClass !== 'other',
      ),
    ).toEqual([]);
  });
});
