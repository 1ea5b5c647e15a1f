export type Walk = {
  /** Mass of the walker, g. */
  readonly massG: number;
  /** Load carried, g. */
  readonly loadG: number;
  /** m/s. */
  readonly speedMs: number;
  /** Rise over run: 0.1 is 10 %. */
  readonly grade: number;
  /** Terrain factor, 1 for a hard surface. */
  readonly terrain: number;
  /** Resting rate, W for each kg of body mass. */
  readonly restingWPerKg?: number;
};

/** Resting rate of those of whom only the mass is known, W/kg (the value that sample figures of the equation are given with). */
export const USUAL_RESTING_W_PER_KG = 1.2;

/** What the equation was tested on: 30 people walking with packs, and the term of grade on 95 people without. Looney et al. 2019 and 2022. */
export const TESTED = {
  loadShare: 0.66,
  fastestMs: 1.97,
  steepestDescent: -0.4,
  steepestAscent: 0.45,
} as const;

/** Whether a walk lies outside of what the equation was tested on; it is carried on there. Walks slower than 0.45 m/s are covered by the equation without pack. */
export const isBeyondTests = ({ massG, loadG, speedMs, grade }: Walk): boolean =>
  loadG > TESTED.loadShare * massG ||
  speedMs > TESTED.fastestMs ||
  grade < TESTED.steepestDescent ||
  grade > TESTED.steepestAscent;

/**
 * Metabolic rate of standing or walking with a pack, W.
 *
 * Source: Load Carriage Decision Aid, backpacking (Looney et al. 2022, Med Sci Sports Exerc 54:646): M = rest + [0.19 + η (1.78 S^0.58 + 0.27 S^4) + grade] (1 + 1.96 L^1.36) W for
 * each kg of body mass, S in m/s, L pack over body mass; its grade term is that of Looney et al. 2019 (Med Sci Sports Exerc 51:1954): 0.34 S G (1 - 1.05^(1 - 1.1^(G + 32))), G in %.
 * Coefficients read in open implementations that name the papers; these differ on whether η multiplies the grade too: here it does not, as height costs the same on any ground.
 *
 * @throws RangeError for a walker without mass, or a negative load, speed or terrain factor
 */
export function walkingRateW(walk: Walk): number {
  const { massG, loadG, speedMs, grade, terrain, restingWPerKg = USUAL_RESTING_W_PER_KG } = walk;
  if (!(massG > 0 && loadG >= 0 && speedMs >= 0 && terrain > 0 && Number.isFinite(grade)))
    throw new RangeError(
      `no walk: mass ${massG} g, load ${loadG} g, speed ${speedMs} m/s, grade ${grade}, terrain factor ${terrain}`,
    );
  const gradePercent = grade * 100;
  const gradeW = 0.34 * speedMs * gradePercent * (1 - 1.05 ** (1 - 1.1 ** (gradePercent + 32)));
  const movingW = terrain * (1.78 * speedMs ** 0.58 + 0.27 * speedMs ** 4) + gradeW;
  const packFactor = 1 + 1.96 * (loadG / massG) ** 1.36;
  return (massG / 1000) * (restingWPerKg + (0.19 + Math.max(0, movingW)) * packFactor);
}
