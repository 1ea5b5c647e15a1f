import type { MenuCosts } from '../model/settings.ts';

/*
 * What a menu costs, in points: the less, the better. The settings weigh hunger, waste and the like; the shapes below are rules of thumb, no source:
 * what made plans behave like a cook in trials.
 */

/** A day is as it should be within these shares of its need. */
export const DAY_FREE_FROM = 0.95;
export const DAY_FREE_TO = 1.15;
/** Down to this share, hunger costs a part only. */
export const DAY_MILD_FROM = 0.9;
const MILD_PART = 0.3;
/** A meal is as it should be within these shares of what is planned for it. */
export const MEAL_FREE_FROM = 0.75;
export const MEAL_FREE_TO = 1.3;
/** Nobody eats more than this share of what is planned for a meal, whatever was opened. */
export const SITTING_SHARE = 1.75;
/** What a kilocalorie costs, as parts of one that is missing to a day: outside the free range of a meal, and away from its plan. */
const MEAL_OFF_PART = 0.5;
const MEAL_PULL_PART = 0.05;

/** A main meal without a main dish, for each person, points for a kcal of hunger at 1. */
export const SKIPPED_MEAL = 150;
/** A pouch of one's own: one more to open and pour. */
export const OWN_PLATE = 3;
/** A second kind of pouch handed out at one meal, as a part of a second dish to cook. */
export const OWN_SECOND_PART = 0.25;
/** A pot to stir and to wash. */
export const POT = 6;
/** A pot where pouches of their own were asked for. */
export const POT_FOR_OWN = 100;
/** Each piece or half serving of an extra, and each further sort of extra for a group on a day. */
export const EXTRA_UNIT = 1;
export const EXTRA_SORT = 1;
/** What a liked dish is worth, each time. */
export const LIKED = 6;

/** Points of a person's day. @param needKcal what the day should bring @param eatenKcal what it brings */
export function dayPoints(needKcal: number, eatenKcal: number, costs: MenuCosts): number {
  const low = DAY_FREE_FROM * needKcal;
  if (eatenKcal < low) {
    const mildKcal = Math.min(low - eatenKcal, low - DAY_MILD_FROM * needKcal);
    return costs.missingKcal * (MILD_PART * mildKcal + (low - eatenKcal - mildKcal));
  }
  const aboveKcal = eatenKcal - DAY_FREE_TO * needKcal;
  return aboveKcal > 0 ? costs.leftOverKcal * aboveKcal : 0;
}

/** Points of the size of a person's meal. */
export function mealPoints(plannedKcal: number, eatenKcal: number, costs: MenuCosts): number {
  const off =
    Math.max(0, MEAL_FREE_FROM * plannedKcal - eatenKcal) +
    Math.max(0, eatenKcal - MEAL_FREE_TO * plannedKcal);
  return costs.missingKcal * (MEAL_PULL_PART * Math.abs(eatenKcal - plannedKcal) + MEAL_OFF_PART * off);
}

/** The slopes of a day's points below its free range, and above it, for a linear program. */
export const daySlopes = (costs: MenuCosts) => ({
  mild: MILD_PART * costs.missingKcal,
  missing: costs.missingKcal,
  above: costs.leftOverKcal,
});
/** The slopes of a meal's points, for a linear program. */
export const mealSlopes = (costs: MenuCosts) => ({
  pull: MEAL_PULL_PART * costs.missingKcal,
  off: MEAL_OFF_PART * costs.missingKcal,
});
