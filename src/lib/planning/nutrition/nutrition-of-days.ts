import type { EatenNutrient, EaterNutrition, NutrientRange } from '../model/nutrition.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { ResolvedEater, ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type { DayDemand, DayWater, MenuPlan, WaterPlan } from '../model/trip-plan.ts';
import { NUTRIENTS, type Nutrient, type NutrientStanding } from '../model/words.ts';
import { LONG_FROM_H, rangeOf } from './nutrient-ranges.ts';
import { nutrientsEaten } from './nutrients-eaten.ts';
import { sweatSodiumMg } from './sweat-sodium.ts';

/** Energy of a gram, kcal: Regulation (EU) 1169/2011, Annex XIV. */
const KCAL_PER_G: Partial<Record<Nutrient, number>> = { protein: 4, carbohydrate: 4, fat: 9 };
/** Of a day with fewer of its meals grams are not held against those of a whole day (rule of thumb). */
const WHOLE_DAY_SHARE = 0.95;
/** What less of the food states is not said to be too little (rule of thumb). */
const ENOUGH_STATED = 0.8;

/**
 * What the planned food brings each person on each day, beside published ranges. It is no medical advice: needs of people differ, and so do the figures of foods.
 *
 * @param stock with what the trip plans to buy or to dry
 */
export function nutritionOfDays(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  menu: MenuPlan,
  water: WaterPlan,
  stock: Stock,
  settings: Settings,
): EaterNutrition[] {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const mealsOf = Map.groupBy(menu.meals, ({ day }) => day);
  const energy = new Map(menu.energy.map((row) => [`${row.day} ${row.eater}`, row]));
  return demand.flatMap((day, index) =>
    day.eaters.flatMap(({ eater: name, mealKcal }): EaterNutrition[] => {
      const eater = trip.party.find((other) => other.name === name);
      const resolved = trip.days[index];
      const row = energy.get(`${day.day} ${name}`);
      const ofWater = water.days[index];
      if (!eater || !resolved || !row || !ofWater) return [];
      const meals = (mealsOf.get(day.day) ?? []).filter(({ eaters }) => eaters.includes(name));
      const eaten = meals.map((meal) => nutrientsEaten(meal, name, lots));
      const mealShare = Object.keys(mealKcal).reduce(
        (sum, meal) => sum + settings.mealShares[meal as keyof typeof settings.mealShares],
        0,
      );
      const of = { eatenKcal: row.eatenKcal, walkingH: resolved.walkingH, mealShare };
      const long = of.walkingH >= LONG_FROM_H;
      const hot = ofWater.heat.category > 0;
      return [
        {
          day: day.day,
          eater: name,
          ...of,
          targetKcal: row.targetKcal,
          long,
          hot,
          ...((long || hot) && { sweatSodiumMg: sweatOf(ofWater, name) }),
          nutrients: NUTRIENTS.map((nutrient) =>
            besideRange(
              nutrient,
              eaten.map((meal) => meal[nutrient]),
              eater,
              of,
            ),
          ),
        },
      ];
    }),
  );
}

function besideRange(
  nutrient: Nutrient,
  eaten: readonly { readonly amount: number; readonly statedKcal: number }[],
  { body }: ResolvedEater,
  { eatenKcal, walkingH, mealShare }: Pick<EaterNutrition, 'eatenKcal' | 'walkingH' | 'mealShare'>,
): EatenNutrient {
  const amount = eaten.reduce((sum, row) => sum + row.amount, 0);
  const statedKcal = eaten.reduce((sum, row) => sum + row.statedKcal, 0);
  const statedShare = eatenKcal > 0 ? Math.min(1, statedKcal / eatenKcal) : 0;
  const kcalPerG = KCAL_PER_G[nutrient];
  const energyShare = kcalPerG && statedKcal > 0 ? (amount * kcalPerG) / statedKcal : undefined;
  const perKg = body.massG && nutrient !== 'sodium' ? amount / (body.massG / 1000) : undefined;
  const isWholeDay = mealShare >= WHOLE_DAY_SHARE;
  const range =
    eatenKcal > 0
      ? rangeOf(nutrient, { ageY: body.ageY, massG: body.massG, walkingH, eatenKcal, isWholeDay })
      : undefined;
  return {
    nutrient,
    amount,
    statedShare,
    ...(energyShare !== undefined && { energyShare }),
    ...(perKg !== undefined && { perKg }),
    ...(range && { range }),
    standing: range ? standingOf(range, { amount, energyShare, perKg, statedShare }) : 'no range',
  };
}

/** To what values are compared: a hundredth of the energy, a tenth of a gram for each kg, a gram. What reads as the end of a range is within it. */
const DIGITS: Readonly<Record<NutrientRange['unit'], number>> = {
  'share of energy': 2,
  'g/kg': 1,
  g: 0,
};

/** What the food that states nothing would add is not known: less than a range is said only where nearly all of it states the nutrient. */
function standingOf(
  { unit, least = 0, most = Infinity }: NutrientRange,
  eaten: Pick<EatenNutrient, 'amount' | 'energyShare' | 'perKg' | 'statedShare'>,
): NutrientStanding {
  const exact = unit === 'share of energy' ? eaten.energyShare : unit === 'g/kg' ? eaten.perKg : eaten.amount;
  if (exact === undefined) return 'unknown';
  const rounded = (value: number) => Number(value.toFixed(DIGITS[unit]));
  const value = rounded(exact);
  const isSure = eaten.statedShare >= ENOUGH_STATED;
  if (unit === 'share of energy' && !isSure) return 'unknown';
  if (value > rounded(most)) return 'above';
  if (value < rounded(least)) return isSure ? 'below' : 'unknown';
  return 'within';
}

/** Sodium in the sweat of a walk: what is drunk on the move, by the terms of the drinking. */
function sweatOf({ drink, heat }: DayWater, name: string): NonNullable<EaterNutrition['sweatSodiumMg']> {
  const terms = drink.find(({ eater }) => eater === name)?.ml.terms ?? [];
  const valueOf = (code: string) => terms.find((term) => term.code === code)?.value ?? 0;
  const isHard = heat.work === 'hard' || heat.work === 'very hard';
  return sweatSodiumMg(valueOf('hour of walking') * valueOf('hours of walking'), isHard);
}
