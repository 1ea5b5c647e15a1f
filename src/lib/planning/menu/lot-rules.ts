import type { PouchLot } from '../model/pouch-lot.ts';
import { MAIN_MEALS, type LotKind, type MealKind, type MealStop } from '../model/words.ts';

/** A pouch of less is one person's; a larger one may be several people's. */
export const OWN_POUCH_BELOW_SERVINGS = 1.5;
/** Food that soaks cold for longer is not planned: cold-soaked food belongs to the two hours in which perishable food may stand (USDA FSIS, the two-hour rule). */
export const MOST_COLD_SOAK_MIN = 120;
/** The same where the air is hotter than this, °C, and then (USDA FSIS: one hour above 90 °F). */
const HOT_AIR_C = 32;
const MOST_COLD_SOAK_IN_HEAT_MIN = 60;

/** What a lot is on a plate, as stated, or by the meals that it suits. */
export function kindOf(lot: Pick<PouchLot, 'kind' | 'mealKinds'>): LotKind {
  if (lot.kind) return lot.kind;
  if (MAIN_MEALS.some((meal) => lot.mealKinds.includes(meal))) return 'main';
  return lot.mealKinds.includes('snack') ? 'extra' : 'drink';
}

/**
 * What a lot would be at a meal: what it is, where it suits that meal; a main dish that is eaten dry and suits snacks is an extra among these.
 *
 * @returns undefined where it does not suit the meal
 */
export function roleAt(
  lot: Pick<PouchLot, 'kind' | 'mealKinds' | 'waterKind'>,
  meal: MealKind,
): LotKind | undefined {
  const kind = kindOf(lot);
  if (!lot.mealKinds.includes(meal)) return undefined;
  if (meal === 'snack' && kind === 'main') return lot.waterKind === 'none' ? 'extra' : undefined;
  return kind;
}

/** Whether what is left in an opened pouch keeps for some days: food that is eaten dry, and powders that are stirred into a cup. */
export const keepsOpen = (lot: Pick<PouchLot, 'kind' | 'mealKinds' | 'waterKind'>): boolean =>
  lot.waterKind === 'none' || kindOf(lot) === 'drink';

/** Whether a pouch takes its water and can be eaten from. */
export const canBePlate = (
  lot: Pick<PouchLot, 'pouchTakesBoilingWater' | 'eatFromPouch' | 'waterKind'>,
): boolean =>
  lot.eatFromPouch !== false &&
  (lot.pouchTakesBoilingWater !== false || lot.waterKind === 'cold' || lot.waterKind === 'none');

/** Whether a pouch of it can be somebody's plate: not where it must be cooked on, or its pouch takes no boiling water or is no plate. */
export const canBeOwnPouch = (
  lot: Pick<PouchLot, 'cookAfter' | 'pouchTakesBoilingWater' | 'eatFromPouch' | 'waterKind'>,
): boolean => lot.cookAfter === undefined && canBePlate(lot);

/**
 * Whether a meal can be made of a lot with the stop that it has: without a stove only cold water or none, and nothing that has to be cooked;
 * without a stop no water at all; and no cold soaking for longer than is safe.
 *
 * @param airC air temperature of the day, °C
 */
export function suitsStop(
  lot: Pick<PouchLot, 'waterKind' | 'cookAfter' | 'steepMin'>,
  stop: MealStop,
  airC: number,
): boolean {
  const mostMin = airC > HOT_AIR_C ? MOST_COLD_SOAK_IN_HEAT_MIN : MOST_COLD_SOAK_MIN;
  if (lot.waterKind === 'cold' && lot.steepMin > mostMin) return false;
  if (stop === 'stove') return true;
  if (lot.cookAfter !== undefined) return false;
  return lot.waterKind === 'none' || (stop === 'no stove' && lot.waterKind === 'cold');
}

/** Pieces, spoonfuls or half servings that one pouch of an extra is counted in. */
export const unitsOf = (lot: Pick<PouchLot, 'pieces' | 'servingsPerPouch'>): number =>
  lot.pieces ?? Math.max(1, Math.round(2 * lot.servingsPerPouch));
