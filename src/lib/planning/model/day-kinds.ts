import type { MealRule } from './trip.ts';
import type { DayKind, MealKind } from './words.ts';

/** What a kind of day means for a plan, until the day or a line on its meals says otherwise. */
export type DayMeaning = {
  /** Walking, as a share of a full day of the trip. */
  readonly walkingShare: number;
  /** Meals that everyone eats where food is served: on the day itself, and on the morning after. */
  readonly served: readonly MealKind[];
  readonly servedNextDay: readonly MealKind[];
  /** Whether a stove is lit. */
  readonly stove: boolean;
};

const FULL_DAY: DayMeaning = { walkingShare: 1, served: [], servedNextDay: [], stove: true };

/** Kinds of days and what each means (rule of thumb; every part of it can be said otherwise). */
export const DAY_MEANING: Readonly<Record<DayKind, DayMeaning>> = {
  rest: { ...FULL_DAY, walkingShare: 0 },
  short: { ...FULL_DAY, walkingShare: 0.5 },
  'hut night': { ...FULL_DAY, served: ['dinner', 'drink'], servedNextDay: ['breakfast'] },
  town: {
    ...FULL_DAY,
    walkingShare: 0,
    served: ['lunch', 'snack', 'dinner', 'drink'],
    servedNextDay: ['breakfast'],
  },
  flight: { ...FULL_DAY, walkingShare: 0, stove: false },
  'fire ban': { ...FULL_DAY, stove: false },
};

export const meaningOf = (kind: DayKind | undefined): DayMeaning => (kind ? DAY_MEANING[kind] : FULL_DAY);

/**
 * What the kinds of the days say of meals, as rules that go before those of the trip, so that a rule of the trip counts where both say something.
 *
 * @param days of a trip, from its first
 * @example rulesOfDays([{}, { kind: 'hut night' }], 4)
 *   // [{ days: [2], meals: ['dinner', 'drink'], elsewhere: 'everyone' }, { days: [3], meals: ['breakfast'], elsewhere: 'everyone' }]
 */
export function rulesOfDays(
  days: readonly { readonly kind?: DayKind | undefined }[],
  dayCount: number,
): MealRule[] {
  const numbered = days.flatMap(({ kind }, index) => (kind ? [{ kind, day: index + 1 }] : []));
  return [...Map.groupBy(numbered, ({ kind }) => kind)].flatMap(([kind, rows]): MealRule[] => {
    const { served, servedNextDay, stove } = DAY_MEANING[kind];
    const on = rows.map(({ day }) => day);
    const after = on.map((day) => day + 1).filter((day) => day <= dayCount);
    return [
      ...(stove ? [] : [{ days: on, stop: 'no stove' as const }]),
      ...(served.length > 0 ? [{ days: on, meals: [...served], elsewhere: 'everyone' as const }] : []),
      ...(servedNextDay.length > 0 && after.length > 0
        ? [{ days: after, meals: [...servedNextDay], elsewhere: 'everyone' as const }]
        : []),
    ];
  });
}
