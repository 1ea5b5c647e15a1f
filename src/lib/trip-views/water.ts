import type { DayWater, Estimate } from '../planning/model/trip-plan.ts';

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
