import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayDemand, DayHeat } from '../model/trip-plan.ts';
import type { PlannedLeg } from '../route/trip-legs.ts';
import { workOf } from './drinking.ts';
import { heatCategory, WORK_RATES, type WorkRate } from './fluid-replacement.ts';
import { wetBulbGlobeC } from './heat-stress.ts';
import { workRestOf } from './work-rest.ts';

/** A day's walk with its rests is planned no longer than this, h: the night is left. */
export const LONGEST_WALK_H = 16;

/**
 * The heat of each day: category, the work of whoever works hardest, and minutes of walking and rest by the tables.
 *
 * @param demand whose work rates are those on the move
 */
export function heatOfDays(
  trip: ResolvedTrip,
  legs: readonly PlannedLeg[],
  demand: readonly DayDemand[],
): DayHeat[] {
  return trip.days.map((day, index): DayHeat => {
    const leg = legs[index];
    const wbgtC = wetBulbGlobeC(day.airTemperatureC, day.humidityShare);
    const category = heatCategory(wbgtC);
    if (!leg || leg.walkingH <= 0)
      return { category, workMin: 60, restMin: 0, avoid: false, neededH: 0, addedRestH: 0 };
    const rates = trip.party.map((eater): WorkRate => {
      const row = demand[index]?.eaters.find((other) => other.eater === eater.name);
      return workOf(eater, row?.walkingRateW ?? 0);
    });
    const work = WORK_RATES.findLast((rate) => rates.includes(rate)) ?? 'easy';
    const { workMin, avoid } = workRestOf(wbgtC, work, trip.isAcclimatised);
    const neededH = Math.max(leg.walkingH, (leg.movingH * 60) / workMin);
    const walkingH = Math.max(leg.walkingH, Math.min(LONGEST_WALK_H, neededH));
    return {
      category,
      work,
      workMin,
      restMin: 60 - workMin,
      avoid,
      neededH,
      addedRestH: walkingH - leg.walkingH,
    };
  });
}

/** The trip and its legs with the rests that the heat of each day asks for, beyond those of the pace. */
export function withHeatRests(
  trip: ResolvedTrip,
  legs: readonly PlannedLeg[],
  heat: readonly DayHeat[],
): { trip: ResolvedTrip; legs: readonly PlannedLeg[] } {
  if (heat.every(({ addedRestH }) => addedRestH === 0)) return { trip, legs };
  return {
    trip: {
      ...trip,
      days: trip.days.map((day, index) => ({
        ...day,
        walkingH: day.walkingH + (heat[index]?.addedRestH ?? 0),
      })),
    },
    legs: legs.map((leg, index) => {
      const walkingH = leg.walkingH + (heat[index]?.addedRestH ?? 0);
      const scale = leg.walkingH > 0 ? walkingH / leg.walkingH : 1;
      return {
        ...leg,
        walkingH,
        sources: leg.sources.map((source) => ({ ...source, atH: source.atH * scale })),
      };
    }),
  };
}
