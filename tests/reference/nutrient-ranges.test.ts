/**
 * Sources: Institute of Medicine 2005, Dietary Reference Intakes for energy and macronutrients: acceptable distribution ranges of adults (protein 10 to 35 %, carbohydrate
 * 45 to 65 %, fat 20 to 35 % of energy) and of ages 4 to 18 (10 to 30, 45 to 65, 25 to 35 %), adequate intake of fibre 14 g for 1,000 kcal (both as open code that implements them has them).
 * Institute of Medicine 2006, Nutrient composition of rations, table 3-1 and p. 31: 2,400 kcal and 400 kcal of carbohydrate besides, for days with 4,500 kcal spent; protein 100 to 120 g, carbohydrate 350 g
 * and 100 g besides, fat 58 to 67 g (22 to 25 % of energy), fibre 15 to 17 g. American College of Sports Medicine and others 2009: protein 1.2 to 1.7 g/kg (as a summary gives it).
 * Holmes et al. 2016, Ann Sports Med Res 3:1063 (abstract): sodium of sweat 30.6 ± 11.4 mmol/l at an easy effort, some 700 mg/l; 49.4 ± 22.9 mmol/l, some 1,140 mg/l, at a hard one.
 */
import { describe, expect, it } from 'vitest';
import {
  ENERGY_SHARES,
  FIELD_RATION,
  rangeOf,
  type Effort,
} from '../../src/lib/planning/nutrition/nutrient-ranges.ts';
import { sweatSodiumMg } from '../../src/lib/planning/nutrition/sweat-sodium.ts';

const day = (changes: Partial<Effort> = {}): Effort => ({
  ageY: 40,
  massG: 70_000,
  walkingH: 6,
  eatenKcal: 3000,
  isWholeDay: true,
  ...changes,
});

describe('shares of energy', () => {
  it.each([
    ['protein', 40, 0.1, 0.35],
    ['carbohydrate', 40, 0.45, 0.65],
    ['fat', 40, 0.2, 0.35],
    ['protein', 12, 0.1, 0.3],
    ['carbohydrate', 12, 0.45, 0.65],
    ['fat', 12, 0.25, 0.35],
  ] as const)('of %s at rest at %d years', (nutrient, ageY, least, most) =>
    expect(rangeOf(nutrient, day({ ageY, walkingH: 0 }))).toEqual({
      source: 'IOM 2005',
      unit: 'share of energy',
      least,
      most,
    }),
  );

  it('agree with the ration for the field, whose carbohydrate is within them and whose fat is at their low end', () => {
    const kcal = FIELD_RATION.fromKcal;
    const [least, most] = ENERGY_SHARES.adult.carbohydrate;
    for (const [grams, of] of [
      [FIELD_RATION.carbohydrateG[0], kcal],
      [FIELD_RATION.carbohydrateG[1], kcal + 400],
    ] as const) {
      expect((4 * grams) / of).toBeGreaterThan(least);
      expect((4 * grams) / of).toBeLessThan(most);
    }
    expect((9 * 58) / kcal).toBeCloseTo(0.22, 2);
    expect((9 * 67) / kcal).toBeCloseTo(0.25, 2);
    expect((4 * 100) / kcal).toBeGreaterThan(ENERGY_SHARES.adult.protein[0]);
  });

  it('begin at the age of 4', () => expect(rangeOf('fat', day({ ageY: 3 }))).toBeUndefined());
});

it('protein of a walking day is by body mass, the ration of which is within it for 70 to 83 kg', () => {
  const range = rangeOf('protein', day());
  expect(range).toEqual({ source: 'ACSM 2009', unit: 'g/kg', least: 1.2, most: 1.7 });
  for (const [grams, kg] of [
    [100, 70],
    [120, 83],
  ] as const)
    expect(grams / kg).toBeGreaterThan(range?.least ?? Infinity);
});

it.each([
  ['mass is not known', { massG: undefined }],
  ['meals are eaten elsewhere', { isWholeDay: false }],
  ['somebody is under age', { ageY: 15 }],
  ['nobody walks', { walkingH: 0.5 }],
])('shares of energy stand in for grams where %s', (_, changes) =>
  expect(rangeOf('protein', day(changes))?.unit).toBe('share of energy'),
);

it('carbohydrate of a long day is that of the ration, where the day has as much energy', () => {
  expect(rangeOf('carbohydrate', day())).toEqual({ source: 'IOM 2006', unit: 'g', least: 350, most: 450 });
  expect(rangeOf('carbohydrate', day({ walkingH: 3 }))?.source).toBe('IOM 2005');
  expect(rangeOf('carbohydrate', day({ eatenKcal: 2300 }))?.source).toBe('IOM 2005');
});

it('fibre is 14 g for 1,000 kcal, and 15 g on a long day', () => {
  expect(rangeOf('fibre', day({ walkingH: 0, eatenKcal: 2000 }))?.least).toBeCloseTo(28, 9);
  expect(rangeOf('fibre', day())?.least).toBe(15);
});

it('sodium has no range that was found to be sure', () => expect(rangeOf('sodium', day())).toBeUndefined());

it('a litre of sweat takes some 700 mg of sodium, 1,140 at a hard effort', () => {
  const easy = sweatSodiumMg(1000, false);
  expect(easy.value).toBeGreaterThan(695);
  expect(easy.value).toBeLessThan(710);
  expect(easy.high - easy.value).toBeCloseTo(11.4 * 22.99, 6);
  expect(sweatSodiumMg(1000, true).value).toBeGreaterThan(1130);
  expect(sweatSodiumMg(1000, true).value).toBeLessThan(1145);
  expect(sweatSodiumMg(0, true)).toEqual({ value: 0, low: 0, high: 0 });
});
