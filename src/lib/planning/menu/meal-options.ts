import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import { pouchEnergyKcal } from '../model/pouch-totals.ts';
import type { MenuPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import type { MealKind } from '../model/words.ts';
import type { MealPlace } from './edit-menu.ts';
import { whyNotServed, type Wall } from './exclusions.ts';
import { pouchesNeeded } from './plan-menu.ts';
import { byExpiry } from './by-expiry.ts';

/** What speaks against a lot at a meal: somebody must not be served it, or it is meant for other meals. */
export type Against =
  | { readonly kind: 'not for'; readonly eater: string; readonly why: Wall }
  | { readonly kind: 'meant for'; readonly meals: readonly MealKind[] };

/** A lot that may be opened at a meal by hand. */
export type MealOption = {
  readonly code: string;
  readonly recipe: string;
  readonly bestBefore: string;
  /** Pouches that no meal of this trip opens yet. */
  readonly freePouches: number;
  readonly servingsPerPouch: number;
  readonly pouchEnergyKcal: number;
  readonly against: readonly Against[];
};

/** @returns pouches of each lot that no meal of the menu opens, and its reserve does not hold. */
export function freePouches(
  stock: Stock,
  menu: Pick<MenuPlan, 'meals' | 'reserve'>,
): ReadonlyMap<string, number> {
  const free = new Map(stock.map((lot) => [lot.code, lot.pouches]));
  for (const { code, pouches } of pouchesNeeded(menu)) free.set(code, (free.get(code) ?? 0) - pouches);
  return free;
}

/**
 * The lots that can be put on a meal by hand: in date that day, with a free pouch, and allowed to at least one eater.
 *
 * @param party who eats the meal
 * @param date date of the meal
 * @returns those that suit everybody first, then by best-before
 */
export function mealOptions(
  party: Trip['party'],
  stock: Stock,
  menu: MenuPlan,
  at: MealPlace,
  date: string,
): MealOption[] {
  const free = freePouches(stock, menu);
  return stock
    .filter((lot) => (free.get(lot.code) ?? 0) > 0 && lot.bestBefore >= date)
    .sort(byExpiry)
    .flatMap((lot) => {
      const walls = party.flatMap((eater): Against[] => {
        const why = whyNotServed(lot, eater);
        return why === undefined ? [] : [{ kind: 'not for', eater: eater.name, why }];
      });
      if (walls.length === party.length) return [];
      const against = lot.mealKinds.includes(at.meal)
        ? walls
        : [{ kind: 'meant for', meals: lot.mealKinds } as const, ...walls];
      return [optionOf(lot, free.get(lot.code) ?? 0, against)];
    })
    .sort((a, b) => Number(a.against.length > 0) - Number(b.against.length > 0));
}

function optionOf(lot: PouchLot, freeOfLot: number, against: readonly Against[]): MealOption {
  const { code, recipe, bestBefore, servingsPerPouch } = lot;
  return {
    code,
    recipe,
    bestBefore,
    freePouches: freeOfLot,
    servingsPerPouch,
    pouchEnergyKcal: pouchEnergyKcal(lot),
    against,
  };
}
