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
/** Copies of so many days are all kept. */
export const ALL_DAYS = 7;
/** Then the last of each week for so long, and the last of each month for so long. */
export const WEEKLY_DAYS = 35;
export const MONTHLY_DAYS = 365;
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
 * Which copies have to go: kept are all of the last 7 days, the last of each week for 5 weeks, and the last of each month for a year.
 * Weeks begin on Monday; days, weeks and months are those of UTC.
 */
export function superfluous<Kept extends Copy>(copies: readonly Kept[], now: Date): Kept[] {
  const newestFirst = copies.toSorted((one, other) => (one.at < other.at ? 1 : -1));
  const seen = new Set<string>();
  return newestFirst.filter(({ at }) => {
    const ageDays = (now.getTime() - Date.parse(at)) / DAY_MS;
    if (ageDays < ALL_DAYS) return false;
    if (ageDays >= MONTHLY_DAYS) return true;
    const week = Math.floor((Math.floor(Date.parse(at) / DAY_MS) + MONDAY_SHIFT_DAYS) / 7);
    const period = ageDays < WEEKLY_DAYS ? `week ${week}` : `month ${at.slice(0, 7)}`;
    if (seen.has(period)) return true;
    seen.add(period);
    return false;
  });
}
