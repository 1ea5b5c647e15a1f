import type { FuelPlan, Shortfall, Suggestion } from '../planning/model/trip-plan.ts';
import type { DryingLine, DryingPlan } from '../planning/shortfall/plan-drying.ts';
import { exclusionTexts } from '../presentation/exclusion-words.ts';
import { lineName } from './drying-plan.ts';

/** What is missing for a meal and its eaters: a part is dried before departure, the rest is to be bought. */
export type ShoppingItem = {
  /** For whom and when: "dinner for Ada, Ben", "lunch for everyone" */
  readonly name: string;
  readonly exclusions: readonly string[];
  readonly missingKcal: number;
  readonly toBuyKcal: number;
  /** Foods of which any one is enough. */
  readonly choices: readonly Suggestion[];
};

/** Less than this is dust of reckoning, kcal. */
const DUST_KCAL = 0.5;

/**
 * The shopping list line by line.
 *
 * @param toDry what can be dried before departure, and what its loads are for; left out: nothing, so that all is to be bought
 */
export function shoppingItems(
  { shopping }: Shortfall,
  partySize: number,
  toDry: { readonly drying: DryingPlan; readonly lines: readonly DryingLine[] } | undefined,
): ShoppingItem[] {
  // what is planned to be dried comes before what is missing
  const first = (toDry?.lines.length ?? 0) - shopping.length;
  return shopping.map((line, place) => {
    const { missingKcal, exclusions, suggestions } = line;
    const index = first + place;
    const undried = toDry?.drying.toBuy
      .filter((item) => item.line === index)
      .reduce((sum, item) => sum + item.missingKcal, 0);
    const toBuyKcal = undried === undefined ? missingKcal : undried > DUST_KCAL ? undried : 0;
    const choices = toBuyKcal > 0 ? suggestions.filter(({ way }) => way === 'buy') : [];
    return {
      name: lineName(line, partySize),
      exclusions: exclusionTexts(exclusions),
      missingKcal,
      toBuyKcal,
      choices,
    };
  });
}

/** @returns containers of fuel that the trip takes full, of all cook groups together: from home or from a shop. */
export const fullContainers = ({ containers }: FuelPlan): { label: string; count: number }[] =>
  [
    ...Map.groupBy(
      containers.filter(({ started }) => !started),
      ({ label }) => label,
    ),
  ].map(([label, rows]) => ({ label, count: rows.reduce((sum, { count }) => sum + count, 0) }));
