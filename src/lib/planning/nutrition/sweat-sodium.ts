/** Milligrams of sodium in a millimole. */
const MG_PER_MMOL = 22.99;
/**
 * Sodium of sweat, mmol/l, and how far people lie apart, one standard deviation. Source: Holmes et al. 2016, Ann Sports Med Res 3:1063: 18 trained men at an easy
 * (60 % of the highest heart rate) and a hard effort.
 */
export const SWEAT_SODIUM_MMOL_PER_L = {
  easy: { mean: 30.6, deviation: 11.4 },
  hard: { mean: 49.4, deviation: 22.9 },
} as const;

/**
 * Sodium that goes with the sweat of a walk, mg.
 *
 * @param sweatMl what is drunk on the move; breath loses about what the body makes of its food (IOM 2005, water)
 * @example sweatSodiumMg(1000, false).value // 704: some 700 mg a litre
 */
export function sweatSodiumMg(
  sweatMl: number,
  isHard: boolean,
): { value: number; low: number; high: number } {
  const { mean, deviation } = SWEAT_SODIUM_MMOL_PER_L[isHard ? 'hard' : 'easy'];
  const mg = (mmolPerL: number) => (sweatMl / 1000) * mmolPerL * MG_PER_MMOL;
  return { value: mg(mean), low: mg(mean - deviation), high: mg(mean + deviation) };
}
