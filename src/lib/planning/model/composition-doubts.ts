import type { Composition } from './composition.ts';
import { energyKcalOf } from './energy-factors.ts';

/** What looks odd in a row, per 100 g. */
export type CompositionDoubt =
  | { readonly code: 'parts-over-100'; readonly partsG: number }
  | { readonly code: 'energy-unlike-parts'; readonly statedKcal: number; readonly byPartsKcal: number };

/** Rounded parts may add up to a little over 100 g. */
const MOST_PARTS_G = 101;
/** Tables of raw foods differ from the general factors by up to about a fifth: specific factors, organic acids, fibre (rule of thumb; the tables of FAO Food and Nutrition Paper 77, 2003 would replace it). */
const ENERGY_TOLERANCE = 0.2;
/** Below this the difference is within rounding and acids, kcal per 100 g. */
const ENERGY_ROUNDING_KCAL = 15;

/**
 * What cannot be right, or is worth a second look, in a row of a composition table.
 *
 * @returns empty where the row is sound
 */
export function compositionDoubts(row: Composition): CompositionDoubt[] {
  const doubts: CompositionDoubt[] = [];
  const partsG = row.waterG + row.proteinG + row.fatG + row.carbohydrateG + row.fibreG + row.alcoholG;
  if (partsG > MOST_PARTS_G) doubts.push({ code: 'parts-over-100', partsG });
  if (row.energyKcal !== undefined) {
    const byPartsKcal = energyKcalOf(row, 'eu');
    const offKcal = Math.abs(row.energyKcal - byPartsKcal);
    if (offKcal > ENERGY_ROUNDING_KCAL && offKcal > ENERGY_TOLERANCE * Math.max(row.energyKcal, byPartsKcal))
      doubts.push({ code: 'energy-unlike-parts', statedKcal: row.energyKcal, byPartsKcal });
  }
  return doubts;
}
