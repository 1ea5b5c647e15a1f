import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { MealKind } from '../model/words.ts';
import type { PlannedLeg } from '../route/trip-legs.ts';
import { lunchStretch } from './lunch-stretch.ts';

/** Hours walked with the water of a day's meals, from the source where it was taken up. */
export type WaterCarried = Readonly<Record<MealKind, number>>;

/**
 * How long the water of each meal is carried, h of walking, by day. Nothing at a camp with water or snow; to a dry camp, from the last source before it.
 * Lunch and snack are eaten half-way, as in `planWater`.
 */
export function waterCarriedH(trip: ResolvedTrip, legs: readonly PlannedLeg[]): WaterCarried[] {
  let sinceSourceH = 0;
  return trip.days.map((day, index): WaterCarried => {
    const yesterday = trip.days[index - 1]?.campWater ?? 'source';
    if (yesterday !== 'dry') sinceSourceH = 0;
    const breakfast = sinceSourceH;
    const startsH = [
      0,
      ...(legs[index]?.sources ?? [])
        .map(({ atH }) => atH)
        .filter((atH) => atH > 1e-6 && atH < day.walkingH - 1e-6),
    ];
    const carriedAt = (startH: number, atH: number) => (startH > 0 ? atH - startH : sinceSourceH + atH);
    const lunchFromH = startsH[lunchStretch(startsH, day.walkingH)] ?? 0;
    const lunch = carriedAt(lunchFromH, day.walkingH / 2);
    const goesHome = index === trip.days.length - 1 && trip.lastMeal !== 'dinner';
    sinceSourceH = carriedAt(startsH.at(-1) ?? 0, day.walkingH);
    if (goesHome || day.campWater !== 'dry') sinceSourceH = 0;
    return { breakfast, lunch, snack: lunch, dinner: sinceSourceH, drink: sinceSourceH };
  });
}
