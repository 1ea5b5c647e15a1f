import { cookGroupsOf } from '../model/meal-rules.ts';
import { withPlanned } from '../model/planned-lot.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { MenuMeal, MenuPlan } from '../model/trip-plan.ts';
import type { ChosenMeal, DishStyle, MealRule, OpenedLot, Trip } from '../model/trip.ts';
import type { MealKind } from '../model/words.ts';

/** Which meal of the trip is meant: of one cook group. */
export type MealPlace = { readonly day: number; readonly meal: MealKind; readonly group: string };

type Portion = NonNullable<ChosenMeal['portions']>[number];

const isAt = (at: MealPlace) => (meal: ChosenMeal) =>
  meal.day === at.day && meal.meal === at.meal && meal.group === at.group;

/** @returns the meal as the trip lists it; `undefined` where the planner still fills it. */
export function listedMeal(trip: Trip, at: MealPlace): ChosenMeal | undefined {
  const { groups } = cookGroupsOf(trip);
  const isKnown = (group: string | undefined) => groups.some(({ name }) => name === group);
  return (
    trip.menu.find(isAt(at)) ??
    trip.menu.find((meal) => meal.day === at.day && meal.meal === at.meal && !isKnown(meal.group))
  );
}

/** @returns how many pouches of a lot the trip lists for a meal. */
export function pouchesListed(trip: Trip, at: MealPlace, code: string): number {
  return (listedMeal(trip, at)?.opened ?? [])
    .filter((lot) => lot.code === code)
    .reduce((sum, { pouches }) => sum + pouches, 0);
}

/**
 * Lists every meal of a menu in the trip, with its portions, so that it stands from now on. Meals that the trip lists as a whole already stay as they are
 * listed, even where the shelf cannot serve them; of those that it lists in part, the locks stay.
 */
export function keepMenu(trip: Trip, menu: Pick<MenuPlan, 'meals'>): Trip {
  const places = menu.meals.map(({ day, meal, group }) => ({ day, meal, group }));
  const planned = menu.meals.flatMap((meal): ChosenMeal[] => {
    if (meal.eaters.length === 0) return [];
    const listed = listedMeal(trip, meal);
    const isAlone = places.filter((at) => at.day === meal.day && at.meal === meal.meal).length === 1;
    if (listed && !listed.toFill && (listed.group === meal.group || isAlone))
      return [{ ...listed, group: meal.group }];
    return [asListed(meal)];
  });
  const isPlanned = (listed: ChosenMeal) =>
    planned.some(({ day, meal }) => day === listed.day && meal === listed.meal);
  return { ...trip, menu: [...planned, ...trip.menu.filter((meal) => !isPlanned(meal))] };
}

/** A meal of a plan as a trip lists it. */
function asListed(meal: MenuMeal): ChosenMeal {
  return {
    day: meal.day,
    meal: meal.meal,
    group: meal.group,
    locked: meal.locked,
    byHand: meal.byHand,
    opened: meal.opened.map(({ code, pouches, role, style, reason, locked }): OpenedLot => ({
      code,
      pouches,
      role,
      style,
      reason,
      ...(locked && { locked }),
    })),
    portions: meal.portions.map(({ eater, code, servings, style, role }): Portion => ({
      eater,
      code,
      servings,
      style,
      ...(!meal.opened.some((lot) => lot.code === code) && { role }),
    })),
    ...(meal.lockedPlates.length > 0 && { lockedPlates: meal.lockedPlates }),
  };
}

/**
 * Puts as many pouches of another lot in the place of all pouches of one lot. Who ate of the one eats of the other, where each pouch is shared out as before;
 * else it is shared out anew.
 */
export function swapPouch(
  trip: Trip,
  at: MealPlace,
  fromCode: string,
  toCode: string,
  pouches: number,
): Trip {
  if (fromCode === toCode) return setPouches(trip, at, toCode, pouches);
  return editMeal(trip, at, (opened) => {
    const alreadyThere = opened.find(({ code }) => code === toCode)?.pouches ?? 0;
    const style = opened.find(({ code }) => code === fromCode)?.style;
    return opened
      .filter(({ code }) => code !== toCode)
      .map((lot) =>
        lot.code === fromCode
          ? { code: toCode, pouches: pouches + alreadyThere, ...(style && { style }) }
          : lot,
      )
      .filter((lot, index, all) => all.findIndex(({ code }) => code === lot.code) === index);
  });
}

/** Adds pouches of a lot to a meal. */
export function addPouch(trip: Trip, at: MealPlace, code: string, pouches = 1): Trip {
  return setPouches(trip, at, code, pouchesListed(trip, at, code) + pouches);
}

/** Makes a meal open so many pouches of a lot: none takes the lot off the meal. */
export function setPouches(trip: Trip, at: MealPlace, code: string, pouches: number): Trip {
  if (pouches <= 0) return removePouch(trip, at, code);
  return editMeal(trip, at, (opened) =>
    opened.some((lot) => lot.code === code)
      ? opened
          .filter(
            (lot, index) => lot.code !== code || opened.findIndex((other) => other.code === code) === index,
          )
          .map((lot) => (lot.code === code ? { ...lot, pouches } : lot))
      : [...opened, { code, pouches }],
  );
}

/** Takes a lot off a meal. A meal that loses its last lot stays empty until the menu is planned again. */
export function removePouch(trip: Trip, at: MealPlace, code: string): Trip {
  return editMeal(trip, at, (opened) => opened.filter((lot) => lot.code !== code));
}

/** Lists the portions of a meal as its plan has them, where its dishes are still to be shared out. */
export function listPortions(trip: Trip, meal: MenuMeal): Trip {
  return changeMeal(trip, meal, (listed) => {
    const own = listed.portions ?? [];
    const planned = asListed(meal).portions ?? [];
    return {
      ...listed,
      portions: [...own, ...planned.filter(({ code }) => !own.some((portion) => portion.code === code))],
    };
  });
}

/** Gives somebody so many servings of a lot at a meal: none takes it off their plate. */
export function setPortion(
  trip: Trip,
  at: MealPlace,
  { eater, code, style }: { eater: string; code: string; style?: DishStyle | undefined },
  servings: number,
): Trip {
  return changeMeal(trip, at, (meal) => {
    const isIt = (portion: Portion) =>
      portion.eater === eater && portion.code === code && (style ?? portion.style) === portion.style;
    const portions = meal.portions ?? [];
    const changed = portions.some(isIt)
      ? portions.flatMap((portion) =>
          isIt(portion) ? (servings > 0 ? [{ ...portion, servings }] : []) : [portion],
        )
      : servings > 0
        ? [...portions, { eater, code, servings, ...(style && { style }) }]
        : portions;
    return { ...meal, byHand: true, portions: changed };
  });
}

/** Locks a meal, so that it outlives planning again, or unlocks it. */
export function lockMeal(trip: Trip, at: MealPlace, locked: boolean): Trip {
  return changeMeal(trip, at, (meal) => ({ ...meal, locked }));
}

/**
 * Lets everyone eat a meal elsewhere, such as in a hut, or eat it on the trip after all. Its pouches are free again; eaten on the trip, the planner fills it.
 */
export function eatElsewhere(
  trip: Trip,
  { day, meal }: Pick<MealPlace, 'day' | 'meal'>,
  isElsewhere: boolean,
): Trip {
  const isOfThis = (rule: MealRule) =>
    rule.days?.toString() === String(day) &&
    rule.meals?.toString() === meal &&
    Object.keys(rule).length === 3;
  const others = (trip.mealRules ?? []).filter((rule) => rule.elsewhere === undefined || !isOfThis(rule));
  const rule: MealRule = { days: [day], meals: [meal], elsewhere: isElsewhere ? 'everyone' : 'no one' };
  return {
    ...trip,
    mealRules: [...others, rule],
    menu: trip.menu.filter((listed) => listed.day !== day || listed.meal !== meal),
  };
}

/** Locks the dish of some lots, or unlocks it. */
export function lockDish(trip: Trip, at: MealPlace, codes: readonly string[], locked: boolean): Trip {
  return changeMeal(trip, at, (meal) => ({
    ...meal,
    opened: meal.opened.map(({ locked: _, ...lot }) =>
      codes.includes(lot.code) ? { ...lot, ...(locked && { locked }) } : { ...lot, ...(_ && { locked: _ }) },
    ),
  }));
}

/** Locks what is on somebody's plate, or unlocks it. */
export function lockPlate(trip: Trip, at: MealPlace, eater: string, locked: boolean): Trip {
  return changeMeal(trip, at, ({ lockedPlates = [], ...meal }) => {
    const others = lockedPlates.filter((name) => name !== eater);
    const plates = locked ? [...others, eater] : others;
    return { ...meal, ...(plates.length > 0 && { lockedPlates: plates }) };
  });
}

/**
 * Drops what is not locked, for the planner to fill anew: whole meals, and of the others all but their locked dishes and plates.
 *
 * @param which meals it is about; left out: all
 */
export function forgetUnlocked(
  trip: Trip,
  stock: Stock,
  which: (meal: ChosenMeal) => boolean = () => true,
): Trip {
  const lots = withPlanned(stock, trip.planned);
  const servingsOf = new Map(lots.map((lot) => [lot.code, lot.servingsPerPouch]));
  return {
    ...trip,
    menu: trip.menu.flatMap((meal) => {
      if (meal.locked || !which(meal)) return [meal];
      const kept = lockedPart(meal, servingsOf);
      return kept.opened.length > 0 ? [kept] : [];
    }),
  };
}

/** Whether somebody eats of a lot at a meal, from a pouch that the meal opens or from one that is open. */
export const eatsOf =
  (code: string) =>
  ({ opened, portions = [] }: ChosenMeal): boolean =>
    [...opened, ...portions].some((row) => row.code === code);

/** Takes a lot off all meals: those that ate of it are planned anew, but for what else is locked of them. */
export function dropLot(trip: Trip, code: string, stock: Stock): Trip {
  const eats = eatsOf(code);
  const open = forgetUnlocked(trip, stock, eats);
  return {
    ...open,
    menu: open.menu.flatMap((meal): ChosenMeal[] => {
      if (!eats(meal)) return [meal];
      const opened = meal.opened.filter((row) => row.code !== code);
      const portions = meal.portions?.filter((row) => row.code !== code);
      return opened.length > 0 ? [{ ...meal, opened, ...(portions && { portions }), toFill: true }] : [];
    }),
  };
}

/** What is locked of a meal: dishes, and plates with the pouches that they are from; of a pot, which is one for all, the whole. */
function lockedPart(meal: ChosenMeal, servingsOf: ReadonlyMap<string, number>): ChosenMeal {
  const plates = new Set(meal.lockedPlates);
  const portions = meal.portions ?? [];
  const opened = meal.opened.flatMap((lot): OpenedLot[] => {
    if (lot.locked) return [lot];
    const own = portions.filter(
      ({ eater, code, style }) =>
        plates.has(eater) && code === lot.code && (style ?? lot.style) === lot.style,
    );
    if (own.length === 0) return [];
    const servings = servingsOf.get(lot.code);
    if (lot.style !== 'own pouch' || servings === undefined) return [lot];
    const pouches = own.reduce((sum, portion) => sum + Math.ceil(portion.servings / servings - 1e-6), 0);
    return [{ ...lot, pouches: Math.min(lot.pouches, pouches) }];
  });
  const isKept = ({ eater, code, style }: Portion) => {
    const row = opened.find((lot) => lot.code === code && (style ?? lot.style) === lot.style);
    return row !== undefined && (row.locked || row.style !== 'own pouch' || plates.has(eater));
  };
  return {
    ...meal,
    opened,
    ...(meal.portions && { portions: portions.filter(isKept) }),
    toFill: true,
  };
}

/** Drops the meals that a trip no longer has, after its days or its first or last meal have changed. */
export function dropMeals(trip: Trip, dropped: readonly ChosenMeal[]): Trip {
  return { ...trip, menu: trip.menu.filter((meal) => !dropped.includes(meal)) };
}

/** Changes the pouches of a meal. What is changed is shared out anew, and where that is a pot, every pot of the meal. */
function editMeal(trip: Trip, at: MealPlace, edit: (opened: readonly OpenedLot[]) => OpenedLot[]): Trip {
  return changeMeal(trip, at, ({ portions, ...meal }) => {
    const opened = edit(meal.opened);
    const changed = [
      ...meal.opened.filter((lot) => !opened.includes(lot)),
      ...opened.filter((lot) => !meal.opened.includes(lot)),
    ];
    const isPot = (lot: OpenedLot | undefined) => lot?.style !== 'own pouch';
    const isAnew = ({ code }: Portion) =>
      changed.some((lot) => lot.code === code) ||
      (changed.some(isPot) && isPot(meal.opened.find((lot) => lot.code === code)));
    return {
      ...meal,
      byHand: true,
      opened: opened.map((lot) => {
        if (!changed.includes(lot)) return lot;
        const { reason: _reason, why: _why, ...byHand } = lot;
        return byHand;
      }),
      ...(portions && { portions: portions.filter((portion) => !isAnew(portion)) }),
    };
  });
}

function changeMeal(trip: Trip, at: MealPlace, change: (meal: ChosenMeal) => ChosenMeal): Trip {
  const { day, meal, group } = at;
  const empty: ChosenMeal = { day, meal, group, locked: false, byHand: false, opened: [] };
  const listed = listedMeal(trip, at);
  const menu = listed ? trip.menu : [...trip.menu, empty];
  return { ...trip, menu: menu.map((other) => (other === (listed ?? empty) ? change(other) : other)) };
}
