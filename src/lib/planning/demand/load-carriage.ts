import type { Terrain } from '../model/route.ts';

/** Terrain factors. Source: Soule & Goldman 1972; Pandolf, Givoni & Goldman 1977. */
export const TERRAIN_FACTOR: Readonly<Record<Terrain, number>> = {
  blacktop: 1.0,
  'dirt-road': 1.1,
  'light-brush': 1.2,
  'heavy-brush': 1.5,
  'swampy-bog': 1.8,
  'loose-sand': 2.1,
};

export type Walk = {
  /** Mass of the walker, g. */
  readonly massG: number;
  /** Load carried, g. */
  readonly loadG: number;
  /** m/s. */
  readonly speedMs: number;
  /** Rise over run: 0.1 is 10 %. */
  readonly grade: number;
  /** Terrain factor, 1 for blacktop. */
  readonly terrain: number;
};

/** Steepest descent of the data behind the downhill correction; steeper ground is taken as this steep. Source: Santee et al. 2001, 2003 (0 to -12 %, memory). */
export const STEEPEST_DESCENT = -0.12;
/** Steepest ascent of the data behind the equation (memory); the term of climb is carried on beyond it, which keeps its price of a metre climbed. */
export const STEEPEST_ASCENT = 0.25;

/**
 * Metabolic rate of standing or walking with a load, W.
 *
 * Source: Pandolf, Givoni & Goldman 1977, J Appl Physiol 43:577-581: M = 1.5 W + 2.0 (W+L)(L/W)² + η (W+L)(1.5 V² + 0.35 V G), W and L in kg, V in m/s, G in %;
 * downhill less the correction of Santee et al. 2001/2003: η [G (W+L) V / 3.5 - (W+L)(G+6)²/W + 25 - V²]. Never less than standing with the load.
 * It runs low for slow walking and heavy loads, by 10 to 30 % in later trials (memory).
 *
 * @throws RangeError for a walker without mass, or a negative load, speed or terrain factor
 */
export function walkingRateW({ massG, loadG, speedMs, grade, terrain }: Walk): number {
  if (!(massG > 0 && loadG >= 0 && speedMs >= 0 && terrain > 0 && Number.isFinite(grade)))
    throw new RangeError(
      `no walk: mass ${massG} g, load ${loadG} g, speed ${speedMs} m/s, grade ${grade}, terrain factor ${terrain}`,
    );
  const w = massG / 1000;
  const l = loadG / 1000;
  const g = Math.max(grade, STEEPEST_DESCENT) * 100;
  const standingW = 1.5 * w + 2 * (w + l) * (l / w) ** 2;
  const movingW = terrain * (w + l) * (1.5 * speedMs ** 2 + 0.35 * speedMs * g);
  const downhillW =
    g < 0 && speedMs > 0
      ? terrain * ((g * (w + l) * speedMs) / 3.5 - ((w + l) * (g + 6) ** 2) / w + 25 - speedMs ** 2)
      : 0;
  return Math.max(standingW, standingW + movingW - downhillW);
}
