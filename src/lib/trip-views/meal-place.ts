import type { MealPlace } from '$lib/planning/menu/edit-menu.ts';
import type { MealOption } from '$lib/planning/menu/meal-options.ts';
import { againstText } from '$lib/presentation/exclusion-words.ts';
import type { TripPlan } from '$lib/planning/model/trip-plan.ts';

/** A meal in an address or a form: `2-dinner` is the dinner of day 2 of the first cook group, `2-dinner-1` that of the second. */
export function placeKey(
  { day, meal, group }: MealPlace,
  groups: readonly { readonly name: string }[],
): string {
  const index = groups.findIndex(({ name }) => name === group);
  return index > 0 ? `${day}-${meal}-${index}` : `${day}-${meal}`;
}

/** @returns which meal of the plan is meant, with its date; `undefined` where it has no such meal. */
export function readPlace(
  key: string | undefined,
  { menu }: Pick<TripPlan, 'menu'>,
): (MealPlace & { readonly date: string }) | undefined {
  const found = menu.meals.find((meal) => placeKey(meal, menu.groups) === key);
  return found && { day: found.day, meal: found.meal, group: found.group, date: found.date };
}

/** A lot to choose for a meal, with what speaks against it in words. */
export type MealChoice = Omit<MealOption, 'against'> & { readonly against: readonly string[] };

/** A list to choose from that is longer than this is narrowed by a word instead of scrolled. */
const MOST_OPTIONS = 50;

/** @returns the options whose code or recipe holds what is looked for, as many as can be listed, and how many more there are. */
export function narrowed(
  options: readonly MealOption[],
  find: string,
): { options: readonly MealChoice[]; unlisted: number } {
  const wanted = find.trim().toLowerCase();
  const matching = options.filter(({ code, recipe }) => `${code} ${recipe}`.toLowerCase().includes(wanted));
  return {
    options: matching
      .slice(0, MOST_OPTIONS)
      .map((option) => ({ ...option, against: option.against.map(againstText) })),
    unlisted: Math.max(0, matching.length - MOST_OPTIONS),
  };
}
