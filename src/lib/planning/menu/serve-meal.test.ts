import { describe, expect, it } from 'vitest';
import { exampleLot } from '../../../../tests/support/examples.ts';
import { serveMeal } from './serve-meal.ts';

const all = () => true;
const seat = (name: string, needKcal: number, ceilingKcal = needKcal * 1.5) => ({
  name,
  needKcal,
  ceilingKcal,
});

describe('serveMeal', () => {
  it('divides by need', () => {
    const served = serveMeal(
      [{ lot: exampleLot({ energyKcal: 300 }), pouches: 1 }],
      [seat('Ada', 400), seat('Bo', 200)],
      all,
    );
    expect(served.portions.map(({ eater, servings }) => [eater, servings])).toEqual([
      ['Ada', 2 * (2 / 3)],
      ['Bo', 2 * (1 / 3)],
    ]);
  });

  it('lets whoever may eat everything leave the common lot to whoever may not', () => {
    const common = exampleLot({ code: 'A', energyKcal: 300 });
    const nutty = exampleLot({ code: 'N', energyKcal: 300 });
    const served = serveMeal(
      [
        { lot: common, pouches: 1 },
        { lot: nutty, pouches: 1 },
      ],
      [seat('Ada', 600), seat('Bo', 600)],
      (lot, eater) => lot.code === 'A' || eater === 'Ada',
    );
    expect(served.portions.map(({ eater, code, servings }) => [eater, code, servings])).toEqual([
      ['Bo', 'A', 2],
      ['Ada', 'N', 2],
    ]);
  });

  it('feeds above the need up to the ceiling and leaves the rest over', () => {
    const served = serveMeal(
      [{ lot: exampleLot({ energyKcal: 600, servingsPerPouch: 4 }), pouches: 1 }],
      [seat('Ada', 800), seat('Bo', 400)],
      all,
    );
    expect(served.eatenKcal.get('Ada')).toBeCloseTo(1200, 6);
    expect(served.eatenKcal.get('Bo')).toBeCloseTo(600, 6);
    expect(served.leftOver[0]?.servings).toBeCloseTo(1, 6);
  });

  it('leaves over what nobody at the table may eat', () => {
    const served = serveMeal([{ lot: exampleLot(), pouches: 1 }], [seat('Ada', 800)], () => false);
    expect(served.portions).toEqual([]);
    expect(served.leftOver[0]?.servings).toBe(2);
  });

  it('shares a drink without energy evenly', () => {
    const tea = exampleLot({
      code: 'T',
      mealKinds: ['drink'],
      energyKcal: 0,
      dryWeightG: 2,
      servingsPerPouch: 3,
    });
    const served = serveMeal([{ lot: tea, pouches: 1 }], [seat('Ada', 100), seat('Bo', 50)], all);
    expect(served.portions.map(({ servings }) => servings)).toEqual([1.5, 1.5]);
  });
});
