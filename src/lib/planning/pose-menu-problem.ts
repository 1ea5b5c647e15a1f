import { firstExpired } from './menu/first-expired.ts';
import type { MenuPlanner, MenuProblem } from './menu/menu-problem.ts';
import type { Stock } from './model/pouch-lot.ts';
import type { Settings } from './model/settings.ts';
import type { Trip } from './model/trip.ts';
import { planTrip } from './plan-trip.ts';

/**
 * The menu problem of a trip as its plan poses it: the meals that the trip lists are kept, and the needs are those under the loads of a planner's menu.
 *
 * @throws RouteError where the days do not lie along the route
 */
export function poseMenuProblem(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  planner: MenuPlanner = firstExpired,
): MenuProblem {
  let posed: MenuProblem | undefined;
  planTrip(trip, stock, settings, {
    name: planner.name,
    choose: (problem) => {
      posed = problem;
      return planner.choose(problem);
    },
  });
  if (!posed) throw new Error('the plan asked for no menu');
  return posed;
}
