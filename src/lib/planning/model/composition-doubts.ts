import { say } from '../../texts/say.ts';
import { shownFixed } from '../units/show.ts';
import type { Composition } from './composition.ts';
import { energyKcalOf } from './energy-factors.ts';

/** Rounded parts may add up to a little over 100 g. */
const MOST_PARTS_G = 101;
/** Tables of raw foods differ from the general factors by up to about a fifth: specific factors, organic acids, fibre (FAO Food and Nutrition Paper 77, 2003, memory). */
const ENERGY_TOLERANCE = 0.2;
/** Below this the difference is within rounding and acids, kcal per 100 g. */
const ENERGY_ROUNDING_KCAL = 15;

/**
 * What cannot be right, or is worth a second look, in a row of a composition table.
 *
 * @returns reasons, empty where the row is sound
 */
export function compositionDoubts(row: Composition): string[] {
  const doubts: string[] = [];
  const partsG = row.waterG + row.proteinG + row.fatG + row.carbohydrateG + row.fibreG + row.alcoholG;
  if (partsG > MOST_PARTS_G)
    doubts.push(
      say('its parts come to {parts} g in 100 g; check water, protein, fat, carbohydrate and fibre', {
        parts: shownFixed(partsG, 1),
      }),
    );
  if (row.energyKcal !== undefined) {
    const byFactorsKcal = energyKcalOf(row, 'eu');
    const offKcal = Math.abs(row.energyKcal - byFactorsKcal);
    if (
      offKcal > ENERGY_ROUNDING_KCAL &&
      offKcal > ENERGY_TOLERANCE * Math.max(row.energyKcal, byFactorsKcal)
    )
      doubts.push(
        say(
          'it states {stated} kcal per 100 g, but its parts give {reckoned} kcal by the EU factors; check kJ or kcal',
          { stated: shownFixed(row.energyKcal, 0), reckoned: shownFixed(byFactorsKcal, 0) },
        ),
      );
  }
  return doubts;
}
