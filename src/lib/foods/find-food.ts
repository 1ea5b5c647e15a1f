import type { Food } from '../planning/model/composition.ts';
import { plainWords } from '../shelf-csv/fields.ts';

/** @returns the food of this name; where none is written so, the first whose name differs in case or outer blanks only. */
export function findFood(tables: readonly Food[], name: string): Food | undefined {
  const loose = (text: string) => text.trim().toLowerCase();
  return tables.find((food) => food.name === name) ?? tables.find((food) => loose(food.name) === loose(name));
}

const singular = (word: string): string => word.replace(/(?<=o)es$|(?<=[^s])s$/, '');

/** How well a name fits, 0 best: it starts with what is looked for; its words do, in any order; it holds it anywhere. */
function rankOf(name: string, wanted: string): number | undefined {
  const words = name.split(' ');
  const each = wanted.split(' ');
  const starts = (word: string) =>
    words.some((own) => own.startsWith(word) || singular(own) === singular(word));
  if (name.startsWith(wanted)) return 0;
  if (each.every(starts)) return starts(each[0]!) && singular(words[0]!) === singular(each[0]!) ? 1 : 2;
  return each.every((word) => name.includes(word)) ? 3 : undefined;
}

/**
 * Looks for foods by words: all must be in the name, accents, case, order and an English plural aside.
 *
 * @param limit the most foods wanted
 * @returns the best first: names that start with the words, then those with words that do; shorter names before longer ones, then by
 * the alphabet, then in the order of the tables. Nothing for no words.
 */
export function searchFoods(tables: readonly Food[], words: string, limit: number): Food[] {
  const wanted = plainWords(words);
  if (wanted === '') return [];
  return tables
    .flatMap((food) => {
      const name = plainWords(food.name);
      const rank = rankOf(name, wanted);
      return rank === undefined ? [] : [{ food, name, rank }];
    })
    .sort(
      (a, b) =>
        a.rank - b.rank || a.name.length - b.name.length || (a.name < b.name ? -1 : Number(a.name > b.name)),
    )
    .slice(0, limit)
    .map(({ food }) => food);
}
