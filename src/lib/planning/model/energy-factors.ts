/**
 * Energy of food from its parts. Source of the general factors: Atwater 4-9-4 (USDA Agriculture Handbook 74; 21 CFR 101.9(c)(1)).
 *
 * @param parts protein, fat and carbohydrate, g
 * @returns kcal
 */
export function atwaterKcal(parts: {
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
}): number {
  return 4 * parts.proteinG + 9 * parts.fatG + 4 * parts.carbohydrateG;
}

/** Grams of what gives energy in a food. Carbohydrate is without fibre. */
export type EnergyParts = {
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly fibreG: number;
  readonly alcoholG: number;
};

/** Which law's factors energy is reckoned by. */
export const ENERGY_FACTORS = ['eu', 'atwater'] as const;
export type EnergyFactors = (typeof ENERGY_FACTORS)[number];

/**
 * Energy by one set of factors, kcal.
 * `eu`: Regulation (EU) 1169/2011, Annex XIV: protein and carbohydrate 4, fat 9, fibre 2, alcohol 7 kcal/g.
 * `atwater`: the general factors of 21 CFR 101.9(c)(1) on the total carbohydrate of US tables, fibre included; alcohol 7 (USDA Agriculture Handbook 74: 6.93).
 */
export function energyKcalOf(parts: EnergyParts, factors: EnergyFactors): number {
  const fibre = factors === 'eu' ? 2 : 4;
  return atwaterKcal(parts) + fibre * parts.fibreG + 7 * parts.alcoholG;
}
