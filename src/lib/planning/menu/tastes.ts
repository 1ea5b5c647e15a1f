import type { ResolvedEater } from '../model/resolve-trip.ts';
import type { Taste } from '../model/words.ts';

const WORDS = /[\p{L}\p{N}]+/gu;
const wordsOf = (text: string): string[] => text.toLocaleLowerCase('en').match(WORDS) ?? [];

/**
 * What a person says to a dish: by its whole name, else by the words of an ingredient in its name. "Never" goes before "rather not", and both before "gladly".
 *
 * @example tasteOf('Mushroom risotto', { tastes: [{ food: 'mushroom', taste: 'never' }] }) // 'never'
 */
export function tasteOf(recipe: string, eater: Pick<ResolvedEater, 'tastes'>): Taste | undefined {
  if (!eater.tastes || eater.tastes.length === 0) return undefined;
  const name = wordsOf(recipe);
  const said = eater.tastes.filter(({ food }) => holds(name, wordsOf(food))).map(({ taste }) => taste);
  return (['never', 'rather not', 'gladly'] as const).find((taste) => said.includes(taste));
}

/** Whether words stand in a name one after the other; the last one may be a plural of it or the other way round. */
function holds(name: readonly string[], words: readonly string[]): boolean {
  if (words.length === 0) return false;
  return name.some((_, at) => words.every((word, index) => isSame(name[at + index], word)));
}

const isSame = (one: string | undefined, other: string): boolean =>
  one !== undefined && (one === other || one === `${other}s` || other === `${one}s`);
