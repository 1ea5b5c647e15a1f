import { demandOf } from '../../src/lib/planning/demand/day-demand.ts';
import type { MenuProblem } from '../../src/lib/planning/menu/menu-problem.ts';
import { resolveTrip } from '../../src/lib/planning/model/resolve-trip.ts';
import { defaultSettings, type Settings } from '../../src/lib/planning/model/settings.ts';
import { knownDays, knownLegs, plannedLegs } from '../../src/lib/planning/route/trip-legs.ts';
import { mealBurdens } from '../../src/lib/planning/stove/meal-burdens.ts';
import type { Instance } from './instances.ts';

/** The menu problem of an instance, with no meal kept. */
export function problemOf({ trip, stock }: Instance, settings: Settings = defaultSettings()): MenuProblem {
  const known = knownLegs(trip);
  const resolved = resolveTrip(trip, knownDays(trip, known));
  const legs = plannedLegs(trip, resolved, known);
  const demand = demandOf(resolved, legs, () => 0, settings);
  return {
    demand,
    party: resolved.party,
    stock,
    kept: [],
    burdens: mealBurdens(resolved, legs, demand, settings),
    settings,
  };
}
