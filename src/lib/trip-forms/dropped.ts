import { mealsOfDay } from '$lib/planning/demand/day-demand.ts';
import { resolveTrip } from '$lib/planning/model/resolve-trip.ts';
import type { Settings } from '$lib/planning/model/settings.ts';
import type { ChosenMeal, Trip } from '$lib/planning/model/trip.ts';
import { MEAL_WORDS } from '$lib/presentation/code-words.ts';
import { say } from '$lib/texts/say.ts';

/** What a trip has no place for any more when its days or its first or last meal change. */
export type Dropped = {
  readonly meals: readonly ChosenMeal[];
  /** What of it somebody would miss: meals with pouches and days with conditions; empty where nobody would. */
  readonly words: readonly string[];
};

/**
 * @param changed the trip as changed, and the days that fell off its end although something was entered for them
 * @param menu the menu as it was
 */
export function dropped(
  { trip, droppedDays }: { trip: Trip; droppedDays: readonly number[] },
  menu: readonly ChosenMeal[],
  settings: Settings,
): Dropped {
  const resolved = resolveTrip({ ...trip, menu: [] });
  const meals = menu.filter(({ day, meal }) => {
    const on = resolved.days[day - 1];
    return !on || !mealsOfDay(resolved, on, settings).includes(meal);
  });
  return {
    meals,
    words: [
      ...meals.filter(({ opened }) => opened.length > 0).map(mealInWords),
      ...droppedDays.map((day) => say('day {day}: its conditions', { day })),
    ],
  };
}

function mealInWords({ day, meal, locked, byHand, opened }: ChosenMeal): string {
  const marks = [locked ? say('locked') : '', byHand ? say('chosen by hand') : ''].filter(Boolean).join(', ');
  const pouches = opened.reduce((sum, lot) => sum + lot.pouches, 0);
  const what = { day, meal: say(MEAL_WORDS[meal]), pouches };
  return marks
    ? say('day {day}, {meal} ({marks}): {pouches, plural, one {# pouch} other {# pouches}}', {
        ...what,
        marks,
      })
    : say('day {day}, {meal}: {pouches, plural, one {# pouch} other {# pouches}}', what);
}
