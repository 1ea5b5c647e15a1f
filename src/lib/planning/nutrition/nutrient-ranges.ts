import type { NutrientRange } from '../model/nutrition.ts';
import type { Nutrient } from '../model/words.ts';

/**
 * Shares of energy. Source: Institute of Medicine 2005, Dietary Reference Intakes for energy and macronutrients, acceptable distribution ranges; adults, and ages 4 to 18
 * where they differ (as open code that implements them has them).
 */
export const ENERGY_SHARES = {
  adult: { protein: [0.1, 0.35], carbohydrate: [0.45, 0.65], fat: [0.2, 0.35] },
  minor: { protein: [0.1, 0.3], carbohydrate: [0.45, 0.65], fat: [0.25, 0.35] },
} as const;
/** The ranges for minors begin at this age, years; so do those of adults after the last year of theirs. */
export const MINOR_FROM_Y = 4;
export const ADULT_FROM_Y = 19;
/** Protein of people in training, g/kg and day. Source: American College of Sports Medicine and others 2009, as a summary of it gives the range. */
export const TRAINING_PROTEIN_G_PER_KG = [1.2, 1.7] as const;
/**
 * A ration for days of hard work in the field with some 4,500 kcal spent: 2,400 kcal with 350 g of carbohydrate, and 100 g more to eat on the way; 15 to 17 g of fibre.
 * Source: Institute of Medicine 2006, Nutrient composition of rations for short-term, high-intensity combat operations, table 3-1.
 */
export const FIELD_RATION = { carbohydrateG: [350, 450], fibreG: 15, fromKcal: 2400 } as const;
/** Adequate intake of fibre, g for each 1,000 kcal. Source: Institute of Medicine 2005 (as open code that implements it has it). */
export const FIBRE_G_PER_1000_KCAL = 14;

/** A day with less walking is one of rest here, h; one with as much is long (rules of thumb, after the hours of training tables). */
export const TRAINING_FROM_H = 1;
export const LONG_FROM_H = 4;

/** Whom and what day a range is for. */
export type Effort = {
  /** Years; unknown counts as grown up. */
  readonly ageY: number | undefined;
  readonly massG: number | undefined;
  readonly walkingH: number;
  readonly eatenKcal: number;
  /** Whether all meals of the day are of this food, so that grams of a day can be looked at. */
  readonly isWholeDay: boolean;
};

/**
 * The published range that holds for a nutrient on a day; none for sodium, of which too little was found that is sure.
 *
 * @example rangeOf('protein', { ageY: 40, massG: 70_000, walkingH: 6, eatenKcal: 3000, isWholeDay: true }) // 1.2 to 1.7 g/kg
 */
export function rangeOf(nutrient: Nutrient, effort: Effort): NutrientRange | undefined {
  const { ageY, massG, walkingH, eatenKcal, isWholeDay } = effort;
  const isAdult = ageY === undefined || ageY >= ADULT_FROM_Y;
  if (!isAdult && ageY < MINOR_FROM_Y) return undefined;
  const isLong = isAdult && isWholeDay && walkingH >= LONG_FROM_H && eatenKcal >= FIELD_RATION.fromKcal;
  if (nutrient === 'sodium') return undefined;
  if (nutrient === 'fibre')
    return isLong
      ? { source: 'IOM 2006', unit: 'g', least: FIELD_RATION.fibreG }
      : { source: 'IOM 2005', unit: 'g', least: (FIBRE_G_PER_1000_KCAL * eatenKcal) / 1000 };
  if (nutrient === 'protein' && isAdult && isWholeDay && massG !== undefined && walkingH >= TRAINING_FROM_H) {
    const [least, most] = TRAINING_PROTEIN_G_PER_KG;
    return { source: 'ACSM 2009', unit: 'g/kg', least, most };
  }
  if (nutrient === 'carbohydrate' && isLong) {
    const [least, most] = FIELD_RATION.carbohydrateG;
    return { source: 'IOM 2006', unit: 'g', least, most };
  }
  const [least, most] = ENERGY_SHARES[isAdult ? 'adult' : 'minor'][nutrient];
  return { source: 'IOM 2005', unit: 'share of energy', least, most };
}
