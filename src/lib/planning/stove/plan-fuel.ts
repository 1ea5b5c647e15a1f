import type { Settings } from '../model/settings.ts';
import type { ResolvedTrip } from '../model/trip-defaults.ts';
import type { Boil, FuelPlan, MenuPlan, Notice } from '../model/trip-plan.ts';
import { boilingPointC } from './boiling-point.ts';
import { chooseContainers } from './choose-containers.ts';
import { FUEL_LABEL, NET_CALORIFIC_VALUE } from './fuels.ts';
import { heatForWaterKJ } from './heat-of-water.ts';
import { stoveStopOf } from './stove-stop.ts';

/** Spread of a stove's efficiency from wind, pot and flame, as a share of it (common practice). */
const EFFICIENCY_SPREAD = 0.2;

/**
 * Fuel for the menu: each meal's water from its temperature to the boil at that altitude (or to "hot"), over the stove's efficiency, plus the reserve,
 * in the lightest set of whole containers.
 */
export function planFuel(
  trip: ResolvedTrip,
  menu: MenuPlan,
  settings: Settings,
): { fuel: FuelPlan; notices: Notice[] } {
  const { fuel, efficiency, reserve } = trip.stove;
  const kJPerG = NET_CALORIFIC_VALUE[fuel];
  const boils = menu.meals.flatMap((meal): Boil[] => {
    const stop = stoveStopOf(trip, meal.day, meal.meal);
    const boilC = boilingPointC(stop.campAltitudeM);
    return (['boiling', 'hot'] as const).flatMap((kind) => {
      const waterMl = meal.opened
        .filter((lot) => lot.waterKind === kind)
        .reduce((sum, lot) => sum + lot.waterMl, 0);
      if (waterMl === 0) return [];
      const toC = kind === 'boiling' ? boilC : Math.min(settings.hotWaterC, boilC);
      const heatKJ = heatForWaterKJ(waterMl, stop.waterTemperatureC, toC);
      return [
        {
          day: meal.day,
          meal: meal.meal,
          waterMl,
          fromC: stop.waterTemperatureC,
          toC,
          altitudeM: stop.campAltitudeM,
          heatKJ,
          fuelG: heatKJ / (kJPerG * efficiency),
        },
      ];
    });
  });

  const heatKJ = boils.reduce((sum, boil) => sum + boil.heatKJ, 0);
  const waterMl = boils.reduce((sum, boil) => sum + boil.waterMl, 0);
  const burnG = (share: number) => heatKJ / (kJPerG * Math.min(1, efficiency * share));
  const withReserveG = burnG(1) * (1 + reserve);
  const sizes = settings.fuelContainers.filter((size) => size.fuel === fuel);
  const taken = chooseContainers(withReserveG, sizes);
  const takenG = taken.reduce((sum, { container, count }) => sum + container.netG * count, 0);
  const notices: Notice[] = [];
  if (withReserveG > 0 && sizes.length === 0)
    notices.push({
      level: 'wrong',
      topic: 'fuel',
      text: `The settings list no container for ${FUEL_LABEL[fuel]}, so its weight is missing from the packs; add the sizes you can get under Settings.`,
    });

  return {
    fuel: {
      fuel,
      efficiency,
      boils,
      need: {
        value: burnG(1),
        low: burnG(1 + EFFICIENCY_SPREAD),
        high: burnG(1 - EFFICIENCY_SPREAD),
        terms: [
          { label: 'water to heat', value: waterMl, unit: 'ml' },
          { label: 'heat into the water', value: heatKJ, unit: 'kJ' },
          { label: `heat in ${FUEL_LABEL[fuel]}`, value: kJPerG, unit: 'kJ/g' },
          { label: 'share of it that reaches the water', value: efficiency * 100, unit: '%' },
        ],
      },
      withReserveG,
      containers: taken.map(({ container, count }) => ({
        label: container.label,
        count,
        netG: container.netG,
        tareG: container.tareG,
      })),
      takenG,
      grossG: taken.reduce(
        (sum, { container, count }) => sum + (container.netG + container.tareG) * count,
        0,
      ),
    },
    notices,
  };
}
