import { say } from '../../texts/say.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import { pouchEnergyKcal } from '../model/pouch-totals.ts';
import type { MenuPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { MEAL_WORDS } from '../../presentation/code-words.ts';
import type { MealPlace } from './edit-menu.ts';
import { whyNotServed } from './exclusions.ts';
import { pouchesNeeded } from './plan-menu.ts';
import { byExpiry } from './by-expiry.ts';

/** A lot that may be opened at a meal by hand. */
export type MealOption = {
  readonly code: string;
  readonly recipe: string;
  readonly bestBefore: string;
  /** Pouches that no meal of this trip opens yet. */
  readonly freePouches: number;
  readonly servingsPerPouch: number;
  readonly pouchEnergyKcal: number;
  /** What speaks against it, in words: who must not be served it and why, or that it is meant for another meal. */
  readonly against: readonly string[];
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
      const walls = party.flatMap((eater) => {
        const why = whyNotServed(lot, eater);
        return why === undefined ? [] : [say('not for {eater}: {why}', { eater: eater.name, why })];
      });
      if (walls.length === party.length) return [];
      const against = lot.mealKinds.includes(at.meal)
        ? walls
        : [
            say('meant for {meals}', {
              meals: lot.mealKinds.map((kind) => say(MEAL_WORDS[kind])).join(', '),
            }),
            ...walls,
          ];
      return [optionOf(lot, free.get(lot.code) ?? 0, against)];
    })
    .sort((a, b) => Number(a.against.length > 0) - Number(b.against.length > 0));
}

function optionOf(lot: PouchLot, freeOfLot: number, against: readonly string[]): MealOption {
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
