import type { PouchLot } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { DayDemand, Portion } from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import { SITTING_SHARE } from './menu-problem.ts';
import { serveDay } from './serve-day.ts';
import { serveMeal, type OpenedPouches, type ServedMeal } from './serve-meal.ts';

/** Energy that the plain dealing of a meal may fall short of the best, kcal, before the best is taken as it is. */
const AS_GOOD_KCAL = 0.5;

/**
 * Shares what is opened on a day among the eaters as well as it can be shared: how much each eats at each meal follows from the day as a whole, so that a small breakfast makes for a
 * larger dinner; each meal's foods are then dealt in proportion. Eaters who may eat the same of the day's foods eat by their targets.
 *
 * @param openedAt what is opened at each meal of the day
 * @param mayEat whether an eater, by name, may be served a lot
 */
export function shareDay(
  day: DayDemand,
  openedAt: ReadonlyMap<MealKind, readonly OpenedPouches[]>,
  mayEat: (lot: PouchLot, eater: string) => boolean,
  settings: Settings,
): Map<MealKind, ServedMeal> {
  const foods = day.meals.flatMap((meal, index) =>
    (openedAt.get(meal) ?? []).map(({ lot, pouches }) => ({
      meal: index,
      lot,
      kcal: pouches * lot.servingsPerPouch * lot.energyKcal,
    })),
  );
  const groups = [
    ...Map.groupBy(day.eaters, ({ eater }) =>
      foods.map(({ lot }) => (mayEat(lot, eater) ? '1' : '0')).join(''),
    ).values(),
  ];
  const planned = (group: (typeof groups)[number], meal: MealKind) =>
    group.reduce((sum, row) => sum + (row.mealKcal[meal] ?? 0), 0);
  const targetKcal = groups.map((group) => group.reduce((sum, row) => sum + row.targetKcal, 0));
  const served = serveDay(
    {
      targetKcal,
      ceilingKcal: targetKcal.map((kcal) => kcal * settings.eatUpToShare),
      floorKcal: day.meals.map((meal) =>
        groups.map((group) => planned(group, meal) * settings.mealFloorShare),
      ),
      mostKcal: day.meals.map((meal) => groups.map((group) => planned(group, meal) * SITTING_SHARE)),
    },
    foods.map(({ meal, lot, kcal }) => ({
      meal,
      kcal,
      feeds: groups.map(([first]) => first !== undefined && mayEat(lot, first.eater)),
    })),
    settings.menuCosts,
  );

  return new Map(
    day.meals.map((meal, index) => {
      const opened = openedAt.get(meal) ?? [];
      const shares = groups.flatMap((group, groupIndex) => {
        const groupKcal = planned(group, meal);
        return group.map((row) => ({
          name: row.eater,
          groupIndex,
          share: groupKcal > 0 ? (row.mealKcal[meal] ?? 0) / groupKcal : 1 / group.length,
        }));
      });
      const eatenBy = (groupIndex: number) =>
        foods.reduce(
          (sum, food, at) => sum + (food.meal === index ? (served.eatenKcal[at]?.[groupIndex] ?? 0) : 0),
          0,
        );
      const seats = shares.map(({ name, groupIndex, share }) => {
        const kcal = eatenBy(groupIndex) * share;
        return { name, needKcal: kcal, ceilingKcal: kcal };
      });
      const dealt = serveMeal(opened, seats, mayEat);
      const bestKcal = seats.reduce((sum, seat) => sum + seat.needKcal, 0);
      const dealtKcal = [...dealt.eatenKcal.values()].reduce((sum, kcal) => sum + kcal, 0);
      if (dealtKcal >= bestKcal - AS_GOOD_KCAL) return [meal, dealt];
      return [meal, asTheBest(dealt)];

      function asTheBest({ portions, leftOver }: ServedMeal): ServedMeal {
        const best = foods.flatMap((food, at): Portion[] =>
          food.meal !== index || food.kcal <= 0
            ? []
            : shares.flatMap(({ name, groupIndex, share }): Portion[] => {
                const energyKcal = (served.eatenKcal[at]?.[groupIndex] ?? 0) * share;
                return energyKcal <= 1e-9
                  ? []
                  : [
                      {
                        eater: name,
                        code: food.lot.code,
                        servings: energyKcal / food.lot.energyKcal,
                        energyKcal,
                      },
                    ];
              }),
        );
        const without = portions.filter((portion) => portion.energyKcal === 0);
        const all = [...best, ...without];
        const eaten = (key: (portion: Portion) => string, of: (portion: Portion) => number) =>
          all.reduce(
            (sums, portion) => sums.set(key(portion), (sums.get(key(portion)) ?? 0) + of(portion)),
            new Map<string, number>(),
          );
        const servings = eaten(
          ({ code }) => code,
          (portion) => portion.servings,
        );
        const kcal = eaten(
          ({ eater }) => eater,
          (portion) => portion.energyKcal,
        );
        const total = new Map(opened.map(({ lot, pouches }) => [lot.code, pouches * lot.servingsPerPouch]));
        return {
          portions: all,
          eatenKcal: new Map(seats.map(({ name }) => [name, kcal.get(name) ?? 0])),
          leftOver: leftOver.map(({ code }) => ({
            code,
            servings: Math.max(0, (total.get(code) ?? 0) - (servings.get(code) ?? 0)),
          })),
        };
      }
    }),
  );
}
