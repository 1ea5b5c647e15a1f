import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayHeat } from '../model/trip-plan.ts';
import { LONGEST_WALK_H } from './heat-rests.ts';

/** Walking in the last heat category endangers life, and so does work that the tables say to avoid. */
const WORST_CATEGORY = 5;

/** @returns what has to be said about the heat of the days */
export function heatNotices(trip: ResolvedTrip, heat: readonly DayHeat[]): Notice[] {
  return heat.flatMap(({ work, category, workMin, restMin, avoid, neededH }, index): Notice[] => {
    const day = trip.days[index];
    if (!day || work === undefined) return [];
    const at = { day: day.day };
    const notices: Notice[] = [];
    if (avoid || category >= WORST_CATEGORY)
      notices.push(notice('heat-danger', { airTemperatureC: day.airTemperatureC, category, avoid }, at));
    if (neededH > LONGEST_WALK_H)
      notices.push(notice('heat-walk-too-long', { workMin, restMin, neededH }, at));
    else if (restMin > 0)
      notices.push(
        notice('heat-rests', { workMin, restMin, neededH, acclimatised: trip.isAcclimatised }, at),
      );
    return notices;
  });
}
