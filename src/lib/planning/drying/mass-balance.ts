/*
 * Dry matter is conserved: what leaves a tray is water. Moisture is on the wet basis throughout: water over all, a share.
 * Source: Singh & Heldman, Introduction to Food Engineering, ch. 1 (material balances).
 */

const solidsShare = (moisture: number): number => {
  if (!(moisture >= 0 && moisture <= 1))
    throw new RangeError(`moisture must be a share from 0 to 1, not ${moisture}`);
  return 1 - moisture;
};

/**
 * Weight when dried to a moisture; food that is drier already stays as it is.
 *
 * @param wetG weight before, g
 * @param wetMoisture moisture before, share
 * @param dryMoisture moisture after, share below 1
 * @returns weight after, g
 * @throws RangeError for a moisture outside its range
 */
export function dryWeightG(wetG: number, wetMoisture: number, dryMoisture: number): number {
  if (dryMoisture >= 1)
    throw new RangeError(`food cannot be dried to a moisture of ${dryMoisture}: nothing but water is left`);
  const shareLeft = solidsShare(wetMoisture) / solidsShare(dryMoisture);
  return wetG * Math.min(1, shareLeft);
}

/**
 * Moisture of what is left, from its weight. It may come out below 0: then the food weighs less than its dry matter should, and one of the figures is off.
 *
 * @param wetG weight before, g
 * @param wetMoisture moisture before, share
 * @param nowG weight now, g, more than 0
 * @returns share
 * @throws RangeError for a moisture or weight outside its range
 */
export function moistureAt(wetG: number, wetMoisture: number, nowG: number): number {
  if (!(nowG > 0)) throw new RangeError(`a weight must be more than 0, not ${nowG}`);
  return 1 - (wetG * solidsShare(wetMoisture)) / nowG;
}
