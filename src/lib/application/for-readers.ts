import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';

/*
 * Bodies are nobody's business but their owners': who can only read is sent a trip and its plan without what was entered of bodies, and without what is
 * reckoned from it for a person, such as needs, targets, drinking and loads that are too much. What each eats, carries and cooks stays: cards and packing lists
 * are for that.
 */

export const tripForReaders = ({ energyKcal: _, ...trip }: Trip): Trip => ({
  ...trip,
  party: trip.party.map(
    ({ body: _body, energyKcal: _energy, maxLoadG: _load, portion: _portion, tastes: _tastes, ...eater }) =>
      eater,
  ),
});

export function planForReaders(plan: TripPlan): TripPlan {
  return {
    ...plan,
    assumptions: [],
    notices: [],
    coupling: { ...plan.coupling, changeKcal: 0 },
    demand: [],
    nutrition: [],
    menu: {
      ...plan.menu,
      meals: plan.menu.meals.map((meal) => ({ ...meal, targetKcal: 0 })),
      energy: [],
    },
    water: { ...plan.water, days: [], drinkMl: 0, peakMl: 0 },
    carry: {
      ...plan.carry,
      loads: plan.carry.loads.map((load) => ({ ...load, limitG: 0, overG: 0 })),
    },
    shortfall: { missingKcal: 0, missingServings: 0, meals: [], shopping: [] },
    totals: { ...plan.totals, targetKcal: 0, missingKcal: 0 },
  };
}
