import type { ResolvedDay, ResolvedTrip } from './resolve-trip.ts';
import type { CookGroup, MealRule } from './trip.ts';
import type { MealKind, MealStop, ServingStyle } from './words.ts';

/** Up to so many people are one cook group where nobody said who cooks with whom: a pot of three litres feeds no more (rule of thumb). */
export const MOST_IN_PROPOSED_GROUP = 6;
/** A day with less walking is a rest day, h (rule of thumb). */
const REST_DAY_BELOW_H = 1;

/** How a meal of the trip is taken. */
export type MealTaking = {
  readonly style: ServingStyle;
  readonly stop: MealStop;
  /** Names of those who eat elsewhere. */
  readonly elsewhere: ReadonlySet<string>;
  /** Extras make the meal. */
  readonly extras: boolean;
  /** The dish that somebody fixed for it. */
  readonly dish: string | undefined;
};

export const isRestDay = (day: Pick<ResolvedDay, 'walkingH'>): boolean => day.walkingH < REST_DAY_BELOW_H;

/**
 * What the rules of a trip say of one meal; of two rules that say something of the same, the later one counts.
 *
 * @example takingOf(trip, trip.days[2], 'dinner').elsewhere.has('Ilse') // whether she eats in the hut
 */
export function takingOf(
  trip: Pick<ResolvedTrip, 'mealRules' | 'servingStyle' | 'party'>,
  day: Pick<ResolvedDay, 'day' | 'walkingH'>,
  meal: MealKind,
): MealTaking {
  let taking: MealTaking = {
    style: trip.servingStyle,
    stop: 'stove',
    elsewhere: new Set(),
    extras: false,
    dish: undefined,
  };
  for (const rule of trip.mealRules) {
    if (!isMeant(rule, day, meal)) continue;
    taking = {
      style: rule.style ?? taking.style,
      stop: rule.stop ?? taking.stop,
      elsewhere: rule.elsewhere === undefined ? taking.elsewhere : named(rule.elsewhere, trip.party),
      extras: rule.extras ?? taking.extras,
      dish: rule.dish ?? taking.dish,
    };
  }
  return taking;
}

function isMeant(
  { days, meals }: MealRule,
  day: Pick<ResolvedDay, 'day' | 'walkingH'>,
  meal: MealKind,
): boolean {
  if (meals && !meals.includes(meal)) return false;
  if (days === undefined) return true;
  return days === 'rest days' ? isRestDay(day) : days.includes(day.day);
}

const named = (
  elsewhere: NonNullable<MealRule['elsewhere']>,
  party: ResolvedTrip['party'],
): ReadonlySet<string> => {
  if (elsewhere === 'no one') return new Set();
  return new Set(elsewhere === 'everyone' ? party.map(({ name }) => name) : elsewhere);
};

/**
 * Who cooks and eats together: as said, or everyone where they are few, or groups of about the same size in the order of the party.
 *
 * @returns groups with their names; `proposed` where nobody said so
 */
export function cookGroupsOf(trip: {
  readonly cookGroups?: readonly CookGroup[] | undefined;
  readonly party: readonly { readonly name: string }[];
}): {
  readonly groups: readonly CookGroup[];
  readonly proposed: boolean;
} {
  if (trip.cookGroups && trip.cookGroups.length > 0) return { groups: trip.cookGroups, proposed: false };
  const names = trip.party.map(({ name }) => name);
  const count = Math.ceil(names.length / MOST_IN_PROPOSED_GROUP);
  const groups = Array.from({ length: count }, (_, index) => ({
    name: String(index + 1),
    eaters: names.slice(
      Math.round((index * names.length) / count),
      Math.round(((index + 1) * names.length) / count),
    ),
  }));
  return { groups, proposed: count > 1 };
}
