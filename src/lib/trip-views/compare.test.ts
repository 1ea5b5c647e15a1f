import { expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { exampleLot, exampleTrip } from '../../../tests/support/examples.ts';
import { compareTrips } from './compare.ts';

const exampleStock = () => [
  exampleLot({ code: 'D1', mealKinds: ['dinner', 'lunch', 'breakfast'], pouches: 40 }),
  exampleLot({ code: 'D2', recipe: 'Other', mealKinds: ['dinner'], pouches: 10 }),
];

it('finds a trip and itself alike', () => {
  const plan = planTrip(exampleTrip(), exampleStock(), defaultSettings());
  const { figures, meals, alike } = compareTrips(plan, plan);
  for (const { a, b } of figures) expect(a).toEqual(b);
  expect(meals).toEqual([]);
  expect(alike).toBe(plan.menu.meals.filter(({ opened }) => opened.length > 0).length);
});

it('puts a shorter shelf beside a full one: what is missing, and the meals that open other pouches', () => {
  const stock = exampleStock();
  const full = planTrip(exampleTrip(), stock, defaultSettings());
  const poor = planTrip(exampleTrip(), [], defaultSettings());
  const { figures, meals } = compareTrips(full, poor);
  const figure = (label: string) => figures.find((other) => other.label === label);
  expect(figure('Shortfall')?.b).toBeGreaterThan(figure('Shortfall')?.a ?? Infinity);
  expect(figure('Pouches')).toMatchObject({ a: full.totals.pouches, b: 0 });
  expect(meals.length).toBe(full.menu.meals.filter(({ opened }) => opened.length > 0).length);
  expect(meals.every(({ b }) => b.length === 0)).toBe(true);
});
