import { shownCount } from '../lib/shown-count.ts';

/** @returns a count with its English word: `counted(1, 'pouch', 'pouches')` is "1 pouch", `counted(2.5, 'serving')` is "2.5 servings". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${shownCount(count)} ${count === 1 ? one : many}`;
}
