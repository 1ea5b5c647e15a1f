import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { planTrip } from '../plan-trip.ts';
import { defaultSettings } from '../model/settings.ts';
import type { Nutrient } from '../model/words.ts';

const settings = defaultSettings();
const label = { proteinG: 20, carbohydrateG: 90, fatG: 15, fibreG: 8, sodiumMg: 900 };
const dinnerOnly = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' } as const;

/** What one nutrient of Ada's day comes to. */
const ofAda = (
  nutrient: Nutrient,
  trip: Parameters<typeof exampleTrip>[0],
  lots: Parameters<typeof exampleLot>[0][],
) => {
  const plan = planTrip(
    exampleTrip(trip),
    lots.map((lot) => exampleLot(lot)),
    settings,
  );
  const day = plan.nutrition.find(({ eater }) => eater === 'Ada');
  return { day, eaten: day?.nutrients.find((row) => row.nutrient === nutrient), plan };
};

describe('a dinner of one lot', () => {
  const { eaten, day, plan } = ofAda('protein', dinnerOnly, [label]);
  const servings = plan.menu.meals[0]?.portions.find(({ eater }) => eater === 'Ada')?.servings ?? 0;

  it('brings its servings times the label', () => {
    expect(servings).toBeGreaterThan(0);
    expect(eaten).toMatchObject({ amount: servings * 20, statedShare: 1 });
    // 20 g at 4 kcal of a serving of 600 kcal
    expect(eaten?.energyShare).toBeCloseTo(80 / 600, 3);
  });

  it('is no whole day, so that grams are not held against one', () => {
    expect(day?.mealShare).toBeLessThan(0.5);
    expect(eaten?.range?.unit).toBe('share of energy');
    expect(eaten?.standing).toBe('within');
  });
});

it('what nobody stated is not counted as none', () => {
  const { eaten } = ofAda('sodium', dinnerOnly, [{ ...label, sodiumMg: undefined }]);
  expect(eaten).toMatchObject({ amount: 0, statedShare: 0, standing: 'no range' });
  const { eaten: fat } = ofAda('fat', dinnerOnly, [{ ...label, fatG: undefined }]);
  expect(fat).toMatchObject({ amount: 0, statedShare: 0, standing: 'unknown' });
});

it('a pot of two lots is eaten as their mean', () => {
  const trip = { ...dinnerOnly, servingStyle: 'shared pot' as const };
  const lots = [
    { ...label, code: 'A', pouches: 1, servingsPerPouch: 1, proteinG: 10 },
    { ...label, code: 'B', pouches: 1, servingsPerPouch: 1, proteinG: 30 },
  ];
  const { plan } = ofAda('protein', trip, lots);
  const [meal] = plan.menu.meals;
  const styles = new Set(meal?.portions.map(({ style }) => style));
  expect([...styles]).toEqual(['shared pot']);
  for (const { eater, nutrients } of plan.nutrition) {
    const servings = meal?.portions
      .filter((row) => row.eater === eater)
      .reduce((sum, row) => sum + row.servings, 0);
    expect(nutrients[0]?.amount).toBeCloseTo((servings ?? 0) * 20, 2);
  }
});

it('a whole walking day is by body mass, a rest day by energy', () => {
  const party = [{ name: 'Ada', body: { massG: 60_000 } }];
  const everything = [
    { ...label, mealKinds: ['breakfast', 'lunch', 'dinner', 'snack', 'drink'], pouches: 40 },
  ];
  const whole = { dayCount: 1, firstMeal: 'breakfast', lastMeal: 'dinner', party } as const;
  const walking = ofAda('protein', { ...whole, days: [{ walkingH: 6 }] }, everything);
  expect(walking.day).toMatchObject({ long: true, hot: false });
  expect(walking.eaten?.range?.unit).toBe('g/kg');
  expect(walking.eaten?.perKg).toBeCloseTo((walking.eaten?.amount ?? 0) / 60, 3);
  const rest = ofAda('protein', { ...whole, days: [{ kind: 'rest' }] }, everything);
  expect(rest.day).toMatchObject({ long: false });
  expect(rest.day?.sweatSodiumMg).toBeUndefined();
  expect(rest.eaten?.range?.unit).toBe('share of energy');
});

it('sodium in sweat is told on long and hot days, more of it in heat', () => {
  const sweatOn = (airTemperatureC: number, walkingH: number) =>
    ofAda('sodium', { ...dinnerOnly, days: [{ airTemperatureC, walkingH }] }, [label]).day?.sweatSodiumMg
      ?.value;
  expect(sweatOn(15, 2)).toBeUndefined();
  const cool = sweatOn(15, 5) ?? 0;
  // 400 ml an hour of 5 h, at some 700 mg a litre
  expect(cool).toBeGreaterThan(1300);
  expect(cool).toBeLessThan(1500);
  expect(sweatOn(34, 5) ?? 0).toBeGreaterThan(cool);
});
