import type { Term } from '../planning/model/terms.ts';
import { toCore, type Unit } from '../planning/units/convert.ts';
import { show, type Quantity, type UnitSystem } from '../presentation/show.ts';
import { sayNumber, withUnit } from '../texts/say.ts';

const QUANTITY_OF: Readonly<Record<string, Quantity>> = {
  g: 'food',
  kg: 'pack',
  kcal: 'energy',
  ml: 'pour',
  '°C': 'temperature',
  m: 'altitude',
};

/** @returns the figure of one line of a derivation, in the unit a person reads. */
export function showTerm({ value, unit }: Pick<Term, 'value' | 'unit'>, system: UnitSystem): string {
  const quantity = QUANTITY_OF[unit];
  return quantity
    ? show(toCore(value, unit as Unit), quantity, system)
    : withUnit(sayNumber(value, { maximumFractionDigits: 1 }), unit).trim();
}
