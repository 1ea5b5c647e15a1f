import { whyNotServed } from '../planning/menu/exclusions.ts';
import { portionStep } from '../planning/menu/plates-by-hand.ts';
import { tasteOf } from '../planning/menu/tastes.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { DishStyle, Eater } from '../planning/model/trip.ts';
import type { LotKind, Taste } from '../planning/model/words.ts';

/** How one lot on a meal can be dealt. */
export type PlateChoice = {
  readonly code: string;
  readonly recipe: string;
  /** Servings in a step of a portion, and in a pouch. */
  readonly step: number;
  readonly servingsPerPouch: number;
  readonly pieces: number | undefined;
  /** Servings at hand at this meal. */
  readonly there: number;
  /** Who may have it. */
  readonly eaters: readonly string[];
  /** What each of them says to the dish. */
  readonly tastes: Readonly<Record<string, Taste>>;
};
export type PlateChoices = readonly PlateChoice[];

type OnMeal = {
  readonly code: string;
  readonly role: LotKind;
  readonly servings: number;
};

/**
 * @param lots what is on the meal: opened pouches, and food from pouches that are open
 * @param eaters who eats it
 * @returns how each lot of a meal can be dealt, once for each
 */
export function plateChoices(
  lots: readonly (OnMeal & { readonly style: DishStyle })[],
  eaters: readonly Eater[],
  stock: Stock,
): PlateChoice[] {
  return [...Map.groupBy(lots, ({ code }) => code)].flatMap(([code, rows]): PlateChoice[] => {
    const lot = stock.find((other) => other.code === code);
    const [first] = rows;
    if (!lot || !first) return [];
    const may = eaters.filter((eater) => whyNotServed(lot, eater) === undefined);
    return [
      {
        code,
        recipe: lot.recipe,
        step: portionStep(lot, first.role, first.style),
        servingsPerPouch: lot.servingsPerPouch,
        pieces: lot.pieces,
        there: rows.reduce((sum, { servings }) => sum + servings, 0),
        eaters: may.map(({ name }) => name),
        tastes: Object.fromEntries(
          may.flatMap((eater) => {
            const taste = tasteOf(lot.recipe, eater);
            return taste ? [[eater.name, taste]] : [];
          }),
        ),
      },
    ];
  });
}
