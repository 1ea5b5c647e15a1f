/** Below this water activity nothing grows; at it and above, low-acid food is controlled by US law. Sources: Beuchat 1981, Cereal World 26:345; 21 CFR 113 and 114. */
export const NOTHING_GROWS_BELOW = 0.6;
export const CONTROLLED_FROM = 0.85;

/**
 * Moisture of the food without its fat, share, and the water activity that goes with it. Points: dried fruit of 15 to 20 % moisture has 0.60 to 0.65, jerky 0.75 to 0.80
 * (Beuchat 1981); low-moisture food up to 25 %, intermediate food of 15 to 50 % lies between 0.60 and 0.85 (Jay, Modern Food Microbiology, ch. 18). Between them: rule of thumb.
 */
const POINTS = [
  [0, 0],
  [0.15, 0.6],
  [0.2, 0.65],
  [0.28, 0.78],
  [0.4, 0.85],
  [1, 1],
] as const;
/** Sugar and salt bind water and starch less so: foods of one moisture lie this far apart (rule of thumb). */
export const UNSURE = 0.1;

export type WaterActivity = { readonly value: number; readonly low: number; readonly high: number };

/**
 * Water activity from what is left of the water; a meter tells it far better.
 *
 * @param moisture water over water and fat-free dry matter, share
 * @returns never less for more water
 * @example waterActivityOf(0.15).value // 0.6
 */
export function waterActivityOf(moisture: number): WaterActivity {
  const m = Math.min(1, Math.max(0, moisture));
  const above = Math.max(
    1,
    POINTS.findIndex(([x]) => x >= m),
  );
  const [x0, y0] = POINTS[above - 1] ?? POINTS[0];
  const [x1, y1] = POINTS[above] ?? POINTS[1];
  const value = y0 + ((y1 - y0) * (m - x0)) / (x1 - x0);
  return { value, low: Math.max(0, value - UNSURE), high: Math.min(1, value + UNSURE) };
}
