import { estimatedOf } from '../model/lot-estimate.ts';
import { cookGroupsOf, takingOf } from '../model/meal-rules.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import type {
  DayDemand,
  EaterDayEnergy,
  FromOpen,
  LotServings,
  MenuMeal,
  MenuPouches,
  Portion,
} from '../model/trip-plan.ts';
import { LOT_KINDS, type LotKind } from '../model/words.ts';
import { cutToFit, type KeptMeal } from './listed-meals.ts';
import { keepsOpen, suitsStop } from './lot-rules.ts';
import { mealKey, type Dish, type MealChoice, type MealTask } from './menu-problem.ts';

/** A pouch, or several opened at once, of food that keeps when it is open. */
type OpenPouch = {
  readonly day: number;
  servings: number;
  /** Of a serving, kcal. */
  readonly servingKcal: number;
  /** The last meal that ate of it. */
  last: MealInMaking;
};
type MealInMaking = {
  readonly staysOpen: { readonly pouch: OpenPouch; readonly code: string; readonly servings: number }[];
  readonly leftOver: LotServings[];
};
type Served = { eatenKcal: Map<string, number>; notices: Notice[] };

/**
 * Puts the dishes of a menu on the tables, meal by meal: what is opened, who eats how much, what is left over, and what stays open of food that keeps.
 *
 * @param choices what was chosen, and what stands; several of one meal are put together
 */
export function serveMenu(
  trip: ResolvedTrip,
  demand: readonly DayDemand[],
  tasks: readonly MealTask[],
  choices: readonly MealChoice[],
  kept: readonly KeptMeal[],
  settings: Settings,
): { meals: MenuMeal[]; energy: EaterDayEnergy[]; notices: Notice[] } {
  const { groups } = cookGroupsOf(trip);
  const taskOf = new Map(tasks.map((task) => [mealKey(task.day, task.meal, task.group), task]));
  const keptOf = new Map(kept.map((meal) => [mealKey(meal.day, meal.meal, meal.group), meal]));
  const chosen = Map.groupBy(choices, ({ day, meal, group }) => mealKey(day, meal, group));
  const open = new Map<string, OpenPouch[]>();
  const notices: Notice[] = [];
  const unfinished: { meal: MenuMeal; making: MealInMaking }[] = [];
  const energy = demand.flatMap((day, index): EaterDayEnergy[] => {
    const served: Served = { eatenKcal: new Map(), notices };
    const conditions = trip.days[index];
    for (const meal of day.meals)
      for (const group of groups) {
        const key = mealKey(day.day, meal, group.name);
        const task = taskOf.get(key);
        const stands = keptOf.get(key);
        const taking = conditions && takingOf(trip, conditions, meal);
        const eaters = task?.eaters ?? [];
        const making: MealInMaking = { staysOpen: [], leftOver: [] };
        const dishes = merged((chosen.get(key) ?? []).flatMap((choice) => choice.dishes));
        const table = task
          ? serveDishes(task, dishes, open, making, stands, settings, served)
          : { opened: [], fromOpen: [], portions: [] };
        unfinished.push({
          making,
          meal: {
            day: day.day,
            date: day.date,
            meal,
            group: group.name,
            style: task?.style ?? trip.servingStyle,
            stop: task?.stop ?? taking?.stop ?? 'stove',
            eaters: [...eaters],
            elsewhere: group.eaters.filter((name) => !eaters.includes(name)),
            locked: stands?.locked ?? false,
            lockedPlates: [...(stands?.lockedPlates ?? [])],
            byHand: stands?.byHand ?? false,
            ...table,
            staysOpen: [],
            leftOver: [],
            targetKcal: day.eaters
              .filter(({ eater }) => eaters.includes(eater))
              .reduce((sum, eater) => sum + (eater.mealKcal[meal] ?? 0), 0),
            eatenKcal: table.portions.reduce((sum, portion) => sum + portion.energyKcal, 0),
            leftOverServings: 0,
            leftOverKcal: 0,
          },
        });
      }
    return day.eaters.map(({ eater, targetKcal }) => {
      const eatenKcal = served.eatenKcal.get(eater) ?? 0;
      return {
        day: day.day,
        eater,
        targetKcal,
        eatenKcal,
        missingKcal: Math.max(0, targetKcal - eatenKcal),
        aboveKcal: Math.max(0, eatenKcal - targetKcal),
      };
    });
  });
  for (const [key, pouches] of open)
    for (const pouch of pouches) throwAway(pouch, key.slice(key.indexOf('\n') + 1));
  return {
    meals: unfinished.map(({ meal, making }) => finished(meal, making, settings)),
    energy,
    notices,
  };
}

/** Dishes of one recipe that come to people in the same way are one; main dishes stand first. */
function merged(dishes: readonly Dish[]): Dish[] {
  const same = Map.groupBy(
    dishes,
    ({ recipe, role, style }) => `${LOT_KINDS.indexOf(role)}\n${recipe}\n${style}`,
  );
  const inOrder = [...same].sort(([one], [other]) => (one < other ? -1 : 1));
  return inOrder.flatMap(([, own]): Dish[] => {
    const [first, ...others] = own;
    if (!first || others.length === 0) return own;
    return [
      {
        ...first,
        opened: [
          ...Map.groupBy(
            own.flatMap(({ opened }) => opened),
            ({ lot }) => lot,
          ),
        ].map(([lot, rows]) => ({
          lot,
          pouches: rows.reduce((sum, { pouches }) => sum + pouches, 0),
        })),
        portions: own.flatMap(({ portions }) => portions),
      },
    ];
  });
}

function serveDishes(
  task: MealTask,
  dishes: readonly Dish[],
  open: Map<string, OpenPouch[]>,
  making: MealInMaking,
  stands: KeptMeal | undefined,
  settings: Settings,
  served: Served,
): Pick<MenuMeal, 'opened' | 'fromOpen' | 'portions'> {
  const opened: MenuPouches[] = [];
  const fromOpen: FromOpen[] = [];
  const portions: Portion[] = [];
  for (const dish of dishes) {
    const potKcal = potServingKcal(dish);
    const lots = new Set([...dish.opened.map(({ lot }) => lot), ...dish.portions.map(({ lot }) => lot)]);
    for (const lot of lots) {
      if (!suitsStop(lot, task.stop, task.airC) || (lot.cookAfter && dish.style === 'own pouch'))
        served.notices.push(
          notice('needs-stove', { recipe: lot.recipe }, { day: task.day, meal: task.meal, lot: lot.code }),
        );
      const pouches = dish.opened.find((of) => of.lot === lot)?.pouches ?? 0;
      const wanted = dish.portions.filter((portion) => portion.lot === lot);
      const servingKcal = keepsOpen(lot) ? lot.energyKcal : (potKcal ?? lot.energyKcal);
      const taken = keepsOpen(lot)
        ? eatKeeping(task, dish.role, lot, pouches, wanted, open, making, settings, served)
        : { portions: wanted, openedServings: pouches * lot.servingsPerPouch, fromOpen: [] };
      fromOpen.push(...taken.fromOpen);
      if (pouches > 0) {
        const servings = pouches * lot.servingsPerPouch;
        opened.push({
          code: lot.code,
          recipe: lot.recipe,
          role: dish.role,
          style: dish.style,
          pouches,
          servings,
          energyKcal: servings * lot.energyKcal,
          waterMl: taken.openedServings * lot.waterMl,
          waterKind: lot.waterKind,
          ...estimatedOf(lot),
          reason: dish.reason ?? { code: 'least cost' },
          locked: stands?.lockedDishes.has(lot.recipe) ?? false,
        });
        if (!keepsOpen(lot)) {
          const left = servings - taken.portions.reduce((sum, portion) => sum + portion.servings, 0);
          if (left > 1e-6)
            making.leftOver.push({ code: lot.code, servings: left, energyKcal: left * servingKcal });
        }
      }
      for (const { eater, servings } of taken.portions) {
        const energyKcal = servings * servingKcal;
        const pieces = lot.pieces === undefined ? undefined : (servings / lot.servingsPerPouch) * lot.pieces;
        portions.push({
          eater,
          code: lot.code,
          role: dish.role,
          style: dish.style,
          servings,
          ...(pieces !== undefined && { pieces }),
          energyKcal,
          waterMl: servings * lot.waterMl,
        });
        served.eatenKcal.set(eater, (served.eatenKcal.get(eater) ?? 0) + energyKcal);
      }
    }
  }
  return { opened, fromOpen, portions };
}

/** Energy of a serving of a pot of several lots, kcal: their mean. Undefined where each pouch is by itself, as dry food is. */
function potServingKcal({ style, opened: all }: Dish): number | undefined {
  const opened = all.filter(({ lot }) => !keepsOpen(lot));
  const servings = opened.reduce((sum, { lot, pouches }) => sum + pouches * lot.servingsPerPouch, 0);
  if (style !== 'shared pot' || servings === 0) return undefined;
  return (
    opened.reduce((sum, { lot, pouches }) => sum + pouches * lot.servingsPerPouch * lot.energyKcal, 0) /
    servings
  );
}

/** Food that keeps: what is open is eaten first. */
function eatKeeping(
  task: MealTask,
  role: LotKind,
  lot: PouchLot,
  pouches: number,
  wanted: Dish['portions'],
  open: Map<string, OpenPouch[]>,
  making: MealInMaking,
  settings: Settings,
  { notices }: Served,
): { portions: Dish['portions']; openedServings: number; fromOpen: FromOpen[] } {
  const key = `${task.group}\n${lot.code}`;
  const before = open.get(key) ?? [];
  for (const pouch of before) if (task.day - pouch.day >= settings.dryOpenDays) throwAway(pouch, lot.code);
  const stillOpen = before.filter(({ servings }) => servings > 1e-6);
  const openedNow: OpenPouch[] =
    pouches > 0
      ? [
          {
            day: task.day,
            servings: pouches * lot.servingsPerPouch,
            servingKcal: lot.energyKcal,
            last: making,
          },
        ]
      : [];
  const there = [...stillOpen, ...openedNow];
  const thereServings = there.reduce((sum, { servings }) => sum + servings, 0);
  const portions = cutToFit(wanted, thereServings);
  const eaten = portions.reduce((sum, { servings }) => sum + servings, 0);
  if (portions !== wanted)
    notices.push(
      notice(
        'portions-beyond-pouches',
        {
          recipe: lot.recipe,
          wanted: wanted.reduce((sum, { servings }) => sum + servings, 0),
          there: thereServings,
        },
        { day: task.day, meal: task.meal, lot: lot.code },
      ),
    );
  let rest = eaten;
  let openedServings = 0;
  const fromOpen: FromOpen[] = [];
  for (const pouch of there) {
    const servings = Math.min(rest, pouch.servings);
    if (servings > 1e-6) {
      pouch.servings -= servings;
      pouch.last = making;
      rest -= servings;
      if (openedNow.includes(pouch)) openedServings += servings;
      else
        fromOpen.push({
          code: lot.code,
          recipe: lot.recipe,
          role,
          servings,
          sinceDay: pouch.day,
          ...estimatedOf(lot),
          waterMl: servings * lot.waterMl,
          waterKind: lot.waterKind,
        });
    }
    if (pouch.last === making && pouch.servings > 1e-6)
      making.staysOpen.push({ pouch, code: lot.code, servings: pouch.servings });
  }
  open.set(key, there);
  return { portions, openedServings, fromOpen };
}

/** What is left of an open pouch is lost, at the last meal that ate of it. */
function throwAway(pouch: OpenPouch, code: string): void {
  if (pouch.servings <= 1e-6) return;
  pouch.last.leftOver.push({
    code,
    servings: pouch.servings,
    energyKcal: pouch.servings * pouch.servingKcal,
  });
  pouch.servings = 0;
}

function finished(meal: MenuMeal, making: MealInMaking, settings: Settings): MenuMeal {
  const leftOver = [...Map.groupBy(making.leftOver, ({ code }) => code)].map(([code, rows]) => ({
    code,
    servings: rows.reduce((sum, { servings }) => sum + servings, 0),
    energyKcal: rows.reduce((sum, { energyKcal }) => sum + energyKcal, 0),
  }));
  return {
    ...meal,
    staysOpen: making.staysOpen
      // nothing eats of it any more: it is left over here
      .filter(({ pouch }) => pouch.last !== making)
      .map(({ pouch, code, servings }) => ({
        code,
        servings,
        untilDay: pouch.day + settings.dryOpenDays - 1,
      })),
    leftOver,
    leftOverServings: leftOver.reduce((sum, { servings }) => sum + servings, 0),
    leftOverKcal: leftOver.reduce((sum, { energyKcal }) => sum + energyKcal, 0),
  };
}
