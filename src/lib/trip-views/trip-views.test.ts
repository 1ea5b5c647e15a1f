/* The views of one plan, tested together: they have to agree with the plan and with each other. */
import { describe, expect, it } from 'vitest';
import { keepMenu } from '../planning/menu/edit-menu.ts';
import { pouchesNeeded } from '../planning/menu/plan-menu.ts';
import { PouchLot } from '../planning/model/pouch-lot.ts';
import { pouchGrossG } from '../planning/model/pouch-totals.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { notice, NOTICE_KINDS } from '../planning/model/notices.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import { Trip } from '../planning/model/trip.ts';
import type { MealKind } from '../planning/model/words.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { cardView, dayToOpen, servingsOf } from './card.ts';
import { shownMoney } from './cost.ts';
import { energyByDay } from './energy.ts';
import { LOAD_PARTS, packDays, peakLoads, heaviestOn } from './loads.ts';
import { isFromBefore, menuByDay } from './menu.ts';
import { missingByDay } from './missing.ts';
import { setAsideLines, setAsideMatches } from './set-aside.ts';
import { showTerm } from './show-term.ts';
import { shownPlaces } from './places.ts';
import { verdictOf, worstFirst } from './standing.ts';
import { tripDays } from './trip-days.ts';
import { drinkGroups } from './water.ts';

const lot = (code: string, meals: MealKind[], other: Partial<PouchLot> = {}): PouchLot =>
  PouchLot.parse({
    code,
    recipe: `Recipe ${code}`,
    mealKinds: meals,
    sealedOn: '2026-01-10',
    bestBefore: '2027-01-10',
    pouches: 8,
    servingsPerPouch: 1,
    dryWeightG: 120,
    energyKcal: 550,
    waterMl: 300,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 14,
    allergens: [],
    costMinor: 200,
    ...other,
  });
const STOCK = [
  lot('D1', ['dinner']),
  lot('D2', ['dinner'], { allergens: ['milk'] }),
  lot('B1', ['breakfast'], { waterKind: 'hot' }),
  lot('L1', ['lunch', 'snack'], { waterKind: 'cold' }),
];
const TRIP = Trip.parse({
  name: 'Three days',
  startDate: '2026-07-04',
  dayCount: 3,
  party: [
    { name: 'Ada', baseLoadG: 11_000 },
    { name: 'Ben', allergens: ['milk'] },
  ],
  days: [{}, { campWater: 'dry' }],
});
const plan = planTrip(TRIP, STOCK, defaultSettings());
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('heaviestOn', () => {
  it('names the heaviest pack of day 1', () => {
    const first = plan.carry.loads.filter(({ day }) => day === 1);
    expect(heaviestOn(plan.carry, 1)?.peakG).toBe(Math.max(...first.map(({ peakG }) => peakG)));
    expect(heaviestOn(plan.carry, 1)?.eater).toBe('Ada');
    expect(heaviestOn(plan.carry, 9)).toBeUndefined();
  });
});

describe('notices', () => {
  const gone = notice('lot-gone', {}, { day: 1, meal: 'dinner', lot: 'D1' });
  const past = notice('meal-outside-trip', {}, { day: 2, meal: 'lunch' });
  const limits = notice('body-data-limits', {});
  const stove = notice('stove-safety', {});

  it('come gravest first, else in their order', () => {
    const codes = worstFirst([limits, past, gone, stove, gone]).map(({ code }) => code);
    expect(codes).toEqual(['lot-gone', 'lot-gone', 'stove-safety', 'meal-outside-trip', 'body-data-limits']);
  });

  it('lead to a page that there is', () => {
    const pages = shownPlaces().flatMap((place) => place.pages.map(({ slug }) => slug));
    expect(new Set(pages).size).toBe(pages.length);
    for (const { page } of Object.values(NOTICE_KINDS)) expect(pages).toContain(page);
  });

  it('make a verdict', () => {
    const verdict = (...notices: TripPlan['notices']) => verdictOf({ notices }, 'metric');
    expect(verdict().severity).toBe('good');
    expect(verdict(limits).severity).toBe('good');
    expect(verdict(past, gone, gone)).toEqual({
      severity: 'attention',
      text: 'The dinner on day 1 uses lot D1, which is no longer on the shelf. Choose another pouch.',
      more: 1,
    });
    expect(verdict(limits, past)).toMatchObject({ severity: 'caution', more: 0 });
  });
});

it('energyByDay adds up to the totals of the plan', () => {
  const days = energyByDay(plan, TRIP.planFor);
  expect(days.map(({ date }) => date)).toEqual(['2026-07-04', '2026-07-05', '2026-07-06']);
  expect(sum(days.map(({ targetKcal }) => targetKcal))).toBeCloseTo(plan.totals.targetKcal, 1);
  expect(sum(days.map(({ eatenKcal }) => eatenKcal))).toBeCloseTo(plan.totals.eatenKcal, 1);
  expect(sum(days.map(({ missingKcal }) => missingKcal))).toBeCloseTo(plan.totals.missingKcal, 1);
});

describe('menuByDay', () => {
  it('shows who eats what, adding up to what is eaten', () => {
    const meals = menuByDay(TRIP, plan.menu, tripDays(plan)).flatMap((day) => day.meals);
    expect(meals).toHaveLength(plan.menu.meals.length);
    for (const meal of meals)
      expect(
        sum(meal.dishes.flatMap(({ shares }) => shares.map(({ energyKcal }) => energyKcal))),
      ).toBeCloseTo(meal.eatenKcal, 0);
  });

  it('keeps in view what a meal lists and the shelf cannot serve', () => {
    const listed = keepMenu(TRIP, plan.menu);
    const poorer = planTrip(
      listed,
      STOCK.filter(({ code }) => code !== 'B1'),
      defaultSettings(),
    );
    const breakfast = menuByDay(listed, poorer.menu, tripDays(poorer))[1]?.meals[0];
    expect(breakfast?.dishes.flatMap(({ rows }) => rows)).toEqual([
      { code: 'B1', pouches: expect.any(Number), served: undefined },
    ]);
  });
});

describe('dishes of a meal', () => {
  it('say of each person what they have of it, in pouches where each has their own', () => {
    const own = planTrip({ ...TRIP, servingStyle: 'own pouch' }, STOCK, defaultSettings());
    const dinner = menuByDay(TRIP, own.menu, tripDays(own))[0]?.meals.find(({ meal }) => meal === 'dinner');
    const dish = dinner?.dishes.find(({ role }) => role === 'main');
    expect(dish?.style).toBe('own pouch');
    for (const plate of dish?.plates ?? []) expect(plate.pouches).toBe(plate.servings);
    const pot = planTrip({ ...TRIP, servingStyle: 'shared pot' }, STOCK, defaultSettings());
    const shared = menuByDay(TRIP, pot.menu, tripDays(pot))[0]?.meals.find(({ meal }) => meal === 'dinner');
    for (const plate of shared?.dishes.find(({ role }) => role === 'main')?.plates ?? [])
      expect(plate.pouches).toBeUndefined();
  });

  it('open what is eaten, stays open or is left over', () => {
    for (const meal of menuByDay(TRIP, plan.menu, tripDays(plan)).flatMap((day) => day.meals)) {
      const opened = sum(meal.opened.map(({ servings }) => servings));
      const open = sum(meal.fromOpen.map(({ servings }) => servings));
      const there = sum(
        meal.dishes.map(
          ({ shares, staysOpen, leftOverServings }) =>
            sum(shares.map(({ servings }) => servings)) + (staysOpen?.servings ?? 0) + leftOverServings,
        ),
      );
      expect(there).toBeGreaterThanOrEqual(opened + open - 1e-6);
    }
  });

  it('name who gets nothing, and who eats elsewhere', () => {
    const away = { days: [1], meals: ['dinner' as const], elsewhere: ['Ada'] };
    const only = STOCK.filter(({ code }) => code === 'D2');
    const poor = planTrip({ ...TRIP, mealRules: [away] }, only, defaultSettings());
    const meals = menuByDay(TRIP, poor.menu, tripDays(poor)).flatMap((day) => day.meals);
    const dinners = meals.filter(({ meal }) => meal === 'dinner');
    expect(dinners[0]).toMatchObject({ elsewhere: ['Ada'], unfed: ['Ben'] });
    expect(dinners[1]).toMatchObject({ elsewhere: [], unfed: ['Ben'] });
    expect(meals.find(({ meal }) => meal === 'snack')?.unfed).toEqual([]);
  });
});

it('a menu of an earlier version is told from one of now', () => {
  expect(isFromBefore(plan.menu)).toBe(false);
  const before = planTrip(
    Trip.parse({
      ...TRIP,
      menu: [
        { day: 1, meal: 'dinner', opened: [{ code: 'D1', pouches: 2, why: 'the oldest that suits all' }] },
      ],
    }),
    STOCK,
    defaultSettings(),
  );
  expect(isFromBefore(before.menu)).toBe(true);
});

describe('packDays', () => {
  it('the pouches left weigh what the plan says of food and of their packaging', () => {
    const lots = new Map(STOCK.map((other) => [other.code, other]));
    for (const eater of ['Ada', 'Ben'])
      for (const day of packDays(plan.carry, eater)) {
        const grossG = day.pouchesLeft.map(
          ({ code, pouches }) => pouches * pouchGrossG(lots.get(code) as PouchLot),
        );
        const tareG = day.pouchesLeft.map(
          ({ code, pouches }) => pouches * (lots.get(code) as PouchLot).tareG,
        );
        expect(sum(grossG) - sum(tareG)).toBeCloseTo(day.foodG, 1);
        expect(sum(LOAD_PARTS.map(({ key }) => day[key]))).toBeCloseTo(day.totalG, 1);
      }
    expect(packDays(plan.carry, 'Nobody')).toEqual([]);
  });

  it('peakLoads finds the heaviest day of each', () => {
    expect(peakLoads(plan.carry).map(({ eater, day }) => [eater, day])).toEqual([
      ['Ada', 2],
      ['Ben', 2],
    ]);
  });
});

it('cardView gives each share its energy', () => {
  const lines = cardView(plan).days.flatMap(({ meals }) => meals.flatMap(({ pouches }) => pouches));
  expect(sum(lines.flatMap(({ shares }) => shares.map(({ energyKcal }) => energyKcal)))).toBeCloseTo(
    plan.totals.eatenKcal,
    0,
  );
  for (const { shares } of lines) for (const share of shares) expect(share.energyKcal).toBeGreaterThan(0);
});

it('the card opens at the day of a date', () => {
  const days = cardView(plan).days;
  const [first, second] = days;
  expect(dayToOpen(days, second?.date ?? '')).toBe(2);
  expect(dayToOpen(days, '2000-01-01')).toBe(first?.day);
  expect(dayToOpen(days, '2099-01-01')).toBe(days.at(-1)?.day);
  expect(dayToOpen([], '2099-01-01')).toBeUndefined();
});

it('a line of the card holds what is eaten and what is left over', () => {
  const [line] = cardView(plan).days.flatMap(({ meals }) => meals.flatMap(({ pouches }) => pouches));
  if (!line) throw new Error('The card has no line.');
  const shares = [1.5, 0.75].map((servings) => ({ eater: 'Ada', servings, energyKcal: 0 }));
  expect(servingsOf({ ...line, shares, leftOverServings: 0.25, staysOpenServings: 0 })).toBe(2.5);
});

it('missingByDay lists every day, also those that have enough', () => {
  expect(missingByDay(plan.shortfall, tripDays(plan)).map(({ day }) => day)).toEqual([1, 2, 3]);
  expect(missingByDay(plan.shortfall, tripDays(plan)).flatMap(({ meals }) => meals)).toEqual(
    plan.shortfall.meals,
  );
});

it('drinkGroups says once what is alike', () => {
  const [day] = plan.water.days;
  const [first, second] = day?.drink ?? [];
  if (!day || !first || !second) throw new Error('the plan has no day');
  expect(drinkGroups(day)).toEqual([{ eaters: ['Ada', 'Ben'], ml: first.ml }]);
  const thirsty = { ...second, ml: { ...second.ml, value: second.ml.value + 500 } };
  expect(drinkGroups({ ...day, drink: [first, thirsty] }).map(({ eaters }) => eaters)).toEqual([
    ['Ada'],
    ['Ben'],
  ]);
});

describe('setAsideLines', () => {
  const recipes = new Map([['D1', 'Recipe D1']]);

  it('shows need and promise side by side', () => {
    expect(
      setAsideLines(
        [{ code: 'D1', pouches: 3 }],
        [
          { code: 'B1', pouches: 1 },
          { code: 'D1', pouches: 2 },
        ],
        recipes,
      ),
    ).toEqual([
      { code: 'B1', recipe: '', place: '', needed: 0, reserved: 1, surplus: 1 },
      { code: 'D1', recipe: 'Recipe D1', place: '', needed: 3, reserved: 2, surplus: -1 },
    ]);
  });

  it('match only lot by lot', () => {
    const need = pouchesNeeded(plan.menu);
    expect(setAsideMatches(need, [...need].reverse())).toBe(true);
    expect(setAsideMatches(need, need.slice(1))).toBe(false);
    expect(setAsideMatches([{ code: 'D1', pouches: 2 }], [{ code: 'D2', pouches: 2 }])).toBe(false);
  });
});

it('shownMoney says how much of the cost is known', () => {
  const totals = { ...plan.totals, costMinor: 1250 };
  expect(shownMoney({ ...totals, costKnownShare: 1 }, 'EUR')).toBe('The opened pouches cost €12.50.');
  expect(shownMoney({ ...totals, costKnownShare: 0.6 }, 'EUR')).toContain('for 60% of the servings');
  const { costMinor: _, ...unknown } = totals;
  expect(shownMoney(unknown, 'EUR')).toBeUndefined();
});

it.each([
  [{ value: 1600, unit: 'ml' }, '1,600 ml', '54.1 fl oz'],
  [{ value: 50, unit: '%' }, '50%', '50%'],
  [{ value: 45.76, unit: 'kJ/g' }, '45.8 kJ/g', '45.8 kJ/g'],
  [{ value: 10, unit: '°C' }, '10 °C', '50 °F'],
])('showTerm(%j) is %s or %s', (term, metric, us) => {
  expect(showTerm(term, 'metric')).toBe(metric);
  expect(showTerm(term, 'us')).toBe(us);
});
