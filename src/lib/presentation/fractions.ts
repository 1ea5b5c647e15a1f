import { say } from '../texts/say.ts';
import { fromCore } from '../planning/units/convert.ts';
import { show, type UnitSystem } from './show.ts';

/** What can be divided by eye or is marked on a measuring cup. */
const FRACTIONS = [
  { value: 0, text: '' },
  { value: 1 / 4, text: '1/4' },
  { value: 1 / 3, text: '1/3' },
  { value: 1 / 2, text: '1/2' },
  { value: 2 / 3, text: '2/3' },
  { value: 3 / 4, text: '3/4' },
  { value: 1, text: '' },
] as const;

/** The nearest whole with a fraction, and whether it is no more than one. */
function nearestAmount(value: number): { readonly text: string; readonly isOneOrLess: boolean } {
  if (!(value >= 0)) throw new RangeError(`an amount cannot be ${value}`);
  const below = Math.floor(value);
  const rest = value - below;
  const nearest = FRACTIONS.reduce((best, fraction) =>
    Math.abs(fraction.value - rest) <= Math.abs(best.value - rest) ? fraction : best,
  );
  const whole = nearest.value === 1 ? below + 1 : below;
  const isOneOrLess = value > 0 && whole + (nearest.text === '' ? 0 : nearest.value) <= 1;
  if (whole === 0 && nearest.text === '')
    return { text: value > 0 ? say('less than 1/8') : '0', isOneOrLess };
  return { text: [whole === 0 ? '' : String(whole), nearest.text].filter(Boolean).join(' '), isOneOrLess };
}

/**
 * An amount as a person divides it by eye, in halves, thirds and quarters.
 *
 * @param value not negative
 * @returns for instance "1 1/4", "2/3", "3"; "less than 1/8" where the nearest fraction would be none at all, and "0" for nothing
 */
export const friendlyAmount = (value: number): string => nearestAmount(value).text;

/** A mug or a bottle is read to about this much, ml (common practice). */
const READABLE_ML = 10;

/**
 * Water to pour, as it is measured on the trail.
 *
 * @returns metric: millilitres, rounded to 10; US: cups, with fluid ounces where a quarter of a cup is too coarse
 */
export function showPour(ml: number, system: UnitSystem): string {
  if (system === 'metric') return show(Math.round(ml / READABLE_ML) * READABLE_ML, 'pour', system);
  const cups = fromCore(ml, 'cup');
  if (cups < 0.3) return show(ml, 'pour', system);
  return showCups(ml);
}

/** @returns a volume as a measuring cup is marked: "1 1/4 cups", whatever the unit system. */
export function showCups(ml: number): string {
  const { text: cups, isOneOrLess } = nearestAmount(fromCore(ml, 'cup'));
  return isOneOrLess ? say('{cups} cup', { cups }) : say('{cups} cups', { cups });
}
