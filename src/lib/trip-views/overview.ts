import type { Notice } from '../planning/model/notices.ts';
import type { Reason } from '../planning/model/reasons.ts';
import type { DayLoad, MenuMeal, MissingMeal, TripPlan } from '../planning/model/trip-plan.ts';
import type { DayKind, LotKind, MealKind, PlannedWay, WaterKind } from '../planning/model/words.ts';
import { hasLeft, type Stage } from '../ledger-kinds.ts';
import { placeKey } from './meal-place.ts';
import { heaviestOn, peakLoads } from './loads.ts';
import { tripDays, type TripDay } from './trip-days.ts';

/** A dish at a meal, of one recipe: who eats it, how much, and what goes into it. */
export type BoardDish = {
  readonly recipe: string;
  readonly codes: readonly string[];
  /** How some of it has still to come. */
  readonly toCome: PlannedWay | undefined;
  readonly role: LotKind;
  /** Pouches opened for it; none where it comes from an open one. */
  readonly pouches: number;
  readonly waterMl: number;
  readonly waterKind: WaterKind;
  readonly reason: Reason | undefined;
  readonly plates: readonly { readonly eater: string; readonly servings: number }[];
  /** Whether all who eat this meal together eat of it. */
  readonly forAll: boolean;
};

/** What one cook group eats at one meal. */
export type BoardMeal = Pick<
  MenuMeal,
  'day' | 'meal' | 'group' | 'stop' | 'elsewhere' | 'locked' | 'byHand'
> & {
  readonly key: string;
  readonly eaters: readonly string[];
  readonly dishes: readonly BoardDish[];
  /** What its eaters lack, kcal; 0 where it is enough. */
  readonly missingKcal: number;
};
export type BoardDay = TripDay & {
  /** What is different on it. */
  readonly kind: DayKind | undefined;
  readonly meals: readonly BoardMeal[];
  /** The heaviest pack of the day. */
  readonly heaviest: Pick<DayLoad, 'eater' | 'peakG'> | undefined;
};

/** The menu as a board: days across, meals down, what each group eats at each. */
export function boardOf(plan: TripPlan): BoardDay[] {
  const { menu, shortfall, carry } = plan;
  return tripDays(plan).map(({ day, date }) => ({
    day,
    date,
    kind: plan.demand[day - 1]?.kind,
    heaviest: heaviestOn(carry, day),
    meals: menu.meals
      .filter((meal) => meal.day === day)
      .map((meal) => ({
        day,
        meal: meal.meal,
        group: meal.group,
        stop: meal.stop,
        elsewhere: meal.elsewhere,
        locked: meal.locked,
        byHand: meal.byHand,
        key: placeKey(meal, menu.groups),
        eaters: meal.eaters,
        dishes: dishesOf(meal),
        missingKcal: missingAt(meal, shortfall.meals),
      })),
  }));
}

function dishesOf(meal: MenuMeal): BoardDish[] {
  const lots = [...meal.opened, ...meal.fromOpen.map((lot) => ({ ...lot, pouches: 0, reason: undefined }))];
  return [...Map.groupBy(lots, ({ recipe }) => recipe)].flatMap(([recipe, rows]) => {
    const [first] = rows;
    if (!first) return [];
    const codes = [...new Set(rows.map(({ code }) => code))];
    const own = meal.portions.filter(({ code, servings }) => codes.includes(code) && servings > 0);
    const plates = [...Map.groupBy(own, ({ eater }) => eater)].map(([eater, portions]) => ({
      eater,
      servings: portions.reduce((sum, { servings }) => sum + servings, 0),
    }));
    return {
      recipe,
      codes: [...new Set(rows.filter((row) => !row.toCome).map(({ code }) => code))],
      toCome: rows.find((row) => row.toCome)?.toCome,
      role: first.role,
      pouches: rows.reduce((sum, { pouches }) => sum + pouches, 0),
      waterMl: rows.reduce((sum, { waterMl }) => sum + waterMl, 0),
      waterKind: first.waterKind,
      reason: first.reason,
      plates,
      forAll: meal.eaters.every((eater) => plates.some((plate) => plate.eater === eater)),
    };
  });
}

const missingAt = ({ day, meal, eaters }: MenuMeal, missing: readonly MissingMeal[]): number =>
  missing
    .filter((other) => other.day === day && other.meal === meal)
    .flatMap((other) => other.eaters)
    .filter(({ eater }) => eaters.includes(eater))
    .reduce((sum, { missingKcal }) => sum + missingKcal, 0);

/** What the answer on the shortfall says already, and what every stove asks of everybody. */
const SAID_ELSEWHERE: readonly Notice['code'][] = ['hungry', 'stove-safety'];

/** Whether a notice stands before everything else: what cannot work or can hurt, unless it is said there otherwise. */
export const isUrgent = ({ severity, code }: Pick<Notice, 'severity' | 'code'>): boolean =>
  (severity === 'attention' || severity === 'warning') && !SAID_ELSEWHERE.includes(code);

/** What is to be done next, in the order of the work. */
export type NextStep =
  'copy' | 'get food' | 'set aside' | 'set aside again' | 'pack' | 'note' | 'record' | 'nothing';

/** The four answers at the head of a trip. */
export type Answers = {
  readonly short: {
    readonly kcal: number;
    /** The days on which a meal is short, by kind of meal in the order of the day. */
    readonly meals: readonly { readonly meal: MealKind; readonly days: readonly number[] }[];
  };
  /** Each person's heaviest pack, the heaviest first. */
  readonly packs: readonly Pick<DayLoad, 'eater' | 'day' | 'peakG'>[];
  readonly containers: readonly { readonly label: string; readonly count: number }[];
  readonly fuelGrossG: number;
  readonly water: { readonly peakMl: number; readonly day: number };
  readonly next: NextStep;
  readonly pouches: number;
};

/** How far a trip has come. */
type Standing = {
  readonly stage: Stage;
  readonly matches: boolean;
  readonly isOver: boolean;
  readonly isTemplate: boolean;
};

export function answersOf(plan: TripPlan, trip: Standing): Answers {
  const { shortfall, coming, fuel, water, carry, totals } = plan;
  const byMeal = Map.groupBy(shortfall.meals, ({ meal }) => meal);
  const containers = Map.groupBy(fuel.containers, ({ label }) => label);
  return {
    short: {
      kcal: shortfall.missingKcal,
      meals: [...byMeal].map(([meal, rows]) => ({ meal, days: [...new Set(rows.map(({ day }) => day))] })),
    },
    packs: peakLoads(carry)
      .map(({ eater, day, peakG }) => ({ eater, day, peakG }))
      .sort((a, b) => b.peakG - a.peakG),
    containers: [...containers].map(([label, rows]) => ({
      label,
      count: rows.reduce((sum, { count }) => sum + count, 0),
    })),
    fuelGrossG: fuel.grossG,
    water: { peakMl: water.peakMl, day: water.peakDay },
    next: nextStep(
      shortfall.missingKcal > 0 || coming.some(({ needed, at }) => needed > 0 && at === undefined),
      trip,
    ),
    pouches: totals.pouches,
  };
}

function nextStep(lacksFood: boolean, { stage, matches, isOver, isTemplate }: Standing): NextStep {
  if (isTemplate) return 'copy';
  if (stage === 'finished') return 'nothing';
  if (hasLeft(stage)) return isOver ? 'record' : 'note';
  if (isOver) return stage === 'open' ? 'nothing' : 'record';
  if (lacksFood) return 'get food';
  if (stage === 'open') return 'set aside';
  return matches ? 'pack' : 'set aside again';
}
