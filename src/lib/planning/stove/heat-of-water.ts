/** Specific heat of liquid water, kJ/(kg K), mean of 0 to 100 °C. Source: common handbook value (the 15 °C calorie). */
export const WATER_SPECIFIC_HEAT = 4.186;
/** Latent heat of fusion of ice, kJ/kg, and specific heat of ice, kJ/(kg K). Source: common handbook values. */
export const HEAT_OF_FUSION = 333.55;
export const ICE_SPECIFIC_HEAT = 2.1;

/**
 * Heat that brings water from one temperature to another, kJ. One millilitre of water counts as one gram.
 * Below 0 °C it is ice or snow: warmed to 0 °C, melted, then heated as water. Water at 0 °C is taken as liquid.
 *
 * @param waterMl ml of water, liquid or after melting; not negative
 * @param fromC °C; below 0 is ice, not below -60
 * @param toC °C, of liquid water; not above `fromC` gives 0
 * @throws RangeError outside these
 */
export function heatForWaterKJ(waterMl: number, fromC: number, toC: number): number {
  if (!(waterMl >= 0)) throw new RangeError(`water must not be negative, found ${waterMl} ml`);
  if (!(fromC >= -60)) throw new RangeError(`ice at ${fromC} °C is below -60 °C`);
  if (!(toC >= 0)) throw new RangeError(`water at ${toC} °C would be ice`);
  const perKg =
    fromC < 0
      ? -fromC * ICE_SPECIFIC_HEAT + HEAT_OF_FUSION + toC * WATER_SPECIFIC_HEAT
      : WATER_SPECIFIC_HEAT * Math.max(0, toC - fromC);
  return (waterMl / 1000) * perKg;
}
