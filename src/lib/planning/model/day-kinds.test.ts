import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { planTrip } from '../plan-trip.ts';
import { defaultSettings } from './settings.ts';
import { resolveTrip } from './resolve-trip.ts';
import type { Trip } from './trip.ts';

const settings = defaultSettings();
/** Breakfasts and dinners for three days, cooked. */
const stock = [
  exampleLot({ code: 'D1', pouches: 9 }),
  exampleLot({ code: 'B1', recipe: 'porridge', mealKinds: ['breakfast'], pouches: 9 }),
];
const threeDays = (days: Trip['days'], changes: Partial<Trip> = {}) =>
  exampleTrip({ dayCount: 3, days, ...changes });
const plan = (days: Trip['days'], changes: Partial<Trip> = {}) =>
  planTrip(threeDays(days, changes), stock, settings);

describe('a hut night', () => {
  const usual = plan([]);
  const hut = plan([{}, { kind: 'hut night' }]);

  it('takes dinner and drinks of its day and breakfast of the next out of the plan, and nothing else', () => {
    const eaten = (of: typeof hut) =>
      of.menu.meals.filter(({ targetKcal }) => targetKcal > 0).map(({ day, meal }) => `${day} ${meal}`);
    expect(eaten(usual).filter((meal) => !eaten(hut).includes(meal))).toEqual([
      '2 dinner',
      '2 drink',
      '3 breakfast',
    ]);
    expect(hut.demand.map(({ kind }) => kind)).toEqual([undefined, 'hut night', undefined]);
  });

  it('lightens packs and fuel by these meals', () => {
    const foodG = (of: typeof hut) => of.carry.packs.reduce((sum, pack) => sum + pack.foodG, 0);
    expect(foodG(hut)).toBeLessThan(foodG(usual));
    expect(hut.fuel.boils.map(({ day, meal }) => `${day} ${meal}`)).toEqual([
      '1 breakfast',
      '1 dinner',
      '2 breakfast',
      '3 dinner',
    ]);
    expect(hut.fuel.need.value).toBeCloseTo((usual.fuel.need.value * 4) / 6, 2);
  });

  it('gives way to a line on the same meals', () => {
    const own = plan([{}, { kind: 'hut night' }], {
      mealRules: [{ days: [2], meals: ['dinner'], elsewhere: ['Bo'] }],
    });
    const dinner = own.menu.meals.find(({ day, meal }) => day === 2 && meal === 'dinner');
    expect(dinner).toMatchObject({ eaters: ['Ada'], elsewhere: ['Bo'] });
  });

  it('on the last day has no breakfast to leave out', () =>
    expect(resolveTrip(threeDays([{}, {}, { kind: 'hut night' }])).mealRules).toEqual([
      { days: [3], meals: ['dinner', 'drink'], elsewhere: 'everyone' },
    ]));
});

describe('walking', () => {
  it.each([
    [undefined, 6],
    ['rest', 0],
    ['short', 3],
    ['hut night', 6],
    ['town', 0],
    ['flight', 0],
    ['fire ban', 6],
  ] as const)('on a day of kind %s is %d h, unless hours or a leg are entered', (kind, hours) => {
    const day = kind ? { kind } : {};
    const hoursWith = (given: Trip['days'][number]) => plan([{ ...day, ...given }]).legs[0]?.walkingH;
    expect(hoursWith({})).toBe(hours);
    expect(hoursWith({ walkingH: 2 })).toBe(2);
    // 8 km at the 4 km/h of DIN 33466, and a fifth of rest
    expect(hoursWith({ distanceM: 8000 })).toBeCloseTo(2.4, 5);
  });

  it('says why it is none on a rest day', () =>
    expect(resolveTrip(threeDays([{ kind: 'rest' }])).assumptions).toContainEqual({
      field: 'days.0.walkingH',
      value: 0,
      why: { code: 'kind of day', kind: 'rest' },
    }));
});

describe('without a stove', () => {
  it.each(['fire ban', 'flight'] as const)('nothing is heated on a day of kind %s', (kind) => {
    const { fuel, notices } = plan([{}, { kind }], { treatment: 'boil' });
    expect(new Set(fuel.boils.map(({ day }) => day))).toEqual(new Set([1, 3]));
    expect(notices.filter(({ code }) => code === 'water-without-stove')).toMatchObject([
      { day: 2, severity: 'warning', params: { boils: true, melts: false } },
    ]);
  });

  it('says so of snow too, and nothing where water is filtered', () => {
    const noticesOf = (campWater: 'snow' | 'source') =>
      plan([{ kind: 'fire ban', campWater }], { treatment: 'filter' }).notices.filter(
        ({ code }) => code === 'water-without-stove',
      );
    expect(noticesOf('snow')).toMatchObject([{ day: 1, params: { boils: false, melts: true } }]);
    expect(noticesOf('source')).toEqual([]);
  });

  it('warns of fuel on a flight, where the trip burns any', () => {
    const flights = (of: ReturnType<typeof plan>) =>
      of.notices.filter(({ code }) => code === 'fuel-not-flown').map(({ day }) => day);
    expect(flights(plan([{ kind: 'flight' }]))).toEqual([1]);
    expect(flights(plan([{ kind: 'flight' }, { kind: 'fire ban' }, { kind: 'fire ban' }]))).toEqual([]);
  });
});

it('a town day has its meals in town, and breakfast the morning after', () =>
  expect(
    plan([{}, { kind: 'town' }])
      .demand.flatMap(({ day, eaters }) =>
        Object.keys(eaters[0]?.mealKcal ?? {}).map((meal) => `${day} ${meal}`),
      )
      .filter((at) => !at.startsWith('1')),
  ).toEqual(['2 breakfast', '3 lunch', '3 snack', '3 dinner', '3 drink']));

it('a trip of before, which has no kinds, is planned as it was', () => {
  const before = threeDays([{ walkingH: 4 }]);
  expect(resolveTrip(before).mealRules).toEqual([]);
  expect(JSON.stringify(plan(before.days))).not.toContain('"kind":"rest"');
});
