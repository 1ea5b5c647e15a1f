/** The units that people read and type in. */
export type UnitSystem = 'metric' | 'us';

/*
 * Conversion between the units of the core (g, kcal, ml, m, min, °C, shares of 1, kcal per 100 g) and those people type and read.
 * Exact factors: international avoirdupois pound and yard agreement 1959; US gallon of 231 cubic inches (NIST Handbook 44, app. C);
 * 1 kcal = 4.184 kJ (thermochemical calorie; Regulation (EU) 1169/2011).
 */

/** Grams in one unit. */
export const MASS_G = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 } as const;
/** Kilocalories in one unit. */
export const ENERGY_KCAL = { kcal: 1, kJ: 1 / 4.184 } as const;
/** Millilitres in one unit; spoons, cup, fluid ounce and quart are US customary. */
export const VOLUME_ML = {
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
  tsp: 4.92892159375,
  tbsp: 14.78676478125,
  cup: 236.5882365,
  'fl oz': 29.5735295625,
  qt: 946.352946,
} as const;
/** Metres in one unit. */
export const LENGTH_M = { m: 1, cm: 0.01, km: 1000, in: 0.0254, ft: 0.3048, mi: 1609.344 } as const;
/** Minutes in one unit. */
export const DURATION_MIN = { min: 1, h: 60 } as const;
/** The part of a whole in one unit. */
export const SHARE = { '%': 0.01 } as const;
/** Kilocalories per 100 g in one unit: how rich a food is. */
export const RICHNESS_KCAL_PER_100_G = {
  'kcal/100 g': 1,
  'kcal/g': 100,
  'kcal/oz': 100 / MASS_G.oz,
} as const;

export type MassUnit = keyof typeof MASS_G;
export type EnergyUnit = keyof typeof ENERGY_KCAL;
export type VolumeUnit = keyof typeof VOLUME_ML;
export type LengthUnit = keyof typeof LENGTH_M;
export type DurationUnit = keyof typeof DURATION_MIN;
export type TemperatureUnit = '°C' | '°F';
export type ShareUnit = keyof typeof SHARE;
export type RichnessUnit = keyof typeof RICHNESS_KCAL_PER_100_G;
export type Unit =
  MassUnit | EnergyUnit | VolumeUnit | LengthUnit | DurationUnit | TemperatureUnit | ShareUnit | RichnessUnit;

const FACTORS: Readonly<Record<Exclude<Unit, TemperatureUnit>, number>> = {
  ...MASS_G,
  ...ENERGY_KCAL,
  ...VOLUME_ML,
  ...LENGTH_M,
  ...DURATION_MIN,
  ...SHARE,
  ...RICHNESS_KCAL_PER_100_G,
};

/** @returns `value` in `unit`, as g, kcal, ml, m, min, °C, a share or kcal per 100 g. */
export function toCore(value: number, unit: Unit): number {
  if (unit === '°C') return value;
  if (unit === '°F') return ((value - 32) * 5) / 9;
  return value * FACTORS[unit];
}

/** @returns `value`, in the unit of the core, in `unit`. */
export function fromCore(value: number, unit: Unit): number {
  if (unit === '°C') return value;
  if (unit === '°F') return (value * 9) / 5 + 32;
  return value / FACTORS[unit];
}
