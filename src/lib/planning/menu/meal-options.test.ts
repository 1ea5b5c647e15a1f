import { describe, expect, it } from 'vitest';
import { exampleMeal, exampleMenu, ONE_GROUP } from '../../../../tests/support/examples.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import { Trip } from '../model/trip.ts';
import { freePouches, mealOptions } from './meal-options.ts';

const lot = (code: string, other: Partial<PouchLot> = {}): PouchLot =>
  PouchLot.parse({
    code,
    recipe: `Recipe ${code}`,
    mealKinds: ['dinner'],
    sealedOn: '2026-01-10',
    bestBefore: '2027-01-10',
    pouches: 3,
    servingsPerPouch: 2,
    dryWeightG: 120,
    energyKcal: 500,
    waterMl: 300,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 14,
    allergens: [],
    ...other,
  });
const { party } = Trip.parse({
  name: 'T',
  startDate: '2026-07-04',
  dayCount: 1,
  party: [{ name: 'Ada' }, { name: 'Ben', allergens: ['milk'] }],
});
const AT = { day: 1, meal: 'dinner', group: ONE_GROUP } as const;
const opens = (code: string, pouches: number) => exampleMenu(exampleMeal([{ code, pouches }]));
const NOTHING = opens('?', 1);
const optionsFor = (stock: PouchLot[], menu = NOTHING) => mealOptions(party, stock, menu, AT, '2026-07-04');

describe('mealOptions', () => {
  it('lists what suits everybody first, by best-before, then the others with the reason', () => {
    const options = optionsFor([
      lot('MILK', { allergens: ['milk'], bestBefore: '2026-08-01' }),
      lot('LATE'),
      lot('SOON', { bestBefore: '2026-09-01' }),
      lot('OATS', { mealKinds: ['breakfast'] }),
    ]);
    expect(options.map(({ code, against }) => [code, against])).toEqual([
      ['SOON', []],
      ['LATE', []],
      ['MILK', [{ kind: 'not for', eater: 'Ben', why: { kind: 'holds', allergens: ['milk'] } }]],
      ['OATS', [{ kind: 'meant for', meals: ['breakfast'] }]],
    ]);
  });

  it('states the pouches that are still free and the energy of one pouch', () => {
    expect(optionsFor([lot('L1')], opens('L1', 2))[0]).toMatchObject({
      freePouches: 1,
      pouchEnergyKcal: 1000,
    });
  });

  it('leaves out what is used up, past its best-before or allowed to nobody', () => {
    const stock = [
      lot('USED'),
      lot('PAST', { bestBefore: '2026-07-03' }),
      lot('TODAY', { bestBefore: '2026-07-04' }),
      lot('NONE', { pouches: 0 }),
    ];
    expect(optionsFor(stock, opens('USED', 3)).map(({ code }) => code)).toEqual(['TODAY']);
    const onlyBen = party.filter(({ name }) => name === 'Ben');
    expect(mealOptions(onlyBen, [lot('MILK', { allergens: ['milk'] })], NOTHING, AT, '2026-07-04')).toEqual(
      [],
    );
  });
});

it('freePouches takes off what the menu opens, and the reserve', () => {
  const reserve = [{ code: 'L2', recipe: 'Recipe L2', pouches: 1, servings: 2, energyKcal: 1000 }];
  expect(freePouches([lot('L1'), lot('L2')], { ...opens('L1', 2), reserve })).toEqual(
    new Map([
      ['L1', 1],
      ['L2', 2],
    ]),
  );
});
