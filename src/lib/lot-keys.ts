/*
 * Texts of a lot as they are compared. The database keeps them with each lot, and the browser makes them for the lots that it has, so that
 * both find and sort alike.
 */

/** `searchKey`: what is looked through; `codeKey`, `recipeKey`: what is sorted by, unit by unit. */
export type LotKeys = { readonly searchKey: string; readonly codeKey: string; readonly recipeKey: string };

type Written = { readonly code: string; readonly recipe: string; readonly note: string };

export const lotKeys = (lot: Written): LotKeys => ({
  searchKey: searchKey(lot),
  codeKey: sortKey(lot.code),
  recipeKey: sortKey(lot.recipe),
});

export const searchKey = (lot: Written): string => plain(`${lot.code} ${lot.recipe} ${lot.note}`);

/** @returns the words that each have to be in the `searchKey` of a lot for it to be found */
export const searchWords = (search: string): string[] =>
  plain(search)
    .split(/[\s\p{Cc}]+/u)
    .filter(Boolean);

/** @returns whether all of the `searchWords` are in a text */
export const hasWords = (text: string, words: readonly string[]): boolean => {
  const known = plain(text);
  return words.every((word) => known.includes(word));
};

/** Lower case without accents, so that "creme" finds "Crème". */
const plain = (text: string): string =>
  (IS_PLAIN.test(text) ? text : text.normalize('NFD').replace(/\p{M}/gu, '')).toLowerCase();

/** Most texts have no letter that has to be taken apart, which takes its time. */
const IS_PLAIN = /^[ -~]*$/;

/** Numbers in it begin with how many digits they have, so that 9 comes before 10, whatever zeros stand before them. */
export const sortKey = (text: string): string =>
  plain(text).replace(/\d+/g, (digits) => {
    const number = digits.replace(/^0+(?=\d)/, '');
    return String(number.length).padStart(4, '0') + number;
  });
