import type { BodyData } from '../model/body.ts';

/** Up to this midday temperature the figure for moderate weather holds, °C. */
export const MODERATE_UP_TO_C = 25;

/**
 * Water of a day at rest in the shade, food included, by air temperature, ml for an adult. Fitted to points of IOM, Dietary Reference Intakes for Water (2005), ch. 4:
 * 3.8 to 4.7 l at a mean of 30 °C (US Army 1959, Brown 1947), two to three times that of temperate weather at 40 °C. The report has the curve as a picture only: ± 1.5 l.
 */
const AT_30_C_ML = 4250;
const AT_40_C_ML = 7000;
/** How far the curve may be off in heat, ml. */
export const HEAT_UNSURE_ML = 1500;
/** The adequate intake behind the setting: the mean of women and men, EFSA 2010, ml. */
const MEAN_ADULT_ML = 2250;

/**
 * Adequate intake of water, food included, ml a day. Source: EFSA Panel on Dietetic Products 2010, EFSA Journal 8:1459: moderate temperature, moderate activity.
 */
export function adequateIntakeMl({ ageY, sex }: BodyData): number {
  if (ageY !== undefined && ageY < 4) return 1300;
  if (ageY !== undefined && ageY < 9) return 1600;
  if (ageY !== undefined && ageY < 14) return sex === 'male' ? 2100 : sex === 'female' ? 1900 : 2000;
  return sex === 'male' ? 2500 : sex === 'female' ? 2000 : MEAN_ADULT_ML;
}

/** Size of an eater as a share of an adult whose sex is not known: how much of an adult's water at rest they take. */
export const waterSize = (body: BodyData): number => adequateIntakeMl(body) / MEAN_ADULT_ML;

/** Hours awake, which are those that are hot. */
const AWAKE_H = 16;

/**
 * Water of the hours of a day that are not walked, food included, ml.
 *
 * @param moderateMl in moderate weather, for an adult whose sex is not known (a setting)
 * @param airTemperatureC at midday, taken as that of all hours awake, °C
 * @returns never less in more heat
 */
export function restWaterMl(
  moderateMl: number,
  airTemperatureC: number,
  walkingH: number,
  body: BodyData,
): { readonly ml: number; readonly forHeatMl: number } {
  const size = waterSize(body);
  const atRest = Math.max(0, 1 - walkingH / AWAKE_H);
  const forHeatMl = heatMl(airTemperatureC) * size * atRest;
  return { ml: moderateMl * size + forHeatMl, forHeatMl };
}

/** What heat adds to a day of rest of an adult, ml; beyond 40 °C the slope is carried on. */
function heatMl(airTemperatureC: number): number {
  const warm = AT_30_C_ML - MEAN_ADULT_ML;
  if (airTemperatureC <= MODERATE_UP_TO_C) return 0;
  if (airTemperatureC <= 30) return (warm * (airTemperatureC - MODERATE_UP_TO_C)) / (30 - MODERATE_UP_TO_C);
  return warm + ((AT_40_C_ML - AT_30_C_ML) * (airTemperatureC - 30)) / 10;
}
