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
