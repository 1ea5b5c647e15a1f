/** Why a copy was made. */
export const REASONS = ['daily', 'before-update', 'before-restore', 'by-hand', 'uploaded'] as const;
export type Reason = (typeof REASONS)[number];

export type Copy = {
  readonly name: string;
  /** Instant, ISO 8601. */
  readonly at: string;
  readonly reason: Reason;
};

const DAY_MS = 86_400_000;
/** All copies are kept of so many days that have any, the last one of so many weeks, and the last one of so many months. */
const DAYS = 7;
const WEEKS = 5;
const MONTHS = 12;
/** 1970-01-01 was a Thursday. */
const MONDAY_SHIFT_DAYS = 3;

/** @returns the name of a copy made at an instant, such as `20261125T194146123Z-daily.sqlite` */
export const copyName = (at: Date, reason: Reason): string =>
  `${at.toISOString().replace(/[-:.]/g, '')}-${reason}.sqlite`;

/** @returns what the name of a file says; `undefined` where it is none of ours */
export function readCopyName(name: string): Copy | undefined {
  const parts = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)(\d{3})Z-([a-z-]+)\.sqlite$/.exec(name);
  const [, year, month, day, hour, minute, second, ms, why] = parts ?? [];
  const reason = REASONS.find((known) => known === why);
  const at = `${year}-${month}-${day}T${hour}:${minute}:${second}.${ms}Z`;
  return reason && !Number.isNaN(Date.parse(at)) ? { name, at, reason } : undefined;
}

/**
 * Which copies have to go. Kept are all of the newest 7 days that have any, the last one of each of the newest 5 weeks and 12 months that have any, and
 * the newest of each kind. They are counted, and nothing is reckoned from the clock, which may be wrong: a copy of the future neither goes nor counts.
 * Weeks begin on Monday; days, weeks and months are those of UTC.
 */
export function superfluous<Kept extends Copy>(copies: readonly Kept[], now: Date): Kept[] {
  const newestFirst = copies
    .filter(({ at }) => Date.parse(at) <= now.getTime())
    .toSorted((one, other) => (one.at < other.at ? 1 : -1));
  const last = (periodOf: (copy: Copy) => string | number, most: number): Kept[] => {
    const lastOf = new Map<string | number, Kept>();
    for (const copy of newestFirst) if (!lastOf.has(periodOf(copy))) lastOf.set(periodOf(copy), copy);
    return [...lastOf.values()].slice(0, most);
  };
  const dayOf = ({ at }: Copy) => at.slice(0, 10);
  const days = new Set(last(dayOf, DAYS).map(dayOf));
  const kept = new Set([
    ...newestFirst.filter((copy) => days.has(dayOf(copy))),
    ...last(weekOf, WEEKS),
    ...last(({ at }) => at.slice(0, 7), MONTHS),
    ...last(({ reason }) => reason, REASONS.length),
  ]);
  return newestFirst.filter((copy) => !kept.has(copy));
}

const weekOf = ({ at }: Copy): number =>
  Math.floor((Math.floor(Date.parse(at) / DAY_MS) + MONDAY_SHIFT_DAYS) / 7);
