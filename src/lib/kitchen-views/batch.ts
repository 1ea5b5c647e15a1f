import type { Ingredient } from '../planning/model/recipe.ts';

/** @returns hours as a person plans by them: `26 h`, and half hours below ten. */
export function hoursText({ value }: { readonly value: number }): string {
  return `${value < 10 ? Math.round(value * 2) / 2 : Math.round(value)} h`;
}

/** @returns a share with one decimal, as a scale can tell it. */
export const percentText = (share: number): string => `${(share * 100 + 0).toFixed(1)} %`;

/** @returns an ingredient's amount for so many times the recipe, in the unit that it was entered in. */
export function scaledAmount({ quantity }: Ingredient, times: number): string {
  const amount = Number((quantity.amount * times).toPrecision(4));
  const isWord = quantity.unit === 'cup' || quantity.unit === 'piece';
  return `${amount.toLocaleString('en', { maximumFractionDigits: 3 })} ${quantity.unit}${isWord && amount > 1 ? 's' : ''}`;
}
