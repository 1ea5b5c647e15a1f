import { sayUnit, withUnit } from '../texts/locale.ts';
import { sayNumber } from '../texts/say.ts';
import { fromCore, toCore, type Unit, type UnitSystem } from '../planning/units/convert.ts';

export type { UnitSystem } from '../planning/units/convert.ts';

/** What is measured decides in which unit people read it. */
export type Quantity =
  | 'food'
  | 'pack'
  | 'energy'
  | 'pour'
  | 'water'
  | 'temperature'
  | 'altitude'
  | 'distance'
  | 'share'
  | 'richness'
  | 'labelRichness';

type Shown = { readonly unit: Unit; readonly digits: number };

const SHOWN: Readonly<Record<Quantity, Readonly<Record<UnitSystem, Shown>>>> = {
  food: { metric: { unit: 'g', digits: 0 }, us: { unit: 'oz', digits: 1 } },
  pack: { metric: { unit: 'kg', digits: 1 }, us: { unit: 'lb', digits: 1 } },
  energy: { metric: { unit: 'kcal', digits: 0 }, us: { unit: 'kcal', digits: 0 } },
  pour: { metric: { unit: 'ml', digits: 0 }, us: { unit: 'fl oz', digits: 1 } },
  water: { metric: { unit: 'l', digits: 1 }, us: { unit: 'qt', digits: 1 } },
  temperature: { metric: { unit: '°C', digits: 0 }, us: { unit: '°F', digits: 0 } },
  altitude: { metric: { unit: 'm', digits: 0 }, us: { unit: 'ft', digits: 0 } },
  distance: { metric: { unit: 'km', digits: 1 }, us: { unit: 'mi', digits: 1 } },
  share: { metric: { unit: '%', digits: 0 }, us: { unit: '%', digits: 0 } },
  richness: { metric: { unit: 'kcal/g', digits: 1 }, us: { unit: 'kcal/oz', digits: 0 } },
  labelRichness: { metric: { unit: 'kcal/100 g', digits: 0 }, us: { unit: 'kcal/oz', digits: 0 } },
};

export function unitOf(quantity: Quantity, system: UnitSystem): Unit {
  return SHOWN[quantity][system].unit;
}

/** @returns the unit of a quantity as it is written beside figures and fields. */
export const shownUnit = (quantity: Quantity, system: UnitSystem): string =>
  sayUnit(unitOf(quantity, system));

/** @returns a number with all its digits, as it was entered. */
export const shownExactly = (value: number): string =>
  sayNumber(value, { maximumFractionDigits: 10, useGrouping: false });

/** @returns a number with so many decimals, without groups. */
export const shownFixed = (value: number, digits: number): string =>
  sayNumber(value, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: false,
  });

/** @returns a value of the core as the number a person reads, with no more digits than it deserves. */
export function shownNumber(value: number, quantity: Quantity, system: UnitSystem): string {
  const { unit, digits } = SHOWN[quantity][system];
  return sayNumber(fromCore(value, unit) + 0, {
    maximumFractionDigits: digits,
    minimumFractionDigits: digits,
  });
}

/** @returns a value of the core as a person reads it, with its unit: `show(1234, 'pack', 'metric')` is "1.2 kg". */
export function show(value: number, quantity: Quantity, system: UnitSystem): string {
  return withUnit(shownNumber(value, quantity, system), unitOf(quantity, system));
}

/** @returns a value of the core for a form field: full precision as typed, no grouping, at most `digits` decimals. */
export function fieldValue(
  value: number,
  quantity: Quantity,
  system: UnitSystem,
  digits = quantity === 'altitude' ? 0 : 3,
): string {
  return String(Number(fromCore(value, unitOf(quantity, system)).toFixed(digits)));
}

/** @returns what a person typed in a field of this quantity, in the unit of the core. */
export function fieldToCore(value: number, quantity: Quantity, system: UnitSystem): number {
  return toCore(value, unitOf(quantity, system));
}
