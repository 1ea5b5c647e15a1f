import type { Ingredient } from '../planning/model/recipe.ts';
import { KITCHEN_UNIT_WORDS } from '../presentation/code-words.ts';
import { shownExactly, shownFixed } from '../presentation/show.ts';
import { say, sayNumber, sayPercent } from '../texts/say.ts';

/** @returns hours as a person plans by them: `26 h`, and half hours below ten. */
export function hoursText({ value }: { readonly value: number }): string {
  const hours = value < 10 ? Math.round(value * 2) / 2 : Math.round(value);
  return `${shownExactly(hours)} h`;
}

/** @returns a share with one decimal, as a scale can tell it. */
export const percentText = (share: number): string => sayPercent(share, 1);

/** @returns a number as it stands in a form, as a person reads it; other words as they are. */
export function asWritten(value: string): string {
  const number = Number(value);
  if (value === '' || !Number.isFinite(number)) return value;
  return shownFixed(number, value.split('.')[1]?.length ?? 0);
}

/** @returns an ingredient's amount for so many times the recipe, in the unit that it was entered in. */
export function scaledAmount({ quantity }: Ingredient, times: number): string {
  const value = Number((quantity.amount * times).toPrecision(4));
  const amount = sayNumber(value, { maximumFractionDigits: 3 });
  if (quantity.unit === 'cup' && value > 1) return say('{amount} cups', { amount });
  if (quantity.unit === 'piece' && value > 1) return say('{amount} pieces', { amount });
  return `${amount} ${say(KITCHEN_UNIT_WORDS[quantity.unit])}`;
}
