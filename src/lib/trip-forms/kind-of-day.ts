import { meaningOf } from '$lib/planning/model/day-kinds.ts';
import type { DayConditions } from '$lib/planning/model/trip.ts';

/** What says how far a day is walked. */
const WALK = ['walkingH', 'distanceM', 'climbM', 'descentM', 'endsAt'] as const;
type Day = Partial<Record<keyof DayConditions, unknown>>;

/**
 * A day as its form has it, with what its kind means for its walk where the kind has just been chosen: what stood there of the walk gives way to it, or to half the hours,
 * and what was entered in the same form stays.
 *
 * @param stored the day as it was when the form was opened
 * @example withNewKind({ kind: 'rest', walkingH: 7 }, { walkingH: 7 }) // { kind: 'rest' }
 */
export function withNewKind<Read extends Day>(day: Read, stored: DayConditions = {}): Read {
  const kind = day.kind as DayConditions['kind'];
  const { walkingShare } = meaningOf(kind);
  if (kind === stored.kind || walkingShare === 1) return day;
  if (walkingShare > 0) {
    const { walkingH } = stored;
    return walkingH !== undefined && day.walkingH === walkingH
      ? { ...day, walkingH: walkingShare * walkingH }
      : day;
  }
  const isAsStored = WALK.every((field) => day[field] === stored[field]);
  return isAsStored
    ? (Object.fromEntries(
        Object.entries(day).filter(([field]) => !(WALK as readonly string[]).includes(field)),
      ) as Read)
    : day;
}
