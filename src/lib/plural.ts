import { sayNumber } from './texts/say.ts';

/** @returns a count with its word: `counted(1, 'pouch', 'pouches')` is "1 pouch", `counted(2.5, 'serving')` is "2.5 servings". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${shownCount(count)} ${count === 1 ? one : many}`;
}

/** @returns a count with at most one decimal, thousands grouped. */
export function shownCount(count: number): string {
  return sayNumber(count, { maximumFractionDigits: 1 });
}
