import { heatCategory } from '../planning/hydration/fluid-replacement.ts';
import { usualLoads } from '../planning/model/trip-defaults.ts';
import type { DayHeat, DayWater, Estimate, WaterPlan, WaterStretch } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { say, text } from '../texts/say.ts';

/** Eaters who drink alike on a day. */
export type DrinkGroup = { readonly eaters: readonly string[]; readonly ml: Estimate };

/** @returns the drinking water of a day, once for all who drink alike. */
export function drinkGroups(day: DayWater): DrinkGroup[] {
  const groups = Map.groupBy(day.drink, ({ ml }) => JSON.stringify(ml));
  return [...groups.values()].flatMap((alike) => {
    const ml = alike[0]?.ml;
    return ml ? [{ eaters: alike.map(({ eater }) => eater), ml }] : [];
  });
}

/** The least and the most of what the eaters carry or drink, ml. */
export type Span = { readonly leastMl: number; readonly mostMl: number };

/** @returns the span over the eaters; 0 to 0 where there are none. */
export function spanOf(each: readonly { readonly ml: number }[]): Span {
  const amounts = each.map(({ ml }) => ml);
  return amounts.length === 0
    ? { leastMl: 0, mostMl: 0 }
    : { leastMl: Math.min(...amounts), mostMl: Math.max(...amounts) };
}

/** What the eaters drink on a day: likely amounts from the least to the most, and how far they may turn out either way, ml. */
export function drinkSpan({ drink }: DayWater): Span & { readonly lowMl: number; readonly highMl: number } {
  return {
    ...spanOf(drink.map(({ ml }) => ({ ml: ml.value }))),
    lowMl: Math.min(...drink.map(({ ml }) => ml.low)),
    highMl: Math.max(...drink.map(({ ml }) => ml.high)),
  };
}

/** What the bottles and bags of the whole party hold, ml; an eater without a figure has the usual ones. */
export function bottlesHoldMl(trip: Trip): number {
  return trip.party.reduce(
    (sum, eater) => sum + (eater.waterCapacityMl ?? usualLoads(eater.body ?? {}).waterCapacityMl.value),
    0,
  );
}

/** What a heat category of the fluid replacement table means for the day; common practice in heat, and a doctor's word goes before it. */
const HEAT_MEANS = [
  text('below the heat categories: drinking follows the values in Settings'),
  text('heat category 1 of 5: warm; drink a little more than usual'),
  text('heat category 2 of 5: hot; rest in the shade and keep an eye on each other'),
  text('heat category 3 of 5: very hot; walk early and late, and rest more than you walk at midday'),
  text('heat category 4 of 5: dangerous; only easy walking, and none at midday'),
  text('heat category 5 of 5: extreme; stay in the shade and put off the walk if you can'),
] as const;

/** @returns walking and rest in each hour of a hot day, or that nobody should walk; '' where the tables set no limit. */
export function workRestInWords({ category, workMin, restMin, avoid, work }: DayHeat): string {
  if (!work) return '';
  if (avoid || category === 5)
    return say('Too hot to walk: heat stroke can kill. In an emergency at most {walk} min an hour.', {
      walk: workMin,
    });
  return restMin > 0
    ? say('In each hour walk {walk} min, rest {rest} min in the shade.', { walk: workMin, rest: restMin })
    : '';
}

/** @returns what a wet-bulb globe temperature means, in words. */
export function heatInWords(wbgtC: number): string {
  return say(HEAT_MEANS[heatCategory(wbgtC)] ?? HEAT_MEANS[0]);
}

/** The stretch on which most water is carried; `undefined` where nobody walks. */
export function hardestStretch({
  days,
}: Pick<WaterPlan, 'days'>): (WaterStretch & { readonly day: number }) | undefined {
  return days
    .flatMap(({ day, stretches }) => stretches.map((stretch) => ({ ...stretch, day })))
    .reduce<(WaterStretch & { readonly day: number }) | undefined>(
      (most, stretch) => (most && most.start.totalMl >= stretch.start.totalMl ? most : stretch),
      undefined,
    );
}
