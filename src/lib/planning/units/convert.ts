/*
 * Conversion between the units of the core (g, kcal, ml, m, °C) and those people type and read.
 * Exact factors: international avoirdupois pound and yard agreement 1959; US gallon of 231 cubic inches (NIST Handbook 44, app. C);
 * 1 kcal = 4.184 kJ (thermochemical calorie; Regulation (EU) 1169/2011).
 */

/** Grams in one unit. */
export const MASS_G = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 } as const;
/** Kilocalories in one unit. */
export const ENERGY_KCAL = { kcal: 1, kJ: 1 / 4.184 } as const;
/** Millilitres in one unit; cup, fluid ounce and quart are US customary. */
export const VOLUME_ML = { ml: 1, l: 1000, cup: 236.5882365, 'fl oz': 29.5735295625, qt: 946.352946 } as const;
/** Metres in one unit. */
export const LENGTH_M = { m: 1, km: 1000, ft: 0.3048, mi: 1609.344 } as const;

export type MassUnit = keyof typeof MASS_G;
export type EnergyUnit = keyof typeof ENERGY_KCAL;
export type VolumeUnit = keyof typeof VOLUME_ML;
export type LengthUnit = keyof typeof LENGTH_M;
export type TemperatureUnit = '°C' | '°F';
export type Unit = MassUnit | EnergyUnit | VolumeUnit | LengthUnit | TemperatureUnit;

const FACTORS: Readonly<Record<Exclude<Unit, TemperatureUnit>, number>> = { ...MASS_G, ...ENERGY_KCAL, ...VOLUME_ML, ...LENGTH_M };

/** @returns `value` in `unit`, as g, kcal, ml, m or °C. */
export function toCore(value: number, unit: Unit): number {
  if (unit === '°C') return value;
  if (unit === '°F') return ((value - 32) * 5) / 9;
  return value * FACTORS[unit];
}

/** @returns `value` in g, kcal, ml, m or °C, in `unit`. */
export function fromCore(value: number, unit: Unit): number {
  if (unit === '°C') return value;
  if (unit === '°F') return (value * 9) / 5 + 32;
  return value / FACTORS[unit];
}
