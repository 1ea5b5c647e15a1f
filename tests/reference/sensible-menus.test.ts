/*
 * Trips so small that a cook writes their menu down without reckoning, beside what the planner makes of them. The menus are ours (rules of thumb, no source): each case says what a
 * sensible cook would do, and why. "Found" is the quick search; "oldest first" is the plain planner that is fallen back on, which must not look different in kind.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { MenuFinder } from '../../src/lib/menu-search/find-menu.ts';
import type { MenuMeal, TripPlan } from '../../src/lib/planning/model/trip-plan.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { CASES } from '../support/sensible-cases.ts';

type Case = keyof typeof CASES;
type Planned = Readonly<Record<'found' | 'oldest first', TripPlan>>;

const plans = new Map<Case, Planned>();
const finder = new MenuFinder();
afterAll(() => finder.close());
beforeAll(async () => {
  for (const name of Object.keys(CASES) as Case[]) {
    const { trip } = CASES[name];
    const stock = [...CASES[name].stock];
    const { plan } = await finder.find(trip, stock, defaultSettings(), { effort: 'quick' });
    plans.set(name, { found: plan, 'oldest first': planTrip(trip, stock, defaultSettings()) });
  }
}, 300_000);

const HOWS = ['found', 'oldest first'] as const;
const mealsOf = (name: Case, how: keyof Planned, meal: MenuMeal['meal'] = 'dinner'): MenuMeal[] =>
  (plans.get(name)?.[how].menu.meals ?? []).filter((own) => own.meal === meal && own.eaters.length > 0);
const opened = (meals: readonly MenuMeal[]) =>
  meals.map((meal) =>
    meal.opened
      .map(({ pouches, code }) => `${pouches} ${code}`)
      .sort()
      .join(', '),
  );
const plates = (meal: MenuMeal | undefined) =>
  Object.fromEntries(
    (meal?.portions ?? []).map(({ eater, code, servings }) => [eater, `${servings} ${code}`]),
  );
const leftOver = (meals: readonly MenuMeal[]) => meals.reduce((sum, meal) => sum + meal.leftOverServings, 0);
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

describe.each(HOWS)('%s', (how) => {
  test('alone with six sorts for one: a pouch an evening, never the same twice, the oldest first', () => {
    const meals = mealsOf('solo', how);
    expect(opened(meals)).toEqual(['1 D0', '1 D1', '1 D2', '1 D3', '1 D4', '1 D5']);
    for (const meal of meals) expect(meal.portions).toMatchObject([{ servings: 1, style: 'own pouch' }]);
  });

  test('two with pouches for two: one pouch between them, halved', () => {
    const meals = mealsOf('pair', how);
    expect(opened(meals)).toEqual(['1 D0', '1 D1', '1 D2']);
    for (const meal of meals) expect(meal.portions.map(({ servings }) => servings)).toEqual([1, 1]);
  });

  test('a family: the dish that all may eat is one pot for all; of the stew the vegetarian gets none but a dish of their own; the child gets the smallest portion', () => {
    const meals = mealsOf('family', how);
    expect(opened(meals).sort()).toEqual(['1 ALL', '1 MEAT, 1 VEG', '1 MEAT, 1 VEG']);
    for (const meal of meals) {
      const servings = new Map(meal.portions.map((portion) => [portion.eater, portion.servings]));
      expect(servings.size).toBe(4);
      expect(servings.get('Mia')).toBeLessThan(servings.get('Ben') ?? 0);
      expect(plates(meal)['Veg']).not.toContain('MEAT');
    }
    expect(leftOver(meals)).toBe(0);
  });

  test('eight at two tables: each table opens a pouch for its four, in a pot of its own', () => {
    const meals = mealsOf('eight', how);
    expect(meals).toHaveLength(6);
    for (const meal of meals) {
      expect(meal.opened).toMatchObject([{ pouches: 1, style: 'shared pot' }]);
      expect(meal.portions.map(({ servings }) => servings)).toEqual([1, 1, 1, 1]);
    }
    const days = Map.groupBy(meals, ({ day }) => day);
    for (const day of days.values()) expect(new Set(opened(day)).size).toBe(1);
  });

  test('pouches for four, three at the table: the whole pot is eaten in quarters, nobody gets more than a quarter more', () => {
    const meals = mealsOf('fours', how);
    expect(opened(meals)).toEqual(['1 D0', '1 D1']);
    for (const meal of meals) {
      const servings = meal.portions.map((portion) => portion.servings);
      expect(sum(servings)).toBe(4);
      expect(Math.max(...servings) - Math.min(...servings)).toBeLessThanOrEqual(0.25);
    }
  });

  test('too little food: what there is makes whole meals, and the plan says what is short, instead of thin portions everywhere', () => {
    const meals = mealsOf('scarce', how);
    expect(
      meals.map(({ portions }) => sum(portions.map(({ servings }) => servings))).sort((a, b) => a - b),
    ).toEqual([0, 1, 1]);
    expect(plans.get('scarce')?.[how].shortfall.missingKcal).toBeGreaterThan(600);
  });

  test('exclusions that split every dinner: two share a pot, the third has a pouch of their own', () => {
    const meals = mealsOf('split', how);
    expect(opened(meals)).toEqual(['1 G0, 1 N0', '1 G1, 1 N1', '1 G2, 1 N2']);
    for (const [index, meal] of meals.entries())
      expect(plates(meal)).toEqual({ Ada: `1 G${index}`, Ben: `1 G${index}`, Cas: `1 N${index}` });
  });

  test('a hut dinner in the middle: nothing is opened that evening, and nothing carried for it', () => {
    expect(mealsOf('hut', how).map(({ day }) => day)).toEqual([1, 3]);
    expect(opened(mealsOf('hut', how))).toEqual(['1 D0', '1 D1']);
    expect(plans.get('hut')?.[how].shortfall.missingKcal).toBe(0);
  });

  test('a day without a stove: the only cold dish is kept for it, though others would be older', () => {
    expect(opened(mealsOf('withoutStove', how))).toEqual(['1 HOT1', '1 COLD', '1 HOT2']);
    expect(plans.get('withoutStove')?.[how].fuel.boils.filter(({ day }) => day === 2)).toEqual([]);
  });

  test('a dish fixed to rest days stands on the rest day, and no other day takes it', () => {
    const meals = mealsOf('fixed', how);
    expect(opened(meals)[1]).toBe('1 P');
    expect(opened(meals).filter((dish) => dish === '1 P')).toHaveLength(1);
  });

  test('only extras for lunch: lunch is made of bars and nuts by the piece, up to what is planned', () => {
    for (const meal of mealsOf('extrasForLunch', how, 'lunch')) {
      expect(meal.opened.every(({ role }) => role === 'extra')).toBe(true);
      expect(meal.eatenKcal / meal.targetKcal).toBeGreaterThan(0.9);
      expect(meal.eatenKcal / meal.targetKcal).toBeLessThan(1.15);
      expect(new Set(meal.portions.map(({ code }) => code)).size).toBeLessThanOrEqual(3);
    }
  });

  test('pouches for four for one person: a dinner is better than none; they eat what a person eats, and the rest is shown as lost', () => {
    const meals = mealsOf('foursForOne', how);
    for (const meal of meals) {
      const [portion, ...others] = meal.portions;
      expect(others).toEqual([]);
      expect(portion?.servings).toBeGreaterThanOrEqual(1);
      expect(portion?.servings).toBeLessThanOrEqual(1.25);
      expect(meal.leftOverServings).toBeCloseTo(4 - (portion?.servings ?? 0), 9);
    }
  });

  test('a child at a lunch of some 260 kcal with pouches of 600: half a pouch', () => {
    const [lunch] = mealsOf('childAtLunch', how, 'lunch');
    expect(plates(lunch)).toEqual({ Mia: '0.5 L0' });
    expect(lunch?.leftOverServings).toBe(0.5);
  });

  test('a bag of six snacks for three days: opened once, two a day, open in between', () => {
    const snacks = mealsOf('sixSnacks', how, 'snack');
    expect(snacks.map(({ portions }) => portions.map(({ pieces }) => pieces))).toEqual([[2], [2], [2]]);
    expect(opened(snacks)).toEqual(['1 BAG', '', '']);
    expect(snacks.map(({ fromOpen }) => fromOpen.map(({ sinceDay }) => sinceDay))).toEqual([[], [1], [1]]);
    expect(leftOver(snacks)).toBe(0);
  });

  test('raw-dried stew: cooked in a pot on the day with a stove, never from the pouch, never on the day without', () => {
    const meals = mealsOf('raw', how);
    expect(opened(meals)).toEqual(['1 RAW', '1 COLD']);
    expect(meals[0]?.opened[0]?.style).toBe('shared pot');
  });
});

test('a disliked dish that is the oldest stays at home as long as others feed the evening, and the reason says so', () => {
  const meals = mealsOf('disliked', 'found');
  expect(opened(meals).sort()).toEqual(['1 NEW1', '1 NEW2']);
  for (const meal of meals)
    expect(meal.opened[0]?.reason).toMatchObject({
      code: 'next best',
      recipe: 'Mushroom risotto',
      cost: 'tastes',
    });
});

test('the same cases come to the same menus, to the byte', async () => {
  for (const name of ['family', 'sixSnacks'] as const) {
    const { trip, stock } = CASES[name];
    const again = await finder.find(trip, [...stock], defaultSettings(), { effort: 'quick' });
    expect(JSON.stringify(again.plan.menu)).toBe(JSON.stringify(plans.get(name)?.found.menu));
  }
}, 60_000);
