import { sayNumber } from './texts/say.ts';

/** @returns a count with at most one decimal, thousands grouped. */
export function shownCount(count: number): string {
  return sayNumber(count, { maximumFractionDigits: 1 });
}
