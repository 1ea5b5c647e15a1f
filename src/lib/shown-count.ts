import { sayNumber } from './texts/say.ts';

/** @returns a count with at most one decimal, thousands grouped. */
export function shownCount(count: number): string {
  return sayNumber(count, { maximumFractionDigits: 1 });
}

/** From here on half a serving is more than a sum of servings is worth. */
const WHOLE_FROM = 20;

/** @returns a sum of servings without false digits, to the half below twenty, and whether that is only about what it is. */
export function roundedServings(servings: number): { servings: number; about: 'yes' | 'no' } {
  const rounded = servings < WHOLE_FROM ? Math.round(servings * 2) / 2 : Math.round(servings);
  return { servings: rounded, about: Math.abs(rounded - servings) > 1e-9 ? 'yes' : 'no' };
}
