/** Basal rate is a tenth above that of sea level at this altitude, after months. Source: Gill & Pugh 1964, J Appl Physiol (six of eight men; the first days are higher still). */
const TENTH_MORE_AT_M = 5800;
/** Up to here it does not grow (rule of thumb). */
const GROWS_FROM_M = 2500;

/** @returns resting energy at an altitude over that at sea level, at least 1; straight from 2500 m on */
export const altitudeFactor = (altitudeM: number): number =>
  1 + (0.1 * Math.max(0, altitudeM - GROWS_FROM_M)) / (TENTH_MORE_AT_M - GROWS_FROM_M);

/** What each degree below MILD_C adds at rest to somebody who is clothed, and the most that all of them do (rule of thumb: cold adds little unless people shiver). */
const PER_DEGREE = 0.0025;
const MILD_C = 10;
const MOST = 0.1;

/** @returns resting energy in the cold over that in mild air, at least 1 */
export const coldFactor = (airTemperatureC: number): number =>
  1 + Math.min(MOST, PER_DEGREE * Math.max(0, MILD_C - airTemperatureC));
