import { waterCarriedH } from '../hydration/water-carried.ts';
import type { MealBurden } from '../menu/menu-problem.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type { DayDemand } from '../model/trip-plan.ts';
import type { PlannedLeg } from '../route/trip-legs.ts';
import { boilingPointC } from './boiling-point.ts';
import { NET_CALORIFIC_VALUE } from './fuels.ts';
import { heatForWaterKJ } from './heat-of-water.ts';
import { efficiencyIn, stoveEfficiency } from './plan-fuel.ts';
import { stoveStopOf } from './stove-stop.ts';

/**
 * What each meal of the trip takes to carry and cook, for a planner to weigh pouches with: hours walked with the food and with its water, and fuel for its water
 * at that camp, without the pot's own heat and without melting or making safe, which hardly depend on the menu.
 */
export function mealBurdens(
  trip: ResolvedTrip,
  legs: readonly PlannedLeg[],
  demand: readonly DayDemand[],
  settings: Settings,
): MealBurden[] {
  const water = waterCarriedH(trip, legs);
  const stove = stoveEfficiency(trip, settings);
  let walkedH = 0;
  return demand.flatMap((day, index): MealBurden[] => {
    const todayH = trip.days[index]?.walkingH ?? 0;
    const before = walkedH;
    walkedH += todayH;
    const walked = { breakfast: 0, lunch: todayH / 2, snack: todayH / 2, dinner: todayH, drink: todayH };
    return day.meals.map((meal): MealBurden => {
      const stop = stoveStopOf(trip, day.day, meal);
      const boilC = boilingPointC(stop.campAltitudeM);
      const fuelG = (toC: number) =>
        heatForWaterKJ(1, stop.waterTemperatureC, toC) /
        (NET_CALORIFIC_VALUE[trip.stove.fuel] * efficiencyIn(stop, stove.value));
      return {
        day: day.day,
        meal,
        carriedH: before + walked[meal],
        waterCarriedH: water[index]?.[meal] ?? 0,
        fuelGPerMl: {
          boiling: fuelG(boilC),
          hot: fuelG(trip.treatment === 'boil' ? boilC : Math.min(settings.hotWaterC, boilC)),
          cold: 0,
          none: 0,
        },
      };
    });
  });
}
