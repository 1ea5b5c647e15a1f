import { describe, expect, it } from 'vitest';
import { Dryer, Kitchen } from '../model/kitchen.ts';
import { Recipe } from '../model/recipe.ts';
import type { MealKind } from '../model/words.ts';
import type { DryingNeed } from './fill-dryer.ts';
import { planDrying, type BatchUnderWay, type DryingInput, type PlannedLoad } from './plan-drying.ts';

/** 2000 g of it, cooked, are 1600 kcal by 4 kcal/g of carbohydrate (Regulation (EU) 1169/2011, Annex XIV) in `servings` servings. */
const recipe = (name: string, changes: Partial<Parameters<typeof Recipe.parse>[0] & object> = {}) => ({
  id: name,
  recipe: Recipe.parse({
    name,
    mealKinds: ['dinner'],
    servings: 4,
    cookingYield: 4,
    ingredients: [ingredient('rice', 500)],
    ...changes,
  }),
});
const ingredient = (name: string, amount: number, food: object = {}, price?: object) => ({
  food: {
    name,
    source: 'test',
    allergens: [],
    composition: { waterG: 20, proteinG: 0, fatG: 0, carbohydrateG: 80 },
    ...food,
  },
  quantity: { amount, unit: 'g' },
  ...(price && { price }),
});
const fats = { composition: { waterG: 10, proteinG: 0, fatG: 90, carbohydrateG: 0 } };

/** Four trays of 1000 g; by common practice a run of it takes up to 34 h, so two days. */
const DRYER = Dryer.parse({
  name: 'cellar',
  process: 'freeze-dried',
  trayCount: 4,
  trayAreaCm2: 1000,
  trayLimitG: 1000,
  depthLimitMm: 20,
  meanPowerW: 900,
});
/** By common practice up to 14 h. */
const WARM: Dryer = { ...DRYER, name: 'warm air', process: 'dehydrated', trayCount: 2 };

const need = (missingKcal: number, changes: Partial<DryingNeed> = {}): DryingNeed => ({
  meal: 'dinner',
  missingKcal,
  eaters: [{ name: 'Ada', allergens: [], diets: [] }],
  ...changes,
});

const MONDAY = '2027-06-07';
const plan = (changes: Partial<Omit<DryingInput, 'kitchen'>> & { kitchen?: object } = {}) =>
  planDrying({
    needs: [need(1600)],
    recipes: [recipe('rice')],
    runs: [],
    underWay: [],
    today: MONDAY,
    departure: '2027-07-01',
    ...changes,
    kitchen: Kitchen.parse({ dryers: [DRYER], ...changes.kitchen }),
  });
const briefly = ({ recipe: name, timesCooked, trays }: PlannedLoad) => [name, timesCooked, trays];

describe('one run', () => {
  it('is cooked today, takes whole days by the high end of its hours, and brings what is missing', () => {
    const { runs, toBuy, workDays, readyBy } = plan();
    expect(runs).toMatchObject([
      { dryer: 'cellar', cookOn: MONDAY, readyOn: '2027-06-09', trays: 2, trayCount: 4, joins: [] },
    ]);
    expect(runs[0]?.hours.high).toBe(36);
    expect(runs[0]?.loads).toMatchObject([
      { recipeId: 'rice', timesCooked: 1, servings: 4, trays: 2, trayG: 1000, energyKcal: 1600 },
    ]);
    expect(runs[0]?.loads[0]?.shares).toEqual([{ line: 0, energyKcal: 1600 }]);
    expect(toBuy).toEqual([]);
    expect(workDays).toEqual([MONDAY, '2027-06-09']);
    expect(readyBy).toBe('2027-06-29');
  });

  it('cooks for whole servings in quarters of the recipe', () => {
    // 401 kcal want two servings of 400, which are two quarters; the rest is above what is missing
    const [run] = plan({ needs: [need(401)] }).runs;
    expect(run?.loads).toMatchObject([{ timesCooked: 0.5, servings: 2, energyKcal: 800, trays: 1 }]);
    expect(run?.loads[0]?.shares).toEqual([{ line: 0, energyKcal: 401 }]);
  });

  it('fills trays by depth where that is less than by weight', () => {
    // 0.25 g/ml on 1000 cm² at 20 mm: 500 g a tray
    const fluffy = recipe('rice', { bulkGPerMl: 0.25 });
    expect(plan({ recipes: [fluffy] }).runs[0]?.loads.map(briefly)).toEqual([['rice', 1, 4]]);
  });

  it('is done by those who may cook: on their days, with time for the longest run', () => {
    const [run] = plan({ kitchen: { cookDays: ['Sun', 'Wed'] } }).runs;
    expect(run).toMatchObject({ cookOn: '2027-06-09', readyOn: '2027-06-13' });
  });

  it('takes the hours of the runs of this dryer, once there are some', () => {
    const run = { dryer: 'cellar', preFrozen: false, waterRemovedG: 1600, hours: 60 };
    const slow = plan({ runs: [run] }).runs[0];
    expect(slow).toMatchObject({ cookOn: MONDAY, readyOn: '2027-06-11' });
    expect(slow?.basis.hours).toEqual({ runs: 1, kind: 'plain', dryer: 'cellar' });
  });
});

describe('variety', () => {
  const two = [recipe('rice'), recipe('barley')];

  it('gives nobody more than half of their servings of one recipe where another suits', () => {
    const { runs } = plan({ recipes: two, needs: [need(2000)] });
    // five servings: three of one and two of the other
    expect(runs.flatMap(({ loads }) => loads.map(({ recipe: name, servings }) => [name, servings]))).toEqual([
      ['rice', 3],
      ['barley', 2],
    ]);
  });

  it.each([400, 4800])('takes what brings most energy on a tray first, for %i kcal', (missingKcal) => {
    const rich = recipe('rich', { cookingYield: 2 });
    const [run] = plan({ recipes: [recipe('rice'), rich], needs: [need(missingKcal)] }).runs;
    expect(run?.loads[0]?.recipe).toBe('rich');
  });

  it('leaves no tray empty for the sake of it', () => {
    const large = recipe('large', { servings: 40, ingredients: [ingredient('rice', 5000)] });
    const { runs, toBuy } = plan({
      recipes: [recipe('rice'), large],
      needs: [need(3200)],
      kitchen: { dryers: [{ ...DRYER, trayCount: 4 }] },
      departure: '2027-06-11',
    });
    // a quarter of the large recipe fills five trays
    expect(runs.map(({ loads }) => loads.map(briefly))).toEqual([[['rice', 2, 4]]]);
    expect(toBuy).toEqual([]);
  });
});

describe('exclusions', () => {
  const milky = recipe('milky', { ingredients: [ingredient('curd', 500, { allergens: ['milk'] })] });
  const unknown = recipe('unknown', { ingredients: [ingredient('mix', 500, { allergens: undefined })] });
  const noMilk = need(1600, { eaters: [{ name: 'Ben', allergens: ['milk'], diets: [] }] });

  it('hold for every eater: nothing unsuitable is cooked, and it says why', () => {
    const { runs, toBuy } = plan({ recipes: [milky, unknown], needs: [noMilk] });
    expect(runs).toEqual([]);
    expect(toBuy).toEqual([
      {
        line: 0,
        missingKcal: 1600,
        why: {
          kind: 'not suited',
          recipes: [
            { recipe: 'milky', because: { kind: 'holds', allergens: ['milk'] } },
            { recipe: 'unknown', because: { kind: 'unstated' } },
          ],
        },
      },
    ]);
  });

  it('leave the recipe to those who may have it', () => {
    const { runs, toBuy } = plan({ recipes: [milky, recipe('rice')], needs: [need(1600), noMilk] });
    const shares = runs.flatMap(({ loads }) =>
      loads.flatMap((load) => load.shares.map(({ line }) => [load.recipe, line])),
    );
    expect(shares).not.toContainEqual(['milky', 1]);
    expect(shares).toContainEqual(['milky', 0]);
    expect(toBuy).toEqual([]);
  });

  it('hold for diets, which an ingredient must be stated to meet', () => {
    const vegan = need(1600, { eaters: [{ name: 'Cy', allergens: [], diets: ['vegan'] }] });
    expect(plan({ needs: [vegan] }).toBuy[0]?.why.kind).toBe('not suited');
    const stated = recipe('rice', { ingredients: [ingredient('rice', 500, { diets: ['vegan'] })] });
    expect(plan({ needs: [vegan], recipes: [stated] }).toBuy).toEqual([]);
  });
});

describe('time', () => {
  it('is used by all dryers, the one that brings most first, and no two runs are in one dryer at once', () => {
    const { runs } = plan({ needs: [need(8000)], kitchen: { dryers: [WARM, DRYER] } });
    // what is dried in warm air is unloaded the next day and sealed after four days in its jar
    expect(runs.map(({ dryer, cookOn, unloadOn, readyOn }) => [dryer, cookOn, unloadOn, readyOn])).toEqual([
      ['cellar', MONDAY, '2027-06-09', '2027-06-09'],
      ['warm air', MONDAY, '2027-06-08', '2027-06-12'],
      ['cellar', '2027-06-09', '2027-06-11', '2027-06-11'],
    ]);
  });

  it('that a dryer needs between two runs keeps the next one waiting, and not the food of the first', () => {
    // up to 34 h, and 16 h to defrost: three days until it is loaded again
    const slow = { ...DRYER, turnaroundH: 16 };
    const { runs } = plan({ needs: [need(6400)], kitchen: { dryers: [slow] } });
    expect(runs.map(({ cookOn, readyOn, turnaroundH }) => [cookOn, readyOn, turnaroundH])).toEqual([
      [MONDAY, '2027-06-09', 16],
      ['2027-06-10', '2027-06-12', 16],
    ]);
  });

  it('that is too short leaves the rest to buy', () => {
    const { runs, toBuy } = plan({ needs: [need(8000)], departure: '2027-06-12' });
    expect(runs).toHaveLength(1);
    expect(toBuy).toEqual([{ line: 0, missingKcal: 4800, why: { kind: 'no time' } }]);
  });

  it('that is gone leaves all to buy', () => {
    for (const departure of ['2027-06-10', MONDAY, '2027-01-01']) {
      const { runs, groceries, toBuy } = plan({ departure });
      expect([runs, groceries]).toEqual([[], []]);
      expect(toBuy).toEqual([{ line: 0, missingKcal: 1600, why: { kind: 'no time' } }]);
    }
  });

  it('that is too short for full trays may do for fewer', () => {
    // hours in proportion to water in these runs: full trays take two days, two of four one day
    const runs = [400, 800, 1200, 1600, 2400, 3100].map((waterRemovedG, index) => ({
      dryer: 'cellar',
      preFrozen: false,
      waterRemovedG,
      hours: waterRemovedG / 100 + (index % 2),
    }));
    const short = plan({ needs: [need(3200)], runs, departure: '2027-06-10' });
    expect(short.runs).toMatchObject([{ cookOn: MONDAY, readyOn: '2027-06-08', trays: 2 }]);
    expect(short.toBuy).toMatchObject([{ missingKcal: 1600, why: { kind: 'no time' } }]);
    expect(plan({ needs: [need(3200)], runs }).runs).toMatchObject([{ trays: 4, readyOn: '2027-06-09' }]);
  });
});

describe('batches under way', () => {
  const batch = (changes: Partial<BatchUnderWay> = {}): BatchUnderWay => ({
    id: 'b',
    code: 'B1',
    recipe: 'soup',
    dryer: 'cellar',
    cookedOn: '2027-06-06',
    loaded: true,
    trays: 4,
    waterG: 3000,
    hours: { low: 20, value: 30, high: 50, terms: [] },
    food: { mealKinds: ['dinner'], allergens: [], diets: [] },
    energyKcal: 1000,
    ...changes,
  });

  it('hold their dryer until they are dry, and fill what they suit', () => {
    const { runs, underWay } = plan({ needs: [need(2600)], underWay: [batch()] });
    expect(underWay).toEqual([
      {
        id: 'b',
        code: 'B1',
        recipe: 'soup',
        readyOn: '2027-06-09',
        shares: [{ line: 0, energyKcal: 1000 }],
      },
    ]);
    expect(runs).toMatchObject([{ cookOn: '2027-06-09', loads: [{ energyKcal: 1600 }] }]);
  });

  it('bring nothing where they are late or not for these eaters, and still hold the dryer', () => {
    const lunch = batch({ food: { mealKinds: ['lunch'], diets: [] } });
    expect(plan({ underWay: [lunch] })).toMatchObject({ underWay: [], runs: [{ cookOn: '2027-06-09' }] });
    const late = plan({ underWay: [batch()], departure: '2027-06-10' });
    expect(late).toMatchObject({ underWay: [], runs: [], toBuy: [{ missingKcal: 1600 }] });
  });

  it('that are overdue are unloaded today, and the dryer is free', () => {
    const { runs, underWay } = plan({
      needs: [need(2600)],
      underWay: [batch({ cookedOn: '2027-05-01' })],
    });
    expect(underWay).toMatchObject([{ readyOn: MONDAY }]);
    expect(runs).toMatchObject([{ cookOn: MONDAY }]);
  });

  it('leave their free trays to what is loaded with them', () => {
    const started = batch({ cookedOn: MONDAY, trays: 2, waterG: 1600, loaded: false });
    const { runs, underWay } = plan({ needs: [need(2600)], underWay: [started] });
    expect(runs).toMatchObject([
      { cookOn: MONDAY, readyOn: '2027-06-10', joins: ['B1'], trays: 2, loads: [{ trays: 2 }] },
    ]);
    // as long as the batch needs, which is more than these trays alone would
    expect(underWay).toMatchObject([{ readyOn: '2027-06-10' }]);
  });
});

describe('groceries', () => {
  it('are the ingredients of all loads together, with their cost where all of it is known', () => {
    const paid = { paidMinor: 200, paidFor: { amount: 1, unit: 'kg' } };
    const salt = { composition: { waterG: 0, proteinG: 0, fatG: 0, carbohydrateG: 0 } };
    const { groceries, costMinor, unpriced } = plan({
      needs: [need(1600), need(800, { meal: 'lunch' as MealKind })],
      recipes: [
        recipe('rice', { ingredients: [ingredient('rice', 500, {}, paid), ingredient('salt', 8, salt)] }),
        recipe('porridge', {
          mealKinds: ['lunch'],
          ingredients: [ingredient('rice', 500, {}, paid), ingredient('egg', 120, { gPerPiece: 60 })],
        }),
      ],
    });
    // 800 kcal are 1.74 of the 1984 kcal that the porridge brings: two of its servings, half of its amounts
    expect(groceries).toEqual([
      { food: 'egg', weightG: 60, pieces: 1 },
      { food: 'rice', weightG: 750, costMinor: 150 },
      { food: 'salt', weightG: 8 },
    ]);
    expect(costMinor).toBe(150);
    expect(unpriced).toEqual(['egg', 'salt']);
  });
});

it('water from the tap is no grocery', () => {
  const water = { composition: { waterG: 100, proteinG: 0, fatG: 0, carbohydrateG: 0 } };
  const soaked = recipe('rice', { ingredients: [ingredient('rice', 500), ingredient('water', 900, water)] });
  expect(plan({ recipes: [soaked] }).groceries).toEqual([{ food: 'rice', weightG: 500 }]);
});

describe('what cannot be dried', () => {
  it('says whether a recipe, a dryer or room on its trays is wanting', () => {
    const why = (changes: Parameters<typeof plan>[0]) => plan(changes).toBuy[0]?.why;
    expect(why({ recipes: [] })).toEqual({ kind: 'no recipe' });
    expect(why({ needs: [need(100, { meal: 'drink' })] })).toEqual({ kind: 'no recipe' });
    expect(why({ kitchen: { dryers: [] } })).toEqual({ kind: 'no dryer' });
    const huge = recipe('huge', { servings: 80, ingredients: [ingredient('rice', 10_000)] });
    expect(why({ recipes: [huge] })).toEqual({ kind: 'too large', recipes: ['huge'] });
  });

  it('leaves out a recipe with nothing in it, and warns of a fatty one', () => {
    const { notes, runs } = plan({
      recipes: [
        recipe('empty', { ingredients: [] }),
        recipe('fried', { ingredients: [ingredient('rice', 300), ingredient('butter', 200, fats)] }),
      ],
    });
    expect(runs.flatMap(({ loads }) => loads.map((load) => load.recipe))).toEqual(['fried']);
    expect(notes).toEqual([
      { code: 'recipe-unfinished', recipe: 'empty' },
      { code: 'high-in-fat', recipe: 'fried' },
    ]);
  });
});
