/*
 * Dry matter is conserved: what leaves a tray is water. Moisture is on the wet basis throughout: water over all, a share.
 * Source: Singh & Heldman, Introduction to Food Engineering, ch. 1 (material balances).
 */

const checked = (moisture: number): number => {
  if (!(moisture >= 0 && moisture < 1))
    throw new RangeError(`moisture must be a share from 0 to below 1, not ${moisture}`);
  return moisture;
};

/**
 * @param wetG weight before, g
 * @param wetMoisture moisture before, share from 0 to below 1
 * @param dryMoisture moisture after, share from 0 to below 1
 * @returns weight after, g
 * @throws RangeError for a moisture outside its range
 */
export function dryWeightG(wetG: number, wetMoisture: number, dryMoisture: number): number {
  return (wetG * (1 - checked(wetMoisture))) / (1 - checked(dryMoisture));
}

/**
 * Moisture of what is left, from its weight. It may come out below 0: then the food weighs less than its dry matter should, and one of the figures is off.
 *
 * @param wetG weight before, g
 * @param wetMoisture moisture before, share from 0 to below 1
 * @param nowG weight now, g, more than 0
 * @returns share
 * @throws RangeError for a moisture or weight outside its range
 */
export function moistureAt(wetG: number, wetMoisture: number, nowG: number): number {
  if (!(nowG > 0)) throw new RangeError(`a weight must be more than 0, not ${nowG}`);
  return 1 - (wetG * (1 - checked(wetMoisture))) / nowG;
}
