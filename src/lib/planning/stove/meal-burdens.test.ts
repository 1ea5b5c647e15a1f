import { expect, test } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { demandOf } from '../demand/day-demand.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import { defaultSettings } from '../model/settings.ts';
import { planTrip } from '../plan-trip.ts';
import { plannedLegs } from '../route/trip-legs.ts';
import { mealBurdens } from './meal-burdens.ts';

const settings = defaultSettings();
const trip = exampleTrip({
  days: [
    { walkingH: 6, campAltitudeM: 2400, wind: 'windy', airTemperatureC: 4, waterTemperatureC: 6 },
    { walkingH: 4, campAltitudeM: 900 },
  ],
  stove: { potG: 50, potMl: 1500 },
});
const resolved = resolveTrip(trip);
const legs = plannedLegs(trip, resolved, []);
const burdens = mealBurdens(
  resolved,
  legs,
  demandOf(resolved, legs, () => 0, settings),
  settings,
);

test('food is carried until it is eaten: half a day to lunch, the whole of it to dinner', () => {
  expect(burdens.map(({ day, meal, carriedH }) => [day, meal, carriedH])).toEqual([
    [1, 'breakfast', 0],
    [1, 'lunch', 3],
    [1, 'snack', 3],
    [1, 'dinner', 6],
    [1, 'drink', 6],
    [2, 'breakfast', 6],
    [2, 'lunch', 8],
    [2, 'snack', 8],
    [2, 'dinner', 10],
    [2, 'drink', 10],
  ]);
});

test('fuel by the burdens is the fuel of the plan, less the pot', () => {
  const stock = (['boiling', 'hot', 'cold'] as const).map((waterKind, index) =>
    exampleLot({
      code: `L${index}`,
      recipe: `r${index}`,
      waterKind,
      mealKinds: ['breakfast', 'dinner'],
      pouches: 3,
    }),
  );
  const plan = planTrip(trip, stock, settings);
  const fuelG = plan.menu.meals.reduce((sum, meal) => {
    const burden = burdens.find((other) => other.day === meal.day && other.meal === meal.meal);
    return (
      sum +
      meal.opened.reduce((ofMeal, lot) => ofMeal + lot.waterMl * (burden?.fuelGPerMl[lot.waterKind] ?? 0), 0)
    );
  }, 0);
  const boils = plan.fuel.boils.filter(({ purpose }) => purpose === 'meal');
  const potG = boils.reduce((sum, boil) => {
    const potKJ = Math.ceil(boil.waterMl / 1500) * 0.05 * 0.9 * (boil.toC - boil.fromC);
    return sum + (boil.fuelG * potKJ) / boil.heatKJ;
  }, 0);
  expect(boils.length).toBeGreaterThan(2);
  expect(fuelG + potG).toBeCloseTo(
    boils.reduce((sum, boil) => sum + boil.fuelG, 0),
    1,
  );
});
