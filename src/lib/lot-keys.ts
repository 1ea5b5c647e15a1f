/*
 * Texts of a lot as they are compared. The database keeps them with each lot, and the browser makes them for the lots that it has, so that
 * both find and sort alike.
 */

/** `searchKey`: what is looked through; `codeKey`, `recipeKey`: what is sorted by, unit by unit. */
export type LotKeys = { readonly searchKey: string; readonly codeKey: string; readonly recipeKey: string };

export const lotKeys = (lot: {
  readonly code: string;
  readonly recipe: string;
  readonly note: string;
}): LotKeys => ({
  searchKey: plain(`${lot.code} ${lot.recipe} ${lot.note}`),
  codeKey: sortKey(lot.code),
  recipeKey: sortKey(lot.recipe),
});

/** @returns the words that each have to be in the `searchKey` of a lot for it to be found */
export const searchWords = (search: string): string[] =>
  plain(search)
    .split(/[\s\p{Cc}]+/u)
    .filter(Boolean);

/** Lower case without accents, so that "creme" finds "Crème". */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Numbers in it begin with how many digits they have, so that 9 comes before 10, whatever zeros stand before them. */
const sortKey = (text: string): string =>
  plain(text).replace(/\d+/g, (digits) => {
    const number = digits.replace(/^0+(?=\d)/, '');
    return String(number.length).padStart(4, '0') + number;
  });
