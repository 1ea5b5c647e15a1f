import { fromCore, toCore, type UnitSystem } from './convert.ts';

/** The unit in which people give their height. */
export const STATURE_UNIT: Readonly<Record<UnitSystem, string>> = { metric: 'cm', us: 'ft in' };

/** @returns a body height in m as it is typed: `178`, or `5 ft 10 in`. */
export function statureValue(heightM: number, system: UnitSystem): string {
  if (system === 'metric') return String(Number(fromCore(heightM, 'cm').toFixed(1)));
  const inches = Number(fromCore(heightM, 'in').toFixed(1));
  const feet = Math.floor(inches / 12);
  return `${feet} ft ${Number((inches - feet * 12).toFixed(1))} in`;
}

const FEET_AND_INCHES =
  /^(\d+)\s*(?:ft|feet|foot|['’′])\s*(?:(\d+(?:[.,]\d+)?)\s*(?:in|inch|inches|["”″]|'')?)?$/i;

/**
 * @param text feet and inches, such as `5 ft 10 in` or `5' 10"`
 * @returns the height in m; `undefined` where the text is something else, or has twelve inches or more beside the feet
 */
export function feetAndInchesM(text: string): number | undefined {
  const [, feet, inches = '0'] = FEET_AND_INCHES.exec(text.trim()) ?? [];
  const inchCount = Number(inches.replace(',', '.'));
  return feet === undefined || inchCount >= 12
    ? undefined
    : toCore(Number(feet), 'ft') + toCore(inchCount, 'in');
}
