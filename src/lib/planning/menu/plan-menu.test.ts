import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip, ONE_GROUP } from '../../../../tests/support/examples.ts';
import { demandOf } from '../demand/day-demand.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import { defaultSettings, type Settings } from '../model/settings.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import type { TripInput } from '../model/trip.ts';
import { plannedLegs } from '../route/trip-legs.ts';
import { mealBurdens } from '../stove/meal-burdens.ts';
import { firstExpired } from './first-expired.ts';
import type { MealChoice, MenuProblem } from './menu-problem.ts';
import { completeMenu, poseMenu } from './plan-menu.ts';

function planned(
  changes: Partial<TripInput>,
  stock: PouchLot[],
  choose: (problem: MenuProblem) => readonly MealChoice[] = firstExpired.choose,
  settings: Settings = defaultSettings(),
) {
  const given = exampleTrip(changes);
  const trip = resolveTrip(given);
  const legs = plannedLegs(given, trip, []);
  const demand = demandOf(trip, legs, () => 0, settings);
  const posed = poseMenu(trip, demand, stock, mealBurdens(trip, legs, demand, settings), settings);
  return { ...completeMenu(trip, stock, posed, choose(posed.problem), 'test'), problem: posed.problem };
}
type Planned = ReturnType<typeof planned>;
const mealAt = ({ menu }: Planned, day: number, meal: string, group = ONE_GROUP) =>
  menu.meals.find((entry) => entry.day === day && entry.meal === meal && entry.group === group) ??
  expect.fail(`no ${meal} on day ${day}`);
const openedAt = (result: Planned, day: number, meal: string, group?: string) =>
  mealAt(result, day, meal, group).opened.map(({ code, pouches }) => `${pouches} ${code}`);
const platesAt = (result: Planned, day: number, meal: string, group?: string) =>
  mealAt(result, day, meal, group).portions.map(
    ({ eater, code, servings }) => `${eater} ${servings} ${code}`,
  );
const noticesOf = ({ notices }: Planned, code: string) => notices.filter((notice) => notice.code === code);
const nothing = () => [];
const oneDinner: Partial<TripInput> = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' };

describe('meals that are listed', () => {
  const menu: TripInput['menu'] = [
    { day: 1, meal: 'dinner', locked: true, opened: [{ code: 'D1', pouches: 2 }] },
  ];

  it('stand, with their pouches out of reach of the planner', () => {
    const result = planned({ firstMeal: 'dinner', menu }, [exampleLot({ pouches: 2 })]);
    expect(openedAt(result, 1, 'dinner')).toEqual(['2 D1']);
    expect(openedAt(result, 2, 'dinner')).toEqual([]);
    expect(mealAt(result, 1, 'dinner').locked).toBe(true);
  });

  it('say what of them is gone, expired or too few, and serve the rest', () => {
    const gone = planned({ ...oneDinner, menu }, []);
    expect(gone.notices.find((notice) => notice.lot === 'D1')?.code).toBe('lot-gone');
    const old = planned({ ...oneDinner, menu }, [exampleLot({ bestBefore: '2027-07-01' })]);
    expect(old.notices.find((notice) => notice.lot === 'D1')).toMatchObject({
      code: 'lot-past-date',
      params: { bestBefore: '2027-07-01' },
    });
    expect(openedAt(old, 1, 'dinner')).toEqual([]);
    const few = planned({ ...oneDinner, menu }, [exampleLot({ pouches: 1 })]);
    expect(few.notices.find((notice) => notice.lot === 'D1')).toMatchObject({
      code: 'too-few-pouches',
      params: { wanted: 2, free: 1 },
    });
    expect(openedAt(few, 1, 'dinner')).toEqual(['1 D1']);
  });

  it('say so where they lie outside the trip, or everyone eats elsewhere', () => {
    const stock = [exampleLot({ pouches: 1 })];
    const opened = [{ code: 'D1', pouches: 1 }];
    const outside = planned({ ...oneDinner, menu: [{ day: 1, meal: 'breakfast', opened }] }, stock);
    expect(noticesOf(outside, 'meal-outside-trip')).toHaveLength(1);
    expect(openedAt(outside, 1, 'dinner')).toEqual(['1 D1']);
    const inHut = planned(
      {
        ...oneDinner,
        mealRules: [{ meals: ['dinner'], elsewhere: 'everyone' }],
        menu: [{ day: 1, meal: 'dinner', opened }],
      },
      stock,
    );
    expect(noticesOf(inHut, 'meal-eaten-elsewhere')).toHaveLength(1);
    expect(mealAt(inHut, 1, 'dinner')).toMatchObject({ elsewhere: ['Ada', 'Bo'], opened: [], targetKcal: 0 });
  });

  it('serve nobody what they exclude, even by hand', () => {
    const party = [{ name: 'Ada', allergens: ['milk' as const] }, { name: 'Bo' }];
    const stock = [exampleLot({ allergens: ['milk'] })];
    const shared = planned({ ...oneDinner, party, menu }, stock);
    expect(mealAt(shared, 1, 'dinner').portions.map((portion) => portion.eater)).toEqual(['Bo']);
    const portions = ['Ada', 'Bo'].map((eater) => ({ eater, code: 'D1', servings: 1 }));
    const byHand = planned(
      {
        ...oneDinner,
        party,
        menu: [{ day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 1 }], portions }],
      },
      stock,
    );
    expect(platesAt(byHand, 1, 'dinner')).toEqual(['Bo 1 D1']);
    expect(noticesOf(byHand, 'portion-not-for-eater')).toMatchObject([{ eater: 'Ada', lot: 'D1' }]);
    expect(mealAt(byHand, 1, 'dinner').leftOver).toEqual([{ code: 'D1', servings: 1, energyKcal: 600 }]);
  });

  it('without portions are shared in quarters, and those of an older menu are marked', () => {
    const older: TripInput['menu'] = [
      { day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 1, why: 'oldest pouch for this meal' }] },
    ];
    const result = planned(
      { ...oneDinner, party: [{ name: 'Ada' }, { name: 'Bo' }, { name: 'Cy' }], menu: older },
      [exampleLot({ servingsPerPouch: 2 })],
    );
    expect(platesAt(result, 1, 'dinner')).toEqual(['Ada 0.75 D1', 'Bo 0.75 D1', 'Cy 0.5 D1']);
    expect(mealAt(result, 1, 'dinner').opened[0]?.reason).toEqual({ code: 'from an older menu' });
    expect(noticesOf(result, 'shared-out-anew')).toMatchObject([{ params: { meals: 1 } }]);
  });

  it('give each one main dish where there are as many, those with least choice first', () => {
    const party = [{ name: 'Ada' }, { name: 'Bo', diets: ['vegetarian' as const] }, { name: 'Cy' }];
    const opened = [
      { code: 'beef', pouches: 1 },
      { code: 'dal', pouches: 1 },
    ];
    const result = planned({ ...oneDinner, party, menu: [{ day: 1, meal: 'dinner', opened }] }, [
      exampleLot({ code: 'beef', recipe: 'beef pan', servingsPerPouch: 2 }),
      exampleLot({ code: 'dal', recipe: 'dal', diets: ['vegan'], servingsPerPouch: 1 }),
    ]);
    expect(platesAt(result, 1, 'dinner')).toEqual(['Ada 1 beef', 'Cy 1 beef', 'Bo 1 dal']);
  });

  it('with more handed out than is opened are cut, and say so', () => {
    const portions = [
      { eater: 'Ada', code: 'D1', servings: 1.5 },
      { eater: 'Bo', code: 'D1', servings: 1 },
    ];
    const result = planned(
      { ...oneDinner, menu: [{ day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 1 }], portions }] },
      [exampleLot({ servingsPerPouch: 2 })],
    );
    expect(platesAt(result, 1, 'dinner')).toEqual(['Ada 1 D1', 'Bo 1 D1']);
    expect(noticesOf(result, 'portions-beyond-pouches')).toMatchObject([
      { params: { wanted: 2.5, there: 2 } },
    ]);
  });

  it('in part leave the rest of the table to the planner', () => {
    const opened = [{ code: 'A', pouches: 1, style: 'own pouch' as const, locked: true }];
    const portions = [{ eater: 'Ada', code: 'A', servings: 1, style: 'own pouch' as const }];
    const own = { servingsPerPouch: 1, energyKcal: 700, pouches: 1 };
    const result = planned(
      { ...oneDinner, menu: [{ day: 1, meal: 'dinner', opened, portions, toFill: true }] },
      [exampleLot({ code: 'A', ...own }), exampleLot({ code: 'B', recipe: 'dal', ...own })],
    );
    expect(platesAt(result, 1, 'dinner').sort()).toEqual(['Ada 1 A', 'Bo 1 B']);
    expect(mealAt(result, 1, 'dinner').opened.map(({ code, locked }) => [code, locked])).toEqual([
      ['A', true],
      ['B', false],
    ]);
  });

  it('of one table before are dealt to the groups that there are now', () => {
    const party = [{ name: 'Ada' }, { name: 'Bo' }, { name: 'Cy' }, { name: 'Di' }];
    const cookGroups = [
      { name: 'first', eaters: ['Ada', 'Bo'] },
      { name: 'second', eaters: ['Cy', 'Di'] },
    ];
    const result = planned(
      {
        ...oneDinner,
        party,
        cookGroups,
        menu: [{ day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 2 }] }],
      },
      [exampleLot({ servingsPerPouch: 2 })],
    );
    expect(platesAt(result, 1, 'dinner', 'first')).toEqual(['Ada 1 D1', 'Bo 1 D1']);
    expect(platesAt(result, 1, 'dinner', 'second')).toEqual(['Cy 1 D1', 'Di 1 D1']);
  });
});

describe('a pot', () => {
  it('has the energy of its mean, whatever lot a row is from', () => {
    const lots = [
      exampleLot({ code: 'thin', energyKcal: 400, servingsPerPouch: 1 }),
      exampleLot({ code: 'rich', energyKcal: 800, servingsPerPouch: 1 }),
    ];
    const result = planned(oneDinner, lots, ({ tasks }) =>
      tasks.slice(0, 1).map(({ day, meal, group }) => ({
        day,
        meal,
        group,
        dishes: [
          {
            recipe: 'bean stew',
            role: 'main',
            style: 'shared pot',
            opened: lots.map((lot) => ({ lot, pouches: 1 })),
            portions: lots.map((lot, index) => ({ eater: ['Ada', 'Bo'][index] ?? '', lot, servings: 0.75 })),
          },
        ],
      })),
    );
    const meal = mealAt(result, 1, 'dinner');
    expect(meal.portions.map(({ energyKcal }) => energyKcal)).toEqual([450, 450]);
    expect(meal.leftOver).toEqual([
      { code: 'thin', servings: 0.25, energyKcal: 150 },
      { code: 'rich', servings: 0.25, energyKcal: 150 },
    ]);
  });
});

describe('dry food', () => {
  const bars = exampleLot({
    code: 'bars',
    recipe: 'nut bars',
    mealKinds: ['snack'],
    waterKind: 'none',
    waterMl: 0,
    steepMin: 0,
    pieces: 6,
    servingsPerPouch: 3,
    energyKcal: 200,
  });
  const snacksOn =
    (...days: number[]) =>
    ({ tasks }: MenuProblem): MealChoice[] =>
      tasks
        .filter(({ day, meal }) => meal === 'snack' && days.includes(day))
        .map(({ day, meal, group }) => ({
          day,
          meal,
          group,
          dishes: [
            {
              recipe: 'nut bars',
              role: 'extra',
              style: 'own pouch',
              opened: day === days[0] ? [{ lot: bars, pouches: 1 }] : [],
              portions: [{ eater: 'Ada', lot: bars, servings: 1 }],
            },
          ],
        }));

  it('stays open for its days, is eaten on, and what is left then is left over', () => {
    const result = planned({ dayCount: 3 }, [bars], snacksOn(1, 2));
    expect(mealAt(result, 1, 'snack')).toMatchObject({
      opened: [{ code: 'bars', pouches: 1 }],
      portions: [{ eater: 'Ada', servings: 1, pieces: 2 }],
      staysOpen: [{ code: 'bars', servings: 2, untilDay: 3 }],
      leftOver: [],
    });
    expect(mealAt(result, 2, 'snack')).toMatchObject({
      opened: [],
      fromOpen: [{ code: 'bars', servings: 1, sinceDay: 1 }],
      staysOpen: [],
      leftOver: [{ code: 'bars', servings: 1, energyKcal: 200 }],
    });
  });

  it('is not eaten when it has been open for too long', () => {
    const result = planned({ dayCount: 5 }, [bars], snacksOn(1, 4));
    expect(mealAt(result, 1, 'snack').leftOver).toMatchObject([{ code: 'bars', servings: 2 }]);
    expect(mealAt(result, 4, 'snack').portions).toEqual([]);
    expect(noticesOf(result, 'portions-beyond-pouches')).toHaveLength(1);
  });

  it('of a drink takes its water when it is drunk', () => {
    const cocoa = exampleLot({
      code: 'cocoa',
      recipe: 'cocoa',
      mealKinds: ['drink'],
      servingsPerPouch: 4,
      waterMl: 200,
      waterKind: 'hot',
    });
    const result = planned({}, [cocoa], ({ tasks }) =>
      tasks
        .filter(({ meal }) => meal === 'drink')
        .map(({ day, meal, group }) => ({
          day,
          meal,
          group,
          dishes: [
            {
              recipe: 'cocoa',
              role: 'drink',
              style: 'own pouch',
              opened: day === 1 ? [{ lot: cocoa, pouches: 1 }] : [],
              portions: [{ eater: 'Ada', lot: cocoa, servings: 1 }],
            },
          ],
        })),
    );
    expect(mealAt(result, 1, 'drink').opened[0]?.waterMl).toBe(200);
    expect(mealAt(result, 2, 'drink').fromOpen[0]?.waterMl).toBe(200);
  });
});

describe('who eats elsewhere', () => {
  it('needs nothing of that meal, and the others eat', () => {
    const result = planned({ ...oneDinner, mealRules: [{ meals: ['dinner'], elsewhere: ['Bo'] }] }, [
      exampleLot({ servingsPerPouch: 1 }),
    ]);
    expect(mealAt(result, 1, 'dinner')).toMatchObject({ eaters: ['Ada'], elsewhere: ['Bo'] });
    expect(result.menu.energy.find(({ eater }) => eater === 'Bo')?.targetKcal).toBeLessThan(
      result.menu.energy.find(({ eater }) => eater === 'Ada')?.targetKcal ?? 0,
    );
    expect(mealAt(result, 1, 'dinner').portions.map(({ eater }) => eater)).toEqual(['Ada']);
  });
});

describe('the reserve', () => {
  const short = exampleLot({ code: 'short', bestBefore: '2027-09-01', pouches: 5 });
  const long = exampleLot({ code: 'long', recipe: 'dal', pouches: 3, servingsPerPouch: 1, energyKcal: 700 });

  it('is what keeps longest, is not planned to be eaten, and counts as used', () => {
    const result = planned({ reserveMeals: 1 }, [short, long]);
    expect(result.menu.reserve).toMatchObject([{ code: 'long', pouches: 2 }]);
    expect(result.problem.stock.map(({ code, pouches }) => [code, pouches])).toEqual([
      ['short', 5],
      ['long', 1],
    ]);
  });

  it('says how much it is short', () => {
    const result = planned({ reserveMeals: 3 }, [exampleLot({ pouches: 1 })], nothing);
    expect(noticesOf(result, 'reserve-short')).toHaveLength(1);
  });
});

describe('what is said', () => {
  it('names the allergen wall where it leaves someone short', () => {
    const result = planned({ ...oneDinner, party: [{ name: 'Ada', allergens: ['nuts'] }, { name: 'Bo' }] }, [
      exampleLot({ allergens: ['nuts'], servingsPerPouch: 1, energyKcal: 700 }),
    ]);
    const notice = result.notices.find((entry) => entry.eater === 'Ada');
    expect(notice).toMatchObject({ code: 'hungry-by-exclusions', params: { allergens: ['nuts'], lots: 1 } });
    expect(noticesOf(result, 'hungry-by-exclusions').map(({ eater }) => eater)).toEqual(['Ada']);
  });

  it('names lots with unstated allergens where someone avoids one', () => {
    const result = planned({ ...oneDinner, party: [{ name: 'Ada', allergens: ['nuts'] }] }, [
      exampleLot({ allergens: undefined }),
    ]);
    expect(noticesOf(result, 'allergens-undeclared').map(({ params }) => params)).toEqual([
      { lots: ['D1'], avoiders: ['Ada'] },
    ]);
  });

  it('names the cook groups that are proposed', () => {
    const party = Array.from({ length: 8 }, (_, index) => ({ name: `P${index + 1}` }));
    expect(noticesOf(planned({ ...oneDinner, party }, [], nothing), 'cook-groups-proposed')).toMatchObject([
      {
        params: {
          groups: [
            ['P1', 'P2', 'P3', 'P4'],
            ['P5', 'P6', 'P7', 'P8'],
          ],
        },
      },
    ]);
  });

  it('warns of raw food that a hand put where there is no stove', () => {
    const menu = [{ day: 1, meal: 'dinner' as const, opened: [{ code: 'D1', pouches: 1 }] }];
    const result = planned({ ...oneDinner, mealRules: [{ stop: 'no stove' }], menu }, [
      exampleLot({ cookAfter: 'cook', waterKind: 'cold' }),
    ]);
    expect(noticesOf(result, 'needs-stove')).toMatchObject([{ lot: 'D1' }]);
  });
});
