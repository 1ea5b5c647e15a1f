import { describe, expect, it } from 'vitest';
import { exampleTrip } from '../../../../tests/support/examples.ts';
import { defaultSettings } from '../model/settings.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import { plannedLegs } from '../route/trip-legs.ts';
import { demandOf } from './day-demand.ts';

const settings = defaultSettings();
const demand = (trip = exampleTrip(), used = settings) => {
  const resolved = resolveTrip(trip);
  return demandOf(resolved, plannedLegs(trip, resolved, []), () => 0, used);
};

describe('demandOf', () => {
  it('gives a full day the whole target, by the shares of the meals', () => {
    const [first] = demand();
    expect(first?.meals).toEqual(['breakfast', 'lunch', 'snack', 'dinner', 'drink']);
    expect(first?.eaters[0]?.targetKcal).toBeCloseTo(2000, 9);
    expect(first?.eaters[0]?.mealKcal.dinner).toBeCloseTo(700, 9);
  });

  it('begins and ends with the chosen meals; a snack goes with lunch, a drink with dinner', () => {
    const [first, last] = demand(exampleTrip({ firstMeal: 'dinner', lastMeal: 'lunch' }));
    expect(first?.meals).toEqual(['dinner', 'drink']);
    expect(last?.meals).toEqual(['breakfast', 'lunch', 'snack']);
    expect(first?.eaters[1]?.targetKcal).toBeCloseTo(800, 9);
    expect(last?.eaters[1]?.targetKcal).toBeCloseTo(1200, 9);
  });

  it('leaves out a meal whose share is nothing', () => {
    const noDrink = {
      ...settings,
      mealShares: { breakfast: 0.25, lunch: 0.25, snack: 0.1, dinner: 0.4, drink: 0 },
    };
    expect(demand(exampleTrip(), noDrink)[0]?.meals).toEqual(['breakfast', 'lunch', 'snack', 'dinner']);
  });
});
