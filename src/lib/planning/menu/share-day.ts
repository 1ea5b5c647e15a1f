import type { PouchLot } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { DayDemand, Portion } from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import { SITTING_SHARE } from './menu-problem.ts';
import { serveDay } from './serve-day.ts';
import { serveMeal, type OpenedPouches, type SeatedEater, type ServedMeal } from './serve-meal.ts';

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
      const eaten = foods.flatMap((food, at) =>
        food.meal === index ? [{ lot: food.lot, kcalByGroup: served.eatenKcal[at] ?? [] }] : [],
      );
      const seats = groups.flatMap((group, groupIndex) => {
        const groupKcal = eaten.reduce((sum, { kcalByGroup }) => sum + (kcalByGroup[groupIndex] ?? 0), 0);
        const plannedKcal = planned(group, meal);
        return group.map(({ eater, mealKcal }) => {
          const share = plannedKcal > 0 ? (mealKcal[meal] ?? 0) / plannedKcal : 1 / group.length;
          return {
            name: eater,
            groupIndex,
            share,
            needKcal: groupKcal * share,
            ceilingKcal: groupKcal * share,
          };
        });
      });
      const dealt = serveMeal(opened, seats, mayEat);
      const bestKcal = seats.reduce((sum, { needKcal }) => sum + needKcal, 0);
      const dealtKcal = [...dealt.eatenKcal.values()].reduce((sum, kcal) => sum + kcal, 0);
      if (dealtKcal >= bestKcal - AS_GOOD_KCAL) return [meal, dealt];
      const best = eaten.flatMap(({ lot, kcalByGroup }) =>
        seats.flatMap(({ name, groupIndex, share }): Portion[] => {
          const energyKcal = (kcalByGroup[groupIndex] ?? 0) * share;
          if (energyKcal <= 1e-9) return [];
          return [{ eater: name, code: lot.code, servings: energyKcal / lot.energyKcal, energyKcal }];
        }),
      );
      const withoutEnergy = dealt.portions.filter(({ energyKcal }) => energyKcal === 0);
      return [meal, servedAs(opened, [...best, ...withoutEnergy], seats)];
    }),
  );
}

/** A meal as its portions say. */
function servedAs(
  opened: readonly OpenedPouches[],
  portions: Portion[],
  seats: readonly SeatedEater[],
): ServedMeal {
  const sumOf = (rows: readonly Portion[], of: 'servings' | 'energyKcal') =>
    rows.reduce((sum, portion) => sum + portion[of], 0);
  return {
    portions,
    eatenKcal: new Map(
      seats.map(({ name }) => [
        name,
        sumOf(
          portions.filter(({ eater }) => eater === name),
          'energyKcal',
        ),
      ]),
    ),
    leftOver: opened.map(({ lot, pouches }) => {
      const servings = sumOf(
        portions.filter(({ code }) => code === lot.code),
        'servings',
      );
      return { code: lot.code, servings: Math.max(0, pouches * lot.servingsPerPouch - servings) };
    }),
  };
}
