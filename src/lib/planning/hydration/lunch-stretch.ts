/**
 * The stretch of a day on which lunch is cooked: the last that begins at or before half of the walking hours.
 *
 * @param startsH where each stretch begins, h into the day's walk, rising
 * @returns its place in the list; -1 for a day without stretches
 */
export function lunchStretch(startsH: readonly number[], walkingH: number): number {
  return startsH.findLastIndex((startH) => startH <= walkingH / 2 + 1e-9);
}
