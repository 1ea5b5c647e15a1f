import { say } from '../../texts/say.ts';
import { exclusionsOf } from '../menu/exclusions.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type {
  CarryPlan,
  CardMeal,
  CardPouches,
  FuelPlan,
  MenuMeal,
  MenuPlan,
  TrailCard,
} from '../model/trip-plan.ts';
import { boilingPointC } from '../stove/boiling-point.ts';
import { stoveStopOf } from '../stove/stove-stop.ts';
import { CARD_CAUTIONS } from './cautions.ts';
import { steepAtAltitudeMin, stirAtAltitudeMin } from './steep-time.ts';

/** Below this boiling point waiting times grow enough to be said, °C. */
const NEARLY_100_C = 99;

/** The trail card as data: what the person at the stove does with each pouch, meal by meal. */
export function makeCard(
  trip: ResolvedTrip,
  menu: MenuPlan,
  stock: Stock,
  carry: CarryPlan,
  fuel: FuelPlan,
  settings: Settings,
): TrailCard {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const first = trip.days[0];
  const last = trip.days.at(-1);
  if (!first || !last) throw new RangeError('a trip has at least one day');

  const mealOf = (meal: MenuMeal): CardMeal => {
    const boilsAtC = boilingPointC(stoveStopOf(trip, meal.day, meal.meal).campAltitudeM);
    const poured = (kind: 'boiling' | 'hot') =>
      meal.opened.filter((lot) => lot.waterKind === kind).reduce((sum, lot) => sum + lot.waterMl, 0);
    const pouches = meal.opened.map((opened): CardPouches => {
      const lot = lots.get(opened.code);
      if (!lot) throw new RangeError(`the menu opens lot ${opened.code}, which is not in the stock`);
      const shares = meal.portions
        .filter((portion) => portion.code === opened.code)
        .map(({ eater, servings }) => ({ eater, servings }));
      const carriedBy = carry.packs.flatMap((pack) =>
        pack.pouches
          .filter((item) => item.code === opened.code && item.day === meal.day && item.meal === meal.meal)
          .map((item) => ({ eater: pack.eater, pouches: item.pouches })),
      );
      const stretched = opened.waterKind === 'boiling';
      const steepMin = stretched
        ? steepAtAltitudeMin(lot.steepMin, boilsAtC, settings.insulatedSteep)
        : lot.steepMin;
      const stirAfterMin =
        stretched && lot.stirAfterMin !== undefined
          ? stirAtAltitudeMin(lot.stirAfterMin, steepMin, boilsAtC, settings.insulatedSteep)
          : lot.stirAfterMin;
      return {
        code: opened.code,
        recipe: opened.recipe,
        pouches: opened.pouches,
        waterMl: opened.waterMl,
        waterMlPerPouch: opened.waterMl / opened.pouches,
        waterKind: opened.waterKind,
        steepMin,
        steepSeaLevelMin: lot.steepMin,
        ...(stirAfterMin !== undefined ? { stirAfterMin } : {}),
        ...(lot.allergens ? { allergens: lot.allergens } : {}),
        carriedBy,
        shares,
        leftOverServings: Math.max(
          0,
          opened.servings - shares.reduce((sum, share) => sum + share.servings, 0),
        ),
      };
    });
    return {
      meal: meal.meal,
      boilMl: poured('boiling'),
      heatMl: poured('hot'),
      fuelG: fuel.boils
        .filter((boil) => boil.day === meal.day && boil.meal === meal.meal)
        .reduce((sum, boil) => sum + boil.fuelG, 0),
      pouches,
    };
  };

  return {
    title: trip.name,
    startDate: first.date,
    endDate: last.date,
    party: trip.party.map((eater) => ({ eater: eater.name, excludes: exclusionsOf(eater) })),
    days: trip.days.map((day) => {
      const boilsAtC = boilingPointC(day.campAltitudeM);
      return {
        day: day.day,
        date: day.date,
        altitudeM: day.campAltitudeM,
        boilsAtC,
        longerSteep: boilsAtC < NEARLY_100_C,
        dryCamp: day.campWater === 'dry',
        meals: menu.meals.filter((meal) => meal.day === day.day && meal.opened.length > 0).map(mealOf),
      };
    }),
    cautions: CARD_CAUTIONS.map((caution) => say(caution)),
  };
}
