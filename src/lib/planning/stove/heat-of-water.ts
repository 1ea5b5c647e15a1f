/** Specific heat of liquid water, kJ/(kg K), mean of 0 to 100 °C. Source: common handbook value (4.186, the 15 °C calorie). */
export const WATER_SPECIFIC_HEAT = 4.186;

/**
 * Heat that brings water from one temperature to another, kJ. One millilitre counts as one gram.
 *
 * @param waterMl ml, not negative
 * @param fromC °C, 0 to 100
 * @param toC °C; not above `fromC` gives 0
 * @throws RangeError for negative water, or for ice (below 0 °C)
 */
export function heatForWaterKJ(waterMl: number, fromC: number, toC: number): number {
  if (!(waterMl >= 0)) throw new RangeError(`water must not be negative, found ${waterMl} ml`);
  if (!(fromC >= 0)) throw new RangeError(`water at ${fromC} °C is ice`);
  return (waterMl / 1000) * WATER_SPECIFIC_HEAT * Math.max(0, toC - fromC);
}
