import { addMonths } from './planning/model/calendar.ts';
import type { PouchLot } from './planning/model/pouch-lot.ts';
import { MEAL_KINDS, type MealKind } from './planning/model/words.ts';

/** Servings at home whose best-before lies in one stretch of time, by the first meal that their lot suits. */
export type BestBeforeSpan = {
  readonly label: string;
  /** Past its best-before today. */
  readonly isPast: boolean;
  readonly servings: Readonly<Record<MealKind, number>>;
  readonly total: number;
};

/** More months than these are shown as quarters, and more quarters as years. */
const MOST_SPANS = 18;
const SPANS = [
  { months: 1, name: (date: string) => date.slice(0, 7) },
  {
    months: 3,
    name: (date: string) => `${date.slice(0, 4)} Q${Math.ceil(Number(date.slice(5, 7)) / 3)}`,
  },
  { months: 12, name: (date: string) => date.slice(0, 4) },
] as const;

/**
 * The shelf by best-before: what is past, then months, quarters or years without a gap, whichever gives no more than eighteen.
 *
 * @param today calendar date
 */
export function servingsByBestBefore(lots: readonly PouchLot[], today: string): BestBeforeSpan[] {
  const here = lots.filter(({ pouches }) => pouches > 0);
  const past = here.filter(({ bestBefore }) => bestBefore < today);
  const good = here.filter(({ bestBefore }) => bestBefore >= today);
  const last = good.reduce((latest, { bestBefore }) => (bestBefore > latest ? bestBefore : latest), today);
  const span =
    SPANS.find(({ months, name }) => name(addMonths(today, months * (MOST_SPANS - 1))) >= name(last)) ??
    SPANS[2];

  const names: string[] = [];
  if (good.length > 0)
    for (let at = today.slice(0, 8) + '01'; ; at = addMonths(at, 1)) {
      const name = span.name(at);
      if (names.at(-1) !== name) names.push(name);
      if (name >= span.name(last)) break;
    }
  return [
    ...(past.length > 0 ? [spanOf('past', true, past)] : []),
    ...names.map((name) =>
      spanOf(
        name,
        false,
        good.filter(({ bestBefore }) => span.name(bestBefore) === name),
      ),
    ),
  ];
}

function spanOf(label: string, isPast: boolean, lots: readonly PouchLot[]): BestBeforeSpan {
  const servings = { breakfast: 0, lunch: 0, snack: 0, dinner: 0, drink: 0 };
  for (const lot of lots) {
    const meal = MEAL_KINDS.find((kind) => lot.mealKinds.includes(kind)) ?? 'dinner';
    servings[meal] += lot.pouches * lot.servingsPerPouch;
  }
  return { label, isPast, servings, total: Object.values(servings).reduce((sum, count) => sum + count, 0) };
}

/** What a serving of a recipe cost over the pouches at home, minor units. */
export type RecipeCost = {
  readonly recipe: string;
  readonly servingMinor: number;
  /** Cheapest and dearest lot. */
  readonly low: number;
  readonly high: number;
  readonly per1000KcalMinor: number | undefined;
  readonly servings: number;
};

/** The cost of a serving by recipe, dearest first; lots without a cost do not count. */
export function costByRecipe(lots: readonly PouchLot[]): RecipeCost[] {
  const priced = lots.filter(({ pouches, costMinor }) => pouches > 0 && costMinor !== undefined);
  return [...Map.groupBy(priced, ({ recipe }) => recipe)]
    .map(([recipe, of]): RecipeCost => {
      const sum = (what: (lot: PouchLot) => number) =>
        of.reduce((total, lot) => total + lot.pouches * lot.servingsPerPouch * what(lot), 0);
      const servings = sum(() => 1);
      const paid = sum(({ costMinor }) => costMinor ?? 0);
      const energyKcal = sum((lot) => lot.energyKcal);
      const costs = of.map(({ costMinor }) => costMinor ?? 0);
      return {
        recipe,
        servingMinor: paid / servings,
        low: Math.min(...costs),
        high: Math.max(...costs),
        per1000KcalMinor: energyKcal > 0 ? (paid / energyKcal) * 1000 : undefined,
        servings,
      };
    })
    .sort((a, b) => b.servingMinor - a.servingMinor || (a.recipe < b.recipe ? -1 : 1));
}
